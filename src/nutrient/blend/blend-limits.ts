import { described } from "../../quantity/house.js";
import {
  allOf,
  checks,
  expectFields,
  expectNumber,
  expectQuantity,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import { percentOf } from "../label/analysis.js";
import type { Fertilizer } from "../label/fertilizer.js";
import { productNitrogen } from "../label/nitrogen-breakdown.js";
import { isNutrient } from "../label/nutrient.js";
import { eachOf } from "../label/under-path.js";
import type { BlendLimits } from "./blend-input.js";
import { type ReadMaterial, readSaltIndex } from "./read-material.js";

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

/** One side of a limit: what is the least, or the most. */
type Side = readonly [side: "least" | "most", bound: number];

/** A value for each material, and zero for filler. */
type Columns = (read: (material: ReadMaterial, i: number) => number) => number[];

/** The limits of a blend as rows over the materials (and a last column for filler), in percent. */
export const limitRows = (
  limits: BlendLimits,
  materials: readonly ReadMaterial[],
  filler: boolean,
): readonly LimitRow[] => {
  const columns: Columns = (read) => [...materials.map(read), ...(filler ? [0] : [])];
  const { nutrients, slow, salt, acidity } = allOf({
    nutrients: () => nutrientRows(limits.nutrients ?? [], columns),
    slow: () => slowShareRows(limits, columns),
    salt: () => saltRows(limits, columns),
    acidity: () => acidityRows(limits, columns),
  });
  const rows = [...nutrients, ...slow, ...salt, ...acidity];
  return rows.length > 0
    ? rows
    : fail("missing", "limits", described("no limit"), "a limit on at least one nutrient");
};

const percent = (q: unknown, of: string, path: string): number =>
  expectNumber(expectQuantity(q, { dimension: "mass/mass", of }, path).in("% w/w"), path);

const inRange = (value: number, path: string): number =>
  value < 0 || value > 100 ? outOfRange(path, value, { min: 0, max: 100, unit: "%" }) : value;

/** The sides of a limit that are stated, the least not above the most. */
const sidesOf = (
  stated: { readonly least?: unknown; readonly most?: unknown },
  at: (side: "least" | "most") => string,
  read: (q: unknown, path: string) => number,
): readonly Side[] => {
  const { least, most } = allOf({
    least: () => (stated.least === undefined ? undefined : read(stated.least, at("least"))),
    most: () => (stated.most === undefined ? undefined : read(stated.most, at("most"))),
  });
  if (least !== undefined && most !== undefined && least > most) {
    fail("conflict", at("least"), least, `at most the ${most} of ${at("most")}`);
  }
  return [
    ...(least === undefined ? [] : [["least", least] as const]),
    ...(most === undefined ? [] : [["most", most] as const]),
  ];
};

const mostLimits = 100;

const nutrientRows = (input: unknown, columns: Columns): readonly LimitRow[] => {
  if (!Array.isArray(input)) return fail("type", "limits.nutrients", input, "a list of { least, most }");
  if (input.length > mostLimits) outOfRange("limits.nutrients", input, { max: mostLimits, count: "limits" });
  return eachOf(Array.from(input), "limits.nutrients", (limit) => {
    const stated = limit === null || limit === undefined ? {} : expectFields(limit, ["least", "most"], "");
    const one: unknown = stated.least ?? stated.most;
    const of: unknown = Object(one).of;
    const nutrient = typeof of === "string" ? /^(.+)\/product$/.exec(of)?.[1] : undefined;
    if (!isNutrient(nutrient) || typeof of !== "string") {
      const expected = 'least or most of a nutrient, such as quantity(20, "% w/w", "N/product")';
      const hint = nutrient === "N:slow" ? { suggestion: "leastSlowShare, a share of the nitrogen" } : {};
      if (one === undefined) return fail("missing", "", one, expected);
      return fail("substance/mismatch", stated.least === undefined ? "most" : "least", one, expected, hint);
    }
    const coefficients = columns(({ product }) => percentOf(product.analysis, nutrient));
    return {
      of,
      nutrient,
      coefficients,
      sides: sidesOf(
        stated,
        (side) => side,
        (q, path) => inRange(percent(q, of, path), path),
      ),
    };
  }).flatMap(({ of, nutrient, coefficients, sides }, k) =>
    sides.map(
      ([side, bound]): LimitRow => ({
        id: `${nutrient} ${side}`,
        path: `limits.nutrients[${k}].${side}`,
        coefficients,
        side,
        bound,
        shown: { bound, unit: "% w/w", of },
        per: `1 % ${nutrient} of the batch`,
        kind: "nutrient",
      }),
    ),
  );
};

const slowShareRows = (
  { leastSlowShare, mostSlowShare }: BlendLimits,
  columns: Columns,
): readonly LimitRow[] =>
  sidesOf(
    { least: leastSlowShare, most: mostSlowShare },
    (side) => `limits.${side}SlowShare`,
    (q, path) => inRange(percent(q, "N:slow/N", path), path),
  ).map(
    ([side, bound]): LimitRow => ({
      id: `slow share ${side}`,
      path: `limits.${side}SlowShare`,
      coefficients: columns(({ product }) => slowOver(product, bound)),
      side,
      bound: 0,
      shown: { bound, unit: "% w/w", of: "N:slow/N" },
      per: "1 % of the nitrogen",
      kind: "slow share",
    }),
  );

/** A figure that every material needs where it is limited. */
const needed = (value: number | undefined, i: number, field: string, what: string): number =>
  value ?? fail("missing", `materials[${i}].${field}`, undefined, `${what}, since it is limited`);

const saltRows = ({ mostSaltIndex }: BlendLimits, columns: Columns): readonly LimitRow[] => {
  if (mostSaltIndex === undefined) return [];
  const { bound, coefficients } = allOf({
    bound: () => readSaltIndex(mostSaltIndex, "limits.mostSaltIndex"),
    coefficients: () =>
      neededColumns(columns, ({ saltIndex }, i) =>
        needed(saltIndex, i, "saltIndex", "the salt index by weight"),
      ),
  });
  return [
    {
      id: "salt index most",
      path: "limits.mostSaltIndex",
      coefficients,
      side: "most",
      bound,
      shown: { bound, unit: "1", of: "none" },
      per: "1 of salt index by weight",
      kind: "salt index",
    },
  ];
};

const acid = "CaCO3 equivalent/product";

const acidityRows = ({ leastAcidity, mostAcidity }: BlendLimits, columns: Columns): readonly LimitRow[] => {
  if (leastAcidity === undefined && mostAcidity === undefined) return [];
  const { sides, coefficients } = allOf({
    sides: () =>
      sidesOf(
        { least: leastAcidity, most: mostAcidity },
        (side) => `limits.${side}Acidity`,
        (q, path) => percent(q, acid, path),
      ),
    coefficients: () =>
      neededColumns(columns, ({ acidity }, i) => needed(acidity, i, "acidity", "the potential acidity")),
  });
  return sides.map(
    ([side, bound]): LimitRow => ({
      id: `acidity ${side}`,
      path: `limits.${side}Acidity`,
      coefficients,
      side,
      bound,
      shown: { bound, unit: "% w/w", of: acid },
      per: "1 % CaCO3 equivalent of the batch",
      kind: "acidity",
    }),
  );
};

/** The columns of a figure that may be missing: every material without it is told. */
const neededColumns = (columns: Columns, read: (material: ReadMaterial, i: number) => number): number[] => {
  const problems = checks();
  const found = columns((material, i) => problems.run(() => read(material, i)) ?? 0);
  problems.done();
  return found;
};

/** Slow nitrogen above a wanted share of the nitrogen, percent of product: zero in a product without nitrogen. */
const slowOver = (product: Fertilizer, share: number): number => {
  const total = percentOf(product.analysis, "N");
  return total > 0 ? productNitrogen(product).slow.in("% w/w") - (total * share) / 100 : 0;
};

/** Percent of nitrogen in the batch for each material and the filler. */
export const nitrogenColumns = (materials: readonly ReadMaterial[], filler: boolean): number[] => [
  ...materials.map(({ product }) => percentOf(product.analysis, "N")),
  ...(filler ? [0] : []),
];
