import { readContents } from "../../ledger/house.js";
import { type Fertilizer, fertilizer } from "../../nutrient/index.js";
import {
  type Checks,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  expectText,
  fail,
  isSubstance,
  type Quantity,
  quantityOf,
  shown,
  toldBy,
} from "../../quantity/index.js";
import {
  type Formulation,
  formulationOf,
  type LabelRate,
  labelRate,
  type MixIngredient,
  mixIngredients,
  type RateOf,
} from "../../tank/index.js";
import { readUse } from "../grow-in/read-turf.js";
import type { TreatmentUse } from "../grow-in/turf-types.js";
import type { JobProduct } from "./job.js";

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
  readonly package?: Quantity<"mass", "none"> | Quantity<"volume", "none">;
  readonly labelRate?: LabelRate;
  readonly addBefore?: readonly string[];
  readonly addAfter?: readonly string[];
  readonly labelNote?: string;
  readonly lowRate?: boolean;
  readonly contains?: readonly MixIngredient[];
  readonly groups?: readonly string[];
  readonly labelProhibits?: readonly string[];
  /** Of a water-soluble packet. */
  readonly packetSize?: Quantity<"mass", "none"> | Quantity<"volume", "none">;
  readonly use?: TreatmentUse;
  readonly registrationNumber?: string;
  readonly lot?: string;
}

/** Takes a stated rate of product and tags it with the id, so that two products never mix. */
export const taggedRate = (input: unknown, id: string, path: string): RateOf => {
  const { value, unit, of, per } = expectRecord(input, path, "a rate of product") as Record<string, unknown>;
  const top = `product:${id}`;
  if (of === undefined) fail("missing", `${path}.of`, of, `what it is a rate of: "product" or "${top}"`);
  const [stuff, under] = String(of).split("/");
  if ((stuff !== "product" && stuff !== top) || (under !== undefined && under !== "spray")) {
    fail("substance/mismatch", `${path}.of`, of, `a rate of product: "product" or "${top}"`, {
      ...(isSubstance(String(of)) && { suggestion: "target, for a rate of a nutrient" }),
    });
  }
  expectNumber(value, `${path}.value`, { min: 0 });
  const plain = quantityOf(value as number, unit as string, "none", path);
  if (per !== undefined && typeof per !== "object" && typeof per !== "function")
    fail("type", `${path}.per`, per, 'the volume of spray, such as { "value": 100, "unit": "gal" }');
  if (typeof per === "object" && per !== null) return perSpray({ value, unit, of: top, per }, plain, path);
  const perArea = plain.dimension.endsWith("/area");
  if (!perArea && plain.dimension !== "mass/volume" && plain.dimension !== "volume/volume") {
    fail("unit/mismatch", path, plain, "a rate per area, or per volume of spray", {
      ...(unit === "%" && { suggestion: '% v/v of "product/spray"' }),
    });
  }
  const whole = perArea ? top : `${top}/spray`;
  if (under !== undefined && perArea) fail("conflict", path, shown(input), "a rate per volume of spray");
  return quantityOf(value as number, unit as string, whole, path) as unknown as RateOf;
};

/** An amount of product per so much spray: 2 pt per 100 gal. */
const perSpray = (rate: Record<string, unknown>, amount: Quantity<string, string>, path: string): RateOf => {
  if (amount.dimension !== "mass" && amount.dimension !== "volume")
    fail("unit/mismatch", `${path}.unit`, amount, "an amount such as 2 pt, where `per` states the spray");
  const spray = expectRecord(rate.per, `${path}.per`, "a volume of spray");
  if (spray.of !== undefined && spray.of !== "none" && spray.of !== "spray")
    fail("substance/mismatch", `${path}.per.of`, spray.of, "a volume of spray");
  const { value, unit } = spray as { value?: number; unit?: string };
  expectQuantity(
    { value, unit, of: "spray" },
    { dimension: "volume", of: "spray", bound: "positive" },
    `${path}.per`,
  );
  return rate as unknown as RateOf;
};

const fields = [
  "type",
  "version",
  "id",
  "name",
  "form",
  "analysis",
  "basis",
  "nitrogen",
  "slowNitrogen",
  "density",
  "contents",
  "package",
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
] as const satisfies readonly (keyof JobProduct)[];

