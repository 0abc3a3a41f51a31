import { type Checks, checks, expectFields, expectRecord } from "../quantity/index.js";

/**
 * Takes a record; a field that nobody reads is a problem, kept at `problems`, so that it is told beside a field
 * that is missing: the two are often one slip of the pen.
 */
export const recordWith = (
  input: unknown,
  keys: readonly string[],
  problems: Checks,
  path = "shape",
): Readonly<Record<string, unknown>> => {
  const record = expectRecord(input, path, `a record with ${keys.join(", ")}`);
  problems.run(() => expectFields(record, keys, ""));
  return record;
};

/** A field and its reader, which is given the place of the field too. */
export type Field<T> = readonly [name: string, read: (input: unknown, path: string) => T];

/** The two fields of a record, each by its reader; every problem is told. */
export const pairOf = <A, B>(
  input: unknown,
  [one, readOne]: Field<A>,
  [other, readOther]: Field<B>,
): readonly [A, B] => {
  const problems = checks();
  const record = recordWith(input, [one, other], problems, "input");
  const a = problems.run(() => readOne(record[one], one));
  const b = problems.run(() => readOther(record[other], other));
  problems.done();
  return [a as A, b as B];
};
