import { hasOwn } from "./has-own.js";

/** A record without the fields that were left out: those that may be `undefined` may be missing. */
type WithoutUndefined<T> = {
  readonly [K in keyof T as undefined extends T[K] ? never : K]: T[K];
} & { readonly [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined> };

/** The fields of a record that were stated; a field that was left out stays out. */
export const withoutUndefined = <T extends object>(record: T): WithoutUndefined<T> => {
  const stated: Partial<T> = {};
  for (const name in record) {
    if (hasOwn(record, name) && record[name] !== undefined) stated[name] = record[name];
  }
  return stated as unknown as WithoutUndefined<T>;
};
