import { type Citation, expectOneOf, frozen, type Quantity, quantity } from "../../quantity/index.js";

/** Seeds per mass of one species, as one source prints it. */
export interface SeedCount {
  readonly species: string;
  /** Seeds per mass, the lower figure of the source. */
  readonly low: Quantity<"count/mass", "none">;
  /** The higher figure; the same where the source prints one. */
  readonly high: Quantity<"count/mass", "none">;
  readonly source: Citation;
}

const table: Citation = /* @__PURE__ */ frozen({
  title: "Grass characteristics: approximate number of seeds per pound",
  publisher: "data table of a seed company",
  url: "http://baileyseed.com/resources/grass-characteristics",
});
const cornell: Citation = /* @__PURE__ */ frozen({
  title: "Seeding rates",
  publisher: "Cornell University",
  url: "http://safesportsfields.cals.cornell.edu/seeding-rates",
});
/** A page for homeowners; two other rows of it are plain misprints (rough bluegrass 2,090,00, ryegrass 240,00) and not taken. */
const homes: Citation = /* @__PURE__ */ frozen({
  title: "Grass seeds per pound",
  publisher: "page on lawns for homeowners",
  url: "https://www.oldhouseweb.com/gardening/grass-seeds-per-pound.shtml",
});
const purdue = (grass: string, page: string): Citation => ({
  title: `Forage identification: ${grass}`,
  publisher: "Purdue University Extension",
  url: `https://ag.purdue.edu/department/agry/agry-extension/forages/forage-id/grasses/${page}.html`,
});
const count = (species: string, low: number, high: number, source: Citation): SeedCount => ({
  species,
  low: quantity(low, "count/lb"),
  high: quantity(high, "count/lb"),
  source,
});

/**
 * Seeds per pound of turfgrasses, as sources print them. They differ by source, by variety and by lot
 * (Kentucky bluegrass 1.5 million or 1.8 to 2.2 million), so take the count of the lot where the supplier
 * states it.
 */
export const seedCounts: readonly SeedCount[] = /* @__PURE__ */ frozen([
  /* @__PURE__ */ count("creeping bentgrass", 7_800_000, 8_000_000, table),
  /* @__PURE__ */ count("colonial bentgrass", 8_000_000, 8_500_000, table),
  /* @__PURE__ */ count("bermudagrass", 1_785_000, 1_790_000, table),
  /* @__PURE__ */ count("annual bluegrass", 1_100_000, 1_200_000, table),
  /* @__PURE__ */ count("Kentucky bluegrass", 1_800_000, 2_200_000, table),
  /* @__PURE__ */ count("Kentucky bluegrass", 1_500_000, 1_500_000, cornell),
  /* @__PURE__ */ count("rough bluegrass", 2_400_000, 2_500_000, table),
  /* @__PURE__ */ count("perennial ryegrass", 250_000, 250_000, cornell),
  /* @__PURE__ */ count(
    "perennial ryegrass",
    227_000,
    227_000,
    /* @__PURE__ */ purdue("perennial ryegrass", "perennial-ryegrass"),
  ),
  /* @__PURE__ */ count(
    "tall fescue",
    227_000,
    227_000,
    /* @__PURE__ */ purdue("tall fescue", "tall-fescue"),
  ),
  /* @__PURE__ */ count("tall fescue", 225_000, 225_000, homes),
  /* @__PURE__ */ count("fine fescue", 400_000, 550_000, homes),
  /* @__PURE__ */ count("buffalograss", 55_500, 56_000, table),
  /* @__PURE__ */ count("bahiagrass", 153_000, 166_000, table),
  /* @__PURE__ */ count("reed canarygrass", 500_000, 540_000, table),
]);

/**
 * The rows of `seedCounts` for a species, one from each source that prints it.
 *
 * @throws RatewrightError `missing`, `type` for a species that is not in the table, with those that are
 *
 * @example
 * ```ts
 * import { seedCountsOf } from "ratewright";
 * seedCountsOf("Kentucky bluegrass").map(({ low, high }) => [low.in("count/lb"), high.in("count/lb")]);
 * // => [[1_800_000, 2_200_000], [1_500_000, 1_500_000]]
 * ```
 */
export const seedCountsOf = (species: string): SeedCount[] => {
  const names = seedCounts.map((row) => row.species);
  const wanted = expectOneOf(species, [...new Set(names)], "species");
  return seedCounts.filter((row) => row.species === wanted);
};
