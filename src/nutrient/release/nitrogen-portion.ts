import { allOf, expectFields, expectQuantity, fail, numberIn, type Quantity } from "../../quantity/index.js";
import { expectShortText } from "../label/expect-source.js";
import { type ReleaseModel, releaseModel } from "./release-model.js";

/** Nitrogen of an application: all of it, or its quick- or slow-release part. */
export type NitrogenRate =
  | Quantity<"mass/area", "N">
  | Quantity<"mass/area", "N:quick">
  | Quantity<"mass/area", "N:slow">;

/** A part of the nitrogen that goes down, with the model by which it comes out. */
export interface NitrogenPortion {
  readonly name: string;
  readonly nitrogen: NitrogenRate;
  readonly model: ReleaseModel;
}

/** A portion, checked, and its nitrogen in one unit for all. */
export interface ReadPortion extends NitrogenPortion {
  readonly amount: number;
}

/** Takes a portion that may come from JSON, or throws all that is wrong with it; its amount in `unit`, or in its own. */
export const readPortion = (portion: NitrogenPortion, unit?: string): ReadPortion => {
  expectFields(portion, ["name", "nitrogen", "model"], "", "a portion");
  const { name, nitrogen, model } = portion;
  const read = allOf({
    name: () => expectShortText(name, "name", "a name"),
    nitrogen: (): NitrogenRate => {
      const rate = expectQuantity(nitrogen, { dimension: "mass/area", bound: "non-negative" }, "nitrogen");
      if (!nitrogens.some((one) => one === rate.of))
        fail("substance/mismatch", "nitrogen", rate, "a quantity of N, N:quick or N:slow");
      // A union of kinds is no kind of a union; which of the three it is was read above.
      return rate as NitrogenRate;
    },
    model: () =>
      model === undefined ? fail("missing", "model", model, "a release model") : releaseModel(model),
  });
  return { ...read, amount: numberIn(read.nitrogen, unit ?? read.nitrogen.unit) };
};

const nitrogens = ["N", "N:quick", "N:slow"] as const;
