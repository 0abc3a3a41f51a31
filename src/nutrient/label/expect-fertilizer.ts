import { fail } from "../../quantity/index.js";
import type { Fertilizer } from "./fertilizer.js";

/** Takes a record that `fertilizer` made, or what JSON left of one, or throws with its path. */
export const expectFertilizer = <P extends Pick<Fertilizer, "type" | "id" | "analysis">>(
  product: P,
  path: string,
): P =>
  product?.type === "fertilizer" && typeof product.analysis === "object"
    ? product
    : fail("type", path, product, "a record made by fertilizer");

/** Two records under one id that say different things of it; the same record twice is none. */
export const isOtherRecordOf = (product: Fertilizer, other: Fertilizer): boolean =>
  product.id === other.id && product !== other && labelText(product) !== labelText(other);

/** What a label says, in whatever order a store gives the keys back. */
const labelText = ({ form, analysis, nitrogen, slowNitrogen }: Fertilizer): string =>
  JSON.stringify([form, analysis.percent, nitrogen, slowNitrogen], (_, value: unknown) =>
    typeof value === "object" && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

/** Refuses an entry of a list whose id another product before it has. */
export const refuseTwin = (
  list: readonly { readonly product: Fertilizer }[],
  i: number,
  path: string,
): void => {
  const product = (list[i] as { readonly product: Fertilizer }).product;
  const twin = list.findIndex(
    (one, k) => k < i && one?.product?.analysis && isOtherRecordOf(one.product, product),
  );
  if (twin < 0) return;
  const text = `an id of its own: ${path}[${twin}] has another product under it`;
  fail("duplicate", `${path}[${i}].product.id`, product.id, text);
};
