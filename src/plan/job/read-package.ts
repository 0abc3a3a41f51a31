import {
  expectNumber,
  expectQuantity,
  expectRecord,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
  quantityOf,
  RatewrightError,
  toldBy,
} from "../../quantity/index.js";
import { type Formulation, formulationOf } from "../../tank/index.js";
import type { JobProduct } from "./job.js";

/** What a package or a packet holds. */
export type Held = Quantity<"mass", "none"> | Quantity<"volume", "none">;

/** The kind of product, for the loading order. */
export const formulated = (input: JobProduct["formulation"], path: string): Formulation =>
  typeof input === "object" && input !== null
    ? toldBy({ code: `${path}.code`, "options.scheme": `${path}.scheme` }, () =>
        formulationOf(input.code, { scheme: input.scheme }),
      )
    : toldBy({ code: path }, () => byCode(input as string));

/** A code of several meanings has its list beside it. */
const byCode = (code: string): Formulation => {
  try {
    return formulationOf(code);
  } catch (error) {
    const choices = error instanceof RatewrightError ? error.problems[0]?.choices : undefined;
    if (choices === undefined) throw error;
    const written = `{ "code": ${JSON.stringify(code)}, "scheme": "international" }`;
    return fail(
      "type",
      "code",
      code,
      `a code with one meaning, or the list that the label follows: ${written}`,
      {
        choices,
      },
    );
  }
};

/** What one packet holds; a size of what is in no packet is a slip. */
export const packetOf = (product: JobProduct, formulation: Formulation | undefined, path: string): Held => {
  if (formulation !== undefined && formulation !== "water-soluble packet")
    fail(
      "conflict",
      path,
      product.packetSize,
      `package; packetSize is for water-soluble packets, and this is ${formulation}`,
    );
  return heldBy(product.packetSize, product.form, path);
};

/** What one package holds. */
export const packageOf = (product: JobProduct, path: string): Held =>
  heldBy(product.package, product.form, path);

/** No package holds more than a thousand tonnes or cubic meters; what it holds is printed in its smallest measure. */
export const expectPackageSize = (
  held: Pick<Quantity<string, string>, "value" | "unit" | "of" | "dimension">,
  path: string,
): void => {
  // 1000 t are 1e12 mg: a larger number might not convert.
  if (held.value > 1e15 || numberIn(held, held.dimension === "mass" ? "t" : "m3") > 1000)
    outOfRange(path, held, { max: 1000, unit: held.dimension === "mass" ? "t" : "m3" }, "{} in one package");
};

const heldBy = (input: unknown, form: JobProduct["form"], path: string): Held => {
  const stated = expectRecord(input, path, "what one package holds");
  if (stated.value !== undefined) expectNumber(stated.value, `${path}.value`);
  const { dimension } = quantityOf(stated.value as number, stated.unit as string, "none", path);
  const measures = form === "dry" ? ["mass"] : ["volume", "mass"];
  const measure = measures.find((of) => of === dimension) ?? (measures[0] as string);
  const held = <const D extends "mass" | "volume">(dimension: D): Quantity<D, "none"> =>
    expectQuantity(stated, { dimension, of: "none", bound: "positive" }, path);
  const size = measure === "mass" ? held("mass") : held("volume");
  expectPackageSize(size, path);
  return size;
};