const readProduct = (input: unknown, at: string, door: Checks): ReadProduct | undefined => {
  const before = door.count();
  const record = door.run(() => expectFields(input, fields, at, "a product"));
  if (record === undefined) return undefined;
  const product = record as unknown as JobProduct;
  const { id, name, form } = product;
  if (typeof id !== "string" || !isSubstance(`product:${id}`)) {
    const expected = "a short name without slash or colon, such as feed-a";
    door.add({ code: id === undefined ? "missing" : "type", path: `${at}.id`, got: shown(id), expected });
    return undefined;
  }
  if (form !== "dry" && form !== "liquid") {
    const code = form === undefined ? "missing" : "type";
    door.add({ code, path: `${at}.form`, got: shown(form), expected: '"dry" or "liquid"' });
    return undefined;
  }
  const { type, version } = product as Partial<Record<keyof JobProduct, unknown>>;
  if (type !== undefined && type !== "fertilizer")
    door.add({ code: "type", path: `${at}.type`, got: shown(type), expected: '"fertilizer", or none' });
  if (version !== undefined && version !== 1)
    door.add({ code: "type", path: `${at}.version`, got: shown(version), expected: "1, or none" });
  readLabelFields(product, at, door);
  const fed =
    product.analysis === undefined ? undefined : door.run(() => fertilizerOf(product, product.analysis, at));
  for (const [part, what] of [
    ["slowNitrogen", "slow nitrogen"],
    ["nitrogen", "breakdown of nitrogen"],
  ] as const) {
    if (product[part] === undefined || product.analysis !== undefined) continue;
    const expected = `the analysis that the ${what} is part of`;
    door.add({ code: "missing", path: `${at}.analysis`, got: "nothing", expected });
  }
  const density =
    product.density === undefined
      ? undefined
      : door.run(() =>
          expectQuantity(
            product.density,
            { dimension: "mass/volume", of: "none", bound: "positive" },
            `${at}.density`,
          ),
        );
  const contents =
    product.contents === undefined
      ? undefined
      : door.run(() => readContents(product.contents, `${at}.contents`));
  const held =
    product.package === undefined ? undefined : door.run(() => packageOf(product, `${at}.package`));
  const formulation =
    product.formulation === undefined
      ? undefined
      : door.run(() => formulated(product.formulation, `${at}.formulation`));
  const label =
    product.labelRate === undefined ? undefined : door.run(() => labelled(product, `${at}.labelRate`));
  const packet =
    product.packetSize === undefined
      ? undefined
      : door.run(() => packetOf(product, formulation, `${at}.packetSize`));
  if (door.count() > before) return undefined;
  return {
    id,
    path: at,
    name: name ?? id,
    form,
    ...(fed && { fertilizer: fed }),
    ...(density && { density }),
    ...(contents && { contents }),
    ...(held && { package: held }),
    ...(formulation && { formulation }),
    ...(label && { labelRate: label }),
    ...(product.addBefore && { addBefore: product.addBefore }),
    ...(product.addAfter && { addAfter: product.addAfter }),
    ...(product.labelNote && { labelNote: product.labelNote }),
    ...(product.lowRate && { lowRate: product.lowRate }),
    ...(product.contains && { contains: product.contains }),
    ...(product.groups && { groups: product.groups }),
    ...(product.labelProhibits && { labelProhibits: product.labelProhibits }),
    ...(packet && { packetSize: packet }),
    ...(product.use && { use: product.use }),
    ...(product.registrationNumber && { registrationNumber: product.registrationNumber }),
    ...(product.lot && { lot: product.lot }),
  };
};

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
      ...(slowNitrogen !== undefined && isRecord(slowNitrogen) && { slowNitrogen: slowNitrogen as never }),
    },
    at,
  );
};

const boundedText = (input: unknown, path: string, most: number): void => {
  const text = expectText(input, path, "text");
  if (text.length > most) fail("range", path, text, `${most} characters or fewer`);
};

const textFields = ["name", "labelNote", "registrationNumber", "lot"] as const;
const idFields = ["addBefore", "addAfter", "groups", "labelProhibits"] as const;

