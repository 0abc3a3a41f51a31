import {
  type CivilDate,
  dayOfMonth,
  daysBetween,
  earliestBySeedingIntervals,
  earlyEntryObjections,
  eventWindowsFor,
  fractionRemaining,
  halfLifeAt,
  hoursBetween,
  interimRestrictedEntryHours,
  monthOf,
  persistenceClass,
  quantity,
  repeatedDose,
  restrictedEntryInterval,
  soilTemperaturesFor,
  splitApplication,
  type ToxicityCategory,
  turfHalfLivesOf,
} from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

const days = (value: number) => quantity(value, "d");
const window = (id: string): readonly number[] => {
  const found = eventWindowsFor("").find((one) => one.id === id);
  return found === undefined ? [] : [found.from, ...(found.to === null ? [] : [found.to])];
};
const halfLife = (active: string, where: "turf" | "bare soil"): readonly [number, number] =>
  turfHalfLivesOf(active).find((one) => one.where === where)?.days ?? [0, 0];
const left = (half: number, elapsed: number): number =>
  fractionRemaining({ halfLife: days(half), elapsed: days(elapsed) }).in("%");

const npic: Source = {
  title: "Pesticide half-life fact sheet",
  publisher: "National Pesticide Information Center",
  where: "figure 1 and classes",
  url: "https://npic.orst.edu/factsheets/half-life.html",
};
const bromacil: Source = {
  title: "Reregistration decision for bromacil, restricted-entry intervals (rule of 40 CFR 156.208)",
  publisher: "US EPA",
};
const low: Source = {
  title: "PR Notice 95-3: reduction of interim restricted entry intervals for certain low risk pesticides",
  publisher: "US EPA",
  year: 1995,
  where: "section I",
  url: "https://nepis.epa.gov/Exe/ZyPURL.cgi?Dockey=2000JJ93.txt",
};
const entry: Source = {
  title: "40 CFR 170.112 Entry restrictions",
  publisher: "US Code of Federal Regulations, 2007 edition",
  year: 2007,
  where: "(a)(3), (c)",
};
const cases: readonly (readonly [ToxicityCategory, ToxicityCategory, ToxicityCategory])[] = [
  [3, 1, 4],
  [3, 2, 4],
  [3, 3, 4],
  [2, 2, 1],
];
const interim = (): readonly number[] =>
  cases.map(([dermal, eye, skin]) => interimRestrictedEntryHours({ dermal, eye, skin }));
const rei = [48, 24, 12, 48].map((printed) => ({ of: "h", printed, to: 1 }));
const reduced = (): readonly number[] => [
  interimRestrictedEntryHours({ dermal: 3, eye: 4, skin: 3 }),
  interimRestrictedEntryHours({ dermal: 3, eye: 4, skin: 3, lowRisk: true }),
];

