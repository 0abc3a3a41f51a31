import { type Finding, frozen } from "../../quantity/index.js";
import type { Formulation } from "../formulation/formulation.js";
import type { MixProduct } from "./mix-product.js";
import { groupRules, mixRuleSources } from "./mix-rules.js";

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

/** What the label of one product says against another. */
const labelObjection = (one: MixProduct, other: MixProduct): readonly Finding[] => {
  const refused = (one.labelProhibits ?? []).filter(
    (word) => word === other.id || (other.groups ?? []).includes(word),
  );
  if (refused.length === 0) return [];
  return [
    {
      code: "mix/label-prohibits",
      severity: "warning",
      params: { product: one.id, other: other.id, prohibits: refused },
      text: `The label of ${nameOf(one)} says not to mix it with ${nameOf(other)}${refused.includes(other.id) ? "" : ` (${refused.join(", ")})`}. The label wins.`,
      source: `the label of ${nameOf(one)}`,
    },
  ];
};

/** The rules of a country on groups that hold of two products, unless a label names the other as a partner. */
const groupObjections = (
  one: MixProduct,
  other: MixProduct,
  country: "UK" | undefined,
): readonly Finding[] => {
  if (one.labelNames?.includes(other.id) || other.labelNames?.includes(one.id)) return [];
  return groupRules
    .filter(
      (rule) =>
        rule.country === country && one.groups?.includes(rule.group) && other.groups?.includes(rule.group),
    )
    .map((rule) => ({
      code: "mix/two-of-a-group",
      severity: "warning",
      params: { first: one.id, second: other.id, group: rule.group, country: rule.country },
      text: `${nameOf(one)} and ${nameOf(other)} are both ${rule.group}: in the ${rule.country} ${rule.text}.`,
      source: rule.source,
    }));
};

/** What the labels, and a country's rules on groups, have against the products. */
export const labelFindings = (
  products: readonly MixProduct[],
  country: "UK" | undefined,
): readonly Finding[] =>
  products.flatMap((one, i) => [
    ...products.filter((other) => other !== one).flatMap((other) => labelObjection(one, other)),
    ...products.slice(i + 1).flatMap((other) => groupObjections(one, other, country)),
  ]);
