import { describe, expect, test } from "vitest";
import { type Quantity, quantity } from "../../../src/quantity/index.js";
import { greenSpeed, pestDensity } from "../../../src/stand/index.js";

const ft = (value: number) => quantity(value, "ft");
const of = (up: readonly number[], down: readonly number[]) =>
  greenSpeed({ up: up.map(ft), down: down.map(ft) });
const codes = (up: readonly number[], down: readonly number[]) =>
  of(up, down).findings.map(({ code }) => code);

describe("green speed", () => {
  test("as one record: 2 x 6 x 12 / 18 is 8 on level ground", () => {
    const { source, ...finding } = of([5, 7], [12]).findings[1] ?? {};
    expect(JSON.parse(JSON.stringify({ ...of([6], [12]), findings: [] }))).toEqual({
      type: "green-speed",
      version: 1,
      up: { value: 6, unit: "ft", of: "none" },
      down: { value: 12, unit: "ft", of: "none" },
      level: { value: 8, unit: "ft", of: "none" },
      mean: { value: 9, unit: "ft", of: "none" },
      findings: [],
    });
    expect(finding).toEqual({
      code: "green-speed/sloped",
      severity: "note",
      path: "down",
      params: { ratio: 2, slope: "moderate" },
      text: "Downhill is 2.0 times uphill: the green is moderately sloped.",
    });
    expect(source).toMatchObject({ publisher: "USGA", title: "Course rating manual" });
  });

  test("in meters where the first roll is", () => {
    const found = greenSpeed({ up: [quantity(300, "cm")], down: [ft(10)] });
    expect([found.up.unit, found.down.unit]).toEqual(["m", "m"]);
    expect(found.down.in("m")).toBeCloseTo(3.048, 12);
  });

  test("rolls may lie 8 in apart, and no more", () => {
    expect(codes([10, 10 + 8 / 12], [11])).toEqual([]);
    expect(codes([10], [11, 11 + 8.1 / 12])).toEqual(["green-speed/rolls-apart"]);
    const { source, ...finding } = of([10, 9], [11]).findings[0] ?? {};
    expect(finding).toEqual({
      code: "green-speed/rolls-apart",
      severity: "caution",
      path: "up",
      params: { way: "up", inches: 12, most: 8 },
      text: "The rolls uphill are 12.0 in apart, more than 8: roll them again.",
    });
    expect(source).toMatchObject({ publisher: "USGA instructions, in a copy" });
    expect(of([11], [12, 11]).findings[0]?.path).toBe("down");
  });

  test("twice is a moderate slope, more than three times a steep one", () => {
    expect(codes([5], [9.99])).toEqual([]);
    expect(of([5], [10]).findings[0]?.params).toEqual({ ratio: 2, slope: "moderate" });
    expect(of([4], [12]).findings[0]?.params).toEqual({ ratio: 3, slope: "moderate" });
    expect(of([4], [12.04]).findings[0]).toMatchObject({
      params: { ratio: 3.01, slope: "steep" },
      text: "Downhill is 3.0 times uphill: the green is steeply sloped.",
    });
  });

  test("uphill is not the longer way", () => {
    expect(codes([10], [10])).toEqual([]);
    expect(codes([10], [10 * (1 - 5e-10)])).toEqual([]);
    expect(of([10], [8]).findings).toEqual([
      {
        code: "green-speed/uphill-longer",
        severity: "caution",
        path: "up",
        params: { ratio: 1.25 },
        text: "The rolls uphill are longer than those downhill: check which is which, and the wind.",
        source: "common practice, no source",
      },
    ]);
  });

  test("a hundred rolls are the most", () => {
    const rolls = (n: number): readonly Quantity<"length", "none">[] =>
      Array.from({ length: n }, () => ft(9));
    expect(greenSpeed({ up: rolls(100), down: rolls(1) }).up.in("ft")).toBe(9);
  });
});

