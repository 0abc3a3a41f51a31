import type { MonthDay, TemperatureSensor } from "../../calendar/index.js";
import { type Citation, fail, frozen } from "../../quantity/index.js";
import type { BaseTemperature } from "../degree-days/degree-day-model.js";
import type { LowHigh } from "../regulator/growth-regulators.js";

/**
 * A window in degree-days in which something emerges or is best treated, as its source prints it. Plain
 * JSON. What the source does not state, as far as it was read, is `null`: then the figure cannot be
 * counted without saying what is assumed.
 */
export interface EventWindow {
  readonly id: string;
  readonly event: string;
  readonly from: number;
  /** `null` where the source gives a beginning only. */
  readonly to: number | null;
  /** `null` where the page does not say on which scale. */
  readonly unit: "°C d" | "°F d" | null;
  readonly base: BaseTemperature | null;
  readonly sensor: TemperatureSensor | null;
  readonly start: MonthDay | null;
  readonly note: string;
  readonly source: Citation;
}

const fidanza: Citation = /* @__PURE__ */ frozen({
  title: "Degree-days for predicting smooth crabgrass emergence in cool-season turfgrasses",
  publisher: "Crop Science 36(4), 990-996 (Fidanza et al.)",
  year: 1996,
  where: "abstract",
});
const virginia: Citation = /* @__PURE__ */ frozen({
  title: "Turf: crabgrass germination and preemergence programs",
  publisher: "Virginia Tech / University of Delaware county extension",
  year: 2008,
});
const wisconsin: Citation = /* @__PURE__ */ frozen({
  title: "Crabgrass pre-emergence timer",
  publisher: "University of Wisconsin turf program",
  where: "suggested timing",
  url: "https://turf.wisc.edu/growing-degree-day-maps/crabgrass-pre-emergence-timer/",
});
const ohio: Citation = /* @__PURE__ */ frozen({
  title: "Growing degree days in Ohio",
  publisher: "The Ohio State University BYGL",
  where: "pest highlights",
  url: "https://bygl.osu.edu/node/1235",
});
const rutgers: Citation = /* @__PURE__ */ frozen({
  title: "Annual bluegrass seedhead suppression",
  publisher: "Rutgers University turf blog",
  where: "GDD paragraph",
  url: "https://turf.rutgers.edu/blog/annual-bluegrass-seedhead-suppression",
});
const branham: Citation = /* @__PURE__ */ frozen({
  title:
    "Growth suppression of Kentucky bluegrass using plant growth regulators and degree day application timing",
  publisher: "Agronomy Journal 81(5), 749-752 (Branham and Danneberger)",
  year: 1989,
  where: "abstract",
});
const cornell: Citation = /* @__PURE__ */ frozen({
  title: "Dandelion control recommendation maps: about",
  publisher: "Northeast Regional Climate Center, Cornell",
  url: "http://www.nrcc.cornell.edu/industry/grass/html/dandelion.html",
});

const c12: BaseTemperature = { value: 12, unit: "°C" };
const f32: BaseTemperature = { value: 32, unit: "°F" };
const f50: BaseTemperature = { value: 50, unit: "°F" };
const unknown = { unit: null, base: null, sensor: null, start: null } as const;

