import { impactQuotient, leachingScore, quantity, treatmentFrequency } from "../../src/index.js";
import type { PublishedCheck } from "./check.js";

const all = (value: number) => ({
  chronic: value,
  dermal: value,
  bird: value,
  fish: value,
  bee: value,
  beneficial: value,
  soilHalfLife: value,
  plantHalfLife: value,
  systemicity: value,
  leaching: value,
  surfaceLoss: value,
});
const quotient = (value: number): number =>
  impactQuotient({ ratings: all(value), source: "ends of the scale" }).quotient;
const product = (value: number) => quantity(value, "kg/ha", "product");
const field = quantity(1, "ha");

/** Published checks of use indicators. */
export const indicatorChecks: readonly PublishedCheck[] = [
  {
    entry: "indicator-001",
    formulas: ["impactQuotient"],
    source: {
      title: "Environmental impact quotient (EIQ) explained",
      publisher: "Cornell University turfgrass program",
      where: "range of the values",
      url: "https://turf.cals.cornell.edu/pests-and-weeds/environmental-impact-quotient-eiq-explained/",
    },
    reached: "read",
    given: "all ratings 1, and all ratings 5",
    answers: [
      { of: "lowest", printed: 6.7, to: 0.1 },
      { of: "highest", printed: 226.7, to: 0.1 },
    ],
    compute: () => [quotient(1), quotient(5)],
  },
  {
    entry: "indicator-002",
    formulas: ["treatmentFrequency"],
    source: {
      title: "Treatment frequency index",
      publisher: "MilKey project",
      where: "description: 1 with the standard dose",
      url: "https://www.milkey-project.eu/?p=19259",
    },
    reached: "read",
    kind: "transcription",
    given: "one full rate on the whole area",
    answers: [{ of: "index", printed: 1, to: 1 }],
    compute: () => [
      treatmentFrequency({
        treatments: [{ name: "standard dose", rate: product(2), fullRate: product(2), treated: field }],
        area: field,
      }).index,
    ],
  },
  {
    entry: "indicator-003",
    formulas: ["leachingScore"],
    source: {
      title: "Groundwater ubiquity score (GUS)",
      publisher: "National Pesticide Information Center",
      where: "equation, and classes of the table",
      url: "http://npic.orst.edu/envir/gus.html",
    },
    reached: "read",
    kind: "transcription",
    given: "10 d and Koc of 10,000, 158.489 and 15.8489 mL/g: the bounds of the classes",
    answers: [
      { of: "between extremely low and low", printed: 0, to: 0.1 },
      { of: "between low and moderate", printed: 1.8, to: 0.1 },
      { of: "between moderate and high", printed: 2.8, to: 0.1 },
    ],
    compute: () =>
      [10_000, 158.489, 15.8489].map(
        (koc) => leachingScore({ halfLife: quantity(10, "d"), koc: quantity(koc, "mL/g") }).score,
      ),
  },
];
