import { describe, expect, test } from "vitest";
import { fertilizer, highestProductRate, productRate, productRates, quantity } from "../../../src/index.js";
import { complaints } from "../../errors.js";

const target = quantity(1, "lb/1000 ft2", "N");
const liquid = fertilizer({ id: "drench", form: "liquid", analysis: "20-0-0" });
const cap = { per: "application", rate: target } as const;

describe("a liquid without a density has no rate by weight", () => {
  test("alone, among others and under caps", () => {
    expect(complaints(() => productRate(target, liquid))).toEqual(["missing product.density"]);
    expect(complaints(() => productRates({ steps: [{ target, product: liquid }] }))).toEqual([
      "missing steps[0].product.density",
    ]);
    expect(complaints(() => highestProductRate({ product: liquid, caps: [cap] as never }))).toContain(
      "missing product.density",
    );
  });

  test("with its density it has one", () => {
    const weighed = fertilizer({
      id: "drench",
      form: "liquid",
      analysis: "20-0-0",
      density: quantity(10, "lb/gal"),
    });
    const [step] = productRates({ steps: [{ target, product: weighed }] }).steps;
    expect(productRate(target, weighed).in("lb/1000 ft2")).toBe(5);
    expect(step?.rate.in("lb/1000 ft2")).toBe(5);
  });
});
