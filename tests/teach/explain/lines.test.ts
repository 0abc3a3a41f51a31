// Workings written out by hand, line by line, as they have to read.
import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/index.js";
import { derivationMarkdown, derivationText, explain, explainChain } from "../../../src/teach/index.js";
import { problemsOf } from "../../errors.js";

const lines = (...given: Parameters<typeof explain>): readonly string[] =>
  derivationText(explain(...given)).split("\n");

describe("the working of a formula", () => {
  it("crosses units one by one, puts the numbers in, and rounds at the end", () => {
    // 88 ft at 3 mph: 3 x 5,280 / 3,600 = 4.4 ft/s, 20 s
    expect(lines("course-time", { course: quantity(88, "ft"), speed: quantity(3, "mi/h") })).toEqual([
      "Time for a course at a speed",
      "L = 88 ft (measured course)",
      "v = 3 mi/h (ground speed)",
      "t = L ÷ v",
      "3 mi/h × 5,280 = 15,840 ft/h",
      "15,840 ft/h ÷ 3,600 = 4.4 ft/s",
      "t = (88 ft) ÷ (4.4 ft/s)",
      "t = 20 s",
      "20 s needs no rounding",
    ]);
  });

  it("says how it was rounded, to as many digits as asked", () => {
    const given = { course: quantity(100, "ft"), speed: quantity(3, "mi/h") };
    // 100 / 4.4 = 22.7272...
    expect(lines("course-time", given).slice(-2)).toEqual([
      "t = 22.7273 s",
      "22.7273 s ≈ 22.7 s, rounded to 3 significant digits",
    ]);
    expect(lines("course-time", given, { digits: 1 }).at(-1)).toBe(
      "22.7273 s ≈ 20 s, rounded to 1 significant digit",
    );
    expect(lines("course-time", given, { digits: 6 }).at(-1)).toBe("22.7273 s needs no rounding");
    expect(explain("course-time", given, { digits: 1 }).result.value).toBe(20);
    expect(explain("course-time", given).exact.value).toBeCloseTo(22.727272727, 8);
    // and the line has both figures as data
    const { kind, quantities } = explain("course-time", given).steps.at(-1) ?? { quantities: [] };
    expect(kind).toBe("rounding");
    expect(quantities.map(({ unit }) => unit)).toEqual(["s", "s"]);
    expect(quantities[0]?.value).toBeCloseTo(22.727272727, 8);
    expect(quantities[1]?.value).toBe(22.7);
  });

  it("in metric units, with the result in the unit that is asked for", () => {
    expect(
      lines(
        "course-time",
        { course: quantity(50, "m"), speed: quantity(9, "km/h") },
        { units: "metric", unit: "min" },
      ),
    ).toEqual([
      "Time for a course at a speed",
      "L = 50 m (measured course)",
      "v = 9 km/h (ground speed)",
      "t = L ÷ v",
      "9 km/h × 1,000 = 9,000 m/h",
      "9,000 m/h ÷ 3,600 = 2.5 m/s",
      "t = (50 m) ÷ (2.5 m/s)",
      "t = 20 s",
      "20 s ÷ 60 = 0.333333 min",
      "0.333333 min ≈ 0.333 min, rounded to 3 significant digits",
    ]);
  });

  it("has the unit of each amount on the line where the numbers are put in", () => {
    // 43,560 ft² / 128 = 340.3125 ft²; over 20 in = 1.66667 ft that is 204.1875 ft
    expect(lines("catch-course", { width: quantity(20, "in") })).toEqual([
      "Course of the 1/128-acre method",
      "w = 20 in (nozzle spacing)",
      "L = 43560 ÷ 128 ÷ w",
      "20 in ÷ 12 = 1.66667 ft",
      "L = (43,560 ft²) ÷ 128 ÷ (1.66667 ft)",
      "L = 204.188 ft",
      "204.188 ft ≈ 204 ft, rounded to 3 significant digits",
    ]);
    // 4.17 lb of water at 8.34 lb/gal is half a gallon, 64 fl oz
    expect(
      lines("weighed-catch", {
        full: quantity(5.17, "lb", "water"),
        tare: quantity(1, "lb"),
        density: quantity(8.34, "lb/gal"),
      }),
    ).toEqual([
      "Volume of a weighed catch of water",
      "F = 5.17 lb water (jug with its catch)",
      "E = 1 lb (empty jug)",
      "d = 8.34 lb/gal (density of the water)",
      "V = (F − E) ÷ d",
      "V = ((5.17 lb water) − (1 lb)) ÷ (8.34 lb/gal)",
      "V = 0.5 gal water",
      "0.5 gal water × 128 = 64 fl oz water",
      "64 fl oz water needs no rounding",
    ]);
  });

  it("has the unit of a share in a minute and of a change for each degree, too", () => {
    // 5 % of 200 gal in a minute is 10 gal/min; with 10 gal/min to the boom and a fifth more, 24 gal/min
    expect(
      lines("pump-capacity", {
        boom: quantity(10, "gal/min", "spray"),
        tank: quantity(200, "gal", "spray"),
        agitation: quantity(5, "%"),
        reserve: quantity(20, "%"),
      }),
    ).toEqual([
      "Pump capacity for boom, agitation and reserve",
      "q = 10 gal spray/min (flow to the boom)",
      "V = 200 gal spray (tank)",
      "a = 5 %/min (share of the tank to turn over in a minute)",
      "r = 20 % (reserve for wear)",
      "Q = (q + V × a) × (1 + r)",
      "5 %/min ÷ 100 = 0.05/min",
      "20 % ÷ 100 = 0.2",
      "Q = ((10 gal spray/min) + (200 gal spray) × (0.05/min)) × (1 + 0.2)",
      "Q = 24 gal spray/min",
      "24 gal spray/min needs no rounding",
    ]);
    // 30 °F warmer, 0.003 lb/gal lighter for each: 10.67 - 0.09 = 10.58
    expect(
      lines("density-at-temperature", {
        density: quantity(10.67, "lb/gal"),
        measuredAt: quantity(60, "°F"),
        slopePerFahrenheit: quantity(-0.003, "lb/gal"),
        temperature: quantity(90, "°F"),
      }),
    ).toEqual([
      "Density of a liquid at another temperature",
      "d_0 = 10.67 lb/gal (density that is known)",
      "T_0 = 60 °F (temperature at which it was measured)",
      "k = -0.003 lb/gal/°F (change for each degree Fahrenheit)",
      "T = 90 °F (temperature of the liquid)",
      "d = d_0 + k × (T − T_0)",
      "d = (10.67 lb/gal) + (-0.003 lb/gal/°F) × ((90 °F) − (60 °F))",
      "d = 10.58 lb/gal",
      "10.58 lb/gal ≈ 10.6 lb/gal, rounded to 3 significant digits",
    ]);
  });

  it("what is wrong is told all at once, by its place", () => {
    const told = (...given: readonly unknown[]): readonly string[] =>
      problemsOf(() => explain(...(given as Parameters<typeof explain>))).map(
        ({ code, path, expected }) => `${code} ${path}: ${expected}`,
      );
    const good = { course: quantity(88, "ft"), speed: quantity(3, "mi/h") };
    expect(told("course-time", {})).toEqual([
      "missing inputs.course: measured course: a length, such as 1 ft",
      "missing inputs.speed: ground speed: a speed or a depth per time, such as 1 mi/h",
    ]);
    expect(told("course-time", good, { digits: 7 })).toEqual(["range options.digits: 6 or less"]);
    expect(told("course-time", good, { digits: 0 })).toEqual(["range options.digits: 1 or more"]);
    expect(told("course-time", good, { digits: 2.5 })[0]).toMatch(/^range options\.digits: .*whole number/);
    expect(told("course-time", good, { units: "SI" })).toEqual(['type options.units: one of "US", "metric"']);
    expect(told("course-time", good, { unit: 5 })).toEqual([
      "type options.unit: a unit, such as lb/1000 ft2",
    ]);
    expect(told("course-time", good, { unit: "ft" })).toEqual([
      "unit/mismatch options.unit: a unit for a time, such as s",
    ]);
    expect(told(undefined, good)).toEqual(["missing id: the id of a catalogue entry"]);
    expect(told(5, good)).toEqual(["type id: the id of a catalogue entry"]);
    expect(told("nothing-like-it", good)).toEqual(["type id: the id of an entry of catalogue()"]);
    expect(told("boom-width", { nozzles: 12, spacing: quantity(20, "in", "N" as never) }).length).toBe(1);
  });
});

