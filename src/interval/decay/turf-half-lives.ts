import { type Citation, fail, frozen } from "../../quantity/index.js";
import type { LowHigh } from "../regulator/growth-regulators.js";

/** Half-lives of residues as a source found them. Plain JSON. */
export interface TurfHalfLife {
  readonly active: string;
  readonly where: "turf" | "bare soil";
  readonly days: LowHigh;
  readonly note: string;
  readonly source: Citation;
}

const schleicher: Citation = /* @__PURE__ */ frozen({
  title: "Efficacy and dissipation of dithiopyr and pendimethalin in perennial ryegrass turf",
  publisher: "Weed Science 43(1), 140-148 (Schleicher et al.)",
  year: 1995,
  where: "abstract",
});
const mobility: Citation = /* @__PURE__ */ frozen({
  title:
    "Effect of turfgrass cover and irrigation on soil mobility and dissipation of mefenoxam and propiconazole",
  publisher: "journal abstract",
  where: "abstract",
});
const dt50 = "A DT50; as a half-life it assumes first-order decay.";

/** Published half-lives under turf, and beside them on bare soil: on bare soil they are 1.2 to 2.4 times as long. */
export const turfHalfLives: readonly TurfHalfLife[] = /* @__PURE__ */ frozen([
  {
    active: "dithiopyr",
    where: "turf",
    days: [35, 35],
    note: `${dt50} Control lasted 87 days at 0.6 kg/ha.`,
    source: schleicher,
  },
  {
    active: "pendimethalin",
    where: "turf",
    days: [23, 23],
    note: `${dt50} Control lasted 59 days at 1.7 kg/ha, in one year of two.`,
    source: schleicher,
  },
  { active: "mefenoxam", where: "turf", days: [5, 6], note: "At 770 g/ha.", source: mobility },
  { active: "mefenoxam", where: "bare soil", days: [7, 8], note: "At 770 g/ha.", source: mobility },
  { active: "propiconazole", where: "turf", days: [12, 15], note: "At 1540 g/ha.", source: mobility },
  { active: "propiconazole", where: "bare soil", days: [29, 29], note: "At 1540 g/ha.", source: mobility },
]);

/**
 * The published half-lives of an active ingredient, by its common name. Empty where none was read.
 *
 * @throws RatewrightError `type`
 *
 * @example
 * ```ts
 * import { turfHalfLivesOf } from "ratewright";
 * turfHalfLivesOf("propiconazole").map(({ where, days }) => [where, days]);
 * // => [["turf", [12, 15]], ["bare soil", [29, 29]]]
 * ```
 */
export const turfHalfLivesOf = (active: string): readonly TurfHalfLife[] => {
  if (typeof active !== "string")
    return fail("type", "active", active, "the common name of an active ingredient");
  return turfHalfLives.filter((one) => one.active === active.trim().toLowerCase());
};
