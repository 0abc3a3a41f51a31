import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { fixedJarAmount, jarCannotShow, jarTest, twoJarReading } from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

const jar = quantity(1, "pt", "spray");
const applicationVolume = quantity(25, "gal/acre", "spray");

describe("jarTest", () => {
  test("a pint is 1/200 of 25 gal: every rate by 200", () => {
    const result = jarTest({
      jar,
      applicationVolume,
      products: [
        { id: "wetter", formulation: "surfactant", rate: quantity(0.25, "% v/v", "product:wetter/spray") },
        { id: "liquid", formulation: "EC", rate: quantity(1, "pt/acre", "product:liquid") },
        { id: "powder", formulation: "WP", rate: quantity(1, "lb/acre", "product:powder") },
      ],
    });
    expect(result.amounts.map(({ id }) => id)).toEqual(["powder", "liquid", "wetter"]);
    const figures = result.amounts.map(({ amount }) => [amount.value, amount.unit] as const);
    // 453.59237 g and 473.176473 mL by 200; a quarter percent of a pint.
    expect(figures[0]?.[0]).toBeCloseTo(453.59237 / 200, 9);
    expect(figures[1]?.[0]).toBeCloseTo(473.176473 / 200, 9);
    expect(figures[2]?.[0]).toBeCloseTo(473.176473 / 400, 9);
    expect(figures.map(([, unit]) => unit)).toEqual(["g", "mL", "mL"]);
    expect(result.steps.map(({ text }) => text).join(" ")).toContain("Add 2.27 g of powder.");
    // Half of 473.176473 mL first, then all of it.
    expect(result.steps[1]?.text).toContain("Half-fill a clear jar (237 mL)");
    expect(result.steps.map(({ text }) => text).join(" ")).toContain("Fill to 473.2 mL with the same water");
    expect(result.steps.find(({ minutes }) => minutes !== undefined)?.minutes).toBe(15);
    expect(result.failures.length).toBeGreaterThan(4);
    expect(result.cannotShow).toEqual(jarCannotShow);
    expect(result.cautions.map(({ code }) => code)).toContain("caution/protective-equipment");
  });

  test("the jar has the strength of the tank, whatever its size", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 50, max: 2000, noNaN: true }),
        fc.double({ min: 20, max: 1000, noNaN: true }),
        fc.double({ min: 0.01, max: 50, noNaN: true }),
        (mL, perHectare, dose) => {
          fc.pre(dose <= perHectare);
          const result = jarTest({
            jar: quantity(mL, "mL", "spray"),
            applicationVolume: quantity(perHectare, "L/ha", "spray"),
            products: [{ id: "a", formulation: "SL", rate: quantity(dose, "L/ha", "product:a") }],
          });
          expect((result.amounts[0]?.amount.value as number) / mL).toBeCloseTo(dose / perHectare, 9);
        },
      ),
    );
  });

  test("a liquid by weight and a powder by volume need a density", () => {
    const liquid = { id: "a", formulation: "SL", rate: quantity(2, "lb/acre", "product:a") } as const;
    const powder = { id: "b", formulation: "WP", rate: quantity(1, "pt/acre", "product:b") } as const;
    const test = (product: object) => jarTest({ jar, applicationVolume, products: [product as never] });
    expect(errorOf(() => test(liquid)).path).toBe("products[0].density");
    expect(errorOf(() => test(powder)).path).toBe("products[0].density");
    // 2 lb at 8 lb/gal is a quart; a quart by 200.
    expect(test({ ...liquid, density: quantity(8, "lb/gal") }).amounts[0]?.amount.value).toBeCloseTo(
      946.352946 / 200,
      9,
    );
  });

  test("what the order has to say of the mix is said of the jar too", () => {
    const result = jarTest({
      jar,
      applicationVolume,
      products: [
        {
          id: "amine",
          formulation: "SL",
          rate: quantity(2, "pt/acre", "product:amine"),
          contains: ["amine phenoxy"],
          labelNote: "add last",
        },
        {
          id: "sulfate",
          formulation: "conditioner",
          rate: quantity(2, "lb/acre", "product:sulfate"),
          contains: ["ammonium sulfate"],
        },
      ],
    });
    expect(result.amounts.map(({ id }) => id)).toEqual(["sulfate", "amine"]);
    expect(result.findings.map(({ code }) => code)).toContain("mix/undissolved-sulfate-and-amine");
    expect(result.findings.map(({ code }) => code)).not.toContain("jar-test");
    expect(result.steps.map(({ text }) => text).join(" ")).toContain(
      "of amine. Cap the jar and shake well. Label: add last",
    );
  });

  test("tells every problem, and refuses the rate of another product", () => {
    const a = { id: "a", formulation: "SL", rate: quantity(1, "pt/acre", "product:a") } as const;
    const found = (change: object) =>
      errorOf(() => jarTest({ jar, applicationVolume, products: [a], ...change } as never)).problems.map(
        ({ code, path }) => [code, path],
      );
    expect(
      found({
        jar: quantity(0, "pt", "spray"),
        applicationVolume: null,
        stand: "Ohio",
        products: [{ ...a, formulation: "QQ" }],
      }),
    ).toEqual([
      ["range", "jar"],
      ["type", "applicationVolume"],
      ["type", "stand"],
      ["type", "products[0].formulation"],
    ]);
    expect(
      found({
        products: [
          { ...a, rate: quantity(1, "pt/acre", "product:b") },
          { id: "b", formulation: "WP", rate: quantity(1, "pt/acre", "product:b") },
          { id: "c", formulation: "SL", rate: quantity(1, "pt/acre", "product:c"), density: null },
        ],
      }),
    ).toEqual([
      ["substance/mismatch", "products[0].rate"],
      ["missing", "products[1].density"],
    ]);
  });

  test("what is missing or wrong is named", () => {
    const a = { id: "a", formulation: "SL", rate: quantity(1, "pt/acre", "product:a") } as const;
    const cases: readonly (readonly [object, string, string])[] = [
      [{ jar: quantity(0, "pt", "spray") }, "range", "jar"],
      [{ jar: quantity(1, "pt") }, "substance/mismatch", "jar"],
      [{ applicationVolume: undefined }, "missing", "applicationVolume"],
      [{ applicationVolume: quantity(0, "gal/acre", "spray") }, "range", "applicationVolume"],
      [{ products: [] }, "missing", "products"],
      [{ products: [a, a] }, "duplicate", "products[1].id"],
      [{ products: [{ ...a, formulation: "QQ" }] }, "type", "products[0].formulation"],
      [{ products: [{ ...a, rate: undefined }] }, "missing", "products[0].rate"],
      [{ products: [{ ...a, rate: quantity(1, "pt", "product:a") }] }, "unit/mismatch", "products[0].rate"],
      [{ products: [{ ...a, form: "solid" }] }, "type", "products[0].form"],
      [{ stand: "Ohio" }, "type", "stand"],
    ];
    for (const [change, code, path] of cases) {
      const error = errorOf(() => jarTest({ jar, applicationVolume, products: [a], ...change } as never));
      expect([error.code, error.path], JSON.stringify(change)).toEqual([code, path]);
    }
  });

  test("fixed amounts, where they are printed", () => {
    const pint = quantity(1, "pt", "water");
    expect(fixedJarAmount("WP", pint)).toEqual({ value: 1, unit: "tbsp" });
    expect(fixedJarAmount("dry fertilizer", quantity(0.5, "gal", "water"))).toEqual({
      value: 4.4,
      unit: "g",
    });
    expect(fixedJarAmount("SC", pint)).toBeUndefined();
    expect(errorOf(() => fixedJarAmount("toString" as never, pint)).path).toBe("formulation");
  });

  test("two jars", () => {
    const read = (failedWithoutAgent: boolean, failedWithAgent: boolean) =>
      twoJarReading({ failedWithoutAgent, failedWithAgent });
    expect(read(true, false)).toBe("use a compatibility agent");
    expect(read(true, true)).toBe("do not tank mix");
    expect(read(false, false)).toBe("no agent needed by this test");
    expect(errorOf(() => read(false, true)).code).toBe("conflict");
    expect(errorOf(() => twoJarReading({ failedWithoutAgent: true } as never)).path).toBe("failedWithAgent");
  });
});

test("a jar cannot hold more product than its size", () => {
  const error = errorOf(() =>
    jarTest({
      jar: quantity(1, "qt", "spray"),
      applicationVolume: quantity(35, "gal/acre", "spray"),
      products: [{ id: "a", formulation: "SL", rate: quantity(60, "gal/acre", "product:a") }],
    }),
  );
  expect([error.code, error.path]).toEqual(["infeasible", "products[0].rate"]);
  expect(error.expected).toContain("the jar");
});

test("a jar that is mostly product takes only the water that it leaves", () => {
  const { steps, findings } = jarTest({
    jar: quantity(1000, "mL", "spray"),
    products: [{ id: "a", formulation: "liquid fertilizer", rate: quantity(80, "% v/v", "product:a/spray") }],
  });
  expect(steps[1]?.text).toContain("(200 mL)");
  expect(findings.map(({ code }) => code)).toContain("load/more-product-than-water");
});

test("a jar test refuses a misspelt field", () => {
  const input = { jar: quantity(1, "L", "spray"), sprayRate: quantity(1, "L/m2", "spray"), products: [] };
  expect(errorOf(() => jarTest(input)).path).toBe("input.sprayRate");
});