/** Published examples of windows, decay, entry and other clocks. */
export const intervalClockChecks: readonly PublishedCheck[] = [
  {
    entry: "interval-004",
    formulas: ["eventWindowsFor"],
    kind: "transcription",
    source: {
      title: "Turf: crabgrass germination and preemergence programs",
      publisher: "Virginia Tech / University of Delaware county extension",
      year: 2008,
    },
    reached: "read",
    given: "air, base 50 °F: crabgrass begins to emerge",
    answers: [70, 140].map((printed) => ({ of: "°F d", printed, to: 1 })),
    compute: () => window("crabgrass, Virginia"),
    note: "A record, not a formula. Near to 42 and 78 °C d times 1.8, which is 75.6 and 140.4 and is of soil above 12 °C.",
  },
  {
    entry: "interval-042",
    formulas: ["eventWindowsFor"],
    kind: "transcription",
    source: {
      title: "Degree-days for predicting smooth crabgrass emergence in cool-season turfgrasses",
      publisher: "Crop Science 36(4), 990-996 (Fidanza et al.)",
      year: 1996,
      where: "abstract",
    },
    reached: "read",
    given: "soil at 2.5 cm, base 12 °C: first and major emergence",
    answers: [42, 78, 140, 230].map((printed) => ({ of: "°C d", printed, to: 1 })),
    compute: () => [
      ...window("smooth crabgrass, first emergence"),
      ...window("smooth crabgrass, major emergence"),
    ],
    note: "Records, not a formula.",
  },
  {
    entry: "interval-045",
    formulas: ["eventWindowsFor"],
    kind: "transcription",
    source: {
      title: "Annual bluegrass seedhead suppression",
      publisher: "Rutgers University turf blog",
      where: "GDD paragraph",
      url: "https://turf.rutgers.edu/blog/annual-bluegrass-seedhead-suppression",
    },
    reached: "read",
    given: "base 32 °F from 15 February",
    answers: [200, 500].map((printed) => ({ of: "°F d", printed, to: 1 })),
    compute: () => window("annual bluegrass, seedhead suppression"),
    note: "A record, not a formula.",
  },
  {
    entry: "interval-036",
    formulas: ["eventWindowsFor"],
    kind: "transcription",
    source: {
      title:
        "Growth suppression of Kentucky bluegrass using plant growth regulators and degree day application timing",
      publisher: "Agronomy Journal 81(5), 749-752 (Branham and Danneberger)",
      year: 1989,
      where: "abstract",
    },
    reached: "read",
    given: "the window in which more than 86 % of seedheads were suppressed",
    answers: [25, 125].map((printed) => ({ of: "degree-days", printed, to: 1 })),
    compute: () => window("Kentucky bluegrass, seedhead suppression"),
    note: "A record, not a formula; the base is not in the abstract.",
  },
  {
    entry: "interval-049",
    formulas: ["soilTemperaturesFor"],
    kind: "transcription",
    source: {
      title: "Importance of soil temps",
      publisher: "Georgia gardening column after turf extension",
      where: "list at 4-inch depth",
    },
    reached: "read",
    given: "soil at 4 in: crabgrass, goosegrass and spurge, overseeding, root decline, dormancy",
    answers: [53, 58, 60, 65, 74, 64, 50].map((printed) => ({ of: "°F", printed, to: 1 })),
    compute: () => soilTemperaturesFor("").flatMap(({ temperature: [a, b] }) => (a === b ? [a] : [a, b])),
    note: "Records, not a formula.",
  },
  {
    entry: "interval-056",
    formulas: ["fractionRemaining"],
    source: npic,
    reached: "read",
    kind: "worked example",
    given: "one, two and three half-lives",
    answers: [
      { of: "%", printed: 50, to: 1 },
      { of: "%", printed: 25, to: 1 },
      { of: "%", printed: 12, to: 1, printing: "cut" },
    ],
    compute: () => [1, 2, 3].map((n) => left(30, 30 * n)),
    note: "12.5 % is printed as about 12.",
  },
  {
    entry: "interval-056",
    formulas: ["persistenceClass"],
    kind: "transcription",
    source: npic,
    reached: "read",
    given: "half-lives at the edges of the classes: the last day of low, the first of moderate and of high",
    answers: [15, 16, 59, 61].map((printed) => ({ of: "d", printed, to: 1 })),
    compute: () => {
      const of = (wanted: string) =>
        Array.from({ length: 80 }, (_, i) => i + 1).filter((n) => persistenceClass(days(n)) === wanted);
      const [lowest, moderate, high] = ["low", "moderate", "high"].map(of) as [number[], number[], number[]];
      return [Math.max(...lowest), Math.min(...moderate), Math.max(...moderate), Math.min(...high)];
    },
  },
  {
    entry: "interval-057",
    formulas: ["fractionRemaining", "turfHalfLivesOf"],
    source: {
      title: "Efficacy and dissipation of dithiopyr and pendimethalin in perennial ryegrass turf",
      publisher: "Weed Science 43(1), 140-148 (Schleicher et al.)",
      year: 1995,
      where: "abstract",
    },
    reached: "derived",
    kind: "worked example",
    given: "DT50 35 and 23 days; after 126 days, and when control ended after 87 and 59 days",
    answers: [8.2, 2.2, 17.9, 16.9].map((printed) => ({ of: "%", printed, to: 0.1 })),
    compute: () => {
      const [a, b] = [halfLife("dithiopyr", "turf")[0], halfLife("pendimethalin", "turf")[0]];
      return [left(a, 126), left(b, 126), left(a, 87), left(b, 59)];
    },
    note: "8.25 % would be 8.2 or 8.3: the derived figure was cut.",
  },
  {
    entry: "interval-058",
    formulas: ["fractionRemaining", "turfHalfLivesOf"],
    source: {
      title:
        "Effect of turfgrass cover and irrigation on soil mobility and dissipation of mefenoxam and propiconazole",
      publisher: "journal abstract",
      where: "abstract",
    },
    reached: "derived",
    kind: "worked example",
    given: "1540 g/ha of propiconazole after 28 days: in turf at 15 days, in bare soil at 29",
    answers: [422, 789].map((printed) => ({ of: "g/ha", printed, to: 1 })),
    compute: () =>
      [halfLife("propiconazole", "turf")[1], halfLife("propiconazole", "bare soil")[0]].map(
        (half) => (1540 * left(half, 28)) / 100,
      ),
  },
  {
    entry: "interval-059",
    formulas: ["repeatedDose"],
    source: {
      title: "Sum of a geometric series, for 1540 g/ha every 28 days at a half-life of 15 days",
      publisher: "worked by hand",
    },
    reached: "derived",
    kind: "worked example",
    given: "just after the third, and however often",
    answers: [
      { of: "g/ha", printed: 2078.1, to: 0.1 },
      { of: "g/ha", printed: 2121.8, to: 0.1 },
    ],
    compute: () => {
      const dose = quantity(1540, "g/ha", "ai");
      const sum = repeatedDose({ dose, interval: days(28), halfLife: days(15), count: 3 });
      return [sum.afterLast.in("g/ha"), sum.limit.in("g/ha")];
    },
  },
  {
    entry: "interval-032",
    formulas: ["halfLifeAt"],
    kind: "round trip",
    source: {
      title: "Improving PGRs by degrees",
      publisher: "turf trade magazine",
      year: 2014,
      where: "University of Illinois half-life figures",
    },
    reached: "read",
    given: "half-lives at 64 and 86 °F, asked at the same temperatures",
    answers: [6.4, 3.1].map((printed) => ({ of: "d", printed, to: 0.1 })),
    compute: () => {
      const stated = [
        { temperature: quantity(64, "°F"), halfLife: days(6.4) },
        { temperature: quantity(86, "°F"), halfLife: days(3.1) },
      ] as const;
      return [64, 86].map((f) => halfLifeAt({ stated, temperature: quantity(f, "°F") }).in("d"));
    },
    note: "Only that the line goes through both published points.",
  },
  {
    entry: "interval-039",
    formulas: ["quantity"],
    source: {
      title: "Label directions, granular pre-emergence herbicide for lawns and ornamental turf",
      publisher: "US pesticide label database entry",
      where: "General information, goosegrass footnote",
    },
    reached: "read",
    kind: "worked example",
    given: "5.2, 11.9 and 7.9 lb/1000 ft2",
    answers: [
      { of: "lb/acre", printed: 225, to: 5 },
      { of: "lb/acre", printed: 518, to: 1 },
      { of: "lb/acre", printed: 345, to: 5 },
    ],
    compute: () => [5.2, 11.9, 7.9].map((rate) => quantity(rate, "lb/1000 ft2", "product").in("lb/acre")),
    note: "Printed to 5 lb but for the largest.",
  },
  {
    entry: "interval-039",
    formulas: ["splitApplication"],
    source: {
      title: "Label directions, granular pre-emergence herbicide for lawns and ornamental turf",
      publisher: "US pesticide label database entry",
      where: "General information, goosegrass footnote",
    },
    reached: "derived",
    kind: "worked example",
    given: "7.9 of 11.9 lb/1000 ft2 at first, the second after 60 to 90 days",
    answers: [
      { of: "lb/1000 ft2", printed: 4, to: 0.1 },
      { of: "d", printed: 60, to: 1 },
      { of: "d", printed: 90, to: 1 },
    ],
    compute: () => {
      const first: CivilDate = "2026-03-01";
      const { second, largestSecond } = splitApplication({
        first,
        amount: quantity(7.9, "lb/1000 ft2", "product"),
        maximum: quantity(11.9, "lb/1000 ft2", "product"),
        afterDays: { min: 60, max: 90 },
      });
      return [
        largestSecond.in("lb/1000 ft2"),
        daysBetween(first, second.from),
        daysBetween(first, second.to),
      ];
    },
  },
  {
    entry: "interval-060",
    formulas: ["interimRestrictedEntryHours"],
    kind: "transcription",
    source: bromacil,
    reached: "derived",
    given: "dermal, eye and skin categories III I IV, III II IV, III III IV, II II I",
    answers: rei,
    compute: interim,
    note: "The rule is published, the cases are not.",
  },
  {
    entry: "interval-110",
    formulas: ["interimRestrictedEntryHours"],
    kind: "transcription",
    source: {
      title: "Pesticide label review training, module 3, section 6: determining restricted entry intervals",
      publisher: "US EPA",
      where: "page 27, chart of step 2",
      url: "http://www.epa.gov/pesticides/regulating/labels/pest-label-training/module3/page27.html",
    },
    reached: "read",
    given: "the most severe category is I, II, III or IV",
    answers: [48, 24, 12, 12].map((printed) => ({ of: "h", printed, to: 1 })),
    compute: () =>
      ([1, 2, 3, 4] as const).map((worst) => interimRestrictedEntryHours({ dermal: worst, eye: 4, skin: 4 })),
    note: "The page adds 72 hours for organophosphates outdoors where less than 25 in of rain fall in a year.",
  },
  {
    entry: "soil-067",
    formulas: ["interimRestrictedEntryHours"],
    kind: "transcription",
    source: bromacil,
    reached: "read",
    given: "any category I, else any II, else",
    answers: rei.slice(0, 3),
    compute: () => interim().slice(0, 3),
  },
  ...["interval-062", "soil-068"].map(
    (id): PublishedCheck => ({
      entry: id,
      formulas: ["interimRestrictedEntryHours"],
      kind: "transcription",
      source: low,
      reached: "read",
      given: "an active in categories III and IV, without and with the shorter interval for low risk",
      answers: [12, 4].map((printed) => ({ of: "h", printed, to: 1 })),
      compute: reduced,
    }),
  ),
  {
    entry: "interval-063",
    formulas: ["restrictedEntryInterval", "hoursBetween"],
    kind: "transcription",
    source: entry,
    reached: "derived",
    given: "labels of 4, 12 and 24 hours in one mixture",
    answers: [24, 24].map((printed) => ({ of: "h", printed, to: 1 })),
    compute: () => {
      const end = "2024-06-03T15:30-05:00";
      const { hours, until } = restrictedEntryInterval({
        end,
        products: [4, 12, 24].map((h, i) => ({ product: `part ${i + 1}`, label: quantity(h, "h") })),
      });
      return [hours ?? 0, until === null ? 0 : hoursBetween(end, until)];
    },
    note: "The rule is published, the numbers are not.",
  },
  {
    entry: "interval-064",
    formulas: ["earlyEntryObjections"],
    kind: "transcription",
    source: entry,
    reached: "derived",
    given: "45 minutes, 3 and 5 hours after the end: how many objections",
    answers: [1, 0].map((printed) => ({ of: "objections", printed, to: 1 })),
    compute: () =>
      [3, 5].map(
        (hoursSinceEnd) => earlyEntryObjections({ hoursSinceEnd, minutesInDay: 45, handLabor: false }).length,
      ),
  },
  {
    entry: "interval-066",
    formulas: ["earliestBySeedingIntervals"],
    source: {
      title: "Crop and Pest Report issue 9, 29 June 2006",
      publisher: "North Dakota State University Extension",
      year: 2006,
      where: "soybean and buckwheat notes",
    },
    reached: "derived",
    kind: "worked example",
    given: "14 and 21 days before harvest, sprayed on 6 July 2006",
    answers: [
      { of: "month", printed: 7, to: 1 },
      { of: "day of the month", printed: 20, to: 1 },
      { of: "day of the month", printed: 27, to: 1 },
    ],
    compute: () => {
      const dates = [14, 21].map(
        (minimumDays) =>
          earliestBySeedingIntervals({
            rules: [{ from: "spray", to: "harvest", minimumDays, about: "herbicide", source: "label" }],
            happened: [{ event: "spray", date: "2006-07-06" }],
            next: "harvest",
          }).earliestByStatedRules ?? "0001-01-01",
      ) as readonly CivilDate[];
      const [soybean, buckwheat] = dates as [CivilDate, CivilDate];
      return [monthOf(soybean), dayOfMonth(soybean), dayOfMonth(buckwheat)];
    },
    note: "The days are published; that the day of the spray is day 0 is from memory.",
  },
];
