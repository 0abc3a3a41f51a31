import type { Caution } from "../../quantity/index.js";
import { tankCautions } from "../../tank/index.js";

const common = "common practice, no source";

const always: readonly Caution[] = [
  {
    code: "caution/label-first",
    text: "The label is the law and wins over every figure here. Local codes, fertilizer ordinances and licensed practice come before it all. This sheet computes; it gives no leave to apply.",
    source: common,
  },
  {
    code: "caution/re-entry",
    text: "Keep people and animals off as long as the labels say, counted from the end of the application, and post signs where that is asked for.",
    source: common,
  },
];

const spread: readonly Caution[] = [
  {
    code: "caution/hard-surfaces",
    text: "Sweep granules off paths, drives and drains back on to the turf: what lies on a hard surface washes into the storm water.",
    source: common,
  },
  {
    code: "caution/water-bodies",
    text: "Keep the setback from ponds, streams and drains that local rules state, and do not spread on frozen or waterlogged ground or before heavy rain.",
    source: common,
  },
  {
    code: "caution/spreader-check",
    text: "The rate is a target: check what the spreader really puts down over a known area before the first full pass.",
    source: common,
  },
];

const spray: readonly Caution[] = [
  {
    code: "caution/drift",
    text: "Spray only in the wind, and with the droplets, that the labels ask for; stop when the wind turns to people, water or plants that must not be hit. Still air at dawn or dusk can be an inversion.",
    source: common,
  },
  {
    code: "caution/left-over-spray",
    text: "Mix no more than the area needs. What is left, and the rinse water, goes on a site that the labels name, within their rates; never into a drain.",
    source: common,
  },
  {
    code: "caution/empty-containers",
    text: "Rinse empty containers three times into the tank as you fill it, or as the label says, and keep them from any other use.",
    source: common,
  },
];

/** The cautions that go with what is done. */
export const cautionsFor = (methods: readonly ("spread" | "spray")[]): readonly Caution[] => {
  const list: Caution[] = [...always];
  if (methods.includes("spread")) list.push(...spread);
  if (methods.includes("spray")) {
    list.push(...spray);
    for (const { code, text, source, when } of tankCautions) {
      if (when !== "water-soluble packet" && !list.some((caution) => caution.code === code))
        list.push({ code, text, source });
    }
  }
  return list;
};
