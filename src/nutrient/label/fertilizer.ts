import { expectLiquidDensity } from "../../numeric/house.js";
import {
  allOf,
  type DecimalSign,
  expectAmount,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  isSubstance,
  likeQuantity,
  type Quantity,
  quantity,
  RatewrightError,
} from "../../quantity/index.js";
import { type Analysis, bases, decimals, type Nutrient, percentOf, readAnalysis } from "./analysis.js";
import { expectPath, expectShortText } from "./expect-source.js";
import { labelFields } from "./label-fields.js";
import { type NitrogenGuarantee, slowPercent } from "./nitrogen-breakdown.js";
import { labelByVolume, type StatedBy } from "./nutrient.js";
import { smallFigures } from "./small-figures.js";

/** A fertilizer product: what its label states. Plain data; its quantities become JSON and come back. */
export interface Fertilizer<Id extends string = string, Stated extends Nutrient = never> {
  readonly type: "fertilizer";
  readonly version: 1;
  /** Tags every amount of this product, so that two products are never mixed up. */
  readonly id: Id;
  readonly name?: string;
  /** A liquid is weighed only through its density. */
  readonly form: "dry" | "liquid";
  readonly analysis: Analysis<Stated>;
  /** The guaranteed breakdown of nitrogen, percent of PRODUCT. */
  readonly nitrogen?: NitrogenGuarantee;
  /**
   * Slow-release nitrogen as the label prints it: percent of PRODUCT, not of nitrogen. Where the label
   * breaks its nitrogen down, this follows from the breakdown.
   */
  readonly slowNitrogen?: Quantity<"mass/mass", "N:slow/product">;
  /** Of a liquid, at the temperature at which it is measured out. */
  readonly density?: Quantity<"mass/volume", "none">;
  /** What one bag, jug or tote holds. */
  readonly package?: Quantity<"mass", "none"> | Quantity<"volume", "none">;
  /** What is unusual about the label; left out where nothing is. */
  readonly findings?: readonly Finding[];
}

/** What {@link fertilizer} is told: the label, with the analysis as text or as a record. */
export interface FertilizerInput<
  Id extends string = string,
  G extends string | Analysis = string | Analysis,
  B extends "oxide" | "element" = "oxide" | "element",
> {
  readonly id: Id;
  readonly name?: string;
  /** `"dry"` where it is left out. */
  readonly form?: "dry" | "liquid";
  readonly analysis: G;
  /** How a grade in text is read; oxides where it is left out, as on United States labels. */
  readonly basis?: B;
  /** The sign before the decimals of a grade in text: `","` reads `24,5-0-11`. A point where it is left out. */
  readonly decimal?: DecimalSign;
  /** The label's breakdown of nitrogen; slow nitrogen is derived from it. */
  readonly nitrogen?: NitrogenGuarantee;
  readonly slowNitrogen?: Quantity<"mass/mass", "N:slow/product">;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly package?: Quantity<"mass", "none"> | Quantity<"volume", "none">;
}

/**
 * A fertilizer record from what its label states, checked.
 *
 * Where the form is left out the product is dry; a density, or a package by volume, then is a conflict.
 * Where no slow-release nitrogen is stated, all nitrogen counts as quick-release: a label that claims slow
 * release must state it. A breakdown of nitrogen (`nitrogen`) gives the slow nitrogen; where both are
 * stated they must agree.
 *
 * A grade of which each figure is under 1, such as `0.05-0.1-0.05`, is read as percent like every other, and told in
 * `findings`: shares of one written as a grade (5-10-5) would put down a hundred times too much.
 *
 * The record is frozen and holds copies of what it was given. What other functions of the room are handed as a
 * fertilizer they read as this one does, unless it made it.
 *
 * @throws RatewrightError with every problem of the record: `missing`, `text`, `range`, `conflict`, `type` (also for a
 *   field that is not known), `unit/mismatch`, `substance/mismatch`
 *
 * @example
 * ```ts
 * import { fertilizer, quantity } from "ratewright";
 * const feed = fertilizer({
 *   id: "feed-a",
 *   analysis: "24-0-11",
 *   slowNitrogen: quantity(12, "% w/w", "N:slow/product"),
 *   package: quantity(50, "lb"),
 * });
 * feed.analysis.percent; // => { N: 24, P2O5: 0, K2O: 11 }
 * feed.form; // => "dry"
 * ```
 */
