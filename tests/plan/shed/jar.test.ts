// The jar of the sheet is the mix of its tank: beside jarTest, which scales the rates on its own.
import { describe, expect, test } from "vitest";
import { workOrder, workOrderSheet } from "../../../src/plan/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { jarTest } from "../../../src/tank/index.js";
import { parkJob, smallJob, soundOrder } from "../helpers.js";

const rowsOf = (order: Parameters<typeof workOrderSheet>[0]): readonly (readonly string[])[] =>
  workOrderSheet(order).back.flatMap(({ id, blocks }) =>
    id === "jar test"
      ? blocks.flatMap((block) => (block.kind === "table" ? block.rows.map(({ cells }) => cells) : []))
      : [],
  );

describe("the jar test on the back of the sheet", () => {
  test("by hand, in 500 mL: urea 0.22 lb in a gallon, regulator 0.125 fl oz in a gallon, 0.25 % of surfactant", () => {
    // 0.22 x 453.59 g / 3785.4 mL x 500 mL = 13.18 g; 0.125 x 29.574 / 3785.4 x 500 = 0.488 mL; 0.25 % of 500 is 1.25 mL.
    expect(rowsOf(workOrder(parkJob()))).toEqual([
      ["1  Water from the fill point, not warmed", "250 mL", "jar mark"],
      ["2  soluble urea 46-0-0", "13.2 g", "gram scale"],
      ["3  trinexapac-ethyl 120 g/L EC", "0.49 mL", "syringe"],
      ["4  non-ionic surfactant", "1.25 mL", "syringe"],
      ["5  The same water up to", "500 mL", "jar mark"],
    ]);
  });

  test("says what jarTest says of the same rates, in its order", () => {
    const jar = jarTest({
      jar: quantity(500, "mL", "spray"),
      applicationVolume: quantity(1, "gal/1000 ft2", "spray"),
      products: [
        {
          id: "regulator-a",
          formulation: "EC",
          rate: quantity(0.125, "fl oz/1000 ft2", "product:regulator-a"),
        },
        { id: "urea", formulation: "dry fertilizer", rate: quantity(0.22, "lb/1000 ft2", "product:urea") },
        {
          id: "wetter",
          formulation: "surfactant",
          rate: quantity(0.25, "% v/v", "product:wetter/spray"),
        },
      ],
    });
    const shown = rowsOf(workOrder(parkJob())).slice(1, -1);
    expect(jar.amounts.map(({ id }) => id)).toEqual(["urea", "regulator-a", "wetter"]);
    jar.amounts.forEach(({ amount }, i) => {
      const [figure, unit] = (shown[i]?.[1] ?? "").split(" ");
      expect(unit).toBe(amount.unit);
      expect(Math.abs(Number(figure) - amount.value)).toBeLessThanOrEqual(amount.value < 10 ? 0.005 : 0.05);
    });
  });

  test("of one product there is none; of packets none goes into the jar", () => {
    const one = (mix: readonly string[]) =>
      soundOrder(
        smallJob({
          products: [
            {
              id: "p",
              form: "dry",
              formulation: "water-soluble packet",
              packetSize: { value: 1, unit: "lb" },
            },
            { id: "q", form: "liquid", formulation: "EC" },
          ],
          sprayer: {
            tank: { value: 20, unit: "gal" },
            applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
          },
          treatments: [
            {
              id: "s",
              method: "spray",
              mix: mix.map((product) => ({
                product,
                rate: { value: 1, unit: product === "p" ? "oz/1000 ft2" : "fl oz/1000 ft2", of: "product" },
              })),
            },
          ],
        }),
      );
    expect(rowsOf(one(["q"]))).toEqual([]);
    expect(rowsOf(one(["p", "q"]))[1]).toEqual(["2  p", "leave out", "never cut"]);
  });

  /** A powder and a liquid over so many square feet, at 1.5 gal per 1,000 ft2. */
  const lawn = (area: number, tank = 300) =>
    soundOrder(
      smallJob({
        site: { name: "Lawn", parts: [{ shape: "measured", area: { value: area, unit: "ft2" } }] },
        products: [
          { id: "powder", form: "dry", formulation: "WDG" },
          { id: "liquid", form: "liquid", formulation: "EC" },
        ],
        sprayer: {
          tank: { value: tank, unit: "gal" },
          applicationVolume: { value: 1.5, unit: "gal/1000 ft2", of: "spray" },
        },
        treatments: [
          {
            id: "s",
            method: "spray",
            mix: [
              { product: "powder", rate: { value: 0.15, unit: "oz/1000 ft2", of: "product" } },
              { product: "liquid", rate: { value: 1.1, unit: "fl oz/1000 ft2", of: "product" } },
            ],
          },
        ],
      }),
    );
  const lastStep = (order: Parameters<typeof workOrderSheet>[0]): string | undefined =>
    workOrderSheet(order)
      .back.flatMap(({ id, blocks }) => (id === "jar test" ? blocks : []))
      .flatMap((block) => (block.kind === "list" ? block.items : []))
      .pop();

  test("a small load takes so much less of each product beside the jar, never more than the rate", () => {
    // 300 ft2 take 0.45 gal, 1.7034 L, of which the jar is 29.35 %: of 0.045 oz there are 0.0317 to weigh, of 0.33 fl oz 0.233.
    expect(lastStep(lawn(300, 4))).toBe(
      "Pour the jar into load 1, and measure out only 0.0317 oz wt of powder and 0.233 fl oz of liquid for it: with the full amounts the load would be 29 % too strong.",
    );
    // 9,000 ft2 take 13.5 gal, 51.1 L: 0.98 % is less than a scale tells. 8,000 ft2 take 45.4 L, and it is 1.1 %.
    expect(lastStep(lawn(9000))).toBe("Pour the jar into load 1.");
    expect(lastStep(lawn(8000))).toMatch(
      /only 1\.18 oz wt of powder and 8\.70 fl oz of liquid for it: .* 1 % too strong\.$/,
    );
  });

  test("a load that is no larger than the jar does not take it", () => {
    // 80 ft2 take 0.12 gal, 454 mL
    expect(lastStep(lawn(80, 4))).toMatch(
      /^Do not pour the jar into load 1: .* at or below the label rate\.$/,
    );
  });
});
