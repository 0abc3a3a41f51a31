import fc from "fast-check";
import { lusolve, matrix } from "mathjs";
import { describe, expect, test } from "vitest";
import { blendToGrade, fertilizer, percentOf } from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const dry = (id: string, grade: string) => fertilizer({ id, analysis: grade });
const materials = [dry("urea", "46-0-0"), dry("dap", "18-46-0"), dry("muriate", "0-0-60")];
const grades = fc.tuple(
  fc.integer({ min: 6, max: 20 }),
  fc.integer({ min: 0, max: 12 }),
  fc.integer({ min: 0, max: 20 }),
);

describe("a batch to a grade", () => {
  test("adds up to the batch and holds exactly the nutrients of the grade", () => {
    fc.assert(
      fc.property(grades, fc.integer({ min: 1, max: 5000 }), ([n, p, k], weight) => {
        const { parts, filler, supplied } = blendToGrade({
          batch: quantity(weight, "lb"),
          grade: `${n}-${p}-${k}`,
          materials,
        });
        const total = parts.reduce((sum, { amount }) => sum + amount.in("lb"), filler.in("lb"));
        expect(total / weight).toBeCloseTo(1, 12);
        expect((supplied.N?.in("lb") ?? 0) / weight).toBeCloseTo(n / 100, 12);
        expect((supplied.P2O5?.in("lb") ?? 0) / weight).toBeCloseTo(p / 100, 12);
        expect((supplied.K2O?.in("lb") ?? 0) / weight).toBeCloseTo(k / 100, 12);
        for (const { amount } of parts) expect(amount.value).toBeGreaterThanOrEqual(0);
      }),
    );
  });

  test("is what a general-purpose solver of linear systems gives", () => {
    fc.assert(
      fc.property(grades, ([n, p, k]) => {
        const rows = (["N", "P2O5", "K2O"] as const).map((of) =>
          materials.map((material) => percentOf(material.analysis, of)),
        );
        const wanted = (lusolve(matrix(rows), [n, p, k]) as unknown as { toArray(): number[][] })
          .toArray()
          .map(([share]) => share as number);
        const { parts } = blendToGrade({ batch: quantity(1, "t"), grade: `${n}-${p}-${k}`, materials });
        parts.forEach(({ percentOfBatch }, i) => {
          expect(percentOfBatch / 100).toBeCloseTo(wanted[i] as number, 12);
        });
      }),
    );
  });

  test("does not depend on the order of the materials, nor on the unit of the batch", () => {
    const amounts = (batch: Parameters<typeof blendToGrade>[0]["batch"], list: typeof materials) =>
      Object.fromEntries(
        blendToGrade({ batch, grade: "19-19-19", materials: list }).parts.map(({ product, amount }) => [
          product,
          Number(amount.in("lb").toFixed(9)),
        ]),
      );
    const usual = amounts(quantity(1, "US ton"), materials);
    expect(amounts(quantity(2000, "lb"), [...materials].reverse())).toEqual(usual);
  });

  test("one material that is the grade itself fills the batch", () => {
    const { filler, parts } = blendToGrade({
      batch: quantity(50, "lb"),
      grade: "18-46-0",
      materials: [dry("dap", "18-46-0")],
    });
    expect([filler.value, parts[0]?.amount.in("lb")]).toEqual([0, 50]);
  });

  const problem = (grade: string, list: typeof materials) => {
    const call = () => blendToGrade({ batch: quantity(2000, "lb"), grade, materials: list });
    let text = "";
    try {
      call();
    } catch (error) {
      text = String(error);
    }
    return [complaints(call)[0], text] as const;
  };

  test.each(["4-14-2", "7-6-7", "14-4-2"])("materials that fill the batch leave no filler: %s", (grade) => {
    // Each material has 20 % of one nutrient, and the figures of the grade add up to 20.
    const pure = [dry("n", "20-0-0"), dry("p", "0-20-0"), dry("k", "0-0-20")];
    const { filler } = blendToGrade({ batch: quantity(2000, "lb"), grade, materials: pure });
    expect(filler.in("lb")).toBe(0);
  });

  test("says why a grade cannot be made, and how far it is", () => {
    expect(problem("10-10-10", [dry("urea", "46-0-0"), dry("dap", "18-46-0")])[1]).toMatch(
      /a material that states K2O/,
    );
    const [code, text] = problem("30-20-20", materials);
    expect(code).toBe("infeasible grade");
    expect(text).toMatch(/2500 lb of material, 500\.3 lb too much; these reach at most 23\.99-15\.99-15\.99/);
    const [under, negative] = problem("5-20-0", materials);
    expect(under).toBe("infeasible materials[0]");
    expect(negative).toMatch(/122\.9 lb of urea would have to be taken out/);
    expect(problem("20-20-0", [dry("dap", "18-46-0")])[1]).toMatch(/infeasible|another material/);
    expect(problem("20-10-10", [...materials, dry("sulfate", "21-0-0")])[0]).toBe("conflict materials");
  });

  test("a grade that needs a little more than the batch is refused, and a trace nutrient is solved for", () => {
    // 18-46-0 for the phosphate 21.74 %, 0-0-60 16.67 %, 46-0-0 for 29.09 % N left 63.23 %: 101.64 % in all.
    expect(problem("33-10-10", materials)[1]).toMatch(/2033 lb of material, 32\.77 lb too much/);
    const iron = fertilizer({ id: "iron", analysis: { basis: "oxide", percent: { N: 6, Fe: 0.1 } } });
    const { parts } = blendToGrade({
      batch: quantity(1000, "lb"),
      grade: { basis: "oxide", percent: { N: 10, Fe: 0.02 } },
      materials: [dry("urea", "46-0-0"), iron],
    });
    // 200 lb bring 0.2 lb of iron and 12 lb of nitrogen; 88 lb more are in 191.3 lb of urea.
    expect(parts.map(({ amount }) => amount.in("lb"))).toEqual([
      expect.closeTo(88 / 0.46, 9),
      expect.closeTo(200, 9),
    ]);
  });

  test("refuses bad input by path", () => {
    const grade = "10-5-5";
    expect(complaints(() => blendToGrade({ batch: quantity(0, "lb"), grade, materials }))).toEqual([
      "range batch",
    ]);
    expect(
      complaints(() => blendToGrade({ batch: quantity(1, "L") as never, grade: "10-x-5", materials: [] })),
    ).toEqual(["unit/mismatch batch", "text grade", "missing materials"]);
    expect(
      complaints(() =>
        blendToGrade({ batch: quantity(1, "t"), grade, materials: [dry("a", "46-0-0"), dry("a", "0-0-60")] }),
      ),
    ).toEqual(["duplicate materials[1].id"]);
  });
});
