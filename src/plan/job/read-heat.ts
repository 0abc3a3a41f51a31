import { degreeDayAmount, degreeDayModel } from "../../interval/index.js";
import { expectFields, expectNumber, expectRecord, expectText, toldAt } from "../../quantity/index.js";
import type { JobHeat } from "./job.js";
import type { ReadHeat } from "./treatments.js";

/** Reads an interval by heat, or throws. */
export const readHeat = (input: unknown, path: string): ReadHeat => {
  const fields = ["method", "base", "upper", "cutoff", "interval", "source"];
  const heat = expectFields(input, fields, path, "an interval by heat") as unknown as JobHeat;
  const source = expectText(heat.source, `${path}.source`, "who found this interval");
  const { method, base, upper, cutoff } = heat;
  const model = toldAt(path, "model", () =>
    degreeDayModel({
      method,
      base,
      ...(upper && { upper }),
      ...(cutoff && { cutoff }),
      sensor: "air",
      source,
    }),
  );
  const { value, unit } = expectRecord(heat.interval, `${path}.interval`, "degree-days") as Record<
    string,
    never
  >;
  expectNumber(value, `${path}.interval.value`, { above: 0 });
  return {
    model,
    interval: degreeDayAmount({ value: value as unknown as number, unit: unit as unknown as "°C d", model }),
    source,
  };
};
