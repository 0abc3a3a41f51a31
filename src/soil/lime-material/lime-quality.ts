import { notShare } from "../../numeric/house.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  Quantity,
} from "../../quantity/index.js";
import { expectPercent } from "../report/expect-ph.js";
import { type FinenessSchemeName, finenessSchemes } from "./fineness-schemes.js";
import { type ReadSieves, readSieves, type SieveTest } from "./sieve-test.js";

/** What the rating of a liming material counts. ENM is a measure of its own: 800 pounds to a ton of the best. */
export type RatingSubstance = "CaCO3 equivalent/product" | "other:ENM/product";

/** What a liming material is worth. */
export interface LimeQuality {
  readonly type: "lime-quality";
  readonly version: 1;
  /** Calcium carbonate equivalent of the dry material, percent; `null` where the label states only an effective value. */
  readonly CCE: number | null;
  /** Percent of water in the material as delivered. */
  readonly moisture: number;
  /** Percent of it that is fine enough, by the scheme. */
  readonly fineness: number | null;
  readonly scheme: FinenessSchemeName | null;
  /** CCE times fineness times dry matter, percent of the material as delivered. */
  readonly effective: number | null;
  /** What a ton of it counts for by the scheme: pounds of calcium carbonate equivalent, or of ENM in Missouri. */
  readonly perTon: Quantity<"mass/mass", RatingSubstance> | null;
  /** The weight that its label sets equal to a ton of standard lime. */
  readonly equalToTon: Quantity<"mass", "product"> | null;
  readonly findings: readonly Finding[];
}

/** What {@link limeQuality} is told; at least one of CCE, effective and equalToTon. */
export interface LimeQualityInput {
  readonly CCE?: number;
  readonly scheme?: FinenessSchemeName;
  readonly sieves?: SieveTest;
  /** Percent of water in the material as delivered; none where it is left out. */
  readonly moisture?: number;
  /** An effective value that the label prints, percent, in place of a sieve test. */
  readonly effective?: number;
  readonly equalToTon?: Quantity<"mass", "product">;
}

/** Pure magnesium oxide has 248: nothing sold as lime neutralizes more. */
const mostCCE = 250;

/** A percent; below 2.5 it is a share, 0.9 for 90 %, which would call for a hundred times the lime. */
const percentOfLime = (input: unknown, path: string): number =>
  notShare(expectPercent(input, path, mostCCE), path, { least: mostCCE / 100, most: mostCCE, unit: "" });
const names = /* @__PURE__ */ Object.keys(finenessSchemes) as readonly FinenessSchemeName[];
const fields = ["CCE", "scheme", "sieves", "moisture", "effective", "equalToTon"] as const;

/**
 * The quality of a liming material by the sieves of a state: `E = CCE F (1 - w)`, percent.
 *
 * - `CCE` calcium carbonate equivalent, percent by weight of the dry material, up to 250 (over 100 is right for
 *   burnt and hydrated lime)
 * - `F` fineness: for Iowa the sum of factor times percent PASSING each sieve, for British Columbia, Mississippi,
 *   Missouri and New York the sum of factor times percent BETWEEN two sieves. A test can be given either way and is
 *   turned into the other
 * - `w` moisture, percent of the material as delivered
 *
 * A ton has `20 E` pounds of it; Missouri counts 800 pounds of ENM to a ton of the best (calcium, not carbonate).
 *
 * Fractions have to add up to 100 %: to within rounding, or up to 2 % short with a finding. More is refused, as are
 * percentages passing that rise toward the finer sieve.
 *
 * @throws RatewrightError `missing`, `range`, `conflict`, `type`
 *
 * Source: named in `finenessSchemes`; the product with moisture as in "Liming terminology and analysis", University of
 * Wisconsin-Madison.
 *
 * @example
 * ```ts
 * import { limeQuality } from "ratewright/soil";
 * const iowa = limeQuality({
 *   CCE: 92, moisture: 2, scheme: "Iowa ECCE", sieves: { passing: { 4: 100, 8: 90, 60: 55 } },
 * });
 * iowa.fineness; // => 70
 * Number(iowa.effective?.toFixed(1)); // => 63.1
 * Number(iowa.perTon?.in("lb/US ton").toFixed(0)); // => 1262
 * limeQuality({ CCE: 92, scheme: "Iowa ECCE", sieves: { passing: { 4: 100, 8: 55, 60: 90 } } }); // => throws conflict
 * ```
 */
