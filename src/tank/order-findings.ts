import type { Finding } from "../quantity/index.js";
import { formulations, likenesses } from "./formulation.js";
import { type Ladder, stepIn } from "./ladder.js";
import { ladders } from "./ladders.js";
import type { MixProduct, OrderedPair } from "./loading-order-types.js";

/** Fewer ladders than this that name a kind are said to be few: the same limit as for a firm pair. */
const few = 4;

const list = (names: readonly string[]): string => (names.length === 0 ? "none" : names.join(", "));

const jarTest = (count: number, warned: boolean): Finding => ({
  code: "jar-test",
  severity: "caution",
  params: { products: count, publishedObjection: warned ? "yes" : "none known" },
  text: `${warned ? "Published objections to this order stand beside this finding." : "No published objection known to mixing these kinds in this order, which says nothing about whether the products mix."} Read every label for mixing partners, and jar-test the mix with the water that goes into the tank.`,
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
  text: `${first.id} (emulsifiable concentrate) goes in before ${second.id} (wettable powder): published experience is a putty that floats and does not mix. Ask the label again.`,
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
): readonly Finding[] => {
  const findings: Finding[] = [];
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
        text: `${first} goes in before ${second} by ${pair.resolvedBy}; ${votes.against} published orders print the reverse (${list(says.against)}).`,
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
        text: `Sources disagree on ${first} (${a.formulation}) and ${second} (${b.formulation}). This order: ${list(says.for)}. The reverse: ${list(says.against)}. Same step: ${list(says.same)}. Put in this order by ${pair.resolvedBy}; the labels decide.`,
      });
    }
  }
  for (const { id, formulation } of products) {
    const like = likenesses[formulation];
    const namedBy = ladders.filter((ladder: Ladder) => stepIn(ladder, formulation) !== undefined);
    if (like?.analogy === true) {
      findings.push({
        code: "order/by-analogy",
        severity: "note",
        params: { product: id, formulation, like: like.as },
        text: `No published order names the ${formulations[formulation].name} of ${id}; it stands where ${like.as.join(" or ")} stands.`,
        source: "common practice, no source",
      });
    } else if (namedBy.length < few) {
      findings.push({
        code: "order/few-sources",
        severity: "note",
        params: { product: id, formulation, sources: namedBy.map(({ name }) => name) },
        text: `The place of ${id} (${formulations[formulation].name}) rests on few published orders: ${list(namedBy.map(({ name }) => name))}.`,
      });
    }
    if (named !== undefined && stepIn(named, formulation) === undefined) {
      findings.push({
        code: "order/not-in-ladder",
        severity: "note",
        params: { product: id, formulation, ladder: named.id },
        text: `${named.name} does not name the ${formulations[formulation].name} of ${id}; its place comes from the consensus.`,
      });
    }
  }
  const warned = findings.some(({ severity }) => severity === "warning");
  return products.length > 1 ? [jarTest(products.length, warned), ...findings] : findings;
};
