import type { CivilDate } from "../../../src/calendar/index.js";
import { ledger } from "../../../src/ledger/index.js";
import {
  type ApplicationFacts,
  checkLimits,
  type LimitSet,
  type Proposal,
} from "../../../src/limits/index.js";

// The limits of a place a second time, as applications that its words bind and that they do not. Whoever writes a row reads
// the source for it, not the data in src.

/** One application; 1 lb N/1000 ft2 on 8 June 2026 where nothing else is stated. */
export interface Application extends Pick<Proposal, "supplies" | "analysis" | "rate"> {
  readonly on?: CivilDate;
  readonly facts?: ApplicationFacts;
  /** What went down before. */
  readonly before?: readonly {
    readonly on: CivilDate;
    readonly supplies: NonNullable<Proposal["supplies"]>;
  }[];
}

/** What one limit says of some applications. */
export interface LawRow {
  /** The id of the limit, without that of its set. */
  readonly limit: string;
  /** More than it states, or where it states nothing goes down. */
  readonly over: readonly Application[];
  /** It binds, and is kept. */
  readonly within: readonly Application[];
  /** It does not bind. */
  readonly free?: readonly Application[];
}

/** The limits of one source. */
export interface Law {
  readonly set: LimitSet;
  readonly source: string;
  /** How the words came here: read on 27 November 2026, read by whoever wrote the notes on the sources, or remembered. */
  readonly reached: "read again" | "read once" | "from memory";
  readonly rows: readonly LawRow[];
}

/** Pounds per 1000 square feet. */
export const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
/** Nitrogen, and how much of it is slow. */
export const nitrogen = (value: number, slow?: number) => ({
  supplies: slow === undefined ? [lb(value, "N")] : [lb(value, "N"), lb(slow, "N:slow")],
});
/** Phosphorus. */
export const phosphorus = (value: number) => ({ supplies: [lb(value, "P")] });
export const phosphate = (value: number) => ({ supplies: [lb(value, "P2O5")] });
export const potash = { supplies: [lb(1, "K2O")] };
/** A product by its analysis. */
export const product = (analysis: string) => ({ analysis, rate: { value: 3, unit: "lb/1000 ft2" } });
export const feet = (value: number) => ({ value, unit: "ft" });
/** A soil test that shows a lack of phosphorus. */
export const tested = (date: CivilDate) => ({ soilTest: { date, shortOf: ["P"] } });

/** The same application with each of several facts. */
export const each = <const F extends ApplicationFacts>(
  list: readonly F[],
  of: Application,
): readonly Application[] => list.map((facts) => ({ ...of, facts: { ...of.facts, ...facts } }));

/** The same facts with each of several applications. */
export const every = (list: readonly Application[], of: Application): readonly Application[] =>
  list.map((one) => ({ ...of, ...one, facts: { ...of.facts, ...one.facts } }));

/** On each of several days. */
export const days = (list: readonly CivilDate[], of: Application): readonly Application[] =>
  list.map((on) => ({ ...of, on }));

/** What a limit of a set says of an application. */
export const saysOf = (set: LimitSet, limit: string, application: Application): string => {
  const { on = "2026-06-08", before = [], ...rest } = application;
  const { uses, tests } = checkLimits({
    ledger: ledger(before.map(({ on: date, supplies }, n) => ({ id: `before ${n}`, date, supplies }))),
    limits: set.limits.filter(({ id }) => id === `${set.id}/${limit}`),
    proposal: { date: on, ...(rest.supplies || rest.analysis ? {} : nitrogen(1)), ...rest },
  });
  const [found] = [...uses, ...tests];
  if (found === undefined) return "free";
  if (found.appliesIf.length > 0) return `where ${found.appliesIf.join(", ")}`;
  return found.violated === null ? "not known" : found.violated ? "over" : "within";
};
