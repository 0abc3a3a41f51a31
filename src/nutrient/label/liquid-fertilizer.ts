import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  isSubstance,
  likeQuantity,
  outOfRange,
  plainCopy,
  Quantity,
} from "../../quantity/index.js";
import { expectPath, expectShortText } from "./expect-source.js";
import type { Nutrient } from "./nutrient.js";
import { oxideFactor } from "./oxide-factor.js";
import { type NutrientsPerVolume, readPerVolume } from "./per-volume.js";

/** A liquid whose label states its nutrients by volume, and no density: measured out in a jug, never weighed. */
export interface LiquidFertilizer<Id extends string = string, Stated extends Nutrient = never> {
  readonly type: "liquid-fertilizer";
  readonly version: 1;
  /** Tags every amount of this product, so that two products are never mixed up. */
  readonly id: Id;
  readonly name?: string;
  /** Mass of each nutrient per volume of product: `3 lb/gal`, or `18 % w/v`. */
  readonly perVolume: NutrientsPerVolume & { readonly [S in Stated]: Quantity<"mass/volume", S> };
  /** Slow-release nitrogen per volume of PRODUCT; where none is stated, all nitrogen counts as quick-release. */
  readonly slowNitrogen?: Quantity<"mass/volume", "N:slow">;
  /** What one jug, drum or tote holds. */
  readonly package?: Quantity<"volume", "none">;
  /** What is unusual about the label; left out where nothing is. */
  readonly findings?: readonly Finding[];
}

/** What {@link liquidFertilizer} is told. */
export interface LiquidFertilizerInput<Id extends string = string, Stated extends Nutrient = never> {
  readonly id: Id;
  readonly name?: string;
  readonly perVolume: NutrientsPerVolume & { readonly [S in Stated]: Quantity<"mass/volume", S> };
  readonly slowNitrogen?: Quantity<"mass/volume", "N:slow">;
  readonly package?: Quantity<"volume", "none">;
}

const fields = ["type", "version", "id", "name", "perVolume", "slowNitrogen", "package", "findings"] as const;

/** The records that were read: frozen, so that nobody can have changed them since. */
const records: WeakSet<object> = /* @__PURE__ */ new WeakSet();

/**
 * A liquid fertilizer from a label that states its nutrients by volume: in lb per gallon, in g/L or kg/m3, or in percent
 * weight by volume. It needs no density, because it is never weighed.
 *
 * `liquidProductRate`, `nutrientPerVolume`, `nutrientsSupplied` and `packagesFor` take the record. A label that states
 * percent by WEIGHT is a `fertilizer` with `form: "liquid"`; so is this one where its density is known, through
 * `analysisByWeight`.
 *
 * The record is frozen and holds copies of what it was given.
 *
 * Range: no liquid holds more nitrogen than solid urea, some 623 g/L (5.2 lb/gal: 1.335 kg/L at 28.014/60.056 N), nor more
 * nutrients in all than it weighs, 2.5 kg/L being more than any liquid feed does (common practice, no source); more is
 * refused, for a figure in other units is likely. More nitrogen than urea ammonium nitrate of 32 % (1.32 kg/L, 422 g/L or
 * 3.5 lb/gal) is a finding on the record.
 *
 * @throws RatewrightError with every problem: `missing`, `type` (also for a field that is not known), `range`,
 *   `conflict` where one nutrient is stated in two forms, more slow nitrogen is stated than nitrogen, or a density;
 *   `unit/mismatch`, `substance/mismatch`
 *
 * @example
 * ```ts
 * import { liquidFertilizer, liquidProductRate, quantity } from "ratewright";
 * const feed = liquidFertilizer({ id: "drench", perVolume: { N: quantity(3, "lb/gal", "N") } });
 * const rate = liquidProductRate(quantity(0.15, "lb/1000 ft2", "N"), feed);
 * Number(rate.in("fl oz/1000 ft2").toFixed(2)); // => 6.4
 * ```
 */
export const liquidFertilizer = <const Id extends string, Stated extends Nutrient = never>(
  input: LiquidFertilizerInput<Id, Stated>,
  path = "liquidFertilizer",
): LiquidFertilizer<Id, Stated> => {
  const own = plainCopy(input);
  expectPath(path);
  refuseWeights(own, path);
  const given = expectFields(own, fields, path, "a label by volume: { id, perVolume }");
  const read = allOf({
    id: () =>
      typeof given.id === "string" && given.id.length <= 200 && isSubstance(`product:${given.id}`)
        ? own.id
        : fail("type", `${path}.id`, given.id, "a short name without slash or colon, such as feed-a"),
    name: () =>
      given.name === undefined ? {} : { name: expectShortText(given.name, `${path}.name`, "a name") },
    perVolume: () => readPerVolume(given.perVolume, `${path}.perVolume`),
    slow: () => volumeShare(given.slowNitrogen, `${path}.slowNitrogen`),
    held: () => (given.package === undefined ? {} : { package: volumeOf(given.package, `${path}.package`) }),
  });
  const perVolume = Object.fromEntries(read.perVolume.map(([of, q]) => [of, likeQuantity(q, q.value)]));
  const made: LiquidFertilizer<Id, Stated> = frozen({
    type: "liquid-fertilizer",
    version: 1,
    id: read.id,
    ...read.name,
    // The keys that the caller's type states are the ones that were read.
    perVolume: perVolume as LiquidFertilizer<Id, Stated>["perVolume"],
    ...slowWithin(read.slow, perVolume.N, path),
    ...read.held,
    ...strengthOf(perVolume, path),
  });
  records.add(made);
  return made;
};

