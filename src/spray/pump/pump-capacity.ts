import { notShare } from "../../numeric/house.js";
import { dimensionDue } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  inUnit,
  likeQuantity,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
  quantityOf,
  unitSystem,
} from "../../quantity/index.js";

type Flow = Quantity<"volume/time", "none">;

/** The flow that a pump has to give at the working pressure. */
export interface PumpCapacity {
  readonly type: "pump-capacity";
  readonly version: 1;
  readonly boom: Flow;
  /** What goes back to the tank each minute to keep the mix moving. */
  readonly agitation: Flow;
  /** What is added for wear. */
  readonly reserve: Flow;
  readonly total: Flow;
  /** What the pump has beyond the total; negative where it is too small. Left out where no pump was given. */
  readonly spare?: Flow;
  readonly findings: readonly Finding[];
}

/** Flow or volume of a liquid, whatever it is: the pump moves what it is given. */
type Liquid<D extends string> =
  | Quantity<D, "none">
  | Quantity<D, "spray">
  | Quantity<D, "water">
  | Quantity<D, `product:${string}`>;

/**
 * The pump capacity that a sprayer needs: flow to the boom, flow for agitation as a share of the tank per minute, and a reserve
 * for wear.
 *
 * `total = (boom + agitation x tank per minute) (1 + reserve)`, `boom = application volume x speed x swath`
 *
 * Printed for agitation: 2 to 3 % of the tank a minute (Australia). The source adds that the tank then turns over in 15 to
 * 20 minutes, which takes 5 to 7 % a minute. Other sources ask for 5 % and more for powders. Diaphragm pumps lose some 3 % of their flow a year. Both are stated, not assumed: the label
 * and the maker of the tank come first. The flow counts at the working pressure: centrifugal pumps give less as it rises.
 *
 * The flows come in the unit of `boom`; where it is computed, in gal/min or L/min, as the application volume is given. A
 * `pump` that gives less than the total is a finding. Give its flow as it is today: it says nothing of wear.
 *
 * @param input.boom - flow to the boom; or applicationVolume, speed and swath, from which it is computed
 * @param input.agitation - share of the tank that agitation moves in a minute; 0 % for a mechanical agitator
 * @param input.reserve - share added for wear; 20 % is printed
 * @param input.pump - what the pump delivers at the working pressure, where it is to be checked
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
 * const checked = pumpCapacity({
 *   boom: quantity(72, "L/min", "spray"), tank: quantity(6500, "L"), agitation: quantity(3, "%"), reserve: quantity(0, "%"),
 *   pump: quantity(250, "L/min"),
 * });
 * checked.total.in("L/min"); // => 267
 * checked.spare?.in("L/min"); // => -17
 * ```
 */
export const pumpCapacity = (input: {
  readonly boom?: Liquid<"volume/time">;
  readonly applicationVolume?: Liquid<"volume/area">;
  readonly speed?: Quantity<"length/time", "none">;
  readonly swath?: Quantity<"length", "none">;
  readonly tank: Liquid<"volume">;
  readonly agitation: Quantity<"1", "none">;
  readonly reserve: Quantity<"1", "none">;
  readonly pump?: Liquid<"volume/time">;
}): PumpCapacity => {
  const { boom, tank, agitation, reserve, pump } = readPump(input);
  const returned = numberIn(movedPerMinute(tank, agitation, isMetric(boom)), boom.unit);
  const added = ((boom.value + returned) * reserve) / 100;
  const total = likeQuantity(boom, boom.value + returned + added);
  const spare = pump && likeQuantity(boom, numberIn(pump, boom.unit) - total.value);
  return {
    type: "pump-capacity",
    version: 1,
    boom,
    agitation: likeQuantity(boom, returned),
    reserve: likeQuantity(boom, added),
    total,
    ...(spare && { spare }),
    findings: spare && spare.value < -1e-9 * total.value ? [tooSmall(spare)] : [],
  };
};

const isMetric = ({ unit }: { readonly unit: string }): boolean =>
  unitSystem(unit.split("/")[0] as string) === "metric";

const movedPerMinute = (tank: Quantity<"volume", "none">, percent: number, metric: boolean): Flow =>
  metric
    ? quantity((tank.in("L") * percent) / 100, "L/min")
    : quantity((tank.in("gal") * percent) / 100, "gal/min");

const tooSmall = ({ value, unit }: Flow): Finding => ({
  code: "pump/too-small",
  severity: "warning",
  params: { short: -value, unit },
  text: `The pump is ${Number((-value).toPrecision(3))} ${unit} short of what the boom and the agitation take: the mix settles while spraying.`,
});

const fields = [
  "boom",
  "applicationVolume",
  "speed",
  "swath",
  "tank",
  "agitation",
  "reserve",
  "pump",
] as const;

const readPump = (input: unknown) => {
  const given = expectFields(input, fields);
  return allOf({
    boom: () => boomFlow(given),
    tank: () =>
      given.tank === undefined
        ? fail("missing", "tank", undefined, "the volume of the tank")
        : liquid(given.tank, "volume", "tank"),
    agitation: () =>
      notShare(
        share(given.agitation, "agitation", "the share of the tank that is moved in a minute"),
        "agitation",
        { least: 0.5 },
      ),
    reserve: () => notShare(share(given.reserve, "reserve", "a share for wear, 0 % for none"), "reserve"),
    pump: () => (given.pump === undefined ? undefined : liquid(given.pump, "volume/time", "pump")),
  });
};

/** A quantity of a liquid, above zero; what it is of makes no difference to a pump. */
const liquid = <const D extends string>(input: unknown, dimension: D, path: string): Quantity<D, "none"> =>
  expectQuantity<D, "none">(input, { dimension, bound: "positive" }, path);

const parts = ["applicationVolume", "speed", "swath"] as const;

/** The flow of the boom as it is given, or from the application volume, the speed and the width. */
const boomFlow = (given: { readonly [K in (typeof fields)[number]]?: unknown }): Flow => {
  if (given.boom !== undefined) {
    const extra = parts.find((name) => given[name] !== undefined);
    if (extra !== undefined) fail("conflict", extra, given[extra], "nothing besides boom: the flow is given");
    const boom = liquid(given.boom, "volume/time", "boom");
    return quantityOf<"volume/time", "none">(boom.value, boom.unit, "none", "boom");
  }
  const read = <const D extends string>(name: (typeof parts)[number], dimension: D): Quantity<D, "none"> =>
    given[name] === undefined
      ? dimensionDue("missing", name, undefined, dimension, "; or give boom, the flow itself")
      : liquid(given[name], dimension, name);
  const { volume, speed, swath } = allOf({
    volume: () => read("applicationVolume", "volume/area"),
    speed: () => read("speed", "length/time"),
    swath: () => read("swath", "length"),
  });
  const perMinute =
    (numberIn(volume, "gal/acre") * numberIn(speed, "ft/min") * numberIn(swath, "ft")) / 43_560;
  return isMetric(volume) ? inUnit(quantity(perMinute, "gal/min"), "L/min") : quantity(perMinute, "gal/min");
};

const share = (input: unknown, path: string, what: string): number => {
  if (input === undefined) return fail("missing", path, input, what);
  const percent = expectQuantity(input, { dimension: "1", of: "none", bound: "non-negative" }, path);
  return percent.in("%") <= 100 ? percent.in("%") : outOfRange(path, percent, { max: 100, unit: "%" });
};
