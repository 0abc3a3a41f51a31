import { type Citation, expectRecord, fail, frozen } from "../../quantity/index.js";
import { number, optional, readRecord, whole, word } from "../read.js";

/** Cool-season or warm-season turf; overseeded warm-season turf in winter is cool-season turf. */
export type TurfSeason = "cool-season" | "warm-season";

/** A published list of turf coefficients. */
export type TurfCoefficientSource =
  | "California, by month"
  | "California, year"
  | "Arizona"
  | "New Mexico"
  | "FAO-56";

const california: Citation = /* @__PURE__ */ frozen({
  title: "Turfgrass crop coefficients (Kc), after Meyer et al. 1985",
  publisher: "University of California, Center for Landscape and Urban Horticulture",
  where: "Table 1",
  url: "http://ucanr.edu/sites/urbanhort/Water_Use_of_Turfgrass_and_Landscape_Plant_Materials/Turfgrass_Crop_Coefficients_Kc",
});

const fao56: Citation = /* @__PURE__ */ frozen({
  title: "Crop coefficients of FAO Irrigation and Drainage Paper 56",
  publisher: "FAO, as an open research program transcribes them",
  where: "table 12, turf grass, cool and warm season",
});

/** January to December. */
const byMonth: Readonly<Record<TurfSeason, readonly number[]>> = /* @__PURE__ */ frozen({
  "cool-season": [0.61, 0.64, 0.75, 1.04, 0.95, 0.88, 0.94, 0.86, 0.74, 0.75, 0.69, 0.6],
  "warm-season": [0.61, 0.54, 0.76, 0.72, 0.79, 0.68, 0.71, 0.71, 0.62, 0.54, 0.58, 0.55],
});

interface Listed {
  /** By quality: what is acceptable, and high quality; one figure where the source makes no difference. */
  readonly "cool-season": readonly [acceptable: number, high: number];
  readonly "warm-season": readonly [acceptable: number, high: number];
  readonly source: Citation;
}

const listed: Readonly<Record<Exclude<TurfCoefficientSource, "California, by month">, Listed>> =
  /* @__PURE__ */ frozen({
    "California, year": { "cool-season": [0.8, 0.8], "warm-season": [0.6, 0.6], source: california },
    Arizona: {
      "cool-season": [0.7, 0.8],
      "warm-season": [0.73, 0.83],
      source: {
        title: "Phoenix area turf water use report",
        publisher: "University of Arizona, AZMET",
        year: 2024,
        where: "winter rye and bermudagrass",
        url: "http://www.ag.arizona.edu/azmet/data/00prptet.htm",
      },
    },
    "New Mexico": {
      "cool-season": [0.85, 0.85],
      "warm-season": [0.7, 0.7],
      source: {
        title: "Turf water use at Farmington (ASA annual meeting, P6853)",
        publisher: "New Mexico State University",
        year: 2005,
        where: "abstract",
        url: "http://a-c-s.confex.com/crops/2005am/techprogram/P6853.HTM",
      },
    },
    "FAO-56": { "cool-season": [0.95, 0.95], "warm-season": [0.85, 0.85], source: fao56 },
  });

/** A turf coefficient with the source that states it. */
export interface TurfCoefficient {
  readonly type: "turf-coefficient";
  readonly version: 1;
  readonly value: number;
  readonly season: TurfSeason;
  readonly list: TurfCoefficientSource;
  readonly source: Citation;
}

const lists = ["California, by month", "California, year", "Arizona", "New Mexico", "FAO-56"] as const;

/**
 * A published turf coefficient `Kc`: what turf uses by what the grass of reference uses. Sources differ by a third: say
 * which.
 *
 * | list | cool-season | warm-season |
 * | --- | --- | --- |
 * | `"California, by month"` | 0.60 to 1.04 | 0.54 to 0.79 |
 * | `"California, year"` | 0.80 | 0.60 |
 * | `"Arizona"`, acceptable and high quality | 0.70, 0.80 (winter rye) | 0.73, 0.83 (bermudagrass) |
 * | `"New Mexico"`, growing season | 0.85 | 0.70 |
 * | `"FAO-56"`, mid and end of the season | 0.95 | 0.85 |
 *
 * The mean of California's warm-season months is 0.65, though the source prints 0.60 for the year.
 *
 * - `month` 1 to 12 for the list by month, which is of the northern hemisphere: in the south take the month six months on; `quality` `"acceptable"` or `"high"` for Arizona
 *
 * @throws RatewrightError `missing` for a month or a quality that the list needs, `conflict` for one that it does not have;
 * `range`, `type`
 *
 * Source: as in the result.
 *
 * @example
 * ```ts
 * import { turfCoefficient } from "ratewright";
 * turfCoefficient({ season: "cool-season", list: "California, by month", month: 7 }).value; // => 0.94
 * turfCoefficient({ season: "warm-season", list: "Arizona", quality: "high" }).value; // => 0.83
 * ```
 */
export const turfCoefficient = (input: {
  readonly season: TurfSeason;
  readonly list: TurfCoefficientSource;
  readonly month?: number;
  readonly quality?: "acceptable" | "high";
}): TurfCoefficient => {
  const { list } = expectRecord(input, "input", "a record with season and list");
  const only =
    <T>(name: string, owner: string, said: string, read: (value: unknown, path: string) => T) =>
    (value: unknown, path: string): T | undefined => {
      if (list === owner) return value === undefined ? fail("missing", path, value, said) : read(value, path);
      return value === undefined
        ? undefined
        : fail("conflict", path, value, `nothing: this list has no ${name}`);
    };
  const q = readRecord(
    input,
    {
      season: word(["cool-season", "warm-season"]),
      list: word(lists),
      month: only("months", "California, by month", "the month, 1 to 12", whole({ min: 1, max: 12 })),
      quality: only("quality", "Arizona", '"acceptable" or "high"', word(["acceptable", "high"])),
    },
    "a record with season and list",
  );
  const found = q.list === "California, by month" ? undefined : listed[q.list];
  const value =
    found === undefined
      ? (byMonth[q.season][(q.month as number) - 1] as number)
      : found[q.season][q.quality === "high" ? 1 : 0];
  return {
    type: "turf-coefficient",
    version: 1,
    value,
    season: q.season,
    list: q.list,
    source: found?.source ?? california,
  };
};

const factor = optional(number({ above: 0, max: 3 }));

/**
 * A landscape coefficient, `Kl = Ks Kd Kmc`: by kind of plant, by how dense it stands, and by its microclimate. For turf
 * `species` is its turf coefficient and `density` 1; the microclimate is what a place is worth to the sun and wind on it.
 *
 * - `species` more than 0; `density` 0.5 sparse to 1.3 dense, 1 where left out; `microclimate` 0.5 (shade and shelter) to 1.4
 *   (paving, reflected heat, wind), 1 where left out
 *
 * @throws RatewrightError `range`, `missing`, `not-finite`
 *
 * Source: "A guide to estimating irrigation water needs of landscape plantings" (the formula); the ranges of the factors are
 * from memory and not enforced.
 *
 * @example
 * ```ts
 * import { landscapeCoefficient } from "ratewright";
 * landscapeCoefficient({ species: 0.8, microclimate: 0.5 }); // => 0.4
 * ```
 */
export const landscapeCoefficient = (input: {
  readonly species: number;
  readonly density?: number;
  readonly microclimate?: number;
}): number => {
  const q = readRecord(
    input,
    { species: number({ above: 0, max: 3 }), density: factor, microclimate: factor },
    "a record with species, density and microclimate",
  );
  return q.species * (q.density ?? 1) * (q.microclimate ?? 1);
};
