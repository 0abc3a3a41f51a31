import {
  type DegreeDayModel,
  type DegreeDaysOf,
  degreeDayAmount,
  degreeDayModel,
  type IntervalRule,
  intervalRule,
} from "../../interval/index.js";
import { readFacts } from "../../limits/house.js";
import type { ApplicationFacts } from "../../limits/index.js";
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
  type Quantity,
  shown,
  toldAt,
} from "../../quantity/index.js";
import type { RateOf } from "../../tank/index.js";
import type { JobHeat, JobSpray, JobSpread } from "./job.js";
import { shortText } from "./read-machines.js";
import { type ReadProduct, taggedRate } from "./read-products.js";
import { expectParts, type ReadSite, type TreatedPart, treatedArea, treatedParts } from "./read-site.js";

/** An interval by heat, read and checked. */
export interface ReadHeat {
  readonly model: DegreeDayModel;
  readonly interval: Quantity<"degree-days", DegreeDaysOf<string>>;
  readonly source: string;
}

interface ReadBase {
  readonly id: string;
  readonly path: string;
  readonly parts?: readonly string[];
  readonly area: Quantity<"area", "none">;
  /** What of it lies on each part; empty where the job does not say. */
  readonly byPart: readonly TreatedPart[];
  readonly interval?: IntervalRule;
  readonly heat?: ReadHeat;
  readonly facts: ApplicationFacts;
}

/** A treatment that is spread. */
export interface ReadSpread extends ReadBase {
  readonly method: "spread";
  readonly product: ReadProduct;
  readonly passes: number;
  readonly setting?: string;
  readonly wanted:
    | { readonly target: Quantity<"mass/area", string> }
    | { readonly rate: Quantity<"mass/area", `product:${string}`> };
}

/** A treatment that is sprayed. */
export interface ReadSpray extends ReadBase {
  readonly method: "spray";
  readonly mix: readonly { readonly product: ReadProduct; readonly rate: RateOf; readonly path: string }[];
}

/** A treatment of a job, read and checked. */
export type ReadTreatment = ReadSpread | ReadSpray;

/** The products of a job that could be read, and the ids of all that it states. */
export interface JobProducts {
  readonly sound: ReadonlyMap<string, ReadProduct>;
  readonly ids: ReadonlySet<unknown>;
}

const common = ["id", "method", "parts", "area", "interval", "heat", "facts"] as const;
const spreadFields: readonly (keyof JobSpread)[] = [
  ...common,
  "product",
  "target",
  "rate",
  "passes",
  "setting",
];
const sprayFields: readonly (keyof JobSpray)[] = [...common, "mix"];

/** The product of an id; nothing where the job has one of that id which is itself at fault. */
export const namedProduct = (products: JobProducts, id: unknown, path: string): ReadProduct | undefined =>
  products.sound.get(id as string) ??
  (products.ids.has(id)
    ? undefined
    : fail("missing", path, id, "the id of a product of this job", { choices: [...products.sound.keys()] }));

/** Reads an interval by heat, or throws. */
export const readHeat = (input: unknown, path: string): ReadHeat => {
  const fields = ["method", "base", "upper", "cutoff", "interval", "source"];
  const heat = expectFields(input, fields, path, "an interval by heat") as unknown as JobHeat;
  const source = expectText(heat.source, `${path}.source`, "who found this interval");
  const { method, base, upper, cutoff } = heat;
  const model = toldAt(path, "model", () =>
    degreeDayModel({
      method,
      base,
      ...(upper && { upper }),
      ...(cutoff && { cutoff }),
      sensor: "air",
      source,
    }),
  );
  const { value, unit } = expectRecord(heat.interval, `${path}.interval`, "degree-days") as Record<
    string,
    never
  >;
  expectNumber(value, `${path}.interval.value`, { above: 0 });
  return {
    model,
    interval: degreeDayAmount({ value: value as unknown as number, unit: unit as unknown as "°C d", model }),
    source,
  };
};

/** Checks a target or a rate where its product is not known: what is wrong with it is told all the same. */
const expectStated = ({ target, rate }: JobSpread, path: string): undefined => {
  const [name, stated] = target === undefined ? ["rate", rate] : ["target", target];
  if (stated !== undefined)
    expectQuantity(stated, { dimension: "mass/area", bound: "positive" }, `${path}.${name}`);
};

const readWanted = (input: JobSpread, product: ReadProduct, path: string): ReadSpread["wanted"] => {
  const { target, rate } = input;
  if ((target === undefined) === (rate === undefined)) {
    return fail(
      target === undefined ? "missing" : "conflict",
      path,
      target === undefined ? "neither target nor rate" : "target and rate",
      "a target of a nutrient, or a rate of product",
    );
  }
  if (rate !== undefined) {
    const of = `product:${product.id}` as const;
    const tagged = taggedRate(rate, product.id, `${path}.rate`);
    return {
      rate: expectQuantity(tagged, { dimension: "mass/area", of, bound: "positive" }, `${path}.rate`),
    };
  }
  if (target?.of === undefined) fail("missing", `${path}.target.of`, undefined, "the nutrient, such as N");
  const wanted = expectQuantity(target, { dimension: "mass/area", bound: "positive" }, `${path}.target`);
  if (wanted.of.startsWith("product")) {
    fail("substance/mismatch", `${path}.target.of`, wanted.of, "a nutrient, such as N or P2O5", {
      suggestion: "rate",
    });
  }
  if (product.fertilizer === undefined) {
    fail("missing", `${path}.target`, target, `a product with an analysis; ${product.id} states none`);
  }
  return { target: wanted };
};

