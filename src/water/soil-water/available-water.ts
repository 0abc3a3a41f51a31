import { exceeds } from "../../numeric/index.js";
import { checks, expectList, expectQuantity, fail, outOfRange, type Quantity } from "../../quantity/index.js";
import { isMetric, type Length, length, made, optional, type Read, readRecord } from "../read.js";

/** Water that a soil holds for plants by depth of soil: `in/ft`, `mm/m`, or percent by volume. */
export type HoldingCapacity = Quantity<"length/length", "none"> | Quantity<"volume/volume", "none">;

/** A layer of soil. */
export interface RootZoneLayer {
  readonly thickness: Length;
  readonly capacity: HoldingCapacity;
}

/** What a root zone holds. */
export interface AvailableWater {
  readonly type: "available-water";
  readonly version: 1;
  /** In the whole root zone, from field capacity to the wilting point. */
  readonly total: Length;
  /** The depth of soil that was counted. */
  readonly depth: Length;
  /** By layer, as far as the roots go, from the top; 0 in a layer below them. */
  readonly layers: readonly Length[];
}

/** Takes a capacity as depth of water by depth of soil, a pure number. */
export const capacity: Read<number> = (input, path) => {
  const such = 'quantity(1.5, "in/ft"), quantity(125, "mm/m") or quantity(12.5, "% v/v")';
  if (input === undefined || input === null) return fail("missing", path, input, such);
  const { value, unit, of = "none" } = Object(input) as { value?: unknown; unit?: unknown; of?: unknown };
  if (typeof value !== "number" || typeof unit !== "string") return fail("type", path, input, such);
  if (unit === "% grade") fail("unit/mismatch", path, input, `depth of water by depth of soil: ${such}`);
  const share =
    unit === "% v/v" || unit === "ppm v/v"
      ? expectQuantity({ value, unit }, { dimension: "volume/volume" }, path).in("% v/v") / 100
      : expectQuantity({ value, unit }, { dimension: "length/length" }, path).in("m/m");
  if (of !== "none") fail("substance/mismatch", path, of, such);
  return share > 0 && share < 1
    ? share
    : outOfRange(path, input, { above: 0, below: 100, unit: "%" }, "{} of the soil");
};

const most = 100;

const layersOf: Read<readonly { readonly thickness: Length; readonly capacity: number }[]> = (
  input,
  path,
) => {
  const what = "layer, { thickness, capacity }; waterHolding has printed capacities";
  const list = expectList(input, path, what, most);
  const problems = checks();
  const found: { readonly thickness: Length; readonly capacity: number }[] = [];
  list.forEach((item, i) => {
    const layer = problems.run(() =>
      readRecord(
        item,
        { thickness: length, capacity },
        "a record with thickness and capacity",
        `${path}[${i}]`,
      ),
    );
    if (layer !== undefined) found.push(layer);
  });
  problems.done();
  return found;
};

/**
 * The water that a root zone holds for the turf, layer by layer from the top: `AW = sum of c t`, down to the roots.
 *
 * - `layers` with `thickness` `t` and `capacity` `c`: depth of water by depth of soil, as `in/ft`, `mm/m` or `% v/v`; see
 *   {@link waterHolding} for figures by texture
 * - `rootDepth` counts the layers down to there; all of them where left out. Roots below the last layer are refused: what is
 *   there is not known
 *
 * Depths come in mm for a first layer in metric units, else in inches.
 *
 * @throws RatewrightError `range` for roots deeper than the layers, a capacity that is none; `missing`, `unit/mismatch`,
 * `type`, with the index of the layer
 *
 * Source: "Teaching organic farming and gardening", unit 2.1, example 1 (8, 12 and 28 in of 1.5, 1.9 and 0.9 in/ft: 5.0 in).
 *
 * @example
 * ```ts
 * import { availableWater, quantity } from "ratewright";
 * const layers = [
 *   { thickness: quantity(8, "in"), capacity: quantity(1.5, "in/ft") },
 *   { thickness: quantity(12, "in"), capacity: quantity(1.9, "in/ft") },
 * ];
 * availableWater({ layers }).total.in("in").toFixed(1); // => "2.9"
 * availableWater({ layers, rootDepth: quantity(6, "in") }).total.in("in").toFixed(2); // => "0.75"
 * ```
 */
export const availableWater = (input: {
  readonly layers: readonly RootZoneLayer[];
  readonly rootDepth?: Length;
}): AvailableWater => {
  const q = readRecord(input, { layers: layersOf, rootDepth: optional(length) }, "a record with layers");
  const unit = isMetric((q.layers[0] as (typeof q.layers)[number]).thickness.unit) ? "mm" : "in";
  const whole = q.layers.reduce((sum, { thickness }) => sum + thickness.in(unit), 0);
  const deep = q.rootDepth?.in(unit) ?? whole;
  if (exceeds(deep, whole)) {
    outOfRange(
      "rootDepth",
      q.rootDepth,
      { max: whole, unit },
      "{}, the depth of the layers: add the layer below",
    );
  }
  let above = 0;
  const held = q.layers.map((layer) => {
    const rooted = Math.max(0, Math.min(layer.thickness.in(unit), deep - above));
    above += layer.thickness.in(unit);
    return rooted * layer.capacity;
  });
  return {
    type: "available-water",
    version: 1,
    total: made(
      held.reduce((sum, part) => sum + part, 0),
      unit,
      "length",
    ),
    depth: made(Math.min(deep, whole), unit, "length"),
    layers: held.map((part) => made(part, unit, "length")),
  };
};
