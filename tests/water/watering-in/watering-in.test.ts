import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addHours, type Instant } from "../../../src/calendar/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { type WaterEvent, wateringIn, wateringInRule } from "../../../src/water/index.js";
import { complaints } from "../../errors.js";
import { close, inch, inPerHour, mm, untyped } from "../helpers.js";

const end: Instant = "2026-06-03T09:00-05:00";
const hours = (value: number) => quantity(value, "h");
const later = (h: number, depth: number, by: WaterEvent["by"] = "rain"): WaterEvent => ({
  at: addHours(end, h),
  depth: inch(depth),
  by,
});
const rule = wateringInRule({
  least: inch(0.25),
  most: inch(0.5),
  within: hours(24),
  notBefore: hours(2),
  source: "label, soil insects",
});
const at = (until: number, water: readonly WaterEvent[]) =>
  wateringIn({ rule, end, water, until: addHours(end, until), rate: inPerHour(0.5) });

describe("a rule", () => {
  test("is read back from what JSON leaves of it", () => {
    expect(wateringInRule(JSON.parse(JSON.stringify(rule)))).toEqual(rule);
    const state = at(3, []);
    const again = wateringIn({
      rule: JSON.parse(JSON.stringify(rule)),
      end,
      water: [],
      until: addHours(end, 3),
      rate: inPerHour(0.5),
    });
    expect(again).toEqual(state);
  });
  test("states something, and nothing that cannot be", () => {
    const of = (input: object) => complaints(untyped(wateringInRule, { source: "label", ...input }));
    expect(of({})).toEqual(["missing least"]);
    expect(of({ source: "", least: inch(1) })).toEqual(["missing source"]);
    expect(of({ least: inch(1), most: inch(0.5) })).toEqual(["conflict most"]);
    expect(of({ least: inch(1), within: hours(2), notBefore: hours(2) })).toEqual(["conflict within"]);
    expect(of({ notBefore: hours(2), within: hours(24) })).toEqual(["conflict within"]);
    expect(of({ leest: inch(1), notBefore: hours(1) })).toEqual(["type leest"]);
    expect(of({ least: inch(0), most: quantity(1, "gal/acre") })).toEqual([
      "range least",
      "unit/mismatch most",
    ]);
  });
});

describe("the water after an application", () => {
  test("that came too soon counts against the most, and not toward the least", () => {
    const soaked = at(24, [later(1, 2), later(5, 0.25)]);
    expect(soaked.state).toBe("reached");
    close(soaked.early.in("in"), 2);
    close(soaked.over.in("in"), 1.75);
    expect(soaked.findings.map(({ code }) => code)).toEqual(["water/water-too-soon", "water/too-much-water"]);
    const early = at(24, [later(1, 0.3)]);
    expect([early.state, early.over.value]).toEqual(["missed", 0]);
  });
  test("to come, reached, missed", () => {
    const waiting = at(10, [later(5, 0.1)]);
    expect(waiting.state).toBe("to come");
    expect(waiting.by).toBe("2026-06-04T09:00-05:00");
    expect(waiting.dryUntil).toBe("2026-06-03T11:00-05:00");
    expect(waiting.remaining.in("in")).toBeCloseTo(0.15, 12);
    expect(waiting.runTime?.in("min")).toBeCloseTo(18, 9);
    expect(waiting.findings).toEqual([]);
    const reached = at(10, [later(8, 0.15, "irrigation"), later(5, 0.1)]);
    expect(reached.state).toBe("reached");
    expect(reached.reachedAt).toBe(addHours(end, 8));
    expect(reached.runTime?.in("min")).toBe(0);
    const missed = at(30, [later(5, 0.1), later(26, 3)]);
    expect(missed.state).toBe("missed");
    expect(missed.findings.map(({ code }) => code)).toEqual(["water/not-watered-in"]);
  });
  test("too soon and too much", () => {
    const soon = at(10, [later(1, 0.3)]);
    expect(soon.early.in("in")).toBe(0.3);
    expect(soon.received.in("in")).toBe(0);
    expect(soon.findings.map(({ code }) => code)).toEqual(["water/water-too-soon"]);
    const much = at(10, [later(3, 0.4), later(4, 0.3)]);
    expect(much.over.in("in")).toBeCloseTo(0.2, 12);
    expect(much.state).toBe("reached");
    expect(much.findings.map(({ code }) => code)).toEqual(["water/too-much-water"]);
    expect(much.findings[0]?.source).toBe("label, soil insects");
  });
  test("a foliar spray that only has to stay dry", () => {
    const dry = wateringInRule({ notBefore: hours(6), source: "label" });
    const state = wateringIn({ rule: dry, end, water: [later(7, 1)], until: addHours(end, 8) });
    expect(state.state).toBe("nothing asked");
    expect([state.by, state.reachedAt, state.runTime]).toEqual([null, null, null]);
    expect(state.findings).toEqual([]);
    expect(state.received.in("mm")).toBeCloseTo(25.4, 9);
    expect(state.notChecked.length).toBeGreaterThan(0);
  });
  test("the order of the events and the offset of their clocks change nothing; no drop counts twice", () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -5, max: 40 }), fc.double({ min: 0, max: 1, noNaN: true })), {
          maxLength: 12,
        }),
        (list) => {
          const water = list.map(([h, d]) => later(h, d));
          const state = at(48, water);
          const moved = water.map((event) => ({
            ...event,
            at: new Date(event.at).toISOString().replace(".000", "") as Instant,
          }));
          const back = at(48, [...moved].reverse());
          expect(back.received.in("in")).toBeCloseTo(state.received.in("in"), 9);
          expect(back.early.in("in")).toBeCloseTo(state.early.in("in"), 9);
          expect(back.state).toBe(state.state);
          const counted = list.filter(([h]) => h >= 0 && h <= 24).reduce((sum, [, d]) => sum + d, 0);
          expect(state.received.in("in") + state.early.in("in")).toBeCloseTo(counted, 9);
          const least = state.remaining.in("in") + state.received.in("in");
          expect(least).toBeGreaterThanOrEqual(0.25 - 1e-9);
        },
      ),
    );
  });
  test("what lies after the moment that is known does not count", () => {
    expect(at(3, [later(4, 0.3)]).received.in("in")).toBe(0);
    close(at(4, [later(4, 0.3)]).received.in("in"), 0.3);
  });
  test("bad input", () => {
    const of = (more: object) =>
      complaints(untyped(wateringIn, { rule, end, water: [], until: end, ...more }));
    expect(of({})).toEqual([]);
    expect(of({ until: addHours(end, -1) })).toEqual(["conflict until"]);
    expect(of({ end: "2026-06-03T09:00", water: [{ at: end, depth: mm(-1), by: "hose" }] })).toEqual([
      "date end",
      "range water[0].depth",
      "type water[0].by",
    ]);
    expect(of({ rule: { least: inch(1) } })).toEqual(["missing rule.source"]);
    expect(of({ water: undefined })).toEqual(["missing water"]);
  });
});
