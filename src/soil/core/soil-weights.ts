import { allOf, expectQuantity, fail, outOfRange, type Quantity } from "../../quantity/index.js";

/** A weight from the scale, of soil or of nothing in particular. */
export type SoilWeight = Quantity<"mass", "none"> | Quantity<"mass", "soil">;

/** A weight in grams, above zero. */
const gramsOf = (input: unknown, path: string, what: string): number => {
  if (input === undefined) return fail("missing", path, input, `${what}, such as quantity(298.8, "g")`);
  const weight = expectQuantity(input, { dimension: "mass", bound: "positive" }, path);
  return weight.of === "none" || weight.of === "soil"
    ? weight.in("g")
    : fail("substance/mismatch", path, weight, `${what}: a weight of soil`);
};

/** Takes the weights of a sample: net of the container, in grams. */
export const readWeights = (
  given: { readonly wet?: unknown; readonly dry?: unknown; readonly container?: unknown },
  needsWet: boolean,
): { readonly wet: number; readonly dry: number } => {
  const read = allOf({
    wet: () => (needsWet ? gramsOf(given.wet, "wet", "the weight as it was taken") : Number.NaN),
    dry: () => gramsOf(given.dry, "dry", "the weight after the oven"),
    container: () =>
      given.container === undefined ? 0 : gramsOf(given.container, "container", "the empty weight"),
  });
  allOf({
    container: () =>
      read.container < read.dry
        ? undefined
        : outOfRange("container", given.container, { below: read.dry, unit: "g" }, "{}, the dry weight"),
    wet: () =>
      !needsWet || read.wet >= read.dry
        ? undefined
        : outOfRange(
            "wet",
            given.wet,
            { min: read.dry, unit: "g" },
            "{}, the dry weight: are the two exchanged?",
          ),
  });
  return { wet: read.wet - read.container, dry: read.dry - read.container };
};
