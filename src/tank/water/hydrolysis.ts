import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  plainCopy,
  quantity,
  type Time,
} from "../../quantity/index.js";
import type { Share } from "../inputs.js";
import { type HalfLife, halfLives } from "./half-lives.js";

/** What has broken down by the time a tank is empty. */
export interface HydrolysisLoss {
  readonly type: "hydrolysis-loss";
  readonly version: 1;
  /** Of what was mixed, when the last of the tank goes out. */
  readonly atEnd: Share;
  /** Of all that goes out, where the tank is sprayed out evenly from the start. */
  readonly onAverage: Share;
}

const losses = (time: number, halfLife: number): readonly [number, number] => {
  const y = (time / halfLife) * Math.LN2;
  const atEnd = -Math.expm1(-y);
  // 1 - (1 - e^-y) / y; its first terms where the difference would cancel.
  const onAverage = y < 1e-4 ? y / 2 - (y * y) / 6 : 1 - atEnd / y;
  return [atEnd, onAverage];
};

const share = (part: number): Share => quantity(part * 100, "%");

const secondsOf = (input: unknown, path: string, bound: "positive" | "non-negative"): number =>
  expectQuantity(input, { dimension: "time", of: "none", bound }, path).in("s");

/**
 * The share of an active ingredient that has broken down in water after a time, from its half-life:
 * `lost at the end = 1 - 0.5^(time / halfLife)`. Sprayed out evenly over that time, what goes out has lost
 * `1 - (1 - 0.5^x) / (x ln 2)` on average, `x = time / halfLife`.
 *
 * It holds where breakdown is of first order in water of one pH and temperature, from mixing on.
 *
 * @param input - `halfLife`, more than zero; `time` from mixing until the tank is empty, zero or more
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch`, `not-finite`
 *
 * Source: Michigan State University Extension, Effect of water pH on the stability of pesticides (2008);
 * National Pesticide Information Center, Pesticide Half-life. The average is derived by integration.
 *
 * @example
 * ```ts
 * import { hydrolysisLoss, quantity } from "ratewright";
 * const loss = hydrolysisLoss({ halfLife: quantity(1, "h"), time: quantity(2, "h") });
 * loss.atEnd.in("%"); // => 75
 * Number(loss.onAverage.in("%").toFixed(1)); // => 45.9
 * ```
 */
export const hydrolysisLoss = (input: { readonly halfLife: Time; readonly time: Time }): HydrolysisLoss => {
  expectFields(input, ["halfLife", "time"]);
  const { halfLife, time } = allOf({
    halfLife: () => secondsOf(input.halfLife, "halfLife", "positive"),
    time: () => secondsOf(input.time, "time", "non-negative"),
  });
  const [atEnd, onAverage] = losses(time, halfLife);
  return { type: "hydrolysis-loss", version: 1, atEnd: share(atEnd), onAverage: share(onAverage) };
};

/** What of an active ingredient is lost in a tank, as far as published half-lives say. */
export interface AlkalineHydrolysis {
  readonly type: "alkaline-hydrolysis";
  readonly version: 1;
  readonly active: string;
  readonly pH: number;
  /**
   * The published rows beside this pH: those of the printed pH below and above it, or of one pH where it is
   * printed itself, or lies beyond the rows. Several of one pH are several sources.
   */
  readonly rows: readonly HalfLife[];
  /**
   * Share lost when the last goes out: least and most by these rows, each rounded outward to the one digit that such
   * half-lives can tell.
   */
  readonly atEnd: readonly [Share, Share];
  /** Share lost on average of all that goes out, rounded the same way. */
  readonly onAverage: readonly [Share, Share];
  /** Temperatures in °C at which the rows were measured, as far as printed. */
  readonly temperatures: readonly number[];
  /** How many of the rows come without a temperature: warmer water breaks down faster. */
  readonly rowsWithoutTemperature: number;
}

/** Down to one digit; a value that is one digit but for rounding noise stays. */
const oneDigitDown = (value: number): number => {
  if (value <= 0) return 0;
  const place = 10 ** Math.floor(Math.log10(value) + 1e-12);
  return Number((Math.floor(value / place + 1e-9) * place).toPrecision(1));
};

const oneDigitUp = (value: number): number => {
  const down = oneDigitDown(value);
  if (value <= down * (1 + 1e-9)) return down;
  return Number((down + 10 ** Math.floor(Math.log10(value) + 1e-12)).toPrecision(1));
};

/**
 * A band of percent, rounded outward to one digit of what is lost or, above half, of what is left: 87.5 is 80 to 90,
 * 4.16 is 4 to 5, 98.4 is 98 to 99, 99.7 is 99 to 100. No more can be told from half-lives that are printed to one or two digits and mostly
 * without a temperature.
 */
