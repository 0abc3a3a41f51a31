import { type Caution, type Citation, frozen } from "../../quantity/index.js";
import type { ReadProduct } from "../job/read-products.js";

/** A caution of a work order, and where on the sheet it stands. */
export interface WorkOrderCaution extends Caution {
  /** On top as a condition to stop, at its step with its text on the back, after the work, or on the back alone. */
  readonly place: "stop" | "step" | "after" | "back";
  /** One line for the step that it belongs to. */
  readonly line?: string;
}

/** What of a visit decides which cautions apply. */
export interface Scene {
  readonly spread: boolean;
  readonly spray: boolean;
  readonly mixed: boolean;
  readonly dryInTank: boolean;
  readonly packets: boolean;
  readonly largeTank: boolean;
  /** Whether the job leaves out what a label says of water: of what is spread, and of what is sprayed. */
  readonly wateringNotStated: boolean;
  readonly rainFreeNotStated: boolean;
  /** Whether a product is used as this, or the job does not say what it is used as. */
  readonly maybe: (use: NonNullable<ReadProduct["use"]>) => boolean;
  readonly used: (use: NonNullable<ReadProduct["use"]>) => boolean;
}

/** A caution, and when it applies. */
export interface CautionRule extends WorkOrderCaution {
  readonly applies: (scene: Scene) => boolean;
}

const common = "common practice, no source";

const wind: Citation = /* @__PURE__ */ frozen({
  title: "Evaluate the Weather",
  publisher: "Pesticide Environmental Stewardship",
  where:
    "Wind: no wind may mean a temperature inversion; watch speed and direction, stop when they turn unfavorable",
  url: "http://pesticidestewardship.org/drift/Pages/EvaluatetheWeatherConditions.aspx",
});
const cleanOut: Citation = /* @__PURE__ */ frozen({
  title: "Q&A with Dr. Grady Miller: Sprayer Clean-out",
  publisher: "Sports Field Management",
  year: 2022,
  where: "herbicide left in the tank killed the ryegrass that was sprayed with fertilizer next",
  url: "https://sportsfieldmanagementonline.com/2022/02/01/qa-with-dr-grady-miller-sprayer-clean-out/13426/",
});
const storage: Citation = /* @__PURE__ */ frozen({
  title: "Pesticide Storage",
  publisher: "University of Georgia, Pesticide Safety Education Program",
  url: "https://psep.uga.edu/pesticide-safety/pesticide-storage/",
});
const jar: Citation = /* @__PURE__ */ frozen({
  title: "Using a Jar Test, Utah Pests News",
  publisher: "Utah State University Extension",
  year: 2012,
  where: "winter, list 1-9",
});

const sweeping: Citation = /* @__PURE__ */ frozen({
  title: "Livable Lawns, step 5: sweep excess fertilizer and clippings off sidewalks and driveways",
  publisher: "Delaware Livable Lawns",
  url: "https://www.delawarelivablelawns.org/seven-steps/step-5-be-sure-to-sweep-excess-fertilizer-and-lawn-clippings-off-your-sidewalks-and-driveways",
});
const bloom: Citation = /* @__PURE__ */ frozen({
  title:
    "Pollinator Protection in Turfgrass (after Best Management Practices for Turf Care and Pollinator Conservation)",
  publisher: "University of Illinois Extension",
  year: 2017,
  where:
    "issue 17: mow the flower heads of weeds before treatment, or after it where the label bars mowing first",
  url: "http://hyg.ipm.illinois.edu/article.php?id=955",
});

const always = (): boolean => true;
const ifSpread = ({ spread }: Scene): boolean => spread;
const ifSpray = ({ spray }: Scene): boolean => spray;

/** On top: what stops the work. */
export const stopRules: readonly CautionRule[] = [
  {
    code: "stop/label",
    place: "stop",
    applies: always,
    text: "a label in your hand differs from this sheet (the label wins);",
    source: common,
  },
  {
    code: "stop/air",
    place: "stop",
    applies: ifSpray,
    text: "the air is dead calm (often a temperature inversion);",
    source: wind,
  },
  {
    code: "stop/wind",
    place: "stop",
    applies: ifSpray,
    text: "the wind is over the label's limit, or blows toward people, water or sensitive plants;",
    source: wind,
  },
  {
    code: "stop/ground",
    place: "stop",
    applies: always,
    text: "heavy rain is due, or the ground is frozen or waterlogged;",
    source: common,
  },
  {
    code: "stop/stress",
    place: "stop",
    applies: always,
    text: "the turf is wilting, or under heat or drought stress;",
    source: common,
  },
  {
    code: "stop/bloom",
    place: "stop",
    applies: ({ maybe }) => maybe("insecticide"),
    text: "weeds are in bloom or bees are at work: insecticides only as the label says;",
    source: bloom,
  },
  {
    code: "stop/last-product",
    place: "stop",
    applies: ifSpray,
    text: "nobody knows what was in the sprayer last, or that it is clean;",
    source: cleanOut,
  },
  {
    code: "stop/jar-test",
    place: "stop",
    applies: ({ mixed }) => mixed,
    text: "the jar test clumps, curdles, separates, foams or heats up.",
    source: jar,
  },
];

