import { addHours, type Instant, instant } from "../../calendar/index.js";
import { expectFields, expectQuantity, type Quantity } from "../../quantity/index.js";

/**
 * Until when rain would wash a spray off: the end of the application and the hours that its label states.
 * There is no table of such hours here: none could be read, and products of one active differ.
 *
 * @param input.end - when the application ended, with its offset
 * @param input.label - the rainfast time of the label
 * @throws RatewrightError `date`, `range`, `unit/mismatch`, `type`
 *
 * Source: the label; addition of hours.
 *
 * @example
 * ```ts
 * import { quantity, rainfastFrom } from "ratewright";
 * rainfastFrom({ end: "2026-06-03T15:30-05:00", label: quantity(6, "h") }); // => "2026-06-03T21:30-05:00"
 * ```
 */
export const rainfastFrom = (input: {
  readonly end: Instant;
  readonly label: Quantity<"time", "none">;
}): Instant => {
  expectFields(input, ["end", "label"]);
  const wanted = { dimension: "time", of: "none", bound: "non-negative" } as const;
  return addHours(instant(input.end, "end"), expectQuantity(input.label, wanted, "label").in("h"));
};
