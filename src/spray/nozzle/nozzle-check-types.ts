import type { Finding, Quantity } from "../../quantity/index.js";
import type { Share } from "../inputs.js";

/**
 * What to do with a nozzle. `check again`: it lies above the mean only because plugged nozzles pull the mean down;
 * clean those, catch the boom again, and decide then.
 */
export type NozzleVerdict = "keep" | "clean" | "check again" | "replace";

/** One nozzle of a boom, as it was caught. */
export interface NozzleResult<S extends string> {
  /** 1 for the first catch. */
  readonly number: number;
  readonly flow: Quantity<"volume/time", S>;
  /** How far it lies above the mean of the boom. */
  readonly fromMean: Share;
  /** How far it lies above the rated flow; left out where none was given. */
  readonly fromRated?: Share;
  readonly verdict: NozzleVerdict;
  /** Which limits it passed. */
  readonly reasons: readonly ("above rated" | "above mean" | "below rated" | "below mean")[];
}

/** A boom, nozzle by nozzle. */
export interface NozzleCheck<S extends string> {
  readonly type: "nozzle-check";
  readonly version: 1;
  readonly nozzles: readonly NozzleResult<S>[];
  readonly mean: Quantity<"volume/time", S>;
  /** The flows between which a nozzle is as near the mean as the limit asks. */
  readonly band: { readonly low: Quantity<"volume/time", S>; readonly high: Quantity<"volume/time", S> };
  /** How uneven the boom is: the coefficient of variation by the divisor that was named. */
  readonly evenness: Share;
  readonly findings: readonly Finding[];
  readonly checked: readonly string[];
  readonly notChecked: readonly string[];
}

/** Percent beyond which a nozzle is off. */
export interface BoomLimits {
  readonly aboveRated: number;
  readonly belowRated: number;
  readonly ofMean: number;
}
