import { fail } from "../quantity/index.js";
import type { Fertilizer } from "./fertilizer.js";

/** Takes a record that `fertilizer` made, or what JSON left of one, or throws with its path. */
export const expectFertilizer = <P extends Pick<Fertilizer, "type" | "id" | "analysis">>(
  product: P,
  path: string,
): P =>
  product?.type === "fertilizer" && typeof product.analysis === "object"
    ? product
    : fail("type", path, product, "a record made by fertilizer");
