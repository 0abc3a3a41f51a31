import { expectWithin } from "../../numeric/house.js";
import {
  type Caution,
  checks,
  expectQuantity,
  type Finding,
  fail,
  numberIn,
  perOf,
  Quantity,
  quantity,
  toldBy,
} from "../../quantity/index.js";
import { type Area, areaOf } from "../areas.js";
import { type Length, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";
import { type Volume, volumeOf } from "../volumes.js";
import { waterVolume } from "./pond-volume.js";

/** What brings a body of water to a concentration. */
export interface WaterDose<S extends string = string> {
  readonly type: "water-dose";
  readonly version: 1;
  /** The water that is treated. */
  readonly volume: Volume;
  /** The weight of what the concentration is of: an active ingredient, copper. */
  readonly active: Quantity<"mass", S>;
  /** The product that brings it, where a strength was given: a weight, or a volume of a liquid. */
  readonly product?: Quantity<"mass", string> | Quantity<"volume", string>;
  readonly findings: readonly Finding[];
  readonly cautions: readonly Caution[];
}

const cautions = (): readonly Caution[] => [
  {
    code: "label-first",
    text: "The label is the law and overrides this figure: its maximum concentration, the part of the pond to treat at a time, and the waiting time for irrigation, fish and people.",
    source: "common practice, no source",
  },
  {
    code: "oxygen",
    text: "Treating dense weed growth can kill fish: the dying plants use up the oxygen in the water.",
    source: {
      title: "Weed control in ponds and lakes (aquatics)",
      publisher: "Virginia Cooperative Extension",
      year: 1981,
      url: "http://hdl.handle.net/10919/87933",
    },
  },
  {
    code: "permit",
    text: "Water that leaves the site, and water that others draw from, may need a permit or a licensed applicator.",
    source: "common practice, no source",
  },
];

/**
 * The amount that brings a body of water to a concentration, from its volume, or its surface and depth.
 *
 * `m = c * V`, with `c` the concentration by volume (1 mg/L is 2.72 lb in an acre-foot) and `V` the water that is
 * treated; `product = m / strength`, with the strength of the product by weight (% w/w) or by volume (lb/gal).
 *
 * A concentration in `ppm w/w` is read against water of 1 kg/L, and a finding says so. Labels say whether the
 * concentration is of the active ingredient, of its acid, of metallic copper or of the product: give the substance
 * that the label means, and a strength of the same (`ai/product`).
 *
 * Sources disagree: 2.7 lb per acre-foot and ppm is printed most; 2.72 is closer.
 *
 * @throws RatewrightError `missing` for no volume, `conflict` for a volume beside a surface; `substance/mismatch` for
 * a strength of another substance; `type`, `unit/mismatch`, `not-finite`, `range`; everything that is not right is told
 *
 * Source: Texas Parks and Wildlife, "Estimating the Size of Your Pond"; unit algebra.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { waterDose } from "ratewright/site";
 * const dose = waterDose({
 *   surface: quantity(1, "acre"),
 *   depth: quantity(4, "ft"),
 *   concentration: quantity(1, "mg/L", "ai"),
 *   strength: quantity(50, "% w/w", "ai/product"),
 * });
 * Number(dose.active.in("lb").toFixed(2)); // => 10.88
 * Number(dose.product?.value.toFixed(1)); // => 21.8
 * dose.product?.unit; // => "lb"
 * ```
 */
export const waterDose = <const S extends string, const P extends string = never>(input: {
  readonly volume?: Volume;
  readonly surface?: Area;
  readonly depth?: Length;
  readonly concentration: Quantity<"mass/volume", S> | Quantity<"mass/mass", S>;
  readonly strength?: Quantity<"mass/mass", P> | Quantity<"mass/volume", P>;
}): WaterDose<InWater<S>> => {
  const problems = checks();
  const keys = ["volume", "surface", "depth", "concentration", "strength"];
  const record = recordWith(input, keys, problems, "input");
  const volume = problems.run(() => volumeOfWater(record));
  const concentration = problems.run(() => concentrationOf(record.concentration));
  const strength =
    record.strength === undefined ? undefined : problems.run(() => strengthOf(record.strength));
  problems.done();
  const water = volume as Volume;
  const { perLitre, of, findings } = concentration as NonNullable<typeof concentration>;
  const metric = /^(L|mL|m3)$/.test(water.unit);
  // mg/L times L, in kg
  const kilograms = (perLitre * water.in("L")) / 1e6;
  const active = new Quantity(
    metric ? kilograms : quantity(kilograms, "kg").in("lb"),
    metric ? "kg" : "lb",
    // the substance of the concentration, as its type says
    of as InWater<S>,
    "mass",
  );
  return {
    type: "water-dose",
    version: 1,
    volume: water,
    active,
    ...(strength === undefined ? {} : { product: productOf(active, strength, metric) }),
    findings,
    cautions: cautions(),
  };
};

const volumeOfWater = (record: Readonly<Record<string, unknown>>): Volume => {
  const { volume, surface, depth } = record;
  if (volume !== undefined) {
    if (surface === undefined && depth === undefined) return volumeOf(volume, "volume");
    return fail("conflict", "volume", volume, "a volume, or surface and depth, not both");
  }
  if (surface === undefined && depth === undefined) {
    return fail("missing", "volume", volume, "a volume, as pondVolume gives, or surface and depth");
  }
  const problems = checks();
  const area = problems.run(() => areaOf(surface, "surface", ["treated"]));
  const deep = problems.run(() => lengthOf(depth, "depth"));
  problems.done();
  return waterVolume(area as Area, deep as Length);
};

/** What a concentration is of: `ai/water` is one of `ai`. */
type InWater<S extends string> = S extends `${infer A}/water` ? A : S;

/** The substance of a fraction of something in water: `Cu`, `ai`, `Cu/water` are one. */
const ofWhat = (of: string): string => of.replace(/\/water$/, "");

/** The unit of what may be a quantity; empty where it has none. */
const unitOf = (input: unknown): string => {
  const { unit } = Object(input) as { readonly unit?: unknown };
  return typeof unit === "string" ? unit : "";
};

const concentrationOf = (
  input: unknown,
): { readonly perLitre: number; readonly of: string; readonly findings: readonly Finding[] } => {
  const expected = 'a concentration, such as quantity(1, "mg/L", "ai")';
  if (input === undefined) return fail("missing", "concentration", input, expected);
  if (Object(input).unit === "ppm")
    return fail("unit/ambiguous", "concentration", input, expected, { choices: ["mg/L", "ppm w/w"] });
  const byWeight = /w\/w$/.test(unitOf(input));
  if (!byWeight) {
    const q = expectQuantity(input, { dimension: "mass/volume", bound: "positive" }, "concentration");
    return { perLitre: q.in("mg/L"), of: ofWhat(q.of), findings: [] };
  }
  const q = expectQuantity(input, { dimension: "mass/mass", bound: "positive" }, "concentration");
  const finding: Finding = {
    code: "water-density-taken",
    severity: "note",
    path: "concentration",
    params: { density: "1 kg/L" },
    text: "The concentration is by weight; the water is taken as 1 kg/L.",
    source: "common practice, no source",
  };
  return { perLitre: q.in("ppm w/w"), of: ofWhat(q.of), findings: [finding] };
};

type Strength = Quantity<"mass/mass", string> | Quantity<"mass/volume", string>;

const strengthOf = (input: unknown): Strength => {
  const byWeight = /w\/w$/.test(unitOf(input)) || /^(lb\/lb|kg\/kg|g\/g|g\/kg)$/.test(unitOf(input));
  return byWeight
    ? atMostPure(expectQuantity(input, { dimension: "mass/mass", bound: "positive" }, "strength"))
    : expectQuantity(input, { dimension: "mass/volume", bound: "positive" }, "strength");
};

const atMostPure = <Q extends Strength>(strength: Q): Q =>
  expectWithin(strength, numberIn(strength, "% w/w"), "strength", { max: 100, unit: "% w/w" });

/** The product for a weight of active, by the algebra of substances: lb of ai per ai/product is product. */
const productOf = (
  active: { readonly of: string },
  strength: Strength,
  metric: boolean,
): Quantity<"mass", string> | Quantity<"volume", string> => {
  const { of } = active;
  if (of !== "none" && strength.of.split("/")[0] !== of)
    fail(
      "substance/mismatch",
      "strength",
      strength,
      /^product\b/.test(of)
        ? "no strength: the concentration is of the product itself, and so is its weight in active"
        : `a strength of ${of}, as the concentration is, such as quantity(25, "% w/w", "${of}/product")`,
    );
  const product = toldBy({ other: "strength" }, () => perOf(active, strength));
  if (product.dimension === "mass") {
    const mass = expectQuantity(product, { dimension: "mass" }, "strength");
    return new Quantity(mass.in(metric ? "kg" : "lb"), metric ? "kg" : "lb", mass.of, "mass");
  }
  const volume = expectQuantity(product, { dimension: "volume" }, "strength");
  return new Quantity(volume.in(metric ? "L" : "gal"), metric ? "L" : "gal", volume.of, "volume");
};
