import { notShare } from "../../numeric/house.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  expectRecord,
  expectText,
  type Finding,
  fail,
  outOfRange,
  Quantity,
} from "../../quantity/index.js";
import type { LimeMeasure } from "../lime/lime-methods.js";
import type { LimeRequirement } from "../lime/lime-requirement.js";
import { expectPercent } from "../report/expect-ph.js";
import type { LimeQuality } from "./lime-quality.js";

/** A lime recommendation, adjusted to the lime at hand. */
export interface LimeProductRate<I extends string = string> {
  readonly type: "lime-product-rate";
  readonly version: 1;
  /** Of the material as delivered. */
  readonly rate: Quantity<"mass/area", `product:${I}`>;
  /** By which measure, and its percent; for standard lime the weight that equals a ton, in percent of a ton. */
  readonly measure: LimeMeasure;
  readonly percent: number;
  readonly findings: readonly Finding[];
}

interface Need {
  readonly rate: Quantity<"mass/area", string>;
  readonly measure: LimeMeasure;
  readonly method?: string;
}

const needOf = (record: { readonly [K in "requirement" | "rate" | "measure"]?: unknown }): Need => {
  if (record.requirement !== undefined) {
    if (record.rate !== undefined || record.measure !== undefined) {
      fail("conflict", "rate", described("both"), "a requirement, or a rate with its measure, not both");
    }
    const given = expectRecord(record.requirement, "requirement", "a lime requirement");
    const rate = expectQuantity(
      given.rate,
      { dimension: "mass/area", bound: "non-negative" },
      "requirement.rate",
    );
    return {
      ...withMeasure(rate, given.measure, "requirement"),
      ...(typeof given.method === "string" ? { method: given.method } : {}),
    };
  }
  if (record.rate === undefined) {
    fail("missing", "requirement", undefined, "what limeRequirement gives, or a rate with its measure");
  }
  const rate = expectQuantity(record.rate, { dimension: "mass/area", bound: "non-negative" }, "rate");
  return withMeasure(rate, record.measure, "");
};

const withMeasure = (rate: Quantity<"mass/area", string>, measure: unknown, at: string): Need => {
  const path = (name: string): string => (at === "" ? name : `${at}.${name}`);
  const known = measure === "CCE" || measure === "effective" || measure === "standard lime";
  if (!known) {
    return fail(
      "type",
      path("measure"),
      measure,
      '"CCE", "effective" or "standard lime": what the recommendation is in',
    );
  }
  const of = measure === "standard lime" ? "product:standard-lime" : "CaCO3 equivalent";
  return rate.of === of
    ? { rate, measure }
    : fail(
        "substance/mismatch",
        path("rate"),
        rate,
        `a rate of ${of}; pounds of ENM or ECCE a ton go into limeForRating`,
      );
};

/** Percent of the recommendation's own lime that a weight of the material counts for. */
const worthOf = (measure: LimeMeasure, quality: unknown): number => {
  const given = expectRecord(quality, "quality", "what limeQuality gives") as Partial<LimeQuality>;
  if (measure === "standard lime") {
    if (given.equalToTon === undefined || given.equalToTon === null) {
      fail(
        "missing",
        "quality.equalToTon",
        undefined,
        "the weight that the label sets equal to a ton of standard lime",
      );
    }
    const wanted = { dimension: "mass", of: "product", bound: "positive" } as const;
    return 100 / expectQuantity(given.equalToTon, wanted, "quality.equalToTon").in("US ton");
  }
  const path = measure === "CCE" ? "quality.CCE" : "quality.effective";
  const value = measure === "CCE" ? given.CCE : given.effective;
  const expected =
    measure === "CCE"
      ? "the calcium carbonate equivalent of the lime: limeQuality({ CCE })"
      : "an effective value: limeQuality with the sieve test, or with the effective value of the label";
  if (value === undefined || value === null) return fail("missing", path, undefined, expected);
  const percent = notShare(expectPercent(value, path, 250), path, { least: 2.5, most: 250, unit: "" });
  if (!(percent > 0)) outOfRange(path, percent, { above: 0 });
  // The equivalent is that of dry lime; what comes off the truck holds its water.
  const moisture = expectPercent(given.moisture ?? 0, "quality.moisture", 99);
  return measure === "CCE" ? (percent * (100 - moisture)) / 100 : percent;
};

