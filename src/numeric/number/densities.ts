import { fail, numberIn } from "../../quantity/index.js";

/** A weight per volume, whatever it is of. */
interface Density {
  readonly value: number;
  readonly unit: string;
}

/** What a density lies between, as each system prints it, and what it most often is, in kg/L. */
interface Band {
  readonly metric: readonly [min: number, max: number, unit: "kg/L" | "g/mL"];
  readonly US: readonly [min: number, max: number, unit: "lb/gal" | "lb/ft3"];
  readonly usual: readonly [min: number, max: number];
  readonly words: `${string}{}${string}`;
}

/** Liquid ammonia weighs 5.15 lb/gal at 60 °F, phosphoric acid of 85 % 14.1 (both from memory); mercury alone passes the top. */
const liquid: Band = {
  metric: [0.5, 3, "kg/L"],
  US: [4.2, 25, "lb/gal"],
  usual: [0.5, 3],
  words: "the density of a liquid, {}; water has 1 kg/L, 8.345 lb/gal",
};

/** Expanded perlite begins at 2 lb/ft3 (from memory), and nothing that is loose is heavier than solid quartz, 2.65 g/mL. */
const loose: Band = {
  metric: [0.03, 2.65, "g/mL"],
  US: [1.9, 165, "lb/ft3"],
  usual: [0.2, 2.2],
  words: "a bulk density of {}; dry sand has some 1.6 g/mL, 100 lb/ft3, 2,700 lb/yd3",
};

/** Units in which people state a density: the number of a liquid fits one of them. */
const units = ["kg/L", "lb/gal", "lb/ft3", "kg/m3", "lb/yd3"] as const;

const within = <D extends Density>(density: D, path: string, band: Band): D => {
  const [min, max, unit] = /^(?:lb|oz|US ton)\//.test(density.unit) ? band.US : band.metric;
  const weight = numberIn(density, unit);
  // But for what a change of units rounds
  if (weight >= min * (1 - 1e-9) && weight <= max * (1 + 1e-9)) return density;
  const { value } = density;
  const [low, high] = band.usual;
  const meant = units.find((one) => {
    const asked = numberIn({ value, unit: one }, "kg/L");
    return asked >= low && asked <= high;
  });
  // Written here: whoever loads a fertilizer alone does without what writes down bounds of every kind
  return fail("range", path, density, band.words.replace("{}", `${min} to ${max} ${unit}`), {
    params: { min, max, unit },
    ...(meant !== undefined && { suggestion: `${value} ${meant}` }),
  });
};

/** Takes the density of a liquid, or throws: the number of another unit is told with that unit. */
export const expectLiquidDensity = <D extends Density>(density: D, path: string): D =>
  within(density, path, liquid);

/** The same for the bulk density of loose material. */
export const expectLooseDensity = <D extends Density>(density: D, path: string): D =>
  within(density, path, loose);
