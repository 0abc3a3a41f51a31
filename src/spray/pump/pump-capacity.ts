import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  numberIn,
  type Quantity,
  quantity,
} from "../../quantity/index.js";

/** The flow that a pump has to give at the working pressure. */
export interface PumpCapacity {
  readonly type: "pump-capacity";
  readonly version: 1;
  readonly boom: Quantity<"volume/time", "none">;
  readonly agitation: Quantity<"volume/time", "none">;
  /** What is added for wear. */
  readonly reserve: Quantity<"volume/time", "none">;
  readonly total: Quantity<"volume/time", "none">;
}

const share = (input: unknown, path: string, what: string): number => {
  if (input === undefined) return fail("missing", path, input, what);
  const percent = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, path);
  return percent.in("%") <= 100 ? percent.in("%") : fail("range", path, percent, "100 % or less");
};

const flow = (input: unknown): number =>
  expectQuantity(input, { dimension: "volume/time", bound: "positive" }, "boom").in("gal/min");

/** The flow of the boom from the application volume, the speed and the width. */
const flowOf = (fields: { readonly [K in "applicationVolume" | "speed" | "swath"]?: unknown }): number => {
  const read = (name: keyof typeof fields, dimension: string, unit: string): number =>
    fields[name] === undefined
      ? fail("missing", name, undefined, `a quantity of ${dimension}; or give boom, the flow itself`)
      : numberIn(expectQuantity(fields[name], { dimension, bound: "positive" }, name), unit);
  const { volume, speed, swath } = allOf({
    volume: () => read("applicationVolume", "volume/area", "gal/acre"),
    speed: () => read("speed", "length/time", "ft/min"),
    swath: () => read("swath", "length", "ft"),
  });
  return (volume * speed * swath) / 43_560;
};

/**
 * The pump capacity that a sprayer needs: flow to the boom, flow for agitation as a share of the tank per minute, and a reserve
 * for wear.
 *
 * `total = (boom + agitation x tank per minute) (1 + reserve)`, `boom = application volume x speed x swath`
 *
 * Printed for agitation: 2 to 3 % of the tank a minute, so that it turns over in 15 to 20 minutes (Australia); other sources
 * ask for 5 % and more for powders. Diaphragm pumps lose some 3 % of their flow a year. Both are stated, not assumed: the label
 * and the maker of the tank come first. The flow counts at the working pressure: centrifugal pumps give less as it rises.
 *
 * @param input.boom - flow to the boom; or applicationVolume, speed and swath, from which it is computed
 * @param input.agitation - share of the tank that agitation moves in a minute; 0 % for a mechanical agitator
 * @param input.reserve - share added for wear; 20 % is printed
 * @throws RatewrightError `conflict` for a flow and the figures to compute it together; `missing`, `range`, `unit/mismatch`,
 * `type`
 * Source: Grains Research and Development Corporation, spray application manual (2 to 3 % a minute, 6,500 L, 3 % a year);
 * University of Missouri, Integrated Pest and Crop Management 15(5), 2005 (flow to the boom); Virginia Cooperative Extension
 * 442-452 (20 %, from an excerpt).
 *
 * @example
 * ```ts
 * import { pumpCapacity, quantity } from "ratewright";
 * const pump = pumpCapacity({
 *   applicationVolume: quantity(20, "gal/acre", "spray"), speed: quantity(8, "mi/h"), swath: quantity(60, "ft"),
 *   tank: quantity(500, "gal"), agitation: quantity(3, "%"), reserve: quantity(20, "%"),
 * });
 * Number(pump.boom.in("gal/min").toFixed(1)); // => 19.4
 * Number(pump.total.in("gal/min").toFixed(1)); // => 41.3
 * ```
 */
export const pumpCapacity = (input: {
  readonly boom?: Quantity<"volume/time", "none"> | Quantity<"volume/time", "spray">;
  readonly applicationVolume?: Quantity<"volume/area", "spray">;
  readonly speed?: Quantity<"length/time", "none">;
  readonly swath?: Quantity<"length", "none">;
  readonly tank: Quantity<"volume", "none"> | Quantity<"volume", "spray">;
  readonly agitation: Quantity<"1", "none">;
  readonly reserve: Quantity<"1", "none">;
}): PumpCapacity => {
  const known = ["boom", "applicationVolume", "speed", "swath", "tank", "agitation", "reserve"] as const;
  const fields = expectFields(input, known);
  const { boom, tank, agitation, reserve } = allOf({
    boom: () => {
      if (fields.boom === undefined) return flowOf(fields);
      const extra = (["applicationVolume", "speed", "swath"] as const).find(
        (name) => fields[name] !== undefined,
      );
      return extra === undefined
        ? flow(fields.boom)
        : fail("conflict", extra, fields[extra], "nothing beside boom: the flow is given");
    },
    tank: () =>
      fields.tank === undefined
        ? fail("missing", "tank", undefined, "the volume of the tank")
        : expectQuantity(fields.tank, { dimension: "volume", bound: "positive" }, "tank").in("gal"),
    agitation: () => share(fields.agitation, "agitation", "the share of the tank that is moved in a minute"),
    reserve: () => share(fields.reserve, "reserve", "a share for wear, 0 % for none"),
  });
  const moved = (tank * agitation) / 100;
  const added = ((boom + moved) * reserve) / 100;
  const perMinute = (value: number): Quantity<"volume/time", "none"> => quantity(value, "gal/min");
  return {
    type: "pump-capacity",
    version: 1,
    boom: perMinute(boom),
    agitation: perMinute(moved),
    reserve: perMinute(added),
    total: perMinute(boom + moved + added),
  };
};
