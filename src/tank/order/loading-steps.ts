import { withoutUndefined } from "../../quantity/house.js";
import { likeQuantity, type Quantity } from "../../quantity/index.js";
import type { MixProduct } from "../partners/mix-product.js";
import { type BetweenSteps, type MixingOrder, stepIn } from "../published-orders/mixing-order.js";
import { cited } from "./cited.js";
import type { LoadingStep } from "./loading-order-types.js";
import type { Step } from "./premix-before.js";
import { productSteps } from "./product-steps.js";
import { stepCautions } from "./step-cautions.js";

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

const startAgitation = (): Step => ({
  action: "agitate",
  text: "Start agitation: rolling surface, no foam, no vortex.",
  reason: "Every product goes into moving water.",
  sources: cited("south-dakota-state", "manitoba-2013"),
});

const topUp = (): Step => ({
  action: "top up",
  fraction: [1, 1],
  text: "Rinse empty containers into the tank, then fill with clean water to the volume of the load",
  reason: "Rinse water is part of the load.",
  sources: cited("iowa-state-2021"),
});

const keepAgitating = (): Step => ({
  action: "agitate",
  text: "Keep agitating until the tank is sprayed out. Do not let the mix stand.",
  reason: "Suspensions settle and emulsions separate.",
  sources: cited("south-dakota-state", "portugal-handout"),
});

/** The steps that a mixing order prints between its products, given out as the products pass them. */
const betweenOf = (
  named: MixingOrder | undefined,
  filled: number,
): ((product: MixProduct | undefined) => readonly Step[]) => {
  const waiting = new Set(named?.between ?? []);
  const loaded = new Set<number>();
  return (product) => {
    if (named === undefined) return [];
    const at = product === undefined ? Number.POSITIVE_INFINITY : stepIn(named, product.formulation);
    if (at === undefined) return [];
    const passed = [...waiting].filter(({ afterStep }) => at > afterStep);
    for (const entry of passed) waiting.delete(entry);
    const applies = ({ action, afterStep, fraction }: BetweenSteps): boolean =>
      (action !== "wait" || loaded.has(afterStep)) &&
      (action !== "shake" || product !== undefined) &&
      // More water than a mixing order asks for at this point was put in first.
      (fraction === undefined || fraction > filled);
    const steps = passed.filter(applies).map(({ action, fraction, text }) => ({
      action,
      ...(fraction === undefined ? {} : { fraction: [fraction, fraction] as const }),
      text,
      reason: `As ${named.name} prints it.`,
      sources: [named.source],
    }));
    loaded.add(at);
    return steps;
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
  const { products, named, movedByLabel, loadVolume } = input;
  const first = fillStep(input.waterFirst, named);
  const between = betweenOf(named, first.fraction?.[1] ?? 0);
  const steps: readonly Step[] = [
    first,
    startAgitation(),
    ...products.flatMap((product) => [
      ...between(product),
      ...productSteps(product, named, movedByLabel.has(product.id)),
    ]),
    ...between(undefined),
    topUp(),
    keepAgitating(),
  ];
  return steps.map((step, i) => finished(step, i + 1, loadVolume));
};

const finished = (
  step: Step,
  number: number,
  loadVolume: Quantity<"volume", "spray"> | undefined,
): LoadingStep => {
  const { fraction, action, product } = step;
  const part = (share: number): Quantity<"volume", "spray"> | undefined =>
    loadVolume && likeQuantity(loadVolume, share * loadVolume.value);
  const low = fraction && part(fraction[0]);
  const high = fraction && part(fraction[1]);
  // A part of the load is filled by eye; the whole of it is a figure that the strength of the spray rests on.
  const read = ({ value }: { readonly value: number }): number =>
    Number(value.toPrecision(action === "top up" ? 6 : 3));
  const amounts =
    low === undefined || high === undefined
      ? ""
      : ` (${low.value === high.value ? "" : `${read(low)} to `}${read(high)} ${high.unit})`;
  const text = fraction === undefined ? step.text : step.text.replace(/\.?$/, `${amounts}.`);
  return withoutUndefined({
    number,
    action,
    productId: step.productId,
    amount: step.amount,
    fraction,
    minutes: step.minutes,
    text,
    reason: step.reason,
    sources: step.sources,
    volume: low === undefined || high === undefined ? undefined : ([low, high] as const),
    cautions: stepCautions(action, product),
  });
};
