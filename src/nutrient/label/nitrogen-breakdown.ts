import {
  allOf,
  type Citation,
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  frozen,
  outOfRange,
  type Quantity,
  quantity,
  RatewrightError,
} from "../../quantity/index.js";
import { type Analysis, anyPercentage, percentAt, percentBounds } from "./analysis.js";
import { expectPath } from "./expect-source.js";
import { labelFields } from "./label-fields.js";

/** The lines in which a label breaks its total nitrogen down. */
export type NitrogenLine = (typeof lines)[number];

const lines = ["ammoniacal", "nitrate", "urea", "otherWaterSoluble", "waterInsoluble", "coated"] as const;
const slowLines: readonly string[] = ["waterInsoluble", "coated"];
const otherLines = lines.filter((line) => !slowLines.includes(line));

/**
 * The guaranteed breakdown of nitrogen on a label. Every figure is percent of PRODUCT by weight, as labels
 * print it, never a share of the nitrogen.
 */
export interface NitrogenGuarantee {
  /** The lines of the guarantee; they add up to the total nitrogen. */
  readonly percent: Readonly<Partial<Record<NitrogenLine, number>>>;
  /**
   * What a footnote claims as slowly available within a line that is not slow as such: of 20 % urea
   * nitrogen, 12 % coated slow-release urea nitrogen is `{ urea: 12 }`. It is part of the line, not added.
   */
  readonly slowWithin?: Readonly<Partial<Record<Exclude<NitrogenLine, "waterInsoluble" | "coated">, number>>>;
}

/** What {@link nitrogenBreakdown} finds. */
export interface NitrogenBreakdown {
  readonly type: "nitrogen breakdown";
  readonly version: 1;
  /** Total nitrogen, percent of product. */
  readonly total: Quantity<"mass/mass", "N/product">;
  /** Slowly available nitrogen, percent of PRODUCT, as labels print it. */
  readonly slow: Quantity<"mass/mass", "N:slow/product">;
  /** All other nitrogen, percent of product. */
  readonly quick: Quantity<"mass/mass", "N:quick/product">;
  /** Slowly available nitrogen as a share of the NITROGEN. */
  readonly slowShare: Quantity<"mass/mass", "N:slow/N">;
  /**
   * Water-insoluble nitrogen alone as a share of the nitrogen: coated urea is not in it. Absent where only
   * slow nitrogen in all is stated.
   */
  readonly waterInsolubleShare?: Quantity<"mass/mass", "other:WIN/N">;
  /**
   * `"breakdown"`; `"slow nitrogen stated"` where a product states slow nitrogen without its lines; or
   * `"none stated"` where there was nothing and all nitrogen counts as quick-release.
   */
  readonly basis: "breakdown" | "slow nitrogen stated" | "none stated";
  readonly findings: readonly Finding[];
}

/** The rule that coated urea counts as slow though it dissolves, and that no mention means quick. */
export const coatedNitrogenSource: Citation = /* @__PURE__ */ frozen({
  title: "Water-insoluble nitrogen (turf pages)",
  publisher: "University of California integrated pest management program",
  url: "https://ipm.ucanr.edu/TOOLS/TURF/MAINTAIN/winamt.html",
});

