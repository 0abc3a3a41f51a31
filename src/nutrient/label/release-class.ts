import { exceeds } from "../../numeric/index.js";
import {
  type Citation,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  outOfRange,
  plainCopy,
} from "../../quantity/index.js";
import type { NitrogenBreakdown } from "./nitrogen-breakdown.js";

/** A named scheme that sorts fertilizers by how much of their nitrogen is slow. */
export interface ReleaseScheme {
  /** Which share the scheme looks at: water-insoluble nitrogen alone, or all slowly available nitrogen. */
  readonly share: "water-insoluble" | "slow";
  /**
   * The classes from slow to quick. A share belongs to the first class whose bound it reaches; a bound
   * that is `exclusive` has to be exceeded. In percent of the nitrogen.
   */
  readonly classes: readonly { readonly name: string; readonly from: number; readonly exclusive?: boolean }[];
  readonly source: Citation;
  readonly note: string;
}

const suffolk: Citation = /* @__PURE__ */ frozen({
  title: "Another set of calculations for fertilizer applications",
  publisher: "Cornell Cooperative Extension, Suffolk County",
  where: "slow-release steps a to e",
});

const thirds = [
  { name: "slow", from: 29, exclusive: true },
  { name: "moderate", from: 15, exclusive: true },
  { name: "quick", from: 0 },
] as const;

/** The schemes in print, by name. They disagree: see the note of each. */
export const releaseSchemes: Readonly<Record<ReleaseSchemeName, ReleaseScheme>> = /* @__PURE__ */ frozen({
  "suffolk water-insoluble": {
    share: "water-insoluble",
    classes: thirds,
    source: suffolk,
    note: "The text says to divide total N by WIN, which is never below 1; the thresholds only make sense for WIN by total N. Both 'moderate' and 'quick' claim exactly 0.15: it counts as quick here. Coated urea is not WIN and counts as quick.",
  },
  "suffolk with coated": {
    share: "slow",
    classes: thirds,
    source: suffolk,
    note: "The same thresholds with coated urea added to WIN, as the turf pages of the University of California say.",
  },
  "thirty percent": {
    share: "slow",
    classes: [
      { name: "slow", from: 30 },
      { name: "moderate", from: 15 },
      { name: "quick", from: 0 },
    ],
    source: {
      title: "Time release nitrogen",
      publisher: "a lawn fertilizer maker's article that repeats university advice",
    },
    note: "Read: at least 30 % of the nitrogen from slow sources. The lower threshold of 15 % is the one of the other schemes.",
  },
  "Vermont 1266b": {
    share: "slow",
    classes: [
      { name: "not nitrogen fertilizer", from: 15 },
      { name: "nitrogen fertilizer", from: 0 },
    ],
    source: { title: "10 V.S.A. 1266b", publisher: "Vermont Statutes", year: 2012, where: "(a)" },
    note: "A definition of law, not of agronomy: turf fertilizer with less than 15 % slow-release nitrogen falls under its limits for nitrogen.",
  },
});

/** The name of a scheme of {@link releaseSchemes}. */
export type ReleaseSchemeName =
  | "suffolk water-insoluble"
  | "suffolk with coated"
  | "thirty percent"
  | "Vermont 1266b";

/** The class, the share that decided and what the scheme leaves out. */
export interface ReleaseClass {
  readonly class: string;
  readonly scheme: string;
  /** The share that the scheme looks at, percent of the nitrogen. */
  readonly sharePercent: number;
  readonly findings: readonly Finding[];
  readonly source: Citation;
}

/**
 * The release class of a fertilizer by a named scheme.
 *
 * Equation: the first class, from slow to quick, whose bound the share of the nitrogen reaches. Shares
 * compare at a relative 1e-9.
 *
 * Sources disagree on the threshold (0.29 or 0.30 for slow) and on what counts (WIN alone, or coated urea
 * too), so the scheme has no default: see {@link releaseSchemes} for who says what.
 *
 * @param breakdown - made by {@link nitrogenBreakdown}
 * @throws RatewrightError `type` for an unknown scheme or a record that is no breakdown; `missing` where the scheme
 *   asks for water-insoluble nitrogen and the label states only slow nitrogen; `range`, `unit/mismatch`
 *
 * Source: stands with each scheme of {@link releaseSchemes}.
 *
 * @example
 * ```ts
 * import { nitrogenBreakdown, releaseClass } from "ratewright";
 * const organic = nitrogenBreakdown({ percent: { urea: 14, waterInsoluble: 6 } }, 20);
 * releaseClass(organic, "suffolk water-insoluble").class; // => "slow"
 * const coated = nitrogenBreakdown({ percent: { urea: 12, coated: 12 } }, 24);
 * releaseClass(coated, "suffolk water-insoluble").class; // => "quick"
 * releaseClass(coated, "suffolk with coated").class; // => "slow"
 * ```
 */
export const releaseClass = (breakdown: NitrogenBreakdown, scheme: ReleaseSchemeName): ReleaseClass => {
  const given = plainCopy(breakdown);
  const made = "a record made by nitrogenBreakdown";
  if (Object(given).type !== "nitrogen breakdown") return fail("type", "breakdown", given, made);
  if (!Array.isArray(given.findings) || given.findings.length > 1000)
    return fail("type", "breakdown.findings", given.findings, `a list of findings, as in ${made}`);
  const known = expectOneOf(scheme, Object.keys(releaseSchemes) as ReleaseSchemeName[], "scheme");
  const rules = releaseSchemes[known];
  const slow = percentOfNitrogen(given.slowShare, "N:slow/N", "breakdown.slowShare");
  const share =
    rules.share === "slow"
      ? slow
      : percentOfNitrogen(
          given.waterInsolubleShare ??
            fail("missing", "breakdown.waterInsolubleShare", undefined, "the label's breakdown of nitrogen"),
          "other:WIN/N",
          "breakdown.waterInsolubleShare",
        );
  const reached = rules.classes.find(({ from, exclusive }) =>
    exclusive === true ? exceeds(share, from) : !exceeds(from, share),
  );
  const findings: Finding[] = [...given.findings];
  if (rules.share === "water-insoluble" && exceeds(slow, share)) {
    findings.push({
      code: "nitrogen/coated-not-counted",
      severity: "note",
      params: { scheme: known, share, slowShare: slow },
      text: `The scheme looks at water-insoluble nitrogen alone (${Number(share.toFixed(1))} % of the nitrogen); with coated and other slow nitrogen it is ${Number(slow.toFixed(1))} %.`,
      source: rules.source,
    });
  }
  return {
    class: reached?.name ?? outOfRange("breakdown", share, { min: 0, unit: "%" }),
    scheme: known,
    sharePercent: share,
    findings,
    source: rules.source,
  };
};

const percentOfNitrogen = (share: unknown, of: string, path: string): number =>
  expectQuantity(share, { dimension: "mass/mass", of, bound: "non-negative" }, path).in("% w/w");
