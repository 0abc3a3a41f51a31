import { counted, described } from "../../quantity/house.js";
import { checks, expectOneOf, fail, outOfRange, Quantity, quantity } from "../../quantity/index.js";
import { type Area, areaOf, isMetricArea } from "../areas.js";
import { type Length, lengthList, lengthOf } from "../lengths.js";
import { pairOf, recordWith } from "../records.js";
import type { Volume } from "../volumes.js";

/**
 * The volume of a pond from its surface and its mean depth.
 *
 * `V = area * depth`; in acre-ft for an area in US customary units (acres times feet), in m3 for a metric one. Both
 * above zero. The mean depth comes from soundings ({@link meanDepth}); a rule of thumb for a pond of even slope takes
 * half of the greatest depth.
 *
 * @throws RatewrightError `missing`, `type`, `unit/mismatch`, `substance/mismatch`, `not-finite`, `range`; both are
 * reported
 *
 * Source: Texas Parks and Wildlife, "Estimating the Size of Your Pond"; half of the greatest depth: Virginia
 * Cooperative Extension, "Weed control in ponds and lakes", 1981.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { pondVolume } from "ratewright/site";
 * const pond = pondVolume({ area: quantity(2.44, "acre"), meanDepth: quantity(3.3, "ft") });
 * Number(pond.in("acre-ft").toFixed(2)); // => 8.05
 * Math.round(pond.in("gal") / 1000); // => 2624
 * ```
 */
export const pondVolume = (pond: { readonly area: Area; readonly meanDepth: Length }): Volume => {
  const [area, depth] = pairOf(
    pond,
    ["area", (input, path) => areaOf(input, path, ["treated"])],
    ["meanDepth", lengthOf],
  );
  return waterVolume(area, depth);
};

/** The volume of water under an area, in acre-ft or m3. */
export const waterVolume = (area: Area, depth: Length): Volume =>
  isMetricArea(area.unit)
    ? quantity(area.in("m2") * depth.in("m"), "m3")
    : quantity(area.in("acre") * depth.in("ft"), "acre-ft");

/** How the areas of contours are joined to a volume, see {@link contourVolume}. */
export type ContourRule = "average end area" | "prismoidal" | "cone frustum";

const rules = ["average end area", "prismoidal", "cone frustum"] as const;

/**
 * The volume of a pond from the areas inside its depth contours.
 *
 * With areas `A[0]` (the surface) to `A[n]` (the deepest contour), `h` apart:
 * - `"average end area"`: `V = h * ((A[0] + A[n]) / 2 + sum of the others)`
 * - `"prismoidal"`: `V = h / 3 * (A[0] + A[n] + 4 * sum of the odd ones + 2 * sum of the even ones between)`; needs an
 *   even number of layers
 * - `"cone frustum"`: for each layer `h / 3 * (A + B + sqrt(A * B))`: exact for a bowl that narrows as a cone does
 *
 * What lies below the deepest contour is not counted; where the bottom is a point, give 0 as the last area. Areas from
 * the surface down, none larger than the one above; `interval` one for all, or a list with one for each layer. In
 * acre-ft, or in m3 for metric areas.
 *
 * Sources disagree: the average end area is too high for a bowl, by half for a cone taken as one layer; that of more
 * layers is less so.
 *
 * @param pond.rule - no default: the rule changes the volume
 * @throws RatewrightError `conflict` for an odd number of layers or unequal intervals with the prismoidal rule, and
 * for an area larger than the one above; `missing`, `type`, `unit/mismatch`, `not-finite`, `range`
 *
 * Source: surveying texts (reservoir volume from contours); the prismoidal rule for gallons: Wheatley, "The polar
 * planimeter", chapter VII.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { contourVolume } from "ratewright/site";
 * const areas = [1.2, 0.8, 0.3].map((acres) => quantity(acres, "acre"));
 * const pond = { areas, interval: quantity(2, "ft") };
 * Number(contourVolume({ ...pond, rule: "average end area" }).in("acre-ft").toFixed(2)); // => 3.1
 * Number(contourVolume({ ...pond, rule: "prismoidal" }).in("acre-ft").toFixed(2)); // => 3.13
 * ```
 */
