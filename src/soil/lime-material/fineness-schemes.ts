import { type Citation, frozen } from "../../quantity/index.js";

/** How a state turns sieves into a fineness, coarse to fine. */
export interface FinenessScheme {
  /** Mesh numbers of its sieves, coarse to fine. */
  readonly sieves: readonly number[];
  /**
   * `"between sieves"`: each fraction has its own factor, one more than sieves, first what stays on the coarsest.
   * `"passing"`: the factor of a sieve counts all that passes it.
   */
  readonly factorsOf: "between sieves" | "passing";
  /** Percent. */
  readonly factors: readonly number[];
  /** What the product of CCE, fineness and dry matter is called. */
  readonly term: string;
  /** Pounds in a ton that the rating counts, where it is not 2000. */
  readonly poundsPerTon: number;
  readonly source: Citation;
}

/** A scheme by name. */
export type FinenessSchemeName =
  | "British Columbia"
  | "Iowa ECCE"
  | "Mississippi RNV"
  | "Missouri ENM"
  | "New York ENV";

const iowa: Citation = /* @__PURE__ */ frozen({
  title: "Liming terminology and analysis (Iowa method)",
  publisher: "University of Wisconsin-Madison Soil Science",
  where: "total fineness efficiency",
});

/**
 * Fineness by state. Iowa's factors count all that passes a sieve, the others each fraction between two: the same
 * sieves read the wrong way give a wrong lime.
 */
export const finenessSchemes: Readonly<Record<FinenessSchemeName, FinenessScheme>> = /* @__PURE__ */ frozen({
  "British Columbia": {
    sieves: [8, 20, 60],
    factorsOf: "between sieves",
    factors: [0, 20, 60, 100],
    term: "efficiency rating times neutralizing value",
    poundsPerTon: 2000,
    source: {
      title: "Evaluation of Agricultural Limestone, factsheet 637.200-2",
      publisher: "provincial agriculture ministry, apparently British Columbia",
      year: 2015,
      where: "degree of fineness",
    },
  },
  "Iowa ECCE": {
    sieves: [4, 8, 60],
    factorsOf: "passing",
    factors: [10, 30, 60],
    term: "effective calcium carbonate equivalent (ECCE)",
    poundsPerTon: 2000,
    source: iowa,
  },
  "Mississippi RNV": {
    sieves: [10, 50],
    factorsOf: "between sieves",
    factors: [0, 50, 100],
    term: "relative neutralizing value (RNV)",
    poundsPerTon: 2000,
    source: {
      title: "Agricultural limestone's neutralizing value, P3762",
      publisher: "Mississippi State University Extension",
      url: "http://extension.msstate.edu/publications/information-sheets/agricultural-limestones-neutralizing-value?page=3",
    },
  },
  "Missouri ENM": {
    sieves: [8, 40, 60],
    factorsOf: "between sieves",
    factors: [0, 25, 60, 100],
    term: "effective neutralizing material (ENM)",
    poundsPerTon: 800,
    source: {
      title: "Ag Lime Control Service",
      publisher: "University of Missouri Agricultural Experiment Station",
      url: "http://aes.missouri.edu/pfcs/index.stm",
    },
  },
  "New York ENV": {
    sieves: [20, 60, 100],
    factorsOf: "between sieves",
    factors: [0, 40, 80, 100],
    term: "effective neutralizing value (ENV)",
    poundsPerTon: 2000,
    source: {
      title: "Purity, fineness and CCE of liming materials, CA512",
      publisher: "Cornell University",
      where: "steps 1-6",
      url: "https://courses2.cit.cornell.edu/cca/soilFertilityCA/CA5/CA512.html",
    },
  },
});
