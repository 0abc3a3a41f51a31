import { describe, expect, test } from "vitest";
import { leastCostBlend } from "../../../src/nutrient/blend/index.js";
import { fertilizer } from "../../../src/nutrient/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { rejections } from "../../errors.js";

const perTon = (amount: number) => money(amount, "USD").per(quantity(1, "US ton"));

describe("a blend that cannot be computed is refused, with the path", () => {
  const urea = { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460) };
  const limits = { nutrients: [{ least: quantity(20, "% w/w", "N/product") }] };
  const batch = quantity(100, "lb");
  const share = quantity(3, "% w/w", "N:slow/product");

  test.each<readonly [name: string, input: unknown, code: string, path: string]>([
    ["a batch below zero", { batch: quantity(-1, "lb"), materials: [urea], limits }, "range", "batch"],
    ["no materials", { batch, materials: [], limits }, "missing", "materials"],
    ["a material twice", { batch, materials: [urea, urea], limits }, "duplicate", "materials[1].product.id"],
    ["limits left out", { batch, materials: [urea] }, "missing", "limits"],
    ["limits that state nothing", { batch, materials: [urea], limits: {} }, "missing", "limits"],
    [
      "no material at its place",
      { batch, materials: [undefined], limits },
      "missing",
      "materials[0].product",
    ],
    [
      "a price that is a weight",
      { batch, materials: [{ ...urea, price: quantity(1, "lb") }], limits },
      "unit/mismatch",
      "materials[0].price",
    ],
    [
      "a filler priced in another currency",
      { batch, materials: [urea], filler: money(1, "EUR").per(quantity(1, "lb")), limits },
      "unit/mismatch",
      "filler",
    ],
    [
      "less stock than the batch takes",
      { batch, materials: [{ ...urea, most: quantity(50, "lb") }], limits },
      "infeasible",
      "materials",
    ],
    [
      "more of a material than the batch holds",
      { batch, materials: [{ ...urea, least: quantity(150, "lb") }], limits },
      "conflict",
      "materials[0].least",
    ],
    [
      "a limit on the salt index of a material that states none",
      { batch, materials: [urea], limits: { ...limits, mostSaltIndex: { scale: "by weight", value: 50 } } },
      "missing",
      "materials[0].saltIndex",
    ],
    [
      "a salt index on another scale",
      {
        batch,
        materials: [{ ...urea, saltIndex: { scale: "per unit", value: 1.6 } }],
        limits: { ...limits, mostSaltIndex: { scale: "by weight", value: 50 } },
      },
      "conflict",
      "materials[0].saltIndex",
    ],
    [
      "a limit on the acidity of a material that states none",
      {
        batch,
        materials: [urea],
        limits: { ...limits, mostAcidity: quantity(50, "% w/w", "CaCO3 equivalent/product") },
      },
      "missing",
      "materials[0].acidity",
    ],
    [
      "a least above its most",
      {
        batch,
        materials: [urea],
        limits: {
          nutrients: [
            { least: quantity(30, "% w/w", "N/product"), most: quantity(20, "% w/w", "N/product") },
          ],
        },
      },
      "conflict",
      "limits.nutrients[0].least",
    ],
    [
      "a nutrient of nothing",
      { batch, materials: [urea], limits: { nutrients: [{ least: quantity(20, "% w/w", "N") }] } },
      "substance/mismatch",
      "limits.nutrients[0].least",
    ],
    [
      "a slow share of the product",
      { batch, materials: [urea], limits: { leastSlowShare: quantity(20, "% w/w", "N:slow/product") } },
      "substance/mismatch",
      "limits.leastSlowShare",
    ],
    ["no input", undefined, "missing", "input"],
    [
      "no limit at its place",
      { batch, materials: [urea], limits: { nutrients: [null] } },
      "missing",
      "limits.nutrients[0]",
    ],
    [
      "limits that are no list",
      { batch, materials: [urea], limits: { nutrients: { least: share } } },
      "type",
      "limits.nutrients",
    ],
    [
      "slow nitrogen, which is no nutrient of an analysis",
      { batch, materials: [urea], limits: { nutrients: [{ least: share }] } },
      "substance/mismatch",
      "limits.nutrients[0].least",
    ],
    [
      "an acid equivalent, which is no nutrient of an analysis",
      { batch, materials: [urea], limits: { nutrients: [{ most: quantity(3, "% w/w", "ae/product") }] } },
      "substance/mismatch",
      "limits.nutrients[0].most",
    ],
  ])("%s", async (_name, input, code, path) => {
    expect((await rejections(leastCostBlend(input as never)))[0]).toBe(`${code} ${path}`);
  });

  test("all that is wrong at once", async () => {
    const wrong = {
      batch: quantity(-1, "lb"),
      materials: [{ ...urea, price: 4, most: quantity(1, "L") }],
      filler: 5,
      limits: null,
    };
    expect(await rejections(leastCostBlend(wrong as never))).toEqual([
      "range batch",
      "unit/mismatch materials[0].price",
      "unit/mismatch materials[0].most",
      "unit/mismatch filler",
      "type limits",
    ]);
  });
});
