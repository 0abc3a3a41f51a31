import {
  allOf,
  type Citation,
  expectAmount,
  expectFields,
  expectNumber,
  expectOneOf,
  type Finding,
  fail,
  frozen,
  type Quantity,
  quantity,
  type Volume,
} from "../../quantity/index.js";
import { type Area, areaAt, given, isMetric } from "../read.js";

type PerArea = Quantity<"volume/area", "none">;

/** What one trade or region calls a bushel of sprigs. */
export interface SprigBushel {
  readonly name: string;
  /** The smaller size that the source prints. */
  readonly low: Volume;
  /** The larger size; the same where the source prints one. */
  readonly high: Volume;
  readonly source: Citation;
}

const usga: Citation = /* @__PURE__ */ frozen({
  title: "Converting to bermudagrass fairways",
  publisher: "USGA Green Section Record 60(14)",
  where: "Recommended sprig rate",
  url: "https://usga.org/content/usga/home-page/course-care/green-section-record/60/14/converting-to-bermudagrass-fairways.html",
});
const handbook: Citation = /* @__PURE__ */ frozen({ title: "Handbook 44, appendix C", publisher: "NIST" });
const contractor: Citation = /* @__PURE__ */ frozen({
  title: "Sprigs",
  publisher: "page of a planting contractor",
  url: "https://modernturf.com/our_sod_cuts/sprigs/",
});
const ft3 = (value: number): Volume => quantity(value, "ft3");
const bushel = (name: string, low: Volume, high: Volume, source: Citation): SprigBushel => ({
  name,
  low,
  high,
  source,
});

/**
 * What is called a bushel of sprigs. The largest is four times the smallest, so a rate in bushels says
 * nothing until the bushel is named.
 */
export const sprigBushels: readonly SprigBushel[] = /* @__PURE__ */ frozen([
  /* @__PURE__ */ bushel(
    "US",
    /* @__PURE__ */ quantity(1, "bu"),
    /* @__PURE__ */ quantity(1, "bu"),
    handbook,
  ),
  /* @__PURE__ */ bushel("Georgia", /* @__PURE__ */ ft3(0.32), /* @__PURE__ */ ft3(0.32), contractor),
  /* @__PURE__ */ bushel("Georgia", /* @__PURE__ */ ft3(0.4), /* @__PURE__ */ ft3(0.4), usga),
  /* @__PURE__ */ bushel("Texas", /* @__PURE__ */ ft3(0.4), /* @__PURE__ */ ft3(1.23), usga),
]);

/**
 * The rows of `sprigBushels` for a name, one from each source that prints it.
 *
 * @throws RatewrightError `missing`, `type` for a name that is not in the table, with those that are
 *
 * @example
 * ```ts
 * import { sprigBushelsOf } from "ratewright";
 * sprigBushelsOf("Georgia").map(({ low }) => low.in("ft3")); // => [0.32, 0.4]
 * ```
 */
export const sprigBushelsOf = (name: string): SprigBushel[] => {
  const names = sprigBushels.map((row) => row.name);
  const wanted = expectOneOf(name, [...new Set(names)], "name");
  return sprigBushels.filter((row) => row.name === wanted);
};

/** Sprigs or stolons for an area. */
export interface SprigOrder {
  readonly type: "sprig-order";
  readonly version: 1;
  /** Sprigs on the ground, as a layer. */
  readonly rate: PerArea;
  readonly volume: Volume;
  /** Bushels of the stated size, not rounded. */
  readonly bushels: number;
  readonly bushel: Volume;
  readonly findings: readonly Finding[];
}

/**
 * Sprigs or stolons for an area: volume and bushels, with the size of the bushel stated. `V = A R b`.
 *
 * A bushel of sprigs is 0.32 to 1.25 ft3, by region and by trade (see `sprigBushels`): the size is asked
 * for and a finding repeats it. Ask the supplier for the size of the bushel that is sold.
 *
 * @param input.area - `A`, more than zero
 * @param input.rate - `R`, bushels as a count per area (`count/acre`, `count/1000 ft2`), or a volume per area
 * @param input.bushel - `b`, volume of one bushel: `quantity(1, "bu")` is the US bushel
 * @throws RatewrightError `conflict` for a rate in the unit `bu`, which is the US bushel of 1.244 ft3, beside a bushel of
 *   another size; `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`; all that are found
 * Source: USGA Green Section Record 60(14) and planting contractors, for the sizes; arithmetic.
 *
 * @example
 * ```ts
 * import { quantity, sprigsFor } from "ratewright";
 * const order = sprigsFor({
 *   area: quantity(2, "acre"), rate: quantity(400, "count/acre"), bushel: quantity(0.4, "ft3"),
 * });
 * order.bushels; // => 800
 * order.volume.in("ft3"); // => 320
 * ```
 */
