import { allOf, expectFields, expectNumber, fail } from "../../quantity/index.js";
import { type TankCaution, tankCautions } from "../cautions.js";
import { formulations } from "../formulation/formulation.js";
import { sprayOf } from "../inputs.js";
import { expectMixProducts } from "../partners/expect-mix-products.js";
import { expectCountry, objectionsOf } from "../partners/incompatibilities.js";
import type { MixProduct } from "../partners/mix-product.js";
import { consensusOrder, consensusPlace } from "../published-orders/consensus-order.js";
import { type MixingOrder, stepIn } from "../published-orders/mixing-order.js";
import { mixingOrderOf, mixingOrders } from "../published-orders/mixing-orders.js";
import type { Standing } from "../published-orders/pair-order.js";
import { arranged } from "./arranged.js";
import type { LoadingOrder, LoadingOrderInput, OrderedPair } from "./loading-order-types.js";
import { loadingSteps } from "./loading-steps.js";
import { orderFindings } from "./order-findings.js";
import { orderedPairs } from "./ordered-pairs.js";

/** Steps of a mixing order are whole numbers; the consensus orders what stands in one step. */
const fineness = consensusOrder.length;

/** Where a kind that a mixing order does not name stands in it: after all that the consensus puts before it. */
const stepByConsensus = (named: MixingOrder, product: MixProduct): number => {
  const own = consensusPlace(product.formulation);
  return named.steps.reduce(
    (last, kinds, step) => (kinds.some((kind) => consensusPlace(kind) <= own) ? step : last),
    -1,
  );
};

const placeIn = (named: MixingOrder | undefined, product: MixProduct): number => {
  const place = consensusPlace(product.formulation);
  if (named === undefined) return place;
  return (stepIn(named, product.formulation) ?? stepByConsensus(named, product)) + place / fineness;
};

/** Ids of the products whose label names a place beside another one. */
const movedByLabel = (products: readonly MixProduct[]): ReadonlySet<string> =>
  new Set(
    products
      .filter(({ addBefore = [], addAfter = [] }) => addBefore.length + addAfter.length > 0)
      .map(({ id }) => id),
  );

const byStanding = (pairs: readonly OrderedPair[]): Pick<LoadingOrder, Standing> => {
  const having = (wanted: Standing): readonly OrderedPair[] =>
    pairs.filter(({ standing }) => standing === wanted);
  return {
    firm: having("firm"),
    open: having("open"),
    unopposed: having("unopposed"),
    unsaid: having("unsaid"),
  };
};

const cautionsFor = (products: readonly MixProduct[]): readonly TankCaution[] => {
  const dry = products.some(({ formulation }) => formulations[formulation].form === "dry");
  const packet = products.some(({ formulation }) => formulation === "water-soluble packet");
  return tankCautions.filter(({ when }) =>
    when === "dry" ? dry : when === "water-soluble packet" ? packet : true,
  );
};

const expectWaterFirst = (input: LoadingOrderInput["waterFirst"]): void => {
  if (input === undefined) return;
  const { fraction, source } = expectFields(
    input,
    ["fraction", "source"],
    "waterFirst",
    "a fraction and its source",
  );
  allOf({
    fraction: () => expectNumber(fraction, "waterFirst.fraction", { above: 0, below: 1 }),
    source: () =>
      (typeof source === "string" && source !== "") ||
      fail("missing", "waterFirst.source", source, "who says so"),
  });
};

/** The published mixing order that is asked for, or none for the consensus. */
const expectMixingOrder = (id: string): MixingOrder | undefined =>
  id === "consensus"
    ? undefined
    : (mixingOrderOf(id) ??
      fail("type", "mixingOrder", id, '"consensus" or the id of a published mixingOrder', {
        choices: mixingOrders.map((mixingOrder) => mixingOrder.id),
      }));

