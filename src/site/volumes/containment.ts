import { described } from "../../quantity/house.js";
import {
  type Citation,
  checks,
  expectList,
  expectOneOf,
  expectQuantity,
  fail,
  frozen,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import { type Area, areaOf, isMetricArea } from "../areas.js";
import { type Length, lengthOf } from "../lengths.js";
import { recordWith } from "../records.js";
import { type Volume, volumeOf } from "../volumes.js";

/** A rule for the size of a containment: how much more than the largest tank it must hold. */
export interface ContainmentRule {
  /** Percent of the largest tank. */
  readonly percent: number;
  readonly when: string;
  readonly source: Citation;
}

const colorado: Citation = /* @__PURE__ */ frozen({
  title: "8 CCR 1206-1, section II, part 13.0 A, Secondary Containment for the Storage of Liquid Pesticides",
  publisher: "State of Colorado, Department of Agriculture",
  where: "13.2",
  url: "https://law.cornell.edu/regulations/colorado/II-Part-13-0-A",
});

/** Rules that were read. The state, the county and the insurer may ask for more. */
export const containmentRules: Readonly<Record<"open 125 %" | "roofed 110 %", ContainmentRule>> =
  /* @__PURE__ */ frozen({
    "open 125 %": { percent: 125, when: "open to rain and snow", source: colorado },
    "roofed 110 %": { percent: 110, when: "under a roof", source: colorado },
  });

const ruleNames = ["open 125 %", "roofed 110 %"] as const;

/** A containment around tanks: what it must hold, and how high its wall is. */
export interface Containment {
  readonly type: "containment";
  readonly version: 1;
  /** The tank whose loss it is built for. */
  readonly largest: Volume;
  /** What is added: by the rule, or the rain on the floor. */
  readonly reserve: Volume;
  /** What other tanks and fixtures of a stated volume take up. */
  readonly displaced: Volume;
  /** The sum: the volume inside of the wall, without what upright tanks on the floor take up. */
  readonly volume: Volume;
  /** Height of the wall, where the floor was given. */
  readonly wall?: Length;
}

/**
 * The volume that a containment around tanks must hold, and the height of its wall.
 *
 * `V = share * largest + displaced`, by a rule ({@link containmentRules}: 125 % open to rain, 110 % roofed) or by
 * a `margin` of your own; or with a design rain `V = largest + rain * floor + displaced`. The wall:
 * `h = V / (floor - footprints)`.
 *
 * - `largest`: what the largest tank holds, or tanks that are joined for good
 * - `displaced`: volume of what else stands in the liquid, below the top of the wall: other tanks that lie, pumps,
 *   stands, pallets
 * - `footprints`: floor that other upright tanks stand on; they take up the whole height. Not that of the largest
 *   tank, which is the one that is lost, and not of tanks lower than the wall: give those as `displaced`
 *
 * Flat floor, upright walls. In gal and ft, or L and m, as `largest` and `floor`. What a state, a county or a label
 * asks for comes first; a permit may need an engineer's seal.
 *
 * @throws RatewrightError `missing` for none of rule, margin and rain, `conflict` for more than one; `infeasible` where
 * the footprints fill the floor; `type`, `unit/mismatch`, `not-finite`, `range`; everything that is not right is reported
 *
 * Source: State of Colorado, 8 CCR 1206-1, II, part 13.0 A; the design rain and the wall: US EPA, SPCC Guidance for
 * Regional Inspectors, figure 4-5.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { containment } from "ratewright/site";
 * const dike = containment({
 *   largest: quantity(20000, "gal"),
 *   margin: quantity(110, "%"),
 *   floor: quantity(900, "ft2"),
 * });
 * dike.volume.in("gal"); // => 22000
 * Number(dike.wall?.in("ft").toFixed(2)); // => 3.27
 * ```
 */
export const containment = (input: {
  readonly largest: Volume;
  readonly rule?: keyof typeof containmentRules;
  /** Share of the largest tank that must be held, 100 % or more. */
  readonly margin?: Quantity<"1", "none">;
  /** Depth of the design rain, such as the 25-year, 24-hour storm of the place. */
  readonly rain?: Length;
  readonly floor?: Area;
  readonly displaced?: readonly Volume[];
  readonly footprints?: readonly Area[];
}): Containment => {
  const problems = checks();
  const keys = ["largest", "rule", "margin", "rain", "floor", "displaced", "footprints"];
  const record = recordWith(input, keys, problems, "input");
  const largest = problems.run(() => volumeOf(record.largest, "largest"));
  const floor = record.floor === undefined ? undefined : problems.run(() => areaOf(record.floor, "floor"));
  const share = problems.run(() => shareOf(record));
  const rain = record.rain === undefined ? undefined : problems.run(() => lengthOf(record.rain, "rain"));
  if (rain !== undefined && record.floor === undefined) {
    problems.run(() => fail("missing", "floor", undefined, "the floor area on which the rain falls"));
  }
  const displaced = problems.run(() =>
    listOf(record.displaced, "displaced", (item, at) => volumeOf(item, at)),
  );
  const footprints = problems.run(() =>
    listOf(record.footprints, "footprints", (item, at) => areaOf(item, at)),
  );
  if (footprints !== undefined && footprints.length > 0 && record.floor === undefined) {
    problems.run(() => fail("missing", "floor", undefined, "the floor area, of which footprints are a part"));
  }
  problems.done();
  const tank = largest as Volume;
  const unit = tank.unit;
  const reserve =
    rain === undefined
      ? tank.value * ((share as number) - 1)
      : numberIn(quantity(rain.in("m") * (floor as Area).in("m2"), "m3"), unit);
  const other = (displaced as readonly Volume[]).reduce((sum, one) => sum + numberIn(one, unit), 0);
  const inTankUnit = (value: number): Volume => quantity(value, unit as "gal");
  const volume = inTankUnit(tank.value + reserve + other);
  return {
    type: "containment",
    version: 1,
    largest: inTankUnit(tank.value),
    reserve: inTankUnit(reserve),
    displaced: inTankUnit(other),
    volume,
    ...(floor === undefined ? {} : { wall: wallOf(volume, floor, footprints as readonly Area[]) }),
  };
};

/** The share of the largest tank by rule or margin; 1 where a rain is given instead. */
const shareOf = (record: Readonly<Record<string, unknown>>): number => {
  const given = ["rule", "margin", "rain"].filter((key) => record[key] !== undefined);
  const [key] = given;
  const expected = `one of rule (${ruleNames.join(", ")}), margin, and rain`;
  if (key === undefined) return fail("missing", "rule", undefined, expected);
  if (given.length > 1) return fail("conflict", key, described(given.join(" and ")), expected);
  if (key === "rain") return 1;
  if (key === "rule") return containmentRules[expectOneOf(record.rule, ruleNames, "rule")].percent / 100;
  const margin = expectQuantity(record.margin, { dimension: "1", of: "none" }, "margin").in("1");
  return margin >= 1 && margin <= 10
    ? margin
    : outOfRange(
        "margin",
        record.margin,
        { min: 100, max: 1000, unit: "%" },
        "{} of the largest tank: 110 %, not 10 %",
      );
};

const mostThings = 1000;

const listOf = <T>(input: unknown, path: string, read: (item: unknown, path: string) => T): readonly T[] => {
  if (input === undefined || (Array.isArray(input) && input.length === 0)) return [];
  const list = expectList(input, path, "part");
  if (list.length > mostThings) outOfRange(path, list, { max: mostThings, count: "parts" });
  const problems = checks();
  const found = list.map((item, i) => problems.run(() => read(item, `${path}[${i}]`)));
  problems.done();
  return found as readonly T[];
};

const wallOf = (volume: Volume, floor: Area, footprints: readonly Area[]): Length => {
  const metric = isMetricArea(floor.unit);
  const [squared, cubed] = metric ? (["m2", "m3"] as const) : (["ft2", "ft3"] as const);
  const free = floor.in(squared) - footprints.reduce((sum, one) => sum + one.in(squared), 0);
  if (free <= 1e-9 * floor.in(squared)) {
    fail(
      "infeasible",
      "footprints",
      described("as much as the floor"),
      "footprints of other tanks on a part of the floor",
    );
  }
  return quantity(volume.in(cubed) / free, metric ? "m" : "ft");
};
