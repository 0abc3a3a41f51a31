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
  // A list of what is still to be frozen: a table may be deeper than a program can call itself.
  const open: unknown[] = [table];
  while (open.length > 0) {
    const part = open.pop();
    // What is no object counts as frozen; a function is not the table's own.
    if (Object.isFrozen(part) || typeof part === "function") continue;
    Object.freeze(part);
    for (const inner of Object.values(part as object)) open.push(inner);
  }
  return table;
};
