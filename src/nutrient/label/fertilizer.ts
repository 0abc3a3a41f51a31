import {
  allOf,
  type DecimalSign,
  expectAmount,
  expectFields,
  expectOneOf,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  isSubstance,
  likeQuantity,
  type Quantity,
  RatewrightError,
} from "../../quantity/index.js";
import { type Analysis, analysis, type Nutrient, percentOf } from "./analysis.js";
import { expectPath, expectShortText } from "./expect-source.js";
import { type NitrogenGuarantee, nitrogenBreakdown } from "./nitrogen-breakdown.js";
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
  expectFields(input, fields, path, "a fertilizer record: { id, analysis }");
  const { slowNitrogen, density, name } = input;
  const read = allOf({
    id: () => readId(input.id, `${path}.id`),
    name: () => (name === undefined ? {} : { name: expectShortText(name, `${path}.name`, "a name") }),
    form: () => (input.form === undefined ? "dry" : expectOneOf(input.form, forms, `${path}.form`)),
    analysis: () => readAnalysis(input, path),
    slow: () => (slowNitrogen === undefined ? undefined : slowOf(slowNitrogen, `${path}.slowNitrogen`)),
    density: () =>
      density === undefined
        ? {}
        : {
            density: ownQuantity(
              expectQuantity(
                density,
                { dimension: "mass/volume", of: "none", bound: "positive" },
                `${path}.density`,
              ),
            ),
          },
    held: () => (input.package === undefined ? {} : { package: packageOf(input.package, `${path}.package`) }),
  });
  const { nitrogen, slow } = readNitrogen(input.nitrogen, read.slow, percentOf(read.analysis, "N"), path);
  refuseDryVolume(read.form, input, read.held.package, path);
  const made: Fertilizer<Id, StatedBy<G, B>> = frozen({
    type: "fertilizer",
    version: 1,
    id: read.id,
    ...read.name,
    form: read.form,
    // What the type of the grade states is what its text was read to state.
    analysis: read.analysis as Analysis<StatedBy<G, B>>,
    ...nitrogen,
    ...slow,
    ...read.density,
    ...read.held,
    ...smallFigures(read.analysis, path),
  });
  records.add(made);
  return made;
};

/** The records that were read: frozen, so that nobody can have changed them since. */
const records: WeakSet<object> = /* @__PURE__ */ new WeakSet();

/** Whether a record was made here and so needs no second reading. */
export const isRead = (product: unknown): boolean => records.has(Object(product));

const forms = ["dry", "liquid"] as const;
const bases = ["oxide", "element"] as const;
const decimals = [".", ","] as const;
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

const ownQuantity = <D extends string, S extends string>(q: Quantity<D, S>): Quantity<D, S> =>
  likeQuantity(q, q.value);

/** A share of the nitrogen would be taken for one of the product: what is neither says which is meant. */
const slowOf = (given: unknown, path: string): Quantity<"mass/mass", "N:slow/product"> => {
  try {
    const kind = { dimension: "mass/mass", of: "N:slow/product", bound: "non-negative" } as const;
    return ownQuantity(expectQuantity(given, kind, path));
  } catch (error) {
    if (error instanceof RatewrightError && error.code.endsWith("/mismatch"))
      return fail(error.code, path, given, slowText);
    throw error;
  }
};
const slowText =
  'slow-release nitrogen in percent of the product, as labels print it: where half of 24 % N is slow, quantity(12, "% w/w", "N:slow/product")';

const readId = <Id extends string>(id: Id, path: string): Id =>
  typeof id === "string" && id.length <= longestId && isSubstance(`product:${id}`)
    ? id
    : fail("type", path, id, "a short name without slash or colon, such as feed-a");

const readAnalysis = (input: FertilizerInput, path: string): Analysis => {
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
    analysis: () => analysis(input.analysis, { basis, decimal }, `${path}.analysis`),
  });
  return read.analysis;
};

/** The breakdown and the slow nitrogen, which must agree with the analysis and with each other. */
const readNitrogen = (
  guarantee: NitrogenGuarantee | undefined,
  stated: Quantity<"mass/mass", "N:slow/product"> | undefined,
  total: number,
  path: string,
): { readonly nitrogen: Pick<Fertilizer, "nitrogen">; readonly slow: Pick<Fertilizer, "slowNitrogen"> } => {
  const { broken } = allOf({
    stated: () => {
      if (stated !== undefined && stated.in("% w/w") > total * (1 + 1e-9)) {
        fail("conflict", `${path}.slowNitrogen`, stated, `at most the ${total} % N of the analysis`);
      }
    },
    broken: () => {
      if (guarantee === undefined) return undefined;
      return total === 0
        ? fail("conflict", `${path}.nitrogen`, guarantee, "no breakdown where the analysis states 0 % N")
        : nitrogenBreakdown(guarantee, total, `${path}.nitrogen`);
    },
  });
  if (stated !== undefined && broken !== undefined) {
    const [claimed, derived] = [stated.in("% w/w"), broken.slow.in("% w/w")];
    if (Math.abs(claimed - derived) > 1e-9 * Math.max(claimed, derived)) {
      const text = `the ${derived} % that the breakdown of nitrogen gives`;
      fail("conflict", `${path}.slowNitrogen`, stated, text);
    }
  }
  const slow = stated ?? broken?.slow;
  return {
    nitrogen: guarantee === undefined ? {} : { nitrogen: ownGuarantee(guarantee) },
    slow: slow === undefined ? {} : { slowNitrogen: slow },
  };
};

const ownGuarantee = ({ percent, slowWithin }: NitrogenGuarantee): NitrogenGuarantee => ({
  percent: { ...percent },
  ...(slowWithin === undefined ? {} : { slowWithin: { ...slowWithin } }),
});

/** A dry product is weighed: it has no density and no package by volume. */
const refuseDryVolume = (
  form: Fertilizer["form"],
  { density }: FertilizerInput,
  held: Fertilizer["package"],
  path: string,
): void => {
  if (form !== "dry") return;
  allOf({
    density: () =>
      density === undefined ||
      fail("conflict", `${path}.density`, density, 'no density for a dry product, or form "liquid"'),
    package: () =>
      held?.dimension !== "volume" ||
      fail("conflict", `${path}.package`, held, 'a weight for a dry product, or form "liquid"'),
  });
};

const packageOf = (input: unknown, path: string): Quantity<"mass", "none"> | Quantity<"volume", "none"> => {
  const held = expectAmount(input, { dimensions: ["mass", "volume"], of: "none", bound: "positive" }, path);
  return held.dimension === "volume"
    ? ownQuantity(expectQuantity(held, { dimension: "volume", of: "none" }, path))
    : ownQuantity(expectQuantity(held, { dimension: "mass", of: "none" }, path));
};