/** Checks the fields that are taken as they stand. */
const readLabelFields = (product: JobProduct, at: string, door: Checks): void => {
  for (const name of textFields) {
    if (product[name] !== undefined)
      door.run(() => boundedText(product[name], `${at}.${name}`, name === "labelNote" ? 1000 : 200));
  }
  for (const name of idFields) {
    const ids: unknown = product[name];
    if (ids === undefined) continue;
    door.run(() => {
      if (!Array.isArray(ids)) fail("type", `${at}.${name}`, ids, "a list of names");
      for (const [i, id] of (ids as unknown[]).entries())
        expectText(id, `${at}.${name}[${i}]`, "a name, such as the id of a product");
    });
  }
  const { lowRate, slowNitrogen, nitrogen, basis, contains } = product;
  if (product.use !== undefined) readUse(product.use, `${at}.use`, door);
  if (contains !== undefined)
    door.run(() => {
      // An empty list says that it contains none of them.
      if (!Array.isArray(contains)) fail("type", `${at}.contains`, contains, "a list of ingredients");
      for (const [i, item] of (contains as unknown[]).entries())
        expectOneOf(item, mixIngredients, `${at}.contains[${i}]`);
    });
  if (lowRate !== undefined && typeof lowRate !== "boolean")
    door.run(() => fail("type", `${at}.lowRate`, lowRate, "true or false"));
  if (slowNitrogen !== undefined)
    door.run(() => expectRecord(slowNitrogen, `${at}.slowNitrogen`, "percent of product, of N:slow/product"));
  if (nitrogen !== undefined)
    door.run(() =>
      expectFields(
        nitrogen,
        ["percent", "slowWithin"],
        `${at}.nitrogen`,
        "the label's breakdown of nitrogen",
      ),
    );
  if (basis !== undefined) door.run(() => expectOneOf(basis, ["oxide", "element"], `${at}.basis`));
};

const formulated = (input: JobProduct["formulation"], path: string): Formulation =>
  typeof input === "object" && input !== null
    ? toldBy({ code: `${path}.code`, scheme: `${path}.scheme` }, () =>
        formulationOf(input.code, { scheme: input.scheme }),
      )
    : toldBy({ code: path }, () => formulationOf(input as string));

/** What one packet holds; a size of what is in no packet is a slip. */
const packetOf = (
  product: JobProduct,
  formulation: Formulation | undefined,
  path: string,
): NonNullable<ReadProduct["package"]> => {
  if (formulation !== undefined && formulation !== "water-soluble packet")
    fail(
      "conflict",
      path,
      product.packetSize,
      `package, for what is no water-soluble packet but ${formulation}`,
    );
  return heldBy(product.packetSize, product.form, path);
};

const packageOf = (product: JobProduct, path: string): NonNullable<ReadProduct["package"]> =>
  heldBy(product.package, product.form, path);

const heldBy = (
  input: unknown,
  form: JobProduct["form"],
  path: string,
): NonNullable<ReadProduct["package"]> => {
  const stated = expectRecord(input, path, "what one package holds");
  const { dimension } = quantityOf(stated.value as number, stated.unit as string, "none", path);
  const measures = form === "dry" ? ["mass"] : ["volume", "mass"];
  const measure = measures.find((of) => of === dimension) ?? (measures[0] as string);
  return expectQuantity(stated, { dimension: measure, of: "none", bound: "positive" }, path) as never;
};

const labelled = (product: JobProduct, path: string): LabelRate => {
  const range = expectFields(product.labelRate, ["min", "max"], path, "a range with min and max");
  const min = taggedRate(range.min, product.id, `${path}.min`);
  const max = taggedRate(range.max, product.id, `${path}.max`);
  return toldBy({ min: `${path}.min`, max: `${path}.max` }, () => labelRate({ min, max }));
};

/** Reads all products of a job; problems go to `door`. */
export const readProducts = (input: unknown, door: Checks): ReadonlyMap<string, ReadProduct> => {
  const products = new Map<string, ReadProduct>();
  const list = door.run(() => expectList(input, "products", "product")) ?? [];
  const ids = new Set<unknown>();
  list.forEach((item, i) => {
    const at = `products[${i}]`;
    const id = (item as { id?: unknown } | null)?.id;
    if (ids.has(id)) {
      door.add({
        code: "duplicate",
        path: `${at}.id`,
        got: shown(id),
        expected: "an id that no other product has",
      });
      return;
    }
    if (id !== undefined) ids.add(id);
    const product = readProduct(item, at, door);
    if (product !== undefined) products.set(product.id, product);
  });
  return products;
};
