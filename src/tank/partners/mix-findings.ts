import { type Finding, frozen } from "../../quantity/index.js";
import type { Formulation } from "../formulation/formulation.js";
import type { MixProduct } from "./mix-product.js";
import { groupRules, type MixIngredient, mixRuleSources } from "./mix-rules.js";

/** Kinds that help another product; they are no partners of the mix in the sense of the advice. */
export const helpers: readonly Formulation[] = /* @__PURE__ */ frozen([
  "conditioner",
  "conditioner with surfactant",
  "compatibility agent",
  "defoamer",
  "dry drift agent",
  "drift agent",
  "surfactant",
  "oil adjuvant",
]);

/** What to call a product in a text. */
export const nameOf = ({ id, name = id }: MixProduct): string => name;

type Code = keyof typeof mixRuleSources;

/** A finding with the source of its rule. */
export const finding = (
  code: Code,
  severity: Finding["severity"],
  text: string,
  params: Finding["params"],
): Finding => ({ code, severity, text, params, source: mixRuleSources[code] });

/** What published experience has against two products together, in their order. */
export const pairFindings = (products: readonly MixProduct[]): Finding[] => {
  const findings: Finding[] = [];
  const having = (...wanted: readonly MixIngredient[]): readonly MixProduct[] =>
    products.filter(({ contains = [] }) => contains.some((part) => wanted.includes(part)));
  const place = (product: MixProduct): number => products.indexOf(product);
  const amines = having("amine phenoxy");
  for (const iron of having("iron sulfate")) {
    for (const amine of amines.filter((other) => other !== iron)) {
      findings.push(
        finding(
          "mix/iron-and-amine",
          "warning",
          `${nameOf(iron)} (iron sulfate) and ${nameOf(amine)} (amine phenoxy): in a published trial iron sulfate weakened 2,4-D amine, and its authors advise to keep the two out of one tank.`,
          { first: iron.id, second: amine.id },
        ),
      );
    }
  }
  for (const sulfate of having("ammonium sulfate")) {
    for (const amine of amines.filter((other) => other !== sulfate)) {
      const late = place(sulfate) > place(amine);
      findings.push(
        finding(
          "mix/undissolved-sulfate-and-amine",
          late ? "warning" : "caution",
          `${nameOf(sulfate)} (ammonium sulfate) must be fully dissolved before ${nameOf(amine)} (amine phenoxy) goes in${late ? ", and stands after it here" : ""}: undissolved, the two make a precipitate that does not go back.`,
          { first: sulfate.id, second: amine.id, late: late ? "yes" : "no" },
        ),
      );
    }
  }
  for (const thiosulfate of having("ammonium thiosulfate")) {
    const after = products
      .slice(place(thiosulfate) + 1)
      .filter(({ formulation }) => !helpers.includes(formulation));
    findings.push(
      finding(
        "mix/thiosulfate-last",
        after.length > 0 ? "warning" : "caution",
        after.length > 0
          ? `${nameOf(thiosulfate)} (ammonium thiosulfate) goes in last, once the rest is thoroughly mixed, and stands before ${after.map(nameOf).join(", ")} here.`
          : `${nameOf(thiosulfate)} (ammonium thiosulfate) goes in last, once the rest is thoroughly mixed. As the only carrier it never mixed well in published tests.`,
        { product: thiosulfate.id, before: after.map(({ id }) => id) },
      ),
    );
  }
  for (const packet of products.filter(({ formulation }) => formulation === "water-soluble packet")) {
    const hindering = products.filter(
      (other) =>
        other !== packet &&
        (["liquid fertilizer", "dry fertilizer"].includes(other.formulation) ||
          having(
            "ammonium sulfate",
            "ammonium thiosulfate",
            "chloride or sulfur fertilizer",
            "organic solvent",
          ).includes(other)),
    );
    const early = hindering.filter((other) => place(other) < place(packet));
    if (hindering.length === 0) continue;
    findings.push(
      finding(
        "mix/film-hindered",
        early.length > 0 ? "warning" : "caution",
        early.length > 0
          ? `${early.map(nameOf).join(", ")} stands before the packets of ${nameOf(packet)}: chlorine and sulfur ions and some solvents keep the film from dissolving.`
          : `The packets of ${nameOf(packet)} must be fully dissolved before ${hindering.map(nameOf).join(", ")}: chlorine and sulfur ions and some solvents keep the film from dissolving.`,
        { product: packet.id, others: hindering.map(({ id }) => id), early: early.map(({ id }) => id) },
      ),
    );
  }
  const agent = products.find(({ formulation }) => formulation === "compatibility agent");
  if (agent !== undefined) {
    findings.push(
      finding(
        "mix/compatibility-agent",
        "note",
        `Some herbicides do not go together with a compatibility agent such as ${nameOf(agent)}: see their labels.`,
        { product: agent.id },
      ),
    );
  }
  for (const micro of products.filter(
    ({ formulation, contains = [] }) =>
      formulation === "micronutrient" || contains.includes("micronutrients"),
  )) {
    findings.push(
      finding(
        "mix/micronutrient-fines",
        "note",
        `${nameOf(micro)} brings micronutrients: they can raise the share of fine droplets that drift.`,
        { product: micro.id },
      ),
    );
  }
  return findings;
};

/** What the labels, and a country's rules on groups, have against the products. */
export const labelFindings = (products: readonly MixProduct[], country: "UK" | undefined): Finding[] => {
  const findings: Finding[] = [];
  products.forEach((one, i) => {
    for (const other of products) {
      if (other === one) continue;
      const refused = (one.labelProhibits ?? []).filter(
        (word) => word === other.id || (other.groups ?? []).includes(word),
      );
      if (refused.length > 0) {
        findings.push({
          code: "mix/label-refuses",
          severity: "warning",
          params: { product: one.id, other: other.id, refuses: refused },
          text: `The label of ${nameOf(one)} says not to mix it with ${nameOf(other)}${refused.includes(other.id) ? "" : ` (${refused.join(", ")})`}. The label wins.`,
          source: `the label of ${nameOf(one)}`,
        });
      }
    }
    for (const other of products.slice(i + 1)) {
      const named =
        one.labelNames?.includes(other.id) === true || other.labelNames?.includes(one.id) === true;
      if (named) continue;
      for (const rule of groupRules) {
        if (rule.country !== country) continue;
        if (!one.groups?.includes(rule.group) || !other.groups?.includes(rule.group)) continue;
        findings.push({
          code: "mix/two-of-a-group",
          severity: "warning",
          params: { first: one.id, second: other.id, group: rule.group, country: rule.country },
          text: `${nameOf(one)} and ${nameOf(other)} are both ${rule.group}: in the ${rule.country} ${rule.text}.`,
          source: rule.source,
        });
      }
    }
  });
  return findings;
};
