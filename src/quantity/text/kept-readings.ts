/** So many readings are kept; a list of strangers empties the memory, and never fills it. */
const most = 1000;

/**
 * A memory of what texts were read as: a form and a column say the same few units again and again. It holds what
 * was read without a problem, which depends on nothing but the text and what was expected.
 */
export interface KeptReadings<T> {
  get(text: string, dimension: string | undefined, of: string | undefined): T | undefined;
  keep(text: string, dimension: string | undefined, of: string | undefined, reading: T): T;
}

/** An empty memory. */
export const keptReadings = <T>(): KeptReadings<T> => {
  let size = 0;
  let byWish = new Map<string | undefined, Map<string | undefined, Map<string, T>>>();
  // A column is read for one dimension and one substance: the last table is at hand.
  let last: { dimension: string | undefined; of: string | undefined; byText: Map<string, T> } | undefined;
  return {
    get(text, dimension, of) {
      if (last !== undefined && last.dimension === dimension && last.of === of) return last.byText.get(text);
      const byText = byWish.get(dimension)?.get(of);
      if (byText !== undefined) last = { dimension, of, byText };
      return byText?.get(text);
    },
    keep(text, dimension, of, reading) {
      if (size >= most) [size, byWish, last] = [0, new Map(), undefined];
      const bySubstance = byWish.get(dimension) ?? new Map<string | undefined, Map<string, T>>();
      const byText = bySubstance.get(of) ?? new Map<string, T>();
      byWish.set(dimension, bySubstance);
      bySubstance.set(of, byText);
      byText.set(text, reading);
      size += 1;
      return reading;
    },
  };
};
