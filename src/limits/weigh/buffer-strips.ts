import { wholeSite } from "../../ledger/house.js";
import {
  type FactSource,
  type Length,
  numberIn,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import { reducedBuffer } from "../../site/index.js";
import type { EdgeFact } from "../limit/edge-facts.js";
import { type ApplicationFacts, plainWord, reaches } from "../limit/limit-condition.js";
import type { ReadLimit } from "../limit/read-types.js";

type BufferLimit = Extract<ReadLimit, { kind: "buffer" }>;

/** What a buffer comes to along one edge. */
export interface BufferStrip {
  /** What it is kept from. */
  readonly from: string;
  readonly limitId?: string;
  readonly source: FactSource;
  /** The distance as the label states it, before any reduction. */
  readonly stated: Length;
  /** By how much the measures in use shorten it together. */
  readonly reduction: Quantity<"1", "none">;
  /** The distance after the reductions, no less than the floor of the label. */
  readonly distance: Length;
  readonly atFloor: boolean;
  /** How far from the edge of the part it lies. */
  readonly away: Length;
  /** The strip along the edge of the part that the distance takes: what it is more than `away`. */
  readonly strip: Length;
  /** The strip that is left untreated, as the facts state it. */
  readonly untreated: Length;
  /** Whether what is stated treats inside the distance. */
  readonly short: boolean;
  /** Measures that the facts state and the limit does not list: they shorten nothing. */
  readonly notListed: readonly string[];
  readonly fact: EdgeFact;
}

/** A length in the unit of another. */
const lengthIn = (
  stated: { readonly value: number; readonly unit: string },
  unit: string,
  path: string,
): Length => {
  const q = quantityOf<"length", "none">(stated.value, stated.unit, "none", path);
  return q.unit === unit ? q : quantityOf<"length", "none">(numberIn(q, unit), unit, "none", path);
};

/** Whether something that is stated of one part, or of every part, is stated of this one. */
export const isStatedOf = (fact: { readonly part?: string }, part: string): boolean =>
  fact.part === undefined || part === wholeSite || fact.part === part;

/** The edges of a part that a limit speaks of; `undefined` where nothing is stated of them. */
export const edgesFor = (
  limit: BufferLimit,
  { edges, toWater }: ApplicationFacts,
  part: string,
): readonly EdgeFact[] | undefined => {
  if (edges?.length === 0) return [];
  const mine = (edges ?? []).filter(
    (edge) => plainWord(edge.from) === plainWord(limit.from) && isStatedOf(edge, part),
  );
  if (mine.length > 0) return mine;
  return toWater !== undefined && plainWord(limit.from) === "water"
    ? [{ from: limit.from, away: toWater }]
    : undefined;
};

/** A buffer along one edge: `strip = max(distance after reductions - away, 0)`. */
export const bufferStrip = (limit: BufferLimit, fact: EdgeFact): BufferStrip => {
  const { atLeast, reductions = [], together = "sum", floor, path } = limit;
  const { unit } = atLeast;
  const stated = lengthIn(atLeast, unit, path);
  const inUse = new Set((fact.measures ?? []).map(plainWord));
  const listed = new Set(reductions.map(({ measure }) => plainWord(measure)));
  const { distance, reduction, atFloor } = reducedBuffer({
    distance: stated,
    reductions: reductions
      .filter(({ measure }) => inUse.has(plainWord(measure)))
      .map(({ percent }) => quantity(percent, "%")),
    rule: together,
    ...(floor !== undefined && { floor: lengthIn(floor, unit, path) }),
  });
  const away = lengthIn(fact.away, unit, path);
  const untreated = lengthIn(fact.untreated ?? { value: 0, unit }, unit, path);
  const kept = quantityOf<"length", "none">(away.value + untreated.value, unit, "none", path);
  return {
    from: limit.from,
    ...(limit.id !== undefined && { limitId: limit.id }),
    source: limit.source,
    stated,
    reduction,
    distance,
    atFloor,
    away,
    strip: quantityOf<"length", "none">(
      reaches(away, distance) ? 0 : distance.value - away.value,
      unit,
      "none",
      path,
    ),
    untreated,
    short: !reaches(kept, distance),
    notListed: (fact.measures ?? []).filter((measure) => !listed.has(plainWord(measure))),
    fact,
  };
};
