import { exceeds } from "../../numeric/index.js";
import { type Citation, checks, expectList, type Finding, frozen } from "../../quantity/index.js";
import { type Area, area, type Read, readRecord } from "../read.js";
import { type CurveNumber, readCurveNumber } from "./curve-number.js";

/** A part of a site with a curve number of its own. */
export interface CurveNumberPart {
  readonly area: Area;
  readonly curveNumber: number | CurveNumber;
}

/** One curve number for a site of several parts. */
export interface WeightedCurveNumber {
  readonly type: "weighted-curve-number";
  readonly version: 1;
  readonly value: number;
  /** A caution where the curve numbers of the parts lie more than 5 apart. */
  readonly findings: readonly Finding[];
}

const mostParts = 1000;

const partsOf: Read<readonly { readonly squareMeters: number; readonly value: number }[]> = (input, path) => {
  const list = expectList(input, path, "part, { area, curveNumber }", mostParts);
  const problems = checks();
  const found: { readonly squareMeters: number; readonly value: number }[] = [];
  list.forEach((item, i) => {
    const part = problems.run(() =>
      readRecord(
        item,
        { area, curveNumber: readCurveNumber },
        "a record with area and curveNumber",
        `${path}[${i}]`,
      ),
    );
    if (part !== undefined) found.push({ squareMeters: part.area.in("m2"), value: part.curveNumber });
  });
  problems.done();
  return found;
};

const textbook: Citation = /* @__PURE__ */ frozen({
  title: "Low Impact Development and Sustainable Stormwater Management, curve numbers",
  publisher: "textbook, read as an extract",
  where: "below table 6-1",
});

/** How far curve numbers may lie apart before one for all of them makes too little. */
const usual = 5;

const farApart = (between: number): Finding => ({
  code: "water/curve-numbers-apart",
  severity: "caution",
  path: "parts",
  params: { between, usual },
  text: `The curve numbers of the parts lie ${Math.round(between)} apart. Above ${usual}, one number for all of them makes too little runoff: take curveNumberRunoff of each part with its area, and add up the volumes.`,
  source: textbook,
});

/**
 * One curve number for a site of several parts, weighted by their areas: `CN = sum of A CN / sum of A`.
 *
 * - `parts` with `area` `A` and `curveNumber`, a number of 30 to 100 or what {@link curveNumber} gives
 *
 * Runoff grows faster than the curve number: where those of the parts lie more than 5 apart, a caution says to compute them
 * one by one.
 *
 * @throws RatewrightError `range` (also for more than 1,000 parts), `missing`, `unit/mismatch`, `type`, with the index of the
 * part
 *
 * Source: TR-55 (1986), chapter 2, worksheet 2; the bound of 5: "Low Impact Development and Sustainable Stormwater
 * Management", below table 6-1.
 *
 * @example
 * ```ts
 * import { curveNumber, quantity, weightedCurveNumber } from "ratewright";
 * const grass = "open space, good";
 * const park = weightedCurveNumber({
 *   parts: [
 *     { area: quantity(75, "acre"), curveNumber: curveNumber({ cover: grass, soilGroup: "B" }) },
 *     { area: quantity(175, "acre"), curveNumber: curveNumber({ cover: grass, soilGroup: "C" }) },
 *   ],
 * });
 * Number(park.value.toFixed(1)); // => 70.1
 * park.findings.map(({ code }) => code); // => ["water/curve-numbers-apart"]
 * ```
 */
export const weightedCurveNumber = (input: {
  readonly parts: readonly CurveNumberPart[];
}): WeightedCurveNumber => {
  const { parts } = readRecord(input, { parts: partsOf }, "a record with parts");
  const whole = parts.reduce((sum, { squareMeters }) => sum + squareMeters, 0);
  const values = parts.map(({ value }) => value);
  const between = Math.max(...values) - Math.min(...values);
  return {
    type: "weighted-curve-number",
    version: 1,
    value: parts.reduce((sum, { squareMeters, value }) => sum + (squareMeters / whole) * value, 0),
    findings: exceeds(between, usual) ? [farApart(between)] : [],
  };
};
