import {
  allOf,
  type Citation,
  expectFields,
  expectNumber,
  expectOneOf,
  type Finding,
  fail,
  frozen,
  numberIn,
  plainCopy,
  type QuantityJson,
} from "../quantity/index.js";
import { expectActive, finiteFigure } from "./read.js";

/**
 * Ratings of an active ingredient from 1 (little) to 5 (much), as its rater states them. They are judgments in three to five
 * steps, not measurements.
 */
export interface ImpactRatings {
  /** Chronic toxicity, C. */
  readonly chronic: number;
  /** Dermal toxicity, DT. */
  readonly dermal: number;
  /** Bird toxicity, D. */
  readonly bird: number;
  /** Fish toxicity, F. */
  readonly fish: number;
  /** Bee toxicity, Z. */
  readonly bee: number;
  /** Toxicity to beneficial arthropods, B. */
  readonly beneficial: number;
  /** Half-life in soil, S. */
  readonly soilHalfLife: number;
  /** Half-life on the plant, P. */
  readonly plantHalfLife: number;
  /** Systemicity, SY. */
  readonly systemicity: number;
  /** Leaching potential, L. */
  readonly leaching: number;
  /** Surface loss potential, R. */
  readonly surfaceLoss: number;
}

/** The environmental impact quotient with its three parts, and the published caution against it. */
export interface ImpactQuotient {
  readonly type: "impact-quotient";
  readonly version: 1;
  readonly worker: number;
  readonly consumer: number;
  readonly ecology: number;
  /** A third of the sum of the three. */
  readonly quotient: number;
  /** Who rated. */
  readonly source: string;
  readonly findings: readonly Finding[];
}

const against: Citation = /* @__PURE__ */ frozen({
  title: "Quantitative evaluation of the environmental impact quotient (EIQ) for comparing herbicides",
  publisher: "PLOS ONE 10(6), e0131200",
  year: 2015,
  where: "captions of figures 1 to 4; title from memory. PeerJ 2, e364 (2014) advises against it as well",
  url: "https://journals.plos.org/plosone/article/figures?id=10.1371%2Fjournal.pone.0131200",
});

const names = [
  "chronic",
  "dermal",
  "bird",
  "fish",
  "bee",
  "beneficial",
  "soilHalfLife",
  "plantHalfLife",
  "systemicity",
  "leaching",
  "surfaceLoss",
] as const;

const caution = (): Finding => ({
  code: "impact-quotient/contested",
  severity: "caution",
  params: {},
  text: "The quotient is contested: it adds ratings in steps as if they were measured, and single ratings decide it. In use it mostly follows the rate. Do not choose a product by it alone.",
  source: { ...against },
});

/**
 * The environmental impact quotient of an active ingredient from eleven stated ratings.
 *
 * - worker `C (5 DT + DT P)`
 * - consumer `C (S + P)/2 SY + L`
 * - ecology `F R + 3 D (S + P)/2 + 3 Z P + 5 B P`
 * - quotient: a third of their sum, from 6.7 with all ratings 1 to 226.7 with all ratings 5
 *
 * The ratings are the caller's, with their source: there is no table here. Published criticism advises not to use it; the
 * result carries it.
 *
 * @param input.ratings - each from 1 to 5
 * @param input.source - who rated, and when
 * @throws RatewrightError `range`, `not-finite`, `missing`, `type` with paths such as `ratings.bee`
 * Source: J. Kovach et al., "A method to measure the environmental impact of pesticides", New York's Food and Life Sciences
 * Bulletin 139, 1992, as table 2 of a review of 2021 (PMC8564203) repeats its parts; scale: Cornell turfgrass program.
 *
 * @example
 * ```ts
 * import { impactQuotient } from "ratewright";
 * const ones = {
 *   chronic: 1, dermal: 1, bird: 1, fish: 1, bee: 1, beneficial: 1,
 *   soilHalfLife: 1, plantHalfLife: 1, systemicity: 1, leaching: 1, surfaceLoss: 1,
 * };
 * const least = impactQuotient({ ratings: ones, source: "invented" });
 * [least.worker, least.consumer, least.ecology]; // => [6, 2, 12]
 * Number(least.quotient.toFixed(1)); // => 6.7
 * ```
 */
