import { type MonthDayWindow, monthDay } from "../../calendar/index.js";
import { civilDateAt, expectSource, limitedName, readAreaAmount } from "../../ledger/house.js";
import {
  allOf,
  type Checks,
  checks,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  expectText,
  type FactSource,
  fail,
  type Quantity,
  quantityOf,
  shown,
} from "../../quantity/index.js";
import type { Limit, LimitPeriod } from "./limit.js";
import type { LimitCondition } from "./limit-condition.js";
import { readCondition } from "./read-condition.js";

interface ReadBase {
  readonly path: string;
  readonly id?: string;
  readonly source: FactSource;
  readonly scope?: LimitCondition;
  readonly exemptIf?: readonly LimitCondition[];
}

/** A limit on an amount, read and checked. */
export interface ReadAmountLimit extends ReadBase {
  readonly kind: "amount";
  readonly of: string;
  readonly amount: Quantity<string, string>;
  readonly per: LimitPeriod;
}

/** A limit on a number of applications, read and checked. */
export interface ReadCountLimit extends ReadBase {
  readonly kind: "count";
  readonly of: string;
  readonly amount: Quantity<string, string>;
  readonly per: LimitPeriod;
}

type Of<K extends string> = Extract<Limit, { readonly kind: K }>;
type ReadOther<K extends Exclude<Limit["kind"], "amount" | "count" | undefined>> = ReadBase &
  Omit<Of<K>, keyof ReadBase | "readOn">;

/** A limit, read and checked. */
export type ReadLimit =
  | ReadAmountLimit
  | ReadCountLimit
  | ReadOther<"interval">
  | ReadOther<"slow share">
  | ReadOther<"content">
  | ReadOther<"blackout dates">
  | ReadOther<"setback">
  | ReadOther<"ground">;

const kinds = [
  "amount",
  "count",
  "interval",
  "slow share",
  "content",
  "blackout dates",
  "setback",
  "ground",
] as const;

const common = ["kind", "id", "source", "readOn", "scope", "exemptIf"];
const fieldsOf: Readonly<Record<(typeof kinds)[number], readonly string[]>> = {
  amount: ["amount", "per"],
  count: ["of", "atMost", "per"],
  interval: ["of", "atLeastDays"],
  "slow share": ["atLeastPercentOfN"],
  content: ["of", "atMostPercent"],
  "blackout dates": ["of", "blackout"],
  setback: ["of", "atLeast"],
  ground: ["of", "not"],
};

const limitedNames = (input: unknown, path: string): "any" | readonly string[] =>
  input === "any"
    ? input
    : expectList(input, path, "substance").map((item, i) => limitedName(item, `${path}[${i}]`));

const wholeCount = (input: unknown, path: string, min: number, max: number): number => {
  const n = expectNumber(input, path, { min, max });
  return Number.isInteger(n) ? n : fail("range", path, input, "a whole number");
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

const readOne = (input: unknown, path: string, door: Checks): ReadLimit | undefined => {
  const before = door.count();
  const record = door.run(() => expectRecord(input, path, "a limit"));
  if (record === undefined) return undefined;
  const kind = door.run(() => expectOneOf(record.kind ?? "amount", kinds, `${path}.kind`));
  if (kind === undefined) return undefined;
  door.run(() => expectFields(record, [...common, ...fieldsOf[kind]], path, "a limit"));
  const at = (field: string): string => `${path}.${field}`;
  const field = <T>(name: string, read: (input: unknown, path: string) => T): T =>
    door.run(() => read(record[name], at(name))) as T;
  const optional = <T>(name: string, read: (input: unknown, path: string) => T): T | undefined =>
    record[name] === undefined ? undefined : field(name, read);
  const id = optional("id", (value, p) => expectText(value, p, "a short name"));
  const source = field("source", expectSource);
  optional("readOn", civilDateAt);
  const scope = optional("scope", (value, p) => readCondition(value, p, door));
  const exemptIf = optional("exemptIf", (value, p) =>
    expectList(value, p, "condition").map((item, i) => readCondition(item, `${p}[${i}]`, door)),
  );
  const base: ReadBase = {
    path,
    source,
    ...(id === undefined ? {} : { id }),
    ...(scope && { scope }),
    ...(exemptIf && { exemptIf }),
  };
  const rest = (): ReadLimit => {
    switch (kind) {
      case "amount": {
        const amount = field("amount", readAreaAmount);
        return { ...base, kind, amount, of: amount?.of, per: field("per", readPeriod) };
      }
      case "count": {
        const atMost = field("atMost", (value, p) => wholeCount(value, p, 0, 1000));
        const amount = quantityOf(atMost ?? 0, "count", "none", path);
        return { ...base, kind, of: field("of", limitedName), amount, per: field("per", readPeriod) };
      }
      case "interval":
        return {
          ...base,
          kind,
          of: field("of", limitedName),
          atLeastDays: field("atLeastDays", (value, p) => wholeCount(value, p, 1, 3660)),
        };
      case "slow share":
        return {
          ...base,
          kind,
          atLeastPercentOfN: field("atLeastPercentOfN", (value, p) =>
            expectNumber(value, p, { min: 0, max: 100 }),
          ),
        };
      case "content":
        return {
          ...base,
          kind,
          of: field("of", limitedName),
          atMostPercent: field("atMostPercent", (value, p) => expectNumber(value, p, { min: 0, max: 100 })),
        };
      case "blackout dates":
        return { ...base, kind, of: field("of", limitedNames), blackout: field("blackout", readWindow) };
      case "setback":
        return {
          ...base,
          kind,
          of: field("of", limitedNames),
          atLeast: field("atLeast", (value, p) =>
            expectQuantity(value, { dimension: "length", of: "none", bound: "positive" }, p),
          ),
        };
      case "ground":
        return {
          ...base,
          kind,
          of: field("of", limitedNames),
          not: field("not", (value, p) =>
            expectList(value, p, "kind of ground").map((item, i) =>
              expectOneOf(item, ["frozen", "snow-covered", "saturated"], `${p}[${i}]`),
            ),
          ),
        };
    }
  };
  const limit = rest();
  return door.count() > before ? undefined : limit;
};

/** Reads limits; problems go to `door`. */
export const readLimits = (input: unknown, door: Checks, path = "limits"): readonly ReadLimit[] => {
  if (input === undefined) return [];
  if (!Array.isArray(input)) {
    door.add({ code: "type", path, got: shown(input), expected: "a list of limits" });
    return [];
  }
  return input.flatMap((item, i) => readOne(item, `${path}[${i}]`, door) ?? []);
};

/**
 * Takes a limit that comes from a file or a form, and reports everything that is wrong with it at once.
 *
 * @param path - how an error names the argument
 * @throws RatewrightError `missing`, `type`, `range`, `substance/mismatch`, `unit/mismatch`, `date`
 *
 * @example
 * ```ts
 * import { limit } from "ratewright";
 * limit({
 *   amount: { value: 0.25, unit: "lb/1000 ft2", of: "P2O5" },
 *   per: "application",
 *   source: "county code, section 12, read 2026-03-01",
 * }).source; // => "county code, section 12, read 2026-03-01"
 * limit({ amount: { value: 3, unit: "lb" , of: "N" }, per: "calendar year", source: "plan" }); // => throws unit/mismatch
 * ```
 */
export const limit = (input: Limit, path = "limit"): Limit => {
  expectText(path, "path", "a path");
  const door = checks();
  readOne(input, path, door);
  door.done();
  return input;
};
