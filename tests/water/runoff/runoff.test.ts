import fc from "fast-check";
import { describe, expect, it, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as water from "../../../src/water/index.js";
import {
  curveNumber,
  curveNumberRunoff,
  type HydrologicSoilGroup,
  type RunoffCover,
  waterVolume,
  weightedCurveNumber,
} from "../../../src/water/index.js";
import { tellsEach } from "../../tells.js";
import { close, inch } from "../helpers.js";

type Plain = (input: unknown) => unknown;
const call = water as unknown as Readonly<Record<keyof typeof water, Plain>>;
const rain = fc.double({ min: 0, max: 20, noNaN: true });
const number = fc.double({ min: 30, max: 100, noNaN: true });
const by = fc.constantFrom("0.2 S" as const, "0.05 S" as const);
const runoff = (p: number, cn: number, initialAbstraction: "0.2 S" | "0.05 S" = "0.2 S") =>
  curveNumberRunoff({ rain: inch(p), curveNumber: cn, initialAbstraction }).runoff.in("in");

describe("what runs off", () => {
  test("never more than falls, and more of a larger storm and of a higher number", () => {
    fc.assert(
      fc.property(rain, rain, number, number, by, (p1, p2, n1, n2, ratio) => {
        const [less, more] = [Math.min(p1, p2), Math.max(p1, p2)];
        const [low, high] = [Math.min(n1, n2), Math.max(n1, n2)];
        const here = runoff(less, low, ratio);
        expect(here).toBeGreaterThanOrEqual(0);
        expect(here).toBeLessThanOrEqual(less);
        expect(runoff(more, low, ratio)).toBeGreaterThanOrEqual(here);
        expect(runoff(less, high, ratio)).toBeGreaterThanOrEqual(here - 1e-12);
      }),
    );
  });
  test("the same in inches and in millimeters, by the metric form of the equation", () => {
    fc.assert(
      fc.property(rain, number, (p, cn) => {
        const mm = 25.4 * p;
        const found = curveNumberRunoff({ rain: quantity(mm, "mm"), curveNumber: cn });
        const s = 25_400 / cn - 254;
        const byHand = mm > 0.2 * s ? (mm - 0.2 * s) ** 2 / (mm + 0.8 * s) : 0;
        expect(Math.abs(found.runoff.in("mm") - byHand)).toBeLessThan(1e-9);
        expect(found.runoff.unit).toBe("mm");
      }),
    );
  });
  test("on ground that takes in nothing all of it runs", () => {
    fc.assert(
      fc.property(rain, by, (p, ratio) => {
        expect(runoff(p, 100, ratio)).toBeCloseTo(p, 12);
      }),
    );
  });
  test("the volume is the depth on the area, in both systems", () => {
    const area = quantity(12_400, "ft2");
    const storm = curveNumberRunoff({ rain: inch(3), curveNumber: 80, area });
    close(storm.volume?.in("gal") ?? 0, waterVolume({ depth: storm.runoff, area }).in("gal"), 1e-12);
    const metric = { rain: quantity(76.2, "mm"), curveNumber: 80, area: quantity(area.in("m2"), "m2") };
    const found = curveNumberRunoff(metric).volume;
    close(found?.in("gal") ?? 0, storm.volume?.in("gal") ?? 1, 1e-9);
    expect(found?.unit).toBe("L");
    expect(curveNumberRunoff({ rain: inch(3), curveNumber: 80 })).not.toHaveProperty("volume");
  });
  test("a dry day", () => {
    const dry = curveNumberRunoff({ rain: inch(0), curveNumber: 61, area: quantity(1, "acre") });
    expect([dry.runoff.value, dry.share.value, dry.volume?.value, dry.findings]).toEqual([0, 0, 0, []]);
    expect(dry.notChecked.length).toBe(3);
  });
});

describe("a small storm", () => {
  it("says what the other share would let run", () => {
    // 1 in on 70: S = 4.2857, Ia = 0.857; wider S = 1.33 x 5.331 = 7.091, Ia = 0.3545; 0.6455² / (0.6455 + 7.091) = 0.0539
    const small = curveNumberRunoff({ rain: inch(0.8), curveNumber: 70 });
    expect(small.runoff.value).toBe(0);
    const [note] = small.findings;
    expect(note).toMatchObject({ code: "water/small-storm", severity: "note", path: "initialAbstraction" });
    expect(note?.params.inches).toBeCloseTo(0.4455 ** 2 / (0.4455 + 7.091), 3);
    expect(note?.text).toContain("it is 0.03 in:");
    const metric = curveNumberRunoff({ rain: quantity(20.32, "mm"), curveNumber: 70 });
    expect(metric.findings[0]?.text).toContain("it is 0.67 mm:");
    expect(metric.findings[0]?.params).toEqual({ inches: expect.closeTo(note?.params.inches as number, 9) });
  });
  it("and nothing where nothing runs by either", () => {
    expect(curveNumberRunoff({ rain: inch(0.2), curveNumber: 70 }).findings).toEqual([]);
    const asked = { rain: inch(0.8), curveNumber: 70, initialAbstraction: "0.05 S" } as const;
    const other = curveNumberRunoff(asked);
    expect([other.by, other.findings]).toEqual(["0.05 S", []]);
    expect(other.runoff.value).toBeGreaterThan(0);
  });
});

describe("curve numbers", () => {
  const groups: readonly HydrologicSoilGroup[] = ["A", "B", "C", "D"];
  it("rise from A to D and from good to poor", () => {
    for (const cover of ["open space", "brush", "woods"]) {
      const of = (condition: string, soilGroup: HydrologicSoilGroup) =>
        curveNumber({ cover: `${cover}, ${condition}` as RunoffCover, soilGroup }).value;
      for (const group of groups) {
        expect(of("fair", group)).toBeGreaterThan(of("good", group));
        expect(of("poor", group)).toBeGreaterThan(of("fair", group));
      }
      const good = groups.map((group) => of("good", group));
      expect(good).toEqual([...good].sort((a, b) => a - b));
    }
  });
  it("go on as they are, alone and weighted", () => {
    const lawn = curveNumber({ cover: "open space, fair", soilGroup: "B" });
    const walk = curveNumber({ cover: "paved", soilGroup: "B" });
    const area = (value: number) => quantity(value, "ft2");
    const whole = weightedCurveNumber({
      parts: [
        { area: area(9000), curveNumber: lawn },
        { area: area(1000), curveNumber: walk },
      ],
    });
    close(whole.value, 0.9 * 69 + 0.1 * 98, 1e-12);
    const storm = curveNumberRunoff({ rain: inch(2), curveNumber: whole });
    close(storm.runoff.in("in"), runoff(2, 71.9), 1e-9);
    // Runoff of each part with its area is more: the walk sheds nearly all of it.
    const parts =
      0.9 * curveNumberRunoff({ rain: inch(2), curveNumber: lawn }).runoff.in("in") +
      0.1 * curveNumberRunoff({ rain: inch(2), curveNumber: walk }).runoff.in("in");
    expect(parts).toBeGreaterThan(storm.runoff.in("in"));
    const [apart] = whole.findings;
    expect(apart).toMatchObject({ code: "water/curve-numbers-apart", params: { between: 29, usual: 5 } });
    expect(apart?.text).toMatch(/^The curve numbers of the parts lie 29 apart\./);
  });
  it("lie between those of the parts, whatever the areas are in", () => {
    const size = fc.double({ min: 0.01, max: 1000, noNaN: true });
    fc.assert(
      fc.property(size, size, number, number, (a, b, one, other) => {
        const value = weightedCurveNumber({
          parts: [
            { area: quantity(a, "acre"), curveNumber: one },
            { area: quantity(b, "ha"), curveNumber: other },
          ],
        }).value;
        expect(value).toBeGreaterThanOrEqual(Math.min(one, other) - 1e-9);
        expect(value).toBeLessThanOrEqual(Math.max(one, other) + 1e-9);
      }),
    );
  });
});

describe("what is refused", () => {
  const part = { area: quantity(1, "acre"), curveNumber: 61 };
  const storm = { rain: inch(3), curveNumber: 74 };
  const groupsTold = '"A", "B", "C", "D"';
  tellsEach([
    [() => call.curveNumber(3), "type input: expected a record with cover and soilGroup, got 3"],
    [() => call.weightedCurveNumber({ parts: [] }), expect.stringMatching(/^\w+ parts/) as unknown as string],
    [() => call.curveNumberRunoff(3), "type input: expected a record with rain and curveNumber, got 3"],
    [
      () => call.curveNumber({ cover: "paved", soilGroup: "E" }),
      `type soilGroup: expected one of ${groupsTold}, got "E"`,
    ],
    [
      () => call.curveNumberRunoff({ ...storm, curveNumber: 25 }),
      "range curveNumber: expected 30 or more, got 25",
    ],
    [
      () => call.curveNumberRunoff({ ...storm, curveNumber: 0.74 }),
      "range curveNumber: expected 30 or more, got 0.74",
    ],
    [
      () => call.curveNumberRunoff({ ...storm, curveNumber: { type: "curve-number", value: 101 } }),
      "range curveNumber.value: expected 100 or less, got 101",
    ],
    [
      () => call.curveNumberRunoff({ ...storm, initialAbstraction: 0.05 }),
      'type initialAbstraction: expected one of "0.2 S", "0.05 S", got 0.05',
    ],
    [
      () => call.weightedCurveNumber({ parts: [part, { ...part, curveNumber: 20 }] }),
      "range parts[1].curveNumber: expected 30 or more, got 20",
    ],
  ]);
  it("names the covers", () => {
    expect(() => call.curveNumber({ cover: "lawn", soilGroup: "A" })).toThrow(/"open space, good"/);
    expect(() => call.curveNumberRunoff({ ...storm, rain: quantity(-1, "in") })).toThrow(/rain/);
  });
});