export const sprigsFor = (input: {
  readonly area: Area;
  readonly rate: Quantity<"count/area", "none"> | PerArea;
  readonly bushel: Volume;
}): SprigOrder => {
  const record = expectFields(input, ["area", "rate", "bushel"]);
  const { area, rate, bushel } = allOf({
    area: () => areaAt(record.area, "area"),
    rate: () => sprigRateAt(record.rate),
    bushel: () => given(record.bushel, "bushel", "volume", "none"),
  });
  expectOneBushel(rate, bushel);
  const bushels =
    rate.by === "count" ? rate.of.times(area).in("count") : rate.of.times(area).in("L") / bushel.in("L");
  const volume = rate.by === "count" ? bushel.times(bushels) : rate.of.times(area);
  const metric = isMetric(area.unit);
  const [depth, whole] = metric ? (["L/m2", "m3"] as const) : (["ft3/1000 ft2", "ft3"] as const);
  return {
    type: "sprig-order",
    version: 1,
    rate: quantity(volume.per(area).in(depth), depth),
    volume: quantity(volume.in(whole), whole),
    bushels,
    bushel: quantity(bushel.value, bushel.unit as "bu"),
    findings: [
      {
        code: "sprigs/bushel-size",
        severity: "caution",
        path: "bushel",
        params: { bushel: bushel.toString() },
        text: `Counted in bushels of ${bushel.toString()}. What is sold as a bushel of sprigs runs from 0.32 to 1.25 ft3: ask the supplier.`,
        source: usga,
      },
    ],
  };
};

type SprigRate =
  | { readonly by: "count"; readonly of: Quantity<"count/area", "none"> }
  | { readonly by: "volume"; readonly of: PerArea };

/**
 * The unit `bu` has a size of its own: ten of it are 31 bushels of 0.4 ft3. What is sold as 1.23 to 1.25 ft3 is the US
 * bushel, rounded.
 */
const expectOneBushel = ({ of, by }: SprigRate, bushel: Volume): void => {
  if (by === "count" || !/^bu\b/.test(of.unit)) return;
  if (Math.abs(bushel.in("bu") - 1) < 0.02) return;
  const count = `${of.value} ${of.unit.replace(/^bu/, "count")}`;
  fail("conflict", "rate", of, `bushels of ${bushel.toString()} as a count: the unit bu is 1.244 ft3`, {
    suggestion: count,
  });
};

const sprigRateAt = (input: unknown): SprigRate => {
  if (input === undefined)
    return fail("missing", "rate", input, "bushels per area, such as 400 count/acre, or a volume per area");
  const dimensions = ["count/area", "volume/area"] as const;
  const { dimension } = expectAmount(input, { dimensions, of: "none", bound: "positive" }, "rate");
  return dimension === "count/area"
    ? { by: "count", of: given(input, "rate", "count/area", "none") }
    : { by: "volume", of: given(input, "rate", "volume/area", "none") };
};

/**
 * The turf to shred or to harvest for sprigs or stolons: `a = A / e`, with `e` how many times its own area
 * a nursery plants. The figure is the caller's, with its source; Florida's sod production bulletin of 1990
 * prints some 15 for bermudagrass and zoysiagrass, some 10 for centipedegrass and St. Augustinegrass.
 *
 * @param input.area - `A`, ground to plant
 * @param input.expansion - `e`, area planted by area harvested, more than zero
 * @throws RatewrightError `missing`, `range`, `not-finite`, `unit/mismatch`, `type`; all that are found
 * Source: University of Florida, sod production bulletin (copy of 1990), for the printed figures.
 *
 * @example
 * ```ts
 * import { nurseryArea, quantity } from "ratewright";
 * nurseryArea({ area: quantity(15, "acre"), expansion: 15 }).in("acre"); // => 1
 * ```
 */
export const nurseryArea = (input: { readonly area: Area; readonly expansion: number }): Area => {
  const record = expectFields(input, ["area", "expansion"]);
  const { area, expansion } = allOf({
    area: () => areaAt(record.area, "area"),
    expansion: () =>
      record.expansion === undefined
        ? fail("missing", "expansion", record.expansion, "area planted by area harvested")
        : expectNumber(record.expansion, "expansion", { above: 0 }),
  });
  return quantity(area.value / expansion, area.unit as "acre");
};
