import {
  allOf,
  expectAmount,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  likeQuantity,
  outOfRange,
  plainCopy,
  type Quantity,
  quantity,
  type Time,
} from "../../quantity/index.js";

const timeIn = (input: unknown, path: string, bound: "positive" | "non-negative"): number =>
  expectQuantity(input, { dimension: "time", of: "none", bound }, path).in("d");

/**
 * The share of a residue that is left after a time, `f = 0.5^(t / h)`: first-order decay, of which half
 * goes in every half-life. A published DT50 is a half-life only where the decay is first-order. It says
 * how much is left, not whether what is left still works.
 *
 * @param input.halfLife - `h`, more than zero
 * @param input.elapsed - `t`, zero or more
 * @throws RatewrightError `range`, `unit/mismatch`, `type`
 * Source: National Pesticide Information Center, "Pesticide half-life" fact sheet, figure 1.
 *
 * @example
 * ```ts
 * import { fractionRemaining, quantity } from "ratewright";
 * const halfLife = quantity(35, "d");
 * fractionRemaining({ halfLife, elapsed: quantity(70, "d") }).in("%"); // => 25
 * ```
 */
export const fractionRemaining = (input: {
  readonly halfLife: Time;
  readonly elapsed: Time;
}): Quantity<"1", "none"> => {
  expectFields(input, ["halfLife", "elapsed"]);
  return quantity(
    100 *
      0.5 **
        (timeIn(input.elapsed, "elapsed", "non-negative") / timeIn(input.halfLife, "halfLife", "positive")),
    "%",
  );
};

/**
 * The time after which a share of a residue is left, `t = h log2(1 / f)`.
 *
 * @param input.halfLife - `h`, more than zero
 * @param input.remaining - `f`, above 0 and up to 100 %
 * @throws RatewrightError `range`, `unit/mismatch`, `type`
 * Source: as for {@link fractionRemaining}, solved for the time.
 *
 * @example
 * ```ts
 * import { quantity, timeUntilRemaining } from "ratewright";
 * timeUntilRemaining({ halfLife: quantity(23, "d"), remaining: quantity(12.5, "%") }).in("d"); // => 69
 * ```
 */
export const timeUntilRemaining = (input: {
  readonly halfLife: Time;
  readonly remaining: Quantity<"1", "none">;
}): Time => {
  expectFields(input, ["halfLife", "remaining"]);
  const halfLife = timeIn(input.halfLife, "halfLife", "positive");
  const remaining = expectQuantity(
    input.remaining,
    { dimension: "1", of: "none", bound: "positive" },
    "remaining",
  );
  if (remaining.in("%") > 100) outOfRange("remaining", remaining, { max: 100, unit: "%" });
  const times = Math.log2(100 / remaining.in("%"));
  if (!Number.isFinite(halfLife * times))
    fail("range", "remaining", remaining, "a share that is left some day");
  return quantity(halfLife * times, "d");
};

/** What is there with a dose that is given again and again. */
export interface RepeatedDose<D extends string, S extends string> {
  readonly type: "repeated-dose";
  readonly version: 1;
  /** Just after the last dose. */
  readonly afterLast: Quantity<D, S>;
  /** Just before it. */
  readonly beforeLast: Quantity<D, S>;
  /** What the peaks approach, however often the dose is given. */
  readonly limit: Quantity<D, S>;
}

/**
 * How a dose adds up that is given every `i` days while it decays with the half-life `h`: just after the
 * `n`th, `D (1 - f^n) / (1 - f)` with `f = 0.5^(i / h)`, and at most `D / (1 - f)`. First-order decay.
 *
 * @param input.dose - `D`, each time
 * @param input.interval - `i`, from each to the next, more than zero
 * @param input.halfLife - `h`, more than zero
 * @param input.count - `n`, a whole number, 1 or more
 * @throws RatewrightError `range`, `unit/mismatch`, `type`, `not-finite`
 * Source: the sum of a geometric series; common practice, no source.
 *
 * @example
 * ```ts
 * import { quantity, repeatedDose } from "ratewright";
 * const sum = repeatedDose({
 *   dose: quantity(800, "g/ha", "ai"), interval: quantity(20, "d"), halfLife: quantity(20, "d"), count: 3,
 * });
 * sum.afterLast.in("g/ha"); // => 1400
 * sum.limit.in("g/ha"); // => 1600
 * ```
 */