export const fertilizer = <
  const Id extends string,
  const G extends string | Analysis = string | Analysis,
  const B extends "oxide" | "element" = "oxide",
>(
  input: FertilizerInput<Id, G, B>,
  path = "fertilizer",
): Fertilizer<Id, StatedBy<G, B>> => {
  expectPath(path);
  refusePerVolume(input, path);
  labelFields(input, fields, path, "a fertilizer record: { id, analysis }");
  const at = (field: string): string => `${path}.${field}`;
  const read = allOf({
    id: () => readId(input.id, at("id")),
    name: () => given(input.name, (name) => expectShortText(name, at("name"), "a name")),
    form: () => given(input.form, (form) => expectOneOf(form, forms, at("form"))) ?? "dry",
    analysis: () => analysisOf(input, path),
    slow: () => given(input.slowNitrogen, (slow) => slowOf(slow, at("slowNitrogen"))),
    density: () =>
      given(input.density, (density) =>
        expectLiquidDensity(ownQuantity(density, "mass/volume", at("density")), at("density")),
      ),
    held: () => given(input.package, (held) => packageOf(held, at("package"))),
  });
  const { name, form, density, held } = read;
  const { nitrogen } = input;
  const slowNitrogen = slowWithin(nitrogen, read.slow, percentOf(read.analysis, "N"), path);
  refuseDryVolume(form, density, held, path);
  const findings = smallFigures(read.analysis, path);
  const made: Fertilizer<Id, StatedBy<G, B>> = frozen({
    type: "fertilizer",
    version: 1,
    id: read.id,
    ...(name !== undefined && { name }),
    form,
    // What the type of the grade states is what its text was read to state.
    analysis: read.analysis as Analysis<StatedBy<G, B>>,
    ...(nitrogen && { nitrogen: ownGuarantee(nitrogen) }),
    ...(slowNitrogen && { slowNitrogen }),
    ...(density && { density }),
    ...(held && { package: held }),
    ...(findings && { findings }),
  });
  records.add(made);
  return made;
};

/** What is read of a field, where it is there. */
const given = <V, R>(value: V | undefined, read: (value: V) => R): R | undefined =>
  value === undefined ? undefined : read(value);

/** The records that were read: frozen, so that nobody can have changed them since. */
const records: WeakSet<object> = /* @__PURE__ */ new WeakSet();

/** Whether a record was made here and so needs no second reading. */
export const isRead = (product: unknown): boolean => records.has(Object(product));

const forms = ["dry", "liquid"] as const;
/** The fields of the record of a fertilizer: who takes one along knows the same. */
export const fertilizerFields = [
  "type",
  "version",
  "id",
  "name",
  "form",
  "analysis",
  "nitrogen",
  "slowNitrogen",
  "density",
  "package",
  "findings",
] as const;
const fields = [...fertilizerFields, "basis", "decimal"] as const;
const longestId = 200;

/** A label by volume is another record: its way is named. */
const refusePerVolume = (input: unknown, path: string): void => {
  const { perVolume }: { readonly perVolume?: unknown } = Object(input);
  if (perVolume !== undefined) {
    fail("conflict", `${path}.perVolume`, perVolume, `a grade in percent by weight; ${labelByVolume}`);
  }
};

/** A positive quantity of no substance, as a copy of the record's own. */
const ownQuantity = <D extends string>(input: unknown, dimension: D, path: string): Quantity<D, "none"> => {
  const own = expectQuantity(input, { dimension, of: "none", bound: "positive" }, path);
  return likeQuantity(own, own.value);
};