describe("what a limit leaves", () => {
  it("is below zero where more went down: 2.5 - (0.9 + 0.9 + 0.9) = -0.2", () => {
    const pounds = (value: number) => quantity(value, "lb/1000 ft2", "N");
    const [first, second, third] = [0.9, 0.9, 0.9].map(pounds) as [never, never, never];
    const lines = derivationText(
      explain("nitrogen-left-of-three", { cap: pounds(2.5), first, second, third }),
    ).split("\n");
    expect([lines[5], lines[7]]).toEqual(["L = C − (a + b + c)", "L = -0.2 lb N/1,000 ft²"]);
    const [last, more] = [0.9, 1.8].map(pounds) as [never, never];
    const two = derivationText(
      explain("nitrogen-left-of-two", { cap: pounds(2.5), first: last, second: more }),
    ).split("\n");
    expect([two[4], two[6]]).toEqual(["L = C − (a + b)", "L = -0.2 lb N/1,000 ft²"]);
  });
});

describe("a working as Markdown", () => {
  const working = explain("course-time", { course: quantity(100, "ft"), speed: quantity(3, "mi/h") });
  it("has a heading, the equation as TeX, and the end in bold", () => {
    expect(derivationMarkdown(working).split("\n")).toEqual([
      "### Time for a course at a speed",
      "",
      "- L = 100 ft (measured course)",
      "- v = 3 mi/h (ground speed)",
      String.raw`- $t = \frac{L}{v}$`,
      "- 3 mi/h × 5,280 = 15,840 ft/h",
      "- 15,840 ft/h ÷ 3,600 = 4.4 ft/s",
      "- t = (100 ft) ÷ (4.4 ft/s)",
      "- t = 22.7273 s",
      "- **22.7273 s ≈ 22.7 s, rounded to 3 significant digits**",
    ]);
  });

  it("of a chain has a heading for each part, and nothing in it reads as Markdown", () => {
    const chain = explainChain("Two courses", [
      { id: "course-time", inputs: { course: quantity(88, "ft"), speed: quantity(3, "mi/h") } },
      { id: "course-time", inputs: { course: quantity(44, "ft"), speed: quantity(3, "mi/h") } },
    ]);
    const parts = derivationMarkdown(chain)
      .split("\n")
      .filter((line) => line.startsWith("####"));
    expect(parts.length).toBe(2);
    expect(derivationText(chain).split("\n\n").length).toBe(3);
    const marked = { ...working, title: "a *b* _c_ [d] `e` #f" };
    expect(derivationMarkdown(marked).split("\n")[0]).toBe("### a \\*b\\* \\_c\\_ \\[d\\] \\`e\\` \\#f");
  });

  it("of what is no working is refused by its place", () => {
    const told = (input: unknown): readonly string[] =>
      problemsOf(() => derivationText(input as never)).map(
        ({ code, path, expected }) => `${code} ${path}: ${expected}`,
      );
    const [first, ...rest] = working.steps;
    expect(told(5)).toEqual(["type derivation: a derivation, as explain gives"]);
    expect(told({ ...working, type: "x" })).toEqual(['type derivation.type: "derivation"']);
    expect(told({ ...working, title: 5 })).toEqual(["type derivation.title: a title"]);
    expect(told({ ...working, steps: 5 })[0]).toMatch(/^type derivation\.steps: /);
    expect(told({ ...working, steps: [...rest, 5] })).toEqual([
      `type derivation.steps[${rest.length}]: a step of a derivation`,
    ]);
    expect(told({ ...working, steps: [{ ...first, kind: 5 }] })).toEqual([
      "type derivation.steps[0].kind: a kind of step",
    ]);
    expect(told({ ...working, steps: [{ ...first, text: 5 }] })).toEqual([
      "type derivation.steps[0].text: the line of a step",
    ]);
    expect(told({ ...working, steps: [{ ...first, tex: 5 }] })).toEqual([
      "type derivation.steps[0].tex: a text",
    ]);
    expect(told({ ...working, steps: [{ ...first, part: 5 }] })).toEqual([
      "type derivation.steps[0].part: a text",
    ]);
  });
});

describe("a crossing of units", () => {
  const crossing = (
    id: string,
    inputs: Readonly<Record<string, unknown>>,
    units: "US" | "metric" = "US",
  ): readonly string[] =>
    explain(id, inputs, { units })
      .steps.filter(({ kind }) => kind === "crossing")
      .map(({ text }) => text);
  it("a temperature by its two figures, a cold one in parentheses", () => {
    const humid = (value: number, unit: "°C" | "°F" | "K") =>
      crossing("saturation-vapor-pressure", { temperature: quantity(value, unit) }, "metric");
    expect(humid(68, "°F")).toEqual(["(68 °F − 32) ÷ 1.8 = 20 °C"]);
    expect(humid(293.15, "K")).toEqual(["293.15 K − 273.15 = 20 °C"]);
    expect(humid(20, "°C")).toEqual([]);
  });
});
