import { quantity } from "../../../src/quantity/index.js";
import {
  bulkSeed,
  expectedSeedlings,
  pricePerPureLiveSeed,
  pureLiveSeed,
  pureLiveSeedIn,
  seedCountsOf,
  seedingRate,
  seedLabel,
  seedMixture,
  seedMixtureByCount,
  seedOrder,
  seedsPerArea,
} from "../../../src/stand/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const percent = (value: number) => quantity(value, "%");
const lot = { purity: percent(98), germination: percent(85) };
const rate = quantity(5, "g/m2", "seed");
const live = quantity(4, "g/m2", "pure live seed");
const each = quantity(1000, "count/g");
const emergence = { share: percent(50), source: "the crew's own counts" };
const kind = { name: "red fescue", byWeight: percent(50), seedsPerMass: quantity(500_000, "count/lb") };
const byCount = { name: "red fescue", byCount: percent(50), seedsPerMass: quantity(500_000, "count/lb") };

const rows: readonly Refusal[] = [
  [
    "no lot at all",
    pureLiveSeed,
    [undefined],
    ["missing lot: a seed lot, with purity and germination or viable seed [undefined]"],
  ],
  [
    "a lot as a list",
    pureLiveSeed,
    [[98, 85]],
    ["type lot: a seed lot, with purity and germination or viable seed [a list of 2]"],
  ],
  [
    "a lot without a germination",
    pureLiveSeed,
    [{ purity: percent(98) }],
    ["missing germination: germination, or viable from a tetrazolium test [undefined]"],
  ],
  [
    "a lot without a purity",
    pureLiveSeed,
    [{ germination: percent(85) }],
    ["missing purity: a share, such as 85 % [undefined]"],
  ],
  [
    "two tests of one lot",
    pureLiveSeed,
    [{ ...lot, viable: percent(90) }],
    ["conflict viable: either viable, or germination with hard seed [90 %]"],
  ],
  [
    "hard seed beside a tetrazolium test",
    pureLiveSeed,
    [{ purity: percent(98), viable: percent(90), hard: percent(1) }],
    ["conflict viable: either viable, or germination with hard seed [90 %]"],
  ],
  [
    "more than all that lives",
    pureLiveSeed,
    [{ ...lot, hard: percent(16) }],
    ["conflict hard: no more than what did not germinate, 15 % [16 %]"],
  ],
  [
    "shares that are none",
    pureLiveSeed,
    [{ purity: percent(0), germination: percent(101), hard: percent(-1) }],
    [
      "range purity: more than 0 % and at most 100 % [0 %]",
      "range germination: more than 0 % and at most 100 % [101 %]",
      "range hard: 0 to 100 % [-1 %]",
    ],
  ],
  [
    "a viable share of none",
    pureLiveSeed,
    [{ purity: percent(98), viable: percent(0) }],
    ["range viable: more than 0 % and at most 100 % [0 %]"],
  ],
  [
    "a share by volume",
    pureLiveSeed,
    [{ ...lot, purity: quantity(98, "% w/w") }],
    ["unit/mismatch purity: a share, such as 40 % or 0.4 [98 % w/w]"],
  ],
  [
    "nothing of bulk seed",
    bulkSeed,
    [{}],
    [
      "missing pureLiveSeed: a mass, or a mass per area, of pure live seed [undefined]",
      "missing lot: a seed lot, or its pure live seed [undefined]",
    ],
  ],
  [
    "bulk seed for bulk seed",
    bulkSeed,
    [{ pureLiveSeed: rate, lot }],
    ["substance/mismatch pureLiveSeed: a quantity of pure live seed [5 g/m2 of seed]"],
  ],
  [
    "a lot of a share past all",
    bulkSeed,
    [{ pureLiveSeed: live, lot: quantity(101, "% w/w", "pure live seed/seed") }],
    ["range lot: 100 % or less [101 % w/w of pure live seed/seed]"],
  ],
  [
    "a lot of no share",
    bulkSeed,
    [{ pureLiveSeed: live, lot: quantity(0, "% w/w", "pure live seed/seed") }],
    ["range lot: more than zero [0 % w/w of pure live seed/seed]"],
  ],
  [
    "a lot with a mistake in it",
    bulkSeed,
    [{ pureLiveSeed: live, lot: { ...lot, purity: percent(0) } }],
    ["range lot.purity: more than 0 % and at most 100 % [0 %]"],
  ],
  [
    "a lot that is null",
    bulkSeed,
    [{ pureLiveSeed: live, lot: null }],
    ["type lot: a record with purity, germination, hard, viable [null]"],
  ],
  [
    "nothing of what is in seed",
    pureLiveSeedIn,
    [{}],
    [
      "missing seed: a mass, or a mass per area, of seed [undefined]",
      "missing lot: a seed lot, or its pure live seed [undefined]",
    ],
  ],
  [
    "less than no seed",
    pureLiveSeedIn,
    [{ seed: quantity(-1, "kg", "seed"), lot }],
    ["range seed: zero or more [-1 kg of seed]"],
  ],
  [
    "a volume of seed",
    pureLiveSeedIn,
    [{ seed: quantity(1, "L", "seed"), lot }],
    ["unit/mismatch seed: a weight or a weight over an area, such as 50 lb or 1 lb/1000 ft2 [1 L of seed]"],
  ],
  [
    "no price",
    pricePerPureLiveSeed,
    [{}],
    [
      "missing price: a price per mass of seed [undefined]",
      "missing lot: a seed lot, or its pure live seed [undefined]",
    ],
  ],
  [
    "a price of nothing in particular",
    pricePerPureLiveSeed,
    [{ price: quantity(2, "money:USD/lb"), lot }],
    [
      'substance/mismatch price: a quantity of none/seed, such as quantity(2, "money:USD/lb", "none/seed") [2 money:USD/lb]',
    ],
  ],
  [
    "a price below nothing",
    pricePerPureLiveSeed,
    [{ price: quantity(-2, "money:EUR/kg", "none/seed"), lot }],
    ["range price: zero or more [-2 money:EUR/kg of none/seed]"],
  ],
  [
    "a price per liter",
    pricePerPureLiveSeed,
    [{ price: quantity(2, "money:EUR/L", "none/seed"), lot }],
    ["unit/mismatch price: a price per weight, such as 2 EUR/lb or 2 EUR/kg [2 money:EUR/L of none/seed]"],
  ],
  [
    "a price that is a number",
    pricePerPureLiveSeed,
    [{ price: 2, lot }],
    ["type price: a price per weight, such as 2 USD/lb or 2 USD/kg, made by quantity(2, unit) [2]"],
  ],
  [
    "a price that is null",
    pricePerPureLiveSeed,
    [{ price: null, lot }],
    ["type price: a price per weight, such as 2 USD/lb or 2 USD/kg, made by quantity(number, unit) [null]"],
  ],
  [
    "a grass that is not counted",
    seedCountsOf,
    ["moss"],
    [
      'type species: one of "creeping bentgrass", "colonial bentgrass", "bermudagrass", "annual bluegrass", "Kentucky bluegrass", "rough bluegrass", "perennial ryegrass", "tall fescue", "fine fescue", "buffalograss", "bahiagrass", "reed canarygrass" ["moss"]',
    ],
  ],
  [
    "nothing of seeds",
    seedsPerArea,
    [{}],
    [
      "missing rate: a rate of seed or of pure live seed [undefined]",
      "missing seedsPerMass: a count per weight, such as 200000 count/lb or 450 count/g [undefined]",
    ],
  ],
  [
    "less than no rate of seeds",
    seedsPerArea,
    [{ rate: quantity(-1, "g/m2", "seed"), seedsPerMass: each }],
    ["range rate: zero or more [-1 g/m2 of seed]"],
  ],
  [
    "a rate of product",
    seedsPerArea,
    [{ rate: quantity(1, "g/m2", "product"), seedsPerMass: each }],
    ["substance/mismatch rate: a quantity of seed [1 g/m2 of product]"],
  ],
  [
    "seeds of no weight",
    seedsPerArea,
    [{ rate, seedsPerMass: quantity(0, "count/g") }],
    ["range seedsPerMass: more than zero [0 count/g]"],
  ],
  [
    "a rate that is null",
    seedsPerArea,
    [{ rate: null, seedsPerMass: each }],
    [
      "type rate: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha, made by quantity(number, unit) [null]",
    ],
  ],
  [
    "nothing for a rate",
    seedingRate,
    [{}],
    [
      "missing liveSeeds: a count over an area, such as 12 count/ft2 or 130 count/m2 [undefined]",
      "missing seedsPerMass: a count per weight, such as 200000 count/lb or 450 count/g [undefined]",
    ],
  ],
  [
    "seeds that are not said to live",
    seedingRate,
    [{ liveSeeds: quantity(9, "count/ft2"), seedsPerMass: each }],
    [
      'substance/mismatch liveSeeds: a quantity of pure live seed, such as quantity(9, "count/ft2", "pure live seed") [9 count/ft2]',
    ],
  ],
  [
    "nothing of seedlings",
    expectedSeedlings,
    [{}],
    [
      "missing rate: a rate of seed or of pure live seed [undefined]",
      "missing lot: a seed lot, or its pure live seed [undefined]",
      "missing seedsPerMass: a count per weight, such as 200000 count/lb or 450 count/g [undefined]",
      "missing emergence: a record with share, source [undefined]",
    ],
  ],
  [
    "a lot beside live seed",
    expectedSeedlings,
    [{ rate: live, lot, seedsPerMass: each, emergence }],
    ["conflict lot: no lot, or a rate of seed [a lot with a rate of pure live seed]"],
  ],
  [
    "no lot beside seed",
    expectedSeedlings,
    [{ rate, seedsPerMass: each, emergence }],
    ["missing lot: a seed lot, or its pure live seed [undefined]"],
  ],
  [
    "an emergence of nobody",
    expectedSeedlings,
    [{ rate: live, seedsPerMass: each, emergence: {} }],
    [
      "missing emergence.share: a share, such as 85 % [undefined]",
      "missing emergence.source: who states it, in up to 400 letters [undefined]",
    ],
  ],
  [
    "an emergence past all",
    expectedSeedlings,
    [{ rate: live, seedsPerMass: each, emergence: { ...emergence, share: percent(101) } }],
    ["range emergence.share: more than 0 % and at most 100 % [101 %]"],
  ],
  [
    "an emergence as a share",
    expectedSeedlings,
    [{ rate: live, seedsPerMass: each, emergence: percent(50) }],
    ["type emergence: a record with share, source: write { share: ... } [50 %]"],
  ],
  ["no mixture", seedMixture, [{}], ["missing components: a list with at least one component [undefined]"]],
  [
    "a mixture of nothing",
    seedMixture,
    [{ components: [] }],
    ["missing components: at least one component [an empty list]"],
  ],
  [
    "a mixture of kinds without anything",
    seedMixture,
    [{ components: [{}, { ...kind, byWeight: percent(0) }] }],
    [
      "missing components[0].name: the name of a kind [undefined]",
      "missing components[0].byWeight: a share, such as 85 % [undefined]",
      "missing components[0].seedsPerMass: a count per weight, such as 200000 count/lb or 450 count/g [undefined]",
      "range components[1].byWeight: more than 0 % and at most 100 % [0 %]",
    ],
  ],
  [
    "a kind by count in one by weight",
    seedMixture,
    [{ components: [byCount] }],
    ['type components[0].byCount: one of the fields name, byWeight, seedsPerMass [a field "byCount"]'],
  ],
  [
    "a kind twice",
    seedMixture,
    [{ components: [kind, kind] }],
    ['duplicate components[1].name: each kind once ["red fescue"]'],
  ],
  [
    "more than all by weight",
    seedMixture,
    [{ components: [kind, { ...kind, name: "bent", byWeight: percent(51) }] }],
    ["range components: 100 % or less in all [101 % in all]"],
  ],
  [
    "a kind whose name is a number",
    seedMixture,
    [{ components: [{ ...kind, name: 7 }] }],
    ["type components[0].name: the name of a kind [7]"],
  ],
  [
    "a mixture of very many",
    seedMixture,
    [{ components: Array.from({ length: 101 }, () => kind) }],
    ["range components: at most 100 items [a list of 101]"],
  ],
  [
    "less than all by count",
    seedMixtureByCount,
    [{ components: [byCount, { ...byCount, name: "bent", byCount: percent(49.4) }] }],
    ["range components: 100 % in all [99.4 % in all]"],
  ],
  [
    "a kind without a count",
    seedMixtureByCount,
    [{ components: [{ ...byCount, byCount: undefined }] }],
    ["missing components[0].byCount: a share, such as 85 % [undefined]"],
  ],
  ["no label", seedLabel, [{}], ["missing components: a list with at least one component [undefined]"]],
  [
    "a label of no kind",
    seedLabel,
    [{ components: [] }],
    ["missing components: at least one component [an empty list]"],
  ],
  [
    "a label with wrong lines",
    seedLabel,
    [
      {
        components: [{ name: "", purity: percent(0), germination: percent(80) }, { name: 3 }],
        otherCrop: percent(-1),
        inert: percent(101),
        weeds: 5,
      },
    ],
    [
      'missing components[0].name: the name of a kind [""]',
      "range components[0].purity: more than 0 % and at most 100 % [0 %]",
      "type components[1].name: the name of a kind [3]",
      "missing components[1].purity: a share, such as 85 % [undefined]",
      "missing components[1].germination: germination, or viable from a tetrazolium test [undefined]",
      "range otherCrop: 0 to 100 % [-1 %]",
      "range inert: 0 to 100 % [101 %]",
      'type weeds: a share, such as 40 % or 0.4, made by quantity(40, "%") or quantity(0.4, "1") [5]',
    ],
  ],
  [
    "a label of more than all",
    seedLabel,
    [
      {
        components: [
          { name: "a", ...lot },
          { name: "b", ...lot },
        ],
      },
    ],
    ["range components: 100 % or less in all [purities of 196 % in all]"],
  ],
  [
    "a label of very many",
    seedLabel,
    [{ components: Array.from({ length: 101 }, () => ({ name: "a", ...lot })) }],
    ["range components: at most 100 items [a list of 101]"],
  ],
  [
    "a label with a line that is not known",
    seedLabel,
    [{ components: [{ name: "a", ...lot, dead: 1 }] }],
    ['type components[0].dead: one of the fields name, purity, germination, hard, viable [a field "dead"]'],
  ],
  [
    "nothing to buy",
    seedOrder,
    [{}],
    [
      "missing area: an area, such as 5000 ft2 or 500 m2 [undefined]",
      "missing rate: a rate of seed or of pure live seed [undefined]",
    ],
  ],
  [
    "seed for no ground, in no bag",
    seedOrder,
    [{ area: quantity(0, "ft2"), rate, bag: quantity(0, "kg") }],
    ["range area: more than zero [0 ft2]", "range bag: more than zero [0 kg]"],
  ],
  [
    "no seed to buy",
    seedOrder,
    [{ area: quantity(1, "ha"), rate: quantity(0, "g/m2", "seed") }],
    ["range rate: more than zero [0 g/m2 of seed]"],
  ],
  [
    "a lot with a rate of seed",
    seedOrder,
    [{ area: quantity(1, "ha"), rate, lot }],
    ["conflict lot: no lot, or a rate of pure live seed [a lot with a rate of seed]"],
  ],
  [
    "live seed to buy without a lot",
    seedOrder,
    [{ area: quantity(1, "ha"), rate: live }],
    ["missing lot: a seed lot, or its pure live seed [undefined]"],
  ],
  [
    "more bulk seed than there are numbers",
    bulkSeed,
    [
      {
        pureLiveSeed: quantity(1e307, "lb", "pure live seed"),
        lot: quantity(1, "% w/w", "pure live seed/seed"),
      },
    ],
    ["not-finite pureLiveSeed: a finite number [infinity]"],
  ],
  [
    "a price past all numbers",
    pricePerPureLiveSeed,
    [
      {
        price: quantity(1e307, "money:USD/lb", "none/seed"),
        lot: quantity(1, "% w/w", "pure live seed/seed"),
      },
    ],
    ["not-finite price: a finite number [infinity]"],
  ],
  [
    "seeds past all numbers",
    seedsPerArea,
    [{ rate: quantity(1e200, "g/m2", "seed"), seedsPerMass: quantity(1e200, "count/g") }],
    ["not-finite rate: a finite number [infinity]"],
  ],
];

refusalsOf("what is refused of seed", rows);
