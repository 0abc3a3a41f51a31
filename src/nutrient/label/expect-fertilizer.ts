import { fail } from "../../quantity/index.js";
import { type Fertilizer, fertilizer, isRead } from "./fertilizer.js";

/** Takes a record that `fertilizer` made, or reads what JSON left of one like a label, or throws with its path. */
export const expectFertilizer = <Id extends string>(
  product: Fertilizer<Id>,
  path: string,
): Fertilizer<Id> => {
  if (isRead(product)) return product;
  if (product?.type !== "fertilizer") {
    const byVolume = (product as { readonly type?: unknown } | undefined)?.type === "liquid-fertilizer";
    const way = "; with a density, analysisByWeight({ perVolume, density }) makes the analysis of one";
    return fail("type", path, product, `a record made by fertilizer(...)${byVolume ? way : ""}`);
  }
  return fertilizer(product, path);
};

/** Takes a fertilizer that can be weighed out: a liquid has its density. */
export const expectWeighed = <Id extends string>(product: Fertilizer<Id>, path: string): Fertilizer<Id> => {
  const read = expectFertilizer(product, path);
  if (read.form === "liquid" && read.density === undefined) {
    const way = "the density of a liquid; liquidProductRate(target, product) is by volume";
    fail("missing", `${path}.density`, undefined, way);
  }
  return read;
};

/** Two records under one id that say different things of it; the same record twice is none. */
export const isOtherRecordOf = (product: Fertilizer, other: Fertilizer): boolean =>
  product.id === other.id && product !== other && labelText(product) !== labelText(other);

/** What a label says, in whatever order a store gives the keys back. */
const labelText = ({ form, analysis, nitrogen, slowNitrogen }: Fertilizer): string =>
  JSON.stringify([form, analysis.percent, nitrogen, slowNitrogen], (_, value: unknown) =>
    Object(value) === value && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value as object).sort())
      : value,
  );
