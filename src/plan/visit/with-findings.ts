import type { Finding } from "../../quantity/index.js";

/** A value with its findings and with what was not checked. */
export interface WithFindings<T> {
  readonly value: T;
  readonly findings: readonly Finding[];
  readonly notChecked: readonly string[];
}

/** Several of them as one: the values in a list, the rest in their order. */
export const allWithFindings = <T>(list: readonly WithFindings<T>[]): WithFindings<readonly T[]> => ({
  value: list.map(({ value }) => value),
  findings: list.flatMap(({ findings }) => findings),
  notChecked: list.flatMap(({ notChecked }) => notChecked),
});
