import { counted, described } from "../../quantity/house.js";
import { allOf, expectFields, expectQuantity, fail, Quantity } from "../../quantity/index.js";
import { type Analysis, analysis, type Nutrient, percentOf } from "../label/analysis.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { readMaterials } from "../label/materials.js";
import { type NutrientsSupplied, nutrientsSupplied } from "../rate/nutrients-supplied.js";
import { solveLinear } from "../rate/solve-linear.js";
import { sumOfSupplies } from "../rate/sum-of-supplies.js";

/** One material of a batch. */
export interface BlendPart {
  readonly product: string;
  readonly amount: Quantity<"mass", `product:${string}`>;
  /** Of the batch, percent by weight. */
  readonly percentOfBatch: number;
}

/** A batch of a grade. */
export interface Blend {
  readonly type: "blend";
  readonly version: 1;
  readonly parts: readonly BlendPart[];
  /** What fills the batch up: inert, without nutrients. */
  readonly filler: Quantity<"mass", "other:filler">;
  /** All nutrients in the batch, those of the grade and those that came along. */
  readonly supplied: NutrientsSupplied<"mass">;
}

/**
 * A batch of a wanted grade from materials and filler.
 *
 * Equation: `sum over i of m_i * a_ij = W * g_j` for every nutrient j of the grade; `filler = W - sum of m_i`
 *
 * - `m_i` weight of a material; `W` weight of the batch
 * - `a_ij` percent of nutrient j in material i, by weight; `g_j` percent in the grade
 *
 * The grade is met exactly, also where it says 0. As many materials as nutrients that they bring have one
 * answer; with more there are many, and `leastCostBlend` of `ratewright/nutrient/blend` picks the cheapest.
 *
 * Range: every amount and the filler zero or more. Else the error says what stands in the way, and by how much.
 *
 * @param input.batch - weight of the batch
 * @param input.grade - text such as `"19-19-19"`, or an analysis; nutrients that it does not name are free
 * @throws RatewrightError `infeasible` where no such batch exists: a nutrient that no material has, a material that
 *   would have to be taken out, more material than the batch holds; `conflict` where the materials leave several
 *   answers; `duplicate`, `text`, `range`, `missing`, `unit/mismatch`
 *
 * Source: a ton of 0-8-8 from 0-20-0 and 0-0-60 takes 800 lb, 267 lb and 933 lb of filler (North Carolina
 * State University, soil science lecture, topic 20).
 *
 * @example
 * ```ts
 * import { blendToGrade, fertilizer, quantity } from "ratewright";
 * const materials = [
 *   fertilizer({ id: "super", analysis: "0-20-0" }),
 *   fertilizer({ id: "muriate", analysis: "0-0-60" }),
 * ];
 * const ton = blendToGrade({ batch: quantity(2000, "lb"), grade: "0-8-8", materials });
 * ton.parts.map(({ product, amount }) => [product, Math.round(amount.in("lb"))]);
 * // => [["super", 800], ["muriate", 267]]
 * Math.round(ton.filler.in("lb")); // => 933
 * blendToGrade({ batch: quantity(2000, "lb"), grade: "0-15-30", materials }); // => throws infeasible
 * ```
 */
export const blendToGrade = (input: {
  readonly batch: Quantity<"mass", "none">;
  readonly grade: string | Analysis;
  readonly materials: readonly Fertilizer[];
}): Blend => {
  expectFields(input, ["batch", "grade", "materials"], "input");
  const { batch, grade, materials } = allOf({
    batch: () => expectQuantity(input.batch, { dimension: "mass", of: "none", bound: "positive" }, "batch"),
    grade: () => analysis(input.grade, undefined, "grade"),
    materials: () => readMaterials(input.materials),
  });
  return solve(batch, grade, materials);
};

