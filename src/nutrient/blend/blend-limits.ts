import { checks, expectNumber, expectQuantity, fail } from "../../quantity/index.js";
import { isNutrient, percentOf } from "../label/analysis.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { productNitrogen } from "../label/nitrogen-breakdown.js";
import type { BlendMaterial, BlendNutrientLimit, LeastCostBlendInput } from "./blend-input.js";

/** A limit on a blend as one row: the sum over materials of share of the batch times coefficient. */
export interface LimitRow {
  readonly id: string;
  readonly path: string;
  readonly coefficients: readonly number[];
  readonly side: "least" | "most";
  /** In the unit of the row. */
  readonly bound: number;
  /** What the limit is a limit of, and how its figures are shown. */
  readonly shown: { readonly bound: number; readonly unit: string; readonly of: string };
  /** What one step of relaxing is, in words, and how far it moves the bound of the row. */
  readonly per: string;
  readonly kind: "nutrient" | "slow share" | "salt index" | "acidity";
}

type Read = (material: BlendMaterial<string>, i: number) => number;

/** The limits of a blend as rows over the materials (and a last column for filler), in percent. */
export const limitRows = (input: LeastCostBlendInput<string>): LimitRow[] => {
  const { materials, limits } = input;
  const door = checks();
  const rows: LimitRow[] = [];
  const filler = input.filler === undefined ? [] : [0];
  const columns = (read: Read): number[] => [
    ...materials.map((material, i) => door.run(() => read(material, i)) ?? 0),
    ...filler,
  ];
  const percent = (q: unknown, of: string, path: string): number =>
    expectQuantity(q, { dimension: "mass/mass", of }, path).in("% w/w");
  const pair = (
    least: unknown,
    most: unknown,
    at: (side: "least" | "most") => string,
    read: (q: unknown, path: string) => number,
  ): (readonly ["least" | "most", number])[] => {
    const found = (["least", "most"] as const).flatMap((side) => {
      const q = side === "least" ? least : most;
      const value = q === undefined ? undefined : door.run(() => read(q, at(side)));
      return value === undefined ? [] : [[side, value] as const];
    });
    const [low, high] = found;
    if (low !== undefined && high !== undefined && low[1] > high[1]) {
      door.run(() => fail("conflict", at("least"), low[1], `at most the ${high[1]} of ${at("most")}`));
    }
    return found;
  };

  const nutrients: unknown = limits?.nutrients ?? [];
  const listed = Array.isArray(nutrients)
    ? (nutrients as readonly (BlendNutrientLimit | null | undefined)[])
    : (door.run(() => fail("type", "limits.nutrients", nutrients, "a list of { least, most }")) ?? []);
  listed.forEach((limit, k) => {
    const place = `limits.nutrients[${k}]`;
    const at = (side: "least" | "most"): string => `${place}.${side}`;
    const one = limit?.least ?? limit?.most;
    const of = String((one as { of?: unknown } | undefined)?.of);
    const nutrient = /^(.+)\/product$/.exec(of)?.[1];
    if (!limit || nutrient === undefined || !isNutrient(nutrient)) {
      door.run(() =>
        fail(
          one === undefined ? "missing" : "substance/mismatch",
          place,
          one,
          'least or most of a nutrient, such as quantity(20, "% w/w", "N/product")',
          nutrient === "N:slow" ? { suggestion: "leastSlowShare, a share of the nitrogen" } : {},
        ),
      );
      return;
    }
    const coefficients = columns(({ product }) => percentOf(product.analysis, nutrient));
    for (const [side, bound] of pair(limit.least, limit.most, at, (q, path) =>
      inRange(percent(q, of, path), path),
    )) {
      rows.push({
        id: `${nutrient} ${side}`,
        path: at(side),
        coefficients,
        side,
        bound,
        shown: { bound, unit: "% w/w", of },
        per: `1 % ${nutrient} of the batch`,
        kind: "nutrient",
      });
    }
  });

  for (const [side, bound] of pair(
    limits?.leastSlowShare,
    limits?.mostSlowShare,
    (side) => `limits.${side}SlowShare`,
    (q, path) => inRange(percent(q, "N:slow/N", path), path),
  )) {
    rows.push({
      id: `slow share ${side}`,
      path: `limits.${side}SlowShare`,
      coefficients: columns(({ product }) => slowOver(product, bound)),
      side,
      bound: 0,
      shown: { bound, unit: "% w/w", of: "N:slow/N" },
      per: "1 % of the nitrogen",
      kind: "slow share",
    });
  }

  if (limits?.mostSaltIndex !== undefined) {
    const bound = door.run(() => saltOf(limits.mostSaltIndex, "limits.mostSaltIndex")) ?? 0;
    rows.push({
      id: "salt index most",
      path: "limits.mostSaltIndex",
      coefficients: columns(({ saltIndex }, i) => saltOf(saltIndex, `materials[${i}].saltIndex`)),
      side: "most",
      bound,
      shown: { bound, unit: "1", of: "none" },
      per: "1 of salt index by weight",
      kind: "salt index",
    });
  }

  const acid = "CaCO3 equivalent/product";
  for (const [side, bound] of pair(
    limits?.leastAcidity,
    limits?.mostAcidity,
    (side) => `limits.${side}Acidity`,
    (q, path) => percent(q, acid, path),
  )) {
    rows.push({
      id: `acidity ${side}`,
      path: `limits.${side}Acidity`,
      coefficients: columns(({ acidity }, i) =>
        acidity === undefined
          ? fail(
              "missing",
              `materials[${i}].acidity`,
              undefined,
              "the potential acidity, since it is limited",
            )
          : percent(acidity, acid, `materials[${i}].acidity`),
      ),
      side,
      bound,
      shown: { bound, unit: "% w/w", of: acid },
      per: "1 % CaCO3 equivalent of the batch",
      kind: "acidity",
    });
  }
  door.done();
  return rows;
};

const inRange = (value: number, path: string): number =>
  value < 0 || value > 100 ? fail("range", path, value, "a percentage from 0 to 100") : value;

/** Slow nitrogen above a wanted share of the nitrogen, percent of product: zero in a product without nitrogen. */
const slowOver = (product: Fertilizer, share: number): number => {
  const total = percentOf(product.analysis, "N");
  return total > 0 ? productNitrogen(product).slow.in("% w/w") - (total * share) / 100 : 0;
};

const saltOf = (index: unknown, path: string): number => {
  if (index === undefined)
    return fail("missing", path, undefined, "the salt index by weight, since it is limited");
  const { scale, value } = Object(index) as { scale?: unknown; value?: unknown };
  if (scale !== "by weight")
    fail("conflict", path, scale, 'a salt index on the scale "by weight", which adds up by weight');
  return expectNumber(value, path, { min: 0 });
};

/** Percent of nitrogen in the batch for each material and the filler. */
export const nitrogenColumns = (materials: readonly BlendMaterial<string>[], filler: boolean): number[] => [
  ...materials.map(({ product }) => percentOf(product.analysis, "N")),
  ...(filler ? [0] : []),
];
