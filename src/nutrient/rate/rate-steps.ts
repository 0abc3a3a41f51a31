import { allOf, expectFields, fail, Quantity } from "../../quantity/index.js";
import { type Nutrient, percentOf } from "../label/analysis.js";
import { expectWeighed, isOtherRecordOf } from "../label/expect-fertilizer.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { formFactor } from "../label/forms.js";
import { statesNone } from "../label/states-none.js";
import { eachOf, listOf } from "../label/under-path.js";
import { expectTarget, type RateTarget } from "./rate-target.js";

/** One nutrient to supply and the product that supplies it. */
export interface RateStep {
  readonly target: RateTarget;
  readonly product: Fertilizer;
}

/** A step whose target and product were read. */
export interface ReadStep {
  readonly target: Quantity<"mass/area", Nutrient>;
  readonly product: Fertilizer;
}

/** A step with its rate, and what others bring of its nutrient, in the unit of the target. */
export interface FoundStep extends ReadStep {
  readonly credited: number;
  readonly rate: Quantity<"mass/area", `product:${string}`>;
}

/** A rate of a nutrient. */
export const rateOf = (value: number, unit: string, of: string): Quantity<"mass/area", string> =>
  new Quantity<"mass/area", string>(value, unit, of, "mass/area");

const mostSteps = 50;

/** The steps, each nutrient and each product once. */
export const readSteps = (input: readonly RateStep[]): ReadStep[] => {
  const list = listOf(input, "steps", "{ target, product }", mostSteps) as readonly RateStep[];
  const read: ReadStep[] = [];
  return eachOf(list, "steps", (given) => {
    expectFields(given, ["target", "product"], "", "{ target, product }");
    const step = allOf({
      target: () => expectTarget(given.target, "target"),
      product: () => expectWeighed(given.product, "product"),
    });
    const { target, product } = step;
    const twin = read.findIndex((one) => formFactor(one.target.of, target.of) !== undefined);
    const other = read.findIndex((one) => isOtherRecordOf(one.product, product));
    read.push(step);
    allOf({
      stated: () => percentOf(product.analysis, target.of) > 0 || statesNone(product, target.of),
      once: () =>
        twin < 0 ||
        fail(
          "duplicate",
          "target",
          target,
          `one target for each nutrient; steps[${twin}] has ${read[twin]?.target.of}`,
        ),
      distinct: () =>
        other < 0 ||
        fail(
          "duplicate",
          "product.id",
          product.id,
          `a different id: steps[${other}] has it for another product`,
        ),
    });
    return step;
  });
};
