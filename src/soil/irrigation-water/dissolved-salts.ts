import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  fail,
  frozen,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { conductivityAt } from "./conductivity-at.js";

/** Milligrams per liter for a dS/m, by name. */
export type SaltFactor = "640 mg/L per dS/m" | "800 mg/L per dS/m, above 5 dS/m";

const factors: Readonly<Record<SaltFactor, number>> = {
  "640 mg/L per dS/m": 640,
  "800 mg/L per dS/m, above 5 dS/m": 800,
};
const names = /* @__PURE__ */ Object.keys(factors) as readonly SaltFactor[];

/**
 * The dissolved salts of a water from its conductivity, `TDS = f EC`.
 *
 * - `EC` conductivity, dS/m, mS/cm or uS/cm; `f` = 640 mg/L for a dS/m where it is left out, the factor of turf guides.
 *   800 is in use above 5 dS/m. What a laboratory measures goes before either
 *
 * @throws RatewrightError `range`, `missing`, `type`, `unit/mismatch`
 *
 * Source: "Turf irrigation water quality: a concise guide", Oklahoma State University Extension, table 1; 640 up to 5 dS/m
 * and 800 beyond it: the manual of a soil probe, version 1.2a, appendix 1, table 6.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { dissolvedSalts } from "ratewright/soil";
 * dissolvedSalts({ conductivity: quantity(1500, "uS/cm") }).in("mg/L"); // => 960
 * ```
 */
export const dissolvedSalts = (input: {
  readonly conductivity: Quantity<"conductivity", "none">;
  readonly factor?: SaltFactor;
}): Quantity<"mass/volume", "none"> => {
  const record = expectFields(input, ["conductivity", "factor"], "input");
  const read = allOf({
    conductivity: () => conductivityAt(record.conductivity, "conductivity"),
    factor: () =>
      record.factor === undefined ? "640 mg/L per dS/m" : expectOneOf(record.factor, names, "factor"),
  });
  if (read.factor !== "640 mg/L per dS/m" && read.conductivity <= 5) {
    fail("conflict", "factor", read.factor, `640 up to 5 dS/m: the water has ${read.conductivity}`);
  }
  return quantity(read.conductivity * factors[read.factor], "mg/L");
};

/** A class of irrigation water for turf by its salts. */
export type WaterSaltClass = "excellent" | "good" | "fair" | "poor" | "very poor" | "unacceptable";

/** Classes with the highest conductivity of each, uS/cm; beyond the last it is unacceptable. */
export const waterSaltClasses: {
  readonly classes: readonly { readonly name: WaterSaltClass; readonly upTo: number | null }[];
  readonly source: Citation;
} = /* @__PURE__ */ frozen({
  classes: [
    { name: "excellent", upTo: 500 },
    { name: "good", upTo: 1500 },
    { name: "fair", upTo: 3000 },
    { name: "poor", upTo: 5000 },
    { name: "very poor", upTo: 6000 },
    { name: "unacceptable", upTo: null },
  ],
  source: {
    title: "Turf irrigation water quality: a concise guide",
    publisher: "Oklahoma State University Extension",
    where: "table 1",
    url: "https://extension.okstate.edu/fact-sheets/turf-irrigation-water-quality-a-concise-guide.html",
  },
});

/**
 * The class of an irrigation water for turf by its conductivity; a limit belongs to the better class.
 *
 * @throws RatewrightError `range`, `type`, `unit/mismatch`
 *
 * Source: "Turf irrigation water quality: a concise guide", Oklahoma State University Extension, table 1; 640 up to 5 dS/m
 * and 800 beyond it: the manual of a soil probe, version 1.2a, appendix 1, table 6.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { waterSaltClass } from "ratewright/soil";
 * waterSaltClass(quantity(1.2, "dS/m")); // => "good"
 * ```
 */
export const waterSaltClass = (conductivity: Quantity<"conductivity", "none">): WaterSaltClass => {
  const value = 1000 * conductivityAt(conductivity, "conductivity");
  const found = waterSaltClasses.classes.find(({ upTo }) => upTo === null || !exceeds(value, upTo));
  return found?.name ?? "unacceptable";
};
