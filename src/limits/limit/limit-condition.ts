import {
  addMonths,
  type CivilDate,
  compareDates,
  isWithinWindow,
  type MonthDayWindow,
} from "../../calendar/index.js";
import type { Stated } from "../../ledger/index.js";
import { exceeds } from "../../numeric/index.js";
import { formFactor } from "../../nutrient/index.js";
import { quantityOf } from "../../quantity/index.js";
import type { EdgeFact, RunoffFact } from "./edge-facts.js";

/**
 * What a fertilizer is by its label. Enhanced efficiency is stated of a nutrient: the kind of one says nothing of
 * the other. `"organic"` is natural organic or organic-based.
 */
export type ProductKind =
  | "conventional"
  | "enhanced-efficiency nitrogen"
  | "enhanced-efficiency phosphorus"
  | "organic";

/** What the caller knows of an application beside its amounts. What is left out is not known. */
export interface ApplicationFacts {
  /** The grass, as the limits name it: `"bermudagrass"`. */
  readonly grass?: string;
  /** Who applies: `"professional"`, `"for hire"`, `"homeowner"`, or another word that a limit uses. */
  readonly applicator?: string;
  /** The kind of place: `"home lawn"`, `"golf course"`, `"sod farm"`, `"park"`, ... */
  readonly place?: string;
  readonly turf?: "established" | "being established" | "repair";
  /** 1 in the season in which the turf was established, 2 in the next. */
  readonly growingSeason?: number;
  /** The last soil test, and the nutrients (`"P"`) that it shows to be short. */
  readonly soilTest?: { readonly date: CivilDate; readonly shortOf: readonly string[] };
  /** What the product is by its label; a list where it is several, such as of enhanced efficiency in N and in P. */
  readonly productKind?: ProductKind | readonly ProductKind[];
  readonly equipment?:
    | "drop spreader"
    | "rotary spreader with deflector"
    | "rotary spreader"
    | "targeted spray"
    | "broadcast spray";
  /** What the ground is; an empty list where it is none of these. */
  readonly ground?: readonly ("frozen" | "snow-covered" | "saturated")[];
  /** The distance to the nearest water. */
  readonly toWater?: Stated;
  /** The width of the unbroken strip of plants along the water; 0 where there is none. */
  readonly buffer?: Stated;
  /** Every edge from which a label keeps a distance; an empty list where there is none. */
  readonly edges?: readonly EdgeFact[];
  /** The measures against runoff that are in place; an empty list where there are none. */
  readonly runoff?: readonly RunoffFact[];
}

/** What must hold for a limit to be meant, or to be lifted: all that is named. */
export interface LimitCondition {
  readonly grass?: readonly string[];
  readonly applicator?: readonly string[];
  readonly place?: readonly string[];
  readonly turf?: readonly NonNullable<ApplicationFacts["turf"]>[];
  readonly growingSeasonAtMost?: number;
  /** A soil test of at most so many months that shows a nutrient to be short. */
  readonly soilTest?: { readonly months: number; readonly shortOf: string };
  readonly productKind?: readonly ProductKind[];
  readonly equipment?: readonly NonNullable<ApplicationFacts["equipment"]>[];
  readonly slowShareAtLeast?: number;
  readonly bufferAtLeast?: Stated;
  /** The part of the year. */
  readonly season?: MonthDayWindow;
}

/** Yes, no, or not known from what was stated. */
export type Answer = "yes" | "no" | "not known";

/** What is known when a condition is judged. */
export interface Known {
  readonly date: CivilDate;
  readonly facts: ApplicationFacts;
  /** Percent of the nitrogen that is slow; `undefined` where it is not known. */
  readonly slowShare: number | undefined;
}

/** A word as it is compared: "Bermudagrass" is "bermudagrass". */
export const plainWord = (word: string): string => word.trim().toLowerCase();

const oneOf = (value: string | undefined, list: readonly string[]): Answer =>
  value === undefined
    ? "not known"
    : list.some((word) => plainWord(word) === plainWord(value))
      ? "yes"
      : "no";

