import { type Citation, type Quantity, quantityOf } from "../../quantity/index.js";
import { amountText } from "../amount-text.js";
import { type Formulation, formulations } from "../formulation/formulation.js";
import type { MixProduct } from "../partners/mix-product.js";
import { type MixingOrder, stepIn } from "../published-orders/mixing-order.js";
import { mixingOrderOf, mixingOrders } from "../published-orders/mixing-orders.js";
import type { LoadingStep } from "./loading-order-types.js";
import { placeReasons } from "./place-reasons.js";
import { dissolved, premixBefore, type Step, slurried } from "./premix-before.js";
import { stepCautions } from "./step-cautions.js";

const cited = (...ids: readonly string[]): readonly Citation[] =>
  ids.flatMap((id) => {
    const mixingOrder = mixingOrderOf(id);
    return mixingOrder === undefined ? [] : [mixingOrder.source];
  });

const packetSource: Citation = {
  title: "Water Soluble Packages",
  publisher: "Ontario Pesticide Education Program",
  year: 2017,
};
const amsSource: Citation = {
  title: "Water quality before mixing",
  publisher: "WeedSmart, Australia",
  where: "ammonium sulfate",
};

const waitAfter = (kind: Formulation, named: MixingOrder | undefined): Step | undefined => {
  if (kind === "water-soluble packet") {
    return {
      action: "wait",
      minutes: 5,
      text: "Agitate from the bottom with the lid shut until the packets are fully dissolved: up to 5 minutes, longer in cold or hard water. Stop agitation before you open the lid to look.",
      reason: "Undissolved film clogs screens, and the next product can stop the film from dissolving.",
      sources: [packetSource, ...cited("manitoba-2013")],
    };
  }
  if (kind === "conditioner") {
    return {
      action: "wait",
      text: "Agitate until no grains are left.",
      reason: "Ammonium sulfate that is not dissolved can curdle amine salts for good.",
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

/** The mixing orders that name a kind, or one that it is like. */
const namedBy = (kind: Formulation): readonly MixingOrder[] =>
  mixingOrders.filter((mixingOrder) => stepIn(mixingOrder, kind) !== undefined);

const reasonFor = (
  kind: Formulation,
  named: MixingOrder | undefined,
): { readonly reason: string; readonly sources: readonly Citation[] } => {
  const why = placeReasons()[kind];
  const first = why === undefined ? "" : `${why.text} `;
  const step = named === undefined ? undefined : stepIn(named, kind);
  if (named !== undefined && step !== undefined) {
    return {
      reason: `${named.name} prints it as number ${step + 1} of ${named.steps.length}.`,
      sources: [named.source],
    };
  }
  const voters = namedBy(kind);
  const counts =
    voters.length === 0
      ? "No published order lists it; it is placed with similar formulations."
      : voters.length < 4
        ? `Few published mixing orders list this product type: ${voters.map(({ name }) => name).join(", ")}.`
        : `${voters.length} published mixing orders list this product type; its place keeps the most of their rankings.`;
  return {
    reason: `${first}${counts}`,
    sources: [...(why === undefined ? [] : [why.source]), ...voters.map(({ source }) => source)],
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
        reason: `A label puts it here, and labels win over the place of a ${formulations[kind].name}.`,
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

const percent = (fraction: number): string => `${Math.round(fraction * 100)} %`;

const fillStep = (
  waterFirst: { readonly fraction: number; readonly source: string } | undefined,
  named: MixingOrder | undefined,
): Step => {
  const printed = waterFirst === undefined ? named?.waterFirst : undefined;
  const [low, high] = printed ?? [waterFirst?.fraction ?? 0.5, waterFirst?.fraction ?? 0.5];
  return {
    action: "fill",
    fraction: [low, high],
    text: `Fill the tank with clean water to ${low === high ? percent(low) : `${percent(low)} to ${percent(high)}`} of the load`,
    reason:
      waterFirst !== undefined
        ? `As ${waterFirst.source} says.`
        : printed !== undefined
          ? `As ${named?.name} prints it.`
          : "Half is what most of the sources print; they range from 25 % to 75 %.",
    sources:
      waterFirst !== undefined
        ? []
        : printed !== undefined && named !== undefined
          ? [named.source]
          : cited("missouri-dot", "oklahoma-state", "ontario-wales", "manitoba-2013"),
  };
};

/** The steps from the empty tank to the full one, for products in their order. */
export const loadingSteps = (input: {
  readonly products: readonly MixProduct[];
  readonly named: MixingOrder | undefined;
  readonly waterFirst: { readonly fraction: number; readonly source: string } | undefined;
  readonly movedByLabel: ReadonlySet<string>;
  readonly loadVolume: Quantity<"volume", "spray"> | undefined;
}): readonly LoadingStep[] => {
  const { products, named, loadVolume } = input;
  const first = fillStep(input.waterFirst, named);
  const filled = first.fraction?.[1] ?? 0;
  const steps: Step[] = [
    first,
    {
      action: "agitate",
      text: "Start agitation: rolling surface, no foam, no vortex.",
      reason: "Every product goes into moving water.",
      sources: cited("south-dakota-state", "manitoba-2013"),
    },
  ];
  const waiting = [...(named?.between ?? [])];
  const loaded = new Set<number>();
  /** What the mixing order prints between its steps, once the products have passed it. */
  const pass = (product: MixProduct | undefined): void => {
    if (named === undefined) return;
    const at = product === undefined ? Number.POSITIVE_INFINITY : stepIn(named, product.formulation);
    if (at === undefined) return;
    for (const entry of waiting.filter(({ afterStep }) => at > afterStep)) {
      waiting.splice(waiting.indexOf(entry), 1);
      if (entry.action === "wait" && !loaded.has(entry.afterStep)) continue;
      if (entry.action === "shake" && product === undefined) continue;
      // More water than a mixing order asks for at this point was put in first.
      if (entry.fraction !== undefined && entry.fraction <= filled) continue;
      const { action, fraction, text } = entry;
      steps.push({
        action,
        ...(fraction === undefined ? {} : { fraction: [fraction, fraction] as const }),
        text,
        reason: `As ${named.name} prints it.`,
        sources: [named.source],
      });
    }
  };
  for (const product of products) {
    pass(product);
    const kind = product.formulation;
    if (kind === "water-soluble packet") {
      steps.push({
        action: "stop agitation",
        text: "Stop filling and agitation, and take the basket out.",
        reason: "Packets must not lie on a screen or under a stream.",
        sources: [packetSource],
      });
    }
    const premix = premixBefore(product, named);
    if (premix !== undefined) steps.push(premix);
    steps.push(addStep(product, named, input.movedByLabel.has(product.id), premix !== undefined));
    const step = named === undefined ? undefined : stepIn(named, kind);
    if (step !== undefined) loaded.add(step);
    const wait = waitAfter(kind, named);
    if (wait !== undefined) steps.push(wait);
  }
  pass(undefined);
  steps.push(
    {
      action: "top up",
      fraction: [1, 1],
      text: "Rinse empty containers into the tank, then fill with clean water to the volume of the load",
      reason: "Rinse water is part of the load.",
      sources: cited("iowa-state-2021"),
    },
    {
      action: "agitate",
      text: "Keep agitating until the tank is sprayed out. Do not let the mix stand.",
      reason: "Suspensions settle and emulsions separate.",
      sources: cited("south-dakota-state", "portugal-handout"),
    },
  );
  return steps.map((step, i) => finished(step, i + 1, loadVolume));
};

const finished = (
  { product, ...step }: Step,
  number: number,
  loadVolume: Quantity<"volume", "spray"> | undefined,
): LoadingStep => {
  const { fraction, action } = step;
  const volume =
    fraction === undefined || loadVolume === undefined
      ? undefined
      : (fraction.map((part) =>
          quantityOf(part * loadVolume.value, loadVolume.unit, "spray", "loadVolume"),
        ) as unknown as LoadingStep["volume"]);
  const [low, high] = volume ?? [];
  // A part of the load is filled by eye; the whole of it is a figure that the strength of the spray rests on.
  const read = ({ value }: { readonly value: number }): number =>
    Number(value.toPrecision(action === "top up" ? 6 : 3));
  const amounts =
    low === undefined || high === undefined
      ? ""
      : ` (${low.value === high.value ? "" : `${read(low)} to `}${read(high)} ${high.unit})`;
  const text = fraction === undefined ? step.text : `${step.text.replace(/\.$/, "")}${amounts}.`;
  return {
    number,
    ...step,
    ...(action === "premix" && product !== undefined ? { productId: product.id } : {}),
    ...(volume === undefined ? {} : { volume }),
    text,
    cautions: stepCautions(action, product),
  };
};
