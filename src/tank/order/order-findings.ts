import type { Finding } from "../../quantity/index.js";
import { formulations, likenesses } from "../formulation/formulation.js";
import type { MixProduct } from "../partners/mix-product.js";
import { type Ladder, stepIn } from "../votes/ladder.js";
import { ladders } from "../votes/ladders.js";
import type { OrderedPair } from "./loading-order-types.js";

/** Fewer ladders than this that name a kind are said to be few: the same limit as for a firm pair. */
const few = 4;

const how: Readonly<Record<OrderedPair["resolvedBy"], string>> = {
  label: "a label",
  ladder: "the published order that was chosen",
  consensus: "the votes of all published orders",
  id: "its id, for want of any rule",
};

const list = (names: readonly string[]): string => (names.length === 0 ? "none" : names.join(", "));

const jarTest = (count: number, warned: boolean): Finding => ({
  code: "jar-test",
  severity: "caution",
  params: { products: count, publishedObjection: warned ? "yes" : "none known" },
  text: `${warned ? "Published objections to this mix or its order stand beside this finding." : "No published objection known; jar-test it. That none is known says nothing about whether the products mix."} Read every label for mixing partners, and do the jar test with the water that goes into the tank.`,
  source: {
    title: "Tank mixing spray partners",
    publisher: "Michigan State University Extension",
    where: "physical incompatibility; a jar test shows the physical side only",
  },
});

const nameOf = ({ id, name = id }: MixProduct): string => name;

const putty = (first: MixProduct, second: MixProduct): Finding => ({
  code: "order/emulsion-before-powder",
  severity: "warning",
  params: { first: first.id, second: second.id },
  text: `${nameOf(first)} (emulsifiable concentrate) goes in before ${nameOf(second)} (wettable powder): published experience is a putty that floats and does not mix. Ask the label again.`,
  source: {
    title: "Tank mixing spray partners",
    publisher: "Michigan State University Extension",
    where: "physical incompatibility",
  },
});

/** What there is to say about an order: pairs that a label or ladder turned round, thin ground, open questions. */
export const orderFindings = (
  products: readonly MixProduct[],
  pairs: readonly OrderedPair[],
  named: Ladder | undefined,
  objections: readonly Finding[],
): readonly Finding[] => {
  const findings: Finding[] = [...objections];
  for (const pair of pairs) {
    const { first, second, votes, says, standing } = pair;
    const [a, b] = [first, second].map((id) => products.find((product) => product.id === id)) as [
      MixProduct,
      MixProduct,
    ];
    if (a.formulation === "EC" && b.formulation === "WP") findings.push(putty(a, b));
    if (standing === "firm" && votes.against > votes.for) {
      findings.push({
        code: "order/firm-pair-overruled",
        severity: "warning",
        params: { first, second, by: pair.resolvedBy, against: says.against, for: says.for },
        text: `${nameOf(a)} goes in before ${nameOf(b)} by ${how[pair.resolvedBy]}; ${votes.against} published orders print the reverse (${list(says.against)}).`,
      });
    }
    if (standing === "open") {
      findings.push({
        code: "order/open-pair",
        severity: "note",
        params: {
          first,
          second,
          resolvedBy: pair.resolvedBy,
          for: says.for,
          against: says.against,
          same: says.same,
        },
        text: `Published orders disagree whether ${nameOf(a)} (${formulations[a.formulation].name}) goes in before ${nameOf(b)} (${formulations[b.formulation].name}). Before: ${list(says.for)}. After: ${list(says.against)}.${says.same.length > 0 ? ` In one step: ${list(says.same)}.` : ""} Here it goes in before, by ${how[pair.resolvedBy]}; the labels decide.`,
      });
    }
  }
  for (const { id, name = id, formulation } of products) {
    const like = likenesses[formulation];
    const namedBy = ladders.filter((ladder: Ladder) => stepIn(ladder, formulation) !== undefined);
    if (like?.analogy === true) {
      findings.push({
        code: "order/by-analogy",
        severity: "note",
        params: { product: id, formulation, like: like.as },
        text: `No published order names a ${formulations[formulation].name}, as ${name} is; it stands where ${like.as.join(" or ")} stands.`,
        source: "common practice, no source",
      });
    } else if (namedBy.length < few) {
      findings.push({
        code: "order/few-sources",
        severity: "note",
        params: { product: id, formulation, sources: namedBy.map(({ name }) => name) },
        text: `The place of ${name} (${formulations[formulation].name}) rests on few published orders: ${list(namedBy.map(({ name }) => name))}.`,
      });
    }
    if (named !== undefined && stepIn(named, formulation) === undefined) {
      findings.push({
        code: "order/not-in-ladder",
        severity: "note",
        params: { product: id, formulation, ladder: named.id },
        text: `${named.name} does not name a ${formulations[formulation].name}, as ${name} is; its place comes from the consensus.`,
      });
    }
  }
  const warned =
    objections.some(({ severity }) => severity !== "note") ||
    findings.some(({ severity }) => severity === "warning");
  return products.length > 1 ? [jarTest(products.length, warned), ...findings] : findings;
};
