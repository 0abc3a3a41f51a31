import type { MonthDay, TemperatureSensor } from "../../calendar/index.js";
import type { BaseTemperature, DegreeDayMethod, UpperCutoff } from "../../interval/index.js";
import { type Citation, fail, frozen } from "../../quantity/index.js";

/**
 * A number of degree-days at which a turf insect does something, as its source prints it. Plain JSON. What the page that
 * was read does not state is `null`: then it cannot be counted without saying what is assumed.
 */
export interface InsectTarget {
  readonly id: string;
  readonly insect: string;
  readonly event: string;
  readonly from: number;
  /** `null` where the source gives one number. */
  readonly to: number | null;
  readonly unit: "°C d" | "°F d" | null;
  readonly method: DegreeDayMethod | null;
  readonly base: BaseTemperature | null;
  /** `"none"` where the source counts without an upper threshold. */
  readonly upper: BaseTemperature | "none" | null;
  readonly cutoff: UpperCutoff | null;
  readonly sensor: TemperatureSensor | null;
  readonly start: MonthDay | null;
  readonly region: string;
  readonly note: string;
  readonly source: Citation;
}

const unsaid = {
  unit: null,
  method: null,
  base: null,
  upper: null,
  cutoff: null,
  sensor: null,
  start: null,
} as const;
const weevil = "annual bluegrass weevil";
const billbug = "billbugs";

const massachusetts: Citation = /* @__PURE__ */ frozen({
  title: "Management updates: annual bluegrass weevils",
  publisher: "University of Massachusetts Extension, turf program",
  year: 2018,
  where: "2 May 2018",
  url: "https://ag.umass.edu/turf/management-updates-may-2-2018",
});
const massachusetts2020: Citation = /* @__PURE__ */ frozen({
  title: "Management updates: spring insect news",
  publisher: "University of Massachusetts Extension, turf program",
  year: 2020,
  where: "4 June 2020",
  url: "https://ag.umass.edu/turf/management-updates-jun-4-2020",
});
const pennsylvania: Citation = /* @__PURE__ */ frozen({
  title: "Be on the lookout for annual bluegrass weevil adults",
  publisher: "Penn State turfgrass program",
  year: 2010,
  where: "5 April 2010",
  url: "http://psuturf.com/2010/04/be-on-the-lookout-for-annual-bluegrass-weevil-adults/",
});
const iowa: Citation = /* @__PURE__ */ frozen({
  title: "Japanese beetles begin emergence",
  publisher: "Iowa State University, integrated crop management",
  year: 2015,
  where: "as a research index repeats it",
  url: "https://ask.orkg.org/en/item/38929467/Japanese-Beetles-Begin-Emergence",
});
const utah: Citation = /* @__PURE__ */ frozen({
  title: "Kill billbug: improving a predictive model to time management in the Intermountain West",
  publisher: "ASA, CSSA and SSSA annual meeting, paper 217-2",
  year: 2015,
  where: "abstract",
  url: "https://scisoc.confex.com/scisoc/2015am/webprogram/Paper92769.html",
});

const utahModel = {
  unit: "°C d",
  method: null,
  base: { value: 5, unit: "°C" },
  upper: null,
  cutoff: null,
  sensor: null,
  start: "01-13",
  region: "Intermountain West (Utah)",
  source: utah,
} as const;

/**
 * Published targets of turf insects in degree-days. A target belongs to its model and region: to be inside one is a reason
 * to scout, not to treat.
 *
 * Left out: Japanese beetle in Minnesota (simple average, 15 to 21.7 °C, from 1 January, for 10 % of the trap catch), whose sum
 * stands in the paper and was not read; masked chafers in Kentucky (threshold 10.8 °C), for the same reason.
 */
export const insectTargets: readonly InsectTarget[] = /* @__PURE__ */ frozen([
  {
    ...unsaid,
    id: "annual bluegrass weevil, adults leave shelter",
    insect: weevil,
    event: "adults begin to leave the places where they spent the winter",
    from: 100,
    to: 120,
    region: "Pennsylvania",
    note: "Base and start are not on the page. Forsythia at full bloom to half gold, half green goes with it.",
    source: pennsylvania,
  },
  {
    ...unsaid,
    id: "annual bluegrass weevil, application against adults",
    insect: weevil,
    event: "target for an application against adults",
    from: 125,
    to: 150,
    region: "southern New England",
    note: "Base and start are not on the page. It often coincides with forsythia half green, half gold.",
    source: massachusetts,
  },
  {
    ...unsaid,
    id: "annual bluegrass weevil, larvae of the third instar",
    insect: weevil,
    event: "larvae on average between the second and third instar",
    from: 400,
    to: null,
    region: "Massachusetts and northern Connecticut",
    note: "An observation of one spring, 2020: mean instars of 2.6 to 2.8. Base and start are not on the page.",
    source: massachusetts2020,
  },
  {
    ...unsaid,
    id: "Japanese beetle, adults",
    insect: "Japanese beetle",
    event: "adults emerge, from the first to the last",
    from: 1030,
    to: 2150,
    unit: "°F d",
    base: { value: 50, unit: "°F" },
    region: "Iowa",
    note: "Printed as about 1,030 to around 2,150. Method, upper threshold and start are not in the copy that was read.",
    source: iowa,
  },
  {
    ...unsaid,
    id: "bluegrass billbug, first adults, eastern model",
    insect: billbug,
    event: "first adults",
    from: 155,
    to: 195,
    unit: "°C d",
    base: { value: 10, unit: "°C" },
    start: "03-01",
    region: "eastern United States",
    note: "As the abstract states the older model. In Utah adults came several weeks before it, at 4 to 15.",
    source: utah,
  },
  {
    ...utahModel,
    id: "billbugs, first adults, Utah",
    insect: billbug,
    event: "first adults",
    from: 39,
    to: 111,
    note: "A complex of bluegrass, hunting and Rocky Mountain billbug.",
  },
  {
    ...utahModel,
    id: "billbugs, 30 % of adults, Utah",
    insect: billbug,
    event: "30 % of the adults have emerged",
    from: 459,
    to: 484,
    note: "A complex of bluegrass, hunting and Rocky Mountain billbug.",
  },
  {
    ...utahModel,
    id: "billbugs, most adults, Utah",
    insect: billbug,
    event: "peak of adult activity",
    from: 768,
    to: 838,
    note: "Larvae, which do the damage, were most numerous two weeks later.",
  },
]);

/**
 * The published targets of an insect whose name or event contains a word. Two for one insect are two models.
 *
 * @throws RatewrightError `type`
 *
 * @example
 * ```ts
 * import { insectTargetsFor } from "ratewright";
 * insectTargetsFor("billbug").map(({ from, to }) => [from, to]); // => [[155, 195], [39, 111], [459, 484], [768, 838]]
 * ```
 */
export const insectTargetsFor = (word: string): readonly InsectTarget[] => {
  if (typeof word !== "string") return fail("type", "word", word, "a word of the insect or the event");
  // Beetles are asked for as often as a beetle.
  const wanted = word
    .trim()
    .toLowerCase()
    .replace(/(..)s$/, "$1");
  return insectTargets.filter(({ insect, event }) => `${insect} ${event}`.toLowerCase().includes(wanted));
};
