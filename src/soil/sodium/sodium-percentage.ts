import {
  type Citation,
  expectNumber,
  type Finding,
  frozen,
  type Quantity,
  quantity,
} from "../../quantity/index.js";

const source: Citation = /* @__PURE__ */ frozen({
  title: "Exchangeable sodium percentage, quoting Oklahoma Administrative Code 165:10",
  publisher: "Oklahoma Corporation Commission rule",
  where: "formula",
});

/** An exchangeable sodium percentage from a sodium adsorption ratio. */
export interface SodiumPercentage {
  readonly type: "sodium-percentage";
  readonly version: 1;
  /** `null` where the equation gives less than nothing. */
  readonly percent: Quantity<"1", "none"> | null;
  readonly source: Citation;
  readonly findings: readonly Finding[];
}

/** Where the line crosses zero: 0.0126 / 0.01475. */
const zeroAt = 0.0126 / 0.01475;

/**
 * The exchangeable sodium percentage that goes with a sodium adsorption ratio of the saturation extract:
 * `ESP = 100 x / (1 + x)`, `x = -0.0126 + 0.01475 SAR`.
 *
 * - `SAR` of a saturation extract, zero or more; the fit is that of soils of the western United States. An SAR of the
 *   irrigation water is not that of the soil
 *
 * Below 0.85 the equation turns negative: there `percent` is `null` and a finding says that next to none is exchangeable.
 *
 * @throws RatewrightError `not-finite`, `range`
 *
 * Source: US Salinity Laboratory 1954, as printed in Oklahoma Administrative Code 165:10. An SAR of 13 is
 * 15.2 %, the usual pair.
 *
 * @example
 * ```ts
 * import { sodiumPercentageFromRatio } from "ratewright/soil";
 * Number(sodiumPercentageFromRatio(13).percent?.in("%").toFixed(1)); // => 15.2
 * sodiumPercentageFromRatio(0.5).percent; // => null
 * ```
 */
export const sodiumPercentageFromRatio = (ratio: number): SodiumPercentage => {
  const SAR = expectNumber(ratio, "ratio", { min: 0, max: 200 });
  const x = -0.0126 + 0.01475 * SAR;
  const below = SAR < zeroAt;
  return {
    type: "sodium-percentage",
    version: 1,
    percent: below ? null : quantity(Math.max(0, (100 * x) / (1 + x)), "%"),
    source,
    findings: below
      ? [
          {
            code: "sodium/below-fit",
            severity: "note",
            path: "ratio",
            params: { ratio: SAR },
            text: `At a ratio of ${SAR}, below 0.85, the equation turns negative: next to no sodium is exchangeable.`,
            source,
          },
        ]
      : [],
  };
};
