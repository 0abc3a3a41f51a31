import {
  expectQuantity,
  isSubstance,
  nearName,
  type Problem,
  type Quantity,
  RatewrightError,
  shown,
} from "../../quantity/index.js";
import { type Analysis, analysis, percentOf } from "./analysis.js";
import { type NitrogenGuarantee, nitrogenBreakdown } from "./nitrogen-breakdown.js";

/** A fertilizer product: what its label states. Plain data; its quantities become JSON and come back. */
export interface Fertilizer<Id extends string = string> {
  readonly type: "fertilizer";
  readonly version: 1;
  /** Tags every amount of this product, so that two products are never mixed up. */
  readonly id: Id;
  readonly name?: string;
  /** A liquid is weighed only through its density. */
  readonly form: "dry" | "liquid";
  readonly analysis: Analysis;
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
}

/** What {@link fertilizer} is told: the label, with the analysis as text or as a record. */
export interface FertilizerInput<Id extends string = string> {
  readonly id: Id;
  readonly name?: string;
  /** `"dry"` where it is left out. */
  readonly form?: "dry" | "liquid";
  readonly analysis: string | Analysis;
  /** How a grade in text is read; oxides where it is left out, as on United States labels. */
  readonly basis?: "oxide" | "element";
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
 * Where no slow-release nitrogen is stated, all nitrogen counts as quick: a label that claims slow
 * release must state it. A breakdown of nitrogen (`nitrogen`) gives the slow nitrogen; where both are
 * stated they must agree.
 *
 * @throws RatewrightError with every problem of the record: `missing`, `text`, `range`, `conflict`,
 *   `unit/mismatch`, `substance/mismatch`
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
export const fertilizer = <const Id extends string>(
  input: FertilizerInput<Id>,
  path = "fertilizer",
): Fertilizer<Id> => {
  const problems: Problem[] = [];
  const attempt = <T>(work: () => T): T | undefined => {
    try {
      return work();
    } catch (error) {
      if (!(error instanceof RatewrightError)) throw error;
      problems.push(...error.problems);
      return undefined;
    }
  };
  const problem = (code: Problem["code"], at: string, got: unknown, expected: string): void => {
    problems.push({ code, path: `${path}.${at}`, got: shown(got), expected });
  };
  if (typeof input !== "object" || input === null) {
    throw new RatewrightError({ code: "type", path, got: shown(input), expected: "a fertilizer record" });
  }
  // A record may hold more than this, but a misspelt field would count as not stated.
  for (const field of Object.keys(input)) {
    const near = known.includes(field) ? undefined : nearName(field, known);
    if (near === undefined || (input as unknown as Readonly<Record<string, unknown>>)[near] !== undefined)
      continue;
    problems.push({
      code: "type",
      path: `${path}.${field}`,
      got: `a field "${field}"`,
      expected: `the field ${near}, or another name`,
      suggestion: near,
    });
  }
  const { id, name, form = "dry", basis = "oxide" } = input;
  if (typeof id !== "string" || !isSubstance(`product:${id}`)) {
    problem(
      id === undefined ? "missing" : "type",
      "id",
      id,
      "a short name without slash or colon, such as feed-a",
    );
  }
  if (name !== undefined && typeof name !== "string") problem("type", "name", name, "text");
  if (form !== "dry" && form !== "liquid") problem("type", "form", form, '"dry" or "liquid"');
  const readable = basis === "oxide" || basis === "element";
  if (!readable) problem("type", "basis", basis, '"oxide" or "element"');
  const stated =
    input.analysis === undefined
      ? problem("missing", "analysis", undefined, 'a grade such as "24-0-11"')
      : attempt(() => analysis(input.analysis, readable ? basis : "oxide", `${path}.analysis`));
  const slow =
    input.slowNitrogen === undefined
      ? undefined
      : attempt(() =>
          expectQuantity(
            input.slowNitrogen,
            { dimension: "mass/mass", of: "N:slow/product", bound: "non-negative" },
            `${path}.slowNitrogen`,
          ),
        );
  if (slow !== undefined && stated !== undefined) {
    const total = percentOf(stated, "N");
    if (slow.in("% w/w") > total * (1 + 1e-9)) {
      problem("conflict", "slowNitrogen", slow, `at most the ${total} % N of the analysis`);
    }
  }
  const nitrogen = stated === undefined ? undefined : percentOf(stated, "N");
  if (input.nitrogen !== undefined && nitrogen === 0) {
    problem("conflict", "nitrogen", input.nitrogen, "no breakdown where the analysis states 0 % N");
  }
  const broken =
    input.nitrogen !== undefined && nitrogen
      ? attempt(() => nitrogenBreakdown(input.nitrogen, nitrogen, `${path}.nitrogen`))
      : undefined;
  if (slow !== undefined && broken !== undefined) {
    const [claimed, derived] = [slow.in("% w/w"), broken.slow.in("% w/w")];
    if (Math.abs(claimed - derived) > 1e-9 * Math.max(claimed, derived)) {
      problem("conflict", "slowNitrogen", slow, `the ${derived} % that the breakdown of nitrogen gives`);
    }
  }
  const slowNitrogen = slow ?? broken?.slow;
  const density =
    input.density === undefined
      ? undefined
      : attempt(() =>
          expectQuantity(
            input.density,
            { dimension: "mass/volume", of: "none", bound: "positive" },
            `${path}.density`,
          ),
        );
  const held =
    input.package === undefined ? undefined : attempt(() => packageOf(input.package, `${path}.package`));
  if (form === "dry" && input.density !== undefined) {
    problem("conflict", "density", input.density, 'no density for a dry product, or form "liquid"');
  }
  if (form === "dry" && held?.dimension === "volume") {
    problem("conflict", "package", held, 'a weight for a dry product, or form "liquid"');
  }
  if (problems.length > 0) throw new RatewrightError(problems);
  return {
    type: "fertilizer",
    version: 1,
    id,
    ...(name === undefined ? {} : { name }),
    form,
    analysis: stated as Analysis,
    ...(input.nitrogen === undefined ? {} : { nitrogen: input.nitrogen }),
    ...(slowNitrogen === undefined ? {} : { slowNitrogen }),
    ...(density === undefined ? {} : { density }),
    ...(held === undefined ? {} : { package: held }),
  };
};

const known: readonly string[] = [
  "name",
  "form",
  "analysis",
  "basis",
  "nitrogen",
  "slowNitrogen",
  "density",
  "package",
] satisfies readonly (keyof FertilizerInput)[];

const packageOf = (input: unknown, path: string): Quantity<"mass", "none"> | Quantity<"volume", "none"> => {
  const { dimension, unit } = (input ?? {}) as { dimension?: unknown; unit?: unknown };
  const volume =
    dimension === "volume" ||
    (typeof unit === "string" && /^(mL|L|m3|(imp )?gal|qt|pt|(imp )?fl oz)$/.test(unit));
  return volume
    ? expectQuantity(input, { dimension: "volume", of: "none", bound: "positive" }, path)
    : expectQuantity(input, { dimension: "mass", of: "none", bound: "positive" }, path);
};