const outward = ([least, most]: readonly [number, number]): readonly [number, number] => [
  least <= 50 ? oneDigitDown(least) : 100 - Math.max(1, oneDigitUp(100 - least)),
  most <= 50 ? oneDigitUp(most) : 100 - (100 - most < 1 ? 0 : oneDigitDown(100 - most)),
];

/**
 * The share of an active ingredient that water of a pH destroys before the tank is empty, by the published
 * half-lives ({@link halfLives}). Between two printed pH values nothing is interpolated: the loss lies
 * between that of the row below and that of the row above. Below the lowest row it lies between nothing and
 * that row; above the highest, between that row and all. The half-lives printed get shorter as pH rises.
 * Where sources print different half-lives for one pH, the least is by the longest of them and the most by
 * the shortest: none is preferred. Most print no temperature, which moves a half-life several-fold, so a share is
 * rounded outward to one digit of what is lost or, above half, of what is left.
 *
 * @param input - `active`, an ISO common name of the table; `pH`, 0 to 14; `time` from mixing until the tank
 *   is empty, zero or more
 * @returns `undefined` where no half-life of the active ingredient was read: nothing is known, not no loss
 * @throws RatewrightError `range`, `not-finite`, `unit/mismatch`, `type`
 *
 * Source: each row of `halfLives` names its own.
 *
 * @example
 * ```ts
 * import { alkalineHydrolysis, quantity } from "ratewright";
 * const tank = alkalineHydrolysis({ active: "captan", pH: 8, time: quantity(30, "min") });
 * tank?.atEnd.map((share) => share.in("%")); // => [80, 90]
 * tank?.rowsWithoutTemperature; // => 1
 * const between = alkalineHydrolysis({ active: "captan", pH: 7.5, time: quantity(30, "min") });
 * between?.atEnd.map((share) => share.in("%")); // => [4, 90]
 * alkalineHydrolysis({ active: "water", pH: 8, time: quantity(30, "min") }); // => undefined
 * ```
 */
export const alkalineHydrolysis = (input: {
  readonly active: string;
  readonly pH: number;
  readonly time: Time;
}): AlkalineHydrolysis | undefined => {
  const given = plainCopy(input);
  expectFields(given, ["active", "pH", "time"]);
  const { active, pH, time } = allOf({
    active: (): string =>
      typeof given.active === "string"
        ? given.active
        : fail("type", "active", given.active, "the ISO common name of an active ingredient"),
    pH: () => expectNumber(given.pH, "pH", { min: 0, max: 14 }),
    time: () => secondsOf(given.time, "time", "non-negative"),
  });
  // US labels write the hyphen of "thiophanate-methyl" as a space.
  const name = active.trim().toLowerCase().replace(/\s+/g, "-");
  const known = halfLives.filter((row) => row.active === name);
  if (known.length === 0) return undefined;
  const levels = known.map((row) => row.pH);
  const below = known.filter((row) => row.pH === Math.max(...levels.filter((level) => level <= pH)));
  const above = known.filter((row) => row.pH === Math.min(...levels.filter((level) => level >= pH)));
  const seconds = (rows: readonly HalfLife[], end: "shortest" | "longest"): readonly number[] =>
    rows.map((row) => quantity(row[end].value, row[end].unit).in("s"));
  const least = below.length === 0 ? [0, 0] : losses(time, Math.max(...seconds(below, "longest")));
  const all = time > 0 ? 1 : 0;
  const most = above.length === 0 ? [all, all] : losses(time, Math.min(...seconds(above, "shortest")));
  const range = (i: 0 | 1): readonly [Share, Share] => {
    const [low, high] = outward([100 * (least[i] as number), 100 * (most[i] as number)]);
    return [quantity(low, "%"), quantity(high, "%")];
  };
  const rows = known.filter((row) => below.includes(row) || above.includes(row));
  const temperatures = rows.flatMap(({ temperature }) =>
    temperature === "not printed" ? [] : [temperature],
  );
  return {
    type: "alkaline-hydrolysis",
    version: 1,
    active,
    pH,
    rows,
    atEnd: range(0),
    onAverage: range(1),
    temperatures: [...new Set(temperatures)],
    rowsWithoutTemperature: rows.length - temperatures.length,
  };
};

/**
 * How many times as acid a water is as one of another pH: `10^(reference - pH)`. A step of one on the pH
 * scale is a factor of ten.
 *
 * @param pH - 0 to 14
 * @param reference - 0 to 14; neutral water, 7, where it is left out
 * @throws RatewrightError `range`, `not-finite`
 *
 * Source: UF/IFAS PI193, Water pH and the Effectiveness of Pesticides, "What is pH?".
 *
 * @example
 * ```ts
 * import { relativeAcidity } from "ratewright";
 * relativeAcidity(5); // => 100
 * relativeAcidity(8, 6); // => 0.01
 * ```
 */
export const relativeAcidity = (pH: number, reference = 7): number =>
  10 **
  (expectNumber(reference, "reference", { min: 0, max: 14 }) - expectNumber(pH, "pH", { min: 0, max: 14 }));
