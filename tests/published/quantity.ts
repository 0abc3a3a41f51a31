import { parseQuantity } from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

const regulations: Source = {
  title: "The Units of Measurement Regulations 1995 (SI 1995/1804)",
  publisher: "HMSO, London",
  year: 1995,
  where: "schedule: capacity and mass, as transcribed in a public reference of imperial units",
  url: "https://www.legislation.gov.uk/uksi/1995/1804/made",
};
const handbook: Source = {
  title: "NIST Handbook 44, appendix C: General tables of units of measurement",
  publisher: "National Institute of Standards and Technology",
  where: "avoirdupois units of mass; notes on British units of measurement, as reprinted",
  url: "https://www.nist.gov/pml/weights-and-measures/publications/nist-handbooks/other-nist-handbooks/other-nist-handbooks-2",
};
const act: Source = {
  title: "Weights and Measures Act 1985",
  publisher: "HMSO, London",
  year: 1985,
  where: "schedule 1, part V",
  url: "https://www.legislation.gov.uk/ukpga/1985/72/schedule/1",
};

/** What a text of the trade comes to in a unit. */
const measured = (text: string, unit: string): number => parseQuantity(text).in(unit as never);

/** Measures that people type and that are multiples of a unit. */
export const quantityChecks: readonly PublishedCheck[] = [
  {
    entry: "quantity-001",
    formulas: ["parseQuantity"],
    source: regulations,
    reached: "read",
    kind: "transcription",
    given: "one of each measure, typed as the trade types it",
    answers: [
      { of: "mL in an imperial fluid ounce", printed: 28.4130625, to: 1e-7 },
      { of: "L in an imperial pint", printed: 0.56826125, to: 1e-8 },
      { of: "L in an imperial quart", printed: 1.1365225, to: 1e-7 },
      { of: "L in an imperial gallon", printed: 4.54609, to: 1e-5 },
      { of: "kg in a stone", printed: 6.35029318, to: 1e-8 },
      { of: "kg in a hundredweight of 112 lb", printed: 50.80234544, to: 1e-8 },
      { of: "kg in a cental, the hundredweight of 100 lb", printed: 45.359237, to: 1e-6 },
      { of: "t in a ton of 2240 lb", printed: 1.0160469088, to: 1e-10 },
      { of: "m2 in an acre", printed: 4046.8564224, to: 1e-7 },
      { of: "g in a grain", printed: 0.06479891, to: 1e-8 },
      { of: "m3 in a cubic yard", printed: 0.764554857984, to: 1e-12 },
    ],
    compute: () => [
      measured("1 imp fl oz", "mL"),
      measured("1 imp pt", "L"),
      measured("1 imperial quart", "L"),
      measured("1 uk gallon", "L"),
      measured("1 stone", "kg"),
      measured("1 long cwt", "kg"),
      measured("1 short cwt", "kg"),
      measured("1 long ton", "t"),
      measured("1 acre", "m2"),
      measured("1 grain", "g"),
      measured("1 cu yd", "m3"),
    ],
  },
  {
    entry: "quantity-002",
    formulas: ["parseQuantity"],
    source: handbook,
    reached: "read",
    kind: "transcription",
    given: "the tables of avoirdupois mass, and the notes on what differs in Great Britain",
    answers: [
      { of: "lb in a hundredweight", printed: 100, to: 1 },
      { of: "lb in a gross or long hundredweight", printed: 112, to: 1 },
      { of: "long hundredweights in a long ton", printed: 20, to: 1 },
      { of: "lb in a long ton", printed: 2240, to: 1 },
      { of: "lb in a stone", printed: 14, to: 1 },
      { of: "imperial fluid ounces in an imperial gallon", printed: 160, to: 1 },
      { of: "imperial fluid ounces in an imperial pint", printed: 20, to: 1 },
      { of: "US fluid ounces in a US gallon", printed: 128, to: 1 },
      { of: "how much larger the imperial gallon is, percent", printed: 20, to: 1 },
    ],
    compute: () => [
      measured("1 short cwt", "lb"),
      measured("1 long cwt", "lb"),
      measured("1 long ton", "lb") / measured("1 long cwt", "lb"),
      measured("1 long ton", "lb"),
      measured("1 stone", "lb"),
      measured("1 imp gal", "imp fl oz"),
      measured("1 imp pint", "imp fl oz"),
      measured("1 US gal", "fl oz"),
      (measured("1 imp gal", "L") / measured("1 gal", "L") - 1) * 100,
    ],
  },
  {
    entry: "quantity-003",
    formulas: ["quantity", "parseQuantity"],
    source: act,
    reached: "read",
    kind: "transcription",
    given: "pound and ounce",
    answers: [
      { of: "kg in a pound", printed: 0.45359237, to: 1e-8 },
      { of: "ounces in a pound", printed: 16, to: 1 },
    ],
    compute: () => [measured("1 lb", "kg"), measured("1 lb", "oz")],
  },
];
