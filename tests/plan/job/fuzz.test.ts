import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ledgerFromCsv } from "../../../src/ledger/index.js";
import { checkLimits } from "../../../src/limits/index.js";
import { tryWorkOrder } from "../../../src/plan/index.js";
import { RatewrightError } from "../../../src/quantity/index.js";
import { runs } from "../../properties.js";
import { withoutStackTraces } from "../../without-stack-traces.js";
import { parkJob } from "../helpers.js";

/** Every number inside a value is finite. */
const isFiniteThroughout = (value: unknown): boolean => {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value !== "object" || value === null) return true;
  return Object.values(value).every(isFiniteThroughout);
};

/** Every path into a JSON value. */
const pathsOf = (value: unknown, at: readonly (string | number)[] = []): (readonly (string | number)[])[] =>
  typeof value !== "object" || value === null
    ? [at]
    : [
        at,
        ...Object.entries(value).flatMap(([key, item]) =>
          pathsOf(item, [...at, Array.isArray(value) ? Number(key) : key]),
        ),
      ];

/** A copy with one place replaced, or taken out where the replacement is `undefined`. */
const replaced = (value: unknown, path: readonly (string | number)[], by: unknown): unknown => {
  const [key, ...rest] = path;
  if (key === undefined) return by;
  if (Array.isArray(value)) return value.map((item, i) => (i === key ? replaced(item, rest, by) : item));
  const record = { ...(value as Record<string, unknown>) };
  const next = replaced(record[key], rest, by);
  if (next === undefined) delete record[key];
  else record[key] = next;
  return record;
};

const strange = fc.oneof(
  fc.constantFrom(
    undefined,
    null,
    Number.NaN,
    Number.POSITIVE_INFINITY,
    -1,
    0,
    1e308,
    1e-308,
    "",
    "x",
    "lb",
    "N",
    [],
    {},
    { toString: 1 },
    { toString: null, valueOf: null },
    [null],
    [{}],
    true,
    "2026-02-30",
    { value: 1, unit: "lb" },
    { value: 1, unit: 5, of: 7 },
    { value: 1, unit: "lb/1000 ft2", of: "N" },
    { value: -1, unit: "acre" },
  ),
  fc.anything({
    withNullPrototype: true,
    withBigInt: true,
    withDate: true,
    withMap: true,
    withSparseArray: true,
  }),
);

describe("whatever comes in", () => {
  withoutStackTraces();

  test("tryWorkOrder throws nothing, for anything at all", { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(strange, (input) => {
        const { order, problems } = tryWorkOrder(input);
        expect(order === null).toBe(problems.length > 0);
        for (const { path, got, expected } of problems) {
          expect([typeof path, typeof got, typeof expected]).toEqual(["string", "string", "string"]);
        }
      }),
      runs(300),
    );
  });

  test("tryWorkOrder throws nothing and gives no NaN where one place of a good job goes bad", {
    timeout: 60_000,
  }, () => {
    const job = parkJob();
    const paths = pathsOf(job);
    fc.assert(
      fc.property(fc.constantFrom(...paths), strange, (path, by) => {
        const { order } = tryWorkOrder(replaced(job, path, by));
        if (order !== null) expect(isFiniteThroughout(JSON.parse(JSON.stringify(order)))).toBe(true);
        if (order !== null) expect(JSON.stringify(order)).not.toContain("null,null");
      }),
      runs(400),
    );
  });

  test("each place of a job, replaced by each of a few bad values", { timeout: 60_000 }, () => {
    const { log, ...rest } = parkJob();
    const job = { ...rest, log: log?.slice(0, 2) };
    const all = pathsOf(job).flatMap((path) =>
      [undefined, null, "x", {}, { toString: 1 }, 1e308].map((by) => ({ path, by })),
    );
    // All of them, or as many as a run whose properties are short has time for.
    const each = Math.ceil(all.length / runs(all.length).numRuns);
    for (const { path, by } of all.filter((_, i) => i % each === 0))
      expect(() => tryWorkOrder(replaced(job, path, by)), JSON.stringify([path, by])).not.toThrow();
  });

  test("checkLimits throws nothing but its own error", { timeout: 60_000 }, () => {
    const sound = {
      proposal: {
        date: "2026-06-08",
        parts: ["a"],
        supplies: [{ value: 0.8, unit: "lb/1000 ft2", of: "N" }],
        facts: { soilTest: { date: "2025-01-01", shortOf: ["P"] }, toWater: { value: 5, unit: "ft" } },
      },
      limits: [
        {
          amount: { value: 3, unit: "lb/1000 ft2", of: "N" },
          per: { days: 30 },
          source: "plan",
          scope: { grass: ["x"] },
          exemptIf: [{ soilTest: { months: 36, shortOf: "P" } }],
        },
        { kind: "setback", of: "any", atLeast: { value: 15, unit: "ft" }, source: "plan" },
        { kind: "blackout dates", of: ["N"], blackout: { from: "12-01", to: "04-01" }, source: "plan" },
      ],
      ledger: {
        type: "ledger",
        version: 1,
        entries: [
          {
            id: "a",
            date: "2026-05-26",
            analysis: "24-0-11",
            amount: { value: 9, unit: "lb" },
            area: { value: 1, unit: "acre" },
          },
        ],
      },
    };
    const paths = pathsOf(sound);
    fc.assert(
      fc.property(fc.constantFrom(...paths), strange, (path, by) => {
        try {
          const check = checkLimits(replaced(sound, path, by) as never);
          expect(isFiniteThroughout(JSON.parse(JSON.stringify(check)))).toBe(true);
        } catch (error) {
          if (!(error instanceof RatewrightError)) throw error;
        }
      }),
      runs(1000),
    );
  });

  test("ledgerFromCsv throws nothing but its own error, for any text", () => {
    const head = "id,date,area [ft2],note\r\n";
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom('"', ",", "\r\n", "\n", "a", "1", "2026-05-04", ";") }),
        (text) => {
          const read = ledgerFromCsv(head + text);
          expect(read.ledger.entries.length + read.unread.length).toBeLessThanOrEqual(
            text.split("\n").length,
          );
        },
      ),
      runs(500),
    );
  });
});