/**
 * The total, slow- and quick-release nitrogen of a label's guaranteed breakdown, and the slow share of the nitrogen.
 *
 * Equation: `total = ammoniacal + nitrate + urea + other + WIN + coated`;
 * `slow = WIN + coated + what footnotes claim within other lines`; `share = slow / total`.
 *
 * - every figure percent of PRODUCT by weight, 0 to 100; `WIN` water-insoluble nitrogen
 * - `share` percent of the NITROGEN
 *
 * Coated urea is slow but dissolves in the laboratory, so it is not part of WIN: it stands in a line of
 * its own (`coated`) or in a footnote to the urea line (`slowWithin.urea`). Without a breakdown all
 * nitrogen counts as quick-release, and a finding says so.
 *
 * Range: total nitrogen above 0 to 100 %; the lines add up to it to a relative 1e-9, as label rules ask.
 *
 * @param guarantee - the label's breakdown; `undefined` where it has none
 * @param total - total nitrogen in percent of product, from the grade
 * @throws RatewrightError `conflict` where the lines do not add up to the total, or a footnote claims more
 *   than its line; `range`, `not-finite`, `type`
 *
 * Source: lines and sum, Florida Administrative Code 5E-1.003 (labels); coated urea added to WIN, and no
 * mention meaning quick, University of California, "Water-insoluble nitrogen"; 15 % WIN of 30 % N is 50 %
 * slow, Suffolk County (New York), "Fertilizer selection".
 *
 * @example
 * ```ts
 * import { nitrogenBreakdown } from "ratewright";
 * const label = { percent: { urea: 16, waterInsoluble: 2, coated: 6 } };
 * const broken = nitrogenBreakdown(label, 24);
 * broken.slow.in("% w/w"); // => 8
 * Number(broken.slowShare.in("% w/w").toFixed(2)); // => 33.33
 * Number(broken.waterInsolubleShare?.in("% w/w").toFixed(2)); // => 8.33
 * nitrogenBreakdown(undefined, 24).findings[0]?.code; // => "nitrogen/no-breakdown"
 * nitrogenBreakdown({ percent: { urea: 20 } }, 24); // => throws conflict
 * ```
 */
export const nitrogenBreakdown = (
  guarantee: NitrogenGuarantee | undefined,
  total: number,
  path = "guarantee",
): NitrogenBreakdown => {
  expectPath(path);
  if (percentage(total, "total") === 0) outOfRange("total", total, { above: 0 }, "{}: no nitrogen, no share");
  const found = guarantee === undefined ? { slow: 0, insoluble: 0 } : readGuarantee(guarantee, total, path);
  const findings: Finding[] = [];
  if (guarantee === undefined) {
    findings.push({
      code: "nitrogen/no-breakdown",
      severity: "note",
      path,
      params: { total },
      text: `No slow-release nitrogen on the label: all ${total} % N counted as quick-release.`,
      source: coatedNitrogenSource,
    });
  }
  return {
    ...partsOf(total, found.slow),
    waterInsolubleShare: quantity((found.insoluble * 100) / total, "% w/w", "other:WIN/N"),
    basis: guarantee === undefined ? "none stated" : "breakdown",
    findings,
  };
};

/** Lines that are all slow add up to the total but for rounding noise; what noise leaves over is not quick-release nitrogen. */
const withoutNoise = (slow: number, total: number): number => (slow < total * (1 - 1e-9) ? slow : total);

/** The slow nitrogen of a guarantee, in percent of product, where nothing else of it is wanted. */
export const slowPercent = (guarantee: NitrogenGuarantee, total: number, path: string): number =>
  withoutNoise(readGuarantee(guarantee, total, path).slow, total);

const partsOf = (
  total: number,
  stated: number,
): Pick<NitrogenBreakdown, "type" | "version" | "total" | "slow" | "quick" | "slowShare"> => {
  const slow = withoutNoise(stated, total);
  return {
    type: "nitrogen breakdown",
    version: 1,
    total: quantity(total, "% w/w", "N/product"),
    slow: quantity(slow, "% w/w", "N:slow/product"),
    quick: quantity(total - slow, "% w/w", "N:quick/product"),
    slowShare: quantity((slow * 100) / total, "% w/w", "N:slow/N"),
  };
};

/**
 * The total, slow- and quick-release nitrogen of a product: from the breakdown on its label, else from the slow
 * nitrogen that it states, else all quick, with a finding.
 *
 * Equation and range: see {@link nitrogenBreakdown}.
 *
 * @param product - a record made by `fertilizer`, or its `analysis` with `nitrogen`, the breakdown on the label, or
 *   `slowNitrogen` where it is stated
 * @throws RatewrightError `range` for a product without nitrogen; `conflict`, `unit/mismatch`
 *
 * Source: as {@link nitrogenBreakdown}.
 *
 * @example
 * ```ts
 * import { fertilizer, productNitrogen, quantity } from "ratewright";
 * const feed = fertilizer({
 *   id: "feed-a",
 *   analysis: "24-0-11",
 *   slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
 * });
 * productNitrogen(feed).slowShare.in("% w/w"); // => 50
 * productNitrogen(feed).basis; // => "slow nitrogen stated"
 * ```
 */
