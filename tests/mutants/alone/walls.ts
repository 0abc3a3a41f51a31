// The matrix of spoilt calls, for the functions of one room, as tests that are run alone. See tests/walls/.
import * as home from "ratewright";
import { type AnyFunction, callsOf, exportsOf, type Modules } from "../../walls/calls.js";
import { emptyTexts, outcomeOf, textOf, wrongIn } from "../../walls/judge.js";
import { handBack, tellers } from "../../walls/known.js";
import { absent, faults, frozenCopy, harmless, placesIn, unfit, valueAt, withAt } from "../../walls/spoil.js";
import { test } from "./vitest.js";

/** The faults that tell most; a mutant is tried many times, and the whole matrix once for each would take days. */
const tried = new Set(
  "missing null NaN infinite negative zero text emptyText flag record emptyList list wrongDimension wrongSubstance frozen stored".split(
    " ",
  ),
);

type Calls = ReadonlyMap<string, readonly (readonly unknown[])[]>;
const kept = globalThis as unknown as { __calls?: Promise<Calls> };
const make = home.quantity as unknown as AnyFunction;

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
