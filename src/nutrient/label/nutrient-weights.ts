/**
 * Atomic weights of the elements in nutrient forms, from the table that atomic-weights.ts names. In a file of
 * their own, for every product rate ships them.
 */
export const nutrientWeights = {
  N: 14.007,
  O: 15.999,
  Mg: 24.305,
  Si: 28.085,
  P: 30.974,
  S: 32.06,
  K: 39.098,
  Ca: 40.078,
} as const;
