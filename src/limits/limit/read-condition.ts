import { monthDay } from "../../calendar/index.js";
import { civilDateAt } from "../../ledger/house.js";
import {
  type Checks,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectText,
  fail,
  isSubstance,
  outOfRange,
  type Reader,
  readFields,
} from "../../quantity/index.js";
import { readEdges, readRunoff } from "./edge-facts.js";
import type { ApplicationFacts, LimitCondition } from "./limit-condition.js";

const words = {
  turf: ["established", "being established", "repair"],
  productKind: ["conventional", "enhanced-efficiency nitrogen", "enhanced-efficiency phosphorus", "organic"],
  equipment: [
    "drop spreader",
    "rotary spreader with deflector",
    "rotary spreader",
    "targeted spray",
    "broadcast spray",
  ],
  ground: ["frozen", "snow-covered", "saturated"],
} as const;

const text: Reader = (input, path) => {
  expectText(input, path, "a word");
};
const oneOf =
  (list: readonly string[]): Reader =>
  (input, path) => {
    expectOneOf(input, list, path);
  };
const each =
  (read: Reader): Reader =>
  (input, path) => {
    for (const [i, item] of expectList(input, path, "word").entries()) read(item, `${path}[${i}]`);
  };
const length: Reader = (input, path) => {
  expectQuantity(input, { dimension: "length", of: "none", bound: "non-negative" }, path);
};
const whole: Reader = (input, path) => {
  if (!Number.isInteger(expectNumber(input, path, { min: 1, max: 1200 })))
    outOfRange(path, input, { step: 1 });
};
const substance: Reader = (input, path) => {
  if (typeof input !== "string" || !isSubstance(input))
    fail("substance/unknown", path, input, "a substance, such as P");
};

const factReaders: { readonly [K in keyof Required<ApplicationFacts>]: Reader } = {
  grass: text,
  applicator: text,
  place: text,
  turf: oneOf(words.turf),
  growingSeason: whole,
  soilTest: (input, path) => {
    const { date, shortOf } = expectFields(input, ["date", "shortOf"], path, "a soil test");
    civilDateAt(date, `${path}.date`);
    if (!Array.isArray(shortOf)) fail("type", `${path}.shortOf`, shortOf, "a list of nutrients");
    for (const [i, item] of (shortOf as unknown[]).entries()) substance(item, `${path}.shortOf[${i}]`);
  },
  productKind: (input, path) =>
    (Array.isArray(input) ? each(oneOf(words.productKind)) : oneOf(words.productKind))(input, path),
  equipment: oneOf(words.equipment),
  ground: (input, path) => {
    if (!Array.isArray(input)) fail("type", path, input, "a list, empty where the ground is none of these");
    for (const [i, item] of (input as unknown[]).entries()) oneOf(words.ground)(item, `${path}[${i}]`);
  },
  toWater: length,
  buffer: length,
  edges: readEdges,
  runoff: readRunoff,
};

const conditionReaders: { readonly [K in keyof Required<LimitCondition>]: Reader } = {
  grass: each(text),
  applicator: each(text),
  place: each(text),
  turf: each(oneOf(words.turf)),
  growingSeasonAtMost: whole,
  soilTest: (input, path) => {
    const { months, shortOf } = expectFields(input, ["months", "shortOf"], path, "a soil test");
    whole(months, `${path}.months`);
    substance(shortOf, `${path}.shortOf`);
  },
  productKind: each(oneOf(words.productKind)),
  equipment: each(oneOf(words.equipment)),
  slowShareAtLeast: (input, path) => {
    expectNumber(input, path, { min: 0, max: 100 });
  },
  bufferAtLeast: length,
  season: (input, path) => {
    const { from, to } = expectFields(input, ["from", "to"], path, "a part of the year");
    monthDay(from, `${path}.from`);
    monthDay(to, `${path}.to`);
  },
};

/** Reads what is known of an application; what is wrong goes to `problems`. */
export const readFacts = (input: unknown, path: string, problems: Checks): ApplicationFacts => {
  if (input === undefined) return {};
  readFields(input, factReaders, [], path, "facts of the application", problems);
  return input as ApplicationFacts;
};

/** Reads a condition of a limit; what is wrong goes to `problems`. */
export const readCondition = (input: unknown, path: string, problems: Checks): LimitCondition => {
  readFields(input, conditionReaders, [], path, "a condition", problems);
  return input as LimitCondition;
};
