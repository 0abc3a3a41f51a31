import { quantity } from "../../../src/quantity/index.js";
import { clippingMass, clippingVolumeFor, growthRatio } from "../../../src/stand/index.js";
import { type Refusal, refusalsOf } from "../../told.js";

const clippings = quantity(50, "L");
const dryMass = "bentgrass";
const nitrogen = quantity(4, "%");
const rate = quantity(1, "g/m2", "N");
const day = { volume: quantity(20, "mL/m2"), time: quantity(1, "d") };

const rows: readonly Refusal[] = [
  [
    "nothing of clippings",
    clippingMass,
    [{}],
    [
      "missing clippings: a volume, or a volume per area [undefined]",
      "missing dryMass: a grass of clippingDensities, or dry mass per volume [undefined]",
      "missing nitrogen: a share, such as 85 % [undefined]",
    ],
  ],
  [
    "a weight of clippings",
    clippingMass,
    [{ clippings: quantity(3, "kg"), dryMass, nitrogen }],
    ["unit/mismatch clippings: a volume or a volume over an area, such as 2 gal or 1 gal/1000 ft2 [3 kg]"],
  ],
  [
    "less than no clippings",
    clippingMass,
    [{ clippings: quantity(-1, "L"), dryMass, nitrogen }],
    ["range clippings: zero or more [-1 L]"],
  ],
  [
    "clippings of something",
    clippingMass,
    [{ clippings: quantity(1, "L", "spray"), dryMass, nitrogen }],
    ["substance/mismatch clippings: a quantity of no substance [1 L of spray]"],
  ],
  [
    "a grass that is not in the table",
    clippingMass,
    [{ clippings, dryMass: "rye", nitrogen }],
    ['type dryMass: one of "bentgrass", "bermudagrass", "manilagrass" ["rye"]'],
  ],
  [
    "a dry mass that is none",
    clippingMass,
    [{ clippings, dryMass: quantity(0, "g/L"), nitrogen }],
    ["range dryMass: more than zero [0 g/L]"],
  ],
  [
    "a dry mass of another kind",
    clippingMass,
    [{ clippings, dryMass: quantity(60, "g"), nitrogen }],
    ["unit/mismatch dryMass: a weight per volume, such as 10 lb/gal or 1.2 kg/L [60 g]"],
  ],
  [
    "no nitrogen in the clippings",
    clippingMass,
    [{ clippings, dryMass, nitrogen: quantity(0, "%") }],
    ["range nitrogen: more than 0 % and less than 20 % [0 %]"],
  ],
  [
    "a fifth of nitrogen",
    clippingMass,
    [{ clippings, dryMass, nitrogen: quantity(20, "%") }],
    ["range nitrogen: more than 0 % and less than 20 % [20 %]"],
  ],
  [
    "a field that is not known",
    clippingMass,
    [{ clippings, dryMass, nitrogen, dryMas: 1 }],
    ['type input.dryMas: one of the fields clippings, dryMass, nitrogen [a field "dryMas"] dryMass?'],
  ],
  [
    "nothing to turn round",
    clippingVolumeFor,
    [{}],
    [
      "missing nitrogen: a weight over an area, such as 1 lb/1000 ft2 or 50 kg/ha [undefined]",
      "missing dryMass: a grass of clippingDensities, or dry mass per volume [undefined]",
      "missing share: a share, such as 85 % [undefined]",
    ],
  ],
  [
    "a rate of phosphate",
    clippingVolumeFor,
    [{ nitrogen: quantity(1, "g/m2", "P2O5"), dryMass, share: nitrogen }],
    ["substance/mismatch nitrogen: a quantity of N [1 g/m2 of P2O5]"],
  ],
  [
    "less than no nitrogen",
    clippingVolumeFor,
    [{ nitrogen: quantity(-1, "g/m2", "N"), dryMass, share: nitrogen }],
    ["range nitrogen: zero or more [-1 g/m2 of N]"],
  ],
  [
    "a fifth of nitrogen to turn round",
    clippingVolumeFor,
    [{ nitrogen: rate, dryMass, share: quantity(20, "%") }],
    ["range share: more than 0 % and less than 20 % [20 %]"],
  ],
  [
    "a share of none to turn round",
    clippingVolumeFor,
    [{ nitrogen: rate, dryMass, share: quantity(0, "%") }],
    ["range share: more than 0 % and less than 20 % [0 %]"],
  ],
  [
    "nothing of growth",
    growthRatio,
    [{}],
    [
      "missing measured: a record with volume and time [undefined]",
      "missing wanted: a record with volume and time [undefined]",
    ],
  ],
  [
    "growth without its parts",
    growthRatio,
    [{ measured: {}, wanted: {} }],
    [
      "missing measured.volume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing measured.time: a time, such as 20 min or 2 h [undefined]",
      "missing wanted.volume: a volume over an area, such as 1 gal/1000 ft2 or 400 L/ha [undefined]",
      "missing wanted.time: a time, such as 20 min or 2 h [undefined]",
    ],
  ],
  [
    "growth wanted in no time",
    growthRatio,
    [{ measured: day, wanted: { ...day, time: quantity(0, "d") } }],
    ["range wanted.time: more than zero [0 d]"],
  ],
  [
    "no growth wanted",
    growthRatio,
    [{ measured: day, wanted: { ...day, volume: quantity(0, "mL/m2") } }],
    ["range wanted.volume: more than zero [0 mL/m2]"],
  ],
  [
    "less than no growth",
    growthRatio,
    [{ measured: { ...day, volume: quantity(-1, "mL/m2") }, wanted: day }],
    ["range measured.volume: zero or more [-1 mL/m2]"],
  ],
  [
    "a rate that is no nitrogen",
    growthRatio,
    [{ measured: day, wanted: day, nitrogen: quantity(-1, "g/m2", "N") }],
    ["range nitrogen: zero or more [-1 g/m2 of N]"],
  ],
  [
    "a growth past all measure",
    growthRatio,
    [
      {
        measured: { ...day, volume: quantity(1e308, "mL/m2") },
        wanted: { ...day, volume: quantity(1e-300, "mL/m2") },
      },
    ],
    ["range wanted.volume: a volume that the measured one can be compared with [a record]"],
  ],
];

refusalsOf("what is refused of clippings", rows);
