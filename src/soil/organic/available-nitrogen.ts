import { notShare } from "../../numeric/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectOneOf,
  expectQuantity,
  frozen,
  numberIn,
  outOfRange,
  Quantity,
} from "../../quantity/index.js";

/** How the share of later years follows from the first. */
export type Mineralization = "half of the year before" | "same share of what is left";

/** Nitrogen that an organic amendment sets free, by year. */
export interface AvailableNitrogen {
  readonly type: "available-nitrogen";
  readonly version: 1;
  /** The first year first. */
  readonly years: readonly Quantity<"mass/area", "N">[];
  /** What is still bound after the last of them. */
  readonly left: Quantity<"mass/area", "N">;
  readonly source: Citation;
}

const source: Citation = /* @__PURE__ */ frozen({
  title: "Compost calculations (handout)",
  publisher: "unattributed handout",
  where: "summary",
});

const mostYears = 50;

/**
 * The nitrogen of an organic amendment that grass can take up, year by year.
 *
 * - `"half of the year before"`: `N f / 2^(i-1)` in year `i`, as a compost handout has it: 10 to 15 % of total nitrogen in
 *   the first year, half of that in the second and so on. It never sets free more than twice the first year
 * - `"same share of what is left"`: `N f (1 - f)^(i-1)`
 * - nitrogen that is mineral at the start (ammonium, nitrate) counts in the first year, on top
 *
 * @param input.organic - organic nitrogen applied, per area
 * @param input.firstYear - percent of it, above 0 up to 50 for the first way, up to 100 for the second
 * @param input.mineral - ammonium and nitrate nitrogen applied with it; none where it is left out
 * @param input.years - how many years to tell
 * @param input.later - which of the two ways
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: "Compost calculations", an unattributed handout, for the first; weak provenance, in line with common extension
 * ranges. The second is common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { availableNitrogen } from "ratewright/soil";
 * const found = availableNitrogen({
 *   organic: quantity(8, "lb/1000 ft2", "N"), firstYear: 10, years: 3, later: "half of the year before",
 * });
 * found.years.map((year) => year.in("lb/1000 ft2")); // => [0.8, 0.4, 0.2]
 * found.left.in("lb/1000 ft2"); // => 6.6
 * ```
 */
export const availableNitrogen = (input: {
  readonly organic: Quantity<"mass/area", "N">;
  readonly mineral?: Quantity<"mass/area", "N">;
  readonly firstYear: number;
  readonly years: number;
  readonly later: Mineralization;
}): AvailableNitrogen => {
  const record = expectFields(input, ["organic", "mineral", "firstYear", "years", "later"], "input");
  const nitrogen = { dimension: "mass/area", of: "N", bound: "non-negative" } as const;
  const read = allOf({
    organic: () => expectQuantity(record.organic, nitrogen, "organic"),
    mineral: () =>
      record.mineral === undefined ? undefined : expectQuantity(record.mineral, nitrogen, "mineral"),
    later: () =>
      expectOneOf(record.later, ["half of the year before", "same share of what is left"], "later"),
    firstYear: () => firstYearOf(record.firstYear, record.later === "half of the year before" ? 50 : 100),
    years: () => {
      const years = expectNumber(record.years, "years", { min: 1, max: mostYears });
      return Number.isInteger(years) ? years : outOfRange("years", years, { step: 1, count: "years" });
    },
  });
  const { value: total, unit } = read.organic;
  const mineral = read.mineral === undefined ? 0 : numberIn(read.mineral, unit);
  const amount = (value: number): Quantity<"mass/area", "N"> => new Quantity(value, unit, "N", "mass/area");
  let bound = total;
  const years = Array.from({ length: read.years }, (_, i) => {
    const share =
      read.later === "half of the year before" ? (total * read.firstYear) / 2 ** i : bound * read.firstYear;
    const free = share / 100;
    bound -= free;
    return amount(free + (i === 0 ? mineral : 0));
  });
  return { type: "available-nitrogen", version: 1, years, left: amount(Math.max(0, bound)), source };
};

/** A percent of the organic nitrogen: 0.1 is a share, 0.1 for 10 %. */
const firstYearOf = (input: unknown, most: number): number =>
  notShare(expectNumber(input, "firstYear", { above: 0, max: most }), "firstYear", {
    least: most / 100,
    most,
    unit: "",
  });
