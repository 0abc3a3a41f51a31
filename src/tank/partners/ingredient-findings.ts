import type { Finding } from "../../quantity/index.js";
import { finding, helpers, nameOf } from "./mix-findings.js";
import type { MixProduct } from "./mix-product.js";
import type { MixIngredient } from "./mix-rules.js";

/** One published objection: it looks through the products, in their order, and says what it finds. */
type Rule = (products: readonly MixProduct[]) => readonly Finding[];

const containing = (
  products: readonly MixProduct[],
  ...wanted: readonly MixIngredient[]
): readonly MixProduct[] =>
  products.filter(({ contains = [] }) => contains.some((part) => wanted.includes(part)));

/** Every product of the first list with every other one of the second. */
const pairsOf = (
  ones: readonly MixProduct[],
  others: readonly MixProduct[],
): readonly (readonly [MixProduct, MixProduct])[] =>
  ones.flatMap((one) => others.filter((other) => other !== one).map((other) => [one, other] as const));

const namesOf = (products: readonly MixProduct[]): string => products.map(nameOf).join(", ");

const idsOf = (products: readonly MixProduct[]): readonly string[] => products.map(({ id }) => id);

const ironWithAmine: Rule = (products) =>
  pairsOf(containing(products, "iron sulfate"), containing(products, "amine phenoxy")).map(([iron, amine]) =>
    finding(
      "mix/iron-and-amine",
      "warning",
      `${nameOf(iron)} (iron sulfate) and ${nameOf(amine)} (amine phenoxy): in a published trial iron sulfate weakened 2,4-D amine, and its authors advise against mixing the two.`,
      { first: iron.id, second: amine.id },
    ),
  );

const sulfateWithAmine: Rule = (products) =>
  pairsOf(containing(products, "ammonium sulfate"), containing(products, "amine phenoxy")).map(
    ([sulfate, amine]) => {
      const late = products.indexOf(sulfate) > products.indexOf(amine);
      return finding(
        "mix/undissolved-sulfate-and-amine",
        late ? "warning" : "caution",
        `${nameOf(sulfate)} (ammonium sulfate) must be fully dissolved before ${nameOf(amine)} (amine phenoxy) goes in${late ? ", but comes after it here" : ""}: undissolved, the two form a precipitate that does not redissolve.`,
        { first: sulfate.id, second: amine.id, late: late ? "yes" : "no" },
      );
    },
  );

const thiosulfateLast: Rule = (products) =>
  containing(products, "ammonium thiosulfate").map((thiosulfate) => {
    const after = products
      .slice(products.indexOf(thiosulfate) + 1)
      .filter(({ formulation }) => !helpers.includes(formulation));
    const early = after.length > 0;
    return finding(
      "mix/thiosulfate-last",
      early ? "warning" : "caution",
      `${nameOf(thiosulfate)} (ammonium thiosulfate) goes in last, once the rest is thoroughly mixed${early ? `, but comes before ${namesOf(after)} here.` : ". As the sole carrier it never mixed well in published tests."}`,
      { product: thiosulfate.id, before: idsOf(after) },
    );
  });

/** What keeps the film of a packet from dissolving. */
const hinderers: readonly MixIngredient[] = [
  "ammonium sulfate",
  "ammonium thiosulfate",
  "chloride or sulfur fertilizer",
  "organic solvent",
];

const filmHindered: Rule = (products) => {
  const hindering = products.filter(
    ({ formulation, contains = [] }) =>
      formulation === "liquid fertilizer" ||
      formulation === "dry fertilizer" ||
      contains.some((part) => hinderers.includes(part)),
  );
  return products
    .filter(({ formulation }) => formulation === "water-soluble packet")
    .flatMap((packet) => {
      const others = hindering.filter((other) => other !== packet);
      if (others.length === 0) return [];
      const early = others.filter((other) => products.indexOf(other) < products.indexOf(packet));
      return finding(
        "mix/film-hindered",
        early.length > 0 ? "warning" : "caution",
        `${
          early.length > 0
            ? `${namesOf(early)} comes before the packets of ${nameOf(packet)}`
            : `The packets of ${nameOf(packet)} must be fully dissolved before ${namesOf(others)}`
        }: chlorine and sulfur ions and some solvents keep the film from dissolving.`,
        { product: packet.id, others: idsOf(others), early: idsOf(early) },
      );
    });
};

const compatibilityAgent: Rule = (products) =>
  products
    .filter(({ formulation }) => formulation === "compatibility agent")
    .slice(0, 1)
    .map((agent) =>
      finding(
        "mix/compatibility-agent",
        "note",
        `Some herbicides cannot be mixed with a compatibility agent such as ${nameOf(agent)}: see their labels.`,
        { product: agent.id },
      ),
    );

const micronutrientFines: Rule = (products) =>
  products
    .filter(
      ({ formulation, contains = [] }) =>
        formulation === "micronutrient" || contains.includes("micronutrients"),
    )
    .map((micro) =>
      finding(
        "mix/micronutrient-fines",
        "note",
        `${nameOf(micro)} contains micronutrients, which can raise the share of fine droplets that drift.`,
        { product: micro.id },
      ),
    );

const rules: readonly Rule[] = [
  ironWithAmine,
  sulfateWithAmine,
  thiosulfateLast,
  filmHindered,
  compatibilityAgent,
  micronutrientFines,
];

/** What published experience has against what the products contain, and the order they stand in. */
export const ingredientFindings = (products: readonly MixProduct[]): readonly Finding[] =>
  rules.flatMap((rule) => rule(products));
