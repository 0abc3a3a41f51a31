import { fail } from "../../quantity/index.js";
import { type MixProduct, type WaterReport, type WaterTest, waterReport } from "../../tank/index.js";
import type { ReadSprayer } from "../job/read-machines.js";
import type { ReadProduct } from "../job/read-products.js";
import type { ReadSpray } from "../job/treatments.js";

/** A product as the loading order takes it, without its amount. */
export const inOrder = (product: ReadProduct, mix: ReadSpray["mix"], path: string): MixProduct => ({
  id: product.id,
  name: product.name,
  formulation: product.formulation ?? fail("missing", path, undefined, "a formulation"),
  ...withinMix(product, mix),
});

/** What the label says of other products counts only for those that are in this tank. */
const withinMix = (product: ReadProduct, mix: ReadSpray["mix"]) => {
  const here = (ids: readonly string[] | undefined): readonly string[] =>
    (ids ?? []).filter((id) => mix.some((other) => other.product.id === id));
  return {
    addBefore: here(product.addBefore),
    addAfter: here(product.addAfter),
    ...(product.labelNote && { labelNote: product.labelNote }),
    ...(product.lowRate && { lowRate: true }),
    ...(product.contains && { contains: product.contains }),
    ...(product.groups && { groups: product.groups }),
    ...(product.labelProhibits && { labelProhibits: product.labelProhibits }),
  };
};

const activeOf = ({ contents = [] }: ReadProduct): string | undefined => {
  const named = contents.map(({ of }) => /^a[ie]:([^/]+)/.exec(of)?.[1]).filter((name) => name !== undefined);
  return named.length === 1 ? named[0] : undefined;
};

/** What the water test means for the products of a mix. */
export const waterOf = (test: WaterTest, sprayer: ReadSprayer, mix: ReadSpray["mix"]): WaterReport =>
  waterReport({
    test,
    products: mix.map(({ product }) => {
      const active = activeOf(product);
      return {
        id: product.id,
        name: product.name,
        ...(product.contains && { contains: product.contains }),
        ...(active !== undefined && { active }),
      };
    }),
    ...(sprayer.timeToEmpty && { timeToEmpty: sprayer.timeToEmpty }),
  });