export const impactQuotient = (input: {
  readonly ratings: ImpactRatings;
  readonly source: string;
}): ImpactQuotient => {
  const fields = expectFields(plainCopy(input), ["ratings", "source"]);
  const given = expectFields(fields.ratings, names, "ratings", "a record of eleven ratings from 1 to 5");
  const rating = (name: (typeof names)[number]) => () =>
    given[name] === undefined
      ? fail("missing", `ratings.${name}`, undefined, "a rating from 1 to 5")
      : expectNumber(given[name], `ratings.${name}`, { min: 1, max: 5 });
  const { source, ...r } = allOf({
    source: () =>
      typeof fields.source === "string" && fields.source.trim() !== ""
        ? fields.source
        : fail("missing", "source", fields.source, "who rated, and when"),
    chronic: rating("chronic"),
    dermal: rating("dermal"),
    bird: rating("bird"),
    fish: rating("fish"),
    bee: rating("bee"),
    beneficial: rating("beneficial"),
    soilHalfLife: rating("soilHalfLife"),
    plantHalfLife: rating("plantHalfLife"),
    systemicity: rating("systemicity"),
    leaching: rating("leaching"),
    surfaceLoss: rating("surfaceLoss"),
  });
  const lasting = (r.soilHalfLife + r.plantHalfLife) / 2;
  const worker = r.chronic * (5 * r.dermal + r.dermal * r.plantHalfLife);
  const consumer = r.chronic * lasting * r.systemicity + r.leaching;
  const ecology =
    r.fish * r.surfaceLoss +
    3 * r.bird * lasting +
    3 * r.bee * r.plantHalfLife +
    5 * r.beneficial * r.plantHalfLife;
  return {
    type: "impact-quotient",
    version: 1,
    worker,
    consumer,
    ecology,
    quotient: (worker + consumer + ecology) / 3,
    source,
    findings: [caution()],
  };
};

/** The quotient in use: of a rate, in the unit of rate that it was counted in. */
export interface FieldImpact {
  readonly type: "field-impact";
  readonly version: 1;
  readonly value: number;
  /** Figures of two units of rate do not compare. */
  readonly per: "lb/acre" | "kg/ha";
  readonly findings: readonly Finding[];
}

/**
 * The impact quotient in use: the quotient times the active ingredient applied per area. What is printed as "quotient times
 * percent active times rate" is the same: a rate of active ingredient already holds the percent.
 *
 * The figure has the unit of its rate in it: in kg/ha it is 1.12 times that in lb/acre. Add the figures of a season only in
 * one unit.
 *
 * @param input.quotient - from {@link impactQuotient}, or a published one, 6 to 227
 * @param input.active - active ingredient per area in one application
 * @param input.per - the unit in which the rate counts
 * @throws RatewrightError `range`, `unit/mismatch`, `substance/mismatch` for a rate of product, `missing`, `type`
 * Source: as for {@link impactQuotient}.
 *
 * @example
 * ```ts
 * import { fieldImpact, quantity } from "ratewright";
 * fieldImpact({ quotient: 20, active: quantity(1.5, "lb/acre", "ai"), per: "lb/acre" }).value; // => 30
 * fieldImpact({ quotient: 20, active: quantity(3, "lb/acre", "product") as never, per: "lb/acre" }); // => throws substance/mismatch
 * ```
 */
export const fieldImpact = (input: {
  readonly quotient: number;
  readonly active: QuantityJson;
  readonly per: "lb/acre" | "kg/ha";
}): FieldImpact => {
  const fields = expectFields(input, ["quotient", "active", "per"]);
  const { quotient, active, per } = allOf({
    quotient: () => expectNumber(fields.quotient, "quotient", { min: 6, max: 227 }),
    active: () => expectActive(fields.active, "active", ["mass/area"], "active ingredient per area"),
    per: () => expectOneOf(fields.per, ["lb/acre", "kg/ha"], "per"),
  });
  return {
    type: "field-impact",
    version: 1,
    value: finiteFigure(
      quotient * numberIn(active, per, "active"),
      "active",
      fields.active,
      "a rate of active ingredient that a sprayer can put down",
    ),
    per,
    findings: [caution()],
  };
};
