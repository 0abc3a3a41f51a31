import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectOneOf,
  fail,
  frozen,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectBufferPH } from "./expect-ph.js";

/** How one laboratory reads acidity off the pH of its buffer. */
export interface BufferTerm {
  /** The pH at which the buffer starts: a soil without acidity leaves it there. */
  readonly start: number;
  /** Milliequivalents for each unit of pH below the start. */
  readonly slope: number;
  /** Whether the laboratory counts any reading above the start as no acidity; else such a reading is refused. */
  readonly zeroAbove: boolean;
  /** Of soil by weight or by volume. */
  readonly per: "100 g" | "100 cm3";
  readonly source: Citation;
}

/** A buffer by name. */
export type AcidityBuffer =
  | "Adams-Evans"
  | "Mehlich, North Carolina"
  | "pH 7.0 buffer of a commercial laboratory";

/** The terms by which laboratories turn the pH of a buffer into acidity, each with its source. */
export const acidityBuffers: Readonly<Record<AcidityBuffer, BufferTerm>> = /* @__PURE__ */ frozen({
  "Adams-Evans": {
    start: 8,
    slope: 8,
    zeroAbove: false,
    per: "100 g",
    source: {
      title: "CEC calculations; Adams-Evans buffer, exchangeable hydrogen",
      publisher:
        "Clemson University Agricultural Service Laboratory; University of Georgia Soil, Plant and Water Laboratory",
      url: "http://aesl.ces.uga.edu/protected/methods/details/stl-soil/6.html",
    },
  },
  "Mehlich, North Carolina": {
    start: 6.6,
    slope: 4,
    zeroAbove: false,
    per: "100 cm3",
    source: {
      title: "Lime requirement factors table",
      publisher: "North Carolina Department of Agriculture and Consumer Services, Agronomic Division",
      where: "footnote",
      url: "http://www.ncagr.gov/agronomi/bufftab1.htm",
    },
  },
  "pH 7.0 buffer of a commercial laboratory": {
    start: 7,
    slope: 12,
    zeroAbove: true,
    per: "100 g",
    source: { title: "CEC, buffer pH and percent saturation", publisher: "a commercial soil laboratory" },
  },
});

const names = /* @__PURE__ */ Object.keys(acidityBuffers) as readonly AcidityBuffer[];

/** Milliequivalents of acidity, by weight or by volume of soil as the buffer has it. */
export const milliequivalents = (buffer: AcidityBuffer, bufferPH: number, path: string): number => {
  const { start, slope, zeroAbove } = acidityBuffers[buffer];
  // What a printed reading rounds off.
  if (!zeroAbove && bufferPH > start + 0.05) {
    outOfRange(path, bufferPH, { max: start }, "{}, where the buffer starts: another buffer may be meant");
  }
  return Math.max(0, slope * (start - bufferPH));
};

/**
 * The exchangeable acidity of a soil from its pH in a buffer, `A = k (s - b)`; zero where the reading is that of
 * the buffer itself.
 *
 * - `b` pH of soil in the buffer, up to `s`, the pH at which the buffer starts
 * - `k` meq for a unit of pH. The term belongs to the buffer: 8 (8.00 - b) per 100 g for Adams-Evans, 12 (7.0 - b) for
 *   that of a commercial laboratory, 4 (6.6 - b) for Mehlich's as North Carolina has it, which is per 100 cm3
 *
 * The commercial laboratory counts any reading of 7.0 or more as no acidity. For the others a reading up to 0.05 above the
 * start, what a printed reading rounds off, is no acidity, and a higher one is refused.
 *
 * @param input.weightPerVolume - g/cm3, on a report of North Carolina as W/V: acidity per volume divided by it is
 *   acidity per weight. Needed for that buffer, refused for the others
 * @param input.bufferPH - `b`
 * @throws RatewrightError `range` (a reading more than 0.05 above the start of the buffer), `missing`, `conflict`, `type`,
 *   `not-finite`
 *
 * Source: named in `acidityBuffers`.
 *
 * @example
 * ```ts
 * import { acidityFromBuffer } from "ratewright/soil";
 * const acidity = acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 7.7 });
 * Number(acidity.in("meq/100 g").toFixed(2)); // => 2.4
 * acidityFromBuffer({ buffer: "Mehlich, North Carolina", bufferPH: 8 }); // => throws range
 * ```
 */
export const acidityFromBuffer = (input: {
  readonly buffer: AcidityBuffer;
  readonly bufferPH: number;
  readonly weightPerVolume?: number;
}): Quantity<"exchange capacity", "none"> => {
  const record = expectFields(input, ["buffer", "bufferPH", "weightPerVolume"], "input");
  const read = allOf({
    buffer: () => expectOneOf(record.buffer, names, "buffer"),
    bufferPH: () => expectBufferPH(record.bufferPH, "bufferPH"),
    weightPerVolume: () =>
      record.weightPerVolume === undefined
        ? undefined
        : expectNumber(record.weightPerVolume, "weightPerVolume", { min: 0.05, max: 2.65 }),
  });
  const acidity = milliequivalents(read.buffer, read.bufferPH, "bufferPH");
  if (acidityBuffers[read.buffer].per === "100 g") {
    if (read.weightPerVolume !== undefined) {
      const expected = "nothing: this buffer gives acidity by weight of soil";
      fail("conflict", "weightPerVolume", read.weightPerVolume, expected);
    }
    return quantity(acidity, "meq/100 g");
  }
  return read.weightPerVolume === undefined
    ? fail(
        "missing",
        "weightPerVolume",
        undefined,
        "the weight of the sample per volume (W/V of the report, g/cm3): this buffer gives acidity per 100 cm3. For lime, limeRequirement takes the buffer pH as it is",
      )
    : quantity(acidity / read.weightPerVolume, "meq/100 g");
};
