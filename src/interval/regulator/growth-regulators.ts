import { type Citation, frozen, type QuantityJson } from "../../quantity/index.js";
import type { BaseTemperature } from "../degree-days/degree-day-model.js";

/** Two figures of one kind: the same twice where the source prints one. */
export type LowHigh = readonly [low: number, high: number];

/**
 * What a source found on how long a growth regulator lasts by degree-days. Plain JSON. What the source, as far as
 * it was read, does not state is `null`: a figure without its base or method is no interval that can be
 * counted, and a caller who supplies them states that.
 */
export interface RegulatorInterval {
  readonly id: string;
  /** The active ingredient, by its common name. */
  readonly active: string;
  readonly turf: string;
  /** The rate of active ingredient; `null` where it is not stated. */
  readonly rate: readonly QuantityJson[] | null;
  readonly method: "simple average" | null;
  readonly base: BaseTemperature | null;
  /** °C d from one application to the next; `null` where the source gives only a peak or an upper bound. */
  readonly interval: LowHigh | null;
  /** °C d to the strongest suppression. */
  readonly peak: LowHigh | null;
  /** °C d from which growth is faster than without the regulator. */
  readonly rebound: LowHigh | null;
  /** °C d until neither suppression nor rebound is left. */
  readonly duration: LowHigh | null;
  /** By how many percent clippings are less. */
  readonly suppressionPercent: LowHigh | null;
  readonly note: string;
  readonly source: Citation;
}

const abstract2009: Citation = /* @__PURE__ */ frozen({
  title:
    "Use of a growing degree model to schedule trinexapac-ethyl applications to creeping bentgrass golf putting greens",
  publisher: "ASA-CSSA-SSSA annual meetings abstract",
  year: 2009,
  where: "abstract",
});
const table: Citation = /* @__PURE__ */ frozen({
  title: "Growth regulators: directions for use",
  publisher: "article of a sports-turf supplier, after Kreuser and Soldat",
  where: "table by active ingredient, cool-season greens",
});
const guelph: Citation = /* @__PURE__ */ frozen({
  title:
    "Plant growth regulation and the rebound effect when prohexadione calcium is applied to fairway-height annual bluegrass and creeping bentgrass swards",
  publisher: "journal abstract, University of Guelph",
  where: "abstract",
});
const auburn: Citation = /* @__PURE__ */ frozen({
  title:
    "Developing a growing degree day model for trinexapac-ethyl applications on an ultradwarf bermudagrass putting green",
  publisher: "CSSA meeting abstract",
  year: 2017,
  where: "abstract",
});
const mississippi: Citation = /* @__PURE__ */ frozen({
  title:
    "Growing degree-day based plant growth regulator application on ultradwarf bermudagrass putting green",
  publisher: "state turfgrass association magazine (Mississippi State University)",
  year: 2019,
  where: "degree-day research section",
});

const ai = (value: number, active: string): QuantityJson => ({ value, unit: "kg/ha", of: `ai:${active}` });
const zero: BaseTemperature = { value: 0, unit: "°C" };
const cool = "creeping bentgrass or annual bluegrass green";
const secondary =
  "A secondary source; ranges run from the low to the high rate. The method of counting is not stated.";
const nothing = { interval: null, peak: null, rebound: null, duration: null, suppressionPercent: null };
const row = (
  active: string,
  figures: Pick<RegulatorInterval, "interval" | "duration" | "suppressionPercent">,
): RegulatorInterval => ({
  id: `${active}, cool-season green, table`,
  active,
  turf: cool,
  rate: null,
  method: null,
  base: zero,
  peak: null,
  rebound: null,
  ...figures,
  note: secondary,
  source: table,
});

/**
 * The published intervals of growth regulators by degree-days, each with its base and source as far as they were
 * read. The label comes first; an interval is for the turf, cut and rate at which it was found. None was
 * found for zoysiagrass, and none by degree-days for trinexapac-ethyl on Kentucky bluegrass.
 */
