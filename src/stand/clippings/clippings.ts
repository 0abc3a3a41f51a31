import {
  allOf,
  type Citation,
  expectAmount,
  expectFields,
  expectOneOf,
  fail,
  frozen,
  numberIn,
  type Quantity,
  quantity,
  type Volume,
} from "../../quantity/index.js";
import { given, isMetric, percentAt, type Share } from "../read.js";

type VolumePerArea = Quantity<"volume/area", "none">;

/** Dry mass in a volume of fresh clippings, as measured. */
export interface ClippingDensity {
  readonly grass: "bentgrass" | "bermudagrass" | "manilagrass";
  /** Dry mass per fresh, uncompressed volume. */
  readonly dryMass: Quantity<"mass/volume", "none">;
  readonly source: Citation;
}

const converting: Citation = /* @__PURE__ */ frozen({
  title: "Converting clipping volume to dry weight",
  publisher: "Asian Turfgrass Center",
  url: "https://asianturfgrass.com/post/converting-clipping-volume-to-dry-weight",
});
const density = (grass: ClippingDensity["grass"], grams: number): ClippingDensity => ({
  grass,
  dryMass: quantity(grams, "g/L"),
  source: converting,
});

/** Dry mass in fresh clippings of putting greens: some 60 g in a liter, 110 g of manilagrass (*Zoysia matrella*). */
export const clippingDensities: readonly ClippingDensity[] = /* @__PURE__ */ frozen([
  /* @__PURE__ */ density("bentgrass", 60),
  /* @__PURE__ */ density("bermudagrass", 60),
  /* @__PURE__ */ density("manilagrass", 110),
]);

/** By which dry mass: a grass of the table, or a figure of one's own. */
export type DryMassOf = ClippingDensity["grass"] | Quantity<"mass/volume", "none">;

const gramsPerLiter = (input: unknown): number => {
  if (input === undefined) {
    return fail("missing", "dryMass", input, "a grass of clippingDensities, or dry mass per volume");
  }
  if (typeof input !== "string") return given(input, "dryMass", "mass/volume", "none").in("g/L");
  const grasses = clippingDensities.map(({ grass }) => grass);
  const grass = expectOneOf(input, grasses, "dryMass");
  const row = clippingDensities.find((each) => each.grass === grass) as ClippingDensity;
  return row.dryMass.in("g/L");
};

/** Clippings, weighed by their volume. */
export interface ClippingMass<D extends "mass" | "mass/area"> {
  readonly type: "clipping-mass";
  readonly version: 1;
  readonly dryMass: Quantity<D, "none">;
  /** Nitrogen that leaves with the clippings where they are carried off. */
  readonly nitrogen: Quantity<D, "N">;
}

const volumeAt = (input: unknown): Quantity<"volume" | "volume/area", string> =>
  input === undefined
    ? fail("missing", "clippings", input, "a volume, or a volume per area")
    : expectAmount(
        input,
        { dimensions: ["volume", "volume/area"], of: "none", bound: "non-negative" },
        "clippings",
      );

/**
 * Dry mass of clippings and the nitrogen in them, from their fresh volume: `m = V rho`, `N = m n / 100`.
 *
 * - `V` fresh volume, not pressed down, as a volume or per area
 * - `rho` dry mass per volume: a grass of `clippingDensities`, or a figure of one's own
 * - `n` nitrogen in the dry mass, percent: 4 % is printed as reasonable, 3 % and 5 % occur; a tissue test is
 *   better
 *
 * @param input.clippings - `V`, zero or more
 * @param input.dryMass - `rho`
 * @param input.nitrogen - `n`, above 0, below 20 %
 * @returns g and g/m2 for metric units, else lb and lb/1000 ft2
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `type`; all that are found
 * Source: Asian Turfgrass Center, "Growth ratio, nitrogen harvest, and fertilizer adjustment" and "Converting
 * clipping volume to dry weight".
 *
 * @example
 * ```ts
 * import { clippingMass, quantity } from "ratewright";
 * const bucket = clippingMass({
 *   clippings: quantity(1, "L"), dryMass: "bentgrass", nitrogen: quantity(4, "%"),
 * });
 * bucket.dryMass.in("g"); // => 60
 * bucket.nitrogen.in("g"); // => 2.4
 * ```
 */
