import { describe, expect, it } from "vitest";
import { type CivilDate, dailySeries, type Instant } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import { complaint } from "../../errors.js";
import { tellsEach } from "../../tells.js";
import { inch, inPerHour, mm } from "../helpers.js";

type Plain = (input: unknown) => unknown;
/** Each function as plain JavaScript calls it. */
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const h = (value: number) => quantity(value, "h");
const end: Instant = "2026-06-03T09:00-05:00";
const at = (hour: number): Instant => `2026-06-03T${String(hour).padStart(2, "0")}:00-05:00` as Instant;
const series = (values: readonly (number | null)[], start: CivilDate = "2026-06-01") =>
  dailySeries({ start, unit: "mm", what: "rain", source: "gauge", values });

describe("a rule", () => {
  const rule = (more: object) => () => call.wateringInRule({ source: "label, section 4", ...more });
  const nested = (more: object) => () =>
    call.wateringIn({ rule: { source: "label", ...more }, end, water: [], until: end });
  tellsEach([
    [
      () => call.wateringInRule(3),
      "type input: expected a rule with least, most, within, notBefore and source, got 3",
    ],
    [rule({}), "missing least: expected what the source states: least, most or notBefore, got undefined"],
    [
      nested({}),
      "missing rule.least: expected what the source states: least, most or notBefore, got undefined",
    ],
    [
      rule({ source: "", least: inch(1), version: 2, type: "rule" }),
      'type type: expected one of "watering-in-rule", got "rule"',
      "type version: expected version 1, got 2",
      'missing source: expected who states it, such as the label, got ""',
    ],
    [
      rule({ least: inch(1), most: inch(0.5) }),
      "conflict most: expected not less than least, 1 in, got 0.5 in",
    ],
    [
      nested({ least: inch(1), most: inch(0.5) }),
      "conflict rule.most: expected not less than least, 1 in, got 0.5 in",
    ],
    [
      rule({ least: inch(1), within: h(2), notBefore: h(2) }),
      "conflict within: expected longer than notBefore, 2 h, got 2 h",
    ],
    [
      nested({ notBefore: h(2), within: h(24) }),
      "conflict rule.within: expected with least or most, got 24 h",
    ],
  ]);

  it("equal amounts at both ends are a rule", () => {
    const found = water.wateringInRule({ source: "label", least: inch(0.5), most: mm(12.7) });
    expect(Object.keys(found)).toEqual(["type", "version", "least", "most", "source"]);
  });
});

