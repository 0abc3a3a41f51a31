/** A record without the fields that were left out. */
export const withoutUndefined = <T extends object>(
  record: T,
): { readonly [K in keyof T]?: Exclude<T[K], undefined> } => {
  const stated: { -readonly [K in keyof T]?: Exclude<T[K], undefined> } = {};
  for (const name of Object.keys(record) as (keyof T)[]) {
    const value = record[name];
    if (value !== undefined) stated[name] = value as Exclude<T[typeof name], undefined>;
  }
  return stated;
};
