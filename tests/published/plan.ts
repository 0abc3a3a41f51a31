import { addDays, addMonths, type CivilDate } from "../../src/calendar/index.js";
import { hourlyWeather, publishedSprayRules, sprayWindow } from "../../src/interval/index.js";
import { type LedgerEntry, ledger, missingForRecord, usRestrictedUseRecord } from "../../src/ledger/index.js";
import {
  type ApplicationFacts,
  checkLimits,
  connecticutLimits,
  floridaLimits,
  illinoisLimits,
  type LimitSet,
  manitobaLimits,
  marionCountyLimits,
  marylandProductLimits,
  marylandUseLimits,
  michiganLimits,
  minnesotaLimits,
  newJerseyLimits,
  newJerseySummaryLimits,
  newYorkLimits,
  type Proposal,
  pennsylvaniaLimits,
  vermontLimits,
  wisconsinLimits,
} from "../../src/limits/index.js";
import { reorderPoint } from "../../src/plan/index.js";
import { quantity } from "../../src/quantity/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";

const sourceOf = (set: LimitSet): Source => {
  const { source } = set;
  return typeof source === "string" ? { title: set.name, publisher: source } : source;
};

const summer: CivilDate = "2026-06-08";
const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });

/** Whether an application passes any limit of a set. */
const passes = (set: LimitSet, proposal: Omit<Proposal, "date"> & { readonly date?: CivilDate }): boolean => {
  const { uses, tests } = checkLimits({ limits: set.limits, proposal: { date: summer, ...proposal } });
  return [...uses, ...tests].some(({ violated, appliesIf }) => violated === true && appliesIf.length === 0);
};

/**
 * The largest value that passes nothing: the limit as the checks see it. It is found by halving, which ends early where a
 * round number nearby passes nothing and a little more than it does.
 */
const largest = (free: (value: number) => boolean, top: number): number => {
  let [low, high] = [0, top];
  for (let i = 0; i < 60; i++) {
    // by then the two are half a hundredth apart, or half a thousandth
    if (i === 12 || i === 18) {
      const round = Number(low.toFixed(i === 12 ? 2 : 3));
      // amounts that are equal to a billionth are equal to the checks
      const more = round * (1 + 1e-8);
      if (more < high && free(round) && !free(more)) return round;
    }
    const middle = (low + high) / 2;
    if (free(middle)) low = middle;
    else high = middle;
  }
  return low;
};
const most = (
  set: LimitSet,
  supplies: (value: number) => Proposal["supplies"],
  facts: ApplicationFacts = {},
  date: CivilDate = summer,
): number => largest((value) => !passes(set, { supplies: supplies(value) ?? [], facts, date }), 20);

/** The most of a substance in a calendar year, in applications of a size that passes nothing by itself. */
const mostAYear = (
  set: LimitSet,
  of: string,
  step: number,
  facts: ApplicationFacts = {},
  slow = 1,
): number => {
  const supplies = of === "N" ? [lb(step, "N"), lb(step * slow, "N:slow")] : [lb(step, of)];
  const entries = [];
  for (let i = 0; i < 200; i++) {
    const date = addDays("2026-04-01", i);
    const ledger = { type: "ledger", version: 1, entries: [...entries] } as const;
    const { uses } = checkLimits({ ledger, limits: set.limits, proposal: { date, supplies, facts } });
    if (uses.some(({ violated, appliesIf }) => violated && appliesIf.length === 0)) break;
    entries.push({ id: `e${i}`, date, supplies });
  }
  return entries.length * step;
};

const soluble = (value: number) => [lb(value, "N"), lb(0, "N:slow")];
const slowOf = (percent: number) => (value: number) => [
  lb(value, "N"),
  lb((value * percent) / 100, "N:slow"),
];
const only = (of: string) => (value: number) => [lb(value, of)];

