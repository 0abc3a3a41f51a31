import { checks, expectList, type Finding, fail } from "../../quantity/index.js";
import {
  type Angle,
  type Area,
  area,
  type Flow,
  flow,
  isMetric,
  type Length,
  length,
  made,
  type Rate,
  readRecord,
  whole,
} from "../read.js";
import { arcOf, rateOf } from "./precipitation-rate.js";

/** Heads of one kind in a zone. */
export interface HeadGroup {
  readonly count: number;
  /** The flow of one of them. */
  readonly flow: Flow;
}

/** What a zone puts out, head by head. */
export interface ZonePrecipitation {
  readonly type: "zone-precipitation";
  readonly version: 1;
  /** The flow of all heads together. */
  readonly flow: Flow;
  /** The mean depth per time on the area. */
  readonly rate: Rate;
  readonly heads: number;
}

/** Most kinds of heads in one call: one zone has a handful. */
const most = 1000;

const listOf = <T>(input: unknown, path: string, read: (item: unknown, at: string) => T): readonly T[] => {
  const items = expectList(input, path, "head", most);
  const problems = checks();
  const found: T[] = [];
  items.forEach((item, i) => {
    const one = problems.run(() => read(item, `${path}[${i}]`));
    if (one !== undefined) found.push(one);
  });
  problems.done();
  return found;
};

const headGroup = (item: unknown, at: string): HeadGroup =>
  readRecord(item, { count: whole({ min: 1, max: 1e6 }), flow }, "a record with count and flow", at);

/**
 * The flow and precipitation rate of a zone whose nozzles differ: `Q = sum of n q`, `PR = Q / A`.
 *
 * - `n` heads with the flow `q` each, by kind; at most 1000 kinds
 * - `A` the area that they wet together; `PR` in mm/h for a metric area, else in in/h
 *
 * @throws RatewrightError `missing`, `range`, `type`, `unit/mismatch`, `substance/mismatch`, all that are found
 *
 * Source: irrigation course slides, "Sprinkler precipitation rates", slides 4-5 (six heads of 1.0 and four of 0.5
 * gal/min on 60 by 15 ft: 8.0 gal/min, 0.86 in/h).
 *
 * @example
 * ```ts
 * import { quantity, zonePrecipitation } from "ratewright";
 * const nozzle = (value: number) => quantity(value, "gal/min", "water");
 * const zone = zonePrecipitation({
 *   heads: [{ count: 6, flow: nozzle(1) }, { count: 4, flow: nozzle(0.5) }], area: quantity(900, "ft2"),
 * });
 * zone.flow.in("gal/min"); // => 8
 * Number(zone.rate.in("in/h").toFixed(2)); // => 0.86
 * ```
 */
export const zonePrecipitation = (input: {
  readonly heads: readonly HeadGroup[];
  readonly area: Area;
}): ZonePrecipitation => {
  const q = readRecord(
    input,
    { heads: (value, path) => listOf(value, path, headGroup), area },
    "a record with heads and area",
  );
  const unit = isMetric(q.area.unit) ? "L/min" : "gal/min";
  const total = q.heads.reduce((sum, head) => sum + head.count * head.flow.in(unit), 0);
  const all = made(total, unit, "volume/time", "water");
  return {
    type: "zone-precipitation",
    version: 1,
    flow: all,
    rate: rateOf(all, q.area.in("m2"), isMetric(q.area.unit)),
    heads: q.heads.reduce((sum, head) => sum + head.count, 0),
  };
};

/** One head on its own: the flow, how far it throws, and through which arc. */
export interface SingleHead {
  readonly flow: Flow;
  readonly radius: Length;
  readonly arc: Angle;
}

/** What each head puts on its own sector, and how far the heads are from being matched. */
export interface MatchedPrecipitation {
  readonly type: "matched-precipitation";
  readonly version: 1;
  readonly heads: readonly { readonly area: Area; readonly rate: Rate }[];
  /** The highest rate by the lowest: 1 where all are matched. */
  readonly ratio: number;
  /** A note where the ratio is above 1.1. */
  readonly findings: readonly Finding[];
}

const singleHead = (item: unknown, at: string): SingleHead =>
  readRecord(item, { flow, radius: length, arc: arcOf }, "a record with flow, radius and arc", at);

/**
 * Whether heads of different arcs put down water at one rate: `PR = Q / (pi r² arc / 360)` of each head on its own
 * sector. A half circle needs half the flow of a full one, a quarter a quarter.
 *
 * It compares heads; the rate of a zone comes from {@link zonePrecipitation}, for sectors overlap.
 *
 * - `Q` flow of the head, `r` its radius of throw, `arc` up to 360 degrees
 * - the note above a ratio of 1.1: common practice, no source
 *
 * @throws RatewrightError `missing`, `range`, `type`, `unit/mismatch`, `substance/mismatch`, all that are found
 *
 * Source: "The basics of matched precipitation" (irrigation notes): 30 ft, 4, 2 and 1 gal/min: 0.136 in/h each.
 *
 * @example
 * ```ts
 * import { matchedPrecipitation, quantity } from "ratewright";
 * const head = (flow: number, arc: number) =>
 *   ({ flow: quantity(flow, "gal/min", "water"), radius: quantity(30, "ft"), arc: quantity(arc, "deg") });
 * const heads = matchedPrecipitation({ heads: [head(4, 360), head(2, 180), head(1, 90)] });
 * Number(heads.heads[0]?.rate.in("in/h").toFixed(3)); // => 0.136
 * matchedPrecipitation({ heads: [head(4, 360), head(4, 180)] }).ratio; // => 2
 * ```
 */
export const matchedPrecipitation = (input: {
  readonly heads: readonly SingleHead[];
}): MatchedPrecipitation => {
  const { heads } = readRecord(
    input,
    { heads: (value, path) => listOf(value, path, singleHead) },
    "a record with heads",
  );
  const each = heads.map((head) => {
    const metric = isMetric(head.radius.unit);
    const sector = (Math.PI * head.radius.in("m") ** 2 * head.arc.in("deg")) / 360;
    const own = made(sector, "m2", "area");
    return {
      area: metric ? own : made(own.in("ft2"), "ft2", "area"),
      rate: rateOf(head.flow, sector, metric),
    };
  });
  const rates = each.map(({ rate }) => rate.in("mm/h"));
  const ratio = Math.max(...rates) / Math.min(...rates);
  if (!Number.isFinite(ratio)) fail("range", "heads", ratio, "heads whose rates have a finite ratio");
  const findings: Finding[] =
    ratio > 1.1
      ? [
          {
            code: "water/unmatched-heads",
            severity: "caution",
            path: "heads",
            params: { ratio },
            text: `The wettest head puts down ${ratio.toFixed(2)} times as much as the driest: change nozzles, or put them on separate zones.`,
            source: "common practice, no source",
          },
        ]
      : [];
  return { type: "matched-precipitation", version: 1, heads: each, ratio, findings };
};
