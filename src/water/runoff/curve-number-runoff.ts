import { fixedApart } from "../../numeric/house.js";
import { type Citation, type Finding, frozen, numberIn } from "../../quantity/index.js";
import {
  type Area,
  area,
  depthOrNone,
  isMetric,
  type Length,
  made,
  optional,
  readRecord,
  type Share,
  type Volume,
  word,
} from "../read.js";
import { type CurveNumber, readCurveNumber } from "./curve-number.js";
import type { WeightedCurveNumber } from "./weighted-curve-number.js";

/** What the ground keeps before anything runs off, as a share of the retention. */
export type InitialAbstraction = "0.2 S" | "0.05 S";

const abstractions = ["0.2 S", "0.05 S"] as const;

/** What of a storm runs off, by a curve number. */
export interface CurveNumberRunoff {
  readonly type: "curve-number-runoff";
  readonly version: 1;
  /** Depth that runs off; 0 where the ground keeps the whole storm. */
  readonly runoff: Length;
  /** What runs off of the rain, in percent; 0 without rain. */
  readonly share: Share;
  /** What runs off the `area`, where it was given. */
  readonly volume?: Volume;
  /** `Ia`, what the ground keeps before anything runs off. */
  readonly initialAbstraction: Length;
  /** `S`, the most that the ground keeps once it runs. */
  readonly retention: Length;
  /** The share of the retention that was taken for the initial abstraction. */
  readonly by: InitialAbstraction;
  readonly findings: readonly Finding[];
  readonly notChecked: readonly string[];
}

const hawkins: Citation = /* @__PURE__ */ frozen({
  title: "Runoff curve number method: examination of the initial abstraction ratio",
  publisher: "Hawkins, Jiang, Woodward, Hjelmfelt and Van Mullem",
  year: 2002,
});

const notChecked: readonly string[] = [
  "how hard it rains, and for how long",
  "ground that is frozen, or soaked by rain or irrigation before",
  "compacted ground, and the slope",
];

/** Retention and initial abstraction in inches: the equations are fitted in them. */
const kept = (curveNumber: number, by: InitialAbstraction): { readonly s: number; readonly ia: number } => {
  const s = 1000 / curveNumber - 10;
  if (by === "0.2 S") return { s, ia: 0.2 * s };
  const wider = 1.33 * s ** 1.15;
  return { s: wider, ia: 0.05 * wider };
};

const depthOf = (rain: number, { s, ia }: { readonly s: number; readonly ia: number }): number =>
  rain > ia ? (rain - ia) ** 2 / (rain - ia + s) : 0;

const inMm = (inches: number): number => numberIn({ value: inches, unit: "in" }, "mm");

const byTheOther = (inches: number, metric: boolean): Finding => {
  const [value, unit] = metric ? [inMm(inches), "mm"] : [inches, "in"];
  return {
    code: "water/small-storm",
    severity: "note",
    path: "initialAbstraction",
    params: { inches },
    text: `By an initial abstraction of 0.2 S nothing runs off. By 0.05 S, which fits measured storms better, it is ${fixedApart(value, 0, 2)(value)} ${unit}: small storms depend on it.`,
    source: hawkins,
  };
};

/**
 * The depth of a storm that runs off, by the curve number of the ground: `Q = (P - Ia)² / (P - Ia + S)` for `P` above `Ia`,
 * else nothing, with `S = 1000 / CN - 10` in inches (`25400 / CN - 254` in mm) and `Ia = 0.2 S`.
 *
 * - `rain` `P` of the whole storm, such as that of a design storm of 24 h; zero or more
 * - `curveNumber` `CN`, 30 to 100: a number, or what {@link curveNumber} or {@link weightedCurveNumber} gives
 * - `area` for the volume too
 * - `initialAbstraction`: `"0.2 S"`, for which the tables were made, where left out; `"0.05 S"` takes
 *   `S = 1.33 S^1.15` of the `S` above, in inches, and lets small storms run
 *
 * Depths in the unit system of the rain; the volume in liters for an area in metric units, else in US gallons. What runs off
 * carries what lies on the ground: see the label, and the buffers that it states, before rain.
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 *
 * Source: TR-55 (1986), equations 2-1 to 2-4, as copies of chapter 2 print them; 0.05 S: Hawkins et al. 2002, with the
 * conversion as an encyclopedia restates it.
 *
 * @example
 * ```ts
 * import { curveNumber, curveNumberRunoff, quantity } from "ratewright";
 * const lawn = curveNumber({ cover: "open space, good", soilGroup: "C" });
 * const storm = curveNumberRunoff({ rain: quantity(3, "in"), curveNumber: lawn, area: quantity(10_000, "ft2") });
 * Number(storm.runoff.in("in").toFixed(2)); // => 0.91
 * Number(storm.share.in("%").toFixed(0)); // => 30
 * Math.round(storm.volume?.in("gal") ?? 0); // => 5662
 * ```
 */
export const curveNumberRunoff = (input: {
  readonly rain: Length;
  readonly curveNumber: number | CurveNumber | WeightedCurveNumber;
  readonly area?: Area;
  readonly initialAbstraction?: InitialAbstraction;
}): CurveNumberRunoff => {
  const q = readRecord(
    input,
    {
      rain: depthOrNone,
      curveNumber: readCurveNumber,
      area: optional(area),
      initialAbstraction: word(abstractions, "0.2 S"),
    },
    "a record with rain and curveNumber",
  );
  const rain = q.rain.in("in");
  const ground = kept(q.curveNumber, q.initialAbstraction);
  const runoff = depthOf(rain, ground);
  const metric = isMetric(q.rain.unit);
  const other = runoff > 0 ? 0 : depthOf(rain, kept(q.curveNumber, "0.05 S"));
  const told = (inches: number): Length =>
    metric ? made(inMm(inches), "mm", "length") : made(inches, "in", "length");
  return {
    type: "curve-number-runoff",
    version: 1,
    runoff: told(runoff),
    share: made(rain > 0 ? (100 * runoff) / rain : 0, "%", "1"),
    ...(q.area && { volume: volumeOn(q.area, runoff) }),
    initialAbstraction: told(ground.ia),
    retention: told(ground.s),
    by: q.initialAbstraction,
    findings: other > 0 ? [byTheOther(other, metric)] : [],
    notChecked: [...notChecked],
  };
};

const volumeOn = (ground: Area, inches: number): Volume =>
  isMetric(ground.unit)
    ? made(inMm(inches) * ground.in("m2"), "L", "volume", "water")
    : made((inches * ground.in("ft2") * 144) / 231, "gal", "volume", "water");
