import {
  allOf,
  expectFields,
  likeQuantity,
  outOfRange,
  type Quantity,
  quantity,
  toldBy,
} from "../../quantity/index.js";
import { expectCash, expectShare, type Money, type Share } from "../cash.js";

/** Margin is a share of the price; at 100 % nothing would pay for the cost. */
const marginBelow = 100;

/** Takes a margin in percent. */
export const expectMargin = (input: unknown, path: string): number => {
  const percent = expectShare(input, path, "the margin as a share of the price");
  return percent < marginBelow
    ? percent
    : outOfRange(
        path,
        input,
        { below: marginBelow, unit: "%" },
        "a margin of {}: it is a share of the price. A share of the cost is a markup: priceAtMarkup, or { markup } as the aim",
      );
};

/**
 * The price that leaves a margin: `price = cost / (1 - margin)`. The margin is the profit as a share of the price. Adding
 * the same percent to the cost gives less: that is a markup ({@link priceAtMarkup}).
 *
 * @param input.cost - all that has to be earned: the break-even point
 * @param input.margin - profit as a share of the price, below 100 %
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 * Source: definition of the net profit margin, as Lawn & Landscape uses it (January 2021).
 *
 * @example
 * ```ts
 * import { money, priceAtMargin, priceAtMarkup, quantity } from "ratewright";
 * const cost = money(90, "USD");
 * priceAtMargin({ cost, margin: quantity(10, "%") }).value; // => 100
 * priceAtMarkup({ cost, markup: quantity(10, "%") }).value; // => 99
 * ```
 */
export const priceAtMargin = <C extends string>(input: {
  readonly cost: Money<C>;
  readonly margin: Share;
}): Money<C> => {
  const fields = expectFields(input, ["cost", "margin"]);
  const { cost, margin } = allOf({
    cost: () => expectCash(fields.cost, "cost", { what: "the cost" }),
    margin: () => expectMargin(fields.margin, "margin"),
  });
  return toldBy({ like: "cost" }, () => likeQuantity(input.cost, (cost.value * 100) / (100 - margin)));
};

/**
 * The price with a markup: `price = cost (1 + markup)`. The markup is the profit as a share of the cost; the same percent as a
 * margin asks for a higher price ({@link priceAtMargin}).
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 * Source: definition.
 *
 * @example
 * ```ts
 * import { money, priceAtMarkup, quantity } from "ratewright";
 * priceAtMarkup({ cost: money(900, "USD"), markup: quantity(25, "%") }).value; // => 1125
 * ```
 */
export const priceAtMarkup = <C extends string>(input: {
  readonly cost: Money<C>;
  readonly markup: Share;
}): Money<C> => {
  const fields = expectFields(input, ["cost", "markup"]);
  const { cost, markup } = allOf({
    cost: () => expectCash(fields.cost, "cost", { what: "the cost" }),
    markup: () => expectShare(fields.markup, "markup", "the markup as a share of the cost"),
  });
  return toldBy({ like: "cost" }, () => likeQuantity(input.cost, (cost.value * (100 + markup)) / 100));
};

/**
 * The markup that gives the same price as a margin: `markup = margin / (1 - margin)`.
 *
 * @throws RatewrightError `range` for a margin of 100 % or more; `missing`, `unit/mismatch`, `type`
 * Source: definition; Lawn & Landscape prints 10 % as 11.11 % (January 2021).
 *
 * @example
 * ```ts
 * import { markupOfMargin, quantity } from "ratewright";
 * markupOfMargin(quantity(20, "%")).in("%"); // => 25
 * ```
 */
export const markupOfMargin = (margin: Share): Quantity<"1", "none"> => {
  const percent = expectMargin(margin, "margin");
  return quantity((100 * percent) / (100 - percent), "%");
};

/**
 * The margin that a markup leaves: `margin = markup / (1 + markup)`.
 *
 * @throws RatewrightError `range`, `missing`, `unit/mismatch`, `type`
 * Source: definition.
 *
 * @example
 * ```ts
 * import { marginOfMarkup, quantity } from "ratewright";
 * marginOfMarkup(quantity(25, "%")).in("%"); // => 20
 * ```
 */
export const marginOfMarkup = (markup: Share): Quantity<"1", "none"> => {
  const percent = expectShare(markup, "markup", "the markup as a share of the cost");
  return quantity((100 * percent) / (100 + percent), "%");
};
