import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { type ReleaseModel, releaseModel } from "./release-model.js";
import { moist, rateThrough } from "./release-models.js";

/** Diameter, mm, and first-order rate at 21 °C of three sizes: 75 % in 10, 58 % in 21 and 50 % in 32 weeks. */
const sizes = [
  { mm: 0.65, rate: /* @__PURE__ */ rateThrough(0.75, 70) },
  { mm: 1.1, rate: /* @__PURE__ */ rateThrough(0.58, 147) },
  { mm: 1.85, rate: /* @__PURE__ */ rateThrough(0.5, 224) },
] as const;
/** Sizes for which the line between the logarithms is drawn on: those that are sold. */
const [finest, coarsest] = [0.4, 3] as const;

/** The rate at a diameter, on the line between the logarithms of the two nearest sizes. */
const rateAtSize = (mm: number): number => {
  const [a, b] = mm < sizes[1].mm ? [sizes[0], sizes[1]] : [sizes[1], sizes[2]];
  return a.rate * (mm / a.mm) ** (Math.log(b.rate / a.rate) / Math.log(b.mm / a.mm));
};

/**
 * A model of isobutylidene diurea (IBDU), which water takes apart without microbes: the finer the particles, the sooner.
 *
 * Equation: `F = 100 (1 - exp(-k t))`, within 10 points; `ln k` on the lines between the three measured sizes, by `ln d`
 *
 * - `d` diameter of the particles, 0.4 to 3 mm: the low end takes the coarsest, the high end the finest, the middle
 *   their geometric mean
 * - `k` 0.0198, 0.0059 and 0.0031 a day at 0.65, 1.1 and 1.85 mm and 21 °C
 *
 * It needs moisture, and goes faster in acid soil; neither is in the model. That warmth quickens it is in print without a
 * figure: the ends take none at all and two and a half times for 10 °C.
 *
 * @param input.particleSize - finest and coarsest diameter of the bulk of the material
 * @throws RatewrightError `range`, `conflict`, `missing`, `unit/mismatch`, `type`
 *
 * Source: Hughes, "Nitrogen release from isobutylidene diurea: soil pH and fertilizer particle size effects", Agronomy
 * Journal 68 (1976) 103-106 (abstract). A third in four weeks at 0.7 to 0.8 mm and pH 5.7, of the same paper, lies on
 * the line within a point; it was not used to draw it.
 *
 * @example
 * ```ts
 * import { isobutylideneDiurea, quantity, releasedShares } from "ratewright";
 * const fine = isobutylideneDiurea({ particleSize: { low: quantity(0.7, "mm"), high: quantity(0.8, "mm") } });
 * const share = releasedShares(Float64Array.of(28), fine.curve)[0] ?? 0;
 * Math.round(100 * share); // => 33
 * ```
 */
export const isobutylideneDiurea = (input: {
  readonly particleSize: {
    readonly low: Quantity<"length", "none">;
    readonly high: Quantity<"length", "none">;
  };
}): ReleaseModel => {
  expectFields(input, ["particleSize"], "input");
  const { low, high } = expectFields(
    input.particleSize,
    ["low", "high"],
    "particleSize",
    "{ low, high }, two diameters",
  );
  const millimeters = (given: unknown, path: string): number => {
    const size = expectQuantity(given, { dimension: "length", of: "none", bound: "positive" }, path);
    const mm = size.in("mm");
    return mm < finest || mm > coarsest
      ? outOfRange(path, size, { min: finest, max: coarsest, unit: "mm" })
      : mm;
  };
  const size = allOf({
    low: () => millimeters(low, "particleSize.low"),
    high: () => millimeters(high, "particleSize.high"),
  });
  if (size.low > size.high) fail("conflict", "particleSize.low", low, "not more than the coarsest");
  return releaseModel({
    name: "isobutylidene diurea",
    placement: "either",
    curve: {
      kind: "first order",
      ratePerDay: {
        low: rateAtSize(size.high),
        mid: rateAtSize(Math.sqrt(size.low * size.high)),
        high: rateAtSize(size.low),
      },
    },
    temperature: { kind: "Q10", q10: { low: 1, mid: 1.5, high: 2.5 }, referenceC: 21 },
    observed: { days: 224, fromC: 21, toC: 21 },
    fitErrorPercent: 10,
    assumptions: [
      moist,
      "first order by the size of the particles, 0.65 to 1.85 mm; finer and coarser is extrapolated",
      "temperature: warmth speeds it up, no figure is published; none to two and a half times for 10 °C",
      "soil of pH 5.7 to 7.4; acid soil is faster",
    ],
    source: {
      title: "Nitrogen release from isobutylidene diurea: soil pH and fertilizer particle size effects",
      publisher: "Agronomy Journal 68:103-106",
      year: 1976,
      where: "abstract",
      url: "https://dl.sciencesocieties.org/publications/aj/abstracts/68/1/AJ0680010103",
    },
  });
};
