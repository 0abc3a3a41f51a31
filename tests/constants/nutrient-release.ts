// Models of release, from the points that their sources print.
import {
  isobutylideneDiurea,
  methyleneUrea,
  naturalOrganic,
  polymerCoatedInSoil,
  polymerCoatedOnSurface,
  type ReleaseModel,
  slowPolymerCoatedInSoil,
  sulfurCoatedOnSurface,
  sulfurCoatedUrea,
  ureaFormaldehyde,
  ureaform,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";
import { type Cell, type ConstantCheck, cells } from "./check.js";

const room = "nutrient";
const read = { room, reached: "read" } as const;
const remembered = { room, reached: "from memory" } as const;
const number = (value: unknown): number => (typeof value === "number" ? value : Number.NaN);

type End = "low" | "mid" | "high";
const parameter = (model: ReleaseModel, name: "ratePerDay" | "lagDays" | "mostPercent", end: End): number =>
  number((model.curve as unknown as Readonly<Record<string, Readonly<Record<End, number>>>>)[name]?.[end]);
const warmth = (model: ReleaseModel, name: "q10" | "activationEnergy", end: End): number =>
  number(
    (model.temperature as unknown as Readonly<Record<string, Readonly<Record<End, number>>>>)[name]?.[end],
  );
const single = (model: ReleaseModel, name: "referenceC" | "restsBelowC"): number =>
  number((model.temperature as unknown as Readonly<Record<string, number>>)[name]);
const hundredth = (value: number): number => Math.round(100 * value) / 100;
/** A first-order rate that lets a share out by a day. */
const through = (share: number, day: number): number => -Math.log(1 - share) / day;
const rate = (name: string, model: () => ReleaseModel, end: End, share: number, day: number): Cell => [
  `${name}: ${end} rate, ${Number((100 * share).toPrecision(3))} % on day ${day}`,
  through(share, day),
  () => parameter(model(), "ratePerDay", end),
];
const ibdu = (low: number, high = low) =>
  isobutylideneDiurea({ particleSize: { low: quantity(low, "mm"), high: quantity(high, "mm") } });
const scu = () =>
  sulfurCoatedUrea({ sevenDayDissolution: quantity(30, "%"), sealed: true, source: "the maker's sheet" });
const loose = { within: 1e-12 } as const;

const release: readonly ConstantCheck[] = [
  ...cells(
    {
      ...read,
      ...loose,
      source:
        "Brigham Young University 2014 (fert-078): 80 % or more by day 35; HortScience 33 (1998): half within a season, taken as 150 days; at once, taken as 20 a day, is this library's",
    },
    [
      rate("polymer-coated on the surface", () => polymerCoatedOnSurface, "low", 0.5, 150),
      rate("polymer-coated on the surface", () => polymerCoatedOnSurface, "mid", 0.8, 35),
    ],
  ),
  ...cells(
    {
      ...read,
      source:
        "Ishibashi, Konno and Kimoto 1992 (abstract): 0.0177-0.0326 a day at 25 °C, activation energy 69,900-98,000 J/mol",
    },
    [
      ["polymer-coated in soil: low rate", 0.0177, () => parameter(polymerCoatedInSoil, "ratePerDay", "low")],
      [
        "polymer-coated in soil: high rate",
        0.0326,
        () => parameter(polymerCoatedInSoil, "ratePerDay", "high"),
      ],
      ["activation energy, low", 69.9, () => warmth(polymerCoatedInSoil, "activationEnergy", "low")],
      ["activation energy, high", 98, () => warmth(polymerCoatedInSoil, "activationEnergy", "high")],
      ["reference of the rate, °C", 25, () => single(polymerCoatedInSoil, "referenceC")],
      [
        "the same of slow coatings, mid",
        69.9,
        () => warmth(slowPolymerCoatedInSoil, "activationEnergy", "mid"),
      ],
      [
        "the same of slow coatings, high",
        98,
        () => warmth(slowPolymerCoatedInSoil, "activationEnergy", "high"),
      ],
    ],
  ),
  ...cells(
    {
      ...read,
      ...loose,
      source: "Wang et al. 2011 (fert-079): 63.6 and 70.8 % after 220 days in soil at 25 °C",
    },
    [
      rate("slow polymer-coated", () => slowPolymerCoatedInSoil, "low", 0.636, 220),
      rate("slow polymer-coated", () => slowPolymerCoatedInSoil, "high", 0.708, 220),
      ["slow polymer-coated: days observed", 220, () => number(slowPolymerCoatedInSoil.observed?.days)],
      ["slow polymer-coated: reference, °C", 25, () => single(slowPolymerCoatedInSoil, "referenceC")],
      ["slow polymer-coated: to, °C", 25, () => number(slowPolymerCoatedInSoil.observed?.toC)],
      ["slow polymer-coated: from, °C", 25, () => number(slowPolymerCoatedInSoil.observed?.fromC)],
    ],
  ),
  ...cells(
    {
      ...read,
      ...loose,
      source: "Waddington and Turner 1980 (abstract): residual pellets 3 to 37 % after three growing seasons",
    },
    [
      [
        "sulfur-coated: least that is gone, %",
        63,
        () => parameter(sulfurCoatedOnSurface, "mostPercent", "low"),
      ],
      [
        "sulfur-coated: its middle, % of 63 and 97",
        80,
        () => parameter(sulfurCoatedOnSurface, "mostPercent", "mid"),
      ],
      ["sulfur-coated in soil: most that is gone, %", 97, () => parameter(scu(), "mostPercent", "high")],
      [
        "three years of days with one leap day",
        3 * 365 + 1,
        () => number(sulfurCoatedOnSurface.observed?.days),
      ],
      ["the same in soil", 3 * 365 + 1, () => number(scu().observed?.days)],
      rate("sulfur-coated on the surface", () => sulfurCoatedOnSurface, "mid", 0.3, 7),
      rate("sulfur-coated in soil, 30 % in seven days", scu, "high", 0.3, 7),
    ],
  ),
  ...cells(
    {
      ...read,
      ...loose,
      source:
        "Hughes 1976 (abstract): 75 % in 10 weeks at 0.6-0.7 mm, 58 % in 21 at 1.0-1.2 mm, 50 % in 32 at 1.7-2.0 mm, at 21 °C",
    },
    [
      rate("IBDU 0.65 mm", () => ibdu(0.65), "mid", 0.75, 70),
      rate("IBDU 1.1 mm", () => ibdu(1.1), "mid", 0.58, 147),
      rate("IBDU 1.85 mm", () => ibdu(1.85), "mid", 0.5, 224),
      ["IBDU: reference, °C", 21, () => single(ibdu(1), "referenceC")],
      ["IBDU: days observed, 32 weeks", 224, () => number(ibdu(1).observed?.days)],
      ["IBDU: from, °C", 21, () => number(ibdu(1).observed?.fromC)],
      ["IBDU: to, °C", 21, () => number(ibdu(1).observed?.toC)],
    ],
  ),
  ...cells(
    {
      ...read,
      ...loose,
      source:
        "Canadian Journal of Soil Science (abstract): urea-form, 14 weeks, 20 % at 10 °C, 50 % at 25 °C, 58 % at 30 °C, 2 to 5 points lower at pH 7; SportsTurf 2016: 8 weeks at the shortest",
    },
    [
      rate("ureaform, of a top of 64 %", () => ureaFormaldehyde, "low", 0.45 / 0.64, 98),
      rate("ureaform, of a top of 64 %", () => ureaFormaldehyde, "mid", 0.5 / 0.64, 98),
      rate("ureaform", () => ureaFormaldehyde, "high", 0.95, 56),
      ["ureaform: reference, °C", 25, () => single(ureaFormaldehyde, "referenceC")],
      ["ureaform: coldest measured, °C", 10, () => number(ureaFormaldehyde.observed?.fromC)],
      ["ureaform: warmest measured, °C", 30, () => number(ureaFormaldehyde.observed?.toC)],
      ["ureaform: rests below, °C", 10, () => single(ureaFormaldehyde, "restsBelowC")],
    ],
  ),
  ...cells(
    {
      room,
      reached: "derived",

      source:
        "from 20 to 58 % at 10 to 30 °C in 14 weeks: the rates -ln(1 - F/A)/98 two steps of 10 °C apart, A of 100 % and of 64 %; 20 to 40 % for one step; to two places",
    },
    [
      [
        "ureaform: Q10 with a top of all",
        hundredth(Math.sqrt(through(0.58, 98) / through(0.2, 98))),
        () => warmth(ureaFormaldehyde, "q10", "low"),
      ],
      [
        "ureaform: Q10 with a top of 64 %",
        hundredth(Math.sqrt(through(0.58 / 0.64, 98) / through(0.2 / 0.64, 98))),
        () => warmth(ureaFormaldehyde, "q10", "mid"),
      ],
      [
        "ureaform: Q10 from 10 to 20 °C",
        hundredth(through(0.4 / 0.64, 98) / through(0.2 / 0.64, 98)),
        () => warmth(ureaFormaldehyde, "q10", "high"),
      ],
    ],
  ),
  ...cells(
    {
      ...remembered,
      ...loose,
      source:
        "definition of ureaform: 60 % of the nitrogen insoluble in cold water, an activity index of 40; 100 - 0.6 x 60 = 64 can come",
    },
    [
      ["ureaform: top, %", 64, () => parameter(ureaform(), "mostPercent", "low")],
      ["methylene urea: top of the low end, %", 64, () => parameter(methyleneUrea(), "mostPercent", "low")],
      [
        "methylene urea: halfway from 64 to 100, %",
        82,
        () => parameter(methyleneUrea(), "mostPercent", "mid"),
      ],
      [
        "50 % insoluble with an index of 60: 80 can come, %",
        80,
        () =>
          parameter(
            methyleneUrea({
              waterInsolubleShare: quantity(50, "% w/w", "other:WIN/N"),
              activityIndex: quantity(60, "%"),
            }),
            "mostPercent",
            "mid",
          ),
      ],
    ],
  ),
  ...cells(
    {
      ...read,
      ...loose,
      source:
        "Cornell, Nitrogen sources: of natural organics 70, 60 and 20 % came in ten weeks; Hartz and Johnston 2006: about 60 % in two weeks",
    },
    [
      rate("natural organic, of a top of 35 %", () => naturalOrganic, "low", 20 / 35, 70),
      rate("natural organic, of a top of 70 %", () => naturalOrganic, "mid", 60 / 70, 70),
      rate("natural organic", () => naturalOrganic, "high", 0.6, 14),
      ["natural organic: days observed", 70, () => number(naturalOrganic.observed?.days)],
    ],
  ),
];

/** Models of release, from their published points. */
export const nutrientReleaseConstants: readonly ConstantCheck[] = [...release];