export const regulatorIntervals: readonly RegulatorInterval[] = /* @__PURE__ */ frozen([
  {
    ...nothing,
    id: "trinexapac-ethyl, bentgrass green, 2009",
    active: "trinexapac-ethyl",
    turf: "creeping bentgrass green",
    rate: [ai(0.05, "trinexapac-ethyl")],
    method: "simple average",
    base: zero,
    interval: [200, 200],
    rebound: [250, 300],
    suppressionPercent: [20, 30],
    note: "Every 100 or 200 °C d kept clippings 20 to 30 % lower; every 400, 800 °C d or 4 weeks gave 100, 98 and 104 % of the control.",
    source: abstract2009,
  },
  row("trinexapac-ethyl", { interval: [230, 230], duration: [800, 800], suppressionPercent: [20, 20] }),
  row("paclobutrazol", { interval: [280, 310], duration: [850, 950], suppressionPercent: [30, 50] }),
  row("flurprimidol", { interval: [210, 270], duration: [600, 800], suppressionPercent: [20, 30] }),
  row("prohexadione-calcium", { interval: [280, 280], duration: [840, 840], suppressionPercent: [25, 25] }),
  {
    ...nothing,
    id: "prohexadione-calcium, fairway",
    active: "prohexadione-calcium",
    turf: "annual bluegrass and creeping bentgrass fairway, 9 mm",
    rate: [0.28, 0.56, 0.84].map((value) => ai(value, "prohexadione-calcium")),
    method: null,
    base: null,
    rebound: [350, 350],
    note: "Rebound where the interval was longer than 350 and 10 days in a row brought more than 21.0 a day. The base is not stated in the abstract.",
    source: guelph,
  },
  {
    ...nothing,
    id: "trinexapac-ethyl, ultradwarf bermudagrass green, Auburn",
    active: "trinexapac-ethyl",
    turf: "ultradwarf bermudagrass green",
    rate: [ai(0.022, "trinexapac-ethyl")],
    method: null,
    base: null,
    interval: [200, 200],
    peak: [305, 314],
    note: "Peak after 14 days in May and 10 days in July, at 0.044 kg/ha; 100 at that rate harmed quality. The base is not stated in the abstract, and 15 a day for 14 days would be 210, not 305.",
    source: auburn,
  },
  {
    ...nothing,
    id: "trinexapac-ethyl, ultradwarf bermudagrass green, Mississippi",
    active: "trinexapac-ethyl",
    turf: "ultradwarf bermudagrass green",
    rate: null,
    method: null,
    base: { value: 10, unit: "°C" },
    interval: [220, 220],
    note: "A program of a trial, beside the same rate every week and half of it twice a week; not a recommendation that was read.",
    source: mississippi,
  },
]);

/** A full rate and the half-lives by degree-days that go with it, for `replacementDose`. */
export interface ReplacementHalfLife {
  readonly active: string;
  /** Full rate of the product of the source, in the ounces per acre that it prints. */
  readonly fullOuncesPerAcre: number;
  /** °C d: for steady suppression, and for a longer interval. */
  readonly tight: number;
  readonly long: number;
  readonly source: Citation;
}

const nebraska: Citation = /* @__PURE__ */ frozen({
  title: "How to guide PGR applications by growing degree days",
  publisher: "turf trade magazine, University of Nebraska research",
  year: 2021,
  where: "equation and parameters",
});

/** The half-lives of `replacementDose` as published. Base and method are not stated in what was read. By another source trinexapac-ethyl has 6.4 d at 64 °F and 3.1 d at 86 °F, which is 114 and 93 °C d above 0 °C: near to the tight figure at one temperature only. */
export const replacementHalfLives: readonly ReplacementHalfLife[] = /* @__PURE__ */ frozen([
  { active: "trinexapac-ethyl", fullOuncesPerAcre: 7, tight: 116, long: 175, source: nebraska },
  { active: "paclobutrazol", fullOuncesPerAcre: 16, tight: 160, long: 240, source: nebraska },
  { active: "prohexadione-calcium", fullOuncesPerAcre: 11, tight: 140, long: 210, source: nebraska },
]);
