import { type FactSource, frozen } from "../../quantity/index.js";

/** How long a kind of source lasts, as printed. */
export interface PublishedDuration {
  readonly kind: string;
  readonly weeks: { readonly low: number; readonly high: number };
  /** `"response"` is how long turf shows it, which is not how long nitrogen comes out. */
  readonly what: "response" | "release";
  readonly source: FactSource;
}

const cornell: FactSource = /* @__PURE__ */ frozen({
  title: "Nitrogen sources",
  publisher: "Cornell University, athletic field program",
  url: "http://safesportsfields.cals.cornell.edu/node/160",
});

/** Published durations by kind of source. Ranges differ because soils, coatings and weather do. */
export const publishedDurations: readonly PublishedDuration[] = /* @__PURE__ */ frozen([
  { kind: "water-soluble nitrogen", weeks: { low: 2, high: 6 }, what: "response", source: cornell },
  {
    kind: "slow or controlled release, usual",
    weeks: { low: 8, high: 12 },
    what: "response",
    source: cornell,
  },
  {
    kind: "slow or controlled release, longest",
    weeks: { low: 12, high: 20 },
    what: "response",
    source: cornell,
  },
  {
    kind: "ureaform or methylene urea",
    weeks: { low: 8, high: 12 },
    what: "release",
    source: {
      title: "Field science: nitrogen sources",
      publisher: "SportsTurf magazine",
      year: 2016,
      where: "February, page 13",
      url: "http://read.dmtmag.com/i/628092-february-2016/12",
    },
  },
  { kind: "water-soluble nitrogen", weeks: { low: 4, high: 6 }, what: "response", source: "from memory" },
  { kind: "polymer-coated urea", weeks: { low: 8, high: 16 }, what: "release", source: "from memory" },
  {
    kind: "sulfur-coated urea",
    weeks: { low: 10, high: 10 },
    what: "response",
    source: {
      title: "Properly using slow-release, sulfur-coated fertilizer on your lawn",
      publisher: "Texas garden column",
      year: 2003,
      url: "https://plantanswers.com/garden_column/mar03/5.htm",
    },
  },
]);
