import {
  allOf,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import { eachOf, newIdOf, textOf } from "../inputs.js";
import { type MixIngredient, mixIngredients } from "../partners/mix-rules.js";
import { expectRate } from "../rate/rate.js";
import { expectWaterTest, type ReadWater } from "./water-test.js";
import type { WaterProduct, WaterReportInput } from "./water-types.js";

/** What a water report is asked for, checked. */
export interface ReadWaterInput {
  readonly water: ReadWater;
  readonly products: readonly WaterProduct[];
  readonly timeToEmpty: Quantity<"time", "none"> | undefined;
  /** Ammonium sulfate in the mix. */
  readonly sulfate: Quantity<"mass/volume", string> | undefined;
}

/** Takes the input of a water report, or throws with all that is wrong with it. */
export const expectWaterInput = (input: WaterReportInput): ReadWaterInput =>
  allOf({
    water: () => expectWaterTest(input.test, "test"),
    timeToEmpty: () =>
      input.timeToEmpty === undefined
        ? undefined
        : expectQuantity(
            input.timeToEmpty,
            { dimension: "time", of: "none", bound: "non-negative" },
            "timeToEmpty",
          ),
    products: () => productsOf(input.products),
    sulfate: () => (input.ammoniumSulfate === undefined ? undefined : sulfateOf(input.ammoniumSulfate)),
  });

const sulfateOf = (input: unknown): Quantity<"mass/volume", string> => {
  const { rate } = expectRate(input, "ammoniumSulfate");
  return rate.dimension === "mass/volume"
    ? (rate as Quantity<"mass/volume", string>)
    : fail("unit/mismatch", "ammoniumSulfate", rate, "a mass of ammonium sulfate per volume of spray");
};

const productsOf = (input: unknown): readonly WaterProduct[] => {
  if (input === undefined || (Array.isArray(input) && input.length === 0)) return [];
  if (!Array.isArray(input)) return fail("type", "products", input, "a list of products");
  const seen = new Set<string>();
  return eachOf(input, "products", "product", (product, at) => productOf(product, at, seen));
};

const productOf = (input: unknown, at: string, seen: Set<string>): WaterProduct => {
  const product = expectFields(input, ["id", "name", "active", "contains", "labelPH"], at, "a product");
  const text = (field: "name" | "active"): string | undefined =>
    product[field] === undefined ? undefined : textOf(product[field], `${at}.${field}`, "a text");
  const { id, name, active, contains, labelPH } = allOf({
    id: () => newIdOf(product.id, `${at}.id`, seen),
    name: () => text("name"),
    active: () => text("active"),
    contains: () =>
      product.contains === undefined ? undefined : ingredientsOf(product.contains, `${at}.contains`),
    labelPH: () => (product.labelPH === undefined ? undefined : rangeOf(product.labelPH, `${at}.labelPH`)),
  });
  return {
    id,
    ...(name !== undefined && { name }),
    ...(active !== undefined && { active }),
    ...(contains !== undefined && { contains }),
    ...(labelPH !== undefined && { labelPH }),
  };
};

const ingredientsOf = (input: unknown, path: string): readonly MixIngredient[] =>
  Array.isArray(input) && input.length === 0
    ? []
    : eachOf(input, path, "ingredient", (word, at) => expectOneOf(word, mixIngredients, at));

const rangeOf = (input: unknown, path: string): NonNullable<WaterProduct["labelPH"]> => {
  const range = expectFields(input, ["min", "max"], path, "a record with min, max or both");
  const end = (name: "min" | "max"): number | undefined =>
    range[name] === undefined ? undefined : expectNumber(range[name], `${path}.${name}`, { min: 0, max: 14 });
  const { min, max } = allOf({ min: () => end("min"), max: () => end("max") });
  if (min !== undefined && max !== undefined && min > max)
    fail("conflict", `${path}.max`, max, `${min} or more`);
  return { ...(min !== undefined && { min }), ...(max !== undefined && { max }) };
};
