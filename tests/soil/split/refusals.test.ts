import { describe, expect } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const meq = (value: number) => quantity(value, "meq/100 g");
const percent = (value: number) => quantity(value, "%");
const lb = (value: number, of = "CaCO3 equivalent") => quantity(value, "lb/1000 ft2", of as "S");
const layer = { assumed: "2,000,000 lb/acre" };
const record = (start: string) => expect.stringMatching(new RegExp(`^${start}`)) as unknown as string;

describe("acidifying, splitting, sodium", () => {
  const sulfur = (more: object) => () =>
    call.sulfurApplications({
      total: lb(10, "S"),
      mowingHeight: quantity(3, "in"),
      freeLime: false,
      first: "2026-04-01",
      monthsApart: 1,
      ...more,
    });
  const split = (more: object) => () =>
    call.splitAmendment({
      total: lb(100),
      most: lb(50),
      source: "the label",
      first: "2026-04-01",
      monthsApart: 6,
      ...more,
    });
  const bare = { material: "sulfur", texture: "sandy", pH: 7, targetPH: 6.5, freeLime: false };
  const gypsum = (more: object) => () =>
    call.gypsumRequirement({
      capacity: meq(10),
      sodiumPercent: percent(15),
      targetPercent: percent(5),
      purity: 100,
      layer,
      ...more,
    });
  tellsEach([
    [
      sulfur({ mowingHeight: quantity(1.9, "in") }),
      "range mowingHeight: expected 2 in or more: no source has a figure for sulfur on closer cut turf, got 1.9 in",
    ],
    [sulfur({ freeLime: "no" }), record("type freeLime: ")],
    [
      () => call.sulfurToIncorporate({ ...bare, freeLime: true }),
      "infeasible freeLime: expected a soil without free lime; sulfurForCarbonate gives what the lime takes up, got true",
    ],
    [
      () => call.sulfurToIncorporate({ ...bare, material: "alum", texture: "loam", pH: 7.6, targetPH: 5.9 }),
      'type material: expected one of "sulfur", "ferrous sulfate", got "alum"',
      'type texture: expected one of "sandy", "clay", got "loam"',
      "range pH: expected 7.5 or less, got 7.6",
      "range targetPH: expected 6 or more, got 5.9",
    ],
    [split({ monthsApart: 0 }), "range monthsApart: expected 1 or more, got 0"],
    [split({ monthsApart: 25 }), "range monthsApart: expected 24 or less, got 25"],
    [split({ monthsApart: 1.5 }), "range monthsApart: expected a whole number of months, got 1.5"],
    [
      split({ total: lb(61), most: lb(1) }),
      "infeasible total: expected at most 60 applications under the stated maximum; this takes 61, got 61 lb/1000 ft2 of CaCO3 equivalent",
    ],
    [split({ source: "" }), 'missing source: expected who states the maximum, got ""'],
    [split({ source: {} }), "missing source.title: expected a text, got undefined"],
    [split({ source: { title: "Turf" } }), "missing source.publisher: expected a text, got undefined"],
    [
      split({ source: { title: "Turf", publisher: "a county", year: "1998" } }),
      record("not-finite source.year|^type source.year"),
    ],
    [
      split({ most: lb(0), perYear: lb(10, "S") }),
      "range most: expected more than zero, got 0 lb/1000 ft2 of CaCO3 equivalent",
      "substance/mismatch perYear: expected a quantity of CaCO3 equivalent, got 10 lb/1000 ft2 of S",
    ],
    [
      gypsum({ targetPercent: percent(16) }),
      "conflict targetPercent: expected at most the present percentage, which is 15: gypsum only lowers it, got 16",
    ],
    [
      gypsum({ purity: 101, fieldFactor: 3.1, sodiumPercent: percent(101) }),
      "range sodiumPercent: expected 100 or less, got 101",
      "range purity: expected 100 or less, got 101",
      "range fieldFactor: expected 3 or less, got 3.1",
    ],
    [
      gypsum({ depth: quantity(12, "in") }),
      "conflict depth: expected a layer: it already has a depth, got 12 in",
    ],
    [
      gypsum({ convention: "3.85 t/ha for 30 cm and a meq", depth: quantity(12, "in") }),
      "conflict layer: expected a depth: the convention already has a weight of soil, got a record",
    ],
    [
      gypsum({ convention: "by eye" }),
      'type convention: expected one of "weight of soil", "3.85 t/ha for 30 cm and a meq", "1.7 US tons for an acre-foot and a meq", got "by eye"',
    ],
    [() => call.sodiumPercentageFromRatio(201), "range ratio: expected 200 or less, got 201"],
    [() => call.gypsumEquivalent("chalk"), record('type material: expected one of "gypsum", "anhydrite", ')],
  ]);
});
