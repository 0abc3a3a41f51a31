import { coefficientOfVariation, type Divisor, exceeds, mean } from "../../numeric/index.js";
import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectOneOf,
  expectQuantity,
  fail,
  likeQuantity,
  numberIn,
  outOfRange,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import {
  type Carrier,
  carried,
  inSystemOf,
  mostItems,
  positive,
  readingsOf,
  type Share,
  share,
  type Time,
} from "../inputs.js";
import { type BoomFlows, boomFindings } from "./boom-findings.js";
import type { BoomLimits, NozzleCheck, NozzleResult, NozzleVerdict } from "./nozzle-check-types.js";

/**
 * Checks a boom from one catch of every nozzle over the same time: each against the mean of the boom and
 * against the rated flow. All nozzles are of one size: a boom of two sizes, such as with smaller ones at its ends, is
 * checked size by size.
 *
 * - more than `aboveRated` over the rated flow, or more than `ofMean` over the mean: replace, it is worn
 * - more than `ofMean` over the mean, and not over the mean without the low ones: check again, after cleaning those
 * - more than `ofMean` below the mean, or than `belowRated` below the rated flow: clean and check again, it
 *   is plugged
 * - else keep
 *
 * Equal to a limit is within. The mean alone does not see a boom that is worn evenly, nor the rating a
 * boom whose pressure is off: so give both, the rated flow at the pressure of the test
 * (`flowAtPressure`). A single bad nozzle pulls the mean: where some are replaced or cleaned, check again. The
 * finding `nozzle/clean-first` names those that look worn only because low ones pull the mean down (`check again`): without
 * these they are within the limit. `nozzle/boom-worn` says that the mean of the boom lies above the rated flow,
 * `nozzle/boom-low` that it lies below, also without single plugged nozzles.
 *
 * Limits: 10 % over the rated flow (Ohio State University Extension) and 5 % of the mean (Alberta
 * Agriculture) where they are left out; {@link nozzleLimits} says who says what. `belowRated` is 10 % where
 * left out, common practice, no source.
 *
 * @param input.catches - one for every nozzle, in their order; a plugged one is 0, a missing one an error
 * @param input.divisor - of the coefficient of variation: `"n"` where the boom is all there is, `"n-1"` where
 * the catches are a sample; sources seldom say, so there is no default
 * @throws RatewrightError with every bad catch by its index: `missing`, `range`, `unit/mismatch`,
 * `substance/mismatch`, `type`; `missing` for fewer than two catches
 * Source: see {@link nozzleLimits}; the findings: common practice, no source.
 *
 * @example
 * ```ts
 * import { nozzleCheck, quantity } from "ratewright";
 * const boom = nozzleCheck({
 *   catches: [38, 39, 38, 45, 38, 33].map((value) => quantity(value, "fl oz", "water")),
 *   time: quantity(1, "min"),
 *   rated: quantity(0.3, "gal/min", "water"),
 *   divisor: "n",
 * });
 * boom.nozzles.map((nozzle) => nozzle.verdict); // => ["keep", "keep", "keep", "replace", "keep", "clean"]
 * Number(boom.evenness.in("%").toFixed(1)); // => 9.1
 * ```
 */
export const nozzleCheck = <S extends Carrier>(input: {
  readonly catches: readonly Quantity<"volume", S>[];
  readonly time: Time;
  readonly rated?: Quantity<"volume/time", NoInfer<S>>;
  readonly aboveRated?: Share;
  readonly belowRated?: Share;
  readonly ofMean?: Share;
  readonly divisor: Divisor;
}): NozzleCheck<S> => {
  const boom = readBoom(input);
  const { values, rated, divisor, limits, flowOf } = boom;
  const middle = mean(values);
  if (middle === 0)
    outOfRange(
      "catches",
      described("nothing caught"),
      { above: 0 },
      "catches whose mean is {}: a boom that sprays",
    );
  const meanFlow = flowOf(middle);
  const ratedFlow = rated && numberIn(rated, meanFlow.unit);
  const deviations = values.map((value) =>
    deviationOf(value, middle, flowOf(value).value, ratedFlow, limits),
  );
  const { upper, clean, plugged } = meansOf(boom, deviations, ratedFlow);
  const nozzles = values.map((value, i): NozzleResult<S> => {
    const { fromMean, fromRated, reasons } = deviations[i] as Deviation;
    return {
      number: i + 1,
      flow: flowOf(value),
      fromMean: quantity(fromMean, "%"),
      ...(fromRated === undefined ? {} : { fromRated: quantity(fromRated, "%") }),
      verdict: verdictOn(reasons, exceeds((100 * (value - clean)) / clean, limits.ofMean)),
      reasons,
    };
  });
  return {
    type: "nozzle-check",
    version: 1,
    nozzles,
    mean: meanFlow,
    band: { low: meanFlow.times(1 - limits.ofMean / 100), high: meanFlow.times(1 + limits.ofMean / 100) },
    evenness: coefficientOfVariation(values, { divisor }),
    findings: boomFindings(nozzles, {
      mean: meanFlow.value,
      upper: flowOf(upper).value,
      plugged,
      rated: ratedFlow,
      limits,
    }),
    checked: [
      "each nozzle against the mean",
      ...(rated === undefined ? [] : ["each nozzle against the rated flow"]),
    ],
    notChecked: [
      ...(rated === undefined ? ["wear of the whole boom: no rated flow was given"] : []),
      "the shape of the fans, which a catch does not show",
    ],
  };
};

/** A boom, read: the catches as numbers, and how a catch becomes a flow. */
interface Boom<S extends Carrier> {
  readonly values: readonly number[];
  readonly rated: Quantity<"volume/time", S> | undefined;
  readonly limits: BoomLimits;
  readonly divisor: Divisor;
  readonly flowOf: (value: number) => Quantity<"volume/time", S>;
}

