import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { amountFor, impliedAreaRate, labelRate, perVolume } from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

const area = quantity(2, "acre");
const sprayVolume = quantity(100, "gal", "spray");

describe("amountFor", () => {
  test("a rate per area and a rate per volume, dry and liquid", () => {
    const dry = amountFor({ rate: quantity(3, "lb/acre", "product:a"), form: "dry", area });
    expect(dry.toJSON()).toEqual({ value: 6, unit: "lb", of: "product:a" });
    const wet = amountFor({ rate: quantity(0.25, "% v/v", "product:b/spray"), form: "liquid", sprayVolume });
    expect(wet.in("qt")).toBe(1);
    expect(wet.of).toBe("product:b");
  });

  test("a recipe as JSON: 2 pt per 100 gal", () => {
    const rate = { value: 2, unit: "pt", of: "product:c", per: { value: 100, unit: "gal" } } as const;
    const amount = amountFor({ rate, form: "liquid", sprayVolume });
    expect(amount.toJSON()).toEqual({ value: 2, unit: "pt", of: "product:c" });
    const recipe = (change: object) =>
      errorOf(() => amountFor({ rate: { ...rate, ...change }, form: "liquid", sprayVolume }));
    expect(recipe({ per: { value: 0, unit: "gal" } }).path).toBe("rate.per");
    // 2 pt in 100 gal of water are not 2 pt in 100 gal of spray.
    expect(recipe({ per: quantity(100, "gal", "water") }).code).toBe("substance/mismatch");
    expect(
      amountFor({ rate: { ...rate, per: quantity(100, "gal", "spray") }, form: "liquid", sprayVolume }).in(
        "pt",
      ),
    ).toBe(2);
    expect(recipe({ of: "N" }).code).toBe("substance/mismatch");
    expect(recipe({ unit: "acre" }).code).toBe("unit/mismatch");
  });

  test("a rate in the other measure needs a density, and takes it", () => {
    const rate = quantity(2, "lb/acre", "product:a");
    const error = errorOf(() => amountFor({ rate, form: "liquid", area }));
    expect([error.code, error.path]).toEqual(["missing", "density"]);
    // 4 lb at 8 lb/gal is half a gallon.
    expect(amountFor({ rate, form: "liquid", area, density: quantity(8, "lb/gal") }).in("gal")).toBe(0.5);
    const scoop = quantity(1, "pt/acre", "product:a");
    expect(errorOf(() => amountFor({ rate: scoop, form: "dry", area })).path).toBe("density");
    expect(amountFor({ rate: scoop, form: "dry", area, density: quantity(4, "lb/gal") }).in("lb")).toBe(1);
  });

  test("every problem is told", () => {
    const paths = (input: object) =>
      errorOf(() => amountFor(input as never)).problems.map(({ path }) => path);
    expect(paths({})).toEqual(["form", "rate"]);
    expect(paths({ form: "liquid", rate: quantity(1, "lb/acre", "product:a") })).toEqual(["density", "area"]);
    expect(paths({ form: "dry", rate: quantity(1, "% v/v", "product:a/spray"), sprayVolume: area })).toEqual([
      "density",
      "sprayVolume",
    ]);
  });

  test("what is missing or wrong is named by its path", () => {
    const perArea = quantity(1, "lb/acre", "product:a");
    const inSpray = quantity(1, "% v/v", "product:a/spray");
    const cases: readonly (readonly [() => unknown, string, string])[] = [
      [() => amountFor({ rate: perArea, form: "dry", sprayVolume }), "missing", "area"],
      [() => amountFor({ rate: inSpray, form: "liquid", area }), "missing", "sprayVolume"],
      [() => amountFor({ rate: perArea, form: "solid" as never, area }), "type", "form"],
      [
        () => amountFor({ rate: quantity(1, "lb/acre", "N") as never, form: "dry", area }),
        "substance/mismatch",
        "rate",
      ],
      [
        () => amountFor({ rate: quantity(1, "% v/v", "product:a") as never, form: "liquid", sprayVolume }),
        "substance/mismatch",
        "rate",
      ],
      [
        () => amountFor({ rate: quantity(1, "% w/w", "product:a/spray") as never, form: "dry", area }),
        "unit/mismatch",
        "rate",
      ],
      [() => amountFor({ rate: quantity(-1, "lb/acre", "product:a"), form: "dry", area }), "range", "rate"],
      [() => amountFor({ rate: perArea, form: "dry", area: quantity(-1, "acre") }), "range", "area"],
      [() => amountFor({ rate: null as never, form: "dry", area }), "type", "rate"],
    ];
    for (const [run, code, path] of cases) {
      const error = errorOf(run);
      expect([error.code, error.path]).toEqual([code, path]);
    }
  });
});

