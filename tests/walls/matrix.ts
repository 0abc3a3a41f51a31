import { writeFileSync } from "node:fs";
import { afterAll, describe, expect, it } from "vitest";
import { withoutBounds } from "../house/range-bounds-exceptions.js";
import { withoutStackTraces } from "../without-stack-traces.js";
import { type AnyFunction, allCalls, exportsOf, loadModules, loadSecondCopy } from "./calls.js";
import {
  boundless,
  emptyTexts,
  gappy,
  isRefusal,
  misplaced,
  outcomeOf,
  textOf,
  type Wrong,
  wrongIn,
} from "./judge.js";
import { handBack, heldFunctions, known, notInJson, notLookedAt, tellers, withoutCalls } from "./known.js";
import { type Called, classesOf, functionsIn, methodNames, methodsOf } from "./methods.js";
import { openPlaces, writeOver } from "./shared.js";
import {
  absent,
  faults,
  frozenCopy,
  harmless,
  isSparseStill,
  neverMeant,
  type Place,
  placesIn,
  placeText,
  plainFaults,
  unfit,
  valueAt,
  withAt,
} from "./spoil.js";
import { isListed, rowFor, toldElsewhere } from "./told-elsewhere.js";

// Every spoilt call in a hunt; in `npm test` the same share of them each time, and all that are known to be open.
const whole = process.env.PROPERTY_HUNT !== undefined;
// WALLS_FAULTS names the faults that are wanted, all of each.
const wanted = process.env.WALLS_FAULTS?.split(" ");
const oneOf = whole || wanted !== undefined ? 1 : 24;
const callsEach = whole ? 3 : 2;

const modules = await loadModules();
const { functions, objects } = exportsOf(modules);
const calls = await allCalls();
const copyOf = await loadSecondCopy();
const fault = faults((q) => copyOf(q.value, q.unit, q.of));

/** FNV-1a of a text, so that the same cases are taken whatever stands before them; `from` is that of what stands before. */
const hash = (text: string, from = 2166136261): number => {
  let sum = from;
  for (let n = 0; n < text.length; n += 1) sum = Math.imul(sum ^ text.charCodeAt(n), 16777619) >>> 0;
  return sum;
};

const keyOf = (name: string, place: string, fault: string, wrong: Wrong): string =>
  JSON.stringify({ name, place, fault, wrong });
const knownKeys = new Set(known.map((one) => keyOf(one.name, one.place, one.fault, one.wrong)));
const knownCases = new Set(known.map((one) => `${one.name} ${one.place} ${one.fault}`));

/** What `~standard.validate` takes, for each schema that the examples make. */
const schemas = (): readonly (readonly [string, Called])[] =>
  (calls.get("quantitySchema") ?? []).map((given, n) => {
    const { dimension, of = "none" } = given[0] as { readonly dimension: string; readonly of?: string };
    const units = functions.get("unitsOf")?.(dimension) as readonly { readonly unit: string }[];
    const schema = functions.get("quantitySchema")?.(...given) as {
      readonly "~standard": { readonly validate: AnyFunction };
    };
    return [
      `quantitySchema.~standard.validate(${n})`,
      { call: schema["~standard"].validate, given: [[{ value: 3, unit: units[0]?.unit, of }]] },
    ];
  });

/** Everything that a caller calls, with calls that work: functions, constructors, methods, and what hangs in results. */
const called: ReadonlyMap<string, Called> = new Map([
  ...[...functions].map(([name, call]): [string, Called] => [name, { call, given: calls.get(name) ?? [] }]),
  ...methodsOf(modules),
  ...schemas(),
]);

/** The calls of a function that are spoilt: the one with most in it, and some of other shapes. */
const chosen = (name: string): readonly (readonly unknown[])[] => {
  const all = called.get(name)?.given ?? [];
  const step = Math.max(1, Math.floor(all.length / callsEach));
  return all.filter((_, n) => n % step === 0).slice(0, callsEach);
};

const found = new Map<string, string>();
const unbounded = new Set<string>();
/** Refusals that name another place than the one that was spoilt, and those whose words have a gap. */
const away = new Set<string>();
const gaps = new Set<string>();
const told = new Set<unknown>();
const slowest: { name: string; place: string; fault: string; ms: number }[] = [];
let made = 0;