/** Month and day as a number: 301 is 1 March. */
const monthDay = (date: CivilDate): number => Number(date.slice(5, 7)) * 100 + Number(date.slice(8));
const daysFound = new Map<string, readonly number[]>();
/** First and last day of a year on which a set closes nothing; found once for both. */
const openDays = (
  set: LimitSet,
  facts: ApplicationFacts,
  supplies: Proposal["supplies"],
): readonly number[] => {
  const key = JSON.stringify([set.id, facts, supplies]);
  const known = daysFound.get(key);
  if (known !== undefined) return known;
  const days = Array.from({ length: 365 }, (_, i) => addDays("2026-01-01", i));
  const isOpen = (date: CivilDate): boolean => !passes(set, { date, supplies: supplies ?? [], facts });
  const ends = [days, [...days].reverse()].map((list) => monthDay(list.find(isOpen) as CivilDate));
  daysFound.set(key, ends);
  return ends;
};
/** The least distance to water, in feet. */
const setback = (
  set: LimitSet,
  facts: ApplicationFacts,
  supplies: Proposal["supplies"] = [lb(0.1, "N"), lb(0.1, "N:slow")],
): number => {
  const at = (feet: number): boolean =>
    !passes(set, {
      supplies,
      facts: { ...facts, toWater: { value: feet, unit: "ft" } },
    });
  return 100 - largest((gap) => at(100 - gap), 100);
};
/** The least share of slow nitrogen, in percent. */
const leastSlow = (set: LimitSet, facts: ApplicationFacts): number =>
  100 - largest((off) => !passes(set, { supplies: slowOf(100 - off)(0.5), facts }), 100);
/** A soil test that is young enough for every set. */
const withTest = {
  turf: "established",
  soilTest: { date: "2025-12-01", shortOf: ["P"] },
} as const satisfies ApplicationFacts;
/** For how many months a soil test lifts a limit on phosphorus. */
const testMonths = (
  set: LimitSet,
  facts: ApplicationFacts,
  puts: Pick<Proposal, "supplies" | "analysis" | "rate">,
): number => {
  let months = 0;
  const lifted = (date: CivilDate): boolean =>
    !passes(set, { ...puts, facts: { ...facts, soilTest: { date, shortOf: ["P"] } } });
  while (months < 100 && lifted(addMonths(summer, -(months + 1)))) months++;
  return months;
};
const phosphate = { analysis: "10-10-10", rate: { value: 1, unit: "lb/1000 ft2" } } as const;
const onP = { supplies: [lb(0.1, "P2O5")] };
/** The most phosphate in the product, percent. */
const phosphatePercent = (set: LimitSet, facts: ApplicationFacts): number =>
  largest((percent) => {
    const analysis = {
      type: "analysis",
      version: 1,
      basis: "oxide",
      percent: { N: 20, P2O5: percent, K2O: 5 },
    };
    return !passes(set, {
      analysis: analysis as never,
      slowNitrogen: { value: 20, unit: "% w/w", of: "N:slow/product" },
      rate: phosphate.rate,
      facts,
    });
  }, 20);
const slowShare = (set: LimitSet, pounds: number): number =>
  100 - largest((gap) => !passes(set, { supplies: slowOf(100 - gap)(pounds) }), 100);
const closedGround = (set: LimitSet, facts: ApplicationFacts): number =>
  (["frozen", "snow-covered", "saturated"] as const).filter((state) =>
    passes(set, { supplies: [lb(0.1, "N"), lb(0.1, "N:slow")], facts: { ...facts, ground: [state] } }),
  ).length;

const check = (
  entry: string,
  set: LimitSet,
  given: string,
  rows: readonly (readonly [of: string, printed: number, to: number, compute: () => number])[],
  note?: string,
): PublishedCheck => ({
  entry,
  formulas: ["checkLimits"],
  kind: "transcription",
  source: sourceOf(set),
  reached: set.reached === "read" ? "read" : "from memory",
  given,
  answers: rows.map(([of, printed, to]) => ({ of, printed, to })),
  compute: () => rows.map(([, , , compute]) => compute()),
  ...(note === undefined ? {} : { note }),
});

const home = { place: "home lawn" } as const;
const efficientN = { productKind: "enhanced-efficiency nitrogen" } as const;
const efficientP = { productKind: "enhanced-efficiency phosphorus" } as const;
const drop = { equipment: "drop spreader" } as const;
const rotary = { equipment: "rotary spreader" } as const;
const buffer = (feet: number) => ({ buffer: { value: feet, unit: "ft" } }) as const;
const feed = [lb(0.4, "N"), lb(0.2, "N:slow")];

