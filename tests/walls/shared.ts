// What a caller could change for others by writing into what it was given.

const isOpen = (value: object): boolean =>
  ArrayBuffer.isView(value) || value instanceof Map || value instanceof Set || !Object.isFrozen(value);

/** The places below an object that can be written into: lists, records, quantities, and what holds entries of its own. */
export const openPlaces = (value: unknown, at: string, seen: Set<unknown> = new Set()): readonly string[] => {
  if (typeof value !== "object" || value === null || seen.has(value)) return [];
  seen.add(value);
  return [
    ...(isOpen(value) ? [at] : []),
    ...Object.entries(value).flatMap(([key, inner]) => openPlaces(inner, `${at}.${key}`, seen)),
  ];
};

/** Writes over every number and text below a value, as far as it lets itself be written over. */
export const writeOver = (value: unknown, seen: Set<unknown> = new Set()): void => {
  if (typeof value !== "object" || value === null || seen.has(value)) return;
  seen.add(value);
  if (ArrayBuffer.isView(value)) {
    if ("fill" in value) (value as Float64Array).fill(7777);
    return;
  }
  if (value instanceof Map || value instanceof Set) {
    value.clear();
    return;
  }
  for (const [name, inner] of Object.entries(value)) {
    writeOver(inner, seen);
    if (typeof inner === "number" || typeof inner === "string")
      Reflect.set(value, name, typeof inner === "number" ? 7777 : "written over");
  }
  if (Array.isArray(value) && Object.isExtensible(value)) value.push("one more");
};
