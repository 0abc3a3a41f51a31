import { exceeds } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  frozen,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectBulkDensity } from "../report/soil-layer.js";

type Density = Quantity<"mass/volume", "soil">;
type Share = Quantity<"1", "none">;

/** The pores of a soil. */
export interface SoilPorosity {
  readonly type: "soil-porosity";
  readonly version: 1;
  /** All pores, percent of the volume. */
  readonly total: Share;
  /** Pores with air in them, percent of the volume; where the water was given. */
  readonly airFilled?: Share;
  /** Water in percent of the pores, the degree of saturation; where the water was given. */
  readonly saturation?: Share;
  /** What the grains weigh: as given, or as assumed. */
  readonly particleDensity: Density;
  /** A note where the particle density was assumed. */
  readonly findings: readonly Finding[];
}

/** Quartz, g/mL: the particle density that soil courses take for mineral soil. */
const quartz = 2.65;

const assumed: Finding = /* @__PURE__ */ frozen({
  code: "soil/particle-density-assumed",
  severity: "note",
  path: "particleDensity",
  params: { gramsPerMilliliter: quartz },
  text: "A particle density of 2.65 g/mL is assumed, that of quartz: peat and other organic soils are lighter, and have fewer pores than this says.",
  source: {
    title: "Practice problems: porosity and bulk density",
    publisher: "University of California, Davis, Soil Science 100",
    url: "https://lawr.ucdavis.edu/classes/ssc100/probsets/pset01.html",
  },
});

const particlesOf = (input: unknown): Density => {
  if (input === undefined) return quantity(quartz, "g/mL", "soil");
  const density = expectQuantity(
    input,
    { dimension: "mass/volume", of: "soil", bound: "positive" },
    "particleDensity",
  );
  const grams = density.in("g/mL");
  return grams >= 1 && grams <= 5.3
    ? density
    : outOfRange(
        "particleDensity",
        density,
        { min: 1, max: 5.3, unit: "g/mL" },
        "the density of the grains, {}",
      );
};

const waterOf = (input: unknown): number | undefined =>
  input === undefined
    ? undefined
    : expectQuantity(input, { dimension: "volume/volume", of: "none", bound: "non-negative" }, "water").in(
        "% v/v",
      );

/**
 * The total porosity of a soil, `f = 1 - rho / rho_s`, in percent of its volume, and what of it holds air and water.
 *
 * - `bulkDensity` `rho` of the dry soil, see {@link soilBulkDensity}
 * - `particleDensity` `rho_s` of the grains, 1 to 5.3 g/mL (hematite); 2.65, that of quartz, where left out, which is said in
 *   the result
 * - `water` `v` by volume, see {@link volumetricWaterContent}: `airFilled` is `f - v`, `saturation` `100 v / f`
 *
 * @throws RatewrightError `range` for a soil as dense as its grains, or more water than pores; `missing`, `unit/mismatch`,
 * `substance/mismatch`, `type`
 *
 * Source: definition; 2.65 g/cm3: "Practice problems: porosity and bulk density", University of California, Davis; "Soil,
 * Water, and Weather", Oklahoma State University. The bounds of the grains: from memory.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { totalPorosity } from "ratewright/soil";
 * const pores = totalPorosity({ bulkDensity: quantity(1.35, "g/mL", "soil"), water: quantity(25, "% v/v") });
 * Number(pores.total.in("%").toFixed(0)); // => 49
 * Number(pores.airFilled?.in("%").toFixed(0)); // => 24
 * pores.particleDensity.in("g/mL"); // => 2.65
 * pores.findings.map(({ code }) => code); // => ["soil/particle-density-assumed"]
 * ```
 */
export const totalPorosity = (input: {
  readonly bulkDensity: Density;
  readonly particleDensity?: Density;
  readonly water?: Quantity<"volume/volume", "none">;
}): SoilPorosity => {
  const given = expectFields(input, ["bulkDensity", "particleDensity", "water"]);
  const q = allOf({
    bulk: () => expectBulkDensity(given.bulkDensity, "bulkDensity"),
    grains: () => particlesOf(given.particleDensity),
    water: () => waterOf(given.water),
  });
  const grains = q.grains.in("g/mL");
  if (q.bulk.in("g/mL") >= grains) {
    outOfRange("bulkDensity", q.bulk, { below: grains, unit: "g/mL" }, "{}, the density of the grains");
  }
  const total = 100 * (1 - q.bulk.in("g/mL") / grains);
  if (q.water !== undefined && exceeds(q.water, total)) {
    outOfRange("water", given.water, { max: total, unit: "%" }, "{} of the volume, which the pores hold");
  }
  return {
    type: "soil-porosity",
    version: 1,
    total: quantity(total, "%"),
    ...(q.water !== undefined && {
      airFilled: quantity(Math.max(0, total - q.water), "%"),
      saturation: quantity(Math.min(100, (100 * q.water) / total), "%"),
    }),
    particleDensity: q.grains,
    findings: given.particleDensity === undefined ? [assumed] : [],
  };
};