export const contourVolume = (pond: {
  readonly areas: readonly Area[];
  readonly interval: Length | readonly Length[];
  readonly rule: ContourRule;
}): Volume => {
  const problems = checks();
  const record = recordWith(pond, ["areas", "interval", "rule"], problems, "pond");
  const rule = problems.run(() => expectOneOf(record.rule, rules, "rule"));
  const areas = problems.run(() => contourAreas(record.areas));
  const intervals = problems.run(() =>
    Array.isArray(record.interval)
      ? lengthList(record.interval, "interval", 1, "positive")
      : [lengthOf(record.interval, "interval")],
  );
  problems.done();
  const list = areas as readonly Area[];
  const gaps = intervals as readonly Length[];
  const layers = list.length - 1;
  if (Array.isArray(record.interval) && gaps.length !== layers) {
    fail(
      "conflict",
      "interval",
      described(`${gaps.length} for ${counted(layers, "layer")}`),
      "one for each layer",
    );
  }
  const metric = isMetricArea((list[0] as Area).unit);
  const size = list.map((area) => area.in(metric ? "m2" : "acre"));
  const heights = Array.from({ length: layers }, (_, i) =>
    (gaps[gaps.length === 1 ? 0 : i] as Length).in(metric ? "m" : "ft"),
  );
  const volume =
    rule === "prismoidal" ? prismoidal(size, heights) : byLayers(size, heights, rule as ContourRule);
  return quantity(volume, (metric ? "m3" : "acre-ft") as "m3");
};

const byLayers = (areas: readonly number[], heights: readonly number[], rule: ContourRule): number =>
  heights.reduce((total, height, i) => {
    const [a, b] = [areas[i] as number, areas[i + 1] as number];
    const layer = rule === "cone frustum" ? (a + b + Math.sqrt(a * b)) / 3 : (a + b) / 2;
    return total + height * layer;
  }, 0);

const prismoidal = (areas: readonly number[], heights: readonly number[]): number => {
  const [h = 0] = heights;
  if (heights.length % 2 !== 0) {
    fail(
      "conflict",
      "areas",
      described(counted(heights.length, "layer")),
      "an even number of layers; or another rule: average end area, cone frustum",
    );
  }
  if (heights.some((height) => Math.abs(height - h) > 1e-9 * h)) {
    fail("conflict", "interval", described("unequal intervals"), "equal intervals for the prismoidal rule");
  }
  const n = heights.length;
  const weighted = areas.reduce(
    (sum, area, i) => sum + area * (i === 0 || i === n ? 1 : i % 2 === 1 ? 4 : 2),
    0,
  );
  return (h * weighted) / 3;
};

const mostContours = 1000;

const contourAreas = (input: unknown): readonly Area[] => {
  if (input === undefined) return fail("missing", "areas", input, "a list of areas, the surface first");
  if (!Array.isArray(input)) return fail("type", "areas", input, "a list of areas, the surface first");
  if (input.length < 2 || input.length > mostContours) {
    return outOfRange(
      "areas",
      input,
      { min: 2, max: mostContours, count: "areas" },
      "{}: the surface and a contour below it",
    );
  }
  const problems = checks();
  const last = input.length - 1;
  const areas = Array.from(input, (item: unknown, i) => {
    // the bottom may be a point
    if (i === last && Object(item).value === 0) {
      return new Quantity(0, "m2", "none", "area");
    }
    return problems.run(() => areaOf(item, `areas[${i}]`));
  });
  areas.forEach((area, i) => {
    const above = areas[i - 1];
    if (area !== undefined && above !== undefined && area.in("m2") > above.in("m2") * (1 + 1e-9)) {
      problems.run(() =>
        fail("conflict", `areas[${i}]`, area, "no more than the contour above: the surface first"),
      );
    }
  });
  problems.done();
  return areas as readonly Area[];
};