describe("water after an application", () => {
  const given = { rule: { source: "label", least: inch(0.25) }, end, water: [], until: end };
  const event = { at: at(10), depth: inch(0.1), by: "rain" };
  const of = (more: object) => () => call.wateringIn({ ...given, ...more });
  tellsEach([
    [() => call.wateringIn(3), "type input: expected a record with rule, end, water and until, got 3"],
    [
      of({ end: undefined, until: undefined, water: undefined }),
      "missing end: expected a moment with its offset, got undefined",
      "missing water: expected a list of water that came; an empty one where none did, got undefined",
      "missing until: expected a moment with its offset, got undefined",
    ],
    [
      of({ water: event }),
      "type water: expected a list of water that came; an empty one where none did, got a record",
    ],
    [
      of({ water: Array(10_001).fill(event) }),
      "range water: expected 10000 events or fewer, got a list of 10001",
    ],
    [
      of({ water: [event, { ...event, by: "dew" }] }),
      'type water[1].by: expected one of "rain", "irrigation", got "dew"',
    ],
    [of({ water: [3] }), "type water[0]: expected a record with at, depth and by, got 3"],
    [
      of({ until: at(8) }),
      'conflict until: expected not before the end, 2026-06-03T09:00-05:00, got "2026-06-03T08:00-05:00"',
    ],
  ]);

  const rule = water.wateringInRule({
    source: "label, section 4",
    least: inch(0.25),
    most: inch(0.5),
    within: h(4),
    notBefore: h(2),
  });
  const state = (list: readonly (readonly [hour: number, inches: number])[], until = 14) =>
    water.wateringIn({
      rule,
      end,
      until: at(until),
      rate: inPerHour(0.5),
      water: list.map(([hour, inches]) => ({ at: at(hour), depth: inch(inches), by: "rain" })),
    });

  it("counts from the moment on which the leaf may get wet to the last one, both counted", () => {
    expect(state([[11, 0.25]])).toMatchObject({
      state: "reached",
      reachedAt: at(11),
      dryUntil: at(11),
      by: at(13),
    });
    expect(state([[13, 0.25]]).state).toBe("reached");
    expect(state([[14, 0.25]]).state).toBe("missed");
    expect(state([[10, 0.25]]).early.in("in")).toBe(0.25);
    // Water in the moment of the end is on the wet leaf; water before it is not of this application.
    expect(state([[9, 0.1]]).early.in("in")).toBe(0.1);
    expect(state([[8, 0.1]]).early.in("in")).toBe(0);
  });

  it("is to come until the last moment, and missed at it", () => {
    expect(state([], 12).state).toBe("to come");
    expect(state([], 13).state).toBe("missed");
    expect(state([[14, 0.3]], 14).received.in("in")).toBe(0);
    expect(
      state([
        [12, 0.1],
        [13, 0.15],
      ]).reachedAt,
    ).toBe(at(13));
    const none = state([], 12);
    expect([none.remaining.in("in"), none.runTime?.in("min")]).toEqual([0.25, 30]);
    expect(state([], 9).checkedUntil).toBe(at(9));
  });

  it("findings carry what came and what was stated", () => {
    const { findings } = state([
      [10, 0.5],
      [12, 0.1],
    ]);
    expect(findings.map(({ code, path, params, source }) => [code, path, params, source])).toEqual([
      ["water/water-too-soon", "water", { came: "0.5 in", dryUntil: at(11) }, "label, section 4"],
      ["water/too-much-water", "water", { came: "0.6 in", most: "0.5 in" }, "label, section 4"],
      ["water/not-watered-in", "water", { came: "0.1 in", least: "0.25 in", by: at(13) }, "label, section 4"],
    ]);
    expect(state([[12, 0.5]]).findings).toEqual([]);
    expect(state([]).notChecked).toEqual([
      "how wet the soil was before",
      "how fast the water came, and whether it ran off",
      "everything else on the label",
    ]);
  });

  it("a rule without a least asks for nothing", () => {
    const dry = water.wateringIn({
      rule: water.wateringInRule({ source: "label", notBefore: h(2) }),
      end,
      until: at(14),
      water: [{ at: at(12), depth: mm(3), by: "irrigation" }],
    });
    expect(dry).toMatchObject({ state: "nothing asked", reachedAt: null, by: null, runTime: null });
    expect([dry.received.in("mm"), dry.remaining.value, dry.over.value, dry.received.unit]).toEqual([
      3,
      0,
      0,
      "mm",
    ]);
  });
});

describe("the rain of the days after", () => {
  const given = { applied: "2026-06-01", depth: mm(6), withinDays: 2, rain: series([9, 2, 3, 9]) };
  const of = (more: object) => () => call.wateringInState({ ...given, ...more });
  tellsEach([
    [
      () => call.wateringInState(3),
      "type input: expected a record with applied, depth, withinDays and rain, got 3",
    ],
    [of({ applied: undefined }), "missing applied: expected a date, got undefined"],
    [of({ withinDays: 0 }), "range withinDays: expected 1 or more, got 0"],
    [of({ withinDays: 367 }), "range withinDays: expected 366 or less, got 367"],
    [of({ withinDays: 1.5 }), "range withinDays: expected a whole number, got 1.5"],
    [of({ rain: 3 }), "type rain: expected a daily series of depths, as dailySeries makes it, got 3"],
  ]);
  it("counts the days after the application, the last one with them, and says which have no figure", () => {
    const state = (rain: ReturnType<typeof series>) =>
      water.wateringInState({ ...given, applied: "2026-06-01", rain });
    expect(state(series([9, 2, 3, 9]))).toMatchObject({ by: "2026-06-03", notCounted: [] });
    expect(state(series([9, 2, 3, 9])).remaining.in("mm")).toBe(1);
    expect(state(series([9, 2, 4])).remaining.in("mm")).toBe(0);
    expect(state(series([9, null])).notCounted).toEqual(["2026-06-02", "2026-06-03"]);
    expect(complaint(of({ withinDays: 366 }))).toBe("nothing thrown");
  });
});
