import type { CivilDate } from "../../calendar/index.js";
import { frozen } from "../../quantity/index.js";
import type { Limit, LimitSet } from "../limit/limit.js";

/** The words that go with every set. */
export const caution =
  "Facts taken from the source on the day it was read, not its wording and not all of it. The law may have changed since, and local codes may be stricter: the current law, local codes and the label win.";

/** The day on which most of the sources were read. */
export const readOn = "2026-11-25";

/** Pounds per 1000 square feet, as all these sources state their amounts. */
export const lb = (
  value: number,
  of: string,
): { readonly value: number; readonly unit: string; readonly of: string } => ({
  value,
  unit: "lb/1000 ft2",
  of,
});

/** Feet of distance. */
export const ft = (value: number): { readonly value: number; readonly unit: string } => ({
  value,
  unit: "ft",
});

type Bare = Limit extends infer L ? (L extends unknown ? Omit<L, "source" | "readOn" | "id"> : never) : never;

/** A set of limits of one source, each with an id that begins with the id of the set. */
export const limitSet = (
  set: Omit<LimitSet, "type" | "version" | "caution" | "limits" | "readOn" | "reached"> & {
    readonly reached?: LimitSet["reached"];
    /** The day on which it was read, where it is another than that of most. */
    readonly readOn?: CivilDate;
    readonly limits: Readonly<Record<string, Bare>>;
  },
): LimitSet => {
  const { id, name, source, notHeld, reached = "read" } = set;
  const day = set.readOn ?? readOn;
  const read = reached === "read" ? ({ readOn: day } as const) : {};
  return frozen({
    type: "limit-set",
    version: 1,
    id,
    name,
    source,
    readOn: reached === "read" ? day : null,
    reached,
    caution,
    limits: Object.entries(set.limits).map(
      ([key, limit]) => ({ ...limit, id: `${id}/${key}`, source, ...read }) as Limit,
    ),
    notHeld,
  });
};
