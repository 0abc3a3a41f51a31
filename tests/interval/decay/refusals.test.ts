import { describe, expect, test } from "vitest";
import {
  fractionRemaining,
  halfLifeAt,
  persistenceClass,
  repeatedDose,
  timeUntilRemaining,
  turfHalfLives,
  turfHalfLivesOf,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of what decays, and what happens exactly at a limit.

const days = (value: number) => quantity(value, "d");
const dose = (change: object) => () =>
  repeatedDose<"mass/area", "ai">({
    dose: quantity(1, "lb/acre", "ai"),
    interval: days(14),
    halfLife: days(14),
    count: 3,
    ...change,
  } as never);
const stated = [
  { temperature: quantity(18, "°C"), halfLife: days(6.4) },
  { temperature: quantity(30, "°C"), halfLife: days(3.1) },
];
const at = (change: object) => () =>
  halfLifeAt({ stated, temperature: quantity(24, "°C"), ...change } as never);

const rows: readonly Refused[] = [
  [() => fractionRemaining({ halfLife: days(0), elapsed: days(1) }), "range", "halfLife", "more than zero"],
  [() => fractionRemaining({ halfLife: days(1), elapsed: days(-1) }), "range", "elapsed", "zero or more"],
  [
    () => fractionRemaining({ halfLife: days(1), elapsed: quantity(1, "lb") as never }),
    "unit/mismatch",
    "elapsed",
    "a time",
  ],
  [
    () => timeUntilRemaining({ halfLife: days(0), remaining: quantity(50, "%") }),
    "range",
    "halfLife",
    "more than zero",
  ],
  [
    () => timeUntilRemaining({ halfLife: days(1), remaining: quantity(0, "%") }),
    "range",
    "remaining",
    "more than zero",
  ],
  [
    () => timeUntilRemaining({ halfLife: days(1), remaining: quantity(101, "%") }),
    "range",
    "remaining",
    "100 % or less",
  ],
  [
    () => timeUntilRemaining({ halfLife: days(1e308), remaining: quantity(1e-9, "%") }),
    "range",
    "remaining",
    "a share that is left some day",
  ],
  [dose({ dose: quantity(0, "lb/acre", "ai") }), "range", "dose", "more than zero"],
  [dose({ dose: quantity(1, "acre") }), "unit/mismatch", "dose", "a weight over an area"],
  [dose({ interval: days(0) }), "range", "interval", "more than zero"],
  [
    dose({ interval: days(1e-300), halfLife: days(1e30) }),
    "range",
    "interval",
    "an interval in which something decays",
  ],
  [dose({ halfLife: days(0) }), "range", "halfLife", "more than zero"],
  [dose({ count: 0 }), "range", "count", "1 or more"],
  [dose({ count: 1e6 + 1 }), "range", "count", "1000000 or less"],
  [dose({ count: 1.5 }), "range", "count", "doses"],
  [dose({ days: 1 }), "type", "input.days", "interval"],
  [at({ stated: [stated[0]] }), "type", "stated", "two half-lives, each at its temperature"],
  [at({ stated: 7 }), "type", "stated", "two half-lives, each at its temperature"],
  [at({ stated: [stated[0], 7] }), "type", "stated[1]", "record"],
  [
    at({ stated: [stated[0], { ...stated[1], halfLife: days(0) }] }),
    "range",
    "stated[1].halfLife",
    "more than zero",
  ],
  [
    at({ stated: [{ ...stated[0], temperature: 18 }, stated[1]] }),
    "type",
    "stated[0].temperature",
    "quantity",
  ],
  [
    at({ stated: [stated[0], { ...stated[0], halfLife: days(3) }] }),
    "conflict",
    "stated[1].temperature",
    "another temperature than the first",
  ],
  [
    at({ temperature: quantity(17.9, "°C") }),
    "range",
    "temperature",
    "between the two at which a half-life is stated",
  ],
  [at({ temperature: quantity(30.1, "°C") }), "range", "temperature", "18 to 30 °C"],
  // 18 and 30 °C to who asks in °F
  [at({ temperature: quantity(90, "°F") }), "range", "temperature", "64.4 to 86 °F"],
  [() => persistenceClass(days(0)), "range", "halfLife", "more than zero"],
  [() => turfHalfLivesOf(7 as never), "type", "active", "the common name of an active ingredient"],
];

describeRefused("what is refused of what decays", rows);

describe("at the limits", () => {
  test("nothing is gone at once, all of it is left in no time, and the ends of a range are read", () => {
    expect(fractionRemaining({ halfLife: days(3), elapsed: days(0) }).in("%")).toBe(100);
    expect(fractionRemaining({ halfLife: days(3), elapsed: days(6) }).in("%")).toBe(25);
    expect(timeUntilRemaining({ halfLife: days(3), remaining: quantity(100, "%") }).in("d")).toBe(0);
    expect(timeUntilRemaining({ halfLife: days(3), remaining: quantity(12.5, "%") }).in("d")).toBe(9);
    for (const call of [dose({ count: 1 }), dose({ count: 1e6 })]) expect(problemsOf(call)).toEqual([]);
  });

  test("three doses a half-life apart: 1.75 after, 0.75 before, 2 in the end", () => {
    const found = dose({})();
    expect(found.afterLast.in("lb/acre")).toBeCloseTo(1.75, 12);
    expect(found.beforeLast.in("lb/acre")).toBeCloseTo(0.75, 12);
    expect(found.limit.in("lb/acre")).toBeCloseTo(2, 12);
    expect(dose({ count: 1 })().beforeLast.value).toBe(0);
  });

  test("a half-life at either temperature is the stated one, halfway their geometric mean", () => {
    const here = (celsius: number) => at({ temperature: quantity(celsius, "°C") })().in("d");
    expect(here(18)).toBeCloseTo(6.4, 12);
    expect(here(30)).toBeCloseTo(3.1, 12);
    expect(here(24)).toBeCloseTo(Math.sqrt(6.4 * 3.1), 12);
  });

  test("classes of persistence as printed: below 16, 16 to 59, above 60, and a gap between", () => {
    const of = (value: number) => persistenceClass(days(value));
    expect([of(15.9), of(16), of(59), of(59.5), of(60), of(60.1)]).toEqual([
      "low",
      "moderate",
      "moderate",
      "not stated",
      "not stated",
      "high",
    ]);
  });
});

describe("half-lives under turf", () => {
  test("as the abstracts print them", () => {
    const printed = [
      ["dithiopyr", "turf", 35, 35],
      ["pendimethalin", "turf", 23, 23],
      ["mefenoxam", "turf", 5, 6],
      ["mefenoxam", "bare soil", 7, 8],
      ["propiconazole", "turf", 12, 15],
      ["propiconazole", "bare soil", 29, 29],
    ];
    expect(turfHalfLives.map(({ active, where, days: [low, high] }) => [active, where, low, high])).toEqual(
      printed,
    );
    expect(turfHalfLivesOf(" Propiconazole ").map(({ where }) => where)).toEqual(["turf", "bare soil"]);
    expect(turfHalfLivesOf("water")).toEqual([]);
    for (const { note, source } of turfHalfLives) expect(`${note} ${source.title}`).toMatch(/\w.* \w/);
  });
});
