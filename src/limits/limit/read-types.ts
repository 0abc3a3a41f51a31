import type { FactSource, Quantity } from "../../quantity/index.js";
import type { Limit, LimitPeriod } from "./limit.js";
import type { LimitCondition } from "./limit-condition.js";

/** What every limit has, read and checked. */
export interface ReadBase {
  readonly path: string;
  readonly id?: string;
  readonly source: FactSource;
  readonly scope?: LimitCondition;
  readonly exemptIf?: readonly LimitCondition[];
}

/** A limit on an amount, read and checked. */
export interface ReadAmountLimit extends ReadBase {
  readonly kind: "amount";
  readonly of: string;
  readonly amount: Quantity<string, string>;
  readonly per: LimitPeriod;
}

/** A limit on a number of applications, read and checked. */
export interface ReadCountLimit extends ReadBase {
  readonly kind: "count";
  readonly of: string;
  readonly amount: Quantity<string, string>;
  readonly per: LimitPeriod;
}

type Of<K extends string> = Extract<Limit, { readonly kind: K }>;
type ReadOther<K extends Exclude<Limit["kind"], "amount" | "count" | undefined>> = ReadBase &
  Omit<Of<K>, keyof ReadBase | "readOn">;

/** A limit, read and checked. */
export type ReadLimit =
  | ReadAmountLimit
  | ReadCountLimit
  | ReadOther<"interval">
  | ReadOther<"slow share">
  | ReadOther<"content">
  | ReadOther<"blackout dates">
  | ReadOther<"setback">
  | ReadOther<"buffer">
  | ReadOther<"runoff points">
  | ReadOther<"ground">
  | ReadOther<"rotation">;

/** Reads one field of a limit by its name; its problems go to the list of the limit. */
export type ReadField = <T>(name: string, read: (input: unknown, path: string) => T) => T;
