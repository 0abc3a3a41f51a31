import { coefficientOfVariation, type Divisor, exceeds, mean } from "../../numeric/index.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  numberIn,
  type Quantity,
  quantity,
  quantityOf,
} from "../../quantity/index.js";
import {
  type Carrier,
  carried,
  inSystemOf,
  positive,
  readingsOf,
  type Share,
  share,
  type Time,
} from "../inputs.js";

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

/**
 * Checks a boom from one catch of every nozzle over the same time: each against the mean of the boom and
 * against the rated flow.
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
  expectFields(input, ["catches", "time", "rated", "aboveRated", "belowRated", "ofMean", "divisor"]);
  const found = allOf({
    catches: () => catchesOf(input.catches),
    time: () => positive(input.time, "time", "time"),
    aboveRated: () => limitOf(input.aboveRated, "aboveRated", 10),
    belowRated: () => limitOf(input.belowRated, "belowRated", 10),
    ofMean: () => limitOf(input.ofMean, "ofMean", 5),
    rated: () => (input.rated === undefined ? undefined : ratedOf(input.rated, input.catches)),
    divisor: () =>
      input.divisor === "n" || input.divisor === "n-1"
        ? input.divisor
        : fail(
            input.divisor === undefined ? "missing" : "type",
            "divisor",
            input.divisor,
            'the choice "n" or "n-1"',
          ),
  });
  const first = found.catches[0] as Quantity<"volume", S>;
  const flowOf = (value: number): Quantity<"volume/time", S> => {
    const perMinute =
      numberIn(quantityOf(value, first.unit, first.of, "catches"), "L") / found.time.in("min");
    const flow = quantityOf<"volume/time", S>(perMinute, "L/min", first.of, "catches");
    return inSystemOf(flow, first);
  };
  const values = found.catches.map((each) => each.value);
  const middle = mean(values);
  if (middle === 0) fail("range", "catches", "nothing caught", "a boom that sprays");
  const meanFlow = flowOf(middle);
  const rated = found.rated && numberIn(found.rated, meanFlow.unit);
  const limits = { aboveRated: found.aboveRated, belowRated: found.belowRated, ofMean: found.ofMean };
  const deviations = values.map((value) => {
    const fromMean = (100 * (value - middle)) / middle;
    const fromRated = rated === undefined ? undefined : (100 * (flowOf(value).value - rated)) / rated;
    return { fromMean, fromRated, reasons: reasonsFor(fromMean, fromRated, limits) };
  });
  // The mean of those that are not plugged: the low ones pull the mean of all.
  const upper = mean(values.filter((_, i) => !deviations[i]?.reasons.includes("below mean")));
  const nozzles = values.map((value, i): NozzleResult<S> => {
    const { fromMean, fromRated, reasons } = deviations[i] as (typeof deviations)[number];
    return {
      number: i + 1,
      flow: flowOf(value),
      fromMean: quantity(fromMean, "%"),
      ...(fromRated === undefined ? {} : { fromRated: quantity(fromRated, "%") }),
      verdict: verdictOn(reasons, exceeds((100 * (value - upper)) / upper, limits.ofMean)),
      reasons,
    };
  });
  return {
    type: "nozzle-check",
    version: 1,
    nozzles,
    mean: meanFlow,
    band: { low: meanFlow.times(1 - found.ofMean / 100), high: meanFlow.times(1 + found.ofMean / 100) },
    evenness: coefficientOfVariation(values, { divisor: found.divisor }),
    findings: findingsOf(nozzles, meanFlow.value, flowOf(upper).value, rated, limits),
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

interface Limits {
  readonly aboveRated: number;
  readonly belowRated: number;
  readonly ofMean: number;
}

const reasonsFor = (
  fromMean: number,
  fromRated: number | undefined,
  limits: Limits,
): NozzleResult<string>["reasons"] => {
  const reasons: NozzleResult<string>["reasons"][number][] = [];
  if (fromRated !== undefined && exceeds(fromRated, limits.aboveRated)) reasons.push("above rated");
  if (exceeds(fromMean, limits.ofMean)) reasons.push("above mean");
  if (fromRated !== undefined && exceeds(-fromRated, limits.belowRated)) reasons.push("below rated");
  if (exceeds(-fromMean, limits.ofMean)) reasons.push("below mean");
  return reasons;
};

/** The verdict by the limits that were passed; `worn` says whether the nozzle passes that of the mean without the low ones. */
const verdictOn = (reasons: NozzleResult<string>["reasons"], worn: boolean): NozzleVerdict => {
  if (reasons.includes("above rated")) return "replace";
  if (reasons.includes("above mean")) return worn ? "replace" : "check again";
  return reasons.length > 0 ? "clean" : "keep";
};

