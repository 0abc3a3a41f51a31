import { readContents } from "../../ledger/house.js";
import { expectLiquidDensity, expectLooseDensity } from "../../numeric/house.js";
import { fertilizerFields } from "../../nutrient/house.js";
import { type Fertilizer, fertilizer } from "../../nutrient/index.js";
import { withoutUndefined } from "../../quantity/house.js";
import {
  allOf,
  type Checks,
  expectFields,
  expectList,
  expectQuantity,
  isSubstance,
  type Quantity,
  shown,
  toldBy,
} from "../../quantity/index.js";
import { type Formulation, type LabelRate, labelRate, type MixIngredient } from "../../tank/index.js";
import { readWateringInRule } from "../../water/house.js";
import type { WateringInRule } from "../../water/index.js";
import type { TreatmentUse } from "../grow-in/turf-types.js";
import type { JobProduct } from "./job.js";
import { readLabelFields } from "./read-label-fields.js";
import { formulated, type Held, packageOf, packetOf } from "./read-package.js";
import { taggedRate } from "./tagged-rate.js";

/** A product of a job, read and checked. */
export interface ReadProduct {
  readonly id: string;
  /** Its place in the job: `products[1]`. */
  readonly path: string;
  readonly name: string;
  readonly form: "dry" | "liquid";
  readonly fertilizer?: Fertilizer;
  readonly formulation?: Formulation;
  readonly density?: Quantity<"mass/volume", "none">;
  readonly contents?: readonly Quantity<string, string>[];
  readonly package?: Held;
  readonly labelRate?: LabelRate;
  readonly addBefore?: readonly string[];
  readonly addAfter?: readonly string[];
  readonly labelNote?: string;
  readonly lowRate?: boolean;
  readonly contains?: readonly MixIngredient[];
  readonly groups?: readonly string[];
  readonly labelProhibits?: readonly string[];
  /** Of a water-soluble packet. */
  readonly packetSize?: Held;
  readonly use?: TreatmentUse;
  readonly registrationNumber?: string;
  readonly lot?: string;
  /** What its label states of water after the application. */
  readonly wateringIn?: WateringInRule;
}

const fields = [
  ...fertilizerFields,
  "basis",
  "contents",
  "formulation",
  "labelRate",
  "addBefore",
  "addAfter",
  "labelNote",
  "lowRate",
  "contains",
  "groups",
  "labelProhibits",
  "packetSize",
  "use",
  "registrationNumber",
  "lot",
  "wateringIn",
] as const satisfies readonly (keyof JobProduct)[];

const isRecord = (input: unknown): boolean =>
  typeof input === "object" && input !== null && !Array.isArray(input);

/** What it feeds by its label. Fields that are no records, or no words, are told of before, and left out here. */
const fertilizerOf = (product: JobProduct, analysis: JobProduct["analysis"], at: string): Fertilizer => {
  const { id, name, form, basis, nitrogen, slowNitrogen } = product;
  return fertilizer(
    {
      id,
      form,
      analysis: analysis as string,
      ...(typeof name === "string" && name.trim() !== "" && { name }),
      ...((basis === "oxide" || basis === "element") && { basis }),
      ...(nitrogen !== undefined && isRecord(nitrogen) && { nitrogen }),
      // As it is stated, in one of several kinds: fertilizer reads it.
      ...(slowNitrogen !== undefined && isRecord(slowNitrogen) && { slowNitrogen: slowNitrogen as never }),
    },
    at,
  );
};

const readLabelRate = (product: JobProduct, path: string): LabelRate => {
  const range = expectFields(product.labelRate, ["min", "max"], path, "a range with min and max");
  const { min, max } = allOf({
    min: () => taggedRate(range.min, product.id, `${path}.min`),
    max: () => taggedRate(range.max, product.id, `${path}.max`),
  });
  return toldBy({ min: `${path}.min`, max: `${path}.max` }, () => labelRate({ min, max }));
};

