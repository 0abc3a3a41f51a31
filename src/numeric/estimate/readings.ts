import { checks, expectQuantity, fail, type Quantity } from "../../quantity/index.js";
import { anyQuantity, likeWith, numberIn } from "./estimate.js";

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
  if (!Array.isArray(readings)) fail("type", path, readings, "a list of readings");
  if (readings.length < least) {
    const expected = least === 1 ? "at least one reading" : `at least ${least} readings`;
    fail("missing", path, `a list of ${readings.length}`, expected);
  }
  const door = checks();
  let first: Quantity<D, S> | undefined;
  // Not map, which skips the holes of a list.
  const list = Array.from(readings as readonly unknown[], (reading, i) =>
    door.run(() => {
      const q = anyQuantity(reading, `${path}[${i}]`) as unknown as Quantity<D, S>;
      first ??= q;
      const { dimension, of } = first;
      return likeWith(first, numberIn(expectQuantity(q, { dimension, of }, `${path}[${i}]`), first.unit));
    }),
  );
  door.done();
  return list as readonly Quantity<D, S>[];
};
