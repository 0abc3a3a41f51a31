import { fixedApart } from "../../numeric/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  frozen,
  outOfRange,
  type Quantity,
  quantity,
} from "../../quantity/index.js";

/** The activity index and what is known of it. */
export interface ActivityIndex {
  readonly type: "activity-index";
  readonly version: 1;
  /** The index, percent. */
  readonly index: Quantity<"1", "none">;
  /** The least index that counts as an available source, percent. */
  readonly minimum: Quantity<"1", "none">;
  /** A finding where the index lies below the minimum. */
  readonly findings: readonly Finding[];
}

const arizona: Citation = /* @__PURE__ */ frozen({
  title: "Turfgrass fertilizers: availability of slow nitrogen",
  publisher: "University of Arizona Extension",
  year: 1995,
  where: "activity index",
  url: "https://turf.arizona.edu/ccps0595.html",
});

/**
 * The activity index of urea-formaldehyde: how much of the nitrogen that cold water leaves behind dissolves
 * in hot water. The higher it is, the sooner the nitrogen is released; microbes do it, so slowly in the cold.
 *
 * Equation: `AI = (CWIN - HWIN) / CWIN * 100`, at least 40
 *
 * - `CWIN` nitrogen insoluble in cold water (25 °C), percent of product, more than zero
 * - `HWIN` nitrogen insoluble in hot water, percent of product, zero to `CWIN`
 *
 * Both may as well be shares of the nitrogen: only their ratio counts, so both carry the same substance.
 *
 * @param input.coldInsoluble - `CWIN`
 * @param input.hotInsoluble - `HWIN`
 * @throws RatewrightError `conflict` where HWIN is more than CWIN; `range`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * Source: University of Arizona Extension, "Turfgrass fertilizers: availability of slow nitrogen" (1995).
 *
 * @example
 * ```ts
 * import { activityIndex, quantity } from "ratewright";
 * const found = activityIndex({
 *   coldInsoluble: quantity(24, "% w/w", "N/product"),
 *   hotInsoluble: quantity(12, "% w/w", "N/product"),
 * });
 * found.index.in("%"); // => 50
 * found.findings; // => []
 * ```
 */
export const activityIndex = <S extends string>(input: {
  readonly coldInsoluble: Quantity<"mass/mass", S>;
  readonly hotInsoluble: Quantity<"mass/mass", NoInfer<S>>;
}): ActivityIndex => {
  expectFields(input, ["coldInsoluble", "hotInsoluble"], "input");
  const kind = { dimension: "mass/mass" } as const;
  const { cold, hot } = allOf({
    cold: () => expectQuantity(input.coldInsoluble, { ...kind, bound: "positive" }, "coldInsoluble"),
    hot: () => expectQuantity(input.hotInsoluble, { ...kind, bound: "non-negative" }, "hotInsoluble"),
  });
  if (hot.of !== cold.of) fail("substance/mismatch", "hotInsoluble", hot, `a quantity of ${cold.of}`);
  const [c, h] = [cold.in("% w/w"), hot.in("% w/w")];
  if (c > 100) outOfRange("coldInsoluble", cold, { max: 100, unit: "%" });
  if (h > c) fail("conflict", "hotInsoluble", hot, `at most what cold water leaves, ${c} %`);
  const index = ((c - h) * 100) / c;
  const findings: Finding[] = [];
  if (index < 40 * (1 - 1e-9)) {
    findings.push({
      code: "nitrogen/activity-index-low",
      severity: "caution",
      params: { index, minimum: 40 },
      text: `The activity index of ${Number(fixedApart(index, 40, 1)(index))} lies below 40: much of this nitrogen may not become available within a season.`,
      source: arizona,
    });
  }
  return {
    type: "activity-index",
    version: 1,
    index: quantity(index, "%"),
    minimum: quantity(40, "%"),
    findings,
  };
};
