import { notShare } from "../../numeric/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type FactSource,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { expectShortText, expectSource } from "../label/expect-source.js";
import { isNutrient, type Nutrient } from "../label/nutrient.js";
import { eachOf, listOf } from "../label/under-path.js";

/** What a cap can limit: a nutrient in one of its forms, or the quick- or slow-release part of the nitrogen. */
export type CappedSubstance = Nutrient | "N:quick" | "N:slow";

/** A share of the nitrogen that is slow: percent of NITROGEN. */
type SlowShare = Quantity<"mass/mass", "N:slow/N">;

/** The most of a nutrient per area in one application, by a statute, a code or a recommendation. */
export interface RateCap {
  /** A short name for lists; its substance where left out. */
  readonly id?: string;
  /** What is still open under it; below zero, or zero, where it is used up: the rate is then zero. */
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
  return percent > 100
    ? outOfRange(path, share, { max: 100, unit: "%" }, "{} of the nitrogen")
    : notShare(percent, path);
};

const capFields = ["id", "limit", "fromSlowShare", "belowSlowShare", "source"] as const;
const mostCaps = 200;

const isCapped = (of: string): of is CappedSubstance => isNutrient(of) || of === "N:quick" || of === "N:slow";

const readCap = (cap: RateCap): ReadCap => {
  expectFields(cap, capFields, "", "a cap: { limit }");
  const { limit, from, below, id, source } = allOf({
    // Below zero where more went down than the cap has: it is used up.
    limit: () => {
      const amount = expectQuantity(cap.limit, { dimension: "mass/area" }, "limit");
      const { of } = amount;
      return isCapped(of)
        ? { amount, of }
        : fail("substance/mismatch", "limit", amount, "a nutrient, N:quick or N:slow");
    },
    from: () => (cap.fromSlowShare === undefined ? 0 : expectSlowShare(cap.fromSlowShare, "fromSlowShare")),
    below: () =>
      cap.belowSlowShare === undefined ? undefined : expectSlowShare(cap.belowSlowShare, "belowSlowShare"),
    id: () => (cap.id === undefined ? undefined : expectShortText(cap.id, "id", "a name of the cap")),
    source: () => (cap.source === undefined ? undefined : expectSource(cap.source, "source")),
  });
  if (below !== undefined && below <= from) {
    fail("conflict", "belowSlowShare", cap.belowSlowShare, `more than ${from} %: no product is both`);
  }
  return { id: id ?? limit.of, of: limit.of, limit: limit.amount, from, below, source };
};

/** Takes a list of caps, or throws with every problem. */
export const readCaps = (input: readonly RateCap[], path: string): ReadCap[] => {
  const list = listOf(input, path, "cap", mostCaps) as readonly RateCap[];
  const ids = new Set<string>();
  return eachOf(list, path, (given) => {
    const cap = readCap(given);
    if (ids.has(cap.id)) fail("duplicate", "id", cap.id, "a name of its own for each cap");
    ids.add(cap.id);
    return cap;
  });
};