describe("pests in cores", () => {
  const core = { area: quantity(0.1, "ft2") };
  const source = "the park's own limit";
  test("as one record: 20 grubs in 10 cores of a tenth of a square foot are 20 to the square foot", () => {
    const counts = [0, 4, 0, 4, 0, 4, 0, 4, 2, 2];
    const found = pestDensity({ counts, core, confidence: quantity(0.9, "1") });
    // squares off the mean of 2 come to 32, by 9; one core scatters by its root, the mean of ten by a root of ten less.
    // Student's t of 90 % and 9 degrees of freedom is 1.8331 in any table.
    const margin = 1.8331 * Math.sqrt(32 / 9 / 10);
    expect(found).toMatchObject({ type: "pest-density", version: 1, cores: 10, counted: 20, findings: [] });
    expect([found.density.toString(), found.coreArea.toString(), found.confidence.toString()]).toEqual([
      "20 count/ft2",
      "0.1 ft2",
      "90 %",
    ]);
    expect(found.low.in("count/ft2")).toBeCloseTo(20 - 10 * margin, 3);
    expect(found.high.in("count/ft2")).toBeCloseTo(20 + 10 * margin, 3);
    expect(found.againstThreshold).toBe("not compared");
  });

  test("counts that are more even than chance scatter as chance does", () => {
    const found = pestDensity({ counts: Array<number>(16).fill(4), core });
    // the variance of chance is the mean, 4; Student's t of 95 % and 15 degrees of freedom is 2.1314
    expect(found.low.in("count/ft2")).toBeCloseTo(40 - 10 * 2.1314 * 0.5, 2);
    // the exact upper limit of Poisson for 64 is 81.7266, a little above 64 + 16 x 2.1314 x 0.5
    expect(found.high.in("count/ft2")).toBeCloseTo(81.7266 / 1.6, 3);
    expect(found.confidence.toString()).toBe("95 %");
  });

  test("one core alone scatters as chance does, by the factor of many", () => {
    const found = pestDensity({ counts: [9], core });
    expect(found.low.in("count/ft2")).toBeCloseTo(90 - 10 * 1.959964 * 3, 3);
    // the exact upper limit of Poisson for 9 at 95 %, summed term by term outside: 17.0848, above 9 + 1.96 x 3
    expect(found.high.in("count/ft2")).toBeCloseTo(170.848, 3);
    expect(found.findings[0]?.text).toBe("1 core: take 10 or more, from all over the ground.");
  });

  test.each([
    // counted in ten cores, the exact upper limit of Poisson at 95 % for all of them
    [1, 5.571643],
    [3, 8.767273],
    [9, 17.084803],
    [10, 18.390356],
    [11, 19.682039],
    [20, 30.888378],
    [100, 121.626794],
    [1000, 1063.952136],
  ])("the upper end of %i grubs is never below that of chance", (counted, upper) => {
    const counts = Array.from({ length: 10 }, (_, i) => Math.floor((counted + i) / 10));
    const found = pestDensity({ counts, core });
    expect(found.counted).toBe(counted);
    const scattered = counted / 10 + 2.262157 * Math.sqrt(counted / 10 / 10);
    const most = Math.max(upper / 10, scattered);
    if (counted > 1) expect(found.high.in("count/ft2") / 10).toBeCloseTo(most, 4);
    else expect(found.high.in("count/ft2") / 10).toBeGreaterThanOrEqual(upper / 10 - 1e-6);
  });

  test("three grubs in ten cores do not rule out 8 to the square foot", () => {
    const counts = [0, 0, 1, 0, 1, 0, 0, 1, 0, 0];
    // 0.3 + 2.262 sqrt(0.3 / 10) is 6.9 to the square foot; chance alone leaves 8.8.
    const found = pestDensity({ counts, core, threshold: { low: quantity(8, "count/ft2"), source } });
    expect(found.high.in("count/ft2")).toBeCloseTo(8.767273, 5);
    expect(found.againstThreshold).toBe("cannot be told");
  });

  test("the lower end is never less than nothing", () => {
    expect(pestDensity({ counts: [1, 0, 0], core }).low.value).toBe(0);
  });

  test.each([
    ["in2", { area: quantity(144, "in2") }, "1 ft2", "count/ft2"],
    ["m2", { area: quantity(100, "cm2") }, "0.01 m2", "count/m2"],
    ["in", { diameter: quantity(12, "in") }, Math.PI / 4, "count/ft2"],
    ["cm", { diameter: quantity(20, "cm") }, Math.PI / 100, "count/m2"],
  ] as const)("a core in %s", (_, size, area, unit) => {
    const found = pestDensity({ counts: [3], core: size });
    expect(found.density.unit).toBe(unit);
    if (typeof area === "string") expect(found.coreArea.toString()).toBe(area);
    else expect(found.coreArea.value).toBeCloseTo(area, 12);
    expect(found.density.value).toBeCloseTo(3 / found.coreArea.value, 9);
  });

  test("ten cores are enough, nine are told", () => {
    expect(pestDensity({ counts: Array<number>(10).fill(1), core }).findings).toEqual([]);
    expect(pestDensity({ counts: Array<number>(9).fill(1), core }).findings).toEqual([
      {
        code: "pests/few-cores",
        severity: "caution",
        path: "counts",
        params: { cores: 9, fewest: 10 },
        text: "9 cores: take 10 or more, from all over the ground.",
        source: "an extension text on white grubs, in a copy",
      },
    ]);
  });

  test("at a threshold nothing can be told: above and below begin past it", () => {
    const counts = Array<number>(40).fill(4);
    const { low, high } = pestDensity({ counts, core });
    const against = (from: number, to?: number) =>
      pestDensity({
        counts,
        core,
        threshold: {
          low: quantity(from, "count/ft2"),
          ...(to !== undefined && { high: quantity(to, "count/ft2") }),
          source,
        },
      }).againstThreshold;
    expect(against(low.value)).toBe("cannot be told");
    expect(against(low.value * (1 - 1e-9))).toBe("above");
    expect(against(1, low.value)).toBe("cannot be told");
    expect(against(high.value)).toBe("cannot be told");
    expect(against(high.value * (1 + 1e-9))).toBe("below");
    expect(against(high.value * (1 + 1e-9), 1e6)).toBe("below");
    expect(against(5, 5)).toBe("above");
  });
});
