import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { type Formulation, loadingOrder, type MixProduct } from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

const mix = (...list: readonly (readonly [string, Formulation])[]): MixProduct[] =>
  list.map(([id, formulation]) => ({ id, formulation }));

describe("an order of loading that cannot be made", () => {
  test("reports all that is wrong with the products", () => {
    const error = errorOf(() =>
      loadingOrder({
        products: [
          { id: "a", formulation: "WP", amount: quantity(1, "acre") as never },
          { id: "a", formulation: "toString" as never },
          { id: "", formulation: "EC", addBefore: ["zz"], addAfter: "a" as never },
          null as never,
        ],
      }),
    );
    expect(error.problems.map(({ code, path }) => [code, path])).toEqual([
      ["unit/mismatch", "products[0].amount"],
      ["duplicate", "products[1].id"],
      ["type", "products[1].formulation"],
      ["missing", "products[2].id"],
      ["missing", "products[2].addBefore[0]"],
      ["type", "products[2].addAfter"],
      ["type", "products[3]"],
    ]);
  });

  test("a hole in the list of products is named by its place", () => {
    const hole: MixProduct[] = [{ id: "a", formulation: "WP" }];
    hole[2] = { id: "b", formulation: "SC" };
    expect(errorOf(() => loadingOrder({ products: hole })).path).toBe("products[1]");
  });

  test("an amount is of its own product or of product, and not below zero", () => {
    const error = errorOf(() =>
      loadingOrder({
        products: [
          { id: "a", formulation: "WP", amount: quantity(2, "lb", "product:b") },
          { id: "b", formulation: "SC", amount: quantity(2, "pt", "N"), labelNote: 7 as never },
          { id: "c", formulation: "SC", amount: quantity(-2, "pt", "product:c") },
          { id: "d", formulation: "SC", amount: quantity(2, "pt", "product") },
        ],
      }),
    );
    expect(error.problems.map(({ code, path }) => [code, path])).toEqual([
      ["substance/mismatch", "products[0].amount"],
      ["substance/mismatch", "products[1].amount"],
      ["type", "products[1].labelNote"],
      ["range", "products[2].amount"],
    ]);
  });

  test("reports all that is wrong beside the products", () => {
    const error = errorOf(() =>
      loadingOrder({
        products: [],
        mixingOrder: "x" as never,
        waterFirst: { fraction: 1.5, source: "" },
        country: "XX" as never,
        loadVolume: quantity(0, "gal", "spray"),
      }),
    );
    expect(error.problems.map(({ path }) => path)).toEqual([
      "products",
      "mixingOrder",
      "waterFirst.fraction",
      "waterFirst.source",
      "country",
      "loadVolume",
    ]);
  });

  test("an empty list of products is a missing one", () => {
    expect(errorOf(() => loadingOrder({ products: [] })).code).toBe("missing");
  });

  test.each<readonly [path: string, more: object]>([
    ["mixingOrder", { mixingOrder: "x" }],
    ["waterFirst.fraction", { waterFirst: { fraction: 1.5, source: "s" } }],
    ["waterFirst.source", { waterFirst: { fraction: 0.5, source: "" } }],
  ])("refuses a wrong %s alone", (path, more) => {
    expect(errorOf(() => loadingOrder({ products: mix(["a", "WP"]), ...more } as never)).path).toBe(path);
  });
});
