import { described } from "../quantity/house.js";
import { expectQuantity, expectText, fail, outOfRange, type Quantity, toldAt } from "../quantity/index.js";
import { asFinishedSpray, type FinishedSpray, type MeasuredSpray } from "../spray/index.js";

export { eachOf, mostItems } from "../numeric/house.js";
export type { Share } from "../quantity/index.js";

/** Spray per area as it was wanted or measured: a quantity, an estimate of one, or the record of a calibration. */
export type SprayPerArea = MeasuredSpray<"volume/area", "spray"> | MeasuredSpray<"volume/area", "water">;

/**
 * Takes the volume of spray per area, more than zero: of spray, or of the water of a calibration, which is carried over
 * by the density of the spray or, where none is given, as heavy as water; the findings say so.
 */
export const applicationVolumeOf = (
  input: unknown,
  density?: unknown,
  path: string = "applicationVolume",
): FinishedSpray<"volume/area"> => {
  if (input === undefined) fail("missing", path, input, "a volume of spray per area, or a calibration");
  const found = toldAt(path, "measured", () =>
    asFinishedSpray(
      input as SprayPerArea,
      density === undefined ? {} : { density: density as Quantity<"mass/volume", "none"> },
    ),
  );
  return found.value.dimension === "volume/area"
    ? found
    : fail(
        "unit/mismatch",
        path,
        found.value,
        "a volume of spray per area; a flow becomes one by applicationVolume()",
      );
};

/** Takes a volume of finished spray. */
export const sprayOf = (
  input: unknown,
  path: string,
  bound: "positive" | "non-negative" = "positive",
): Quantity<"volume", "spray"> => expectQuantity(input, { dimension: "volume", of: "spray", bound }, path);

/** Takes a rate or an amount of the product with an id: `product` without an id is any, another id is another product. */
export const expectSameProduct = (of: string, id: unknown, path: string, got: unknown): void => {
  // Without an id, which is a problem of its own, there is nothing to hold it against.
  if (typeof id !== "string" || id.trim() === "") return;
  const own = `product:${id}`;
  if (of === "product" || of === own || of === `${own}/spray` || of === "product/spray") return;
  fail("substance/mismatch", path, got, `an amount or a rate of ${own}`);
};

/** The longest id or name of a product that is taken. */
const longest = 200;

/** Takes a text of bounded length. */
export const textOf = (input: unknown, path: string, expected: string, most: number = longest): string => {
  if (input === null || (typeof input === "string" && input.trim() === ""))
    fail("missing", path, input, expected);
  const text = expectText(input, path, expected);
  return text.length > most
    ? outOfRange(path, described(`a text of ${text.length} characters`), { max: most, count: "characters" })
    : text;
};

/** Takes the id of a product that no other of its list has; it goes into `seen`. */
export const newIdOf = (input: unknown, path: string, seen: Set<string>): string => {
  const id = textOf(input, path, "an id of the product");
  if (seen.has(id)) fail("duplicate", path, id, "an id that no other product has");
  seen.add(id);
  return id;
};
