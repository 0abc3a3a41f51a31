import { allOf, expectFields, type Finding, fail } from "../../quantity/index.js";
import { expectMixProducts } from "./expect-mix-products.js";
import { ingredientFindings } from "./ingredient-findings.js";
import { finding, helpers, labelFindings, nameOf } from "./mix-findings.js";
import type { MixProduct } from "./mix-product.js";
import { mostPartners } from "./mix-rules.js";

/** What published rules have against a mix. It never says that the products mix. */
export interface Incompatibilities {
  readonly type: "incompatibilities";
  readonly version: 1;
  readonly answer:
    | "no published objection known; jar-test it"
    | "published objections stand; see the findings";
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** What {@link incompatibilities} takes. */
export interface IncompatibilitiesInput {
  /** In the order in which they go in, where that is known. */
  readonly products: readonly MixProduct[];
  /** Whose rules on groups to hold the mix against. */
  readonly country?: "UK";
}

/** Takes a country whose rules are known, or none. */
export const expectCountry = (input: unknown): "UK" | undefined =>
  input === undefined || input === "UK" ? input : fail("type", "country", input, '"UK", or none');

/** {@link incompatibilities} for products that were checked, in their order. */
export const objectionsOf = (
  products: readonly MixProduct[],
  country: "UK" | undefined,
): { readonly findings: readonly Finding[]; readonly notChecked: readonly string[] } => {
  const notChecked: string[] = [];
  const findings = [...labelFindings(products, country), ...ingredientFindings(products)];
  const partners = products.filter(({ formulation }) => !helpers.includes(formulation));
  if (partners.length > mostPartners) {
    findings.push(
      finding(
        "mix/many-partners",
        "caution",
        `${partners.length} products besides adjuvants and conditioners: a published guide advises ${mostPartners} at most, because their formulation ingredients interfere with each other.`,
        { partners: partners.length, most: mostPartners },
      ),
    );
  }
  const silent = products.filter(({ contains }) => contains === undefined);
  if (silent.length > 0)
    notChecked.push(
      `rules about ingredients, for ${silent.map(nameOf).join(", ")}: "contains" is not stated`,
    );
  if (country === undefined)
    notChecked.push("rules of a country on groups of active ingredients: none is named");
  else if (products.some(({ groups }) => groups === undefined))
    notChecked.push(
      `rules on groups of active ingredients, for ${products
        .filter(({ groups }) => groups === undefined)
        .map(nameOf)
        .join(", ")}: "groups" is not stated`,
    );
  return { findings, notChecked };
};

/**
 * What published rules have against mixing these products: the label's own refusals, two of a group where
 * a country's rules say so, and what a source has seen go wrong (ammonium thiosulfate before the rest,
 * ammonium sulfate or iron sulfate with an amine phenoxy, fertilizer before packets are dissolved, more
 * than three partners). Only rules with a source are here;
 * boron with packets, for which none was found, is not.
 *
 * The answer is never that products mix: at best that no published objection is known, which a jar test
 * has to follow. A finding of the severity `note` is no objection: it is told, and the answer stays.
 *
 * @param input - `products`, each with `id` and `formulation` and, as far as known, `contains`, `groups`,
 *   `labelProhibits`, `labelNames`; their order counts; `country`
 * @throws RatewrightError `missing`, `duplicate`, `type`, `unit/mismatch`, `range`
 *
 * Source: named in each finding; `mixRuleSources` and `groupRules` list them.
 *
 * @example
 * ```ts
 * import { incompatibilities } from "ratewright/tank";
 * const mix = incompatibilities({
 *   products: [
 *     { id: "amine", formulation: "SL", contains: ["amine phenoxy"] },
 *     { id: "iron", formulation: "SP", contains: ["iron sulfate"] },
 *   ],
 * });
 * mix.answer; // => "published objections stand; see the findings"
 * mix.findings.map(({ code }) => code); // => ["mix/iron-and-amine"]
 * ```
 */
export const incompatibilities = (input: IncompatibilitiesInput): Incompatibilities => {
  expectFields(input, ["products", "country"]);
  const { products, country } = allOf({
    products: () => expectMixProducts(input.products),
    country: () => expectCountry(input.country),
  });
  const { findings, notChecked } = objectionsOf(products, country);
  const stands = findings.some(({ severity }) => severity !== "note");
  return {
    type: "incompatibilities",
    version: 1,
    answer: stands
      ? "published objections stand; see the findings"
      : "no published objection known; jar-test it",
    findings,
    checked: [
      "what the labels prohibit, as far as stated",
      "published experience with the ingredients that are stated",
      `the number of partners against published advice (${mostPartners} at most)`,
      ...(country === undefined ? [] : [`rules of the ${country} on groups of active ingredients`]),
    ],
    notChecked: [
      ...notChecked,
      "what the labels say beyond what is stated here",
      "whether the products mix in this water: jar-test them",
    ],
  };
};
