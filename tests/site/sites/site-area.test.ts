import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity, RatewrightError } from "../../../src/quantity/index.js";
import { areaOfShape, netArea, type SiteShape, siteArea } from "../../../src/site/index.js";
import { complaints, problemsOf } from "../../errors.js";
import { close, untyped } from "../helpers.js";

const ft = (value: number) => ({ value, unit: "ft" });
const size = fc.double({ min: 0.1, max: 1000, noNaN: true });

describe("netArea", () => {
  test("parts less cut-outs, names kept", () => {
    const site = netArea({
      parts: [
        { name: "north pitch", area: quantity(1, "acre") },
        { name: "bank", area: quantity(21_780, "ft2") },
      ],
      cutOuts: [{ area: quantity(10_890, "ft2") }],
    });
    expect(JSON.parse(JSON.stringify(site))).toEqual({
      type: "site-area",
      version: 1,
      gross: { value: 1.5, unit: "acre", of: "none" },
      cutOut: { value: 0.25, unit: "acre", of: "none" },
      net: { value: 1.25, unit: "acre", of: "none" },
      parts: [
        { name: "north pitch", area: { value: 1, unit: "acre", of: "none" } },
        { name: "bank", area: { value: 21_780, unit: "ft2", of: "none" } },
      ],
      cutOuts: [{ area: { value: 10_890, unit: "ft2", of: "none" } }],
    });
  });

  test("areas add up: net and cut-out make the gross, in any split", () => {
    fc.assert(
      fc.property(
        fc.array(size, { minLength: 1, maxLength: 8 }),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (sizes, share) => {
          const parts = sizes.map((value) => ({ area: quantity(value, "m2") }));
          const cutOuts = sizes.map((value) => ({ area: quantity(value * share, "m2") }));
          const site = netArea({ parts, cutOuts });
          close(site.net.plus(site.cutOut).in("m2"), site.gross.in("m2"));
          const whole = sizes.reduce((a, b) => a + b);
          close(netArea({ parts: [{ area: quantity(whole, "m2") }] }).net.in("m2"), site.gross.in("m2"));
        },
      ),
    );
  });

  test("nothing cut out is zero, all cut out leaves zero", () => {
    const part = { area: quantity(0.3, "ha") };
    expect(netArea({ parts: [part] }).cutOut.toJSON()).toEqual({ value: 0, unit: "ha", of: "none" });
    // 0.1 + 0.2 is a last digit more than 0.3
    const cutOuts = [{ area: quantity(0.1, "ha") }, { area: quantity(0.2, "ha") }];
    expect(netArea({ parts: [part], cutOuts }).net.value).toBe(0);
  });

  test("refusals", () => {
    const [small, large] = [{ area: quantity(1, "m2") }, { area: quantity(2, "m2") }];
    expect(complaints(() => netArea({ parts: [small], cutOuts: [large] }))).toEqual(["range cutOuts"]);
    expect(complaints(() => netArea({ parts: [] }))).toEqual(["missing parts"]);
    expect(complaints(untyped(netArea, {}))).toEqual(["missing parts"]);
    expect(complaints(untyped(netArea, []))).toEqual(["type site"]);
    expect(
      complaints(
        untyped(netArea, {
          parts: [small, { name: 7, area: quantity(1, "lb") }, quantity(-1, "m2"), "lawn"],
          cutOuts: [{ area: quantity(1, "m2", "plan") }],
        }),
      ),
    ).toEqual([
      "type parts[1].name",
      "unit/mismatch parts[1].area",
      "type parts[2]",
      "type parts[3]",
      "substance/mismatch cutOuts[0].area",
    ]);
    expect(complaints(untyped(netArea, { parts: [small], cutOuts: null }))).toEqual(["type cutOuts"]);
  });
});

