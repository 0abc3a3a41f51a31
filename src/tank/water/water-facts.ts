import { type Citation, frozen } from "../../quantity/index.js";

/** A hardness at which a source says to act, or what then fails. */
export interface HardnessThreshold {
  readonly value: number;
  readonly unit: "mg/L" | "grain/gal";
  readonly about: string;
  readonly source: Citation;
}

const saskatchewan: Citation = /* @__PURE__ */ frozen({
  title: "Water quality and herbicides (University of Saskatchewan)",
  publisher: "Grainews",
});

/** What published sources say of hard spray water; they range from 200 mg/L to 40 grains per US gallon. */
export const hardnessThresholds: readonly HardnessThreshold[] = /* @__PURE__ */ frozen([
  {
    value: 200,
    unit: "mg/L",
    about: "condition with ammonium sulfate",
    source: {
      title: "Don't let hard water make weeds hard to control",
      publisher: "USGA Central Region",
      year: 2018,
    },
  },
  {
    value: 300,
    unit: "mg/L",
    about: "general threshold to act",
    source: { title: "Test your sprayer water", publisher: "Canola Council of Canada" },
  },
  {
    value: 300,
    unit: "mg/L",
    about: "considered hard (300 to 400)",
    source: {
      title: "Don't start mixing until the water quality is right",
      publisher: "WeedSmart, Australia",
    },
  },
  {
    value: 350,
    unit: "mg/L",
    about: "upper limit for a low rate of glyphosate",
    source: {
      title: "Soybean School: hard water",
      publisher: "Manitoba Agriculture, in RealAgriculture",
      year: 2022,
    },
  },
  {
    value: 20,
    unit: "grain/gal",
    about: "too hard for low rates of glyphosate",
    source: saskatchewan,
  },
  { value: 35, unit: "grain/gal", about: "2,4-D amine nearly useless", source: saskatchewan },
  { value: 40, unit: "grain/gal", about: "too hard for high rates of glyphosate", source: saskatchewan },
]);

/** What published sources say of ammonium sulfate in spray, in lb per 100 US gallons. */
export const ammoniumSulfateRates: readonly {
  readonly min: number;
  readonly max: number;
  readonly about: string;
  readonly source: Citation;
}[] = /* @__PURE__ */ frozen([
  {
    min: 4,
    max: 6,
    about: "enough for most hard water in the United States",
    source: {
      title: "Equation Used to Calculate Rate of AMS, Crop & Pest Report, 2 July 2015",
      publisher: "North Dakota State University Extension",
      year: 2015,
      url: "https://www.ag.ndsu.edu/cpr/weeds/equation-used-to-calculate-rate-of-ams-07-02-15",
    },
  },
  {
    min: 8.5,
    max: 17,
    about: "general rate with glyphosate",
    source: {
      title: "Ammonium sulfate as a water conditioner",
      publisher: "Washington State University small grains",
    },
  },
]);

/** A published range of spray-water pH. */
export interface CarrierPH {
  readonly min?: number;
  readonly max?: number;
  readonly about: string;
  readonly source: Citation;
}

/** What published sources say of the pH of spray water in general. The label wins over all of it. */
export const carrierPHs: readonly CarrierPH[] = /* @__PURE__ */ frozen([
  {
    max: 6,
    about: "mixes keep; from 6 to 7 spray at once; above 7 acidify, but sulfonylureas prefer a high pH",
    source: {
      title: "The dos and don'ts of tank-mixing herbicides and fertilizers",
      publisher: "Grounds Maintenance",
    },
  },
  {
    min: 5,
    max: 6,
    about: "most stable; some work better from 4.5 to 7",
    source: { title: "Water pH (Clemson University)", publisher: "GrowerTalks", year: 2021 },
  },
  {
    min: 4,
    max: 6,
    about: "best for most",
    source: { title: "Adviser's note, April 2002", publisher: "Cropworx, Colorado", year: 2002 },
  },
]);