const lengthIn = (stated: Stated, unit: string): number =>
  (quantityOf(stated.value, stated.unit, "none", "length") as { in(unit: string): number } & object).in(unit);

/** Whether a length is at least another, equal within the guard of all limits. */
export const reaches = (length: Stated, least: Stated): boolean =>
  !exceeds(least.value, lengthIn(length, least.unit));

const judges: {
  readonly [K in keyof Required<LimitCondition>]: (
    wanted: NonNullable<LimitCondition[K]>,
    known: Known,
  ) => Answer;
} = {
  grass: (list, { facts }) => oneOf(facts.grass, list),
  applicator: (list, { facts }) => oneOf(facts.applicator, list),
  place: (list, { facts }) => oneOf(facts.place, list),
  turf: (list, { facts }) => oneOf(facts.turf, list),
  productKind: (list, { facts: { productKind } }) =>
    typeof productKind === "object"
      ? productKind.some((kind) => oneOf(kind, list) === "yes")
        ? "yes"
        : "no"
      : oneOf(productKind, list),
  equipment: (list, { facts }) => oneOf(facts.equipment, list),
  growingSeasonAtMost: (most, { facts }) =>
    facts.growingSeason === undefined ? "not known" : facts.growingSeason <= most ? "yes" : "no",
  soilTest: ({ months, shortOf }, { facts, date }) => {
    if (facts.soilTest === undefined) return "not known";
    const { date: sampled, shortOf: short } = facts.soilTest;
    const recent = compareDates(sampled, date) <= 0 && compareDates(addMonths(sampled, months), date) >= 0;
    // A lack of phosphate is a lack of phosphorus.
    return recent && short.some((one) => formFactor(one, shortOf) !== undefined) ? "yes" : "no";
  },
  slowShareAtLeast: (least, { slowShare }) =>
    slowShare === undefined ? "not known" : exceeds(least, slowShare) ? "no" : "yes",
  bufferAtLeast: (least, { facts }) =>
    facts.buffer === undefined ? "not known" : reaches(facts.buffer, least) ? "yes" : "no",
  season: (season, { date }) => (isWithinWindow(date, season) ? "yes" : "no"),
};

const names = Object.keys(judges) as readonly (keyof LimitCondition)[];

/** Whether a condition holds: "no" where one part does not, else "not known" where one part is not. */
export const holds = (condition: LimitCondition, known: Known): Answer => {
  let answer: Answer = "yes";
  for (const name of names) {
    const wanted = condition[name];
    if (wanted === undefined) continue;
    const part = (judges[name] as (wanted: unknown, known: Known) => Answer)(wanted, known);
    if (part === "no") return "no";
    if (part === "not known") answer = part;
  }
  return answer;
};

const either = (list: readonly string[]): string => list.join(" or ");

const readings: {
  readonly [K in keyof Required<LimitCondition>]: (wanted: NonNullable<LimitCondition[K]>) => string;
} = {
  grass: (list) => `the grass is ${either(list)}`,
  applicator: (list) => `the applicator is ${either(list)}`,
  place: (list) => `the place is a ${either(list)}`,
  turf: (list) => `the turf is ${either(list)}`,
  productKind: (list) => `the product is ${either(list)}`,
  equipment: (list) => `the equipment is a ${either(list)}`,
  growingSeasonAtMost: (n) => `the turf is in growing season ${n} at most`,
  soilTest: ({ months, shortOf }) =>
    `a soil test from the last ${months === 1 ? "month" : `${months} months`} shows a deficiency of ${shortOf}`,
  slowShareAtLeast: (percent) => `at least ${percent} % of the N is slow`,
  bufferAtLeast: ({ value, unit }) => `a vegetated strip of ${value} ${unit} or more runs along the water`,
  season: ({ from, to }) => `the date is from ${from} to ${to}`,
};

/** A condition in words: `"the grass is bermudagrass and ..."`. */
export const conditionText = (condition: LimitCondition): string =>
  names
    .flatMap((name) => {
      const wanted = condition[name];
      return wanted === undefined ? [] : [(readings[name] as (wanted: unknown) => string)(wanted)];
    })
    .join(", and ");