const solve = (batch: Quantity<"mass", "none">, grade: Analysis, materials: readonly Fertilizer[]): Blend => {
  const nutrients = Object.keys(grade.percent) as Nutrient[];
  const wanted = nutrients.map((nutrient) => percentOf(grade, nutrient));
  const matrix = nutrients.map((nutrient) => materials.map((m) => percentOf(m.analysis, nutrient)));
  refuseMissing(nutrients, wanted, matrix);
  const { x, free } = solveLinear(matrix, wanted);
  refuseMisses(nutrients, wanted, matrix, x);
  if (free.length > 0) {
    const names = free.map((i) => materials[i]?.id).join(", ");
    const expected = `materials that leave one answer; without ${names} there is one`;
    fail(
      "conflict",
      "materials",
      described(`${counted(materials.length, "material")} for ${counted(nutrients.length, "nutrient")}`),
      expected,
    );
  }
  const weigh = (share: number): string => `${Number((share * batch.value).toPrecision(4))} ${batch.unit}`;
  x.forEach((share, i) => {
    if (share < -1e-9) {
      const expected = `materials that do not overshoot the grade: ${weigh(-share)} of ${materials[i]?.id} would have to be taken out`;
      fail("infeasible", `materials[${i}]`, materials[i]?.id, expected);
    }
  });
  // Rounding noise is no material and no filler: neither is weighed in.
  const shares = x.map((share) => (share > 1e-12 ? share : 0));
  const total = shares.reduce((sum, share) => sum + share, 0);
  if (total > 1 + 1e-9) {
    const most = nutrients.map((_, j) => Math.floor(((wanted[j] as number) / total) * 100) / 100).join("-");
    const expected = `a grade that fits into the batch: it takes ${weigh(total)} of material, ${weigh(total - 1)} too much; these reach at most ${most}`;
    fail("infeasible", "grade", described(nutrients.map((_, j) => wanted[j]).join("-")), expected);
  }
  const parts = shares.map((share, i): BlendPart => {
    const product = (materials[i] as Fertilizer).id;
    const amount = new Quantity(share * batch.value, batch.unit, `product:${product}` as const, "mass");
    return { product, amount, percentOfBatch: share * 100 };
  });
  return {
    type: "blend",
    version: 1,
    parts,
    filler: new Quantity(
      (1 - total > 1e-12 ? 1 - total : 0) * batch.value,
      batch.unit,
      "other:filler",
      "mass",
    ),
    supplied: sumOfSupplies(
      parts.map(({ amount }, i) => nutrientsSupplied(amount, materials[i] as Fertilizer)),
    ),
  };
};

/** A nutrient of the grade that no material has. */
const refuseMissing = (
  nutrients: readonly Nutrient[],
  wanted: readonly number[],
  matrix: readonly (readonly number[])[],
): void => {
  nutrients.forEach((nutrient, j) => {
    if ((wanted[j] as number) > 0 && matrix[j]?.every((percent) => percent === 0)) {
      fail(
        "infeasible",
        "materials",
        described(`no ${nutrient} in any of them`),
        `a material that states ${nutrient}, of which the grade has ${wanted[j]} %`,
      );
    }
  });
};

/** Says which nutrient cannot be met beside the others, and by how much it is missed. */
const refuseMisses = (
  nutrients: readonly Nutrient[],
  wanted: readonly number[],
  matrix: readonly (readonly number[])[],
  x: readonly number[],
): void => {
  nutrients.forEach((nutrient, j) => {
    const row = matrix[j] as readonly number[];
    const met = row.reduce((sum, percent, i) => sum + percent * (x[i] as number), 0);
    const want = wanted[j] as number;
    if (Math.abs(met - want) <= 1e-9 * Math.max(100, want)) return;
    const others = nutrients.filter((other) => other !== nutrient).join(" and ");
    const found = `${Number(met.toFixed(2))} % ${nutrient} once ${others} ${others.includes(" ") ? "are" : "is"} met`;
    fail(
      "infeasible",
      "grade",
      found,
      `${want} % ${nutrient}: another material has to bring or leave out the difference`,
    );
  });
};