export const limeQuality = (input: LimeQualityInput): LimeQuality => {
  const record = expectFields(input, fields, "input");
  const read = allOf({
    CCE: () => (record.CCE === undefined ? null : percentOfLime(record.CCE, "CCE")),
    scheme: () => (record.scheme === undefined ? null : expectOneOf(record.scheme, names, "scheme")),
    moisture: () => (record.moisture === undefined ? 0 : expectPercent(record.moisture, "moisture", 99)),
    effective: () => (record.effective === undefined ? null : percentOfLime(record.effective, "effective")),
    equalToTon: () =>
      record.equalToTon === undefined
        ? null
        : expectQuantity(
            record.equalToTon,
            { dimension: "mass", of: "product", bound: "positive" },
            "equalToTon",
          ),
  });
  expectUsed(record, read.CCE);
  const sieves = sievesOf(record.sieves, read.scheme, read.CCE, read.effective);
  if (read.CCE === null && read.effective === null && read.equalToTon === null) {
    fail("missing", "CCE", undefined, "a calcium carbonate equivalent, an effective value or equalToTon");
  }
  const fineness = read.scheme === null || sieves === null ? null : finenessOf(read.scheme, sieves);
  const effective =
    fineness === null || read.CCE === null
      ? read.effective
      : (read.CCE * fineness * (100 - read.moisture)) / 10_000;
  return {
    type: "lime-quality",
    version: 1,
    CCE: read.CCE,
    moisture: read.moisture,
    fineness,
    scheme: read.scheme,
    effective,
    perTon: effective === null || read.scheme === null ? null : perTon(effective, read.scheme),
    equalToTon: read.equalToTon,
    findings: sieves?.findings ?? [],
  };
};

/** Moisture and scheme change a figure only together with others: what would go unread is refused. */
const expectUsed = (
  record: { readonly [F in (typeof fields)[number]]?: unknown },
  CCE: number | null,
): void => {
  if (record.moisture !== undefined && CCE === null) {
    fail(
      "conflict",
      "moisture",
      record.moisture,
      "moisture with a CCE: an effective value already counts it",
    );
  }
  if (record.scheme !== undefined && record.sieves === undefined && record.effective === undefined) {
    fail("missing", "sieves", undefined, "the sieve test that the scheme rates");
  }
};

const perTon = (effective: number, scheme: FinenessSchemeName): Quantity<"mass/mass", RatingSubstance> => {
  const of: RatingSubstance = scheme === "Missouri ENM" ? "other:ENM/product" : "CaCO3 equivalent/product";
  const pounds = (effective * finenessSchemes[scheme].poundsPerTon) / 100;
  return new Quantity(pounds, "lb/US ton", of, "mass/mass");
};

const sievesOf = (
  input: unknown,
  scheme: FinenessSchemeName | null,
  CCE: number | null,
  effective: number | null,
): ReadSieves | null => {
  if (input === undefined) return null;
  if (scheme === null) return fail("missing", "scheme", undefined, `whose sieves: ${names.join(", ")}`);
  if (CCE === null)
    return fail("missing", "CCE", undefined, "the calcium carbonate equivalent with the sieves");
  if (effective !== null) {
    return fail("conflict", "effective", effective, "a sieve test or an effective value, not both");
  }
  return readSieves(input, finenessSchemes[scheme]);
};

const finenessOf = (name: FinenessSchemeName, { passing, fractions }: ReadSieves): number => {
  const { factorsOf, factors } = finenessSchemes[name];
  const percents = factorsOf === "passing" ? passing : fractions;
  return percents.reduce((sum, percent, i) => sum + percent * (factors[i] as number), 0) / 100;
};
