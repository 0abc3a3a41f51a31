import {
  bulkSeed,
  pricePerPureLiveSeed,
  pureLiveSeed,
  pureLiveSeedIn,
  quantity,
  rectangleArea,
  type SeedLot,
  seedCountsOf,
  seedingRate,
  seedLabel,
  seedMixture,
  seedMixtureByCount,
  seedOrder,
  seedsPerArea,
} from "../../src/index.js";
import type { LeftOut, PublishedCheck } from "./check.js";

const percent = (value: number) => quantity(value, "%");
const tag = (purity: number, germination: number): SeedLot => ({
  purity: percent(purity),
  germination: percent(germination),
});
const live = (lot: SeedLot): number => pureLiveSeed(lot).in("% w/w");
const bulk = (pounds: number, lot: SeedLot): number =>
  bulkSeed({ pureLiveSeed: quantity(pounds, "lb", "pure live seed"), lot }).in("lb");
const price = (dollars: number, lot: SeedLot): number =>
  pricePerPureLiveSeed({ price: quantity(dollars, "money:USD/lb", "none/seed"), lot }).in("money:USD/lb");

const cornell = {
  title: "Seeding rates",
  publisher: "Cornell University",
  url: "http://safesportsfields.cals.cornell.edu/seeding-rates",
};
const penn = {
  title: "Calculating the price of pure live seed",
  publisher: "Penn State Extension",
  year: 2023,
  url: "http://plantscience.psu.edu/research/centers/turf/extension/factsheets/calculating-seed-price",
};
const mixed = (first: number, second: number) =>
  seedMixture({
    components: [
      { name: "perennial ryegrass", byWeight: percent(first), seedsPerMass: quantity(250_000, "count/lb") },
      {
        name: "Kentucky bluegrass",
        byWeight: percent(second),
        seedsPerMass: quantity(1_500_000, "count/lb"),
      },
    ],
  }).components.map(({ byCount }) => byCount.in("%"));

/** Species, low and high, as the table prints them. */
const table: readonly (readonly [string, number, number])[] = [
  ["creeping bentgrass", 7_800_000, 8_000_000],
  ["colonial bentgrass", 8_000_000, 8_500_000],
  ["bermudagrass", 1_785_000, 1_790_000],
  ["annual bluegrass", 1_100_000, 1_200_000],
  ["Kentucky bluegrass", 1_800_000, 2_200_000],
  ["rough bluegrass", 2_400_000, 2_500_000],
  ["buffalograss", 55_500, 56_000],
  ["bahiagrass", 153_000, 166_000],
  ["reed canarygrass", 500_000, 540_000],
];

