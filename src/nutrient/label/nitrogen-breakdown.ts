import {
  type Citation,
  checks,
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Analysis, percentOf } from "./analysis.js";

/** The lines in which a label breaks its total nitrogen down. */
export type NitrogenLine =
  | "ammoniacal"
  | "nitrate"
  | "urea"
  | "otherWaterSoluble"
  | "waterInsoluble"
  | "coated";

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
  readonly soluble: Quantity<"mass/mass", "N:soluble/product">;
  /** Slowly available nitrogen as a share of the NITROGEN. */
  readonly slowShare: Quantity<"mass/mass", "N:slow/N">;
  /**
   * Water-insoluble nitrogen alone as a share of the nitrogen: coated urea is not in it. Absent where only
   * slow nitrogen in all is stated.
   */
  readonly waterInsolubleShare?: Quantity<"mass/mass", "other:WIN/N">;
  /**
   * `"breakdown"`; `"slow nitrogen stated"` where a product states slow nitrogen without its lines; or
   * `"none stated"` where there was nothing and all nitrogen counts as quick.
   */
  readonly basis: "breakdown" | "slow nitrogen stated" | "none stated";
  readonly findings: readonly Finding[];
}

/** The rule that coated urea counts as slow though it dissolves, and that no mention means quick. */
export const coatedNitrogenSource: Citation = {
  title: "Water-insoluble nitrogen (turf pages)",
  publisher: "University of California integrated pest management programme",
  url: "https://ipm.ucanr.edu/TOOLS/TURF/MAINTAIN/winamt.html",
};

const lines: readonly string[] = [
  "ammoniacal",
  "nitrate",
  "urea",
  "otherWaterSoluble",
  "waterInsoluble",
  "coated",
];
const slowLines: readonly string[] = ["waterInsoluble", "coated"];

/**
 * The total, slow and soluble nitrogen of a label's guaranteed breakdown, and the slow share of the nitrogen.
 *
 * Equation: `total = ammoniacal + nitrate + urea + other + WIN + coated`;
 * `slow = WIN + coated + what footnotes claim within other lines`; `share = slow / total`.
 *
 * - every figure percent of PRODUCT by weight, 0 to 100; `WIN` water-insoluble nitrogen
 * - `share` percent of the NITROGEN
 *
 * Coated urea is slow but dissolves in the laboratory, so it is not part of WIN: it stands in a line of
 * its own (`coated`) or in a footnote to the urea line (`slowWithin.urea`). Without a breakdown all
 * nitrogen counts as quick, and a finding says so.
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
  if (percentage(total, "total") === 0)
    fail("range", "total", total, "more than zero: no nitrogen, no share");
  const found = guarantee === undefined ? { slow: 0, insoluble: 0 } : readGuarantee(guarantee, total, path);
  const findings: Finding[] = [];
  if (guarantee === undefined) {
    findings.push({
      code: "nitrogen/no-breakdown",
      severity: "note",
      path,
      params: { total },
      text: `No breakdown of the ${total} % nitrogen is stated, so all of it counts as quick.`,
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

const partsOf = (
  total: number,
  stated: number,
): Pick<NitrogenBreakdown, "type" | "version" | "total" | "slow" | "soluble" | "slowShare"> => {
  // Lines that are all slow add up to the total but for rounding noise; what noise leaves over is not soluble nitrogen.
  const slow = stated < total * (1 - 1e-9) ? stated : total;
  return {
    type: "nitrogen breakdown",
    version: 1,
    total: quantity(total, "% w/w", "N/product"),
    slow: quantity(slow, "% w/w", "N:slow/product"),
    soluble: quantity(total - slow, "% w/w", "N:soluble/product"),
    slowShare: quantity((slow * 100) / total, "% w/w", "N:slow/N"),
  };
};

/**
 * The total, slow and soluble nitrogen of a product: from the breakdown on its label, else from the slow
 * nitrogen that it states, else all quick, with a finding.
 *
 * Equation, range and source: see {@link nitrogenBreakdown}.
 *
 * @param product - a record made by `fertilizer`
 * @throws RatewrightError `range` for a product without nitrogen; `conflict`
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
  const total = percentOf(product.analysis, "N");
  if (!(total > 0)) fail("range", "product.analysis", total, "some nitrogen");
  if (product.nitrogen !== undefined || product.slowNitrogen === undefined) {
    return nitrogenBreakdown(product.nitrogen, total, "product.nitrogen");
  }
  const slow = expectQuantity(
    product.slowNitrogen,
    { dimension: "mass/mass", of: "N:slow/product", bound: "non-negative" },
    "product.slowNitrogen",
  ).in("% w/w");
  if (slow > total * (1 + 1e-9)) fail("conflict", "product.slowNitrogen", slow, `at most the ${total} % N`);
  return { ...partsOf(total, slow), basis: "slow nitrogen stated", findings: [] };
};

const percentage = (value: unknown, path: string): number => {
  if (typeof value !== "number" || !Number.isFinite(value)) {
    return fail("not-finite", path, value, "a percentage of the product");
  }
  return value < 0 || value > 100 ? fail("range", path, value, "a percentage from 0 to 100") : value;
};

const readGuarantee = (
  guarantee: NitrogenGuarantee,
  total: number,
  path: string,
): { slow: number; insoluble: number } => {
  const record: unknown = guarantee?.percent;
  if (typeof record !== "object" || record === null) {
    return fail("type", path, guarantee, "a breakdown { percent: { urea: 10, waterInsoluble: 8, ... } }");
  }
  const door = checks();
  let sum = 0;
  let slow = 0;
  for (const [line, value] of Object.entries(guarantee.percent)) {
    const at = `${path}.percent.${line}`;
    if (!lines.includes(line)) {
      door.run(() => fail("type", at, line, `a line of the guarantee: ${lines.join(", ")}`));
      continue;
    }
    const stated = door.run(() => percentage(value, at)) ?? 0;
    sum += stated;
    if (slowLines.includes(line)) slow += stated;
  }
  for (const [line, value] of Object.entries(guarantee.slowWithin ?? {})) {
    const at = `${path}.slowWithin.${line}`;
    if (!lines.includes(line) || slowLines.includes(line)) {
      door.run(() => fail("type", at, line, "a line that is not slow as such, such as urea"));
      continue;
    }
    const claimed = door.run(() => percentage(value, at)) ?? 0;
    const whole = guarantee.percent[line as NitrogenLine] ?? 0;
    if (claimed > whole * (1 + 1e-9)) {
      door.run(() => fail("conflict", at, claimed, `at most the ${whole} % of its line`));
    }
    slow += claimed;
  }
  if (door.count() === 0 && Math.abs(sum - total) > 1e-9 * Math.max(total, 1)) {
    const shares = Math.abs(sum - 100) < 1e-6 && total < 100;
    door.add({
      code: "conflict",
      path: `${path}.percent`,
      got: `${Number(sum.toPrecision(12))} % in all`,
      expected: `lines that add up to the ${total} % nitrogen of the grade`,
      ...(shares ? { suggestion: "percent of product, where these are shares of the nitrogen" } : {}),
    });
  }
  door.done();
  return { slow, insoluble: guarantee.percent.waterInsoluble ?? 0 };
};
