import { checks, expectQuantity, type FactSource, fail, type Quantity } from "../../quantity/index.js";
import { isNutrient, type Nutrient } from "../label/analysis.js";

/** What a cap can limit: a nutrient in one of its forms, or the soluble or slow part of the nitrogen. */
export type CappedSubstance = Nutrient | "N:soluble" | "N:slow";

/** A share of the nitrogen that is slow: percent of NITROGEN. */
type SlowShare = Quantity<"mass/mass", "N:slow/N">;

/** The most of a nutrient per area in one application, by a statute, a code or a recommendation. */
export interface RateCap {
  /** A short name for lists; its substance where left out. */
  readonly id?: string;
  readonly limit: { readonly [S in CappedSubstance]: Quantity<"mass/area", S> }[CappedSubstance];
  /** The cap applies only to products of this slow share of the nitrogen, or more. */
  readonly fromSlowShare?: SlowShare;
  /** The cap applies only to products with less than this slow share of the nitrogen. */
  readonly belowSlowShare?: SlowShare;
  readonly source?: FactSource;
}

/** A cap as the formulas use it. */
export interface ReadCap {
  readonly id: string;
  readonly of: CappedSubstance;
  readonly limit: Quantity<"mass/area", string>;
  /** Percent of the nitrogen. */
  readonly from: number;
  readonly below: number | undefined;
  readonly source: FactSource | undefined;
}

/** Takes a share of the nitrogen, 0 to 100 %, or throws with its path. */
export const expectSlowShare = (input: unknown, path: string): number => {
  const share = expectQuantity(
    input,
    { dimension: "mass/mass", of: "N:slow/N", bound: "non-negative" },
    path,
  );
  const percent = share.in("% w/w");
  return percent > 100 ? fail("range", path, share, "at most 100 % of the nitrogen") : percent;
};

/** Takes a list of caps, or throws with every problem. */
export const readCaps = (input: readonly RateCap[], path: string): ReadCap[] => {
  if (!Array.isArray(input)) return fail("type", path, input, "a list of caps");
  if (input.length === 0) return fail("missing", path, "an empty list", "at least one cap");
  const door = checks();
  const caps: ReadCap[] = [];
  (input as readonly RateCap[]).forEach((cap, i) => {
    const at = `${path}[${i}]`;
    door.run(() => {
      const limit = expectQuantity(cap?.limit, { dimension: "mass/area", bound: "non-negative" }, "limit");
      if (!isNutrient(limit.of) && limit.of !== "N:soluble" && limit.of !== "N:slow") {
        fail("substance/mismatch", "limit", limit, "a nutrient, N:soluble or N:slow");
      }
      const from = cap.fromSlowShare === undefined ? 0 : expectSlowShare(cap.fromSlowShare, "fromSlowShare");
      const below =
        cap.belowSlowShare === undefined ? undefined : expectSlowShare(cap.belowSlowShare, "belowSlowShare");
      if (below !== undefined && below <= from) {
        const text = `more than ${from} %: no product is both`;
        fail("conflict", "belowSlowShare", cap.belowSlowShare, text);
      }
      const id = cap.id ?? limit.of;
      if (typeof id !== "string") fail("type", "id", id, "text");
      if (caps.some((other) => other.id === id))
        fail("duplicate", "id", id, "a name of its own for each cap");
      const of = limit.of as CappedSubstance;
      caps.push({ id, of, limit, from, below, source: cap.source });
    }, at);
  });
  door.done();
  return caps;
};
