import { type CivilDate, civilDate, yearOf } from "../calendar/index.js";
import {
  allOf,
  checks,
  expectAmount,
  expectFields,
  expectQuantity,
  fail,
  type Quantity,
  type QuantityJson,
  quantityOf,
} from "../quantity/index.js";
import { expectActive, expectItems, expectWholeArea } from "./read.js";

/** One application of one active ingredient. A `Quantity` fits. */
export interface ActiveApplication {
  readonly date: CivilDate;
  /** An amount, or a rate per area; of `ai` or `ae`, best with an id such as `ai:dithiopyr`. */
  readonly active: QuantityJson;
  /** The treated area; needed with a rate. */
  readonly area?: QuantityJson;
}

/** What was used of one active ingredient in one calendar year. */
export interface ActiveUse {
  readonly year: number;
  readonly of: string;
  readonly applications: number;
  readonly amount: Quantity<"mass", string>;
  /** The amount over the whole area, treated or not. */
  readonly perArea: Quantity<"mass/area", string>;
}

/** Active ingredients by year. */
export interface ActiveUses {
  readonly type: "active-uses";
  readonly version: 1;
  /** By year, then by active ingredient. */
  readonly uses: readonly ActiveUse[];
}

const most = 20_000;

const readOne = (input: unknown, path: string): { year: number; of: string; kg: number } => {
  const fields = expectFields(input, ["date", "active", "area"], path);
  const { date, active, area } = allOf({
    date: () => civilDate(fields.date as CivilDate, `${path}.date`),
    active: () =>
      expectActive(fields.active, `${path}.active`, ["mass", "mass/area"], "an amount or a rate of ai"),
    area: () =>
      fields.area === undefined
        ? undefined
        : expectQuantity(fields.area, { dimension: "area", bound: "positive" }, `${path}.area`).in("ha"),
  });
  if (active.dimension === "mass") return { year: yearOf(date), of: active.of, kg: active.in("kg" as never) };
  if (area === undefined)
    return fail("missing", `${path}.area`, undefined, "the treated area, because the active is a rate");
  return { year: yearOf(date), of: active.of, kg: (active.in("kg/ha" as never) as number) * area };
};

/**
 * Active ingredient used per calendar year, by ingredient: the amount, and the amount per area of the whole site.
 *
 * `per area = sum of (rate x treated area) / whole area`
 *
 * Acid equivalent (`ae`) and active ingredient (`ai`) of one herbicide are two lines; bring them together first with
 * `activeOfAcid` where they should be one. The label's yearly maximum is per treated area, and is not checked here: that is
 * `checkLimits`.
 *
 * @param input.area - the whole area of the site
 * @returns in kg and kg/ha; `.in("lb/acre")` gives the other
 * @throws RatewrightError `date`, `missing`, `range`, `unit/mismatch`, `substance/mismatch` with paths such as
 * `applications[2].area`
 * Source: definition.
 *
 * @example
 * ```ts
 * import { activeUses, quantity } from "ratewright";
 * const { uses } = activeUses({
 *   area: quantity(10, "acre"),
 *   applications: [
 *     { date: "2026-04-20", active: quantity(0.5, "lb/acre", "ai:dithiopyr"), area: quantity(4, "acre") },
 *     { date: "2026-06-02", active: quantity(3, "lb", "ai:dithiopyr") },
 *   ],
 * });
 * uses.map(({ year, of, amount, perArea }) => [year, of, Number(amount.in("lb").toFixed(6)), Number(perArea.in("lb/acre").toFixed(6))]);
 * // => [[2026, "ai:dithiopyr", 5, 0.5]]
 * ```
 */
export const activeUses = (input: {
  readonly applications: readonly ActiveApplication[];
  readonly area: Quantity<"area", "none">;
}): ActiveUses => {
  const fields = expectFields(input, ["applications", "area"]);
  const { list, hectares } = allOf({
    list: () => expectItems(fields.applications, "applications", "application", most),
    hectares: () => expectWholeArea(fields.area, "area").in("ha"),
  });
  const problems = checks();
  const sums = new Map<string, { year: number; of: string; kg: number; applications: number }>();
  list.forEach((one, i) => {
    const read = problems.run(() => readOne(one, `applications[${i}]`));
    if (read === undefined) return;
    const { year, of, kg } = read;
    const key = `${year} ${of}`;
    const before = sums.get(key) ?? { year, of, kg: 0, applications: 0 };
    sums.set(key, { year, of, kg: before.kg + kg, applications: before.applications + 1 });
  });
  problems.done();
  const uses = [...sums.values()]
    .sort((a, b) => a.year - b.year || (a.of < b.of ? -1 : 1))
    .map(({ year, of, kg, applications }) => ({
      year,
      of,
      applications,
      amount: expectAmount(quantityOf(kg, "kg", of, "amount"), { dimensions: ["mass"] }, "amount"),
      perArea: expectAmount(
        quantityOf(kg / hectares, "kg/ha", of, "perArea"),
        { dimensions: ["mass/area"] },
        "perArea",
      ),
    }));
  return { type: "active-uses", version: 1, uses };
};
