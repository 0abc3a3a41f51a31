import type { Citation, Finding, Quantity } from "../../quantity/index.js";
import type { TankCaution } from "../cautions.js";
import type { LoadVolume, MixAmount, MixProduct } from "../partners/mix-product.js";
import type { MixingOrderId } from "../published-orders/mixing-order.js";
import type { Standing } from "../published-orders/pair-order.js";

/** What {@link loadingOrder} takes. */
export interface LoadingOrderInput {
  readonly products: readonly MixProduct[];
  /** How full of water the tank is before the first product, and who says so. */
  readonly waterFirst?: { readonly fraction: number; readonly source: string };
  /** Which order to follow: the derived consensus, or one published mixing order. */
  readonly mixingOrder?: "consensus" | MixingOrderId;
  /** Finished spray of this load; the steps then say volumes beside shares. */
  readonly loadVolume?: LoadVolume;
  /** Which country's limits on mixing to hold the mix against. */
  readonly country?: "UK";
}

/** What is done at a step. */
export type LoadingAction =
  | "fill"
  | "agitate"
  | "stop agitation"
  | "premix"
  | "shake"
  | "add"
  | "wait"
  | "top up";

/** One step of filling the tank. */
export interface LoadingStep {
  readonly number: number;
  readonly action: LoadingAction;
  readonly productId?: string;
  readonly amount?: MixAmount;
  /** How full the tank is after a filling: least and most. */
  readonly fraction?: readonly [number, number];
  /** The same as volumes, least and most, where the volume of the load is given. */
  readonly volume?: readonly [Quantity<"volume", "spray">, Quantity<"volume", "spray">];
  /** How long a wait is printed to take, in minutes. */
  readonly minutes?: number;
  readonly text: string;
  readonly reason: string;
  /** What can hurt at this step. */
  readonly cautions: readonly TankCaution[];
  /** Who prints the rule; empty where it is common practice without a source. */
  readonly sources: readonly Citation[];
}

/** Two products in the order of the result, and what the published mixing orders say of their kinds. */
export interface OrderedPair {
  readonly first: string;
  readonly second: string;
  readonly standing: Standing;
  readonly counts: { readonly for: number; readonly against: number; readonly same: number };
  /** Names of the sources by what they say of the order given here. */
  readonly says: {
    readonly for: readonly string[];
    readonly against: readonly string[];
    readonly same: readonly string[];
  };
  /**
   * What put them in this order: a label; the mixing order that was asked for; the majority of the sources that list
   * both; where these tie or do not say, the consensus over all kinds; or, for want of any, their ids.
   */
  readonly resolvedBy: ResolvedBy;
}

/** What decides a pair: see {@link OrderedPair}. */
export type ResolvedBy = "label" | "chosen order" | "majority" | "consensus" | "id";

/** The steps of filling the tank, and how firm they are. */
export interface LoadingOrder {
  readonly type: "loading-order";
  readonly version: 1;
  readonly mixingOrder: "consensus" | MixingOrderId;
  /** Ids of the products as they go in. */
  readonly order: readonly string[];
  readonly steps: readonly LoadingStep[];
  /** Pairs on which the sources agree. Where `counts.against` is larger, a label or mixing order overruled them. */
  readonly firm: readonly OrderedPair[];
  /** Pairs on which the sources disagree: the labels decide. */
  readonly open: readonly OrderedPair[];
  /** Pairs that few sources order, and none the other way. */
  readonly unopposed: readonly OrderedPair[];
  /** Pairs that no source orders. */
  readonly unsaid: readonly OrderedPair[];
  readonly findings: readonly Finding[];
  readonly cautions: readonly TankCaution[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}
