import { civilDateAt, expectSource } from "../../ledger/house.js";
import {
  type Checks,
  checks,
  expectFields,
  expectList,
  expectOneOf,
  expectRecord,
  expectText,
  fail,
  plainCopy,
  RatewrightError,
  rangeProblem,
  shown,
} from "../../quantity/index.js";
import type { Limit } from "./limit.js";
import { readCondition } from "./read-condition.js";
import { common, fieldsOf, kinds, readKind } from "./read-kind.js";
import type { ReadBase, ReadField, ReadLimit } from "./read-types.js";

const readOne = (input: unknown, path: string, problems: Checks): ReadLimit | undefined => {
  const before = problems.count();
  const record = problems.run(() => expectRecord(input, path, "a limit"));
  if (record === undefined) return undefined;
  const kind = problems.run(() =>
    expectOneOf(record.kind === undefined ? "amount" : record.kind, kinds, `${path}.kind`),
  );
  if (kind === undefined) return undefined;
  problems.run(() => expectFields(record, [...common, ...fieldsOf[kind]], path, "a limit"));
  // another record is told as that, and not by what a limit has
  if (typeof record.type === "string" && problems.count() === before + 1) return undefined;
  // What cannot be read is not used: the limit is given only where there is no problem.
  const field: ReadField = <T>(name: string, read: (input: unknown, path: string) => T): T =>
    problems.run(() => read(record[name], `${path}.${name}`)) as T;
  const optional = <T>(name: string, read: (input: unknown, path: string) => T): T | undefined =>
    record[name] === undefined ? undefined : field(name, read);
  const id = optional("id", (value, p) => expectText(value, p, "a short name"));
  const source = field("source", expectSource);
  optional("readOn", civilDateAt);
  const scope = optional("scope", (value, p) => readCondition(value, p, problems));
  const exemptIf = optional("exemptIf", (value, p) =>
    expectList(value, p, "condition").map((item, i) => readCondition(item, `${p}[${i}]`, problems)),
  );
  const base: ReadBase = {
    path,
    source,
    ...(id === undefined ? {} : { id }),
    ...(scope && { scope }),
    ...(exemptIf && { exemptIf }),
  };
  const limit = readKind(kind, base, field, (name) => record[name] !== undefined);
  return problems.count() > before ? undefined : limit;
};

/** Whether a whole set stands where its limits are wanted. */
const isSet = (input: unknown): boolean =>
  (Object(input) as { readonly type?: unknown }).type === "limit-set";

/** The most limits that one application is put to. */
const mostLimits = 10_000;

/** Reads limits; what is wrong goes to `problems`. */
export const readLimits = (input: unknown, problems: Checks, path = "limits"): readonly ReadLimit[] => {
  if (input === undefined) return [];
  if (!Array.isArray(input)) {
    const expected = isSet(input)
      ? "a list of limits: those of the set, its field limits"
      : "a list of limits";
    problems.add({ code: "type", path, got: shown(input), expected });
    return [];
  }
  if (input.length > mostLimits) {
    problems.add(rangeProblem(path, shown(input), { max: mostLimits, count: "limits" }));
    return [];
  }
  return Array.from(input as readonly unknown[]).flatMap((item, i) => {
    if (!isSet(item)) return readOne(item, `${path}[${i}]`, problems) ?? [];
    const expected = "a limit: of a whole set, each of its field limits";
    problems.add({ code: "type", path: `${path}[${i}]`, got: shown(item), expected });
    return [];
  });
};

/**
 * Takes a limit that comes from a file or a form, and reports everything that is wrong with it at once.
 *
 * @param path - how an error names the argument; `""` for a form whose fields are named like those of a limit
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
  if (typeof path !== "string") fail("type", "path", path, "a path");
  const problems = checks();
  const own = plainCopy(input);
  readOne(own, path || "limit", problems);
  try {
    problems.done();
  } catch (error) {
    if (path !== "" || !(error instanceof RatewrightError)) throw error;
    throw new RatewrightError(
      error.problems.map((one) => ({ ...one, path: one.path.replace(/^limit\./, "") })),
    );
  }
  return own;
};
