import { expectWithin, notShares } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { dimensionNoun } from "../../quantity/house.js";
import {
  expectFields,
  expectList,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
  quantityOf,
  type Temperature,
} from "../../quantity/index.js";

export type { Temperature } from "../../quantity/index.js";

/** An air temperature. */
/** A relative humidity. */
export type Humidity = Quantity<"1", "none">;

/** Figures at even steps in one unit, in order; `null` where there is none. A column of an hourly record fits. */
export interface AirColumn {
  readonly unit: string;
  readonly values: readonly (number | null)[];
}

/** Takes an air temperature within bounds in °C, or throws. */
export const expectAir = (input: unknown, path: string, low: number, high: number): Temperature => {
  if (input === undefined) return fail("missing", path, input, "an air temperature");
  const t = expectQuantity(input, { dimension: "temperature", of: "none" }, path);
  return expectWithin(t, t.in("°C"), path, { min: low, max: high, unit: "°C" });
};

/** Takes a relative humidity of 1 to 100 %, or throws: drier air than that is a share taken for a percentage. */
export const expectHumidity = (input: unknown, path: string): Humidity => {
  if (input === undefined) return fail("missing", path, input, "a relative humidity");
  const rh = expectQuantity(input, { dimension: "1", of: "none", bound: "positive" }, path);
  if (exceeds(1, rh.in("%")))
    return outOfRange(path, rh, { min: 1, unit: "%" }, '{}: for 65 % write quantity(65, "%")');
  return exceeds(rh.in("%"), 100)
    ? outOfRange(path, rh, { max: 100, unit: "%" }, "{}: a humidity of 80 is 80 %, not a share of 80")
    : rh;
};

/** What a column of air may hold, in one unit. */
export interface ColumnRule {
  readonly dimension: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
}

/** The most figures of one column: twenty years by the hour. */
const longest = 200_000;

/** Takes a column and gives its figures in the unit of the rule, or throws with the place of each that cannot be. */
export const expectColumn = (input: unknown, path: string, rule: ColumnRule): (number | null)[] => {
  if (input === undefined)
    return fail(
      "missing",
      path,
      input,
      `a column with unit and values, each ${dimensionNoun(rule.dimension)}`,
    );
  const { unit, values } = expectFields(input, ["unit", "values"], path);
  if (typeof unit !== "string") return fail("unit/unknown", `${path}.unit`, unit, "a unit");
  const probe = quantityOf(0, unit, "none", `${path}.unit`);
  if (probe.dimension !== rule.dimension) {
    return fail(
      "unit/mismatch",
      `${path}.unit`,
      unit,
      `a unit for ${dimensionNoun(rule.dimension)}, such as ${rule.unit}`,
    );
  }
  const list = expectList(values, `${path}.values`, "figure", longest);
  const figures = list.map((value, i) => {
    const at = `${path}.values[${i}]`;
    if (value === null) return null;
    if (typeof value !== "number" || !Number.isFinite(value)) {
      return fail("not-finite", at, value, "a number, or null where there is none");
    }
    const same = quantityOf(value, unit, "none", at).in(rule.unit as never) as number;
    const { min, max } = rule;
    return exceeds(min, same) || exceeds(same, max)
      ? outOfRange(at, value, { min, max, unit: rule.unit })
      : same;
  });
  if (rule === columnRules.humidity) notShares(figures, `${path}.values`);
  return figures;
};

/** What the columns of air hold. */
export const columnRules = {
  humidity: { dimension: "1", unit: "%", min: 0, max: 100 },
  temperature: { dimension: "temperature", unit: "°C", min: -80, max: 60 },
  rain: { dimension: "length", unit: "mm", min: 0, max: 500 },
} as const;
