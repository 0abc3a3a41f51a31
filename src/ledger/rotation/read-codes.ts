import { described } from "../../quantity/house.js";
import {
  checks,
  expectFields,
  expectList,
  expectOneOf,
  expectRecord,
  expectText,
  outOfRange,
} from "../../quantity/index.js";
import { expectSource } from "../expect-source.js";
import { type ResistanceCodeList, resistanceCodeLists } from "./resistance-codes.js";

/** The group of one active ingredient in one scheme. */
export interface ResistanceCode {
  readonly scheme: string;
  readonly group: string;
  readonly multiSite: boolean;
  readonly list: ResistanceCodeList;
}

/** A common name as it is compared: "Azoxystrobin" is "azoxystrobin". */
export const plainName = (name: string): string => name.trim().toLowerCase();

const fields = ["type", "version", "scheme", "source", "reached", "groups", "multiSite"] as const;
const mostLists = 20;
const mostNames = 5000;

const namesAt = (input: unknown, path: string): readonly string[] => {
  if (Array.isArray(input) && input.length > mostNames)
    return outOfRange(path, described(`${input.length} names`), { max: mostNames, count: "names" });
  return expectList(input, path, "common name").map((name, i) => expectText(name, `${path}[${i}]`, "a name"));
};

const readList = (input: unknown, path: string): ResistanceCodeList => {
  const list = expectFields(input, fields, path, "a list of groups, such as one of resistanceCodeLists");
  const groups = expectRecord(list.groups, `${path}.groups`, "names of active ingredients by group");
  const { multiSite } = list;
  return {
    type: "resistance-code-list",
    version: 1,
    scheme: expectText(list.scheme, `${path}.scheme`, "whose numbers these are, such as FRAC"),
    source: expectSource(list.source, `${path}.source`),
    reached: expectOneOf(
      list.reached ?? "stated by the caller",
      ["read", "from memory", "stated by the caller"],
      `${path}.reached`,
    ),
    groups: Object.fromEntries(
      Object.entries(groups).map(([group, names]) => [group, namesAt(names, `${path}.groups.${group}`)]),
    ),
    multiSite:
      multiSite === undefined || (Array.isArray(multiSite) && multiSite.length === 0)
        ? []
        : namesAt(multiSite, `${path}.multiSite`),
  };
};

/** The codes of each active ingredient by its plain name: those of the caller first, then those that are shipped. */
export const readCodes = (input: unknown): ReadonlyMap<string, readonly ResistanceCode[]> => {
  const problems = checks();
  const given = input === undefined ? [] : expectList(input, "codeLists", "list of groups");
  if (given.length > mostLists)
    outOfRange("codeLists", described(`${given.length} lists`), { max: mostLists });
  const own = given.flatMap((list, i) => problems.run(() => readList(list, `codeLists[${i}]`)) ?? []);
  problems.done();
  const codes = new Map<string, ResistanceCode[]>();
  for (const list of [...own, ...resistanceCodeLists]) {
    for (const [group, names] of Object.entries(list.groups)) {
      for (const name of names) {
        const known = codes.get(plainName(name)) ?? [];
        // One group a scheme: the first list that names it wins, one after it adds nothing.
        if (known.some(({ scheme, list: other }) => scheme === list.scheme && other !== list)) continue;
        const { scheme } = list;
        codes.set(plainName(name), [
          ...known,
          { scheme, group, multiSite: list.multiSite.includes(group), list },
        ]);
      }
    }
  }
  return codes;
};
