import { describe, expect, test } from "vitest";
import { fertilizer, highestProductRate, quantity, type RateCap } from "../../../src/index.js";
import { errorOf, problemsOf } from "../../errors.js";

const share = (percent: number) => quantity(percent, "% w/w", "N:slow/N");
const n = quantity(1, "lb/1000 ft2", "N");
/** 20 % nitrogen, a fifth of it slow. */
const feed = fertilizer({
  id: "feed",
  analysis: "20-5-10",
  slowNitrogen: quantity(4, "% w/w", "N:slow/product"),
});
const rateUnder = (...caps: readonly RateCap[]): number | undefined =>
  highestProductRate({ product: feed, caps }).rate?.in("lb/1000 ft2");
const problemsUnder = (...caps: readonly unknown[]) =>
  problemsOf(() => highestProductRate({ product: feed, caps: caps as readonly RateCap[] }));

describe("what a cap can be on", () => {
  test("slow nitrogen: 0.1 lb of it from a product with 4 % is 2.5 lb of the product", () => {
    expect(rateUnder({ limit: quantity(0.1, "lb/1000 ft2", "N:slow") })).toBe(0.1 / 0.04);
  });

  test("quick nitrogen: 0.8 lb of it from a product with 16 % is 5 lb of the product", () => {
    expect(rateUnder({ limit: quantity(0.8, "lb/1000 ft2", "N:quick") })).toBe(5);
  });

  test("a nutrient: 0.25 lb of P2O5 from a product with 5 % is 5 lb of the product", () => {
    expect(rateUnder({ limit: quantity(0.25, "lb/1000 ft2", "P2O5") })).toBe(5);
  });

  test("no other substance, and no other measure", () => {
    const [product, length] = [
      problemsUnder({ limit: quantity(1, "lb/1000 ft2", "product") })[0],
      problemsUnder({ limit: quantity(1, "ft") })[0],
    ];
    expect([product?.code, product?.path]).toEqual(["substance/mismatch", "caps[0].limit"]);
    expect(product?.expected).toBe("a nutrient, N:quick or N:slow");
    expect([length?.code, length?.path]).toEqual(["unit/mismatch", "caps[0].limit"]);
  });

  test("a name is kept, and the substance is the name of a cap without one", () => {
    const { caps, binding } = highestProductRate({
      product: feed,
      caps: [{ id: "town", limit: n }, { limit: quantity(0.1, "lb/1000 ft2", "N:slow") }],
    });
    expect(caps.map(({ id }) => id)).toEqual(["town", "N:slow"]);
    expect(binding).toEqual(["N:slow"]);
    expect(problemsUnder({ limit: n }, { limit: n })[0]).toMatchObject({
      code: "duplicate",
      path: "caps[1].id",
      expected: "a name of its own for each cap",
    });
    expect(problemsUnder({ id: "", limit: n })[0]?.path).toBe("caps[0].id");
    expect(problemsUnder({ id: 7, limit: n })[0]).toMatchObject({ code: "type", path: "caps[0].id" });
  });

  test("a source is kept, and read", () => {
    const source = { title: "Turf code", publisher: "a county" };
    expect(highestProductRate({ product: feed, caps: [{ limit: n, source }] }).caps[0]?.source).toEqual(
      source,
    );
    expect(problemsUnder({ limit: n, source: 7 })[0]?.path).toBe("caps[0].source");
  });
});

describe("the slow shares between which a cap holds", () => {
  test("the lower end belongs to it, the upper one does not", () => {
    const standing = (cap: Omit<RateCap, "limit">) =>
      highestProductRate({ product: feed, caps: [{ limit: n, ...cap }] }).caps[0]?.standing;
    expect(standing({ fromSlowShare: share(20) })).toBe("binds");
    expect(standing({ fromSlowShare: share(20.1) })).toBe("not for this product");
    expect(standing({ belowSlowShare: share(20) })).toBe("not for this product");
    expect(standing({ belowSlowShare: share(20.1) })).toBe("binds");
  });

  test("an upper end at the lower one, or under it, is no product and is refused", () => {
    for (const [from, below] of [
      [65, 65],
      [65, 50],
    ] as const) {
      const [problem] = problemsUnder({ limit: n, fromSlowShare: share(from), belowSlowShare: share(below) });
      expect([problem?.code, problem?.path]).toEqual(["conflict", "caps[0].belowSlowShare"]);
      expect(problem?.expected).toBe("more than 65 %: no product is both");
    }
    expect(problemsUnder({ limit: n, fromSlowShare: share(65), belowSlowShare: share(65.1) })).toEqual([]);
    // Without a lower end it is 0 %, and below 0 % is no product.
    expect(problemsUnder({ limit: n, belowSlowShare: share(0) })[0]?.code).toBe("conflict");
  });

  test("all of the nitrogen may be slow, no more of it, and no less than none", () => {
    expect(problemsUnder({ limit: n, fromSlowShare: share(100) })).toEqual([]);
    expect(problemsUnder({ limit: n, fromSlowShare: share(100.5) })[0]).toMatchObject({
      code: "range",
      path: "caps[0].fromSlowShare",
      expected: "100 % or less of the nitrogen",
    });
    expect(problemsUnder({ limit: n, belowSlowShare: share(-1) })[0]?.path).toBe("caps[0].belowSlowShare");
    expect(
      problemsUnder({ limit: n, belowSlowShare: quantity(5, "% w/w", "N:slow/product") })[0],
    ).toMatchObject({
      code: "substance/mismatch",
      path: "caps[0].belowSlowShare",
    });
  });
});

describe("lists of caps", () => {
  test("200 are read, 201 are too many", () => {
    const many = (count: number): RateCap[] =>
      Array.from({ length: count }, (_, at) => ({ id: `cap ${at}`, limit: n }));
    expect(rateUnder(...many(200))).toBe(5);
    expect(errorOf(() => rateUnder(...many(201))).path).toBe("caps");
  });
});
