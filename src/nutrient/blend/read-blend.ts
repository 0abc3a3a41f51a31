import { described } from "../../quantity/house.js";
import {
  allOf,
  expectFields,
  expectQuantity,
  fail,
  numberIn,
  plainCopy,
  type Quantity,
} from "../../quantity/index.js";
import { eachOf } from "../label/under-path.js";
import type { LeastCostBlendInput } from "./blend-input.js";
import { type LimitRow, limitRows } from "./blend-limits.js";
import type { LinearProgram } from "./linear-program.js";
import { currencyOf, type ReadMaterial, readBlendMaterials, readPrice } from "./read-material.js";

/** A blend as it was read, and its linear program. */
export interface ReadProblem {
  readonly materials: readonly ReadMaterial[];
  readonly filler: boolean;
  readonly batch: Quantity<"mass", "none">;
  readonly rows: readonly LimitRow[];
  /** In shares of the batch; its first row makes them add up to 1. */
  readonly program: LinearProgram;
  /** Prices in money per unit of the batch, and the highest, by which the program is scaled. */
  readonly prices: readonly number[];
  readonly scale: number;
  readonly currency: string;
}

/** Takes a blend that may come from JSON, or throws all that is wrong with it. */
export const readProblem = (given: LeastCostBlendInput<string>): ReadProblem => {
  const input = plainCopy(given);
  expectFields(input, ["batch", "materials", "filler", "limits"], "input");
  const first: unknown = Array.isArray(input.materials) ? Object(input.materials[0]).price : undefined;
  const currency = currencyOf(first);
  const { batch, materials, filler } = allOf({
    batch: () => expectQuantity(input.batch, { dimension: "mass", of: "none", bound: "positive" }, "batch"),
    materials: () => readBlendMaterials(input.materials, currency),
    filler: () => (input.filler === undefined ? undefined : readPrice(input.filler, currency, "filler")),
    limits: () =>
      input.limits === undefined
        ? fail("missing", "limits", input.limits, "a limit on at least one nutrient")
        : expectFields(input.limits, limitFields, "limits"),
  });
  const rows = limitRows(input.limits, materials, filler !== undefined);
  const money = currency as string;
  const prices = [...materials.map(({ price }) => price), ...(filler === undefined ? [] : [filler])].map(
    (price) => numberIn(price, `${money}/${batch.unit}`),
  );
  const bounds = boundsOf(materials, batch, filler !== undefined);
  const scale = Math.max(...prices) || 1;
  const program: LinearProgram = {
    cost: prices.map((price) => price / scale),
    ...bounds,
    rows: [
      { coefficients: prices.map(() => 1), lower: 1, upper: 1 },
      ...rows.map(({ coefficients, side, bound }) => ({
        coefficients,
        lower: side === "least" ? bound : Number.NEGATIVE_INFINITY,
        upper: side === "most" ? bound : Number.POSITIVE_INFINITY,
      })),
    ],
  };
  return { materials, filler: filler !== undefined, batch, rows, program, prices, scale, currency: money };
};

const limitFields = [
  "nutrients",
  "leastSlowShare",
  "mostSlowShare",
  "mostSaltIndex",
  "leastAcidity",
  "mostAcidity",
] as const;

/** The least and the most of each material, and of filler, as shares of the batch. */
const boundsOf = (
  materials: readonly ReadMaterial[],
  batch: Quantity<"mass", "none">,
  filler: boolean,
): { readonly lower: readonly number[]; readonly upper: readonly number[] } => {
  const share = (q: Quantity<"mass", "none">): number => numberIn(q, batch.unit) / batch.value;
  const lower = materials.map(({ least }) => (least === undefined ? 0 : share(least)));
  const upper = materials.map(({ most }) => (most === undefined ? 1 : Math.min(1, share(most))));
  eachOf(lower, "materials", (low, i) =>
    low > (upper[i] as number)
      ? fail(
          "conflict",
          "least",
          materials[i]?.least,
          "no more than the batch, and no more than the most of this material",
        )
      : low,
  );
  if (filler) {
    lower.push(0);
    upper.push(1);
  }
  const sum = (list: readonly number[]): number => list.reduce((all, one) => all + one, 0);
  const amount = (part: number): string => `${Number((part * batch.value).toPrecision(6))} ${batch.unit}`;
  if (sum(lower) > 1 + 1e-9) {
    fail(
      "infeasible",
      "materials",
      described(amount(sum(lower))),
      `least amounts that fit into ${amount(1)}`,
    );
  }
  if (sum(upper) < 1 - 1e-9) {
    fail("infeasible", "materials", described(amount(sum(upper))), `materials for ${amount(1)}, or filler`);
  }
  return { lower, upper };
};