/** A density, an analysis or a form belong to the other record: its way is named. */
const refuseWeights = (input: unknown, path: string): void => {
  const given: Record<string, unknown> = Object(input);
  for (const field of ["density", "analysis", "form"]) {
    if (given[field] !== undefined) {
      const way =
        'fertilizer({ id, form: "liquid", analysis: analysisByWeight({ perVolume, density }), density })';
      fail("conflict", `${path}.${field}`, given[field], `no ${field} here; ${way} takes one`);
    }
  }
};

/** Nitrogen in solid urea, 1.335 kg/L of CO(NH2)2, and in a 32 % solution of urea and ammonium nitrate, 1.32 kg/L; in g/L. */
const [solidUrea, strongest] = [(1335 * 28.014) / 60.056, 1320 * 0.32] as const;
/** More than any liquid feed weighs, in g/L: common practice, no source. */
const heaviest = 2500;

/** What no liquid can hold is refused, and what few hold is told. */
const strengthOf = (
  perVolume: Readonly<Record<string, Quantity<"mass/volume", Nutrient>>>,
  path: string,
): Pick<LiquidFertilizer, "findings"> => {
  const all = Object.values(perVolume).reduce((sum, q) => sum + q.in("g/L"), 0);
  if (all > heaviest) {
    outOfRange(
      `${path}.perVolume`,
      `${Math.round(all)} g/L`,
      { max: heaviest, unit: "g/L" },
      "nutrients that a liquid can hold, {} in all; the label may print g/L or % w/v",
    );
  }
  const nitrogen = perVolume.N?.in("g/L") ?? 0;
  if (nitrogen > solidUrea * (1 + 1e-9)) {
    outOfRange(
      `${path}.perVolume.N`,
      perVolume.N,
      { max: Math.floor(solidUrea), unit: "g/L" },
      "{} or 5.2 lb/gal, the nitrogen of solid urea; the label may print g/L or % w/v",
    );
  }
  if (nitrogen <= strongest * (1 + 1e-9)) return {};
  return {
    findings: [
      {
        code: "liquid/unusually-strong",
        severity: "caution",
        path: `${path}.perVolume.N`,
        params: { nitrogen: Math.round(nitrogen), usual: Math.round(strongest) },
        text: `${Math.round(nitrogen)} g of N per liter is more than a 32 % solution of urea and ammonium nitrate holds (${Math.round(strongest)} g/L, 3.5 lb/gal). Check the unit on the label.`,
        source: "common practice, no source",
      },
    ],
  };
};

const volumeShare = (input: unknown, path: string): Quantity<"mass/volume", "N:slow"> | undefined =>
  input === undefined
    ? undefined
    : expectQuantity(input, { dimension: "mass/volume", of: "N:slow", bound: "non-negative" }, path);

const volumeOf = (input: unknown, path: string): Quantity<"volume", "none"> => {
  const held = expectQuantity(input, { dimension: "volume", of: "none", bound: "positive" }, path);
  return likeQuantity(held, held.value);
};

/** Slow nitrogen is a part of the nitrogen that the label states. */
const slowWithin = (
  slow: Quantity<"mass/volume", "N:slow"> | undefined,
  total: Quantity<"mass/volume", Nutrient> | undefined,
  path: string,
): Pick<LiquidFertilizer, "slowNitrogen"> => {
  if (slow === undefined) return {};
  if (slow.in("g/L") > (total?.in("g/L") ?? 0) * (1 + 1e-9)) {
    fail("conflict", `${path}.slowNitrogen`, slow, `at most the nitrogen of the label, ${total ?? "none"}`);
  }
  return { slowNitrogen: likeQuantity(slow, slow.value) };
};

/** Takes a record that {@link liquidFertilizer} made, or reads what JSON left of one like a label. */
export const expectLiquidFertilizer = <Id extends string, Stated extends Nutrient>(
  product: LiquidFertilizer<Id, Stated>,
  path: string,
): LiquidFertilizer<Id, Stated> =>
  records.has(product) ? product : liquidFertilizer<Id, Stated>(product, path);

/** Whether a record says that it is a label by volume. */
export const isLiquidFertilizer = <Id extends string, Stated extends Nutrient>(
  product: unknown,
): product is LiquidFertilizer<Id, Stated> =>
  (product as { readonly type?: unknown } | undefined)?.type === "liquid-fertilizer";

/** Mass per volume of a nutrient, in the form asked for; `undefined` where the label does not state it. */
export const statedPerVolume = <S extends Nutrient>(
  { perVolume }: LiquidFertilizer,
  nutrient: S,
): Quantity<"mass/volume", S> | undefined => {
  for (const form in perVolume) {
    const factor = oxideFactor(form, nutrient);
    const stated = perVolume[form as Nutrient];
    if (factor !== undefined && stated !== undefined) {
      return new Quantity(stated.value * factor, stated.unit, nutrient, "mass/volume");
    }
  }
  return undefined;
};
