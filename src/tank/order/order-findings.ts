import type { Finding } from "../../quantity/index.js";
import { formulations, likenesses } from "../formulation/formulation.js";
import { nameOf } from "../partners/mix-findings.js";
import type { MixProduct } from "../partners/mix-product.js";
import { type MixingOrder, stepIn } from "../published-orders/mixing-order.js";
import { ordersNaming } from "../published-orders/mixing-orders.js";
import type { OrderedPair } from "./loading-order-types.js";

/** Fewer mixing orders than this that list a kind are said to be few: the same limit as for a firm pair. */
const few = 4;

const list = (names: readonly string[]): string => names.join(", ");

/** What decided a pair, as the end of a sentence. */
const decidedBy = ({ resolvedBy, counts }: OrderedPair): string =>
  ({
    label: "a label says so",
    "chosen order": "the mixing order that was chosen says so",
    majority: `${counts.for} of the ${counts.for + counts.against} published orders that rank the two say so`,
    consensus:
      counts.for === counts.against
        ? "the published orders tie on these two; the sequence that keeps the most published rankings has it so"
        : "the sequence that keeps the most published rankings has it so, though most sources on these two say the reverse",
    id: "no published order decides; the ids are in alphabetical order",
  })[resolvedBy];

const jarTest = (count: number, warned: boolean): Finding => ({
  code: "jar-test",
  severity: "caution",
  params: { products: count, publishedObjection: warned ? "yes" : "none known" },
  text: `${warned ? "See the published objections to this mix or its order." : "No published objection is known. That does not mean they mix."} Check every label for tank-mix restrictions, and do the jar test with water from the spray source.`,
  source: {
    title: "Tank mixing spray partners",
    publisher: "Michigan State University Extension",
    where: "physical incompatibility; a jar test shows the physical side only",
  },
});

const putty = (first: MixProduct, second: MixProduct): Finding => ({
  code: "order/emulsion-before-powder",
  severity: "warning",
  params: { first: first.id, second: second.id },
  text: `${nameOf(first)} (emulsifiable concentrate) goes in before ${nameOf(second)} (wettable powder): this order is reported to form a floating putty. Check the label again.`,
  source: {
    title: "Tank mixing spray partners",
    publisher: "Michigan State University Extension",
    where: "physical incompatibility",
  },
});

const overruled = (a: MixProduct, b: MixProduct, pair: OrderedPair): Finding => {
  const { first, second, counts, says, resolvedBy } = pair;
  return {
    code: "order/firm-pair-overruled",
    severity: "warning",
    params: { first, second, by: resolvedBy, against: says.against, for: says.for },
    text: `${nameOf(a)} goes in before ${nameOf(b)}, because ${decidedBy(pair)}; ${counts.against} published orders print the reverse (${list(says.against)}).`,
  };
};

const openPair = (a: MixProduct, b: MixProduct, pair: OrderedPair): Finding => {
  const { first, second, says, resolvedBy } = pair;
  const called = (product: MixProduct): string =>
    `${nameOf(product)} (${formulations[product.formulation].name})`;
  const same = says.same.length > 0 ? `; same step: ${list(says.same)}` : "";
  return {
    code: "order/open-pair",
    severity: "note",
    params: { first, second, resolvedBy, for: says.for, against: says.against, same: says.same },
    text: `Sources disagree on ${called(a)} before ${called(b)} (for: ${list(says.for)}; against: ${list(says.against)}${same}). Here ${nameOf(a)} goes in first: ${decidedBy(pair)}. The labels decide.`,
  };
};

const pairFindings = (pair: OrderedPair, products: readonly MixProduct[]): readonly Finding[] => {
  const { first, second, counts, standing } = pair;
  const a = products.find(({ id }) => id === first);
  const b = products.find(({ id }) => id === second);
  if (a === undefined || b === undefined) return [];
  return [
    ...(a.formulation === "EC" && b.formulation === "WP" ? [putty(a, b)] : []),
    ...(standing === "firm" && counts.against > counts.for ? [overruled(a, b, pair)] : []),
    ...(standing === "open" ? [openPair(a, b, pair)] : []),
  ];
};

const placeFindings = (product: MixProduct, named: MixingOrder | undefined): readonly Finding[] => {
  const { id, name = id, formulation } = product;
  const kind = formulations[formulation].name;
  const like = likenesses[formulation];
  const listedBy = ordersNaming(formulation);
  const findings: Finding[] = [];
  if (like?.analogy === true) {
    findings.push({
      code: "order/by-analogy",
      severity: "note",
      params: { product: id, formulation, like: like.as },
      text: `No published order lists a ${kind}, as ${name} is; it is placed with similar formulations (${list(like.as)}).`,
      source: "common practice, no source",
    });
  } else if (listedBy.length < few) {
    const sources = listedBy.map((each) => each.name);
    findings.push({
      code: "order/few-sources",
      severity: "note",
      params: { product: id, formulation, sources },
      text: `Few published mixing orders list a ${kind}, as ${name} is: ${list(sources)}.`,
    });
  }
  if (named !== undefined && stepIn(named, formulation) === undefined) {
    findings.push({
      code: "order/not-in-mixing-order",
      severity: "note",
      params: { product: id, formulation, mixingOrder: named.id },
      text: `${named.name} does not list a ${kind}, as ${name} is; its place comes from the consensus.`,
    });
  }
  return findings;
};

/** What there is to say about an order: pairs that a label or mixing order turned round, few sources, open questions. */
export const orderFindings = (
  products: readonly MixProduct[],
  pairs: readonly OrderedPair[],
  named: MixingOrder | undefined,
  objections: readonly Finding[],
): readonly Finding[] => {
  const findings = [
    ...objections,
    ...pairs.flatMap((pair) => pairFindings(pair, products)),
    ...products.flatMap((product) => placeFindings(product, named)),
  ];
  const warned =
    objections.some(({ severity }) => severity !== "note") ||
    findings.some(({ severity }) => severity === "warning");
  return products.length > 1 ? [jarTest(products.length, warned), ...findings] : findings;
};
