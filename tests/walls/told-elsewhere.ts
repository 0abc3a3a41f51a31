// Whether a refusal may name another place than the one that was spoilt: see the list.
import type { Misplaced } from "./judge.js";
import { groups } from "./told-elsewhere-list.js";

/** One function, and where it tells of a place: a row of the list for each. */
export interface ToldElsewhere {
  readonly name: string;
  readonly place: string;
  readonly path: string;
  /** The codes that it may have there. */
  readonly codes: readonly string[];
  readonly why: string;
}

/** All rows, one for each function. */
export const toldElsewhere: readonly ToldElsewhere[] = groups.flatMap(([why, codes, rows]) =>
  rows
    .trim()
    .split("\n")
    .flatMap((row) => {
      const [names = "", place = "", path = ""] = row.split(" | ");
      return names.split(" ").map((name) => ({ name, place, path, codes: codes.split(" "), why }));
    }),
);

const byName = new Map<string, ToldElsewhere[]>();
for (const row of toldElsewhere) byName.set(row.name, [...(byName.get(row.name) ?? []), row]);

/** A place or a path with `*` for its numbers and its dates. */
const starred = (text: string): string =>
  text
    .replace(/(?<=^[^[]*\.)\d+(?=\.|$)/g, "*")
    .replace(/\[\d+\]/g, "[*]")
    .replace(/\.\d{4}-\d{2}-\d{2}/g, ".*");

/** The row that takes a refusal, where one does. */
export const rowFor = (name: string, away: Misplaced): ToldElsewhere | undefined => {
  const place = starred(away.place);
  return byName
    .get(name)
    ?.find(
      (row) =>
        row.place === place &&
        away.told.some(({ path, code }) => starred(path) === row.path && row.codes.includes(code)),
    );
};

/** Whether a place of a function is in the list, so that it is tried with every fault. */
export const isListed = (name: string, place: string): boolean => {
  const at = starred(place);
  return (byName.get(name) ?? []).some((row) => at === row.place || at.startsWith(`${row.place}.`));
};
