import { expectRecord, fail, likeQuantity } from "../../quantity/index.js";
import { depthOrNone, type Length, made, optional, percent, readRecord, type Share, word } from "../read.js";

/** Ways to tell how much of a rain the roots get. The first two are of a day's rain, the others of a month's. */
export type EffectiveRainMethod = "Texas, day" | "fixed share" | "USDA-SCS, month" | "FAO, month";

const methods = ["Texas, day", "fixed share", "USDA-SCS, month", "FAO, month"] as const;

const inch = 25.4;

/** A day's rain: the first tenth of an inch is lost, all counts to one inch, two thirds to two, nothing beyond. */
const texas = (mm: number): number => {
  const rain = mm / inch;
  if (rain <= 0.1) return 0;
  if (rain <= 1) return (rain - 0.1) * inch;
  return (0.9 + (2 / 3) * (Math.min(rain, 2) - 1)) * inch;
};

const scs = (mm: number): number => (mm <= 250 ? (mm * (125 - 0.2 * mm)) / 125 : 125 + 0.1 * mm);

const fao = (mm: number): number => Math.max(0, mm > 75 ? 0.8 * mm - 25 : 0.6 * mm - 10);

/**
 * The part of a rain that the roots get, by a named method; the rest runs off, goes below the roots or dries in the grass.
 *
 * | method | of | `Pe` |
 * | --- | --- | --- |
 * | `"Texas, day"` | a day | the first 0.1 in is lost; all counts to 1 in, two thirds of it from 1 to 2 in, none beyond |
 * | `"fixed share"` | any time | `P share / 100` |
 * | `"USDA-SCS, month"` | a month | `P (125 - 0.2 P) / 125` to 250 mm, then `125 + 0.1 P`, mm |
 * | `"FAO, month"` | a month | `0.6 P - 10` to 75 mm, then `0.8 P - 25`, mm; 0 below 17 mm |
 *
 * A monthly formula on a day's rain counts far too little or too much: mind which one it is. A day-by-day
 * {@link soilWaterBalance} does better than any of them, for it knows what the soil can still hold.
 *
 * - `rain` zero or more; `share` in percent, for `"fixed share"` only. In the unit of the rain
 *
 * @throws RatewrightError `missing` or `conflict` for `share`; `range`, `unit/mismatch`, `type`
 *
 * Source: the day: Texas A&M AgriLife, "Effective rainfall"; USDA-SCS, and the two lines of FAO, as a public program for
 * effective precipitation repeats them. It goes from one line of FAO to the other elsewhere, where they leave a step; 75 mm
 * is where they meet, and where FAO Irrigation Water Management Training Manual 3 changes, which was not read.
 *
 * @example
 * ```ts
 * import { effectiveRain, quantity } from "ratewright";
 * effectiveRain({ rain: quantity(0.6, "in"), method: "Texas, day" }).in("in").toFixed(2); // => "0.50"
 * effectiveRain({ rain: quantity(100, "mm"), method: "FAO, month" }).in("mm"); // => 55
 * effectiveRain({ rain: quantity(100, "mm"), method: "USDA-SCS, month" }).in("mm"); // => 84
 * ```
 */
export const effectiveRain = (input: {
  readonly rain: Length;
  readonly method: EffectiveRainMethod;
  readonly share?: Share;
}): Length => {
  const { method } = expectRecord(input, "input", "a record with rain and method");
  const q = readRecord(
    input,
    {
      rain: depthOrNone,
      method: word(methods),
      share: (value, path) => {
        if (method === "fixed share" && value === undefined)
          fail("missing", path, value, 'the share that counts, such as quantity(80, "%")');
        if (method !== "fixed share" && value !== undefined)
          fail("conflict", path, value, 'nothing: only "fixed share" takes a share');
        return optional(percent({ min: 0, max: 100 }, 1))(value, path);
      },
    },
    "a record with rain and method",
  );
  if (q.method === "fixed share") return likeQuantity(q.rain, (q.rain.value * (q.share as number)) / 100);
  return likeQuantity(
    q.rain,
    made(effectiveOf(q.method, q.rain.in("mm")), "mm", "length").in(q.rain.unit as "in"),
  );
};

/** Effective rain in mm by one of the formulas. */
export const effectiveOf = (method: Exclude<EffectiveRainMethod, "fixed share">, mm: number): number =>
  method === "Texas, day" ? texas(mm) : method === "FAO, month" ? fao(mm) : scs(mm);