type Caught = Pick<NozzleResult<string>, "number" | "verdict" | "reasons">;

const numbersOf = (nozzles: readonly Caught[]): readonly string[] =>
  nozzles.map(({ number }) => String(number));

const findingsOf = (
  nozzles: readonly Caught[],
  meanFlow: number,
  meanOfUpper: number,
  rated: number | undefined,
  limits: Limits,
): readonly Finding[] => {
  const findings: Finding[] = [];
  const off = (flow: number, from: number): number => (100 * (flow - from)) / from;
  const bad = nozzles.filter(({ verdict }) => verdict !== "keep").length;
  if (bad > 0) {
    findings.push({
      code: "nozzle/check-again",
      severity: "note",
      params: { nozzles: bad },
      text: `${bad} of ${nozzles.length} nozzles are off, and they pull the mean. Catch the whole boom again after cleaning and replacing.`,
    });
  }
  const pulled = numbersOf(nozzles.filter(({ verdict }) => verdict === "check again"));
  if (pulled.length > 0) {
    const low = numbersOf(nozzles.filter(({ reasons }) => reasons.includes("below mean")));
    findings.push({
      code: "nozzle/clean-first",
      severity: "caution",
      params: { nozzles: pulled, low },
      text: `Low nozzles pull the mean down (nozzle ${low.join(", ")}); without them nozzle ${pulled.join(", ")} would be within the limit of the mean. Clean the low ones and catch the boom again before any of the others is replaced.`,
      source: "common practice, no source",
    });
  }
  const fromRated = rated === undefined ? 0 : off(meanOfUpper, rated);
  if (exceeds(-fromRated, limits.belowRated)) {
    findings.push({
      code: "nozzle/boom-low",
      severity: "warning",
      params: { percent: fromRated },
      text: `The mean of the boom, without single plugged nozzles, lies ${Number((-fromRated).toPrecision(3))} % below the rated flow: the pressure at the nozzles is less than that of the rated flow, or screens and lines are plugged.`,
      source: "common practice, no source",
    });
  }
  const meanFromRated = rated === undefined ? 0 : off(meanFlow, rated);
  if (exceeds(meanFromRated, limits.aboveRated)) {
    findings.push({
      code: "nozzle/boom-worn",
      severity: "warning",
      params: { percent: meanFromRated },
      text: `The mean of the boom lies ${Number(meanFromRated.toPrecision(3))} % above the rated flow: the set is worn, or the pressure at the nozzles is not what the gauge says.`,
    });
  }
  return findings;
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
    ? catches.find((one) => one?.of === "spray" || one?.of === "water")
    : q;
  return positive(q, "rated", "volume/time", (first?.of ?? q.of) as S);
};

/** Catches of one carrier, zero or more each. */
const catchesOf = <S extends Carrier>(
  input: readonly Quantity<"volume", S>[],
): readonly Quantity<"volume", S>[] => readingsOf(input, "catches", 2, caughtOf);

const caughtOf = <S extends Carrier>(input: Quantity<"volume", S>, path: string): Quantity<"volume", S> => {
  if (input === undefined || input === null) fail("missing", path, input, "a catch; 0 for a plugged nozzle");
  const q = expectQuantity(input, { dimension: "volume", bound: "non-negative" }, path);
  return q.of === "spray" || q.of === "water"
    ? (q as unknown as Quantity<"volume", S>)
    : fail("substance/mismatch", path, q, "a catch of spray or of water");
};
