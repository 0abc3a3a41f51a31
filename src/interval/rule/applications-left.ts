import { exceeds, wholeUnitsFor } from "../../numeric/index.js";
import {
  expectAmount,
  expectFields,
  expectQuantity,
  likeQuantity,
  numberIn,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";

/** How often a rate still fits under a stated maximum. */
export interface ApplicationsLeft<D extends string, S extends string> {
  readonly type: "applications-left";
  readonly version: 1;
  readonly count: number;
  /** What the maximum leaves after those applications; never less than 0. */
  readonly remainder: Quantity<D, S>;
  /** What the maximum leaves now; less than 0 where more was used than it states. */
  readonly remainingUnderStatedMaximum: Quantity<D, S>;
}

/**
 * How many applications at a rate a maximum still holds, `n = floor((M - U) / R)`, where an application
 * that would miss by rounding noise counts: 0.6 at 0.2 is 3, where plain division gives 2.9999999999999996. All three are of one substance:
 * a maximum in active ingredient is compared with active ingredient, not with product.
 *
 * @param input.maximum - `M`, the most per area and period
 * @param input.used - `U`, what was applied in the period so far; nothing where it is left out
 * @param input.rate - `R`, of each application, more than zero
 * @throws RatewrightError `unit/mismatch`, `substance/mismatch`, `range`, `type`
 *
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { applicationsLeft, quantity } from "ratewright";
 * const ai = (value: number) => quantity(value, "lb/acre", "ai");
 * applicationsLeft({ maximum: ai(0.6), rate: ai(0.2) }).count; // => 3
 * const left = applicationsLeft({ maximum: ai(2), used: ai(1.5), rate: ai(0.2) });
 * left.count; // => 2
 * Number(left.remainder.in("lb/acre").toFixed(3)); // => 0.1
 * ```
 */
export const applicationsLeft = <D extends string, S extends string>(input: {
  readonly maximum: Quantity<D, S>;
  readonly used?: Quantity<NoInfer<D>, NoInfer<S>>;
  readonly rate: Quantity<NoInfer<D>, NoInfer<S>>;
}): ApplicationsLeft<D, S> => {
  expectFields(input, ["maximum", "used", "rate"]);
  const maximum = expectAmount(
    input.maximum,
    { dimensions: ["mass/area", "volume/area", "mass", "volume"], bound: "non-negative" },
    "maximum",
  );
  const { dimension, of } = maximum;
  const rate = expectQuantity(input.rate, { dimension, of, bound: "positive" }, "rate");
  const used =
    input.used === undefined
      ? undefined
      : expectQuantity(input.used, { dimension, of, bound: "non-negative" }, "used");
  const most = maximum.value;
  const gone = used === undefined ? 0 : numberIn(used, maximum.unit);
  const each = numberIn(rate, maximum.unit);
  if (!((most - gone) / each <= Number.MAX_SAFE_INTEGER)) {
    const least = { min: (most - gone) / Number.MAX_SAFE_INTEGER, unit: maximum.unit };
    outOfRange("rate", rate, least, "{}, which goes into the maximum 2^53 times");
  }
  let count = Math.max(0, Math.floor((most - gone) / each));
  if (!exceeds(gone + (count + 1) * each, most)) count++;
  const rest = (most - gone - count * each) / (most || 1);
  const left = count === 0 ? Math.max(0, rest) : rest > 1e-9 ? rest : 0;
  return {
    type: "applications-left",
    version: 1,
    count,
    remainder: likeQuantity(input.maximum, most * left),
    remainingUnderStatedMaximum: likeQuantity(input.maximum, most - gone),
  };
};

/**
 * The fewest applications that bring a total where no single one may bring more than a limit:
 * `n = ceil(T / L)`, at least 1 for any need.
 *
 * @param input.total - `T`, wanted over the season
 * @param input.perApplication - `L`, the most at one time
 * @throws RatewrightError `unit/mismatch`, `substance/mismatch`, `range`, `type`
 *
 * Source: arithmetic.
 *
 * @example
 * ```ts
 * import { fewestApplications, quantity } from "ratewright";
 * fewestApplications({
 *   total: quantity(3, "lb/1000 ft2", "N"), perApplication: quantity(1, "lb/1000 ft2", "N"),
 * }); // => 3
 * ```
 */
export const fewestApplications = <S extends string>(input: {
  readonly total: Quantity<"mass/area", S>;
  readonly perApplication: Quantity<"mass/area", NoInfer<S>>;
}): number => {
  expectFields(input, ["total", "perApplication"]);
  const dimension = "mass/area";
  const total = expectQuantity(input.total, { dimension, bound: "non-negative" }, "total");
  const each = expectQuantity(
    input.perApplication,
    { dimension, of: total.of, bound: "positive" },
    "perApplication",
  );
  return wholeUnitsFor(total.in("kg/ha"), each.in("kg/ha"));
};
