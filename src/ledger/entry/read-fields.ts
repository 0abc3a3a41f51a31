import { described, hasOwn } from "../../quantity/house.js";
import {
  type Checks,
  expectFields,
  expectRecord,
  fail,
  type Reader,
  shown,
  unreadable,
} from "../../quantity/index.js";
import { airReaders, entryReaders, type Readers } from "./entry-readers.js";

/** The place of a field in a record. */
export const placeOf = (path: string, name: string): string => (path === "" ? name : `${path}.${name}`);

/** Reads one field; its what is wrong goes to `problems`. */
const readField = (value: unknown, reader: Reader, place: string, problems: Checks): void => {
  try {
    reader(value, place);
  } catch (error) {
    const strange = unreadable(value, place);
    for (const problem of strange) problems.add(problem);
    if (strange.length > 0) return;
    problems.run(() => {
      throw error;
    });
  }
};

/** Keeps a field. Those that nearly every entry has are named here: a store by a name that varies costs many times as much. */
const keepIn = (seen: Record<string, unknown>, name: string, value: unknown): void => {
  if (name === "id") seen.id = value;
  else if (name === "date") seen.date = value;
  else if (name === "parts") seen.parts = value;
  else if (name === "product") seen.product = value;
  else if (name === "analysis") seen.analysis = value;
  else if (name === "amount") seen.amount = value;
  else if (name === "area") seen.area = value;
  else if (name === "supplies") seen.supplies = value;
  else seen[name] = value;
};

/** Reads each field that is there into `seen`, and says which are unknown or lacking; what is wrong goes to `problems`. */
export const readFields = (
  input: unknown,
  readers: Readers,
  needed: readonly string[],
  path: string,
  problems: Checks,
  seen?: Record<string, unknown>,
  what = "an application",
): Readonly<Record<string, unknown>> | undefined => {
  if (typeof input !== "object" || input === null || Array.isArray(input)) {
    problems.run(() => expectRecord(input, path, what));
    return undefined;
  }
  const record = input as Record<string, unknown>;
  if (typeof record.type === "string" && !readers.has("type") && record.version !== undefined) {
    const got = described(`a record of type ${shown(record.type)}`);
    problems.run(() => fail("type", path, got, "an application: an entry of a ledger"));
    return undefined;
  }
  // Without a list of the names for each entry: a ledger can be large.
  for (const name in record) {
    const value = record[name];
    // What a class does is no field: some tools turn classes into functions, which are enumerated.
    if (typeof value === "function" && !hasOwn(record, name)) continue;
    const reader = readers.get(name);
    if (reader === undefined) {
      problems.run(() => expectFields({ [name]: 0 }, [...readers.keys()], path, what));
    } else if (value !== undefined) {
      readField(value, reader, placeOf(path, name), problems);
      if (seen !== undefined) keepIn(seen, name, value);
    }
  }
  for (const name of needed) {
    if (record[name] === undefined)
      readField(undefined, readers.get(name) as Reader, placeOf(path, name), problems);
  }
  return record;
};

/** Reads the fields of an entry that may lack any of them, each by itself; what is wrong goes to `problems`. */
export const readStatedFields = (input: unknown, path: string, problems: Checks): void => {
  const entry = readFields(input, entryReaders, [], path, problems);
  if (entry?.weather !== undefined)
    readFields(entry.weather, airReaders, [], placeOf(path, "weather"), problems, undefined, "the weather");
};