const snapshot = (): string => [...objects].map(([name, object]) => `${name} ${textOf(object)}`).join("\n");
const before = snapshot();

/** The faults that are tried at a place. */
const kindsAt = (name: string, at: string): readonly string[] => {
  const kinds = wanted ?? Object.keys(fault);
  if (isListed(name, at)) return kinds;
  const before = hash(`${name} ${at} `);
  return kinds.filter((kind) => hash(kind, before) % oneOf === 0 || knownCases.has(`${name} ${at} ${kind}`));
};

const spoiltCall = async (
  name: string,
  given: readonly unknown[],
  place: Place,
  kind: string,
  meant: string | undefined,
): Promise<void> => {
  const at = placeText(place);
  const valid = valueAt(given, place);
  const put = fault[kind]?.(valid);
  if (put === unfit) return;
  const spoilt = withAt(given, place, put) as readonly unknown[];
  made += 1;
  const start = performance.now();
  const outcome = await outcomeOf(() => called.get(name)?.call(...spoilt));
  const ms = performance.now() - start;
  for (const { path, expected } of boundless(outcome.error)) {
    if (!withoutBounds.some(([words]) => words.test(expected))) unbounded.add(`${name} ${path}: ${expected}`);
  }
  const otherwise = misplaced(outcome.error, given, place, put === absent);
  if (otherwise !== undefined && plainFaults.has(kind)) {
    const row = rowFor(name, otherwise);
    told.add(row);
    const where = otherwise.told.slice(0, 5).map(({ path, code }) => `${code} ${path}`);
    if (row === undefined) away.add(`${name} ${at} ${kind} -> ${where.join(" | ")}`);
  }
  // A record that gives something else at its second reading has no words that fit.
  for (const text of kind.startsWith("fickle") ? [] : gappy(outcome.error))
    gaps.add(`${name} ${at} ${kind}: ${text}`);
  if (ms > 250) slowest.push({ name, place: at, fault: kind, ms: Math.round(ms) });
  const looked = !notLookedAt.some(([names, places]) => names.test(name) && places.test(at));
  if (neverMeant.has(kind) && outcome.error === undefined && looked && !isRefusal(outcome.result))
    found.set(keyOf(name, at, kind, "taken for something"), textOf(outcome.result).slice(0, 80));
  const wrong = wrongIn(outcome, put === absent ? undefined : put, harmless.has(kind) ? meant : undefined);
  if (
    wrong === undefined ||
    (wrong.wrong === "NaN or undefined in a text" && tellers.has(name.replace(/\(\d+\)$/, "")))
  )
    return;
  if ((wrong.wrong === "not finite" || wrong.wrong === "minus zero") && handBack.has(name)) return;
  found.set(keyOf(name, at, kind, wrong.wrong), wrong.told);
};

