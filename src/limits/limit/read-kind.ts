import { type MonthDayWindow, monthDay } from "../../calendar/index.js";
import { limitedName, readAreaAmount } from "../../ledger/house.js";
import type { Stated } from "../../ledger/index.js";
import {
  allOf,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  expectText,
  fail,
  outOfRange,
  quantityOf,
} from "../../quantity/index.js";
import type { GroundLimit, LimitPeriod } from "./limit.js";
import { mostPoints, readBuffer, readMenu } from "./read-buffer.js";
import type { ReadBase, ReadField, ReadLimit } from "./read-types.js";

/** The kinds of limits. */
export const kinds = [
  "amount",
  "count",
  "interval",
  "slow share",
  "content",
  "blackout dates",
  "setback",
  "buffer",
  "runoff points",
  "ground",
  "rotation",
] as const;

/** The fields of every limit, and those of each kind. */
export const common: readonly string[] = ["kind", "id", "source", "readOn", "scope", "exemptIf"];
export const fieldsOf: Readonly<Record<(typeof kinds)[number], readonly string[]>> = {
  amount: ["amount", "per"],
  count: ["of", "atMost", "per"],
  interval: ["of", "atLeastDays"],
  "slow share": ["atLeastPercentOfN"],
  content: ["of", "atMostPercent"],
  "blackout dates": ["of", "blackout"],
  setback: ["of", "atLeast"],
  buffer: ["of", "from", "atLeast", "reductions", "together", "floor"],
  "runoff points": ["of", "atLeastPoints", "menu"],
  ground: ["of", "not"],
  rotation: ["group", "of", "among", "atMost", "per", "atMostInARow"],
};

const limitedNames = (input: unknown, path: string): "any" | readonly string[] =>
  input === "any"
    ? input
    : expectList(input, path, "substance").map((item, i) => limitedName(item, `${path}[${i}]`));

const wholeCount = (input: unknown, path: string, min: number, max: number): number => {
  const n = expectNumber(input, path, { min, max });
  return Number.isInteger(n) ? n : outOfRange(path, input, { step: 1 });
};

const readWindow = (input: unknown, path: string): MonthDayWindow => {
  const { from, to } = expectFields(input, ["from", "to"], path, "a part of the year, from and to");
  return allOf({ from: () => monthDay(from, `${path}.from`), to: () => monthDay(to, `${path}.to`) });
};

/** What a period in other words may be: a year can be that of the calendar, or any twelve months in a row. */
const periodsLike = (
  text: string,
): { readonly suggestion?: string; readonly choices?: readonly string[] } => {
  const [, count = "1", unit] = /^\s*(\d*)\s*(year|yr|annual|month|day)/i.exec(text) ?? [];
  if (unit === undefined) return {};
  if (/day|month/i.test(unit)) return { suggestion: `{ "${unit.toLowerCase()}s": ${count || 1} }` };
  return { choices: ["calendar year", '{ "months": 12 }'] };
};

const readPeriod = (input: unknown, path: string): LimitPeriod => {
  if (input === "application" || input === "calendar year") return input;
  const wanted = '"application", "calendar year", a season { from, to }, { days } or { months }';
  if (typeof input === "string") fail("type", path, input, wanted, periodsLike(input));
  const period = expectRecord(input, path, wanted);
  const keys = Object.keys(period);
  if (keys.length === 1 && "days" in period)
    return { days: wholeCount(period.days, `${path}.days`, 1, 3660) };
  if (keys.length === 1 && "months" in period)
    return { months: wholeCount(period.months, `${path}.months`, 1, 120) };
  if (keys.length !== 2 || !("from" in period && "to" in period)) return fail("type", path, input, wanted);
  return readWindow(period, path);
};

const readDistance = (input: unknown, path: string): Stated =>
  input === undefined
    ? fail("missing", path, input, 'a distance, such as quantity(25, "ft")')
    : expectQuantity(input, { dimension: "length", of: "none", bound: "positive" }, path);

const readGround = (input: unknown, path: string): GroundLimit["not"] =>
  expectList(input, path, "kind of ground").map((item, i) =>
    expectOneOf(item, ["frozen", "snow-covered", "saturated"], `${path}[${i}]`),
  );

const count =
  (min: number, max: number) =>
  (input: unknown, path: string): number =>
    wholeCount(input, path, min, max);

const percent = (input: unknown, path: string): number => expectNumber(input, path, { min: 0, max: 100 });

const readRotation = (base: ReadBase, field: ReadField, has: (name: string) => boolean): ReadLimit => {
  const one = has("atMost") || has("atMostInARow");
  return {
    ...base,
    kind: "rotation",
    group: field("group", (value, p) =>
      expectText(value, p, "a group as the label prints it, such as FRAC 11"),
    ),
    of: field("of", activeNames),
    ...(has("among") && { among: field("among", activeNames) }),
    ...((has("atMost") || !one) && {
      atMost: field("atMost", count(0, 1000)),
      per: field("per", readPeriod),
    }),
    ...(has("atMostInARow") && { atMostInARow: field("atMostInARow", count(1, 1000)) }),
  };
};

const activeNames = (input: unknown, path: string): readonly string[] =>
  expectList(input, path, "active ingredient").map((item, i) => {
    const name = limitedName(item, `${path}[${i}]`);
    return /^(ai|ae):/.test(name)
      ? name
      : fail("substance/mismatch", `${path}[${i}]`, name, "an active ingredient, such as ai:azoxystrobin");
  });

/** Reads what a limit of one kind states beside the fields of every limit. */
export const readKind = (
  kind: (typeof kinds)[number],
  base: ReadBase,
  field: ReadField,
  has: (name: string) => boolean,
): ReadLimit => {
  switch (kind) {
    case "amount": {
      const amount = field("amount", readAreaAmount);
      const per = field("per", readPeriod);
      return { kind, amount, of: amount?.of, per, ...base };
    }
    case "count": {
      const amount = quantityOf(field("atMost", count(0, 1000)) ?? 0, "count", "none", base.path);
      return { ...base, kind, of: field("of", limitedName), amount, per: field("per", readPeriod) };
    }
    case "interval":
      return {
        ...base,
        kind,
        of: field("of", limitedName),
        atLeastDays: field("atLeastDays", count(1, 3660)),
      };
    case "slow share":
      return { ...base, kind, atLeastPercentOfN: field("atLeastPercentOfN", percent) };
    case "content":
      return { ...base, kind, of: field("of", limitedName), atMostPercent: field("atMostPercent", percent) };
    case "blackout dates":
      return { ...base, kind, of: field("of", limitedNames), blackout: field("blackout", readWindow) };
    case "setback":
      return { ...base, kind, of: field("of", limitedNames), atLeast: field("atLeast", readDistance) };
    case "buffer":
      return readBuffer({ ...base, kind, of: field("of", limitedNames) }, field, has);
    case "runoff points":
      return {
        ...base,
        kind,
        of: field("of", limitedNames),
        atLeastPoints: field("atLeastPoints", count(0, mostPoints)),
        ...(has("menu") && { menu: field("menu", readMenu) }),
      };
    case "ground":
      return { ...base, kind, of: field("of", limitedNames), not: field("not", readGround) };
    case "rotation":
      return readRotation(base, field, has);
  }
};