/** Published examples of seed: what is in a bag, what it costs, and how many seeds there are. */
export const seedChecks: readonly PublishedCheck[] = [
  {
    entry: "stand-061",
    formulas: ["pureLiveSeed"],
    source: {
      title: "How much live seed is in the bag",
      publisher: "Hay & Forage Grower, after University of Wisconsin Extension; title paraphrased",
      url: "http://hayandforage.com/hay/alfalfa/live-seed-bag",
    },
    reached: "read",
    given: "a germination of 80 % and a coating of 30 % of the weight",
    answers: [{ of: "% pure live seed", printed: 56, to: 1 }],
    compute: () => [live(tag(70, 80))],
  },
  {
    entry: "site-039",
    formulas: ["pureLiveSeed", "bulkSeed"],
    source: {
      title: "Pure live seed",
      publisher: "Texas Department of Transportation",
      where: "worked example",
      url: "https://www.txdot.gov/about/campaigns-outreach/bluebonnets-wildflowers/pure-live-seed.html",
    },
    reached: "read",
    given: "purity 85 %, germination 75 %: the share, and the bulk seed for 1 lb",
    answers: [
      { of: "of 1", printed: 0.64, to: 0.01 },
      {
        of: "lb",
        printed: 1.56,
        to: 0.01,
        wrong: { right: 1.57, why: "the share was rounded to 0.64 before dividing" },
      },
    ],
    compute: () => [live(tag(85, 75)) / 100, bulk(1, tag(85, 75))],
  },
  {
    entry: "site-040",
    formulas: ["pureLiveSeed", "bulkSeed", "seedOrder"],
    source: {
      title: "Pure live seed calculation",
      publisher: "LSU AgCenter",
      where: "steps 1 to 4",
      url: "https://www.lsuagcenter.com/topics/lawn_garden/commercial_horticulture/turfgrass/management-practices/calculations/pure-live-seed-calculation",
    },
    reached: "read",
    given: "20,000 ft2 at 1 lb of pure live seed per 1000 ft2; purity 48 %, germination 80 %",
    answers: [
      { of: "of 1", printed: 0.38, to: 0.01 },
      {
        of: "lb of seed",
        printed: 52.6,
        to: 0.1,
        wrong: { right: 52.1, why: "0.384 was rounded to 0.38 before dividing" },
      },
      { of: "lb of pure live seed", printed: 20, to: 1 },
    ],
    compute: () => {
      const lot = tag(48, 80);
      const { seed } = seedOrder({
        area: quantity(20_000, "ft2"),
        rate: quantity(1, "lb/1000 ft2", "pure live seed"),
        lot,
      });
      return [live(lot) / 100, seed.in("lb"), pureLiveSeedIn({ seed, lot }).in("lb")];
    },
  },
  {
    entry: "site-042",
    formulas: ["pureLiveSeed", "bulkSeed"],
    source: {
      title: "PLS vs. bulk seed",
      publisher: "technical sheet of a seed company",
      where: "two examples",
    },
    reached: "read",
    given:
      "germination 92 %, hard 5 %, purity 98 %, 3.0 lb/acre; and by a tetrazolium test 85 %, purity 95 %, 0.12 lb/acre",
    answers: [
      { of: "%", printed: 95.06, to: 0.01 },
      { of: "lb/acre", printed: 3.16, to: 0.01 },
      { of: "%", printed: 80.75, to: 0.01 },
      { of: "lb/acre", printed: 0.15, to: 0.01 },
    ],
    compute: () => {
      const hard = { ...tag(98, 92), hard: percent(5) };
      const tetrazolium = { purity: percent(95), viable: percent(85) };
      return [live(hard), bulk(3, hard), live(tetrazolium), bulk(0.12, tetrazolium)];
    },
  },
  {
    entry: "site-043",
    formulas: ["pureLiveSeed", "bulkSeed"],
    source: { ...cornell, where: "last paragraph" },
    reached: "read",
    given: "purity 95 %, germination 85 %: the share, and how much more seed to buy",
    answers: [
      { of: "%", printed: 81, to: 1 },
      {
        of: "% more",
        printed: 20,
        to: 1,
        wrong: { right: 24, why: "the extra is 1 / 0.8075 - 1, not 1 - 0.81" },
      },
    ],
    compute: () => [live(tag(95, 85)), bulk(100, tag(95, 85)) - 100],
  },
  {
    entry: "site-044",
    formulas: ["seedMixture"],
    source: { ...cornell, where: "first paragraph" },
    reached: "read",
    given: "70 % perennial ryegrass, 30 % Kentucky bluegrass by weight; 250,000 and 1,500,000 seeds/lb",
    answers: [
      {
        of: "% of the seeds, ryegrass",
        printed: 50,
        to: 1,
        wrong: { right: 28, why: "0.7 x 250,000 stands against 0.3 x 1,500,000" },
      },
      {
        of: "% of the seeds, bluegrass",
        printed: 50,
        to: 1,
        wrong: { right: 72, why: "0.7 x 250,000 stands against 0.3 x 1,500,000" },
      },
    ],
    compute: () => mixed(70, 30),
  },
  {
    entry: "site-046",
    formulas: ["seedLabel"],
    source: {
      title: "Purchasing seed",
      publisher: "University of Minnesota Extension",
      where: "Table 5.2, sample label; the shares of pure live seed are worked by hand",
      url: "http://www.extension.umn.edu/garden/landscaping/maint/newlawn_5.html",
    },
    reached: "derived",
    given: "44, 31, 9, 12 % pure; 85, 80, 85, 90 % germination; crop 1.56, inert 2.11, weeds 0.33 %",
    answers: [
      { of: "%, sum of the label", printed: 100, to: 0.01 },
      { of: "% pure live seed in all", printed: 80.65, to: 0.01 },
    ],
    compute: () => {
      const kinds = [
        ["creeping red fescue", 44, 85],
        ["Kentucky bluegrass", 31, 80],
        ["chewings fescue", 9, 85],
        ["perennial ryegrass", 12, 90],
      ] as const;
      const label = seedLabel({
        components: kinds.map(([name, purity, germination]) => ({ name, ...tag(purity, germination) })),
        otherCrop: percent(1.56),
        inert: percent(2.11),
        weeds: percent(0.33),
      });
      return [label.sum?.in("%") ?? 0, label.pureLiveSeed.in("% w/w")];
    },
  },
  {
    entry: "site-048",
    formulas: ["seedCountsOf"],
    source: {
      title: "Grass characteristics: approximate number of seeds per pound",
      publisher: "data table of a seed company",
      url: "http://baileyseed.com/resources/grass-characteristics",
    },
    reached: "read",
    kind: "transcription",
    given: "seeds per pound of nine grasses, low and high",
    answers: table.flatMap(([species, low, high]) => [
      { of: `seeds/lb, ${species}, low`, printed: low, to: 500 },
      { of: `seeds/lb, ${species}, high`, printed: high, to: 500 },
    ]),
    compute: () =>
      table.flatMap(([species]) => {
        const row = seedCountsOf(species).find(({ source }) => source.publisher.includes("company"));
        return [row?.low.in("count/lb") ?? 0, row?.high.in("count/lb") ?? 0];
      }),
  },
  {
    entry: "stand-065",
    formulas: ["seedCountsOf"],
    source: {
      title: "Forage identification: tall fescue",
      publisher: "Purdue University Extension",
      url: "https://ag.purdue.edu/department/agry/agry-extension/forages/forage-id/grasses/tall-fescue.html",
    },
    reached: "read",
    kind: "transcription",
    given: "tall fescue, seeds per pound; its page on perennial ryegrass prints the same figure",
    answers: [
      { of: "seeds/lb, tall fescue", printed: 227_000, to: 500 },
      { of: "seeds/lb, perennial ryegrass", printed: 227_000, to: 500 },
    ],
    compute: () =>
      ["tall fescue", "perennial ryegrass"].map(
        (species) =>
          seedCountsOf(species)
            .find(({ source }) => source.publisher.includes("Purdue"))
            ?.low.in("count/lb") ?? 0,
      ),
  },
  {
    entry: "site-049",
    formulas: ["seedOrder"],
    source: {
      title: "Planting methods (lawn establishment, southern turfgrasses)",
      publisher: "farm news site, after an extension bulletin",
      where: "example",
    },
    reached: "read",
    given: "a lawn of 110 by 80 ft; the answer implies 0.5 lb/1000 ft2",
    answers: [
      { of: "ft2", printed: 8800, to: 1 },
      { of: "lb", printed: 4.4, to: 0.1 },
    ],
    compute: () => {
      const area = rectangleArea({ length: quantity(110, "ft"), width: quantity(80, "ft") });
      const { seed } = seedOrder({ area, rate: quantity(0.5, "lb/1000 ft2", "seed") });
      return [area.in("ft2"), seed.in("lb")];
    },
  },
  {
    entry: "stand-004",
    formulas: ["pureLiveSeed", "bulkSeed"],
    source: { ...penn, where: "second paragraph" },
    reached: "read",
    given: "92 % pure, 80 % germination: the share, and the seed for 1 lb",
    answers: [
      { of: "%", printed: 74, to: 1 },
      { of: "lb", printed: 1.4, to: 0.1 },
    ],
    compute: () => [live(tag(92, 80)), bulk(1, tag(92, 80))],
  },
  {
    entry: "stand-005",
    formulas: ["pureLiveSeed", "bulkSeed", "pricePerPureLiveSeed"],
    source: { ...penn, where: "seed lots A and B" },
    reached: "read",
    given: "A: 85 %, 60 %, 1.95 USD/lb. B: 99 %, 90 %, reckoned with 3.00 USD/lb",
    answers: [
      { of: "%, A", printed: 51, to: 1 },
      { of: "lb, A", printed: 2, to: 1 },
      {
        of: "USD/lb, A",
        printed: 3.9,
        to: 0.01,
        wrong: { right: 3.82, why: "100 / 51 was rounded to 2 before multiplying" },
      },
      { of: "%, B", printed: 89, to: 1 },
      { of: "lb, B", printed: 1.1, to: 0.1 },
      {
        of: "USD/lb, B",
        printed: 3.3,
        to: 0.01,
        wrong: { right: 3.37, why: "100 / 89 was rounded to 1.1 before multiplying" },
      },
    ],
    compute: () => {
      const [a, b] = [tag(85, 60), tag(99, 90)];
      return [live(a), bulk(1, a), price(1.95, a), live(b), bulk(1, b), price(3, b)];
    },
    note: "The page names 2.50 USD/lb for lot B and reckons with 3.00.",
  },
  {
    entry: "stand-006",
    formulas: ["pureLiveSeed", "pricePerPureLiveSeed"],
    source: {
      title: "Live seeds",
      publisher: "page of a hydroseeding association",
      url: "https://hydroseeding.org/live-seeds/",
    },
    reached: "read",
    given: "96 % germination, 75 % purity, 2.50 USD/lb",
    answers: [
      { of: "%", printed: 72, to: 1 },
      { of: "USD/lb", printed: 3.47, to: 0.01 },
    ],
    compute: () => [live(tag(75, 96)), price(2.5, tag(75, 96))],
  },
  {
    entry: "stand-007",
    formulas: ["pureLiveSeed", "bulkSeed", "pricePerPureLiveSeed"],
    source: {
      title: "Pure live seed",
      publisher: "technical sheet of a seed company",
      url: "http://windriverseed.com/Information%20Handouts/Technical%20Sheets/PLS.htm",
    },
    reached: "read",
    given: "A: 98 %, 95 %, 5.00 USD/lb. B: 89 %, 92 %, 4.75 USD/lb; and 1000 lb of pure live seed of each",
    answers: [
      { of: "of 1, A", printed: 0.931, to: 0.001 },
      { of: "of 1, B", printed: 0.819, to: 0.001 },
      { of: "USD/lb, A", printed: 5.37, to: 0.01 },
      { of: "USD/lb, B", printed: 5.8, to: 0.01 },
      { of: "lb, A", printed: 1074, to: 1 },
      { of: "lb, B", printed: 1221, to: 1 },
    ],
    compute: () => {
      const [a, b] = [tag(98, 95), tag(89, 92)];
      return [live(a) / 100, live(b) / 100, price(5, a), price(4.75, b), bulk(1000, a), bulk(1000, b)];
    },
  },
  {
    entry: "stand-008",
    formulas: ["pureLiveSeed", "bulkSeed", "pureLiveSeedIn"],
    source: {
      title: "What is pure live seed (PLS)?",
      publisher: "technical sheet of a seed company",
      where: "conversion examples",
      url: "https://mbsseed.com/what-is-pure-live-seed-pls/",
    },
    reached: "read",
    given: "95 %, 85 %: the share; bulk for 20 lb of pure live seed; pure live seed in 30 lb",
    answers: [
      { of: "%", printed: 80.75, to: 0.01 },
      { of: "lb of seed", printed: 24.77, to: 0.01 },
      { of: "lb of pure live seed", printed: 24.23, to: 0.01 },
    ],
    compute: () => {
      const lot = tag(95, 85);
      const held = pureLiveSeedIn({ seed: quantity(30, "lb", "seed"), lot });
      return [live(lot), bulk(20, lot), held.in("lb")];
    },
  },
  {
    entry: "stand-009",
    formulas: ["pureLiveSeed", "pricePerPureLiveSeed"],
    source: {
      title: "Pure live seed",
      publisher: "technical sheet of a seed company",
      where: "lots A and B",
      url: "https://graniteseed.com/revegetation-conservation-seed/pure-live-seed",
    },
    reached: "read",
    given: "A: 75 %, 60 %, 1.00 USD/lb. B: 95 %, 80 %, 1.50 USD/lb",
    answers: [
      { of: "%, A", printed: 45, to: 1 },
      { of: "%, B", printed: 76, to: 1 },
      { of: "USD/lb, A", printed: 2.22, to: 0.01 },
      { of: "USD/lb, B", printed: 1.97, to: 0.01 },
    ],
    compute: () => {
      const [a, b] = [tag(75, 60), tag(95, 80)];
      return [live(a), live(b), price(1, a), price(1.5, b)];
    },
  },
  {
    entry: "stand-010",
    formulas: ["pureLiveSeed", "pureLiveSeedIn"],
    source: {
      title: "Calculate seeding rates in pure live seed",
      publisher: "Allamakee Soil and Water Conservation District, Iowa",
      url: "http://allamakeeswcd.org/calculate-seeding-rates-in-pure-live-seed/",
    },
    reached: "read",
    given: "purity 98.75 %, germination 88 % and 5 % dormant: the share, and what is alive of 55 lb/acre",
    answers: [
      { of: "%", printed: 91.83, to: 0.01, printing: "cut" },
      {
        of: "lb/acre",
        printed: 45.9,
        to: 0.1,
        wrong: { right: 50.5, why: "45.9 is 91.83 % of 50, not of 55" },
      },
    ],
    compute: () => {
      const lot = { ...tag(98.75, 88), hard: percent(5) };
      const held = pureLiveSeedIn({ seed: quantity(55, "lb/acre", "seed"), lot });
      return [live(lot), held.in("lb/acre")];
    },
  },
  {
    entry: "stand-011",
    formulas: ["seedMixtureByCount", "seedsPerArea", "seedingRate"],
    source: {
      title: "Seed count and seeds per square foot",
      publisher: "advice page of a native seed grower",
      url: "https://hamiltonnativeoutpost.com/seed-calculators-seed-count-and-seeds-per-square-foot-for-dummies/",
    },
    reached: "read",
    given: "7,500 and 4.5 million seeds/lb, as many seeds of each, 40 seeds/ft2 in all",
    answers: [
      { of: "times the weight for as many seeds", printed: 600, to: 1 },
      { of: "seeds/ft2 of each", printed: 20, to: 1 },
    ],
    compute: () => {
      const { components, seedsPerMass } = seedMixtureByCount({
        components: [
          { name: "eastern gamagrass", byCount: percent(50), seedsPerMass: quantity(7500, "count/lb") },
          { name: "mountain mint", byCount: percent(50), seedsPerMass: quantity(4_500_000, "count/lb") },
        ],
      });
      const [grass, mint] = components.map(({ byWeight }) => byWeight.in("%")) as [number, number];
      const rate = seedingRate({ liveSeeds: quantity(40, "count/ft2", "pure live seed"), seedsPerMass });
      const ofGrass = seedsPerArea({
        rate: quantity((rate.in("lb/acre") * grass) / 100, "lb/acre", "pure live seed"),
        seedsPerMass: quantity(7500, "count/lb"),
      });
      return [grass / mint, ofGrass.in("count/ft2")];
    },
  },
];

/** Published examples of seed that are left out. */
export const seedLeftOut: readonly LeftOut[] = [
  {
    entry: "site-045",
    reason:
      "A table of recommended rates and of the months until play: it prints nothing to compute from another.",
  },
];
