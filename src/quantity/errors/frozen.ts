/**
 * A table that nobody can change: the value itself, frozen with all that it holds. For data that more than one
 * call sees; quantities inside are frozen too.
 *
 * @example
 * ```ts
 * import { frozen } from "ratewright";
 * const table = frozen({ sizes: [1, 2] });
 * Object.isFrozen(table.sizes); // => true
 * ```
 */
export const frozen = <const T>(table: T): T => {
  if (typeof table === "object" && table !== null && !Object.isFrozen(table)) {
    Object.freeze(table);
    for (const part of Object.values(table)) frozen(part);
  }
  return table;
};
