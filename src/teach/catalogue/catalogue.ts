import { fail, nearName } from "../../quantity/index.js";
import type { CatalogueEntry } from "../entry/catalogue-entry.js";
import { type RunnableEntry, runnableOf } from "../entry/runnable-entry.js";
import { formulasByRoom } from "./all-formulas.js";

let made: ReadonlyMap<string, RunnableEntry> | undefined;

/** All entries by id, made at the first call. */
const entries = (): ReadonlyMap<string, RunnableEntry> => {
  made ??= new Map(
    Object.entries(formulasByRoom()).flatMap(([room, specs]) =>
      specs.map((spec) => [spec.id, runnableOf(room, spec)] as const),
    ),
  );
  return made;
};

/** The id that somebody may have meant: one letter off, or the name of the function. */
const meantId = (id: string): string | undefined => {
  const near = nearName(id, [...entries().keys()]);
  if (near !== undefined) return near;
  return [...entries().values()].find(({ entry }) => entry.name === id)?.entry.id;
};

/** The entry of an id with what runs it, or an error with a near id. */
export const runnableEntry = (id: unknown, path: string): RunnableEntry => {
  if (typeof id !== "string") return fail("type", path, id, "the id of a catalogue entry");
  const found = entries().get(id);
  if (found !== undefined) return found;
  const suggestion = meantId(id);
  return fail("type", path, id, "the id of an entry of catalogue()", {
    ...(suggestion === undefined ? {} : { suggestion }),
  });
};

/**
 * Every formula of the library that has a closed equation, as data: what it takes, what it gives, the equation, where
 * people go wrong, and the sources.
 *
 * @example
 * ```ts
 * import { catalogue } from "ratewright/teach";
 * const flow = catalogue().find(({ id }) => id === "nozzle-flow");
 * flow?.equation; // => "q = V * v * w"
 * flow?.inputs.map(({ symbol, usualUnits }) => `${symbol} in ${usualUnits.US}`); // => ["V in gal/acre", "v in mi/h", "w in in"]
 * ```
 */
export const catalogue = (): readonly CatalogueEntry[] => [...entries().values()].map(({ entry }) => entry);

/**
 * The entry of an id.
 *
 * @throws RatewrightError `missing`; `type` for an id that is not in the catalogue, with a near one; the name of the
 * exported function is near, too
 *
 * @example
 * ```ts
 * import { catalogueEntry } from "ratewright/teach";
 * catalogueEntry("travel-speed").title; // => "Ground speed for a flow and an application volume"
 * catalogueEntry("travelSpeed"); // => throws type
 * ```
 */
export const catalogueEntry = (id: string): CatalogueEntry => runnableEntry(id, "id").entry;
