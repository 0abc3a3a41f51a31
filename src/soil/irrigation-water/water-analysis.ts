import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectNumber,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { equivalentWeight } from "../report/equivalent-weight.js";
import { conductivityAt } from "./conductivity-at.js";

/** The ions of a water report. */
export const waterIonNames = [
  "Ca",
  "Mg",
  "Na",
  "K",
  "NH4-N",
  "HCO3",
  "CO3",
  "Cl",
  "SO4",
  "NO3",
  "NO3-N",
] as const;

/** An ion of a water report, as a substance. */
export type WaterIonName = (typeof waterIonNames)[number];

/** What a water report prints of an ion: weight or charge per volume, or ppm by weight. */
export type PrintedIon<E extends WaterIonName> =
  | Quantity<"mass/volume", E>
  | Quantity<"charge/volume", E>
  | Quantity<"mass/mass", `${E}/water`>;

/** An analysis of irrigation water, as far as tested. Nitrate is stated as NO3 or as NO3-N, 4.43 apart. */
export type WaterAnalysis = { readonly [E in WaterIonName]?: PrintedIon<E> } & {
  readonly conductivity?: Quantity<"conductivity", "none">;
  readonly pH?: number;
  readonly type?: "water-analysis";
  readonly version?: 1;
};

/** An analysis, read. */
export interface ReadWaterAnalysis {
  /** Milligrams per liter, by ion tested. */
  readonly weights: ReadonlyMap<WaterIonName, number>;
  /** Milliequivalents per liter, by ion tested. */
  readonly charges: ReadonlyMap<WaterIonName, number>;
  /** dS/m. */
  readonly conductivity: number | undefined;
  readonly pH: number | undefined;
}

const fields = [...waterIonNames, "conductivity", "pH", "type", "version"] as const;

/** Milligrams per liter of an ion; a liter of water weighs a kilogram, as water tests take it. */
const milligrams = (input: unknown, ion: WaterIonName, path: string): number => {
  if (typeof input !== "object" || input === null)
    return fail("type", path, input, `an amount of ${ion} in water`);
  const { value, unit, of = "none" } = input as { value: number; unit: string; of?: string };
  const q = quantityOf(value, unit, of, path);
  if (q.value < 0) outOfRange(path, q, { min: 0 });
  const wanted = q.dimension === "mass/mass" ? `${ion}/water` : ion;
  if (q.of !== wanted) fail("substance/mismatch", path, q, `an amount of ${wanted}`);
  if (q.dimension === "mass/volume") return numberIn(q, "mg/L");
  if (q.dimension === "mass/mass") return numberIn(q, "ppm w/w");
  return q.dimension === "charge/volume"
    ? numberIn(q, "meq/L") * equivalentWeight(ion)
    : fail("unit/mismatch", path, q, "mg/L, meq/L or ppm w/w");
};

/** Takes an analysis of water, or throws with all that is wrong with it. */
export const readWaterAnalysis = (input: unknown, path: string): ReadWaterAnalysis => {
  const record = expectFields(input, fields, path, "an analysis of water: ions, conductivity, pH");
  const problems = checks();
  const weights = new Map<WaterIonName, number>();
  for (const ion of waterIonNames) {
    const given = record[ion];
    if (given === undefined) continue;
    const value = problems.run(() => milligrams(given, ion, `${path}.${ion}`));
    if (value !== undefined) weights.set(ion, value);
  }
  if (record.NO3 !== undefined && record["NO3-N"] !== undefined) {
    problems.run(() =>
      fail("conflict", `${path}.NO3-N`, described("both"), "nitrate as NO3 or as NO3-N, not both"),
    );
  }
  const conductivity =
    record.conductivity === undefined
      ? undefined
      : problems.run(() => conductivityAt(record.conductivity, `${path}.conductivity`));
  const pH =
    record.pH === undefined
      ? undefined
      : problems.run(() => expectNumber(record.pH, `${path}.pH`, { min: 0, max: 14 }));
  problems.done();
  const charges = new Map([...weights].map(([ion, weight]) => [ion, weight / equivalentWeight(ion)]));
  return { weights, charges, conductivity, pH };
};

/** The charge of an ion, or throws where it was not tested: what is missing is not zero. */
export const expectCharge = (water: ReadWaterAnalysis, ion: WaterIonName, path: string): number =>
  water.charges.get(ion) ??
  fail("missing", `${path}.${ion}`, undefined, `${ion} as tested; 0 where none was found`);