describe("areaOfShape", () => {
  // areas by plain arithmetic of the shapes
  test.each<[SiteShape, number, string]>([
    [{ shape: "measured", area: { value: 12_400, unit: "ft2" } }, 12_400, "ft2"],
    [{ shape: "rectangle", length: ft(90), width: ft(50) }, 4500, "ft2"],
    [{ shape: "triangle", base: ft(200), height: ft(40) }, 4000, "ft2"],
    [{ shape: "triangle from sides", a: ft(3), b: ft(4), c: ft(5) }, 6, "ft2"],
    [{ shape: "trapezoid", a: ft(50), b: ft(70), height: ft(30) }, 1800, "ft2"],
    [{ shape: "annulus", outerDiameter: ft(20), width: ft(2) }, 36 * Math.PI, "ft2"],
    [{ shape: "circle", radius: { value: 1, unit: "m" } }, Math.PI, "m2"],
    [{ shape: "circle", diameter: { value: 2, unit: "m" } }, Math.PI, "m2"],
    [{ shape: "circle", circumference: { value: 2 * Math.PI, unit: "m" } }, Math.PI, "m2"],
    [{ shape: "ellipse", length: { value: 4, unit: "yd" }, width: { value: 1, unit: "yd" } }, Math.PI, "yd2"],
    [{ shape: "sector", radius: { value: 2, unit: "m" }, angle: { value: 90, unit: "deg" } }, Math.PI, "m2"],
    [{ shape: "annulus", outerRadius: ft(2), innerRadius: ft(1) }, 3 * Math.PI, "ft2"],
    [
      {
        shape: "polygon",
        points: [
          [0, 0],
          [60, 0],
          [60, 30],
          [20, 50],
        ],
        unit: "m",
      },
      2100,
      "m2",
    ],
    [{ shape: "offsets", spacing: ft(10), widths: [0, 32, 50, 45, 17, 0].map(ft) }, 1440, "ft2"],
    [
      { shape: "offsets", spacing: [ft(1), ft(2)], left: [0, 1, 0].map(ft), right: [0, 3, 0].map(ft) },
      6,
      "ft2",
    ],
    [{ shape: "average radius", radii: [1, 1, 1].map(ft), rule: "mean square" }, Math.PI, "ft2"],
  ])("%o", (shape, value, unit) => {
    // through text and back, as from a file
    const area = areaOfShape(JSON.parse(JSON.stringify(shape)));
    expect([area.unit, area.of, area.dimension]).toEqual([unit, "none", "area"]);
    close(area.value, value);
  });

  test("a quantity is a measure too", () => {
    const lawn: SiteShape = { shape: "rectangle", length: quantity(9, "yd"), width: quantity(9, "ft") };
    expect(areaOfShape(lawn).in("yd2")).toBe(27);
  });

  test("refusals", () => {
    expect(complaints(untyped(areaOfShape, {}))).toEqual(["missing shape"]);
    expect(complaints(untyped(areaOfShape, null))).toEqual(["type shape"]);
    expect(complaints(untyped(areaOfShape, { shape: "toString" }))).toEqual(["type shape"]);
    expect(complaints(untyped(areaOfShape, { shape: "measured" }))).toEqual(["missing area"]);
    expect(complaints(untyped(areaOfShape, { shape: "measured", area: ft(3) }))).toEqual([
      "unit/mismatch area",
    ]);
    expect(complaints(untyped(areaOfShape, { shape: "measured", area: { value: 0, unit: "ft2" } }))).toEqual([
      "range area",
    ]);
    expect(
      complaints(
        untyped(areaOfShape, {
          shape: "polygon",
          points: [
            [0, 0],
            [1, 0],
            [1, 1],
          ],
        }),
      ),
    ).toEqual(["missing unit"]);
    expect(complaints(untyped(areaOfShape, { shape: "circle", radius: ft(1), diameter: ft(2) }))).toEqual([
      "conflict radius",
    ]);
  });

  test("a field that nobody reads is an error", () => {
    const lawn = { shape: "rectangle", length: ft(3), widht: ft(2) };
    expect(complaints(untyped(areaOfShape, lawn))).toEqual(["type widht", "missing width"]);
    expect(problemsOf(untyped(areaOfShape, lawn))[0]?.expected).toContain("length, width");
  });
});

