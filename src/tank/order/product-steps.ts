import { type Citation, frozen } from "../../quantity/index.js";
import { amountText } from "../amount-text.js";
import { type Formulation, formulations } from "../formulation/formulation.js";
import type { MixProduct } from "../partners/mix-product.js";
import { type MixingOrder, stepIn } from "../published-orders/mixing-order.js";
import { ordersNaming } from "../published-orders/mixing-orders.js";
import { cited } from "./cited.js";
import { placeReasons } from "./place-reasons.js";
import { dissolved, premixBefore, type Step, slurried } from "./premix-before.js";

const packetSource: Citation = /* @__PURE__ */ frozen({
  title: "Water Soluble Packages",
  publisher: "Ontario Pesticide Education Program",
  year: 2017,
});
const amsSource: Citation = /* @__PURE__ */ frozen({
  title: "Water quality before mixing",
  publisher: "WeedSmart, Australia",
  where: "ammonium sulfate",
});

const waitAfter = (kind: Formulation, named: MixingOrder | undefined): Step | undefined => {
  if (kind === "water-soluble packet") {
    return {
      action: "wait",
      minutes: 5,
      text: "Agitate from the bottom with the lid shut until the packets are fully dissolved: up to 5 minutes, longer in cold or hard water. Stop agitation before you open the lid to look. Packets gone: basket strainer back in.",
      reason: "Undissolved film clogs screens, and the next product can stop the film from dissolving.",
      sources: [packetSource, ...cited("manitoba-2013")],
    };
  }
  if (kind === "conditioner") {
    return {
      action: "wait",
      text: "Agitate until no grains are left.",
      reason: "Undissolved ammonium sulfate can curdle amine salts for good.",
      sources: [amsSource],
    };
  }
  if (dissolved.includes(kind) || kind === "dry fertilizer") {
    return {
      action: "wait",
      text: "Agitate until no grains are left.",
      reason: "Let each product mix in fully before adding the next.",
      sources: cited("north-dakota-state-2021"),
    };
  }
  if (slurried.includes(kind)) {
    // The mixing order that is followed prints this wait itself.
    const step = named === undefined ? undefined : stepIn(named, kind);
    if (named?.between?.some(({ action, afterStep }) => action === "wait" && afterStep === step))
      return undefined;
    return {
      action: "wait",
      text: "Agitate a few minutes until it is evenly dispersed.",
      reason: "What goes in next would coat particles that are still dry.",
      sources: cited("manitoba-2013", "oklahoma-state", "ontario-wales"),
    };
  }
  if (named?.afterEach === undefined) return undefined;
  return {
    action: "wait",
    text: named.afterEach,
    reason: `As ${named.name} prints it.`,
    sources: [named.source],
  };
};

const reasonFor = (
  kind: Formulation,
  named: MixingOrder | undefined,
): { readonly reason: string; readonly sources: readonly Citation[] } => {
  const why = placeReasons()[kind];
  const first = why === undefined ? "" : `${why.text} `;
  const step = named === undefined ? undefined : stepIn(named, kind);
  if (named !== undefined && step !== undefined) {
    return {
      reason: `${named.name} lists it as number ${step + 1} of ${named.steps.length}.`,
      sources: [named.source],
    };
  }
  const listing = ordersNaming(kind);
  const counts =
    listing.length < 4
      ? `Few published mixing orders list this product type: ${listing.map(({ name }) => name).join(", ")}.`
      : `${listing.length} published mixing orders list this product type; this place keeps the most of their rankings.`;
  return {
    reason: `${first}${counts}`,
    sources: [...(why === undefined ? [] : [why.source]), ...listing.map(({ source }) => source)],
  };
};

const addStep = (
  product: MixProduct,
  named: MixingOrder | undefined,
  byLabel: boolean,
  premixed: boolean,
): Step => {
  const { id, name = id, formulation: kind, amount, labelNote } = product;
  const parts = [
    premixed ? `Pour in ${name}` : `Add ${amount === undefined ? "" : `${amountText(amount)} of `}${name}`,
  ];
  if (slurried.includes(kind)) parts.push(", slowly");
  if (kind === "water-soluble packet") parts.push(", in whole packets, away from jets and returning spray");
  parts.push(".");
  if (premixed) parts.push(" Rinse the bucket into the tank.");
  const how = named?.how?.[kind];
  if (how !== undefined) parts.push(` ${named?.name}: ${how}.`);
  if (labelNote !== undefined) parts.push(` Label: ${labelNote}`);
  const place = byLabel
    ? {
        reason: `A label puts it here; labels override the usual place of a ${formulations[kind].name}.`,
        sources: [],
      }
    : reasonFor(kind, named);
  return {
    action: "add",
    productId: id,
    product,
    ...(amount === undefined ? {} : { amount }),
    text: parts.join(""),
    ...place,
  };
};

const stopAgitation: Step = {
  action: "stop agitation",
  text: "Stop filling and agitation. Take the basket strainer out.",
  reason: "Keep packets off screens and away from the water jet.",
  sources: [packetSource],
};

/** The steps by which one product goes in: what comes before it, the pouring, and the wait after it. */
export const productSteps = (
  product: MixProduct,
  named: MixingOrder | undefined,
  byLabel: boolean,
): readonly Step[] => {
  const kind = product.formulation;
  const premix = premixBefore(product, named);
  const wait = waitAfter(kind, named);
  return [
    ...(kind === "water-soluble packet" ? [stopAgitation] : []),
    ...(premix === undefined ? [] : [premix]),
    addStep(product, named, byLabel, premix !== undefined),
    ...(wait === undefined ? [] : [wait]),
  ];
};
