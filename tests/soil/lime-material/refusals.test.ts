import { describe, expect } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const lb = (value: number, of = "CaCO3 equivalent") => quantity(value, "lb/1000 ft2", of as "S");
const record = (start: string) => expect.stringMatching(new RegExp(`^${start}`)) as unknown as string;

describe("the lime at hand", () => {
  const quality = (more: object) => () => call.limeQuality(more);
  const passing = (sieves: object) => quality({ CCE: 90, scheme: "Iowa ECCE", sieves });
  const rate = (more: object) => () =>
    call.limeProductRate({ id: "lime-a", rate: lb(50), measure: "CCE", quality: { CCE: 90 }, ...more });
  tellsEach([
    [
      quality({}),
      "missing CCE: expected a calcium carbonate equivalent, an effective value or equalToTon, got undefined",
    ],
    [
      quality({ CCE: 251, moisture: 100, effective: 251 }),
      "range CCE: expected 250 or less, got 251",
      "range moisture: expected 99 or less, got 100",
      "range effective: expected 250 or less, got 251",
    ],
    // pure burnt lime has 178.5 %, 1.785 as a share; 2.48 is that of magnesium oxide
    [
      quality({ CCE: 0.9 }),
      "range CCE: expected a percent of more than 2.5 and at most 250, got 0.9 (did you mean 90?)",
    ],
    [
      quality({ effective: 1.785 }),
      "range effective: expected a percent of more than 2.5 and at most 250, got 1.785 (did you mean 178.5?)",
    ],
    [
      quality({ effective: 80, moisture: 5 }),
      "conflict moisture: expected moisture with a CCE: an effective value already counts it, got 5",
    ],
    [
      quality({ CCE: 90, scheme: "Iowa ECCE" }),
      "missing sieves: expected the sieve test that the scheme rates, got undefined",
    ],
    [
      quality({ CCE: 90, sieves: { passing: {} } }),
      "missing scheme: expected whose sieves: British Columbia, Iowa ECCE, Mississippi RNV, Missouri ENM, New York ENV, got undefined",
    ],
    [
      quality({ scheme: "Iowa ECCE", sieves: { passing: {} } }),
      "missing CCE: expected the calcium carbonate equivalent with the sieves, got undefined",
    ],
    [
      quality({ CCE: 90, effective: 80, scheme: "Iowa ECCE", sieves: { passing: {} } }),
      "conflict effective: expected a sieve test or an effective value, not both, got 80",
    ],
    [
      passing({}),
      "missing sieves: expected { passing } by mesh number, or { fractions } coarse to fine, got undefined",
    ],
    [
      passing({ passing: { 4: 100 }, fractions: [1] }),
      "conflict sieves.fractions: expected passing or fractions, not both, got both",
    ],
    [
      passing({ passing: { 4: 100, 8: 101, 20: 50 } }),
      'type sieves.passing.20: expected a sieve of the scheme: 4, 8, 60, got "20"',
      "range sieves.passing.8: expected 100 or less, got 101",
      "missing sieves.passing.60: expected percent that passes mesh 60, got undefined",
    ],
    [
      passing({ passing: { 4: 90, 8: 95, 60: 40 } }),
      "conflict sieves.passing.8: expected at most the 90 % that passes the coarser mesh: percent between sieves goes into fractions, got 95",
    ],
    [
      passing({ fractions: [10, 20] }),
      "type sieves.fractions: expected a list of 4 percentages, coarse to fine: over 4, 8, 60 mesh, and finer, got a list of 2",
    ],
    [
      passing({ fractions: [10, 20, 101, -1] }),
      "range sieves.fractions[2]: expected 100 or less, got 101",
      "range sieves.fractions[3]: expected 0 or more, got -1",
    ],
    [
      passing({ fractions: [10, 20, 30, 30] }),
      "conflict sieves.fractions: expected 100 % in all: percent that passes each sieve goes into passing, got 90 % in all",
    ],
    [
      rate({ requirement: {} }),
      "conflict rate: expected a requirement, or a rate with its measure, not both, got both",
    ],
    [
      rate({ rate: undefined, measure: undefined }),
      "missing requirement: expected what limeRequirement gives, or a rate with its measure, got undefined",
    ],
    [
      rate({ measure: undefined }),
      'missing measure: expected "CCE", "effective" or "standard lime": what the recommendation is in, got undefined',
    ],
    [
      rate({ measure: "ENM" }),
      'type measure: expected "CCE", "effective" or "standard lime": what the recommendation is in, got "ENM"',
    ],
    [
      rate({ measure: "standard lime" }),
      "substance/mismatch rate: expected a rate of product:standard-lime; pounds of ENM or ECCE a ton go into limeForRating, got 50 lb/1000 ft2 of CaCO3 equivalent",
    ],
    [
      rate({ rate: undefined, measure: undefined, requirement: { rate: lb(50) } }),
      'missing requirement.measure: expected "CCE", "effective" or "standard lime": what the recommendation is in, got undefined',
    ],
    [
      rate({ rate: lb(50, "product:standard-lime"), measure: "standard lime" }),
      "missing quality.equalToTon: expected the weight that the label sets equal to a ton of standard lime, got undefined",
    ],
    [
      rate({ quality: {} }),
      "missing quality.CCE: expected the calcium carbonate equivalent of the lime: limeQuality({ CCE }), got undefined",
    ],
    [
      rate({ measure: "effective", quality: { effective: null } }),
      "missing quality.effective: expected an effective value: limeQuality with the sieve test, or with the effective value of the label, got undefined",
    ],
    [rate({ quality: { CCE: 0 } }), "range quality.CCE: expected more than zero, got 0"],
    [rate({ quality: { CCE: 251 } }), "range quality.CCE: expected 250 or less, got 251"],
    [rate({ quality: { CCE: 90, moisture: 100 } }), "range quality.moisture: expected 99 or less, got 100"],
    [rate({ quality: 90 }), "type quality: expected what limeQuality gives, got 90"],
    [rate({ id: "" }), 'missing id: expected an id of the material, such as lime-a, got ""'],
    [
      () =>
        call.limeForRating({
          recommended: lb(50, "other:ENM"),
          rating: quantity(1500, "lb/US ton", "CaCO3 equivalent/product"),
        }),
      "substance/mismatch rating: expected a rating in other:ENM/product, got 1500 lb/US ton of CaCO3 equivalent/product",
    ],
    [
      () => call.carbonateEquivalent("chalk"),
      'type compound: expected one of "CaCO3", "CaMg(CO3)2", "MgCO3", "Ca(OH)2", "CaO", "Mg(OH)2", "MgO", "CaSiO3", got "chalk"',
    ],
    [
      () => call.limeForDepth({ rate: lb(50), from: quantity(0, "in") }),
      "range from: expected more than zero, got 0 in",
      record("missing to: expected a length, such as 10 ft or 3 m"),
    ],
  ]);
});
