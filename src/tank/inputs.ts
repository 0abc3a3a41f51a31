import { expectQuantity, fail, type Quantity } from "../quantity/index.js";

export type Share = Quantity<"1", "none">;

/** Takes finished spray per area, above zero. */
export const sprayRateOf = (input: unknown): Quantity<"volume/area", "spray"> =>
  expectQuantity(input, { dimension: "volume/area", of: "spray", bound: "positive" }, "sprayRate");

/** Takes a volume of finished spray. */
export const sprayOf = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative" = "positive",
): Quantity<"volume", "spray"> => expectQuantity(input, { dimension: "volume", of: "spray", bound }, path);

/** Takes a rate or an amount of the product with an id: `product` without an id is any, another id is another product. */
export const expectSameProduct = (of: string, id: string, path: string, got: unknown): void => {
  const own = `product:${id}`;
  if (of === "product" || of === own || of === `${own}/spray` || of === "product/spray") return;
  fail("substance/mismatch", path, got, `an amount or a rate of ${own}`);
};

/** The number of a quantity in a unit that is known only here. */
export const numberIn = (q: unknown, unit: string): number => (q as { in(unit: string): number }).in(unit);
