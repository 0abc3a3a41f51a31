import type { Stated } from "../../ledger/index.js";
import {
  allOf,
  expectFields,
  expectList,
  expectName,
  expectNumber,
  expectQuantity,
  expectText,
  fail,
  outOfRange,
  type Reader,
} from "../../quantity/index.js";

/** An edge of the site, or of a part of it, from which a label keeps a distance: a creek, a pond, a well, a neighbor. */
export interface EdgeFact {
  /** The part of the site; every part where it is left out. */
  readonly part?: string;
  /** What lies there, in the words of the limit: `"water"`. */
  readonly from: string;
  /** How far from the edge of the part it lies; 0 where it lies on the edge. */
  readonly away: Stated;
  /** The width of the strip along this edge that is left untreated; none where it is left out. */
  readonly untreated?: Stated;
  /** The measures in use that shorten the distance, as the limit words them. */
  readonly measures?: readonly string[];
  /**
   * Which edges of the part it lies along, for the area of the strip: those of a polygon by number, edge 0 from point 0
   * to point 1; of a rectangle or a square 0 and 2 are the lengths, 1 and 3 the widths.
   */
  readonly edges?: readonly number[];
  /** How long the edge is, for a part of another shape: the strip is then taken as long as this. */
  readonly along?: Stated;
}

/** A measure against runoff that is in place. */
export interface RunoffFact {
  /** The part of the site; every part where it is left out. */
  readonly part?: string;
  /** The measure, as the menu of the limit words it, or in words of your own beside `points`. */
  readonly measure: string;
  /** Its points, where you state them yourself: they win over every menu. */
  readonly points?: number;
}

/** More edges or measures than this no site has. */
export const mostFacts = 1000;

const listOf = (input: unknown, path: string, what: string): readonly unknown[] => {
  if (Array.isArray(input) && input.length === 0) return [];
  const list = expectList(input, path, what);
  return list.length > mostFacts ? outOfRange(path, list, { max: mostFacts }) : list;
};

const length = (input: unknown, path: string): unknown =>
  input === undefined
    ? undefined
    : expectQuantity(input, { dimension: "length", of: "none", bound: "non-negative" }, path);

const name = (input: unknown, path: string, what: string): unknown =>
  input === undefined ? undefined : expectName(input, path, what);

const edgeFields: readonly (keyof EdgeFact)[] = [
  "part",
  "from",
  "away",
  "untreated",
  "measures",
  "edges",
  "along",
];

const readEdge = (input: unknown, at: string): void => {
  const given = expectFields(input, edgeFields, at, "an edge: what is there, and how far away");
  if (given.away === undefined) fail("missing", `${at}.away`, undefined, "how far away it is, 0 at the edge");
  allOf({
    part: () => name(given.part, `${at}.part`, "the name of a part of the site"),
    from: () => expectText(given.from, `${at}.from`, 'what is there, such as "water"'),
    away: () => length(given.away, `${at}.away`),
    untreated: () => length(given.untreated, `${at}.untreated`),
    measures: () =>
      given.measures === undefined
        ? undefined
        : listOf(given.measures, `${at}.measures`, "measure").map((item, i) =>
            expectText(item, `${at}.measures[${i}]`, "a measure, as the limit words it"),
          ),
    edges: () =>
      given.edges === undefined
        ? undefined
        : expectList(given.edges, `${at}.edges`, "number of an edge").map((item, i) => {
            const edge = expectNumber(item, `${at}.edges[${i}]`, { min: 0, max: 100_000 });
            if (!Number.isInteger(edge)) outOfRange(`${at}.edges[${i}]`, item, { step: 1 });
            return (given.edges as unknown[]).indexOf(item) === i
              ? edge
              : fail("duplicate", `${at}.edges[${i}]`, item, "each edge once");
          }),
    along: () => length(given.along, `${at}.along`),
  });
  if (given.edges !== undefined && given.along !== undefined)
    fail("conflict", `${at}.along`, given.along, "either the numbers of edges, or how long the edge is");
};

/** Reads the edges that facts state, or throws. */
export const readEdges: Reader = (input, path) => {
  for (const [i, item] of listOf(input, path, "edge").entries()) readEdge(item, `${path}[${i}]`);
};

/** Reads the measures against runoff that facts state, or throws. */
export const readRunoff: Reader = (input, path) => {
  const seen = new Set<string>();
  for (const [i, item] of listOf(input, path, "measure").entries()) {
    const at = `${path}[${i}]`;
    const given = expectFields(item, ["part", "measure", "points"], at, "a measure against runoff");
    const { part, measure } = allOf({
      part: () => name(given.part, `${at}.part`, "the name of a part of the site"),
      measure: () => expectText(given.measure, `${at}.measure`, "the measure, as the menu words it"),
      points: () =>
        given.points === undefined
          ? undefined
          : expectNumber(given.points, `${at}.points`, { min: 0, max: 50 }),
    });
    const key = JSON.stringify([part, measure.trim().toLowerCase()]);
    if (seen.has(key))
      fail("duplicate", `${at}.measure`, measure, "each measure once: it earns its points once");
    seen.add(key);
  }
};
