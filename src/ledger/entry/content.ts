/**
 * Percent by weight of a nutrient in the products, the highest that is stated, and whether all of them state
 * it; `undefined` where none does.
 */
export type Content = (of: string) => { readonly percent: number; readonly all: boolean } | undefined;
