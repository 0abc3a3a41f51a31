import { unitInWords } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  fail,
  isUnit,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { eachOf, expectSameProduct, newIdOf, textOf } from "../inputs.js";
import { amountAt } from "../rate/amount-for.js";
import { expectRate } from "../rate/rate.js";
import type { LoadProduct, MeasuringIncrement, ProductAmount } from "./load-amount-types.js";

const fields = ["id", "name", "rate", "form", "density", "increment", "least", "concentration"] as const;

/** Takes the products of a mix as `loadAmounts` wants them, each with an id of its own, or throws with every problem. */
export const readLoadProducts = (input: unknown): readonly LoadProduct[] => {
  const seen = new Set<string>();
  return eachOf(input, "products", "product", (item, at) => productOf(item, at, seen));
};

const productOf = (input: unknown, at: string, seen: Set<string>): LoadProduct => {
  const product = expectFields(input, fields, at, "a product with id, rate and form");
  const { id, rate, form } = allOf({
    id: () => newIdOf(product.id, `${at}.id`, seen),
    name: () =>
      product.name === undefined || textOf(product.name, `${at}.name`, "what the product is called"),
    rate: () => expectRate(product.rate, `${at}.rate`),
    form: () => expectOneOf(product.form, ["dry", "liquid"], `${at}.form`),
    increment: () => product.increment === undefined || incrementOf(product.increment, `${at}.increment`),
    least: () =>
      product.least === undefined ||
      expectFields(product.least, ["value", "unit", "of", "dimension"], `${at}.least`),
    concentration: () =>
      product.concentration === undefined || concentrationOf(product.concentration, `${at}.concentration`),
  });
  expectSameProduct(rate.product, id, `${at}.rate`, rate.rate);
  // For nothing at all, to see at this door whether a density is missing.
  const none = { area: quantity(0, "m2"), sprayVolume: quantity(0, "L", "spray") };
  amountAt({ rate: product.rate, form, density: product.density, ...none }, `${at}.`);
  return { ...(input as LoadProduct), id, form };
};

const concentrationOf = (input: unknown, path: string): void => {
  const rule = expectFields(
    input,
    ["min", "max", "source"],
    path,
    "the weakest or the strongest spray, and who says so",
  );
  textOf(rule.source, `${path}.source`, "who says so", 1000);
  if (rule.min === undefined && rule.max === undefined) fail("missing", path, undefined, "min, max or both");
};

const incrementOf = (input: unknown, path: string): MeasuringIncrement => {
  const increment = expectFields(input, ["unit", "step"], path, "a unit and a step");
  return allOf({
    unit: () => textOf(increment.unit, `${path}.unit`, "a unit that the product is measured in"),
    step: () => expectNumber(increment.step, `${path}.step`, { above: 0 }),
  });
};

/** Takes the increments of the scale and of the jug. */
export const readIncrements = (
  input: unknown,
): { readonly dry?: MeasuringIncrement; readonly liquid?: MeasuringIncrement } => {
  if (input === undefined) return {};
  const increments = expectFields(
    input,
    ["dry", "liquid"],
    "increments",
    "a measuring increment for dry, for liquid, or both",
  );
  const { dry, liquid } = allOf({
    dry: () => (increments.dry === undefined ? undefined : incrementOf(increments.dry, "increments.dry")),
    liquid: () =>
      increments.liquid === undefined ? undefined : incrementOf(increments.liquid, "increments.liquid"),
  });
  return { ...(dry && { dry }), ...(liquid && { liquid }) };
};

/** Takes an increment of the measure in which a product is weighed or poured. */
export const expectIncrement = (
  { unit, step }: MeasuringIncrement,
  total: ProductAmount,
  path: string,
): MeasuringIncrement => {
  const one = quantityOf(step, unit, total.of, `${path}.unit`);
  if (!isUnit(unit, total.dimension))
    fail("unit/mismatch", `${path}.unit`, one, unitInWords(total.dimension));
  return { unit, step };
};