export function clippingMass(input: {
  readonly clippings: Volume;
  readonly dryMass: DryMassOf;
  readonly nitrogen: Share;
}): ClippingMass<"mass">;
export function clippingMass(input: {
  readonly clippings: VolumePerArea;
  readonly dryMass: DryMassOf;
  readonly nitrogen: Share;
}): ClippingMass<"mass/area">;
export function clippingMass(input: {
  readonly clippings: Volume | VolumePerArea;
  readonly dryMass: DryMassOf;
  readonly nitrogen: Share;
}): ClippingMass<"mass"> | ClippingMass<"mass/area"> {
  const record = expectFields(input, ["clippings", "dryMass", "nitrogen"]);
  const { clippings, grams, percent } = allOf({
    clippings: () => volumeAt(record.clippings),
    grams: () => gramsPerLiter(record.dryMass),
    percent: () => nitrogenAt(record.nitrogen),
  });
  const common = { type: "clipping-mass", version: 1 } as const;
  const share = (mass: number): number => (mass * percent) / 100;
  const [top = "", bottom = ""] = clippings.unit.split("/");
  if (bottom === "") {
    const mass = quantity(volumeIn(clippings, "L") * grams, "g");
    const [unit, value] = /^(m3|L|mL)$/.test(top)
      ? (["g", mass.value] as const)
      : (["lb", mass.in("lb")] as const);
    return { ...common, dryMass: quantity(value, unit), nitrogen: quantity(share(value), unit, "N") };
  }
  const rate = quantity(volumeIn(clippings, "L/m2") * grams, "g/m2");
  const [unit, value] = isMetric(bottom)
    ? (["g/m2", rate.value] as const)
    : (["lb/1000 ft2", rate.in("lb/1000 ft2")] as const);
  return { ...common, dryMass: quantity(value, unit), nitrogen: quantity(share(value), unit, "N") };
}

const volumeIn = (clippings: Quantity<"volume" | "volume/area", string>, unit: "L" | "L/m2"): number =>
  numberIn(clippings, unit);

const nitrogenAt = (input: unknown): number =>
  percentAt(input, "nitrogen", { above: 0, below: 20, share: 0.2 });

/**
 * The volume of clippings that an amount of nitrogen makes: `V = 100 N / (n rho)`. {@link clippingMass}
 * turned round: how much growth a rate of nitrogen pays for.
 *
 * @param input.nitrogen - `N`, mass per area, zero or more
 * @param input.dryMass - `rho`, a grass of `clippingDensities` or dry mass per volume
 * @param input.share - `n`, nitrogen in the dry mass, above 0, below 20 %
 * @returns mL/m2 for a rate per metric area, else qt/1000 ft2
 * @throws RatewrightError `missing`, `range`, `unit/mismatch`, `substance/mismatch`, `type`; all that are found
 * Source: Asian Turfgrass Center, "Growth ratio, nitrogen harvest, and fertilizer adjustment".
 *
 * @example
 * ```ts
 * import { clippingVolumeFor, quantity } from "ratewright";
 * const volume = clippingVolumeFor({
 *   nitrogen: quantity(1, "g/m2", "N"), dryMass: "bentgrass", share: quantity(4, "%"),
 * });
 * Number(volume.in("mL/m2").toFixed(1)); // => 416.7
 * ```
 */
export const clippingVolumeFor = (input: {
  readonly nitrogen: Quantity<"mass/area", "N">;
  readonly dryMass: DryMassOf;
  readonly share: Share;
}): VolumePerArea => {
  const record = expectFields(input, ["nitrogen", "dryMass", "share"]);
  const { nitrogen, grams, percent } = allOf({
    nitrogen: () => given(record.nitrogen, "nitrogen", "mass/area", "N", "non-negative"),
    grams: () => gramsPerLiter(record.dryMass),
    percent: () => percentAt(record.share, "share", { above: 0, below: 20, share: 0.2 }),
  });
  const volume = quantity((nitrogen.in("g/m2") * 100 * 1000) / (percent * grams), "mL/m2");
  return isMetric(nitrogen.unit.slice(nitrogen.unit.indexOf("/") + 1))
    ? volume
    : quantity(volume.in("qt/1000 ft2"), "qt/1000 ft2");
};