const readBoom = <S extends Carrier>(input: Parameters<typeof nozzleCheck<S>>[0]): Boom<S> => {
  expectFields(input, ["catches", "time", "rated", "aboveRated", "belowRated", "ofMean", "divisor"]);
  const { catches, time, rated, divisor, ...limits } = allOf({
    catches: () => catchesOf(input.catches),
    time: () => positive(input.time, "time", "time"),
    aboveRated: () => limitOf(input.aboveRated, "aboveRated", 10),
    belowRated: () => limitOf(input.belowRated, "belowRated", 10),
    ofMean: () => limitOf(input.ofMean, "ofMean", 5),
    rated: () => (input.rated === undefined ? undefined : ratedOf(input.rated, input.catches)),
    divisor: () => expectOneOf(input.divisor, ["n", "n-1"], "divisor"),
  });
  const first = catches[0] as Quantity<"volume", S>;
  const flowOf = (value: number): Quantity<"volume/time", S> => {
    const perMinute = numberIn(likeQuantity(first, value), "L") / time.in("min");
    return inSystemOf(quantityOf<"volume/time", S>(perMinute, "L/min", first.of, "catches"), first);
  };
  return { values: catches.map(({ value }) => value), rated, limits, divisor, flowOf };
};

/** How far a catch lies from the mean of the boom and from the rated flow, in percent. */
interface Deviation {
  readonly fromMean: number;
  readonly fromRated: number | undefined;
  readonly reasons: NozzleResult<string>["reasons"];
}

const deviationOf = (
  value: number,
  middle: number,
  flow: number,
  rated: number | undefined,
  limits: BoomLimits,
): Deviation => {
  const fromMean = (100 * (value - middle)) / middle;
  const fromRated = rated === undefined ? undefined : (100 * (flow - rated)) / rated;
  return { fromMean, fromRated, reasons: reasonsFor(fromMean, fromRated, limits) };
};

const reasonsFor = (
  fromMean: number,
  fromRated: number | undefined,
  limits: BoomLimits,
): NozzleResult<string>["reasons"] => {
  const reasons: NozzleResult<string>["reasons"][number][] = [];
  if (fromRated !== undefined && exceeds(fromRated, limits.aboveRated)) reasons.push("above rated");
  if (exceeds(fromMean, limits.ofMean)) reasons.push("above mean");
  if (fromRated !== undefined && exceeds(-fromRated, limits.belowRated)) reasons.push("below rated");
  if (exceeds(-fromMean, limits.ofMean)) reasons.push("below mean");
  return reasons;
};

/** The mean without single nozzles that lie low, and that without all that count as plugged. */
const meansOf = <S extends Carrier>(
  { values, flowOf, limits }: Boom<S>,
  deviations: readonly Deviation[],
  rated: number | undefined,
): { readonly upper: number; readonly clean: number; readonly plugged: BoomFlows["plugged"] } => {
  const meanWithout = (low: BoomFlows["plugged"]): number =>
    mean(values.filter((_, i) => !low(deviations[i]?.reasons ?? [])));
  // The low ones pull the mean of all.
  const upper = meanWithout(belowMean);
  // Where the whole boom gives less than rated that is its pressure; else who lies below the rated flow is plugged, too.
  const low = rated !== undefined && exceeds(100 * (1 - flowOf(upper).value / rated), limits.belowRated);
  const plugged = low ? belowMean : belowEither;
  return { upper, clean: meanWithout(plugged), plugged };
};

const belowMean = (reasons: Deviation["reasons"]): boolean => reasons.includes("below mean");
const belowEither = (reasons: Deviation["reasons"]): boolean =>
  belowMean(reasons) || reasons.includes("below rated");

/** The verdict by the limits that were passed; `worn` says whether the nozzle passes that of the mean without the low ones. */
const verdictOn = (reasons: NozzleResult<string>["reasons"], worn: boolean): NozzleVerdict => {
  if (reasons.includes("above rated")) return "replace";
  if (reasons.includes("above mean") && worn) return "replace";
  if (reasons.includes("above mean") && !reasons.includes("below rated")) return "check again";
  return reasons.length > 0 ? "clean" : "keep";
};

const limitOf = (input: Share | undefined, path: string, usual: number): number =>
  input === undefined ? usual : share(input, path, 1).in("%");

/** The rated flow, of what the catches are of: the first of them that says so. */
const ratedOf = <S extends Carrier>(
  rated: Quantity<"volume/time", S>,
  catches: readonly Quantity<"volume", S>[],
): Quantity<"volume/time", S> => {
  const q = carried(rated, "rated", "volume/time");
  const first = Array.isArray(catches)
    ? catches.slice(0, mostItems).find((one) => one?.of === "spray" || one?.of === "water")
    : q;
  return positive(q, "rated", "volume/time", (first?.of ?? q.of) as S);
};

/** Catches of one carrier, zero or more each. */
const catchesOf = <S extends Carrier>(
  input: readonly Quantity<"volume", S>[],
): readonly Quantity<"volume", S>[] =>
  Array.isArray(input) && input.length === 1
    ? fail("missing", "catches", input, "at least 2 catches; nozzleWear holds one nozzle against its rating")
    : readingsOf(input, "catches", 2, caughtOf);

const caughtOf = <S extends Carrier>(input: Quantity<"volume", S>, path: string): Quantity<"volume", S> => {
  if (input === undefined || input === null) fail("missing", path, input, "a catch; 0 for a plugged nozzle");
  const q = expectQuantity<"volume", S>(input, { dimension: "volume", bound: "non-negative" }, path);
  return q.of === "spray" || q.of === "water"
    ? q
    : fail("substance/mismatch", path, q, "a catch of spray or of water");
};
