import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectNumber,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { expectHours, type Time } from "../cash.js";

/**
 * What overtime adds to the wage, spread over all hours: `(factor - 1) overtime / all hours`.
 *
 * @param input.hours - all hours that are paid in the week, overtime counted
 * @param input.regular - hours at the plain wage; 40 h where it is left out, as United States law has it for a week
 * @param input.factor - 1.5 where it is left out: time and a half. Contracts and states differ
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`
 * Source: definition; Lawn & Landscape prints 10 % for 50 hours and 5.6 % for 45 (2019).
 *
 * @example
 * ```ts
 * import { overtimeShare, quantity } from "ratewright";
 * overtimeShare({ hours: quantity(50, "h") }).in("%"); // => 10
 * overtimeShare({ hours: quantity(38, "h") }).in("%"); // => 0
 * ```
 */
export const overtimeShare = (input: {
  readonly hours: Time;
  readonly regular?: Time;
  readonly factor?: number;
}): Quantity<"1", "none"> => {
  const fields = expectFields(input, ["hours", "regular", "factor"]);
  const { hours, regular, factor } = allOf({
    hours: () => expectHours(fields.hours, "hours", "the paid hours of the week", "positive"),
    regular: () =>
      fields.regular === undefined
        ? 40
        : expectHours(fields.regular, "regular", "hours at the plain wage", "positive"),
    factor: () =>
      fields.factor === undefined ? 1.5 : expectNumber(fields.factor, "factor", { min: 1, max: 3 }),
  });
  if (hours > 168)
    outOfRange(
      "hours",
      described(`${hours} h`),
      { max: 168, unit: "h" },
      "{}: the hours of one person in one week",
    );
  return quantity((100 * (factor - 1) * Math.max(0, hours - regular)) / hours, "%");
};
