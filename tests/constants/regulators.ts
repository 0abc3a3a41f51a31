// What is published of growth regulators by degree-days, typed a second time from what the sources print.
import { meetsReboundCondition, regulatorIntervals, replacementHalfLives } from "../../src/interval/index.js";
import { quantity } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells, edge } from "./check.js";

const read = { room: "interval", reached: "read" } as const;

type Range = readonly [low: number, high: number];
type Field = "interval" | "peak" | "rebound" | "duration" | "suppressionPercent";

const regulator = (id: string, field: Field, [low, high]: Range): readonly Cell[] => {
  const found = (n: 0 | 1) => (): number =>
    regulatorIntervals.find((one) => one.id === id)?.[field]?.[n] ?? Number.NaN;
  return [
    [`${id}: ${field}, low`, low, found(0)],
    [`${id}: ${field}, high`, high, found(1)],
  ];
};
const table = (active: string): string => `${active}, cool-season green, table`;
/** A rate in g of active ingredient per 100 m2 of the record `id`. */
const gramsPer100 = (id: string, n: number) => (): number => {
  const rate = regulatorIntervals.find((one) => one.id === id)?.rate?.[n];
  return rate === undefined ? Number.NaN : quantity(rate.value, "kg/ha").in("g/m2") * 100;
};
const perHectare = (id: string) => (): number =>
  regulatorIntervals.find((one) => one.id === id)?.rate?.[0]?.value ?? Number.NaN;
const baseOf = (id: string) => (): number =>
  regulatorIntervals.find((one) => one.id === id)?.base?.value ?? Number.NaN;

const trinexapac2009 = "trinexapac-ethyl, bentgrass green, 2009";
const fairway = "prohexadione-calcium, fairway";
const auburn = "trinexapac-ethyl, ultradwarf bermudagrass green, Auburn";
const mississippi = "trinexapac-ethyl, ultradwarf bermudagrass green, Mississippi";

const regulators: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      source:
        "Use of a growing degree model to schedule trinexapac-ethyl ..., ASA-CSSA-SSSA 2009, abstract: 0.05 kg/ha, 200, rebound at 250 to 300, 20 to 30 % less",
    },
    [
      [`${trinexapac2009}: kg/ha`, 0.05, perHectare(trinexapac2009)],
      ...regulator(trinexapac2009, "interval", [200, 200]),
      ...regulator(trinexapac2009, "rebound", [250, 300]),
      ...regulator(trinexapac2009, "suppressionPercent", [20, 30]),
    ],
  ),
  ...cells(
    {
      ...read,
      source: "Growth regulators: directions for use, table by active ingredient, cool-season greens",
    },
    [
      ...regulator(table("trinexapac-ethyl"), "interval", [230, 230]),
      ...regulator(table("trinexapac-ethyl"), "duration", [800, 800]),
      ...regulator(table("trinexapac-ethyl"), "suppressionPercent", [20, 20]),
      ...regulator(table("paclobutrazol"), "interval", [280, 310]),
      ...regulator(table("paclobutrazol"), "duration", [850, 950]),
      ...regulator(table("paclobutrazol"), "suppressionPercent", [30, 50]),
      ...regulator(table("flurprimidol"), "interval", [210, 270]),
      ...regulator(table("flurprimidol"), "duration", [600, 800]),
      ...regulator(table("flurprimidol"), "suppressionPercent", [20, 30]),
      ...regulator(table("prohexadione-calcium"), "interval", [280, 280]),
      ...regulator(table("prohexadione-calcium"), "duration", [840, 840]),
      ...regulator(table("prohexadione-calcium"), "suppressionPercent", [25, 25]),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Plant growth regulation and the rebound effect ..., University of Guelph, abstract: 2.8, 5.6 and 8.4 g/100 m2; longer than 350, more than 21.0 a day over ten days",
    },
    [
      [`${fairway}: lowest rate, g/100 m2`, 2.8, gramsPer100(fairway, 0)],
      [`${fairway}: middle rate, g/100 m2`, 5.6, gramsPer100(fairway, 1)],
      [`${fairway}: highest rate, g/100 m2`, 8.4, gramsPer100(fairway, 2)],
      ...regulator(fairway, "rebound", [350, 350]),
      [
        "rebound condition: degree-days",
        350,
        () => edge((sinceApplication) => meetsReboundCondition({ sinceApplication, tenDayMean: 50 }), 900, 0),
      ],
      [
        "rebound condition: degree-days a day",
        21.0,
        () => edge((tenDayMean) => meetsReboundCondition({ sinceApplication: 900, tenDayMean }), 50, 0),
      ],
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Developing a growing degree day model ..., CSSA 2017 (Auburn), abstract: 0.022 kg/ha every 200, peaks at 305 and 314",
    },
    [
      [`${auburn}: kg/ha`, 0.022, perHectare(auburn)],
      ...regulator(auburn, "interval", [200, 200]),
      ...regulator(auburn, "peak", [305, 314]),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Growing degree-day based plant growth regulator application, Mississippi State University 2019: every 220 GDD(10C)",
    },
    [[`${mississippi}: base`, 10, baseOf(mississippi)], ...regulator(mississippi, "interval", [220, 220])],
  ),
];

const replacement = (active: string, full: number, tight: number, long: number): readonly Cell[] => {
  const of = (): (typeof replacementHalfLives)[number] | undefined =>
    replacementHalfLives.find((one) => one.active === active);
  return [
    [`${active}: full rate, oz/acre`, full, () => of()?.fullOuncesPerAcre ?? Number.NaN],
    [`${active}: half-life, tight`, tight, () => of()?.tight ?? Number.NaN],
    [`${active}: half-life, long`, long, () => of()?.long ?? Number.NaN],
  ];
};
const replacements = cells(
  {
    ...read,
    source:
      "How to guide PGR applications by growing degree days, University of Nebraska research 2021, parameters",
  },
  [
    ...replacement("trinexapac-ethyl", 7, 116, 175),
    ...replacement("paclobutrazol", 16, 160, 240),
    ...replacement("prohexadione-calcium", 11, 140, 210),
  ],
);

/** Every figure of a growth regulator that is typed a second time. */
export const regulatorConstants: readonly ConstantCheck[] = [...regulators, ...replacements];
