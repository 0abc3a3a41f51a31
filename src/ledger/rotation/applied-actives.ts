import type { CivilDate } from "../../calendar/index.js";
import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectList,
  expectName,
  expectText,
  outOfRange,
} from "../../quantity/index.js";
import { civilDateAt } from "../civil-date-at.js";
import { namesIn } from "../entry/active-names.js";
import { touches } from "../entry/history.js";
import type { LedgerEntry } from "../entry/ledger-entry.js";
import { plainName } from "./read-codes.js";

/** An application that is planned, by what it holds. */
export interface PlannedActives {
  readonly date: CivilDate;
  /** Common names of the active ingredients. */
  readonly actives: readonly string[];
  /** The parts of the site; all of it where they are left out. */
  readonly parts?: readonly string[];
}

const nameOf = (of: string | undefined): readonly string[] => {
  const [, name] = /^(?:ai|ae):([^/]+)/.exec(of ?? "") ?? [];
  return name === undefined ? [] : [name];
};

/** The active ingredients of an entry: of its contents and supplies, and what its field of them names beside. */
export const activesOf = ({ contents, supplies, activeIngredient }: LedgerEntry): readonly string[] => {
  const stated = [...(contents ?? []), ...(supplies ?? [])];
  const names = stated.flatMap(({ of }) => nameOf(of));
  const weighed = new Set(names.map(plainName));
  const beside = namesIn(activeIngredient ?? "").filter((name) => !weighed.has(plainName(name)));
  return [...stated.filter(({ value }) => value > 0).flatMap(({ of }) => nameOf(of)), ...beside];
};

/** Whether an entry may have held an active ingredient that it does not state. */
export const tellsNoActive = (entry: LedgerEntry): boolean =>
  activesOf(entry).length === 0 && entry.analysis === undefined && entry.supplies === undefined;

const most = 20_000;

const readPlanned = (input: unknown, path: string): PlannedActives => {
  const { date, actives, parts } = expectFields(input, ["date", "actives", "parts"], path);
  const texts = (list: unknown, name: string): readonly string[] =>
    expectList(list, `${path}.${name}`, "name").map((one, i) =>
      expectText(one, `${path}.${name}[${i}]`, "a name"),
    );
  const names = (list: unknown): readonly string[] =>
    expectList(list, `${path}.parts`, "name").map((one, i) =>
      expectName(one, `${path}.parts[${i}]`, "the name of a part"),
    );
  return {
    date: civilDateAt(date, `${path}.date`),
    actives: texts(actives, "actives"),
    ...(parts === undefined ? {} : { parts: names(parts) }),
  };
};

/** The planned applications on a part of the site. */
export const plannedOn = (input: unknown, part: string): readonly PlannedActives[] => {
  if (input === undefined || (Array.isArray(input) && input.length === 0)) return [];
  if (Array.isArray(input) && input.length > most)
    return outOfRange("planned", described(`${input.length} applications`), { max: most });
  const problems = checks();
  const list = expectList(input, "planned", "application").flatMap(
    (one, i) => problems.run(() => readPlanned(one, `planned[${i}]`)) ?? [],
  );
  problems.done();
  return list.filter(({ parts }) => touches(parts ?? [], part));
};
