import { type TankCaution, tankCautions } from "../cautions.js";
import { formulations } from "../formulation/formulation.js";
import type { MixProduct } from "../partners/mix-product.js";
import type { LoadingAction } from "./loading-order-types.js";

const byCode: ReadonlyMap<string, TankCaution> = /* @__PURE__ */ new Map(
  /* @__PURE__ */ tankCautions.map((caution) => [caution.code, caution]),
);

const named = (...codes: readonly string[]): readonly TankCaution[] =>
  codes.map((code) => byCode.get(code) as TankCaution);

/** What can hurt at a step, from the cautions of mixing and loading. */
export const stepCautions = (action: LoadingAction, product?: MixProduct): readonly TankCaution[] => {
  if (action === "fill") return named("caution/backflow", "caution/stay-at-fill", "caution/empty-tank");
  if (action === "top up")
    return named("caution/backflow", "caution/stay-at-fill", "caution/container-rinse");
  if (action === "stop agitation" || action === "agitate") return named("caution/closed-tank");
  if (action === "shake") return named("caution/protective-equipment");
  if ((action !== "add" && action !== "premix") || product === undefined) return [];
  const { formulation } = product;
  if (formulation === "water-soluble packet") return named("caution/water-soluble-packet");
  const dry = formulations[formulation].form === "dry";
  return named("caution/protective-equipment", ...(dry ? ["caution/dry-powder"] : []));
};