/**
 * A lime recommendation as a rate of the lime at hand: `P = L 100 / e`.
 *
 * - `L` rate as calcium carbonate equivalent, from `limeRequirement` or as a report prints it
 * - `e` percent of the lime at hand as delivered, by the measure that the recommendation is in: its calcium carbonate
 *   equivalent less its moisture, or its effective value after fineness and moisture. A recommendation in standard lime is multiplied by the weight
 *   that the label sets equal to a ton of it
 *
 * Some recommendations take limestone of 90 % for granted: then `L` is the printed rate times 0.90
 * (Ohio, Indiana and Michigan did so in 1995).
 *
 * @param input.requirement - what `limeRequirement` gave; or `rate` with `measure` for a rate off a report
 * @param input.quality - what `limeQuality` gives
 * @param input.id - what to call the material
 * @throws RatewrightError `missing` (the measure that is asked for is not known of this lime), `range`, `conflict`,
 *   `substance/mismatch`, `type`, `unit/mismatch`
 *
 * Source: "Commercial Turf - Maintain" and "Home Garden", Pennsylvania State University Agricultural Analytical
 * Services Laboratory: 75 lb at a CCE of 80 are 94 lb.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { limeProductRate, limeQuality } from "ratewright/soil";
 * const found = limeProductRate({
 *   rate: quantity(75, "lb/1000 ft2", "CaCO3 equivalent"), measure: "CCE",
 *   quality: limeQuality({ CCE: 80 }), id: "lime-a",
 * });
 * found.rate.toString(); // => "93.75 lb/1000 ft2 of product:lime-a"
 * ```
 */
export const limeProductRate = <const I extends string>(input: {
  readonly requirement?: LimeRequirement;
  readonly rate?: Quantity<"mass/area", "CaCO3 equivalent"> | Quantity<"mass/area", "product:standard-lime">;
  readonly measure?: LimeMeasure;
  readonly quality: LimeQuality;
  readonly id: I;
}): LimeProductRate<I> => {
  const record = expectFields(input, ["requirement", "rate", "measure", "quality", "id"], "input");
  const { need, id } = allOf({
    need: () => needOf(record),
    id: () => expectText(record.id, "id", "an id of the material, such as lime-a"),
  });
  const percent = worthOf(need.measure, record.quality);
  const { value, unit } = need.rate;
  const { scheme } = expectRecord(record.quality, "quality") as Partial<LimeQuality>;
  return {
    type: "lime-product-rate",
    version: 1,
    rate: new Quantity((value * 100) / percent, unit, `product:${id as I}`, "mass/area"),
    measure: need.measure,
    percent,
    findings: otherState(need, scheme ?? null),
  };
};

/** The states of the methods whose rates are meant for their own sieves. */
const ownScheme: Readonly<Record<string, string>> = { "buffer pH, Iowa": "Iowa ECCE" };

const otherState = ({ method, measure }: Need, scheme: string | null): Finding[] => {
  const own = method === undefined ? undefined : ownScheme[method];
  if (measure !== "effective" || own === undefined || scheme === null || scheme === own) return [];
  return [
    {
      code: "lime/other-scheme",
      severity: "caution",
      path: "quality.scheme",
      params: { scheme, own },
      text: `The recommendation counts lime by ${own}, the lime was rated by ${scheme}: the same lime rates differently.`,
    },
  ];
};

/**
 * The rate of a lime whose rating a label prints per ton, for a recommendation in the same rating: `P = R / r`.
 *
 * - `R` recommended rating per area, such as pounds of ENM or ECCE an acre
 * - `r` rating of the lime, such as pounds of ENM a ton
 *
 * @throws RatewrightError `substance/mismatch` where the two are not the same rating, `range`, `missing`,
 *   `unit/mismatch`, `type`
 *
 * Source: "How much lime to apply?", University of Missouri Extension: 1,200 of ENM with lime of 400 are 3 tons.
 *
 * @example
 * ```ts
 * import { quantity } from "ratewright";
 * import { limeForRating } from "ratewright/soil";
 * const rate = limeForRating({
 *   recommended: quantity(1200, "lb/acre", "other:ENM"),
 *   rating: quantity(400, "lb/US ton", "other:ENM/product"),
 * });
 * rate.in("US ton/acre"); // => 3
 * ```
 */
export const limeForRating = <S extends string>(input: {
  readonly recommended: Quantity<"mass/area", S>;
  readonly rating: Quantity<"mass/mass", `${NoInfer<S>}/product`>;
}): Quantity<"mass/area", "product"> => {
  const record = expectFields(input, ["recommended", "rating"], "input");
  const read = allOf({
    recommended: () =>
      expectQuantity(record.recommended, { dimension: "mass/area", bound: "non-negative" }, "recommended"),
    rating: () => expectQuantity(record.rating, { dimension: "mass/mass", bound: "positive" }, "rating"),
  });
  const of = `${read.recommended.of}/product`;
  if (read.rating.of !== of) fail("substance/mismatch", "rating", read.rating, `a rating in ${of}`);
  const tons = read.recommended.in("lb/acre") / read.rating.in("lb/US ton");
  return new Quantity(tons, "US ton/acre", "product", "mass/area");
};
