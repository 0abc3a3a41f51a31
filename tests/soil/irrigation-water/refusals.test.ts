import { describe, expect } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const percent = (value: number) => quantity(value, "%");
const ppm = (value: number, of: string) => quantity(value, "mg/kg", of as "K/soil");
const dS = (value: number) => quantity(value, "dS/m");
const record = (start: string) => expect.stringMatching(new RegExp(`^${start}`)) as unknown as string;

describe("irrigation water", () => {
  const ion = (value: number, name: string) => quantity(value, "meq/L", name as "Na");
  const water = { Na: ion(4, "Na"), Ca: ion(3, "Ca"), Mg: ion(3, "Mg") };
  const acid = (more: object) => () =>
    call.acidForAlkalinity({
      alkalinity: quantity(200, "mg/L", "CaCO3 equivalent"),
      target: quantity(60, "mg/L", "CaCO3 equivalent"),
      acid: "sulfuric acid",
      strength: quantity(93, "% w/w"),
      density: quantity(1.83, "g/mL", "product"),
      ...more,
    });
  const adjusted = (more: object) => () =>
    call.adjustedSodiumRatio({ water, method: "equilibrium calcium", ...more });
  const leaching = (more: object) => () =>
    call.leachingRequirement({ method: "average root zone", water: dS(1), soil: dS(2), ...more });
  tellsEach([
    [
      acid({ target: quantity(201, "mg/L", "CaCO3 equivalent") }),
      "conflict target: expected at most the present alkalinity, got 201 mg/L of CaCO3 equivalent",
    ],
    [
      acid({ acid: "vinegar", strength: quantity(0, "% w/w"), density: quantity(2.1, "g/mL", "product") }),
      'type acid: expected one of "sulfuric acid", "phosphoric acid", "nitric acid", got "vinegar"',
      "range strength: expected more than 0, got 0",
      "range density: expected 2 or less, got 2.1",
    ],
    [adjusted({ pHc: 7.4 }), "conflict pHc: expected nothing: equilibrium calcium takes no pHc, got 7.4"],
    [
      adjusted({}),
      "missing water.HCO3: expected HCO3 as tested; 0 where none was found, got undefined",
      "missing water.conductivity: expected the conductivity of the water, got undefined",
    ],
    [
      adjusted({ water: { ...water, Ca: ion(0, "Ca"), HCO3: ion(1, "HCO3"), conductivity: dS(1) } }),
      "infeasible water.Ca: expected some calcium, got 0",
    ],
    [
      adjusted({ water: { ...water, HCO3: ion(0.1, "HCO3"), conductivity: dS(9) } }),
      "range water.conductivity: expected 8 or less, got 9",
    ],
    [
      adjusted({ water: { ...water, HCO3: ion(0.09, "HCO3"), conductivity: dS(1) } }),
      record("range water.HCO3: expected 0.05 or more, got 0.0"),
    ],
    [adjusted({ method: "pHc", pHc: 9.1 }), "range pHc: expected 9 or less, got 9.1"],
    [adjusted({ method: "pHc" }), record("missing pHc|^not-finite pHc|^type pHc")],
    [
      () => call.sodiumAdsorptionRatio({ ...water, Ca: ion(0, "Ca"), Mg: ion(0, "Mg") }),
      "infeasible water.Ca: expected some calcium or magnesium: the ratio has no value, got no calcium and no magnesium",
    ],
    [
      () => call.sodiumAdsorptionRatio({ Na: ion(4, "Na") }),
      "missing water.Ca: expected Ca as tested; 0 where none was found, got undefined",
      "missing water.Mg: expected Mg as tested; 0 where none was found, got undefined",
    ],
    [
      () => call.sodiumAdsorptionRatio({ ...water, Na: 4 }),
      "type water.Na: expected an amount of Na in water, got 4",
    ],
    [
      () => call.sodiumAdsorptionRatio({ ...water, Na: ion(-4, "Na") }),
      "range water.Na: expected zero or more, got -4 meq/L of Na",
    ],
    [
      () => call.sodiumAdsorptionRatio({ ...water, Na: ppm(4, "Na/soil") }),
      "substance/mismatch water.Na: expected an amount of Na/water, got 4 mg/kg of Na/soil",
    ],
    [
      () => call.sodiumAdsorptionRatio({ ...water, Na: quantity(4, "lb/acre", "Na") }),
      "unit/mismatch water.Na: expected mg/L, meq/L or ppm w/w, got 4 lb/acre of Na",
    ],
    [
      () =>
        call.ionBalance({
          ...water,
          NO3: ion(1, "NO3"),
          "NO3-N": ion(1, "NO3-N"),
          conductivity: 3,
          pH: 15,
        }),
      "conflict water.NO3-N: expected nitrate as NO3 or as NO3-N, not both, got both",
      record("type water.conductivity: "),
      "range water.pH: expected 14 or less, got 15",
    ],
    [
      () => call.ionBalance(7),
      record("type water: expected an analysis of water: ions, conductivity, pH, got 7"),
    ],
    [
      () =>
        call.blendWaters([
          { share: percent(50), water },
          { share: percent(40), water },
        ]),
      "conflict parts: expected shares that add up to 100 %, got 90 % in all",
    ],
    [
      () => call.blendWaters([{ share: percent(-1), water: 3 }]),
      record("range parts\\[0\\]\\.share: expected zero or more, got -1 %"),
      record("type parts\\[0\\]\\.water: "),
    ],
    [
      () => call.blendShare({ first: dS(1), second: dS(3), target: dS(4) }),
      "infeasible target: expected a target from 1 to 3 dS/m, between two waters that differ, got 4 dS/m",
    ],
    [
      () => call.dissolvedSalts({ conductivity: dS(5), factor: "800 mg/L per dS/m, above 5 dS/m" }),
      'conflict factor: expected 640 up to 5 dS/m: the water has 5, got "800 mg/L per dS/m, above 5 dS/m"',
    ],
    [
      leaching({ water: dS(5) }),
      "infeasible water: expected less than 5 dS/m: at or above it no amount of leaching keeps the soil at this level; blend the water, or choose a grass that tolerates more salt, got 5 dS/m",
    ],
    [
      leaching({ method: "drainage water", water: dS(2), soil: undefined, drainage: dS(2) }),
      "infeasible water: expected less than 2 dS/m: at or above it no amount of leaching keeps the drainage at this level; blend the water, or choose a grass that tolerates more salt, got 2 dS/m",
    ],
    [
      leaching({ method: "drainage water" }),
      "conflict soil: expected drainage, the conductivity of the water below the roots, for this method, got 2 dS/m (did you mean drainage?)",
    ],
    [
      leaching({ drainage: dS(2) }),
      "conflict drainage: expected soil, the conductivity of the saturation extract, for this method, got 2 dS/m (did you mean soil?)",
    ],
    [
      leaching({ method: "by eye", soil: dS(0) }),
      'type method: expected one of "average root zone", "drainage water", got "by eye"',
      "range soil: expected more than zero, got 0 dS/m",
    ],
    [
      () => call.irrigationWithLeaching({ use: quantity(100, "mm"), share: percent(100) }),
      "range share: expected less than 100 % of the water, got 100 %",
    ],
  ]);
});
