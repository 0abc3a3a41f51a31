import { hasOwn } from "../quantity/house.js";
import { expectFields, expectRecord } from "../quantity/index.js";

/** A quantity as a job file states it: a `Quantity` fits, and so does what JSON left of one. */
export interface Stated {
  readonly value: number;
  readonly unit: string;
  readonly of?: string;
}

/** What a quantity has, `dimension` where it is the object itself and not what JSON left of it. */
const fields = ["value", "unit", "of", "dimension"] as const;

/**
 * Takes a record as a quantity may be stated, or throws: a field that nobody knows would be lost on the way
 * through a table.
 */
export const expectStated = (
  input: unknown,
  path: string,
  expected: string,
): { readonly value?: unknown; readonly unit?: unknown; readonly of?: unknown } => {
  const record = expectRecord(input, path, expected);
  // Without a list of the names for each quantity: a ledger can be large.
  for (const name in record) {
    if (!(fields as readonly string[]).includes(name) && hasOwn(record, name))
      expectFields(record, fields, path, expected);
  }
  return record;
};
