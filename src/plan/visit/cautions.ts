import { frozen } from "../../quantity/index.js";
import { formulations, tankCautions } from "../../tank/index.js";
import type { ReadSprayer } from "../job/read-machines.js";
import type { ReadTreatment } from "../job/treatments.js";
import { afterRules, backRules, type Scene, stopRules, type WorkOrderCaution } from "./caution-rules.js";

export type { WorkOrderCaution } from "./caution-rules.js";

/** The line that stands at a step, for the cautions of mixing and loading that have a step. */
const lines: Readonly<Record<string, string>> = frozen({
  "caution/backflow": "Air gap at the hose; stay with the fill.",
  "caution/dry-powder": "Weigh it; pour low, out of the wind; no dust.",
  "caution/water-soluble-packet": "Dry gloves, whole packets, never cut.",
  "caution/container-rinse": "Container empty? Triple-rinse it into the tank.",
});

/** Cautions of mixing that say the same as one of this room, or that the label comes first. */
const saidElsewhere = ["caution/label-first"];

const applies: Readonly<Record<string, (scene: Scene) => boolean>> = {
  "caution/dry-powder": ({ dryInTank }) => dryInTank,
  "caution/water-soluble-packet": ({ packets }) => packets,
  "caution/closed-tank": ({ largeTank }) => largeTank,
  "caution/pollinators": ({ maybe }) =>
    maybe("insecticide") ||
    maybe("fungicide") ||
    maybe("pre-emergent herbicide") ||
    maybe("post-emergent herbicide"),
};

const sceneOf = (treatments: readonly ReadTreatment[], sprayer: ReadSprayer | undefined): Scene => {
  const sprayed = treatments.flatMap((t) =>
    t.method === "spray" ? t.mix.map(({ product }) => product) : [],
  );
  const products = treatments.flatMap((t) =>
    t.method === "spread" ? [t.product] : t.mix.map(({ product }) => product),
  );
  return {
    spread: treatments.some(({ method }) => method === "spread"),
    spray: sprayed.length > 0,
    mixed: treatments.some((t) => t.method === "spray" && t.mix.length > 1),
    dryInTank: sprayed.some(
      ({ form, formulation }) =>
        formulation !== "water-soluble packet" &&
        (form === "dry" || (formulation !== undefined && formulations[formulation].form === "dry")),
    ),
    packets: sprayed.some(({ formulation }) => formulation === "water-soluble packet"),
    // That nobody leans or climbs into a tank of less than 50 gal: common practice, no source.
    largeTank: (sprayer?.tank.in("gal") ?? 0) >= 50,
    wateringNotStated: treatments.some((t) => t.method === "spread" && t.product.wateringIn === undefined),
    rainFreeNotStated: sprayed.some(({ wateringIn }) => wateringIn === undefined),
    maybe: (use) => products.some((product) => product.use === undefined || product.use === use),
    used: (use) => products.some((product) => product.use === use),
  };
};

/** The cautions that go with what is done, and none that do not apply. */
export const cautionsFor = (
  treatments: readonly ReadTreatment[],
  sprayer: ReadSprayer | undefined,
): readonly WorkOrderCaution[] => {
  const scene = sceneOf(treatments, sprayer);
  const own = [...stopRules, ...afterRules, ...backRules].filter((rule) => rule.applies(scene));
  const ofMixing = scene.spray
    ? tankCautions.filter(({ code }) => !saidElsewhere.includes(code) && (applies[code]?.(scene) ?? true))
    : tankCautions.filter(
        ({ code }) => code === "caution/no-food-containers" || code === "caution/emergency",
      );
  return [
    ...own.map(({ code, text, source, place }): WorkOrderCaution => ({ code, text, source, place })),
    ...ofMixing.map(({ code, text, source }): WorkOrderCaution => {
      const line = lines[code];
      return line === undefined
        ? { code, text, source, place: "back" }
        : { code, text, source, place: "step", line };
    }),
  ];
};