/** The id and the form of a product, without which its amounts cannot be read. */
const readKind = (
  { id, form, type, version }: Readonly<Partial<Record<keyof JobProduct, unknown>>>,
  at: string,
  problems: Checks,
): Pick<ReadProduct, "id" | "form"> | undefined => {
  const named = typeof id === "string" && isSubstance(`product:${id}`);
  if (!named) {
    const expected = "a short name without slash or colon, such as feed-a";
    problems.add({ code: id === undefined ? "missing" : "type", path: `${at}.id`, got: shown(id), expected });
  }
  const formed = form === "dry" || form === "liquid";
  if (!formed) {
    const code = form === undefined ? "missing" : "type";
    problems.add({ code, path: `${at}.form`, got: shown(form), expected: '"dry" or "liquid"' });
  }
  if (type !== undefined && type !== "fertilizer")
    problems.add({ code: "type", path: `${at}.type`, got: shown(type), expected: '"fertilizer", or none' });
  if (version !== undefined && version !== 1)
    problems.add({ code: "type", path: `${at}.version`, got: shown(version), expected: "1, or none" });
  return named && formed ? { id, form } : undefined;
};

/** A breakdown of nitrogen without the analysis that it is part of. */
const tellMissingAnalysis = (product: JobProduct, at: string, problems: Checks): void => {
  for (const [part, what] of [
    ["slowNitrogen", "slow nitrogen"],
    ["nitrogen", "breakdown of nitrogen"],
  ] as const) {
    if (product[part] === undefined || product.analysis !== undefined) continue;
    const expected = `the analysis that the ${what} is part of`;
    problems.add({ code: "missing", path: `${at}.analysis`, got: "nothing", expected });
  }
};

/** The fields that are read into something else, each where it is stated. */
const readMeasures = (product: JobProduct, at: string, problems: Checks) => {
  const read = <T>(name: keyof JobProduct, by: (path: string) => T): T | undefined =>
    product[name] === undefined ? undefined : problems.run(() => by(`${at}.${name}`));
  const formulation = read("formulation", (path) => formulated(product.formulation, path));
  return {
    fertilizer: read("analysis", () => fertilizerOf(product, product.analysis, at)),
    density: read("density", (path) =>
      (product.form === "liquid" ? expectLiquidDensity : expectLooseDensity)(
        expectQuantity(product.density, { dimension: "mass/volume", of: "none", bound: "positive" }, path),
        path,
      ),
    ),
    contents: read("contents", (path) => readContents(product.contents, path)),
    package: read("package", (path) => packageOf(product, path)),
    formulation,
    labelRate: read("labelRate", (path) => readLabelRate(product, path)),
    packetSize: read("packetSize", (path) => packetOf(product, formulation, path)),
    wateringIn: read("wateringIn", (path) => readWateringInRule(product.wateringIn, path)),
  };
};

const readProduct = (input: unknown, at: string, problems: Checks): ReadProduct | undefined => {
  const before = problems.count();
  const record = problems.run(() => expectFields(input, fields, at, "a product"));
  const kind = record && readKind(record, at, problems);
  if (record === undefined) return undefined;
  const product = record as unknown as JobProduct; // Each field is read below before it is used.
  readLabelFields(product, at, problems);
  if (kind === undefined) return undefined;
  tellMissingAnalysis(product, at, problems);
  const measures = readMeasures(product, at, problems);
  if (problems.count() > before) return undefined;
  const { name, addBefore, addAfter, labelNote, lowRate, contains, groups, labelProhibits } = product;
  const { use, registrationNumber, lot } = product;
  // Field by field: spread, what has more fields than the literal grows by one at a time.
  return withoutUndefined({
    fertilizer: measures.fertilizer,
    density: measures.density,
    contents: measures.contents,
    package: measures.package,
    formulation: measures.formulation,
    labelRate: measures.labelRate,
    packetSize: measures.packetSize,
    wateringIn: measures.wateringIn,
    id: kind.id,
    form: kind.form,
    path: at,
    name: name ?? kind.id,
    addBefore,
    addAfter,
    labelNote,
    contains,
    groups,
    labelProhibits,
    use,
    registrationNumber,
    lot,
    lowRate: lowRate || undefined,
  });
};

/** Reads all products of a job; what is wrong goes to `problems`. */
export const readProducts = (input: unknown, problems: Checks): ReadonlyMap<string, ReadProduct> => {
  const products = new Map<string, ReadProduct>();
  const list = problems.run(() => expectList(input, "products", "product")) ?? [];
  const ids = new Set<unknown>();
  list.forEach((item, i) => {
    const at = `products[${i}]`;
    const id = (item as { id?: unknown } | null)?.id;
    if (ids.has(id)) {
      problems.add({
        code: "duplicate",
        path: `${at}.id`,
        got: shown(id),
        expected: "an id that no other product has",
      });
      return;
    }
    if (id !== undefined) ids.add(id);
    const product = readProduct(item, at, problems);
    if (product !== undefined) products.set(product.id, product);
  });
  return products;
};