export const productNitrogen = (product: {
  readonly analysis: Analysis;
  readonly nitrogen?: NitrogenGuarantee;
  readonly slowNitrogen?: Quantity<"mass/mass", "N:slow/product">;
}): NitrogenBreakdown => {
  expectRecord(product, "product");
  const total = percentAt(product.analysis, "N", "product.analysis");
  if (!(total > 0)) outOfRange("product.analysis", total, { above: 0, unit: "%" }, "{} nitrogen");
  if (product.nitrogen !== undefined || product.slowNitrogen === undefined) {
    return nitrogenBreakdown(product.nitrogen, total, "product.nitrogen");
  }
  const slow = expectQuantity(
    product.slowNitrogen,
    { dimension: "mass/mass", of: "N:slow/product", bound: "non-negative" },
    "product.slowNitrogen",
  ).in("% w/w");
  if (slow > total * (1 + 1e-9)) fail("conflict", "product.slowNitrogen", slow, `at most the ${total} % N`);
  const parts = partsOf(total, slow);
  return {
    type: parts.type,
    version: parts.version,
    total: parts.total,
    slow: parts.slow,
    quick: parts.quick,
    slowShare: parts.slowShare,
    basis: "slow nitrogen stated",
    findings: [],
  };
};

const percentage = (value: unknown, path: string): number => {
  if (typeof value !== "number" || !Number.isFinite(value))
    return fail("not-finite", path, value, "a percentage as a bare number, such as 10");
  if (value < 0 || value > 100) fail("range", path, value, anyPercentage, { params: percentBounds });
  return value + 0;
};

/** Reads the figures of some lines, all problems at once. */
const readLines = (
  input: unknown,
  known: readonly NitrogenLine[],
  path: string,
  check?: (line: NitrogenLine, value: number, at: string) => void,
): Partial<Record<NitrogenLine, number>> => {
  const given = labelFields(
    input,
    known,
    path,
    "a breakdown { percent: { urea: 10, waterInsoluble: 8, ... } }",
  );
  const readers = known
    .filter((line) => given[line] !== undefined)
    .map((line) => {
      const at = `${path}.${line}`;
      const read = (): number => {
        const value = percentage(given[line], at);
        check?.(line, value, at);
        return value;
      };
      return [line, read] as const;
    });
  return allOf(Object.fromEntries(readers));
};

const readGuarantee = (
  guarantee: NitrogenGuarantee,
  total: number,
  path: string,
): { slow: number; insoluble: number } => {
  const given = labelFields(
    guarantee,
    ["percent", "slowWithin"],
    path,
    "a breakdown { percent: { urea: 10, waterInsoluble: 8, ... } }",
  );
  const { percent, within } = allOf({
    percent: () => readLines(given.percent, lines, `${path}.percent`),
    within: () =>
      given.slowWithin === undefined
        ? {}
        : readLines(given.slowWithin, otherLines, `${path}.slowWithin`, (line, claimed, at) => {
            const whole = expectRecord(given.percent)[line] ?? 0;
            if (typeof whole === "number" && claimed > whole * (1 + 1e-9)) {
              fail("conflict", at, claimed, `at most the ${whole} % of its line`);
            }
          }),
  });
  const sumOf = (list: readonly (number | undefined)[]): number =>
    list.reduce<number>((sum, value = 0) => sum + value, 0);
  const sum = sumOf(Object.values(percent));
  if (Math.abs(sum - total) > 1e-9 * Math.max(total, 1)) {
    const shares = Math.abs(sum - 100) < 1e-6 && total < 100;
    throw new RatewrightError({
      code: "conflict",
      path: `${path}.percent`,
      got: `${Number(sum.toPrecision(12))} % in all`,
      expected: `lines that add up to the ${total} % nitrogen of the grade`,
      ...(shares && { suggestion: "percent of product, where these are shares of the nitrogen" }),
    });
  }
  const slow = sumOf([percent.waterInsoluble, percent.coated, ...Object.values(within)]);
  return { slow, insoluble: percent.waterInsoluble ?? 0 };
};