/** Published windows of emergence and treatment. To be inside one is no proof that it is the right day. */
export const eventWindows: readonly EventWindow[] = /* @__PURE__ */ frozen([
  {
    id: "smooth crabgrass, first emergence",
    event: "first emergence of smooth crabgrass",
    from: 42,
    to: 78,
    unit: "°C d",
    base: c12,
    sensor: "soil at 2.5 cm",
    start: null,
    note: "Seedlings were counted from 1 April; the day from which degree days count is not in the abstract.",
    source: fidanza,
  },
  {
    id: "smooth crabgrass, major emergence",
    event: "major emergence of smooth crabgrass",
    from: 140,
    to: 230,
    unit: "°C d",
    base: c12,
    sensor: "soil at 2.5 cm",
    start: null,
    note: "Large numbers need a mean soil temperature above 22.8 °C.",
    source: fidanza,
  },
  {
    id: "crabgrass, Virginia",
    event: "crabgrass begins to emerge",
    from: 70,
    to: 140,
    unit: "°F d",
    base: f50,
    sensor: "air",
    start: null,
    note: "Stated for air above 50 °F. First emergence by soil at 2.5 cm above 12 °C is 42 to 78 °C d, or 76 to 140 °F d: nearly the same numbers, of another sensor and base.",
    source: virginia,
  },
  {
    id: "crabgrass, pre-emergence application",
    event: "application of a pre-emergent against crabgrass",
    from: 250,
    to: 500,
    unit: "°F d",
    base: f32,
    sensor: "air",
    start: "02-15",
    note: "The page gives the window; base and start are those of Michigan State University for it.",
    source: wisconsin,
  },
  {
    ...unknown,
    id: "smooth crabgrass, Ohio",
    event: "first emergence of smooth crabgrass",
    from: 155,
    to: null,
    note: "Base and start are not on the page.",
    source: ohio,
  },
  {
    ...unknown,
    id: "large crabgrass, Ohio",
    event: "first emergence of large crabgrass",
    from: 211,
    to: null,
    note: "Base and start are not on the page.",
    source: ohio,
  },
  {
    id: "annual bluegrass, seedhead suppression",
    event: "application against seedheads of annual bluegrass",
    from: 200,
    to: 500,
    unit: "°F d",
    base: f32,
    sensor: "air",
    start: "02-15",
    note: "For ethephon with trinexapac-ethyl, two or three times. Not validated in the Northeast, says the source.",
    source: rutgers,
  },
  {
    ...unknown,
    id: "Kentucky bluegrass, seedhead suppression",
    event: "application of mefluidide or amidochlor against seedheads of Kentucky bluegrass",
    from: 25,
    to: 125,
    note: "More than 86 % control inside; at 150 it was 31 % with mefluidide and 24 % with amidochlor.",
    source: branham,
  },
  {
    id: "dandelion, ester",
    event: "2,4-D and dichlorprop as ester on dandelion, good control from",
    from: 145,
    to: null,
    unit: "°F d",
    base: f50,
    sensor: "air",
    start: null,
    note: "Below 130 control was under 60 %.",
    source: cornell,
  },
  {
    id: "dandelion, amine",
    event: "2,4-D and dichlorprop as amine on dandelion, good control from",
    from: 180,
    to: null,
    unit: "°F d",
    base: f50,
    sensor: "air",
    start: null,
    note: "Below 150 it was unacceptable.",
    source: cornell,
  },
]);

/** A soil temperature at which something begins or is done, at the depth at which its source measures. */
export interface SoilTemperatureThreshold {
  readonly event: string;
  readonly temperature: LowHigh;
  readonly unit: "°F";
  readonly sensor: TemperatureSensor;
  readonly source: Citation;
}

const georgia: Citation = /* @__PURE__ */ frozen({
  title: "Importance of soil temps",
  publisher: "Georgia gardening column after turf extension",
  where: "list at 4-inch depth",
});
const at4 = (event: string, low: number, high = low): SoilTemperatureThreshold => ({
  event,
  temperature: [low, high],
  unit: "°F",
  sensor: "soil at 4 in",
  source: georgia,
});

/** Published soil temperatures. The depth belongs to the figure: sources at 1 in and 4 in differ. */
export const soilTemperatureThresholds: readonly SoilTemperatureThreshold[] = /* @__PURE__ */ frozen([
  at4("crabgrass germination", 53, 58),
  at4("goosegrass and spurge germination", 60, 65),
  at4("overseeding bermudagrass with ryegrass, planting warm-season grass", 74),
  at4("spring root decline of warm-season grass", 64),
  at4("dormancy of warm-season grass begins", 50),
]);

const named = <T extends { readonly event: string }>(list: readonly T[], word: string): readonly T[] => {
  if (typeof word !== "string") return fail("type", "word", word, "a word of the event");
  return list.filter(({ event }) => event.toLowerCase().includes(word.trim().toLowerCase()));
};

/**
 * The published windows of an event whose description contains a word. Sources differ in base, sensor and
 * start: two windows for one weed are two models.
 *
 * @throws RatewrightError `type`
 *
 * @example
 * ```ts
 * import { eventWindowsFor } from "ratewright";
 * eventWindowsFor("first emergence of smooth crabgrass").map(({ from, sensor }) => [from, sensor]);
 * // => [[42, "soil at 2.5 cm"], [155, null]]
 * ```
 */
export const eventWindowsFor = (word: string): readonly EventWindow[] => named(eventWindows, word);

/**
 * The published soil temperatures of an event whose description contains a word, each with its depth.
 *
 * @throws RatewrightError `type`
 *
 * @example
 * ```ts
 * import { soilTemperaturesFor } from "ratewright";
 * soilTemperaturesFor("goosegrass")[0]?.temperature; // => [60, 65]
 * ```
 */
export const soilTemperaturesFor = (word: string): readonly SoilTemperatureThreshold[] =>
  named(soilTemperatureThresholds, word);
