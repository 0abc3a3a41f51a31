import type { Citation } from "../../quantity/index.js";
import { type Formulation, likenesses } from "../formulation/formulation.js";

/** A published mixing order, by its id. */
export type MixingOrderId =
  | "manitoba-2013"
  | "south-dakota-state"
  | "oklahoma-state"
  | "missouri-dot"
  | "iowa-state-2021"
  | "utah-state-2012"
  | "grain-sa-2018"
  | "north-dakota-state-2021"
  | "ontario-wales"
  | "portugal-handout"
  | "us-core-manual"
  | "croplife-latin-america-2024";

/** What a source prints between two of its steps. */
export interface BetweenSteps {
  /** After which step, counted from 0. */
  readonly afterStep: number;
  readonly action: "fill" | "wait" | "shake";
  /** How full the tank is after a filling. */
  readonly fraction?: number;
  readonly text: string;
}

/** A published loading order. */
export interface MixingOrder {
  readonly id: MixingOrderId;
  /** Short name for a list of who says what. */
  readonly name: string;
  readonly source: Citation;
  /** How the order reached this library. Second-hand: quoted by another publisher. */
  readonly reached: "read" | "second-hand";
  /** How full of carrier the tank is before the first product, as printed; left out where not stated. */
  readonly waterFirst?: readonly [number, number];
  /** The kinds that go in at each step. Kinds of one step are not ordered by the source. */
  readonly steps: readonly (readonly Formulation[])[];
  /** Fillings, waits and the like between the products. */
  readonly between?: readonly BetweenSteps[];
  /** How the source wants a kind added, where it says so. */
  readonly how?: Readonly<Partial<Record<Formulation, string>>>;
  /** What the source wants between any two products. */
  readonly afterEach?: string;
  /** How words of the source were read that are not codes. */
  readonly readings?: readonly string[];
}

/** The steps of the published orders by kind, found when one is first asked for: the orders are frozen. */
const stepsFound: WeakMap<MixingOrder, Map<Formulation, number | undefined>> = /* @__PURE__ */ new WeakMap();

/**
 * At which step of a mixing order a kind goes in, from 0; `undefined` where the mixing order does not name it, nor
 * a kind that it is like.
 */
export const stepIn = (mixingOrder: MixingOrder, kind: Formulation): number | undefined => {
  let found = stepsFound.get(mixingOrder);
  if (found === undefined) {
    found = new Map();
    stepsFound.set(mixingOrder, found);
  }
  if (!found.has(kind)) found.set(kind, stepNaming(mixingOrder, kind));
  return found.get(kind);
};

/** The step that names a kind, or the first of those that it is like. */
const stepNaming = ({ steps }: MixingOrder, kind: Formulation): number | undefined => {
  for (const name of [kind, ...(likenesses[kind]?.as ?? [])]) {
    const step = steps.findIndex((kinds) => kinds.includes(name));
    if (step >= 0) return step;
  }
  return undefined;
};
