import { allOf, expectFields, type Finding, fail, quantity, type Speed } from "../../quantity/index.js";
import { given, type StatedShare, sourceAt, statedShareAt } from "../read.js";

/**
 * How fast the edge of a patch moves outwards where nothing holds it back: at a growth potential of 100 %
 * and all factors at 100 %. Low and high are between what it surely lies. A stolon is faster than the cover
 * that follows it.
 */
export interface SpreadRate {
  readonly low: Speed;
  readonly mid: Speed;
  readonly high: Speed;
  readonly source: string;
}

/** What holds the spread back or speeds it up, as shares of the stated rate, each with who states it. */
export interface SpreadFactors {
  readonly nitrogen?: StatedShare;
  readonly water?: StatedShare;
  readonly shade?: StatedShare;
  readonly regulator?: StatedShare;
}

const factorNames = ["nitrogen", "water", "shade", "regulator"] as const;

/** A range in mm a day or in mm. */
export interface Range {
  readonly low: number;
  readonly mid: number;
  readonly high: number;
}

/** What a result rests on, and who states it. */
export interface RestsOn {
  /** The spread, a factor by name, or the growth potential. */
  readonly what: "spread" | keyof SpreadFactors | "growth";
  readonly source: string;
}

/** The rate and the factors together. */
export interface ReadSpread {
  /** In mm a day at a growth potential of 100 %. */
  readonly perDay: Range;
  readonly restsOn: readonly RestsOn[];
  readonly notChecked: readonly string[];
  readonly findings: readonly Finding[];
}

const rateAt = (input: unknown): Range & { readonly source: string } => {
  const record = expectFields(input, ["low", "mid", "high", "source"], "spread");
  const speed = (name: "low" | "mid" | "high", bound: "positive" | "non-negative"): number =>
    given(record[name], `spread.${name}`, "length/time", "none", bound).in("mm/d");
  const { low, mid, high, source } = allOf({
    low: () => speed("low", "non-negative"),
    mid: () => speed("mid", "positive"),
    high: () => speed("high", "positive"),
    source: () => sourceAt(record.source, "spread.source"),
  });
  if (low > mid * (1 + 1e-12)) fail("conflict", "spread.low", record.low, "no more than mid");
  if (mid > high * (1 + 1e-12)) fail("conflict", "spread.high", record.high, "no less than mid");
  return { low, mid, high, source };
};

type ReadFactor = ReturnType<typeof statedShareAt>;

/** Reads a rate of spread and the factors on it. */
export const spreadAt = (rate: unknown, factors: unknown): ReadSpread => {
  const stated = factors === undefined ? {} : expectFields(factors, factorNames, "factors");
  const read = allOf({
    rate: () => rateAt(rate),
    factors: () =>
      allOf(
        Object.fromEntries(
          factorNames.map((name) => [
            name,
            () =>
              stated[name] === undefined
                ? undefined
                : statedShareAt(stated[name], `factors.${name}`, { min: 0 }),
          ]),
        ),
      ),
  });
  const factorAt = (name: (typeof factorNames)[number]) => read.factors[name] as ReadFactor | undefined;
  const percents = factorNames.map((name) => [name, factorAt(name)?.percent] as const);
  const share = percents.reduce(
    (all, [, percent]) => (percent === undefined ? all : (all * percent) / 100),
    1,
  );
  return {
    perDay: { low: read.rate.low * share, mid: read.rate.mid * share, high: read.rate.high * share },
    restsOn: [
      { what: "spread", source: read.rate.source },
      ...factorNames.flatMap((name) => {
        const source = factorAt(name)?.source;
        return source === undefined ? [] : [{ what: name, source }];
      }),
    ],
    notChecked: percents
      .filter(([, percent]) => percent === undefined)
      .map(([name]) => `${name}: no factor given, the stated rate counts in full`),
    findings: percents.flatMap(([name, percent]) =>
      percent !== undefined && percent > 100
        ? [
            {
              code: "cover/factor-above-full",
              severity: "note" as const,
              path: `factors.${name}`,
              params: { factor: name, percent },
              text: `The factor for ${name} is ${percent} %: it raises the rate above the one stated as the best.`,
            },
          ]
        : [],
    ),
  };
};

/** A speed in mm a day as a quantity, in inches or millimetres a week. */
export const perWeek = (mmPerDay: number, metric: boolean): Speed =>
  metric ? quantity(mmPerDay * 7, "mm/week") : quantity((mmPerDay * 7) / 25.4, "in/week");
