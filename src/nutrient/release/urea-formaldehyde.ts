import { notShare } from "../../numeric/house.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  type Citation,
  expectFields,
  expectQuantity,
  fail,
  frozen,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { type ReleaseModel, releaseModel } from "./release-model.js";
import { rateThrough } from "./release-models.js";

const incubation: Citation = /* @__PURE__ */ frozen({
  title: "Mineralization of urea-form compounds at different pH levels and temperatures",
  publisher: "Canadian Journal of Soil Science (abstract)",
  where: "14 weeks at 10, 15, 20, 25 and 30 °C",
  url: "https://scilit.com/publications/c8fdab7e1ff4cf7bfe8450a167a85214",
});
const methyleneTrial: Citation = /* @__PURE__ */ frozen({
  title: "Effect of management history and temperature on the mineralization of methylene urea in soil",
  publisher: "Nutrient Cycling in Agroecosystems 68:25-35 (Koivunen and Horwath)",
  year: 2004,
  where: "abstract",
});

/** Water-insoluble percent of the nitrogen and activity index by which ureaform is defined, and the top of 64 % that follows. */
const [defined, leastIndex] = [60, 40] as const;
const definedTop: number = 100 - (defined * (100 - leastIndex)) / 100;

/**
 * First-order rates at 25 °C. Middle: 50 % in 14 weeks with a top of 64 %; low: 5 points less, the most by which
 * two soils differed; high: 95 % in the 8 weeks that a trade magazine gives as the shortest duration.
 */
const ratePerDay = {
  low: /* @__PURE__ */ rateThrough(0.45 / 0.64, 98),
  mid: /* @__PURE__ */ rateThrough(0.5 / 0.64, 98),
  high: /* @__PURE__ */ rateThrough(0.95, 56),
} as const;
/** From 20 to 58 % at 10 to 30 °C: 2.51 with a top of 64 %, 1.97 with a top of all; 2.62 from 10 to 20 °C. */
const q10 = { low: 1.97, mid: 2.51, high: 2.62 } as const;

const common = {
  placement: "either",
  temperature: { kind: "Q10", q10, referenceC: 25, restsBelowC: 10 },
  observed: { days: 182, fromC: 10, toC: 30 },
} as const;
const byMicrobes = [
  "first order; microbes release it, in moist soil",
  "below 10 °C, the coldest that was measured, the low end takes no release",
  "the whole material, its free urea too",
] as const;

/**
 * Ureaform or methylene urea, where nothing says which of the two: the band holds both. Ask for the activity index and
 * use {@link ureaform} or {@link methyleneUrea}.
 *
 * Source: as {@link methyleneUrea}.
 */
export const ureaFormaldehyde: ReleaseModel = /* @__PURE__ */ frozen({
  type: "release-model",
  version: 1,
  name: "ureaform or methylene urea",
  ...common,
  curve: { kind: "first order", ratePerDay, mostPercent: { low: definedTop, mid: definedTop, high: 100 } },
  assumptions: [
    ...byMicrobes,
    "the top of ureaform with an activity index of 40 for the low end and the middle",
  ],
  source: incubation,
});

/** What a urea-formaldehyde material prints of itself. */
export interface UreaFormaldehydeLabel {
  /** Nitrogen that cold water leaves behind, percent of the NITROGEN: `nitrogenBreakdown(...).waterInsolubleShare`. */
  readonly waterInsolubleShare?: Quantity<"mass/mass", "other:WIN/N">;
  /** `activityIndex(...).index`. */
  readonly activityIndex?: Quantity<"1", "none">;
}

const readLabel = (
  input: UreaFormaldehydeLabel,
): { share: number | undefined; index: number | undefined } => {
  expectFields(input, ["waterInsolubleShare", "activityIndex"], "input");
  const { waterInsolubleShare, activityIndex } = input;
  const atMost = (percent: number, path: string): number =>
    percent > 100 ? outOfRange(path, described(`${percent} %`), { max: 100, unit: "%" }) : percent;
  return allOf({
    share: () => {
      if (waterInsolubleShare === undefined) return undefined;
      const [kind, path] = [
        { dimension: "mass/mass", of: "other:WIN/N", bound: "non-negative" },
        "waterInsolubleShare",
      ] as const;
      return atMost(expectQuantity(waterInsolubleShare, kind, path).in("% w/w"), path);
    },
    index: () => {
      if (activityIndex === undefined) return undefined;
      const [kind, path] = [{ dimension: "1", of: "none", bound: "non-negative" }, "activityIndex"] as const;
      return notShare(atMost(expectQuantity(activityIndex, kind, path).in("%"), path), path);
    },
  });
};

/** Percent of the nitrogen that is not insoluble in hot water too: `100 - W (100 - AI) / 100`. */
const topOf = (share: number, index: number): number => 100 - (share * (100 - index)) / 100;

