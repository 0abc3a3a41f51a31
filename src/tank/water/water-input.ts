import {
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  type Quantity,
} from "../../quantity/index.js";
import { mixIngredients } from "../partners/mix-rules.js";
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
export const expectWaterInput = (input: WaterReportInput): ReadWaterInput => {
  const door = checks();
  const water = door.run(() => expectWaterTest(input.test, "test"));
  const timeToEmpty =
    input.timeToEmpty === undefined
      ? undefined
      : door.run(() =>
          expectQuantity(
            input.timeToEmpty,
            { dimension: "time", of: "none", bound: "non-negative" },
            "timeToEmpty",
          ),
        );
  const products: unknown = input.products === undefined ? [] : input.products;
  const ids = new Set<string>();
  if (Array.isArray(products)) {
    for (const [i, product] of products.entries()) expectProduct(product, `products[${i}]`, ids, door.run);
  } else door.run(() => fail("type", "products", products, "a list of products"));
  const sulfate =
    input.ammoniumSulfate === undefined ? undefined : door.run(() => sulfateOf(input.ammoniumSulfate));
  door.done();
  return {
    water: water as ReadWater,
    products: products as readonly WaterProduct[],
    timeToEmpty,
    sulfate,
  };
};

const sulfateOf = (input: unknown): Quantity<"mass/volume", string> => {
  const { rate, basis } = expectRate(input, "ammoniumSulfate");
  return basis === "spray volume" && rate.dimension === "mass/volume"
    ? (rate as Quantity<"mass/volume", string>)
    : fail("unit/mismatch", "ammoniumSulfate", rate, "a mass of ammonium sulfate per volume of spray");
};

/** Runs the checks of one product; each of them by itself, so that one problem does not hide the next. */
const expectProduct = (
  input: unknown,
  path: string,
  ids: Set<string>,
  run: (check: () => void) => void,
): void => {
  if (typeof input !== "object" || input === null) {
    run(() => fail("type", path, input, "a product"));
    return;
  }
  const { id, name, active, labelPH, contains } = input as Partial<Record<keyof WaterProduct, unknown>>;
  run(() => expectFields(input, ["id", "name", "active", "contains", "labelPH"], path));
  run(() => {
    if (typeof id !== "string" || id === "") fail("missing", `${path}.id`, id, "an id of the product");
    if (ids.has(id as string)) fail("duplicate", `${path}.id`, id, "an id that no other product has");
    ids.add(id as string);
  });
  for (const [field, text] of Object.entries({ name, active })) {
    if (text !== undefined && typeof text !== "string")
      run(() => fail("type", `${path}.${field}`, text, "a text"));
  }
  const words: readonly unknown[] = mixIngredients;
  if (contains !== undefined && !(Array.isArray(contains) && contains.every((word) => words.includes(word))))
    run(() => fail("type", `${path}.contains`, contains, `a list of: ${mixIngredients.join(", ")}`));
  if (labelPH !== undefined) run(() => expectRange(labelPH, `${path}.labelPH`));
};

const expectRange = (input: unknown, path: string): void => {
  const range = expectRecord(input, path, "a record with min, max or both");
  const door = checks();
  for (const field of Object.keys(range)) {
    if (field !== "min" && field !== "max")
      door.run(() => fail("type", `${path}.${field}`, field, "min or max"));
  }
  const [min, max] = (["min", "max"] as const).map((end) =>
    range[end] === undefined
      ? undefined
      : door.run(() => expectNumber(range[end], `${path}.${end}`, { min: 0, max: 14 })),
  );
  if (min !== undefined && max !== undefined && min > max)
    door.run(() => fail("conflict", `${path}.max`, max, `${min} or more`));
  door.done();
};