/** An application written down with all that the federal record asks for; invented. */
const recorded: LedgerEntry = {
  id: "a",
  date: summer,
  productName: "insecticide 120 g/L EC",
  registrationNumber: "0000-00",
  amount: { value: 1.8, unit: "fl oz" },
  area: { value: 14_400, unit: "ft2" },
  site: "sod",
  location: "field 6",
  applicator: "A. Name",
  certificate: "00-000",
};
/** What a state prints as one line each; the date cannot be left out of a ledger. */
const recordLines: readonly (readonly (keyof LedgerEntry)[])[] = [
  ["applicator", "certificate"],
  ["productName"],
  ["registrationNumber"],
  ["site"],
  ["area"],
  ["amount"],
  ["location"],
];
const gapsWithout = (fields: readonly (keyof LedgerEntry)[]): number => {
  const left = Object.entries(recorded).filter(([name]) => !fields.includes(name as keyof LedgerEntry));
  const entry = Object.fromEntries(left) as unknown as LedgerEntry;
  return missingForRecord(entry, usRestrictedUseRecord).gaps.length;
};

/** Published limits, each found again by the application that is just within it. */
export const planChecks: readonly PublishedCheck[] = [
  check(
    "soil-048",
    floridaLimits,
    "a home lawn: the most soluble nitrogen, and the most in all at 65 % controlled release",
    [
      ["lb soluble N/1000 ft2", 0.7, 0.1, () => most(floridaLimits, soluble, home)],
      ["lb N/1000 ft2 at 65 % slow", 2, 0.1, () => most(floridaLimits, slowOf(65), home)],
      ["lb N/1000 ft2 all slow", 2, 0.1, () => most(floridaLimits, slowOf(100), home)],
    ],
  ),
  check("soil-049", marionCountyLimits, "amounts per application and per year, by grass", [
    ["lb soluble N/1000 ft2", 0.7, 0.1, () => most(marionCountyLimits, soluble)],
    ["lb N/1000 ft2", 1, 0.1, () => most(marionCountyLimits, slowOf(100))],
    ...(
      [
        ["bahiagrass", 3],
        ["bermudagrass", 4],
        ["centipedegrass", 2],
        ["St. Augustinegrass", 3],
        ["zoysiagrass", 4],
      ] as const
    ).map(
      ([grass, pounds]) =>
        [
          `lb N/1000 ft2 a year on ${grass}`,
          pounds,
          1,
          () => mostAYear(marionCountyLimits, "N", 0.5, { grass }),
        ] as const,
    ),
    ["lb P2O5/1000 ft2", 0.25, 0.01, () => most(marionCountyLimits, only("P2O5"))],
    ["lb P2O5/1000 ft2 a year", 0.5, 0.01, () => mostAYear(marionCountyLimits, "P2O5", 0.25)],
    [
      "lb P2O5/1000 ft2 as a starter",
      1,
      0.1,
      () => most(marionCountyLimits, only("P2O5"), { turf: "being established" }),
    ],
  ]),
  check(
    "soil-050",
    marylandProductLimits,
    "three limits that bind together, and enhanced-efficiency products",
    [
      [
        "lb soluble N/1000 ft2",
        0.7,
        0.1,
        () => most(marylandProductLimits, (v) => [lb(v, "N"), lb(v * 0.2, "N:slow")]) * 0.8,
      ],
      ["lb N/1000 ft2, all slow", 0.9, 0.1, () => most(marylandProductLimits, slowOf(100))],
      ["% of N slow, at the least", 20, 1, () => slowShare(marylandProductLimits, 0.5)],
      [
        "lb N/1000 ft2 a year, enhanced efficiency",
        2.5,
        0.1,
        () => mostAYear(marylandProductLimits, "N", 0.5, efficientN),
      ],
      ["months of a soil test for P", 36, 1, () => testMonths(marylandProductLimits, {}, onP)],
    ],
    "A product that is 20 % slow tops out at 0.875 lb, for the soluble limit binds first; 0.9 lb takes 22.2 % slow.",
  ),
  check("soil-051", marylandUseLimits, "dates and distance, for anybody and for a professional", [
    [
      "first open day (month and day)",
      301,
      1,
      () => openDays(marylandUseLimits, { applicator: "homeowner" }, feed)[0] as number,
    ],
    [
      "last open day",
      1115,
      1,
      () => openDays(marylandUseLimits, { applicator: "homeowner" }, feed)[1] as number,
    ],
    [
      "last open day of a professional",
      1201,
      1,
      () => openDays(marylandUseLimits, { applicator: "professional" }, feed)[1] as number,
    ],
    [
      "lb N/1000 ft2 of a professional in late November",
      0.5,
      0.1,
      () => most(marylandUseLimits, slowOf(50), { applicator: "professional" }, "2026-11-20"),
    ],
    ["ft from water", 15, 1, () => setback(marylandUseLimits, { ...rotary, applicator: "homeowner" })],
    [
      "ft from water with a drop spreader",
      10,
      1,
      () => setback(marylandUseLimits, { ...drop, applicator: "homeowner" }),
    ],
  ]),
  check("soil-052", newJerseyLimits, "dates, for anybody and for a professional", [
    [
      "first open day (month and day)",
      301,
      1,
      () => openDays(newJerseyLimits, { applicator: "homeowner" }, feed)[0] as number,
    ],
    [
      "last open day",
      1115,
      1,
      () => openDays(newJerseyLimits, { applicator: "homeowner" }, feed)[1] as number,
    ],
    [
      "last open day of a professional",
      1201,
      1,
      () => openDays(newJerseyLimits, { applicator: "professional" }, feed)[1] as number,
    ],
  ]),
  check("soil-055", pennsylvaniaLimits, "amounts; phosphorus as the element", [
    ["lb soluble N/1000 ft2", 0.7, 0.1, () => most(pennsylvaniaLimits, soluble)],
    ["lb N/1000 ft2", 0.9, 0.1, () => most(pennsylvaniaLimits, slowOf(100))],
    ["lb P/1000 ft2", 0, 0.01, () => most(pennsylvaniaLimits, only("P"), { productKind: "conventional" })],
    [
      "lb P/1000 ft2, organic",
      0.25,
      0.01,
      () => most(pennsylvaniaLimits, only("P"), { productKind: "organic" }),
    ],
    [
      "lb P/1000 ft2 a year, organic",
      0.5,
      0.01,
      () => mostAYear(pennsylvaniaLimits, "P", 0.25, { productKind: "organic" }),
    ],
    ["lb N/1000 ft2 on 10 January", 0.5, 0.1, () => most(pennsylvaniaLimits, slowOf(50), {}, "2026-01-10")],
    ["ft from water", 15, 1, () => setback(pennsylvaniaLimits, rotary)],
  ]),
  {
    ...check("soil-056", pennsylvaniaLimits, "the limits of P, given in P2O5", [
      [
        "lb P2O5/1000 ft2, organic",
        0.57,
        0.01,
        () => most(pennsylvaniaLimits, only("P2O5"), { productKind: "organic" }),
      ],
    ]),
    kind: "worked example",
    source: {
      title: "Site-specific plans and PA Act 83 compliance (council article)",
      publisher: "Pennsylvania Turfgrass Council",
      where: "text",
    },
  },
  check(
    "soil-057",
    newYorkLimits,
    "dates of any fertilizer, and distance",
    [
      [
        "first open day (month and day)",
        402,
        1,
        () => openDays(newYorkLimits, {}, [lb(1, "K2O")])[0] as number,
      ],
      ["last open day", 1130, 1, () => openDays(newYorkLimits, {}, [lb(1, "K2O")])[1] as number],
      ["% P2O5", 0.67, 0.01, () => phosphatePercent(newYorkLimits, { place: "lawn", growingSeason: 3 })],
      ["ft from water", 20, 1, () => setback(newYorkLimits, { ...rotary, ...buffer(0) })],
      ["ft from water with a drop spreader", 3, 1, () => setback(newYorkLimits, { ...drop, ...buffer(0) })],
      [
        "ft from water behind a buffer of 10 ft",
        0,
        1,
        () => setback(newYorkLimits, { ...rotary, ...buffer(10) }),
      ],
      [
        "ft from water behind a buffer of 9 ft",
        20,
        1,
        () => setback(newYorkLimits, { ...rotary, ...buffer(9) }),
      ],
    ],
    "Printed: between December first and April first, which is read with both days closed.",
  ),
  check("soil-058", minnesotaLimits, "phosphorus: a soil test of the last three years", [
    [
      "months of a soil test",
      36,
      1,
      () => testMonths(minnesotaLimits, { growingSeason: 2, place: "lawn" }, onP),
    ],
  ]),
  check("soil-059", wisconsinLimits, "phosphorus: a soil test of at most 36 months", [
    ["months of a soil test", 36, 1, () => testMonths(wisconsinLimits, { growingSeason: 2 }, phosphate)],
  ]),
  check("soil-060", michiganLimits, "distance and ground", [
    ["ft from water", 15, 1, () => setback(michiganLimits, { ...rotary, ...buffer(0) })],
    ["ft from water with a drop spreader", 3, 1, () => setback(michiganLimits, { ...drop, ...buffer(0) })],
    [
      "ft from water behind a buffer of 10 ft",
      0,
      1,
      () => setback(michiganLimits, { ...rotary, ...buffer(10) }),
    ],
    ["kinds of ground that are closed: frozen, saturated", 2, 1, () => closedGround(michiganLimits, {})],
  ]),
  check("soil-061", illinoisLimits, "an applicator for hire", [
    ["ft from water", 15, 1, () => setback(illinoisLimits, { ...rotary, applicator: "for hire" })],
    [
      "ft from water with a drop spreader",
      3,
      1,
      () => setback(illinoisLimits, { ...drop, applicator: "for hire" }),
    ],
    [
      "months of a soil test",
      36,
      1,
      () => testMonths(illinoisLimits, { applicator: "for hire", growingSeason: 3 }, onP),
    ],
    [
      "growing seasons without one",
      2,
      1,
      () =>
        [1, 2, 3, 4].filter(
          (growingSeason) =>
            !passes(illinoisLimits, { ...onP, facts: { applicator: "for hire", growingSeason } }),
        ).length,
    ],
  ]),
  check("soil-062", vermontLimits, "slow nitrogen and phosphate of the product", [
    ["% of N slow, at the least", 15, 1, () => slowShare(vermontLimits, 0.5)],
    ["% P2O5", 0.67, 0.01, () => phosphatePercent(vermontLimits, { place: "lawn" })],
  ]),
  {
    ...check("plan-001", vermontLimits, "dates and distance, with a spreader that throws", [
      ["first open day (month and day)", 401, 1, () => openDays(vermontLimits, {}, feed)[0] as number],
      ["last open day", 1015, 1, () => openDays(vermontLimits, {}, feed)[1] as number],
      ["ft from water", 25, 1, () => setback(vermontLimits, rotary)],
      ["ft from water with a drop spreader", 25, 1, () => setback(vermontLimits, drop)],
    ]),
    source: {
      title: "Phosphorus fertilizer information - turf (summary of Act 37)",
      publisher: "Vermont Agency of Agriculture, Food and Markets",
      where: "bullets on dates and on waters of the state",
      url: "http://agriculture.vermont.gov/node/122",
    },
  },
  {
    ...check("plan-002", manitobaLimits, "winter, between and including 10 November and 10 April", [
      ["first open day (month and day)", 411, 1, () => openDays(manitobaLimits, {}, feed)[0] as number],
      ["last open day", 1109, 1, () => openDays(manitobaLimits, {}, feed)[1] as number],
    ]),
    source: {
      title: "Restriction on winter application of nutrients",
      publisher: "Canadian Association of Agri-Retailers",
      where: "second paragraph; no nutrients before 11 April 2018",
      url: "https://caar.org/ag-retail-news/799-manitoba-restriction-on-winter-application-of-nutrients-in-effect",
    },
  },
  {
    ...check(
      "plan-003",
      pennsylvaniaLimits,
      "enhanced efficiency in phosphorus, and enhanced efficiency in nitrogen",
      [
        ["lb P/1000 ft2, efficient in P", 0.25, 0.01, () => most(pennsylvaniaLimits, only("P"), efficientP)],
        [
          "lb P/1000 ft2 a year, efficient in P",
          0.5,
          0.1,
          () => mostAYear(pennsylvaniaLimits, "P", 0.25, efficientP),
        ],
        ["lb P/1000 ft2, efficient in N", 0, 0.01, () => most(pennsylvaniaLimits, only("P"), efficientN)],
        ["lb N/1000 ft2, efficient in P", 0.9, 0.1, () => most(pennsylvaniaLimits, slowOf(100), efficientP)],
        [
          "lb soluble N/1000 ft2, efficient in N",
          0.7,
          0.1,
          () => most(pennsylvaniaLimits, soluble, efficientN),
        ],
      ],
    ),
    source: {
      title: "3 Pa.C.S. 6813 Application of fertilizer to turf",
      publisher: "Pennsylvania Consolidated Statutes (amended 2023)",
      where: "(a)(1), (a)(2), (a)(3)(iii)",
      url: "https://casetext.com/statute/pennsylvania-statutes/consolidated-statutes/title-3-pacs-agriculture/part-vii-quality-and-labeling/chapter-68-fertilizer/section-6813-application-of-fertilizer-to-turf",
    },
  },
  check("soil-063", connecticutLimits, "phosphate of the product on established turf", [
    ["% P2O5", 0.67, 0.01, () => phosphatePercent(connecticutLimits, { turf: "established" })],
  ]),
  {
    entry: "plan-013",
    formulas: ["missingForRecord", "ledger"],
    source: {
      title: "Private applicator pesticide recordkeeping program",
      publisher: "Minnesota Department of Agriculture",
      where: "list of what records must include",
      url: "https://www.mda.state.mn.us/private-applicator-pesticide-recordkeeping-program",
    },
    reached: "read",
    kind: "transcription",
    given: "the list of eight lines, all written down; and without one of the seven beside the date",
    answers: [
      { of: "lines lacking with all of them", printed: 0, to: 1 },
      { of: "lines of the list whose lack is told, the date with them", printed: 8, to: 1 },
    ],
    compute: () => [
      missingForRecord(ledger([recorded]).entries[0] as LedgerEntry, usRestrictedUseRecord).gaps.length,
      1 + recordLines.filter((fields) => gapsWithout(fields) === fields.length).length,
    ],
  },
  check(
    "plan-010",
    connecticutLimits,
    "winter and distance for phosphate on a lawn",
    [
      [
        "first open day (month and day)",
        316,
        1,
        () => openDays(connecticutLimits, withTest, onP.supplies)[0] as number,
      ],
      ["last open day", 1130, 1, () => openDays(connecticutLimits, withTest, onP.supplies)[1] as number],
      ["ft from water", 20, 1, () => setback(connecticutLimits, { ...withTest, ...rotary }, onP.supplies)],
      [
        "ft from water with a drop spreader",
        15,
        1,
        () => setback(connecticutLimits, { ...withTest, ...drop }, onP.supplies),
      ],
    ],
    "A newspaper printed December through February (Norwich Bulletin, 2012), two weeks shorter.",
  ),
  check("plan-011", newJerseySummaryLimits, "a homeowner's nitrogen and distance", [
    ["lb N/1000 ft2", 0.9, 0.1, () => most(newJerseySummaryLimits, slowOf(100), { applicator: "homeowner" })],
    ["% of the nitrogen slow", 20, 1, () => leastSlow(newJerseySummaryLimits, { applicator: "homeowner" })],
    ["ft from water", 25, 1, () => setback(newJerseySummaryLimits, { ...rotary, applicator: "homeowner" })],
    [
      "ft from water with a drop spreader",
      10,
      1,
      () => setback(newJerseySummaryLimits, { ...drop, applicator: "homeowner" }),
    ],
  ]),
  {
    ...check("plan-011/2", newJerseySummaryLimits, "a professional's nitrogen in one application", [
      [
        "lb N/1000 ft2",
        1,
        1,
        () => most(newJerseySummaryLimits, slowOf(100), { applicator: "professional" }),
      ],
    ]),
    source: {
      title: "New Jersey fertilizer law causing problems",
      publisher: "a magazine of the landscape trade",
      where: "professionals, up to a pound in each application; its beginning was read",
      url: "https://landscapeonline.com/articles/new-jersey-fertilizer-law-causing-problems/16444",
    },
  },
  {
    ...check("plan-012", newJerseySummaryLimits, "age of the soil test that lifts the limit on phosphorus", [
      ["months", 36, 1, () => testMonths(newJerseySummaryLimits, { applicator: "homeowner" }, onP)],
    ]),
    source: {
      title: "NJ lawn fertilizer law",
      publisher: "Warren County Soil Conservation District",
      where: "no more than three years old",
      url: "http://warrencountyscd.com/id30.html",
    },
  },
  check("soil-064", manitobaLimits, "phosphate of the product", [
    ["% P2O5", 1, 1, () => phosphatePercent(manitobaLimits, { growingSeason: 3 })],
    [
      "growing seasons that are exempt",
      2,
      1,
      () =>
        [1, 2, 3, 4].filter(
          (growingSeason) => !passes(manitobaLimits, { ...phosphate, facts: { growingSeason } }),
        ).length,
    ],
  ]),
  {
    entry: "soil-070",
    formulas: ["sprayWindow"],
    source: {
      title: "Evaluate the Weather",
      publisher: "Pesticide Environmental Stewardship",
      where: "Wind",
    },
    reached: "read",
    kind: "transcription",
    given: "the published wind window for a label that states none",
    answers: [
      { of: "mi/h, at the least", printed: 3, to: 1 },
      { of: "mi/h, at the most", printed: 8, to: 1 },
    ],
    compute: () => {
      const values = Array.from({ length: 20 }, (_, i) => i);
      const weather = hourlyWeather({
        start: "2026-06-03T00:00-05:00",
        source: "every whole number of miles an hour",
        wind: { unit: "mi/h", values, height: { value: 2, unit: "m", of: "none" } },
      });
      const rules = publishedSprayRules.filter(({ wind }) => wind !== undefined);
      const open = sprayWindow({ weather, rules, windHeight: quantity(2, "m") }).hours.flatMap(
        ({ objections }, i) => (objections.length === 0 ? [values[i] as number] : []),
      );
      return [Math.min(...open), Math.max(...open)];
    },
  },
  {
    entry: "plan-040",
    formulas: ["reorderPoint"],
    source: {
      title: 'Chapter 12, "Managing inventory"',
      publisher: "textbook of operations management, as a library of shared documents repeats it",
      where: "p. 543, solution by equation 12-16",
      url: "https://fdocuments.net/document/copia-56072dfca4b34.html",
    },
    reached: "read",
    given:
      "60 packs a week, 6 weeks from the order to the delivery, 1.28 x 60 x 2 packs kept back; a pack is taken as 1 lb",
    answers: [
      { of: "packs used in the lead time", printed: 360, to: 1 },
      { of: "packs kept back", printed: 153.6, to: 0.1 },
      { of: "packs at which it is ordered", printed: 513.6, to: 0.1 },
    ],
    compute: () => {
      const point = reorderPoint({
        use: quantity(60, "lb"),
        during: quantity(1, "week"),
        leadTime: quantity(6, "week"),
        safetyStock: quantity(1.28 * 60 * 2, "lb"),
      });
      return [point.leadTimeUse.value, point.safetyStock.value, point.orderAt.value];
    },
  },
];

/** Published entries on limits that no check is made of. */
export const planLeftOut: readonly LeftOut[] = [
  {
    entry: "soil-069",
    reason:
      "Wind limits by county area, date, volume and nozzle: no limit on amounts, dates or distance states them, and a spray window takes them from the caller.",
  },
];
