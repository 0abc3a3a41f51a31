import { describe, expect, it } from "vitest";
import { withoutStackTraces } from "../without-stack-traces.js";
import { allCalls, exportsOf, loadModules } from "./calls.js";
import { outcomeOf } from "./judge.js";
import { frozenCopy, isQuantity, type Place, placesIn, placeText, valueAt, withAt } from "./spoil.js";
import { readsOtherwise, writtenByUsers } from "./unknown-fields-exceptions.js";

// Every function that takes a record refuses a field that it does not know, and names it: what is misspelt would be
// passed over in silence, and the answer be another one. Tried with each field of each record of the valid calls that
// the examples make, misspelt, and with one that nobody knows.

const modules = await loadModules();
const { functions } = exportsOf(modules);
const calls = await allCalls();
const callsEach = 6;

type Fields = Readonly<Record<string, unknown>>;

const isRecord = (value: unknown): value is Fields => {
  if (typeof value !== "object" || value === null || isQuantity(value)) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
};

/** A result of this library goes into the next function with all its fields; its type and version say what it is. */
const isResult = (value: unknown): boolean =>
  isRecord(value) && typeof value.type === "string" && "version" in value && !writtenByUsers.has(value.type);

const insideResult = (given: readonly unknown[], place: Place): boolean =>
  place.some((_, n) => isResult(valueAt(given, place.slice(0, n + 1))));

const misspelt = (name: string): string =>
  name.length < 4 ? `${name}z` : `${name.slice(0, -2)}${name.slice(-1)}${name.slice(-2, -1)}`;

/** The exception that a place falls under; -1 where none. */
const exceptionOf = (name: string, place: Place): number =>
  readsOtherwise.findIndex(
    ([functionName, where]) => functionName.test(name) && where.test(placeText(place).replace(/\d+/g, "*")),
  );

const isRefused = (error: unknown, field: string): boolean =>
  error instanceof Error && error.name === "RatewrightError" && error.message.includes(field);

const found: string[] = [];
const used = new Set<number>();
let tried = 0;

const trial = async (
  name: string,
  given: readonly unknown[],
  place: Place,
  field: string,
  value: unknown,
): Promise<void> => {
  tried += 1;
  const record = valueAt(given, place) as Fields;
  const spoilt = withAt(given, place, Object.freeze({ ...record, [field]: value })) as readonly unknown[];
  const { error } = await outcomeOf(() => functions.get(name)?.(...spoilt));
  if (error !== undefined && isRefused(error, field)) return;
  const came = error === undefined ? "taken" : String(error).slice(0, 120);
  found.push(`${name} ${placeText(place)}: ${field}: ${came}`);
};

describe("an unknown field is refused by its name", () => {
  withoutStackTraces();

  for (const name of [...functions.keys()].sort()) {
    it(name, async () => {
      const before = found.length;
      const seen = new Set<string>();
      for (const original of (calls.get(name) ?? []).slice(0, callsEach)) {
        const given = frozenCopy(original) as readonly unknown[];
        // A call that is refused as it is shows nothing.
        if ((await outcomeOf(() => functions.get(name)?.(...given))).error !== undefined) continue;
        for (const place of given.flatMap((value, n) => placesIn(value, [n]))) {
          const record = valueAt(given, place);
          if (!isRecord(record) || insideResult(given, place)) continue;
          const exception = exceptionOf(name, place);
          if (exception >= 0) {
            used.add(exception);
            continue;
          }
          const shape = `${placeText(place).replace(/\.\d+/g, ".*")} ${Object.keys(record).sort().join()}`;
          if (seen.has(shape)) continue;
          seen.add(shape);
          await trial(name, given, place, "zebraField", 1);
          for (const [field, value] of Object.entries(record)) {
            if (misspelt(field) !== field && !(misspelt(field) in record))
              await trial(name, given, place, misspelt(field), value);
          }
        }
      }
      expect(found.slice(before)).toEqual([]);
    });
  }

  it("was tried some thousand times", () => {
    expect(tried).toBeGreaterThan(2500);
  });

  it("every exception is met by a call", () => {
    expect(readsOtherwise.filter((_, n) => !used.has(n)).map(([name, where]) => `${name} ${where}`)).toEqual(
      [],
    );
  });
});