/** A share of the nitrogen would be taken for one of the product: what is neither says which is meant. */
const slowOf = (input: unknown, path: string): Quantity<"mass/mass", "N:slow/product"> => {
  try {
    const kind = { dimension: "mass/mass", of: "N:slow/product", bound: "non-negative" } as const;
    const own = expectQuantity(input, kind, path);
    return likeQuantity(own, own.value);
  } catch (error) {
    if (error instanceof RatewrightError && error.code.endsWith("/mismatch"))
      return fail(error.code, path, input, slowText);
    throw error;
  }
};
const slowText =
  'slow-release nitrogen in percent of the product, as labels print it: where half of 24 % N is slow, quantity(12, "% w/w", "N:slow/product")';

const readId = <Id extends string>(id: Id, path: string): Id =>
  typeof id === "string" && id.length <= longestId && isSubstance(`product:${id}`)
    ? id
    : fail("type", path, id, "a short name without slash or colon, such as feed-a");

const analysisOf = (input: FertilizerInput, path: string): Analysis => {
  if (input.analysis === undefined) {
    const way = input.form === "liquid" ? `; ${labelByVolume}` : "";
    return fail("missing", `${path}.analysis`, undefined, `a grade such as "24-0-11"${way}`);
  }
  // A basis that is none is told beside what is wrong with the text, which is then read as oxides.
  const basis = bases.find((one) => one === input.basis) ?? bases[0];
  const decimal = decimals.find((one) => one === input.decimal) ?? decimals[0];
  const read = allOf({
    basis: () => input.basis === undefined || expectOneOf(input.basis, bases, `${path}.basis`),
    decimal: () => input.decimal === undefined || expectOneOf(input.decimal, decimals, `${path}.decimal`),
    analysis: () => readAnalysis(input.analysis, { basis, decimal }, `${path}.analysis`),
  });
  return read.analysis;
};

/** The slow nitrogen that is stated or that the breakdown gives, which must agree with the analysis and with each other. */
const slowWithin = (
  guarantee: NitrogenGuarantee | undefined,
  stated: Quantity<"mass/mass", "N:slow/product"> | undefined,
  total: number,
  path: string,
): Quantity<"mass/mass", "N:slow/product"> | undefined => {
  const claimed = given(stated, (slow) => slow.in("% w/w"));
  const refuse = (expected: string): never => fail("conflict", `${path}.slowNitrogen`, stated, expected);
  const { derived } = allOf({
    stated: () =>
      given(
        claimed,
        (slow) => slow > total * (1 + 1e-9) && refuse(`at most the ${total} % N of the analysis`),
      ),
    derived: () =>
      given(guarantee, (lines) => {
        const at = `${path}.nitrogen`;
        return total === 0
          ? fail("conflict", at, lines, "no breakdown where the analysis states 0 % N")
          : slowPercent(lines, total, at);
      }),
  });
  if (derived === undefined) return stated;
  if (claimed !== undefined && Math.abs(claimed - derived) > 1e-9 * Math.max(claimed, derived))
    refuse(`the ${derived} % that the breakdown of nitrogen gives`);
  return stated ?? quantity(derived, "% w/w", "N:slow/product");
};

const ownGuarantee = ({ percent, slowWithin }: NitrogenGuarantee): NitrogenGuarantee => ({
  percent: { ...percent },
  ...(slowWithin && { slowWithin: { ...slowWithin } }),
});

/** A dry product is weighed: it has no density and no package by volume. */
const refuseDryVolume = (
  form: Fertilizer["form"],
  density: unknown,
  held: Fertilizer["package"],
  path: string,
): void => {
  if (form !== "dry") return;
  const refuse = (field: string, got: unknown, due: string): never =>
    fail("conflict", `${path}.${field}`, got, `${due} for a dry product, or form "liquid"`);
  allOf({
    density: () => density === undefined || refuse("density", density, "no density"),
    package: () => held?.dimension !== "volume" || refuse("package", held, "a weight"),
  });
};

const packageOf = (input: unknown, path: string): Fertilizer["package"] => {
  const kinds = { dimensions: ["mass", "volume"], of: "none", bound: "positive" } as const;
  const held = expectAmount(input, kinds, path);
  // Of one of the two dimensions, which the compiler takes for one of both.
  return ownQuantity(held, held.dimension, path) as unknown as Fertilizer["package"];
};
