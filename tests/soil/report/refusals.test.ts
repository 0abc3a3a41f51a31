import { describe, expect } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const meq = (value: number) => quantity(value, "meq/100 g");
const ppm = (value: number, of: string) => quantity(value, "mg/kg", of as "K/soil");
const layer = { assumed: "2,000,000 lb/acre" };
const record = (start: string) => expect.stringMatching(new RegExp(`^${start}`)) as unknown as string;

describe("reports", () => {
  const K = ppm(100, "K/soil");
  const cations = { Ca: ppm(1000, "Ca/soil"), Mg: ppm(120, "Mg/soil"), K };
  const exchange = (more: object) => () => call.exchangeCapacity({ cations, acidity: meq(1), ...more });
  tellsEach([
    [
      () => call.acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 8.1 }),
      "range bufferPH: expected 8 or less, where the buffer starts: another buffer may be meant, got 8.1",
    ],
    [
      () => call.acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 7.8, weightPerVolume: 1 }),
      "conflict weightPerVolume: expected nothing: this buffer gives acidity by weight of soil, got 1",
    ],
    [
      () => call.acidityFromBuffer({ buffer: "Mehlich, North Carolina", bufferPH: 6 }),
      "missing weightPerVolume: expected the weight of the sample per volume (W/V of the report, g/cm3): this buffer gives acidity per 100 cm3. For lime, limeRequirement takes the buffer pH as it is, got undefined",
    ],
    [
      () => call.acidityFromBuffer({ buffer: "Mehlich, North Carolina", bufferPH: 2, weightPerVolume: 3 }),
      "range bufferPH: expected 3 or more, got 2",
      "range weightPerVolume: expected 2.65 or less, got 3",
    ],
    [
      exchange({ cations: { K } }),
      "missing cations.Ca: expected Ca as tested; 0 where none was found, got undefined",
      "missing cations.Mg: expected Mg as tested; 0 where none was found, got undefined",
    ],
    [exchange({ cations: { ...cations, K: 100 } }), "type cations.K: expected a quantity of K, got 100"],
    [
      exchange({ cations: { ...cations, K: ppm(-1, "K/soil") } }),
      "range cations.K: expected zero or more, got -1 mg/kg of K/soil",
    ],
    [
      exchange({ cations: { ...cations, K: ppm(1, "Na/soil") } }),
      "substance/mismatch cations.K: expected a quantity of K/soil, got 1 mg/kg of Na/soil",
    ],
    [
      exchange({ cations: { ...cations, K: quantity(1, "mg/L", "K/soil" as "K") } }),
      "unit/mismatch cations.K: expected mg/kg, meq/100 g, or lb/acre and kg/ha with a layer, got 1 mg/L of K/soil",
    ],
    [
      exchange({ cations: { ...cations, K: quantity(200, "lb/acre", "K") } }),
      'missing layer: expected the layer that lb/acre is of: { assumed: "2,000,000 lb/acre" }, got undefined',
    ],
    [
      exchange({
        cations: { Ca: ppm(0, "Ca/soil"), Mg: ppm(0, "Mg/soil"), K: ppm(0, "K/soil") },
        acidity: meq(0),
      }),
      "infeasible cations: expected a soil that holds some charge, got nothing but zeros",
    ],
    [
      () => call.exchangeableCharge(ppm(100, "K2O/soil")),
      'substance/mismatch content: expected an ion, such as K/soil: an oxide goes through elementOf first, got "K2O/soil"',
    ],
    [
      () => call.contentOfCharge(quantity(1, "meq/100 g")),
      'substance/mismatch charge: expected a share of the soil, such as quantity(50, "mg/kg", "K/soil"); a rate per area goes into contentInSoil, got "none"',
    ],
    [
      () => call.contentInSoil(quantity(100, "lb/acre"), layer),
      "substance/mismatch amount: expected an amount of one substance, such as K, got 100 lb/acre",
    ],
    [
      () => call.soilMass({ ...layer, depth: quantity(6, "in"), bulkDensity: quantity(1.3, "g/mL", "soil") }),
      'conflict layer.assumed: expected a bulk density or a shortcut, not both, got "2,000,000 lb/acre"',
    ],
    [
      () => call.soilMass({ depth: quantity(0, "in"), bulkDensity: quantity(2.7, "g/mL", "soil") }),
      "range layer.depth: expected more than zero, got 0 in",
      "range layer.bulkDensity: expected a bulk density of 0.05 to 2.65 g/mL, got 2.7 g/mL of soil",
    ],
    [
      () => call.soilMass({ assumed: "a lot", depth: quantity(0, "in") }),
      'type layer.assumed: expected one of "2,000,000 lb/acre", "4,000,000 lb/acre-ft", "2,240,000 kg/ha to 15 cm", got "a lot"',
      "range layer.depth: expected more than zero, got 0 in",
    ],
    [() => call.equivalentWeight("Fe"), record('type ion: expected one of "Ca", "Mg", "K", "Na", "Al", ')],
    [
      () => call.equivalentWeight("Cl", "whole numbers"),
      'type ion: expected one of "Ca", "Mg", "K", "Na", "Al", got "Cl"',
    ],
  ]);
});
