import {
  allOf,
  expectFields,
  type Finding,
  fail,
  likeQuantity,
  numberIn,
  type Quantity,
} from "../../quantity/index.js";
import { type Carrier, carried, type Share, share } from "../inputs.js";

/** The flow that boom and agitation take of a pump. */
export interface PumpNeed<S extends string> {
  readonly type: "pump-need";
  readonly version: 1;
  /** What the boom and its nozzles take. */
  readonly boom: Quantity<"volume/time", S>;
  /** What has to go back to the tank each minute to keep the mix moving. */
  readonly agitation: Quantity<"volume/time", S>;
  readonly total: Quantity<"volume/time", S>;
  /** What the pump has beyond that; negative where it is too small. Left out where no pump was given. */
  readonly spare?: Quantity<"volume/time", S>;
  readonly findings: readonly Finding[];
}

/**
 * What a pump has to deliver: `total = boom + a tank`, with `a` the share of the tank that goes back through the agitator
 * each minute. A published guide wants 2 to 3 % of the tank per minute; other sources print other shares, and heavy
 * suspensions take more: there is no default.
 * Pumps lose capacity with age (some 3 % a year for diaphragm pumps, by the same guide), so give `pump` as it is today.
 *
 * @param input - `boom`, the flow of all nozzles; `tank`, its volume; `perMinute`, the share of the tank that is moved
 *   each minute, above 0 and at most 100 %; `pump`, what it delivers at the working pressure, if it is to be checked
 * @throws RatewrightError with every problem: `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`
 * Source: GRDC, GrowNotes Spray Application Manual, video on pump capacity (2 to 3 % of the tank per minute; 6,500 L
 * takes about 200 L/min).
 *
 * @example
 * ```ts
 * import { pumpNeed, quantity } from "ratewright";
 * const need = pumpNeed({
 *   boom: quantity(72, "L/min", "spray"),
 *   tank: quantity(6500, "L", "spray"),
 *   perMinute: quantity(3, "%"),
 *   pump: quantity(250, "L/min", "spray"),
 * });
 * need.agitation.in("L/min"); // => 195
 * need.total.in("L/min"); // => 267
 * need.spare?.in("L/min"); // => -17
 * ```
 */
export const pumpNeed = <S extends Carrier>(input: {
  readonly boom: Quantity<"volume/time", S>;
  readonly tank: Quantity<"volume", NoInfer<S>>;
  readonly perMinute: Share;
  readonly pump?: Quantity<"volume/time", NoInfer<S>>;
}): PumpNeed<S> => {
  const given = expectFields(input, ["boom", "tank", "perMinute", "pump"]);
  const { boom, tank, perMinute, pump } = allOf({
    boom: () => carried(input.boom, "boom", "volume/time"),
    tank: () => carried(input.tank as Quantity<"volume", S>, "tank", "volume"),
    perMinute: () => share(given.perMinute, "perMinute", 1).in("%"),
    pump: () =>
      given.pump === undefined
        ? undefined
        : carried(input.pump as Quantity<"volume/time", S>, "pump", "volume/time"),
  });
  for (const [path, q] of [["tank", tank] as const, ["pump", pump] as const]) {
    if (q !== undefined && q.of !== boom.of)
      fail("substance/mismatch", path, q, `a quantity of ${boom.of}, as the boom`);
  }
  const liters = (tank.in("L") * perMinute) / 100;
  const agitation = (liters * boom.value) / numberIn(boom, "L/min");
  const total = boom.value + agitation;
  const spare = pump === undefined ? undefined : numberIn(pump, boom.unit) - total;
  return {
    type: "pump-need",
    version: 1,
    boom,
    agitation: likeQuantity(boom, agitation),
    total: likeQuantity(boom, total),
    ...(spare === undefined ? {} : { spare: likeQuantity(boom, spare) }),
    findings:
      spare === undefined || spare >= 0
        ? []
        : [
            {
              code: "pump/too-small",
              severity: "warning",
              params: { short: -spare, unit: boom.unit },
              text: `The pump is ${Number((-spare).toPrecision(3))} ${boom.unit} short of what the boom and the agitation take: the mix settles while spraying.`,
            },
          ],
  };
};
