import { quantity } from "../../src/quantity/index.js";
import {
  containerRinse,
  type Formulation,
  fixedJarAmount,
  jarTest,
  type RinseRuleId,
  rinseResidue,
  twoJarReading,
} from "../../src/tank/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";

const utahKinds: readonly Formulation[] = [
  "water-soluble packet",
  "WP",
  "WG",
  "CS",
  "EC",
  "SL",
  "SP",
  "surfactant",
];

const rinse = (gallons: number, rule: RinseRuleId) =>
  containerRinse({ container: quantity(gallons, "gal"), rule });

const arizona: Source = {
  title: "Order in The Tank!",
  publisher: "University of Arizona turf extension",
  year: 1999,
  where: "I. Compatibility test",
};

/** Published jar tests and rinsing rules that the tank formulas recompute. */
export const tankJarRinseChecks: readonly PublishedCheck[] = [
  {
    entry: "mix-034",
    kind: "transcription",
    formulas: ["fixedJarAmount"],
    source: {
      title: "Using a Jar Test",
      publisher: "Utah State University Extension",
      year: 2012,
      where: "list 1-9",
    },
    reached: "read",
    given: "one pint of water",
    answers: [
      ...utahKinds.map((kind, i) => ({ of: `${i < 3 ? "tbsp" : "tsp"} of ${kind}`, printed: 1, to: 1 })),
      { of: "g of fertilizer", printed: 1.1, to: 0.1 },
    ],
    compute: () =>
      [...utahKinds, "dry fertilizer" as const].map((kind, i) => {
        const amount = fixedJarAmount(kind, quantity(1, "pt", "water"));
        const unit = i < 3 ? "tbsp" : i < 8 ? "tsp" : "g";
        return amount?.unit === unit ? amount.value : -1;
      }),
  },
  {
    entry: "mix-036",
    formulas: ["jarTest"],
    source: {
      title: "GrowNotes, Spray Application Manual, 7.5 Checks for physical compatibility",
      publisher: "GRDC, Australia",
      year: 2025,
    },
    reached: "read",
    given: "2000 and 800 mL/ha, all rates divided by 100 (a jar of 0.7 L at 70 L/ha)",
    answers: [
      { of: "mL in the jar at 2000 mL/ha", printed: 20, to: 1 },
      { of: "mL in the jar at 800 mL/ha", printed: 8, to: 1 },
    ],
    compute: () =>
      [2000, 800].map((dose) => {
        const { amounts } = jarTest({
          jar: quantity(0.7, "L", "spray"),
          applicationVolume: quantity(70, "L/ha", "spray"),
          products: [{ id: "a", formulation: "SL", rate: quantity(dose, "mL/ha", "product:a") }],
        });
        return amounts[0]?.amount.value ?? 0;
      }),
  },
  {
    entry: "mix-037",
    kind: "transcription",
    formulas: ["jarTest", "twoJarReading"],
    source: arizona,
    reached: "read",
    given: "two jars, one with a compatibility agent",
    answers: [
      { of: "minutes of standing", printed: 5, to: 1 },
      { of: "use the agent: bad without, good with (1 = yes)", printed: 1, to: 1 },
      { of: "do not mix: bad in both (1 = yes)", printed: 1, to: 1 },
    ],
    compute: () => {
      const { steps } = jarTest({
        jar: quantity(1, "pt", "spray"),
        products: [{ id: "a", formulation: "SL", rate: quantity(1, "% v/v", "product:a/spray") }],
        stand: "University of Arizona",
      });
      const reading = (withAgent: boolean): string =>
        twoJarReading({ failedWithoutAgent: true, failedWithAgent: withAgent });
      return [
        steps.find(({ minutes }) => minutes !== undefined)?.minutes ?? 0,
        reading(false) === "use a compatibility agent" ? 1 : 0,
        reading(true) === "do not tank mix" ? 1 : 0,
      ];
    },
  },
  {
    entry: "mix-038",
    formulas: ["jarTest"],
    source: { title: "compatibility test of US herbicide labels", publisher: "labels and extension" },
    reached: "from memory",
    given: "a pint at 25 gal/acre: 1 pt/acre, agent at 2 pt/100 gal",
    answers: [
      { of: "half teaspoons of liquid", printed: 1, to: 0.1 },
      { of: "quarter teaspoons of agent", printed: 1, to: 0.1 },
    ],
    compute: () => {
      const { amounts } = jarTest({
        jar: quantity(1, "pt", "spray"),
        applicationVolume: quantity(25, "gal/acre", "spray"),
        products: [
          { id: "a", formulation: "EC", rate: quantity(1, "pt/acre", "product:a") },
          {
            id: "b",
            formulation: "compatibility agent",
            rate: { value: 2, unit: "pt", of: "product:b", per: { value: 100, unit: "gal" } },
          },
        ],
      });
      const teaspoons = (id: string): number =>
        (amounts.find((amount) => amount.id === id)?.amount.value ?? 0) / quantity(1, "tsp").in("mL");
      return [teaspoons("a") * 2, teaspoons("b") * 4];
    },
  },
  {
    entry: "mix-040",
    formulas: ["quantity"],
    source: {
      title: "Math for Pesticide Applicators",
      publisher: "University of Nebraska-Lincoln",
      where: "conversions",
    },
    reached: "read",
    given: "the measures of a fill station",
    answers: [
      { of: "tbsp in 1 fl oz", printed: 2, to: 1 },
      { of: "tsp in 1 fl oz", printed: 6, to: 1 },
      { of: "mL in 1 fl oz", printed: 29.57, to: 0.01 },
      { of: "mL in 1 pt", printed: 473.2, to: 0.1 },
      { of: "L in 1 qt", printed: 0.9463, to: 0.0001, printing: "cut" },
      { of: "L in 1 gal", printed: 3.785, to: 0.001 },
      { of: "g in 1 lb", printed: 453.59, to: 0.01 },
    ],
    compute: () => [
      quantity(1, "fl oz").in("tbsp"),
      quantity(1, "fl oz").in("tsp"),
      quantity(1, "fl oz").in("mL"),
      quantity(1, "pt").in("mL"),
      quantity(1, "qt").in("L"),
      quantity(1, "gal").in("L"),
      quantity(1, "lb").in("g"),
    ],
  },
  {
    entry: "mix-082",
    kind: "transcription",
    formulas: ["containerRinse"],
    source: {
      title: "Farm pesticide container rinsing (archived compliance library)",
      publisher: "US Environmental Protection Agency",
    },
    reached: "read",
    given: "a container of 10 gal",
    answers: [
      { of: "gal of the least rinse (20 %)", printed: 2, to: 1 },
      { of: "gal of the largest rinse (25 %)", printed: 2.5, to: 0.1 },
      { of: "rinses", printed: 3, to: 1 },
      { of: "s of draining", printed: 30, to: 1 },
      { of: "s of shaking", printed: 30, to: 1 },
      { of: "s with a pressure nozzle", printed: 30, to: 1 },
    ],
    compute: () => {
      const { perRinse, rinses, drainSeconds, shakeSeconds, pressure } = rinse(10, "US EPA archive");
      return [
        ...perRinse.map((water) => water.in("gal")),
        rinses,
        drainSeconds ?? 0,
        shakeSeconds ?? 0,
        pressure?.seconds ?? 0,
      ];
    },
  },
  {
    entry: "mix-084",
    kind: "transcription",
    formulas: ["containerRinse"],
    source: {
      title: "Administrative Rules of Montana 4.10",
      publisher: "State of Montana",
      where: "(1)-(2)",
    },
    reached: "read",
    given: "containers of 2, 5 and 30 gal",
    answers: [
      { of: "gal per rinse, 2 gal", printed: 0.5, to: 0.1 },
      { of: "gal per rinse, 5 gal", printed: 1, to: 1 },
      { of: "gal per rinse, 30 gal", printed: 6, to: 1 },
      { of: "s of draining", printed: 30, to: 1 },
      { of: "h until it must be rinsed", printed: 48, to: 1 },
      { of: "gal with a pressure nozzle, 2 gal", printed: 1, to: 1 },
    ],
    compute: () => {
      const small = rinse(2, "Montana");
      return [
        ...[2, 5, 30].map((gallons) => rinse(gallons, "Montana").perRinse[0].in("gal")),
        small.drainSeconds ?? 0,
        small.withinHours ?? 0,
        small.pressure?.water?.in("gal") ?? 0,
      ];
    },
  },
  {
    entry: "mix-087",
    kind: "transcription",
    formulas: ["containerRinse"],
    source: {
      title: "Container disposal on the label of a US lawn herbicide (text of 40 CFR 156.146)",
      publisher: "US product label",
      where: "triple rinse",
    },
    reached: "read",
    given: "a container of 2 gal; a quarter full, 10 s",
    answers: [
      { of: "gal per rinse", printed: 0.5, to: 0.1 },
      { of: "rinses", printed: 3, to: 1 },
      { of: "s of draining, from the drip", printed: 10, to: 1 },
      { of: "s of shaking", printed: 10, to: 1 },
    ],
    compute: () => {
      const { perRinse, rinses, drainSeconds, shakeSeconds } = rinse(2, "US federal label text");
      return [perRinse[0].in("gal"), rinses, drainSeconds ?? 0, shakeSeconds ?? 0];
    },
  },
  {
    entry: "mix-085",
    kind: "transcription",
    formulas: ["containerRinse"],
    source: { title: "Triple rinsing, definition of 1974", publisher: "compliance digest" },
    reached: "read",
    given: "a container of 10 gal",
    answers: [{ of: "gal per rinse (about 10 %)", printed: 1, to: 1 }],
    compute: () => [rinse(10, "1974 definition").perRinse[0].in("gal")],
  },
  {
    entry: "mix-085",
    formulas: ["rinseResidue"],
    source: { title: "dilution by mass balance", publisher: "derived by hand" },
    reached: "derived",
    given: "4 fl oz in a 2.5 gal jug, three rinses of a quarter and of a tenth",
    answers: [
      { of: "% left with a quarter", printed: 0.011, to: 0.001 },
      { of: "% left with a tenth", printed: 0.14, to: 0.01 },
    ],
    compute: () =>
      [0.625, 0.25].map((gallons) =>
        rinseResidue({ heel: quantity(4, "fl oz"), rinse: quantity(gallons, "gal") }).in("%"),
      ),
  },
];

/** Published jar tests and rinsing rules that these checks leave out, and why. */
export const tankJarRinseLeftOut: readonly LeftOut[] = [
  {
    entry: "mix-039",
    reason:
      "2 to 6 tablespoons to the ounce: the reason why a density is asked for; no density is printed to compute with",
  },
];
