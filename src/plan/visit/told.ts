import type { Finding } from "../../quantity/index.js";

/** A value, and what there is to say of it. */
export interface Told<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
  readonly notChecked: readonly string[];
}

/** Several told values as one: the values in a list, the rest in their order. */
export const allTold = <T>(list: readonly Told<T>[]): Told<readonly T[]> => ({
  value: list.map(({ value }) => value),
  findings: list.flatMap(({ findings }) => findings),
  notChecked: list.flatMap(({ notChecked }) => notChecked),
});
