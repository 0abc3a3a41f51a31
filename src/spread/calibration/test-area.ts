import {
  allOf,
  expectFields,
  expectNumber,
  fail,
  frozen,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type AnyArea, above, fieldsOf, isMetric, type Length } from "../inputs.js";

/**
 * The ground over which material was caught, or from which it was lost: exactly one of
 * - `area`, where it is known;
 * - `length` and `width` of a sheet, a tarp or a pan;
 * - `swath` and `distance` of a run;
 * - `swath`, `circumference` and `turns` of the ground wheel.
 */
export type TestArea =
  | (None<"length" | "width" | "swath" | "distance" | "circumference" | "turns"> & {
      readonly area: AnyArea;
    })
  | (None<"area" | "swath" | "distance" | "circumference" | "turns"> & {
      readonly length: Length;
      readonly width: Length;
    })
  | (None<"area" | "length" | "width" | "circumference" | "turns"> & {
      /** The width that one pass covers: see `spreadWidth`. */
      readonly swath: Length;
      readonly distance: Length;
    })
  | (None<"area" | "length" | "width" | "distance"> & {
      readonly swath: Length;
      /** How far the ground wheel rolls in one turn, measured under load. */
      readonly circumference: Length;
      readonly turns: number;
    });

type None<K extends string> = { readonly [P in K]?: never };

const forms = [
  ["area"],
  ["length", "width"],
  ["swath", "distance"],
  ["swath", "circumference", "turns"],
] as const;
const keys = ["area", "length", "width", "swath", "distance", "circumference", "turns"];
const choice = "area; length and width; swath and distance; or swath, circumference and turns";

/**
 * The area of a calibration run, a sheet or a pan.
 *
 * `A = L * w`, for a wheel-turn run `L = turns * circumference`. In ft2 for a length in US customary
 * units, else in m2. Nothing is rounded on the way.
 *
 * - `L` length: of the run (`distance`), or of the sheet or pan
 * - `w` width: of one pass (`swath`), or of the sheet or pan
 *
 * Range: all above zero; `turns` need not be whole. The gate is opened and closed at the working speed, at
 * the lines of the course.
 *
 * Sources disagree: one wheel-turn example rounds the width to 5.8 ft and prints 495 ft2 for what is
 * 495.8 ft2 unrounded and 493 ft2 rounded.
 *
 * @throws RatewrightError `missing` where no form is complete; `conflict` where forms are mixed; `type`,
 * `unit/mismatch`, `substance/mismatch`, `range`, `not-finite`
 *
 * Source: eXtension, "Calibrating a fire ant bait spreader" (200 ft by 23 ft is 4600 ft2); the wheel turns:
 * Wyoming extension column, "Calibration is key to accurate seeding rates", 2012.
 *
 * @example
 * ```ts
 * import { quantity, testArea } from "ratewright";
 * testArea({ swath: quantity(23, "ft"), distance: quantity(200, "ft") }).in("ft2"); // => 4600
 * const drill = { swath: quantity(70, "in"), circumference: quantity(8.5, "ft"), turns: 10 };
 * Number(testArea(drill).in("ft2").toFixed(2)); // => 495.83
 * ```
 */
export const testArea = (ground: TestArea): Quantity<"area", "none"> =>
  areaOfGround(expectFields(ground, groundFields, "ground", `a record with ${choice}`));

const groundFieldsTable = ["length", "width", "swath", "distance", "circumference", "turns", "area"] as const;

/** The fields by which a ground is told. */
export const groundFields: typeof groundFieldsTable = /* @__PURE__ */ frozen(groundFieldsTable);

/** {@link testArea} of a record that was read, and may hold more than the ground. */
export const areaOfGround = (record: Readonly<Record<string, unknown>>): Quantity<"area", "none"> => {
  const given = keys.filter((key) => record[key] !== undefined && record[key] !== null);
  const form =
    forms.find((one) => one.length === given.length && one.every((key) => given.includes(key))) ??
    wrongForm(given, record);
  if (form[0] === "area") {
    const { area } = fieldsOf(record, { area: { dimension: "area" } });
    return area;
  }
  const length = (name: string): Length =>
    fieldsOf({ length: record[name] }, { length: { dimension: "length" } }, name).length;
  const [one, other] = form;
  const { wide, long, turns } = allOf({
    wide: () => length(one),
    long: () => length(other),
    turns: () => (form.length === 3 ? expectNumber(record.turns, "turns", { above: 0 }) : 1),
  });
  const [unit, area] = isMetric(wide.unit) ? (["m", "m2"] as const) : (["ft", "ft2"] as const);
  return quantity(above(wide.in(unit) * long.in(unit) * turns, one), area);
};

const wrongForm = (given: readonly string[], record: Readonly<Record<string, unknown>>): never => {
  // The form that comes nearest names what is missing, and what does not belong.
  const score = (form: readonly string[]): number => form.filter((key) => given.includes(key)).length;
  // Of those that come as near, the shorter form, which stands first.
  const sorted: readonly (readonly string[])[] = [...forms].sort((a, b) => score(b) - score(a));
  const best = sorted[0] as readonly string[];
  const lacking = best.find((key) => !given.includes(key));
  if (lacking !== undefined) return fail("missing", lacking, record[lacking], `a field of ${choice}`);
  const extra = given.find((key) => !best.includes(key)) as string;
  return fail("conflict", extra, record[extra], `one of: ${choice}`);
};
