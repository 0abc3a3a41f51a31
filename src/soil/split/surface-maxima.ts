import { type Citation, frozen } from "../../quantity/index.js";

/** The most of an amendment that a source puts on standing turf at once, and the time between two of them. */
export interface SurfaceMaximum {
  readonly amendment: "lime" | "sulfur";
  readonly turf: string;
  readonly amount: number;
  readonly perYear: number | null;
  readonly unit: "lb/1000 ft2";
  /** Months between applications, least and most; `null` where the source states none. */
  readonly monthsApart: readonly [number, number] | null;
  readonly source: Citation;
}

const pennState: Citation = /* @__PURE__ */ frozen({
  title: "Commercial Turf - Maintain",
  publisher: "Pennsylvania State University Agricultural Analytical Services Laboratory",
  where: "note 2",
  url: "https://agsci.psu.edu/aasl/online-report/commercial-turf-maintain",
});

/** Published maxima for one application on standing turf. They disagree: the caller names whose is followed. */
export const surfaceMaxima: readonly SurfaceMaximum[] = /* @__PURE__ */ frozen([
  {
    amendment: "lime",
    turf: "turf other than putting greens and tees",
    amount: 100,
    perYear: null,
    unit: "lb/1000 ft2",
    monthsApart: [4, 6],
    source: pennState,
  },
  {
    amendment: "lime",
    turf: "putting greens and tees",
    amount: 25,
    perYear: null,
    unit: "lb/1000 ft2",
    monthsApart: [4, 6],
    source: pennState,
  },
  {
    amendment: "lime",
    turf: "higher cut turf",
    amount: 100,
    perYear: null,
    unit: "lb/1000 ft2",
    monthsApart: null,
    source: {
      title: "Soil Testing for Lawns, AY-18",
      publisher: "Purdue University",
      where: "soil pH below 6.0; read in a copy",
    },
  },
  {
    amendment: "lime",
    turf: "tall fescue turf",
    amount: 50,
    perYear: null,
    unit: "lb/1000 ft2",
    monthsApart: null,
    source: {
      title: "Tall Fescue Monograph, turf: liming, citing Savoy and Samples 1999",
      publisher: "Oregon State University",
      url: "https://forages.oregonstate.edu/tallfescuemonograph/turf/cultural_practices/liming",
    },
  },
  {
    amendment: "sulfur",
    turf: "turf mown at 2 in or higher",
    amount: 5,
    perYear: 10,
    unit: "lb/1000 ft2",
    monthsApart: null,
    source: {
      title: "Sulfur is not effective for lowering pH of turfed soils",
      publisher: "Purdue University Turfgrass Science",
      url: "https://turf.purdue.edu/sulfur-is-not-effective-for-lowering-ph-of-turfed-soils/?cat=55",
    },
  },
]);
