import { type Citation, frozen } from "../../quantity/index.js";
import { amountText } from "../amount-text.js";
import type { Formulation } from "../formulation/formulation.js";
import type { MixProduct } from "../partners/mix-product.js";
import type { MixingOrder } from "../published-orders/mixing-order.js";
import { mixingOrders } from "../published-orders/mixing-orders.js";
import type { LoadingStep } from "./loading-order-types.js";

/** Dry kinds that stay in suspension. */
export const slurried: readonly Formulation[] = /* @__PURE__ */ frozen(["WP", "WG", "WT", "EP", "EG"]);
/** Dry kinds that dissolve. */
export const dissolved: readonly Formulation[] = /* @__PURE__ */ frozen(["SG", "SP", "ST"]);

/** A step before it has its number, its volume and its cautions. */
export type Step = Omit<LoadingStep, "number" | "volume" | "cautions"> & { readonly product?: MixProduct };

/** The mixing orders that want a kind stirred into water before it goes in, the chosen one alone where it does. */
const stirring = (kind: Formulation, named: MixingOrder | undefined): readonly Citation[] => {
  const wants = ({ how }: MixingOrder): boolean => /slurry|paste|stirred|dissolved/.test(how?.[kind] ?? "");
  return named !== undefined && wants(named)
    ? [named.source]
    : mixingOrders.filter(wants).map(({ source }) => source);
};

/** What is stirred or dissolved in a bucket before it goes in, and who says so. */
export const premixBefore = (product: MixProduct, named: MixingOrder | undefined): Step | undefined => {
  const { name = product.id, formulation: kind, amount, lowRate } = product;
  const what = `${amount === undefined ? "" : `${amountText(amount)} of `}${name}`;
  if (slurried.includes(kind)) {
    return {
      action: "premix",
      productId: product.id,
      product,
      text: `Stir ${what} into a little clean water to a thin, even slurry.`,
      reason: `Dry powder tipped straight in makes lumps.${stirring(kind, named).length > 0 ? "" : " Common practice, no source."}`,
      sources: stirring(kind, named),
    };
  }
  if (dissolved.includes(kind)) {
    return {
      action: "premix",
      productId: product.id,
      product,
      text: `Dissolve ${what} in a little clean water.`,
      reason: "A small amount dissolves faster in a bucket than in the tank.",
      sources: stirring("SG", named),
    };
  }
  if (lowRate !== true || kind === "water-soluble packet") return undefined;
  return {
    action: "premix",
    productId: product.id,
    product,
    text: `Stir ${what} into a clean bucket of water.`,
    reason: "Such a small amount would not spread through the tank on its own. Common practice, no source.",
    sources: [],
  };
};
