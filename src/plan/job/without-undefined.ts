/** A record without the fields that were left out. */
export const withoutUndefined = <T extends object>(
  record: T,
): { readonly [K in keyof T]?: Exclude<T[K], undefined> } =>
  // Object.fromEntries forgets the names; every field that is there is one of the record.
  Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined)) as {
    readonly [K in keyof T]?: Exclude<T[K], undefined>;
  };
