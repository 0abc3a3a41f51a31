import {
  checks,
  expectNumber,
  expectQuantity,
  expectText,
  likeQuantity,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";
import { expectItems } from "../number/numbers.js";
import { anyQuantity } from "./estimate.js";

/**
 * Takes a list of readings of one kind, brought to the unit of the first, or throws with every bad one by
 * its index: what a formula that takes catches, times or weights does at its door. A reading that is not
 * there is an error and never skipped. A temperature is no reading, for its zero means nothing.
 *
 * @param path - the name of the argument in problems
 * @param least - how many readings there must be
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * @example
 * ```ts
 * import { expectReadings, quantity } from "ratewright";
 * const caught = expectReadings([quantity(1, "qt", "water"), quantity(1, "pt", "water")], "catches", 2);
 * caught.map((each) => each.in("qt")); // => [1, 0.5]
 * expectReadings([quantity(1, "qt", "water")], "catches", 2); // => throws missing
 * ```
 */
export const expectReadings = <D extends string, S extends string>(
  readings: readonly Quantity<D, S>[],
  path: string,
  least: number,
): readonly Quantity<D, S>[] => {
  const at = expectText(path, "path", "how an error names the readings");
  const items = expectItems(readings, at, expectNumber(least, "least", { min: 0 }), "reading");
  const problems = checks();
  let first: Quantity<D, S> | undefined;
  const list = items.map((reading, i) =>
    problems.run(() => {
      const q = anyQuantity<D, S>(reading, `${at}[${i}]`);
      first ??= q;
      const { dimension, of } = first;
      return likeQuantity(first, numberIn(expectQuantity(q, { dimension, of }, `${at}[${i}]`), first.unit));
    }),
  );
  problems.done();
  return list.flatMap((reading) => reading ?? []);
};