/**
 * A model of ureaform, the long chains of urea and formaldehyde, which microbes take apart: slowly, and hardly in cold
 * soil. What hot water leaves behind is not reckoned on within a season.
 *
 * Equation: `F = A (1 - exp(-k t))`, `A = 100 - W (100 - AI) / 100`, `k` two and a half times as large for 10 °C more
 *
 * - `A` percent of the nitrogen that comes; the high end takes all
 * - `W` nitrogen insoluble in cold water, percent of the nitrogen: 60 where it is left out
 * - `AI` activity index, percent: 40 where it is left out
 * - `k` 0.0124, 0.0155 and 0.0535 a day at 25 °C; `t` days
 *
 * Range: measured at 10 to 30 °C; below, the low end takes no release and a finding says so.
 *
 * @throws RatewrightError `conflict` where less than 60 % of the nitrogen is insoluble, which is methylene urea;
 *   `range`, `unit/mismatch`, `substance/mismatch`, `type`
 *
 * Source: 20, 28, 40, 50 and 58 % in 14 weeks at 10, 15, 20, 25 and 30 °C, two soils 2 to 5 points apart: Canadian
 * Journal of Soil Science (abstract); shortest duration, SportsTurf magazine, February 2016, page 13; at most 40 % of
 * the nitrogen soluble, Florida rule 5E-1.003; activity index of at least 40, University of Arizona Extension 1995.
 *
 * @example
 * ```ts
 * import { activityIndex, quantity, releasedShares, ureaform } from "ratewright";
 * const { index } = activityIndex({
 *   coldInsoluble: quantity(24, "% w/w", "N/product"),
 *   hotInsoluble: quantity(12, "% w/w", "N/product"),
 * });
 * const model = ureaform({ waterInsolubleShare: quantity(70, "% w/w", "other:WIN/N"), activityIndex: index });
 * const shares = (["low", "mid", "high"] as const).map((end) => releasedShares(Float64Array.of(3650), model.curve, end)[0]);
 * shares.map((share) => Math.round(100 * (share ?? 0))); // => [65, 65, 100]
 * ```
 */
export const ureaform = (input: UreaFormaldehydeLabel = {}): ReleaseModel => {
  const { share = defined, index = leastIndex } = readLabel(input);
  if (share < defined) {
    fail(
      "conflict",
      "waterInsolubleShare",
      described(`${share} %`),
      `at least ${defined} % of the nitrogen; for less, methyleneUrea(...)`,
    );
  }
  const top = topOf(share, index);
  if (!(top > 0)) fail("range", "activityIndex", index, "an index that leaves some nitrogen to come");
  return releaseModel({
    name: "ureaform",
    ...common,
    curve: { kind: "first order", ratePerDay, mostPercent: { low: top, mid: top, high: 100 } },
    assumptions: [
      ...byMicrobes,
      `${Number(top.toPrecision(3))} % can come by the activity index; what hot water leaves only at the high end`,
    ],
    source: incubation,
  });
};

/**
 * A model of methylene urea, the shorter chains: as ureaform, with a top of its own. In soil three grades of it came at
 * about the rate of ureaform: 52 and 63 % in six months at 20 and 30 °C.
 *
 * Equation: as {@link ureaform}; the middle takes the top `A` by the index and the insoluble share, the low end no more
 * than 64 %, since no more than 63 % was measured, the high end all
 *
 * - without `W` and `AI` the middle lies halfway between 64 % and all
 *
 * @throws RatewrightError `range`, `missing` where only one of the two is given, `unit/mismatch`,
 *   `substance/mismatch`, `type`
 *
 * Source: Koivunen and Horwath, Nutrient Cycling in Agroecosystems 68 (2004) 25-35 (abstract); rates as ureaform.
 *
 * @example
 * ```ts
 * import { methyleneUrea } from "ratewright";
 * const { curve } = methyleneUrea();
 * curve.kind === "first order" ? curve.mostPercent : null; // => { low: 64, mid: 82, high: 100 }
 * ```
 */
export const methyleneUrea = (input: UreaFormaldehydeLabel = {}): ReleaseModel => {
  const { share, index } = readLabel(input);
  if (share === undefined && index !== undefined) {
    fail("missing", "waterInsolubleShare", share, "the insoluble share beside the activity index");
  }
  if (share !== undefined && index === undefined) {
    fail("missing", "activityIndex", index, "the activity index beside the insoluble share");
  }
  const top = share === undefined || index === undefined ? (definedTop + 100) / 2 : topOf(share, index);
  if (!(top > 0)) fail("range", "activityIndex", index, "an index that leaves some nitrogen to come");
  return releaseModel({
    name: "methylene urea",
    ...common,
    curve: {
      kind: "first order",
      ratePerDay,
      mostPercent: { low: Math.min(top, definedTop), mid: top, high: 100 },
    },
    assumptions: [
      ...byMicrobes,
      share === undefined
        ? "the middle lies halfway between the top of ureaform and all: no activity index was given"
        : `${Number(top.toPrecision(3))} % can come by the activity index; no more than 63 % was measured`,
    ],
    source: methyleneTrial,
  });
};
