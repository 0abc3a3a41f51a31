import { describe, expect, it } from "vitest";
import { withoutStackTraces } from "../without-stack-traces.js";
import { allCalls, exportsOf, loadModules } from "./calls.js";
import { outcomeOf } from "./judge.js";
import { toldOtherwise } from "./missing-list.js";
import { absent, frozenCopy, isQuantity, type Place, placesIn, placeText, valueAt, withAt } from "./spoil.js";
import { writtenByUsers } from "./unknown-fields-exceptions.js";

// What is absent is told as missing: a field is taken away from a valid call, and where the refusal names exactly that
// field, its code is `missing`. An app asks for what was left out in other words than for what was filled in wrongly.

const modules = await loadModules();
const { functions } = exportsOf(modules);
const calls = await allCalls();
const callsEach = 2;

/** A record that a function of the library made: a part of it is not left out by a slip. */
const isMade = (value: unknown): boolean => {
  if (typeof value !== "object" || value === null || isQuantity(value) || !("version" in value)) return false;
  return "type" in value && typeof value.type === "string" && !writtenByUsers.has(value.type);
};

/** Whether a place is a field that a caller writes: not an argument, an entry of a list, or a part of a quantity or of a result. */
const isField = (given: readonly unknown[], place: Place): boolean => {
  const above = place.slice(0, -1);
  if (above.length === 0 || typeof place[place.length - 1] === "number") return false;
  if (isQuantity(valueAt(given, above)) || valueAt(given, place) === undefined) return false;
  return !above.some((_, n) => isMade(valueAt(given, above.slice(0, n + 1))));
};

/** A place as a path says it: `products[0].rate`. */
const pathOf = (place: Place): string =>
  place
    .slice(1)
    .map((key, n) => (typeof key === "number" ? `[${key}]` : n === 0 ? key : `.${key}`))
    .join("");

/** Whether a path is that of a place, with or without the name of the argument before it. */
const isPathOf = (path: string, place: Place): boolean => {
  const due = pathOf(place);
  return path === due || path.replace(/^\w+\.?(?=.)/, "") === due;
};

interface Told {
  readonly code: string;
  readonly path: string;
}

const found = new Set<string>();
const met = new Set<string>();
let missing = 0;

const trial = async (name: string, given: readonly unknown[], place: Place): Promise<void> => {
  const spoilt = withAt(given, place, absent) as readonly unknown[];
  const { error } = await outcomeOf(() => functions.get(name)?.(...spoilt));
  const { problems = [] } = Object(error) as { readonly problems?: readonly Told[] };
  for (const { code, path } of problems) {
    if (!isPathOf(path, place)) continue;
    const row = `${name} | ${placeText(place).replace(/\.\d+/g, ".*")} | ${code}`;
    if (code === "missing") missing += 1;
    else if (toldOtherwise.includes(row)) met.add(row);
    else found.add(row);
  }
};

describe("what is absent is told as missing", () => {
  withoutStackTraces();

  it("every field of the valid calls that the examples make", async () => {
    for (const [name, all] of calls) {
      for (const original of all.slice(0, callsEach)) {
        const given = frozenCopy(original) as readonly unknown[];
        // A call that is refused as it is shows nothing.
        if ((await outcomeOf(() => functions.get(name)?.(...given))).error !== undefined) continue;
        for (const place of given.flatMap((value, n) => placesIn(value, [n])))
          if (isField(given, place)) await trial(name, given, place);
      }
    }
    expect([...found].sort()).toEqual([]);
  });

  it("was seen some two thousand times", () => {
    expect(missing).toBeGreaterThan(1800);
  });

  it("what is listed is still told otherwise", () => {
    expect(toldOtherwise.filter((row) => !met.has(row))).toEqual([]);
  });
});
