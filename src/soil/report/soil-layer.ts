import {
  allOf,
  type Citation,
  expectFields,
  expectOneOf,
  expectQuantity,
  fail,
  frozen,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";

/** A weight of soil that a report or a handbook takes for granted. */
export interface AssumedLayer {
  readonly mass: number;
  readonly unit: "lb/acre" | "kg/ha";
  readonly depth: number;
  readonly depthUnit: "in" | "cm";
  readonly source: Citation;
}

/** A weight of soil taken for granted, by name. */
export type AssumedSoil = "2,000,000 lb/acre" | "4,000,000 lb/acre-ft" | "2,240,000 kg/ha to 15 cm";

/**
 * The shortcuts for the weight of a layer, with depth and source. They are not one another: an inch weighs
 * 300,000 lb an acre, or 333,333.
 */
export const assumedSoils: Readonly<Record<AssumedSoil, AssumedLayer>> = /* @__PURE__ */ frozen({
  "2,000,000 lb/acre": {
    mass: 2_000_000,
    unit: "lb/acre",
    depth: 20 / 3,
    depthUnit: "in",
    source: {
      title: "CEC calculations (2,000,000 lb of soil); 2.4 million lb to 8 in in Lime Requirement, SMP 450",
      publisher: "Clemson University Agricultural Service Laboratory; University of California, Davis",
    },
  },
  "4,000,000 lb/acre-ft": {
    mass: 4_000_000,
    unit: "lb/acre",
    depth: 12,
    depthUnit: "in",
    source: {
      title: "Practices of Irrigation and On-farm Water Management",
      publisher: "textbook",
      where: "section 8.7.1",
    },
  },
  "2,240,000 kg/ha to 15 cm": {
    mass: 2_240_000,
    unit: "kg/ha",
    depth: 15,
    depthUnit: "cm",
    source: { title: "Lime requirement, quoting Brady and Weil 2008", publisher: "journal text" },
  },
});

const names = /* @__PURE__ */ Object.keys(assumedSoils) as readonly AssumedSoil[];

/**
 * A layer of soil: to a depth, as dense as a core tells, or by a named shortcut. A shortcut without a depth is
 * taken to its own; with one it is scaled to it.
 */
export type SoilLayer =
  | {
      readonly depth: Quantity<"length", "none">;
      readonly bulkDensity: Quantity<"mass/volume", "soil">;
    }
  | { readonly assumed: AssumedSoil; readonly depth?: Quantity<"length", "none"> };

/** A layer, read: its weight, its depth and the shortcut, where one was taken. */
export interface ReadLayer {
  readonly mass: Quantity<"mass/area", "soil">;
  readonly depth: Quantity<"length", "none">;
  readonly assumed?: AssumedSoil;
}

const depthOf = (input: unknown, path: string): Quantity<"length", "none"> =>
  expectQuantity(input, { dimension: "length", of: "none", bound: "positive" }, path);

const isUS = (depth: Quantity<"length", "none">): boolean => /^(in|ft|yd)$/.test(depth.unit);

/** Takes a layer of soil, or throws with its path. */
export const expectLayer = (input: unknown, path: string): ReadLayer => {
  const record = expectFields(
    input,
    ["depth", "bulkDensity", "assumed"],
    path,
    "a layer: { depth, bulkDensity }, or { assumed } with the name of a shortcut for its weight",
  );
  if (record.assumed !== undefined && record.bulkDensity === undefined) {
    const read = allOf({
      name: () => expectOneOf(record.assumed, names, `${path}.assumed`),
      depth: () => (record.depth === undefined ? undefined : depthOf(record.depth, `${path}.depth`)),
    });
    const { mass, unit, depth: full, depthUnit } = assumedSoils[read.name];
    const depth = read.depth ?? quantity(full, depthUnit);
    const share = read.depth === undefined ? 1 : depth.in(depthUnit) / full;
    return { mass: quantity(mass * share, unit, "soil"), depth, assumed: read.name };
  }
  if (record.assumed === undefined && record.depth === undefined && record.bulkDensity === undefined)
    fail(
      "missing",
      path,
      input,
      "{ depth, bulkDensity }, or { assumed } with the name of a shortcut for its weight",
    );
  const { depth, density } = allOf({
    clash: () =>
      record.assumed === undefined
        ? undefined
        : fail("conflict", `${path}.assumed`, record.assumed, "a bulk density or a shortcut, not both"),
    depth: () => depthOf(record.depth, `${path}.depth`),
    density: () => expectBulkDensity(record.bulkDensity, `${path}.bulkDensity`),
  });
  const kilograms = depth.in("m") * density.in("kg/m3") * 10_000;
  const mass = isUS(depth)
    ? quantity(quantity(kilograms, "kg/ha").in("lb/acre"), "lb/acre", "soil")
    : quantity(kilograms, "kg/ha", "soil");
  return { mass, depth };
};

/** Takes the dry bulk density of a soil. */
export const expectBulkDensity = (input: unknown, path: string): Quantity<"mass/volume", "soil"> => {
  const density = expectQuantity(input, { dimension: "mass/volume", of: "soil", bound: "positive" }, path);
  // Nothing that grass roots in is heavier than quartz or lighter than loose peat.
  const grams = density.in("g/mL");
  return grams >= 0.05 && grams <= 2.65
    ? density
    : outOfRange(path, density, { min: 0.05, max: 2.65, unit: "g/mL" }, "a bulk density of {}");
};

/**
 * The dry weight of a layer of soil per area, `m = d rho`.
 *
 * - `d` depth, `rho` bulk density, 0.05 to 2.65 g/cm3 (that of quartz; g/mL is the same)
 * - or a named shortcut, scaled to a depth where one is given: 2,000,000 lb an acre to 6 2/3 in, 4,000,000 lb an
 *   acre-foot, 2,240,000 kg a hectare to 15 cm. They stand for 1.32, 1.47 and 1.49 g/cm3; a sand green is
 *   denser, an organic soil far lighter
 *
 * @throws RatewrightError `missing`, `type`, `range`, `unit/mismatch`, `substance/mismatch`
 *
 * Source: definition; the shortcuts are those of Clemson University and the University of California, of a
 * textbook of irrigation, and of Brady and Weil 2008, see `assumedSoils`.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { soilMass } from "ratewright/soil";
 * const green = soilMass({ depth: quantity(10, "cm"), bulkDensity: quantity(1.5, "g/mL", "soil") });
 * green.in("kg/m2"); // => 150
 * soilMass({ assumed: "2,000,000 lb/acre" }).in("lb/acre"); // => 2000000
 * ```
 */
export const soilMass = (layer: SoilLayer): Quantity<"mass/area", "soil"> => expectLayer(layer, "layer").mass;