describe("a spoilt call is refused or has a finite answer", () => {
  withoutStackTraces();

  it("every exported function has a call in the examples, or a reason why not", () => {
    const without = [...functions.keys()].filter((name) => (calls.get(name)?.length ?? 0) === 0);
    expect(without.sort()).toEqual(Object.keys(withoutCalls).sort());
  });

  it("quantities of another copy of the package are made by another copy", () => {
    const [mine, other] = [functions.get("quantity"), copyOf].map((make) => Object(make?.(3, "lb")));
    expect(other.constructor).not.toBe(mine.constructor);
    expect(textOf(other)).toBe(textOf(mine));
  });

  it("every method of every class has a call", () => {
    for (const [name, made] of classesOf(modules)) {
      expect(called.get(`new ${name}`)?.given.length, name).toBeGreaterThan(0);
      for (const method of methodNames(made)) expect([...called.keys()]).toContain(`${name}#${method}`);
    }
  });

  it("every function that hangs in a result is called, or there is a reason why not", async () => {
    const held = new Set<string>();
    for (const [name, call] of functions) {
      for (const given of (calls.get(name) ?? []).slice(0, 2)) {
        const { result } = await outcomeOf(() => call(...given));
        for (const [place] of functionsIn(result, name)) held.add(place);
      }
    }
    expect([...held].sort()).toEqual(Object.keys(heldFunctions).sort());
  });

  for (const name of [...called.keys()].sort()) {
    it(name, async () => {
      for (const original of chosen(name)) {
        const given = frozenCopy(original) as readonly unknown[];
        const valid = await outcomeOf(() => called.get(name)?.call(...given));
        const meant = valid.error === undefined ? textOf(valid.result) : undefined;
        const places = given.flatMap((value, n) => placesIn(value, [n]));
        for (const place of places) {
          for (const kind of kindsAt(name, placeText(place)))
            await spoiltCall(name, given, place, kind, meant);
        }
      }
      const mine = [...found].filter(([key]) => key.startsWith(`{"name":"${name}"`) && !knownKeys.has(key));
      expect(mine.map(([key, told]) => `${key} ${told}`)).toEqual([]);
    });
  }

  it("what is out of range is told with its bounds", () => {
    expect([...unbounded]).toEqual([]);
  });

  it("a refusal names the place that is wrong, or there is a reason why another", () => {
    expect([...away]).toEqual([]);
  });

  it("what is told at another place is still told there", () => {
    expect(
      toldElsewhere.filter((row) => !told.has(row)).map(({ name, place, path }) => [name, place, path]),
    ).toEqual([]);
  });

  it("the words of a refusal have no gap", () => {
    expect([...gaps]).toEqual([]);
  });

  it("what JSON cannot carry is listed, and a typed array that was stored is refused with the way to make it again", async () => {
    const carried = new Set<string>();
    for (const [name, { call, given }] of called) {
      const [richest] = given;
      if (richest === undefined) continue;
      const held = richest
        .flatMap((value, n) => placesIn(value, [n]))
        .map((place) => valueAt(richest, place));
      if (held.some((value) => typeof value === "function")) carried.add(name);
      if (!held.some((value) => value instanceof Float64Array)) continue;
      carried.add(name);
      const stored = JSON.parse(JSON.stringify(richest)) as readonly unknown[];
      const { error } = await outcomeOf(() => call(...stored));
      expect(error instanceof Error ? error.message : error, name).toContain("Object.values(record)");
    }
    expect([...carried].sort()).toEqual([...notInJson.keys()].sort());
  });

  it("what is listed as open is still open", () => {
    expect([...knownKeys].filter((key) => !found.has(key))).toEqual([]);
  });

  it("no table and no answer has an empty text in it", async () => {
    const empty = [...objects].flatMap(([name, object]) => emptyTexts(object, name));
    for (const [name, { call, given: all }] of called) {
      for (const given of all.slice(0, callsEach)) {
        const { result } = await outcomeOf(() => call(...given));
        empty.push(...emptyTexts(result, name));
      }
    }
    expect(empty).toEqual([]);
  });

  it("no result holds a table that another call reads", async () => {
    const changed: string[] = [];
    for (const [name, { call, given: all }] of called) {
      if (handBack.has(name)) continue;
      for (const original of all.slice(0, callsEach)) {
        const given = frozenCopy(original) as readonly unknown[];
        const { result, error } = await outcomeOf(() => call(...given));
        if (error !== undefined) continue;
        const before = textOf(result);
        writeOver(result);
        const again = await outcomeOf(() => call(...given));
        if (textOf(again.result) !== before) changed.push(name);
      }
    }
    expect(changed).toEqual([]);
  });

  it.each([...objects])("%s is frozen, down to its last list", (name, object) => {
    expect(openPlaces(object, name)).toEqual([]);
  });

  it("no shared object was changed, and nothing was added to all objects", () => {
    expect(snapshot() === before).toBe(true);
    expect(isSparseStill()).toBe(true);
    expect(Object.keys(Object.prototype)).toEqual([]);
  });
});

afterAll(() => {
  if (process.env.WALLS_OUT) {
    writeFileSync(
      process.env.WALLS_OUT,
      JSON.stringify(
        {
          made,
          found: [...found],
          slowest,
          away: [...away],
          gaps: [...gaps],
          stale: toldElsewhere.filter((row) => !told.has(row)),
        },
        null,
        1,
      ),
    );
  }
});
