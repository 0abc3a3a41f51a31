/*
 * Atomic weights of the elements that labels state as oxides, from the table that atomic-weights.ts names. In a file
 * of their own, for every product rate ships them.
 */
export const oxygenWeight = 15.999;
export const magnesiumWeight = 24.305;
export const siliconWeight = 28.085;
export const phosphorusWeight = 30.974;
export const sulfurWeight = 32.06;
export const potassiumWeight = 39.098;
export const calciumWeight = 40.078;

/** The element of each oxide, and its mass for one atom of oxygen. */
const oxides: Readonly<Record<string, readonly [string, number] | undefined>> = {
  // A record without a prototype, so that "constructor" is no oxide; the type of a record has no word for it.
  __proto__: null as never,
  P2O5: ["P", (2 * phosphorusWeight) / 5],
  K2O: ["K", 2 * potassiumWeight],
  CaO: ["Ca", calciumWeight],
  MgO: ["Mg", magnesiumWeight],
  SiO2: ["Si", siliconWeight / 2],
  SO3: ["S", sulfurWeight / 3],
  SO4: ["S", sulfurWeight / 4],
};

/** The mass of an element that stands alone, for one atom of oxygen: endless, as far as numbers go. */
const noOxygen = 1e99;

/** How much of one form of a nutrient is in one part of another, by mass, for elements and their oxides. */
export const oxideFactor = (from: string, to: string): number | undefined => {
  const [a, own] = oxides[from] ?? [from, noOxygen];
  const [b, other] = oxides[to] ?? [to, noOxygen];
  return a === b ? (1 + oxygenWeight / other) / (1 + oxygenWeight / own) : undefined;
};