/**
 * The steps of filling the tank: in which order the products go in, how firm that order is, and who
 * says otherwise.
 *
 * A product's own label beats everything: `addBefore` and `addAfter` are kept, and the product
 * whose label speaks is the one that moves. The rest goes by kind of formulation, by the consensus that is
 * derived from the published orders, or by one of them (`mixingOrder`). The sources do not agree: SL before EC
 * is printed by five and EC before SL by six. Such pairs come back in `open` with who says what; pairs
 * on which the sources agree come back in `firm`. The tank is filled to half before the first product
 * where neither `waterFirst` nor the mixing order says otherwise.
 *
 * The result never says that products mix: with two or more it carries the finding `jar-test`.
 *
 * @param input - `products` with `id` and `formulation` (`formulationOf` reads codes) and, as far as
 *   known, `amount`, `addBefore`, `addAfter`, `labelNote`, `lowRate` and what `incompatibilities` takes;
 *   `mixingOrder`, `"consensus"` where left out; `waterFirst`; `loadVolume`; `country`
 * @throws RatewrightError with every problem: `missing`, `duplicate`, `type`; `conflict` where label instructions form a
 *   circle, which `got` names; `unit/mismatch`, `substance/mismatch`, `range` for `loadVolume`
 *
 * Source: the twelve published orders in `mixingOrders`, each with its citation.
 *
 * @example
 * ```ts
 * import { loadingOrder } from "ratewright/tank";
 * const mix = loadingOrder({
 *   products: [
 *     { id: "wetter", formulation: "surfactant" },
 *     { id: "ester", formulation: "EC" },
 *     { id: "amine", formulation: "SL" },
 *     { id: "powder", formulation: "WP" },
 *   ],
 * });
 * mix.order; // => ["powder", "ester", "amine", "wetter"]
 * mix.open.map((pair) => [pair.first, pair.second, pair.counts.for, pair.counts.against]); // => [["ester", "amine", 6, 5]]
 * mix.findings[0]?.code; // => "jar-test"
 * ```
 */
export const loadingOrder = (input: LoadingOrderInput): LoadingOrder => {
  expectFields(input, ["products", "waterFirst", "mixingOrder", "loadVolume", "country"]);
  const { mixingOrder = "consensus", waterFirst } = input;
  const { products, named, country, loadVolume } = allOf({
    products: () => expectMixProducts(input.products),
    named: () => expectMixingOrder(mixingOrder),
    waterFirst: () => expectWaterFirst(waterFirst),
    country: () => expectCountry(input.country),
    loadVolume: () => (input.loadVolume === undefined ? undefined : sprayOf(input.loadVolume, "loadVolume")),
  });
  const place = (product: MixProduct): number => placeIn(named, product);
  const order = arranged(
    products.map((product) => ({
      id: product.id,
      place: place(product),
      before: product.addBefore ?? [],
      after: product.addAfter ?? [],
    })),
  );
  const byId = new Map(products.map((product) => [product.id, product]));
  const sorted = order.map((id) => byId.get(id) as MixProduct);
  const pairs = orderedPairs(
    sorted,
    place,
    ({ formulation }) => named !== undefined && stepIn(named, formulation) !== undefined,
  );
  const objections = objectionsOf(sorted, country);
  return {
    type: "loading-order",
    version: 1,
    mixingOrder,
    order,
    steps: loadingSteps({
      products: sorted,
      named,
      waterFirst,
      movedByLabel: movedByLabel(sorted),
      loadVolume,
    }),
    ...byStanding(pairs),
    findings: orderFindings(sorted, pairs, named, objections.findings),
    cautions: cautionsFor(sorted),
    checked: [
      "label instructions as given",
      `kinds of formulation against ${mixingOrders.length} published loading orders`,
      "published experience with the ingredients that are stated, and the number of partners",
      ...(country === undefined ? [] : [`rules of the ${country} on groups of active ingredients`]),
    ],
    notChecked: [
      ...objections.notChecked,
      "what the labels say beyond the instructions given",
      "reactions between the active ingredients, pH and hardness of the water",
      "whether the products mix: jar-test them",
    ],
  };
};
