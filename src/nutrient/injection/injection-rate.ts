import { allOf, expectFields, expectQuantity, ofKind, type Quantity, timesOf } from "../../quantity/index.js";
import { checkedInjector, type Injector } from "./injector.js";

/**
 * The rate at which a liquid has to be injected so that the area that the irrigation covers per time gets
 * its amount.
 *
 * Equation: `q = V * A'`
 *
 * - `q` injection rate, volume per time
 * - `V` liquid per area, zero or more
 * - `A'` area irrigated per time, more than zero: of a set, its area over its run time
 *
 * @param input.application - liquid per area
 * @param input.covered - area per time
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: University of Nebraska-Lincoln CropWatch, "How to determine the chemigation injection pump setting for a
 * center pivot", 2023: 10 gal/acre at 5 acre/h is 50 gal/h.
 *
 * @example
 * ```ts
 * import { injectionRate, quantity } from "ratewright";
 * injectionRate({
 *   application: quantity(12, "gal/acre", "product"),
 *   covered: quantity(2.5, "acre/h"),
 * }).in("gal/h"); // => 30
 * ```
 */
export const injectionRate = <S extends string>(input: {
  readonly application: Quantity<"volume/area", S>;
  readonly covered: Quantity<"area/time", "none">;
}): Quantity<"volume/time", S> => {
  expectFields(input, ["application", "covered"], "input");
  const { liquid, covered } = allOf({
    liquid: () =>
      expectQuantity(input.application, { dimension: "volume/area", bound: "non-negative" }, "application"),
    covered: () =>
      expectQuantity(input.covered, { dimension: "area/time", of: "none", bound: "positive" }, "covered"),
  });
  return ofKind<"volume/time", S>(timesOf(liquid, covered));
};

/**
 * The stock that an injector draws at a flow of irrigation water.
 *
 * Equation: `q = Q / D`
 *
 * - `q` stock per time
 * - `Q` flow behind the injector (final solution), zero or more
 * - `D` volumes of final solution for one of stock: `N` for `1:N`, `N + 1` for `1+N`
 *
 * @throws RatewrightError `range`, `unit/mismatch`, `type`, `conflict`
 *
 * Source: definition of the setting.
 *
 * @example
 * ```ts
 * import { injector, quantity, stockFlow } from "ratewright";
 * stockFlow({ flow: quantity(20, "gal/min"), injector: injector("1:200") }).in("gal/min"); // => 0.1
 * ```
 */
export const stockFlow = (input: {
  readonly flow: Quantity<"volume/time", "none">;
  readonly injector: Injector;
}): Quantity<"volume/time", "none"> => {
  expectFields(input, ["flow", "injector"], "input");
  const { flow, setting } = allOf({
    flow: () =>
      expectQuantity(input.flow, { dimension: "volume/time", of: "none", bound: "non-negative" }, "flow"),
    setting: () => checkedInjector(input.injector, "injector"),
  });
  return flow.dividedBy(setting.dilution);
};
