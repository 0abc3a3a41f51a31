// The matrix of spoilt calls, for the functions of one room, as tests that are run alone. See tests/walls/.
import * as home from "ratewright";
import { withoutBounds } from "../../house/range-bounds-exceptions.js";
import { type AnyFunction, callsOf, exportsOf, type Modules } from "../../walls/calls.js";
import { boundless, emptyTexts, gappy, misplaced, outcomeOf, textOf, wrongIn } from "../../walls/judge.js";
import { handBack, tellers } from "../../walls/known.js";
import {
  absent,
  faults,
  frozenCopy,
  harmless,
  placesIn,
  plainFaults,
  unfit,
  valueAt,
  withAt,
} from "../../walls/spoil.js";
import { rowFor } from "../../walls/told-elsewhere.js";
import { test } from "./vitest.js";

/** The faults that tell most; a mutant is tried many times, and the whole matrix once for each would take days. */
const tried: ReadonlySet<string> = new Set([...plainFaults, "frozen", "stored"]);

type Calls = ReadonlyMap<string, readonly (readonly unknown[])[]>;
const kept = globalThis as unknown as { __calls?: Promise<Calls> };
const make = home.quantity as unknown as AnyFunction;

/** What is wrong with the place or the words of a refusal, or nothing. */
const badlyTold = (
  name: string,
  error: unknown,
  given: unknown,
  place: readonly (string | number)[],
  missed: boolean,
): string | undefined => {
  const away = misplaced(error, given, place, missed);
  if (away !== undefined && rowFor(name, away) === undefined)
    return `told at ${away.told.map(({ path }) => path).join(", ")}`;
  const gap = gappy(error)[0];
  if (gap !== undefined) return `a gap in "${gap}"`;
  const open = boundless(error).find(
    ({ expected }) => !withoutBounds.some(([words]) => words.test(expected)),
  );
  return open === undefined ? undefined : `no bounds with "${open.expected}"`;
};

/** Throws at the first spoilt call that is neither refused as it should be nor has a finite right answer. */
const spoil = async (name: string, called: AnyFunction, original: readonly unknown[]): Promise<void> => {
  const fault = faults((q) => make(q.value, q.unit, q.of));
  const given = frozenCopy(original) as readonly unknown[];
  const valid = await outcomeOf(() => called(...given));
  const empty = emptyTexts(valid.result, name);
  if (empty.length > 0) throw new Error(`empty: ${empty.join(", ")}`);
  const meant = valid.error === undefined ? textOf(valid.result) : undefined;
  for (const place of given.flatMap((value, n) => placesIn(value, [n]))) {
    for (const kind of Object.keys(fault)) {
      const put = fault[kind]?.(valueAt(given, place));
      if (put === unfit || !tried.has(kind)) continue;
      const spoilt = withAt(given, place, put) as readonly unknown[];
      const outcome = await outcomeOf(() => called(...spoilt));
      const badly = badlyTold(name, outcome.error, given, place, put === absent);
      if (badly !== undefined) throw new Error(`${name} ${place.join(".")} ${kind}: ${badly}`);
      const wrong = wrongIn(
        outcome,
        put === absent ? undefined : put,
        harmless.has(kind) ? meant : undefined,
      );
      if (wrong === undefined || (wrong.wrong === "NaN or undefined in a text" && tellers.has(name)))
        continue;
      if (wrong.wrong === "not finite" && handBack.has(name)) continue;
      throw new Error(`${name} ${place.join(".")} ${kind}: ${wrong.wrong} ${wrong.told}`);
    }
  }
};

/** Adds a test for each function that a room exports. */
export const addWalls = (
  room: string,
  modules: Modules,
  exported: Readonly<Record<string, unknown>>,
): void => {
  const here = (file: string): boolean => file.startsWith(`src/${room}/`) || file === `docs/${room}.md`;
  const { functions, objects } = exportsOf({ room: exported });
  for (const [name, object] of objects) {
    (test as (name: string, body: () => unknown) => void)(`texts > ${name}`, () => {
      const empty = emptyTexts(object, name);
      if (empty.length > 0) throw new Error(`empty: ${empty.join(", ")}`);
    });
  }
  for (const [name, called] of functions) {
    (test as (name: string, body: () => unknown) => void)(`spoilt calls > ${name}`, async () => {
      kept.__calls ??= callsOf(modules, here);
      const [original] = (await kept.__calls).get(name) ?? [];
      if (original !== undefined) await spoil(name, called, original);
    });
  }
};
