import { describe, expect, test } from "vitest";
import { leastCostBlend } from "../../../src/nutrient/blend/index.js";
import { fertilizer } from "../../../src/nutrient/index.js";
import { money, quantity } from "../../../src/quantity/index.js";

// What one pound more of a scarce material, or less of one that has to go in, is worth: by hand.

const perTon = (amount: number) => money(amount, "USD").per(quantity(1, "US ton"));
const blend = (urea: object, sulfate: object, limits: object = {}, { least = 23, filler = 40 } = {}) =>
  leastCostBlend({
    batch: quantity(2000, "lb"),
    materials: [
      { product: fertilizer({ id: "urea", analysis: "46-0-0" }), price: perTon(460), ...urea },
      { product: fertilizer({ id: "sulfate", analysis: "21-0-0-24S" }), price: perTon(300), ...sulfate },
    ],
    filler: perTon(filler),
    limits: { nutrients: [{ least: quantity(least, "% w/w", "N/product") }], ...limits },
  } as never);

describe("the stock of a blend", () => {
  test("a pound more of the cheaper nitrogen spares the dearer", async () => {
    // 800 lb of urea bring 18.4 of 23 %; the rest is 438.1 lb of sulfate. One pound of urea takes the place of 46/21 lb of
    // sulfate and lets 25/21 lb of filler in: 46/21 * 300 - 460 - 25/21 * 40 a ton.
    const { limits, parts } = await blend({ most: quantity(800, "lb") }, {});
    expect(parts.map(({ amount }) => Number(amount.in("lb").toFixed(3)))).toEqual([800, 438.095]);
    const scarce = limits.find(({ id }) => id === "urea most");
    expect(scarce).toMatchObject({
      path: "materials[0].most",
      binds: true,
      per: "1 lb of urea",
      priced: "exact",
    });
    expect(scarce?.bound.toString()).toBe("800 lb");
    expect(scarce?.at?.value).toBeCloseTo(800, 6);
    expect(scarce?.shadowPrice.unit).toBe("money:USD");
    expect(scarce?.shadowPrice.value).toBeCloseTo((300 * 46 - 460 * 21 - 25 * 40) / 21 / 2000, 8);
  });

  test("a pound less of what has to go in spares what it is dearer by", async () => {
    // Without it urea alone would do: 1 lb of sulfate stands for 21/46 lb of urea and 25/46 lb of filler.
    const { limits } = await blend({}, { least: quantity(100, "lb") });
    const owed = limits.find(({ id }) => id === "sulfate least");
    expect(owed).toMatchObject({
      path: "materials[1].least",
      binds: true,
      per: "1 lb of sulfate",
      priced: "exact",
    });
    expect(owed?.shadowPrice.value).toBeCloseTo((300 * 46 - 460 * 21 - 25 * 40) / 46 / 2000, 8);
  });

  test("near nothing and near the whole batch, and at nothing, a pound is worth the same", async () => {
    const worth = (300 * 46 - 460 * 21 - 25 * 40) / 21 / 2000;
    const found = async (urea: object, sulfate: object, id: string, more: object = {}) => {
      const { limits } = await blend(urea, sulfate, {}, more);
      const { shadowPrice, priced } = limits.find((one) => one.id === id) ?? {};
      return [Number(shadowPrice?.value.toFixed(9)), priced];
    };
    const exact = (value: number) => [Number(value.toFixed(9)), "exact"];
    expect(
      await found({ most: quantity(0, "lb") }, { price: perTon(300) }, "urea most", { least: 20 }),
    ).toEqual(exact(worth));
    expect(await found({}, { least: quantity(1, "lb") }, "sulfate least")).toEqual(exact((worth * 21) / 46));
    // Where filler costs more than urea, all but one pound is urea: 440 a ton more for that pound.
    expect(
      await found({ most: quantity(1999, "lb") }, { most: quantity(0, "lb") }, "urea most", { filler: 900 }),
    ).toEqual(exact(0.22));
    // At the whole batch there is nothing to relax.
    expect(await found({ most: quantity(2000, "lb") }, {}, "urea most", { filler: 900 })).toEqual(exact(0));
  });

  test("stock that is not used up, and a least of nothing, are worth nothing", async () => {
    const { limits } = await blend({ most: quantity(1500, "lb") }, { least: quantity(0, "lb") });
    expect(limits.slice(1).map(({ id, binds, shadowPrice }) => [id, binds, shadowPrice.value])).toEqual([
      ["urea most", false, 0],
      ["sulfate least", true, 0],
    ]);
  });

  test("a limit on salt is shown as a pure number, one on nitrogen in percent of the batch", async () => {
    const salt = (value: number) => ({ saltIndex: { scale: "by weight", value } });
    const { limits } = await blend(salt(75), salt(69), { mostSaltIndex: { scale: "by weight", value: 50 } });
    const shown = limits.map(({ id, bound, at, per }) => [
      id,
      bound.dimension,
      bound.toString(),
      at?.unit,
      per,
    ]);
    expect(shown).toEqual([
      ["N least", "mass/mass", "23 % w/w of N/product", "% w/w", "1 % N of the batch"],
      ["salt index most", "1", "50 1", "1", "1 of salt index by weight"],
    ]);
    // Half of the batch is urea.
    expect(limits[1]?.at?.value).toBeCloseTo(37.5, 6);
  });
});