/** After the work. */
export const afterRules: readonly CautionRule[] = [
  {
    code: "caution/re-entry",
    place: "after",
    applies: always,
    text: "Keep people and pets off until the label's re-entry time has passed, counted from the end. Post signs where required.",
    source: common,
  },
  {
    code: "caution/hard-surfaces",
    place: "after",
    applies: ifSpread,
    text: "Sweep or blow granules off walks, drives and gutters onto the turf.",
    source: sweeping,
  },
  {
    code: "caution/watering-in",
    place: "after",
    applies: ({ wateringNotStated }) => wateringNotStated,
    text: "Water in when and as much as the label says.",
    source: common,
  },
  {
    code: "caution/rain-free",
    place: "after",
    applies: ({ rainFreeNotStated }) => rainFreeNotStated,
    text: "Irrigation off for the label's rain-free time, unless it says to water in.",
    source: common,
  },
  {
    code: "caution/mowing-after",
    place: "after",
    applies: ({ used }) => used("growth regulator") || used("post-emergent herbicide"),
    text: "Do not mow until the label's waiting time for uptake is over.",
    source: common,
  },
  {
    code: "caution/left-over-spray",
    place: "after",
    applies: ifSpray,
    text: "Leftover spray and rinsate: on a labeled site, at or below the label rate, never into a drain. Clean out the sprayer (back).",
    source: common,
  },
  {
    code: "caution/storage",
    place: "after",
    applies: always,
    text: "Leftover product: original container, label intact; lock the store.",
    source: storage,
  },
];

/** On the back. */
export const backRules: readonly CautionRule[] = /* @__PURE__ */ frozen([
  {
    code: "caution/label-first",
    place: "back",
    applies: always,
    text: "The label is the law and overrides every figure here, as do local rules and licensed practice. This sheet is arithmetic; it does not authorize an application.",
    source: common,
  },
  {
    code: "caution/water-bodies",
    place: "back",
    applies: always,
    text: "Keep the setback that the label or local rules require from ponds, streams, wells and drains.",
    source: common,
  },
  {
    code: "caution/wet-leaf",
    place: "back",
    applies: ifSpread,
    text: "Spread on dry leaf unless the label asks for wet leaf: granules stick to wet leaf and burn it.",
    source: common,
  },
  {
    code: "caution/record",
    place: "back",
    applies: always,
    text: "Fill in the record the same day, before the sheet leaves your hand.",
    source: common,
  },
  {
    code: "caution/clean-out",
    place: "back",
    applies: ifSpray,
    text: "Clean out tank, hoses, boom, strainers and nozzles the same day: three rinses with clean water, and the cleaner that the label names. Water alone leaves some herbicides behind, and a trace of one kills turf with the next tank.",
    source: cleanOut,
  },
  {
    code: "caution/restricted-use-record",
    place: "back",
    applies: ({ maybe }) =>
      maybe("insecticide") ||
      maybe("fungicide") ||
      maybe("growth regulator") ||
      maybe("pre-emergent herbicide") ||
      maybe("post-emergent herbicide"),
    text: "In the United States the record of a restricted-use pesticide names the product and its registration number, the amount, the place and its size, the site, the date, and the applicator with the certificate number.",
    source: {
      title: "7 CFR 110.3 Records, retention, and access to records",
      publisher: "U.S. Code of Federal Regulations",
      where: "(a)(1) to (5)",
    },
  },
  {
    code: "caution/spreader-check",
    place: "back",
    applies: ifSpread,
    text: "The rate is a target: catch what the spreader puts down over a known area before the first full pass.",
    source: common,
  },
  {
    code: "caution/drift",
    place: "back",
    applies: ifSpray,
    text: "Spray only within the label's wind-speed limits and droplet-size category, with the nozzle and pressure on this sheet. Stop when the wind shifts toward people, water or sensitive plants. Dead-calm air at dawn or dusk usually means a temperature inversion: do not spray.",
    source: wind,
  },
]);
