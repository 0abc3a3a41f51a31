import { describe, expect, it } from "vitest";
import { quantity, RatewrightError } from "../../../src/index.js";
import { derivationMarkdown, derivationText, explainChain } from "../../../src/teach/index.js";

const target = quantity(0.9, "lb/1000 ft2", "N");
const percent = quantity(24, "% w/w", "N/product");
const chain = [
  { id: "product-rate", inputs: { target, percent } },
  { id: "product-for-area", inputs: { rate: { resultOf: 1 }, area: quantity(86000, "ft2") } },
  { id: "packages-for-need", inputs: { need: { resultOf: 2 }, contents: quantity(50, "lb") } },
];

const problems = (call: () => unknown): readonly string[] => {
  try {
    call();
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
};

describe("a chain of formulas", () => {
  it("carries each result on unrounded, in parts that are told apart", () => {
    const derivation = explainChain("Bags for the meadow", chain);
    // 0.9 / 0.24 = 3.75 lb/1000 ft2; times 86 = 322.5 lb; over 50 = 6.45, so 7 bags
    expect(derivation.result.value).toBe(7);
    expect([...new Set(derivation.steps.map(({ part }) => part))]).toEqual([
      "Step 1. Product rate for a rate of nitrogen",
      "Step 2. Dry product for the area of a lawn",
      "Step 3. Packages to open for a need",
    ]);
    expect(derivationText(derivation)).toContain("m = 322.5 lb product");
    expect(derivationText(derivation)).toContain("322.5 lb product ≈ 323 lb product");
    expect(derivationText(derivation)).toContain(
      "n = (322.5 lb product) ÷ (50 lb)\nn = 6.45, rounded up to a whole number: 7",
    );
    expect(derivationMarkdown(derivation)).toContain("#### Step 2. Dry product");
  });

  it("has the unit that is asked for in its last step only", () => {
    const derivation = explainChain("Product", chain.slice(0, 2), { unit: "oz", digits: 4 });
    expect(derivation.result.value).toBe(5160);
    expect(derivation.steps.some(({ text }) => text.startsWith("R = 3.75 lb"))).toBe(true);
  });

  it("names all that is wrong at once, and not what waits for it", () => {
    expect(
      problems(() =>
        explainChain("x", [
          { id: "product-rate", inputs: { target, percent: 24 } },
          { id: "product-for-area", inputs: { rate: { resultOf: 1 }, area: quantity(1, "lb") } },
          { id: "packages-for-ned", inputs: {} },
          { id: "packages-for-need", inputs: { need: { resultOf: 9 }, contents: quantity(50, "lb") } },
        ]),
      ),
    ).toEqual(["type steps[0].inputs.percent", "type steps[2].id", "range steps[3].inputs.need.resultOf"]);
    expect(problems(() => explainChain("x", []))).toEqual(["missing steps"]);
    expect(problems(() => explainChain("", chain, { digits: 0 }))).toEqual(
      ["missing title", "range options.digits"].map((each) => each.replace("missing title", "missing title")),
    );
    expect(
      problems(() =>
        explainChain("x", [{ id: "product-rate", inputs: { target: { resultOf: 1 }, percent } }]),
      ),
    ).toEqual(["range steps[0].inputs.target.resultOf"]);
  });
});