describe("labelRate", () => {
  test("a range, or one rate", () => {
    const range = labelRate({
      min: quantity(1, "lb/acre", "product:a"),
      max: quantity(2, "lb/acre", "product:a"),
    });
    expect(JSON.parse(JSON.stringify(range))).toEqual({
      type: "label-rate",
      version: 1,
      product: "product:a",
      basis: "area",
      min: { value: 1, unit: "lb/acre", of: "product:a" },
      max: { value: 2, unit: "lb/acre", of: "product:a" },
      use: "broadcast",
    });
    const spot = labelRate({
      rate: quantity(1, "% v/v", "product:a/spray"),
      use: "spot",
      note: "spray to wet",
    });
    expect([spot.basis, spot.use, spot.note]).toEqual(["spray volume", "spot", "spray to wet"]);
    expect(spot.min.compare(spot.max)).toBe(0);
  });

  test("rounding noise turns no range round", () => {
    // 1 gal/acre is 128/43.56 fl oz to 1000 ft2.
    const gallon = quantity(1, "gal/acre", "product:a");
    const ounces = quantity(128 / 43.56, "fl oz/1000 ft2", "product:a");
    expect(labelRate({ min: gallon, max: ounces }).basis).toBe("area");
    expect(labelRate({ min: ounces, max: gallon }).basis).toBe("area");
    expect(
      errorOf(() => labelRate({ min: gallon, max: quantity(2.9384, "fl oz/1000 ft2", "product:a") })).code,
    ).toBe("conflict");
  });

  test("tells every problem", () => {
    const paths = (input: object) =>
      errorOf(() => labelRate(input as never)).problems.map(({ path }) => path);
    const one = quantity(1, "lb/acre", "product:a");
    expect(
      paths({
        min: quantity(-1, "lb/acre", "product:a"),
        max: quantity(1, "lb", "product:a"),
        use: "x",
        note: 1,
      }),
    ).toEqual(["min", "max", "use", "note"]);
    expect(paths({ rate: one, max: one, use: "x" })).toEqual(["rate", "use"]);
    expect(paths({ min: one, max: quantity(0.5, "lb/acre", "product:a"), use: "x" })).toEqual(["max", "use"]);
  });

  test("refuses a range that is turned round, mixed or half", () => {
    const one = quantity(1, "lb/acre", "product:a");
    expect(errorOf(() => labelRate({ min: quantity(2, "lb/acre", "product:a"), max: one })).code).toBe(
      "conflict",
    );
    expect(errorOf(() => labelRate({ min: one, max: quantity(1, "pt/acre", "product:a") })).code).toBe(
      "unit/mismatch",
    );
    expect(errorOf(() => labelRate({ min: one, max: quantity(3, "lb/acre", "product:b") })).code).toBe(
      "substance/mismatch",
    );
    expect(errorOf(() => labelRate({ min: one } as never)).path).toBe("max");
    expect(errorOf(() => labelRate({} as never)).problems).toHaveLength(2);
    expect(errorOf(() => labelRate({ rate: one, use: "drench" as never })).path).toBe("use");
  });
});

describe("rates per volume", () => {
  test("perVolume keeps mass and volume apart and refuses what is no spray", () => {
    const rate = perVolume(quantity(2, "lb", "product:a"), quantity(100, "gal", "spray"));
    expect([rate.dimension, rate.of]).toEqual(["mass/volume", "product:a/spray"]);
    expect(errorOf(() => perVolume(quantity(2, "acre") as never, sprayVolume)).code).toBe("unit/mismatch");
    const neither = errorOf(() => perVolume(undefined as never, null as never));
    expect(neither.problems.map(({ code, path }) => [code, path])).toEqual([
      ["missing", "amount"],
      ["type", "volume"],
    ]);
    expect(errorOf(() => perVolume(quantity(2, "lb", "product"), quantity(0, "gal", "spray"))).path).toBe(
      "volume",
    );
    expect(errorOf(() => perVolume(quantity(2, "lb", "N") as never, sprayVolume)).code).toBe(
      "substance/mismatch",
    );
  });

  test("impliedAreaRate is the way back from a rate per area", () => {
    const applicationVolume = quantity(25, "gal/acre", "spray");
    const rate = impliedAreaRate({ rate: quantity(1, "% v/v", "product:a/spray"), applicationVolume });
    expect(rate.in("qt/acre")).toBeCloseTo(1, 12);
    const dry = perVolume(quantity(17, "lb", "product:b"), quantity(100, "gal", "spray"));
    expect(impliedAreaRate({ rate: dry, applicationVolume }).in("lb/acre")).toBeCloseTo(4.25, 12);
    expect(
      errorOf(() => impliedAreaRate({ rate: quantity(1, "lb/acre", "product") as never, applicationVolume }))
        .path,
    ).toBe("rate");
    expect(errorOf(() => impliedAreaRate({} as never)).problems.map(({ path }) => path)).toEqual([
      "rate",
      "applicationVolume",
    ]);
  });
});