const readTreatment = (
  input: unknown,
  at: string,
  site: ReadSite,
  products: JobProducts,
  door: Checks,
): ReadTreatment | undefined => {
  const before = door.count();
  const record = door.run(() => expectRecord(input, at, "a treatment"));
  if (record === undefined) return undefined;
  const method = door.run(() => expectOneOf(record.method, ["spread", "spray"], `${at}.method`));
  if (method === undefined) return undefined;
  door.run(() => expectFields(record, method === "spread" ? spreadFields : sprayFields, at, "a treatment"));
  const id = door.run(() => expectText(record.id, `${at}.id`, "a name for this treatment")) ?? "";
  const parts =
    record.parts === undefined ? undefined : door.run(() => expectParts(record.parts, site, `${at}.parts`));
  const area =
    record.parts !== undefined && parts === undefined
      ? undefined
      : door.run(() => treatedArea({ area: record.area, parts }, site, `${at}.area`));
  const byPart = treatedParts({ area: record.area, parts }, site);
  const interval =
    record.interval === undefined
      ? undefined
      : door.run(() => toldAt(`${at}.interval`, "rule", () => intervalRule(record.interval as IntervalRule)));
  const heat = record.heat === undefined ? undefined : door.run(() => readHeat(record.heat, `${at}.heat`));
  const facts = readFacts(record.facts, `${at}.facts`, door);
  const base = {
    id,
    path: at,
    facts,
    byPart,
    ...(parts && { parts }),
    ...(interval && { interval }),
    ...(heat && { heat }),
  };
  if (method === "spread") {
    const treatment = record as unknown as JobSpread;
    const product = door.run(() => namedProduct(products, treatment.product, `${at}.product`));
    if (product?.form === "liquid") {
      const expected = "a dry product: a liquid is not spread";
      door.add({ code: "conflict", path: `${at}.product`, got: shown(product.id), expected });
    }
    const wanted =
      product === undefined
        ? door.run(() => expectStated(treatment, at))
        : door.run(() => readWanted(treatment, product, at));
    const passes = door.run(() => expectPasses(treatment.passes, `${at}.passes`));
    const setting =
      treatment.setting === undefined
        ? undefined
        : door.run(() => shortText(treatment.setting, `${at}.setting`));
    return door.count() > before ||
      area === undefined ||
      product === undefined ||
      wanted === undefined ||
      passes === undefined
      ? undefined
      : { ...base, area, method, product, wanted, passes, ...(setting !== undefined && { setting }) };
  }
  const list = door.run(() => expectList(record.mix, `${at}.mix`, "product")) ?? [];
  const mix = list.flatMap((item, i) => {
    const path = `${at}.mix[${i}]`;
    const fields = door.run(() => expectFields(item, ["product", "rate"], path, "a product with its rate"));
    const product = fields && door.run(() => namedProduct(products, fields.product, `${path}.product`));
    const rate = product && fields && door.run(() => taggedRate(fields.rate, product.id, `${path}.rate`));
    if (product !== undefined && product.formulation === undefined) {
      const expected = `a formulation of ${product.id} in products, for the loading order`;
      door.add({ code: "missing", path: `${path}.product`, got: "no formulation", expected });
    }
    if (
      product !== undefined &&
      list.findIndex((other) => (other as { product?: unknown } | null)?.product === product.id) !== i
    ) {
      door.add({
        code: "duplicate",
        path: `${path}.product`,
        got: shown(product.id),
        expected: "each product once",
      });
    }
    return product && rate ? [{ product, rate, path }] : [];
  });
  // A product that is itself at fault is told of where it stands, and leaves no mix to work out.
  return door.count() > before || area === undefined || mix.length < list.length
    ? undefined
    : { ...base, area, method, mix };
};

const expectPasses = (input: unknown, path: string): number => {
  if (input === undefined) return 1;
  const passes = expectNumber(input, path, { min: 1, max: 8 });
  return Number.isInteger(passes) ? passes : fail("range", path, input, "a whole number of passes");
};

/** Reads the treatments of a job; problems go to `door`. */
export const readTreatments = (
  input: unknown,
  site: ReadSite | undefined,
  products: JobProducts,
  door: Checks,
): readonly ReadTreatment[] => {
  const list = door.run(() => expectList(input, "treatments", "treatment")) ?? [];
  if (site === undefined) return [];
  const ids = new Set<unknown>();
  return list.flatMap((item, i) => {
    const at = `treatments[${i}]`;
    const treatment = readTreatment(item, at, site, products, door);
    const id = (item as { id?: unknown } | null)?.id;
    if (id !== undefined && ids.has(id)) {
      door.add({
        code: "duplicate",
        path: `${at}.id`,
        got: shown(id),
        expected: "an id that no other treatment has",
      });
    }
    ids.add(id);
    return treatment === undefined ? [] : [treatment];
  });
};
