import type { Citation } from "../quantity/index.js";
import { type Formulation, formulations } from "./formulation.js";
import { type Ladder, stepIn } from "./ladder.js";
import { ladderOf, ladders } from "./ladders.js";
import type { LoadingStep, MixProduct } from "./loading-order-types.js";

const cited = (...ids: readonly string[]): readonly Citation[] =>
  ids.flatMap((id) => {
    const ladder = ladderOf(id);
    return ladder === undefined ? [] : [ladder.source];
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

const slurried: readonly Formulation[] = ["WP", "WG", "WT", "EP", "EG"];
const dissolved: readonly Formulation[] = ["SG", "SP", "ST", "dry fertilizer"];

type Step = Omit<LoadingStep, "number">;

const waitAfter = (kind: Formulation): Step | undefined => {
  if (kind === "packet") {
    return {
      action: "wait",
      text: "Agitate from the bottom with the lid shut until the packets are fully dissolved: up to 5 minutes, longer in cold or hard water. Stop agitation before you open the lid to look.",
      reason: "A film that is not dissolved clogs screens, and what comes next can keep it from dissolving.",
      sources: [packetSource, ...cited("manitoba-2013")],
    };
  }
  if (kind === "conditioner") {
    return {
      action: "wait",
      text: "Agitate until it is fully dissolved.",
      reason: "Ammonium sulfate that is not dissolved can curdle amine salts for good.",
      sources: [amsSource],
    };
  }
  if (dissolved.includes(kind)) {
    return {
      action: "wait",
      text: "Agitate until it is fully dissolved.",
      reason: "Each ingredient is evenly mixed before the next.",
      sources: cited("north-dakota-state-2021"),
    };
  }
  if (slurried.includes(kind)) {
    return {
      action: "wait",
      text: "Agitate a few minutes until it is evenly dispersed.",
      reason: "What goes in next would coat particles that are still dry.",
      sources: cited("manitoba-2013", "oklahoma-state", "ontario-wales"),
    };
  }
  return undefined;
};

const namedBy = (kind: Formulation): readonly Citation[] =>
  ladders.filter((ladder: Ladder) => stepIn(ladder, kind) !== undefined).map(({ source }) => source);

const addStep = (product: MixProduct, named: Ladder | undefined, byLabel: boolean): Step => {
  const { id, name = id, formulation: kind, amount, labelNote, lowRate } = product;
  const parts = [`Add ${amount === undefined ? "" : `${amount.value} ${amount.unit} of `}${name}`];
  if (slurried.includes(kind)) parts.push(", slowly, stirred into a little water first");
  if (kind === "packet") parts.push(", in whole packets");
  parts.push(".");
  if (lowRate === true) {
    parts.push(
      " Stir the small amount into a clean bucket of water, pour it in, and rinse the bucket into the tank.",
    );
  }
  if (labelNote !== undefined) parts.push(` Label: ${labelNote}`);
  const what = formulations[kind].name;
  return {
    action: "add",
    productId: id,
    ...(amount === undefined ? {} : { amount }),
    text: parts.join(""),
    reason: byLabel
      ? `A label puts it here, and labels win over the place of a ${what}.`
      : named === undefined
        ? `The place of: ${what}, by the votes of the published orders.`
        : `The place of: ${what}, as ${named.name} prints it.`,
    sources: byLabel ? [] : named === undefined ? namedBy(kind) : [named.source],
  };
};

const percent = (fraction: number): string => `${Math.round(fraction * 100)} %`;

const fillStep = (
  waterFirst: { readonly fraction: number; readonly source: string } | undefined,
  named: Ladder | undefined,
): Step => {
  const printed = waterFirst === undefined ? named?.waterFirst : undefined;
  const [low, high] = printed ?? [waterFirst?.fraction ?? 0.5, waterFirst?.fraction ?? 0.5];
  return {
    action: "fill",
    fraction: [low, high],
    text: `Fill the tank with clean water to ${low === high ? percent(low) : `${percent(low)} to ${percent(high)}`} of the load.`,
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
  readonly named: Ladder | undefined;
  readonly waterFirst: { readonly fraction: number; readonly source: string } | undefined;
  readonly movedByLabel: ReadonlySet<string>;
}): readonly LoadingStep[] => {
  const { products, named } = input;
  const steps: Step[] = [
    fillStep(input.waterFirst, named),
    {
      action: "agitate",
      text: "Start agitation: the surface rolls, without drawing in air.",
      reason: "Every product goes into moving water.",
      sources: cited("south-dakota-state", "manitoba-2013"),
    },
  ];
  const refill = named?.refill;
  let filled = false;
  const refillBefore = (product: MixProduct | undefined): void => {
    if (refill === undefined || named === undefined || filled) return;
    const step = product === undefined ? Number.POSITIVE_INFINITY : stepIn(named, product.formulation);
    if (step === undefined || step <= refill.afterStep) return;
    filled = true;
    steps.push({
      action: "fill",
      fraction: [refill.fraction, refill.fraction],
      text: `Fill with clean water to ${percent(refill.fraction)} of the load, with agitation.`,
      reason: `As ${named.name} prints it.`,
      sources: [named.source],
    });
  };
  for (const product of products) {
    refillBefore(product);
    const packet = product.formulation === "packet";
    if (packet) {
      steps.push({
        action: "stop agitation",
        text: "Stop filling and agitation, and take the basket out.",
        reason: "Packets must not lie on a screen or under a stream.",
        sources: [packetSource],
      });
    }
    steps.push(addStep(product, named, input.movedByLabel.has(product.id)));
    const wait = waitAfter(product.formulation);
    if (wait !== undefined) steps.push(wait);
  }
  refillBefore(undefined);
  steps.push(
    {
      action: "top up",
      fraction: [1, 1],
      text: "Rinse empty containers into the tank, then fill with clean water to the volume of the load.",
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
  return steps.map((step, i) => ({ number: i + 1, ...step }));
};