describe("siteArea", () => {
  test("a park from a file", () => {
    const park = siteArea(
      JSON.parse(`{
        "parts": [
          { "name": "practice pitch", "shape": "rectangle", "length": { "value": 100, "unit": "yd" }, "width": { "value": 60, "unit": "yd" } },
          { "name": "meadow", "shape": "measured", "area": { "value": 12400, "unit": "ft2" } }
        ],
        "cutOuts": [{ "name": "shed", "shape": "rectangle", "length": { "value": 30, "unit": "ft" }, "width": { "value": 15, "unit": "ft" } }]
      }`),
    );
    expect(park.parts.map(({ name, area }) => [name, area.toString()])).toEqual([
      ["practice pitch", "6000 yd2"],
      ["meadow", "12400 ft2"],
    ]);
    expect(park.cutOuts[0]?.name).toBe("shed");
    // 6000 yd2 are 54 000 ft2
    close(park.gross.in("ft2"), 66_400);
    close(park.cutOut.in("ft2"), 450);
    close(park.net.in("ft2"), 65_950);
  });

  test("a shape without a name has none", () => {
    const { parts } = siteArea({ parts: [{ shape: "rectangle", length: ft(3), width: ft(2) }] });
    expect(Object.keys(parts[0] ?? {})).toEqual(["area"]);
  });

  test("a part is found by its name: two of one name are refused, cut-outs may have one name", () => {
    const named = (name?: string) => ({
      ...(name && { name }),
      shape: "measured",
      area: { value: 9, unit: "m2" },
    });
    const said = (...names: readonly (string | undefined)[]) =>
      problemsOf(untyped(siteArea, { parts: names.map(named) })).map(
        ({ code, path, expected }) => `${code} ${path}: ${expected}`,
      );
    expect(said("bed", undefined, "green", "bed", "bed")).toEqual([
      "duplicate parts[3].name: a name that no other part has, or no name",
      "duplicate parts[4].name: a name that no other part has, or no name",
    ]);
    expect(said("bed", undefined, undefined, "green")).toEqual([]);
    const bed = { name: "bed", area: quantity(9, "m2") };
    expect(complaints(() => netArea({ parts: [bed, bed] }))).toEqual(["duplicate parts[1].name"]);
    expect(netArea({ parts: [{ area: quantity(1, "ha") }], cutOuts: [bed, bed] }).cutOut.in("m2")).toBe(18);
  });

  test("a name may be left out, and a blank one is told so", () => {
    const said = (name: unknown) =>
      problemsOf(
        untyped(siteArea, { parts: [{ name, shape: "measured", area: { value: 9, unit: "m2" } }] }),
      ).map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
    for (const blank of ["", "  "])
      expect(said(blank)).toEqual([
        "missing parts[0].name: the name of a part; leave the field out where it has no name",
      ]);
    expect(said("x".repeat(201))).toEqual([
      "type parts[0].name: a text of at most 200 characters; leave the field out where it has no name",
    ]);
    expect(said("x".repeat(200))).toEqual([]);
    expect(said("bed ")).toEqual([
      "type parts[0].name: the name of a part, without spaces around it, double spaces or invisible characters",
    ]);
  });

  test("all problems of the whole site, each with its place", () => {
    const site = {
      parts: [
        { shape: "rectangle", length: ft(10), width: ft(5) },
        { shape: "rectangle", length: { value: 10, unit: "lb" }, width: ft(-5) },
        { shape: "offsets", spacing: ft(10), widths: [ft(1), { value: "2", unit: "ft" }] },
        {
          shape: "polygon",
          points: [
            [0, 0],
            [1, 1],
            [1, 0],
            [0, 1],
          ],
          unit: "ft",
        },
        { shape: "hexagon" },
        7,
      ],
      cutOuts: [{ shape: "circle" }, { shape: "triangle from sides", a: ft(1), b: ft(2), c: ft(9), name: 3 }],
    };
    expect(complaints(untyped(siteArea, site))).toEqual([
      "unit/mismatch parts[1].length",
      "range parts[1].width",
      "not-finite parts[2].widths[1].value",
      "conflict parts[3].points",
      "type parts[4].shape",
      "type parts[5]",
      "missing cutOuts[0].radius",
      "type cutOuts[1].name",
      "infeasible cutOuts[1].c",
    ]);
    expect(untyped(siteArea, site)).toThrow(RatewrightError);
  });

  test("cut-outs larger than the parts, no parts at all", () => {
    const [small, large] = [
      { shape: "measured", area: { value: 1, unit: "m2" } },
      { shape: "measured", area: { value: 2, unit: "m2" } },
    ] as const;
    expect(complaints(() => siteArea({ parts: [small], cutOuts: [large] }))).toEqual(["range cutOuts"]);
    expect(complaints(() => siteArea({ parts: [], cutOuts: [large] }))).toEqual(["missing parts"]);
    expect(complaints(untyped(siteArea, { cutOuts: "none" }))).toEqual(["missing parts", "type cutOuts"]);
  });
});
