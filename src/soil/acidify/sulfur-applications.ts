import type { CivilDate } from "../../calendar/index.js";
import {
  allOf,
  expectFields,
  expectFlag,
  expectQuantity,
  type Finding,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type SplitAmendment, splitAmendment } from "../split/split-amendment.js";
import { type SurfaceMaximum, surfaceMaxima } from "../split/surface-maxima.js";

/** The lowest cut for which the source has a figure. */
const lowestCutInches = 2;

/**
 * Elemental sulfur on standing turf, split by date under the published maximum: 5 lb per 1000 ft2 at once and 10 lb in
 * twelve months, for turf mown at 2 in or higher. For closer cut turf the source says much less and names no figure, so
 * it is refused.
 *
 * Only a soil without free lime can be acidified in this way: with free lime a warning says that the pH will not move in
 * a useful time (see `sulfurForCarbonate` for what it would take).
 *
 * @param input.total - sulfur as the element, mass per area
 * @param input.freeLime - whether the soil fizzes with vinegar or the report states carbonates
 * @param input.mowingHeight - how high the turf is cut
 * @param input.first - the date of the first application
 * @param input.monthsApart - from each application to the next
 * @throws RatewrightError `range` (a cut under 2 in, months), `missing`, `type`, `date`, `unit/mismatch`,
 *   `substance/mismatch`; `infeasible` as `splitAmendment`
 *
 * Source: "Sulfur is not effective for lowering pH of turfed soils", Purdue University Turfgrass Science.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { sulfurApplications } from "ratewright/soil";
 * const plan = sulfurApplications({
 *   total: quantity(15, "lb/1000 ft2", "S"), mowingHeight: quantity(3, "in"),
 *   freeLime: false, first: "2026-09-15", monthsApart: 2,
 * });
 * plan.applications.map(({ date }) => date); // => ["2026-09-15", "2026-11-15", "2027-09-15"]
 * ```
 */
export const sulfurApplications = (input: {
  readonly total: Quantity<"mass/area", "S">;
  readonly mowingHeight: Quantity<"length", "none">;
  readonly freeLime: boolean;
  readonly first: CivilDate;
  readonly monthsApart: number;
}): SplitAmendment<"S"> => {
  const fields = ["total", "mowingHeight", "freeLime", "first", "monthsApart"] as const;
  const record = expectFields(input, fields, "input");
  const row = surfaceMaxima.find(({ amendment }) => amendment === "sulfur") as SurfaceMaximum;
  const read = allOf({
    total: () =>
      expectQuantity(record.total, { dimension: "mass/area", of: "S", bound: "non-negative" }, "total"),
    height: () => {
      const wanted = { dimension: "length", of: "none", bound: "positive" } as const;
      const height = expectQuantity(record.mowingHeight, wanted, "mowingHeight");
      return height.in("in") < lowestCutInches
        ? outOfRange(
            "mowingHeight",
            height,
            /m$/.test(height.unit)
              ? { min: numberIn({ value: lowestCutInches, unit: "in" }, "mm"), unit: "mm" }
              : { min: lowestCutInches, unit: "in" },
            "{}: no source has a figure for sulfur on closer cut turf",
          )
        : height;
    },
    freeLime: () => expectFlag(record.freeLime, "freeLime"),
  });
  const most = (value: number): Quantity<"mass/area", "S"> => quantity(value, row.unit, "S");
  const split = splitAmendment({
    total: read.total,
    most: most(row.amount),
    perYear: most(row.perYear as number),
    source: row.source,
    first: record.first as CivilDate,
    monthsApart: record.monthsApart as number,
  });
  return read.freeLime ? { ...split, findings: [...split.findings, freeLimeFinding(row)] } : split;
};

const freeLimeFinding = ({ source }: SurfaceMaximum): Finding => ({
  code: "sulfur/free-lime",
  severity: "warning",
  path: "freeLime",
  params: {},
  text: "The soil holds free lime: these rates will not lower its pH in a useful time. Treat the symptom instead, such as iron on the leaf.",
  source,
});
