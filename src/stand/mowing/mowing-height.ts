import { exceeds } from "../../numeric/index.js";
import {
  checks,
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  type Quantity,
  quantity,
  shown,
} from "../../quantity/index.js";

type Length = Quantity<"length", "none">;

/** Takes a height of cut and a share, and gives the growth between two mowings in the unit of the height. */
export const growthFor = (input: {
  readonly cut: Length;
  readonly share?: number;
}): { cut: number; growth: number; unit: string } => {
  const door = checks();
  const height = door.run(() =>
    expectQuantity(input.cut, { dimension: "length", of: "none", bound: "positive" }, "cut"),
  );
  const given = input.share;
  const part =
    given === undefined ? undefined : door.run(() => expectNumber(given, "share", { above: 0, below: 1 }));
  door.done();
  const cut = height as Length;
  // A share of one third is half the height, without the rounding of 1/3.
  if (given === undefined) return { cut: cut.value, growth: cut.value / 2, unit: cut.unit };
  const share = part as number;
  return { cut: cut.value, growth: (cut.value * share) / (1 - share), unit: cut.unit };
};

const inUnit = (value: number, unit: string): Length => quantity(value, unit as "in");

/**
 * The height at which to mow so that no more than a third of the leaf comes off:
 * `H = h / (1 - s)`, with `h` the height of cut and `s` the share, one third: `H = 1.5 h`.
 *
 * A misprint to beware of: grass that has grown a third ABOVE its height of cut loses only a quarter.
 *
 * @param input.cut - `h`, height of cut, more than zero
 * @param input.share - `s`, between 0 and 1; one third where it is left out
 * @throws RatewrightError `range`, `unit/mismatch`, `not-finite`, `type`
 * Source: Iowa State University Extension, "How often should I mow my lawn?" (3 in: 4 1/2 in).
 *
 * @example
 * ```ts
 * import { mowAtHeight, quantity } from "ratewright";
 * mowAtHeight({ cut: quantity(3, "in") }).in("in"); // => 4.5
 * ```
 */
export const mowAtHeight = (input: { readonly cut: Length; readonly share?: number }): Length => {
  expectRecord(input, "input");
  const { cut, growth, unit } = growthFor(input);
  return inUnit(cut + growth, unit);
};

/**
 * How much the grass may grow between two mowings by the one-third rule, `G = h s / (1 - s)`: half the
 * height of cut. Low cuts have to be mown more often: at twice the height there is twice the time.
 *
 * @param input.cut - `h`, height of cut, more than zero
 * @param input.share - `s`, between 0 and 1; one third where it is left out
 * @throws RatewrightError `range`, `unit/mismatch`, `not-finite`, `type`
 * Source: Cornell University, "The one-third rule" (1 1/2 in: 3/4 in; 3 in: 1 1/2 in).
 *
 * @example
 * ```ts
 * import { growthBetweenMowings, quantity } from "ratewright";
 * growthBetweenMowings({ cut: quantity(1.5, "in") }).in("in"); // => 0.75
 * ```
 */
export const growthBetweenMowings = (input: { readonly cut: Length; readonly share?: number }): Length => {
  expectRecord(input, "input");
  const { growth, unit } = growthFor(input);
  return inUnit(growth, unit);
};

/**
 * The share of the leaf that a mowing takes, `s = (H - h) / H`.
 *
 * @param input.standing - `H`, how high the grass stands; not less than the height of cut
 * @param input.cut - `h`, height of cut, more than zero
 * @returns percent
 * @throws RatewrightError `range` where the grass is lower than the cut; `unit/mismatch`, `type`
 *
 * @example
 * ```ts
 * import { leafRemoved, quantity } from "ratewright";
 * leafRemoved({ standing: quantity(4, "in"), cut: quantity(3, "in") }).in("%"); // => 25
 * ```
 */
export const leafRemoved = (input: {
  readonly standing: Length;
  readonly cut: Length;
}): Quantity<"1", "none"> => {
  expectRecord(input, "input");
  const wanted = { dimension: "length", of: "none", bound: "positive" } as const;
  const door = checks();
  const tall = door.run(() => expectQuantity(input.standing, wanted, "standing"));
  const low = door.run(() => expectQuantity(input.cut, wanted, "cut"));
  door.done();
  const standing = tall as Length;
  const cut = (low as Length).in(standing.unit as "in");
  // 7.62 cm and 3 in are one height, whatever the last digit says
  if (exceeds(cut, standing.value)) {
    fail("range", "standing", standing, `not less than the cut, which is ${shown(input.cut)}`);
  }
  return quantity((100 * Math.max(0, standing.value - cut)) / standing.value, "%");
};