export const repeatedDose = <D extends "mass/area" | "mass" | "volume/area", S extends string>(input: {
  readonly dose: Quantity<D, S>;
  readonly interval: Time;
  readonly halfLife: Time;
  readonly count: number;
}): RepeatedDose<D, S> => {
  expectFields(input, ["dose", "interval", "halfLife", "count"]);
  const dose = expectAmount(
    input.dose,
    { dimensions: ["mass/area", "mass", "volume/area"], bound: "positive" },
    "dose",
  );
  const interval = timeIn(input.interval, "interval", "positive");
  const halfLife = timeIn(input.halfLife, "halfLife", "positive");
  const count = expectNumber(input.count, "count", { min: 1, max: 1e6 });
  if (!Number.isInteger(count)) outOfRange("count", count, { step: 1, count: "doses" });
  // 1 - 0.5^x without the loss of digits for a small x.
  const gone = (x: number): number => -Math.expm1(-Math.LN2 * x);
  const each = gone(interval / halfLife);
  if (each === 0) fail("range", "interval", input.interval, "an interval in which something decays");
  const after = gone((count * interval) / halfLife) / each;
  const times = (factor: number): Quantity<D, S> => likeQuantity(input.dose, dose.value * factor);
  return {
    type: "repeated-dose",
    version: 1,
    afterLast: times(after),
    beforeLast: times(Math.max(0, after - 1)),
    limit: times(1 / each),
  };
};

/** A half-life that a source states at a temperature. */
export interface HalfLifeAtTemperature {
  readonly temperature: Quantity<"temperature", "none">;
  readonly halfLife: Time;
}

/**
 * A half-life between two temperatures at which a source states it: a straight line of its logarithm
 * over temperature, `h = h1 (h2 / h1)^((T - T1) / (T2 - T1))`. Outside the two it is refused: without a
 * published figure there is no adjustment for temperature.
 *
 * @param input.stated - the two figures, at different temperatures
 * @throws RatewrightError `range` outside the two; `conflict` for equal temperatures; `type`, `unit/mismatch`
 * Source of the form: a constant factor per degree, as trade literature states for trinexapac-ethyl
 * ("20 °F more halve the half-life": Improving PGRs by degrees, 2014, with 6.4 d at 64 °F, 3.1 d at 86 °F).
 *
 * @example
 * ```ts
 * import { halfLifeAt, quantity } from "ratewright";
 * const stated = [
 *   { temperature: quantity(64, "°F"), halfLife: quantity(6.4, "d") },
 *   { temperature: quantity(86, "°F"), halfLife: quantity(3.1, "d") },
 * ] as const;
 * Number(halfLifeAt({ stated, temperature: quantity(75, "°F") }).in("d").toFixed(2)); // => 4.45
 * ```
 */
export const halfLifeAt = (input: {
  readonly stated: readonly [HalfLifeAtTemperature, HalfLifeAtTemperature];
  readonly temperature: Quantity<"temperature", "none">;
}): Time => {
  const { stated } = plainCopy(expectFields(input, ["stated", "temperature"]));
  if (!Array.isArray(stated) || stated.length !== 2) {
    return fail("type", "stated", stated, "two half-lives, each at its temperature");
  }
  const statedAt = (i: number): { readonly t: number; readonly h: number } => {
    const one = expectFields(stated[i], ["temperature", "halfLife"], `stated[${i}]`);
    return allOf({
      t: () => degrees(one.temperature, `stated[${i}].temperature`),
      h: () => timeIn(one.halfLife, `stated[${i}].halfLife`, "positive"),
    });
  };
  const { first, second } = allOf({ first: () => statedAt(0), second: () => statedAt(1) });
  const [t1, t2, h1, h2] = [first.t, second.t, first.h, second.h];
  // 64 °F and the same in °C differ by rounding: no line goes through two such points.
  if (Math.abs(t1 - t2) < 1e-6)
    fail("conflict", "stated[1].temperature", t2, "another temperature than the first");
  const t = degrees(input.temperature, "temperature");
  if (t < Math.min(t1, t2) - 1e-9 || t > Math.max(t1, t2) + 1e-9) {
    // in the unit of what was given: 64 °F is no 17.77778 °C to who asks in °F
    const { unit } = input.temperature;
    const told = (c: number): number =>
      Number(
        quantity(c, "°C")
          .in(unit as "°C")
          .toPrecision(12),
      );
    outOfRange(
      "temperature",
      input.temperature,
      { min: told(Math.min(t1, t2)), max: told(Math.max(t1, t2)), unit },
      "{}: between the two at which a half-life is stated",
    );
  }
  return quantity(h1 * (h2 / h1) ** ((t - t1) / (t2 - t1)), "d");
};

const degrees = (input: unknown, path: string): number =>
  expectQuantity(input, { dimension: "temperature", of: "none" }, path).in("°C");

/**
 * How long a residue lasts, in the three classes of extension: low below 16 days, moderate from 16 to 59,
 * high above 60. The source leaves 60 days, and what lies between 59 and 60, to no class.
 *
 * @throws RatewrightError `range`, `unit/mismatch`, `type`
 * Source: National Pesticide Information Center, "Pesticide half-life" fact sheet.
 *
 * @example
 * ```ts
 * import { persistenceClass, quantity } from "ratewright";
 * persistenceClass(quantity(35, "d")); // => "moderate"
 * persistenceClass(quantity(60, "d")); // => "not stated"
 * ```
 */
export const persistenceClass = (halfLife: Time): "low" | "moderate" | "high" | "not stated" => {
  const days = timeIn(halfLife, "halfLife", "positive");
  if (days < 16) return "low";
  return days <= 59 ? "moderate" : days > 60 ? "high" : "not stated";
};
