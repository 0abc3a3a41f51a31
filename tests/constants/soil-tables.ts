// Classes, factors and limits of soil, lime and water, typed a second time from what the sources print.
import type { CivilDate } from "../../src/calendar/index.js";
import { quantity } from "../../src/quantity/index.js";
import {
  acidityFromBuffer,
  assumedSoils,
  compostAmount,
  dissolvedSalts,
  finenessSchemes,
  foliarMicronutrient,
  gypsumRequirement,
  leafRatios,
  limeForRating,
  limeProductRate,
  limeQuality,
  limeRequirement,
  nutrientUse,
  onDryBasis,
  onWetBasis,
  residualLimeCredit,
  soilGuidelines,
  soilMass,
  splitAmendment,
  sulfurApplications,
  sulfurToIncorporate,
  surfaceMaxima,
  tissueRanges,
  waterSaltClasses,
} from "../../src/soil/index.js";
import { type Cell, type ConstantCheck, cells, edge, goes } from "./check.js";

const room = "soil";
const nan = Number.NaN;
const percent = (value: number) => quantity(value, "%");

type Scheme = keyof typeof finenessSchemes;
/** Sieves, factors in percent, pounds that a ton counts for. */
const scheme = (
  name: Scheme,
  sieves: readonly number[],
  factors: readonly number[],
  pounds: number,
): readonly Cell[] => [
  ...sieves.map(
    (mesh, n) => [`${name}, sieve ${n}`, mesh, () => finenessSchemes[name].sieves[n] ?? nan] as const,
  ),
  ...factors.map(
    (factor, n) => [`${name}, factor ${n}`, factor, () => finenessSchemes[name].factors[n] ?? nan] as const,
  ),
  [`${name}, pounds in a ton`, pounds, () => finenessSchemes[name].poundsPerTon],
];

/** First and last of a range, by guideline, nutrient and soil. */
const range = (
  name: keyof typeof soilGuidelines,
  nutrient: string,
  soil: string,
  from: number,
  to?: number,
): readonly Cell[] => {
  const row = () => soilGuidelines[name].rows.find((one) => one.nutrient === nutrient && one.soil === soil);
  const what = `${name}, ${nutrient}, ${soil}`;
  return [
    [what, from, () => row()?.from ?? nan],
    ...(to === undefined ? [] : [[`${what}: upper end`, to, () => row()?.to ?? nan] as const]),
  ];
};

const maximum = (turf: string, amount: number): Cell => [
  `most at once, ${turf}`,
  amount,
  () => surfaceMaxima.find((one) => one.turf === turf)?.amount ?? nan,
];
const months = (turf: string): readonly Cell[] => [
  [
    `fewest months, ${turf}`,
    4,
    () => surfaceMaxima.find((one) => one.turf === turf)?.monthsApart?.[0] ?? nan,
  ],
  [`most months, ${turf}`, 6, () => surfaceMaxima.find((one) => one.turf === turf)?.monthsApart?.[1] ?? nan],
];
const tissue = (of: "N" | "P" | "K", from: number, to: number): readonly Cell[] => [
  [`${of} of the leaf, from`, from, () => tissueRanges.ranges[of].from],
  [`${of} of the leaf, to`, to, () => tissueRanges.ranges[of].to],
];
const saltClass = (name: string, upTo: number): Cell => [
  `${name} water up to, uS/cm`,
  upTo,
  () => waterSaltClasses.classes.find((one) => one.name === name)?.upTo ?? nan,
];

const limes: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source: "Ag Lime Control Service, University of Missouri: #8, #40, #60; 0, 25, 60, 100 %; x 800",
    },
    scheme("Missouri ENM", [8, 40, 60], [0, 25, 60, 100], 800),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "CA512, Cornell University: 0.40 of 20 to 60 mesh, 0.80 of 60 to 100, 1.00 of finer",
    },
    scheme("New York ENV", [20, 60, 100], [0, 40, 80, 100], 2000),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "P3762, Mississippi State University: half of 10 to 50 mesh, all finer, none coarser",
    },
    scheme("Mississippi RNV", [10, 50], [0, 50, 100], 2000),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Evaluation of Agricultural Limestone, factsheet 637.200-2: over 8 mesh 0, to 20 0.2, to 60 0.6, finer 1.0",
    },
    scheme("British Columbia", [8, 20, 60], [0, 20, 60, 100], 2000),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Liming terminology and analysis, University of Wisconsin-Madison: Iowa 4, 8 and 60 mesh, 0.1, 0.3 and 0.6; x 2,000",
    },
    scheme("Iowa ECCE", [4, 8, 60], [10, 30, 60], 2000),
  ),
  ...cells(
    { room, reached: "derived", source: "the products of the definitions, on figures that divide evenly" },
    [
      ["90 % CCE, 80 % fine, 10 % wet", 64.8, () => quality().effective ?? nan],
      ["pounds in a ton of it", 1296, () => quality().perTon?.in("lb/US ton") ?? nan],
      ["a rate by CCE: 90 less a tenth of water is 81", 100, () => limed("CCE", 81)],
      ["a rate by the effective value", 100, () => limed("effective", 64.8)],
      [
        "a rate in standard lime, of which 0.5 tons are a ton",
        50,
        () =>
          limeProductRate({
            rate: quantity(100, "lb/1000 ft2", "product:standard-lime"),
            measure: "standard lime",
            quality: limeQuality({ equalToTon: quantity(0.5, "US ton", "product") }),
            id: "lime-a",
          }).rate.in("lb/1000 ft2"),
      ],
      [
        "tons by ENM",
        3,
        () =>
          limeForRating({
            recommended: quantity(1200, "lb/acre", "other:ENM"),
            rating: quantity(400, "lb/US ton", "other:ENM/product"),
          }).in("US ton/acre"),
      ],
      ["three passing figures as four fractions: 0 + 6 + 18 + 40", 64, () => passing().fineness ?? nan],
      // half of the last place of four figures printed to a tenth
      [
        "fractions may be over 100 % by",
        100.2,
        () => 75 + edge((last) => goes(() => fractions(last)), 25, 26),
      ],
      [
        "short of 100 % without a remark down to",
        99.8,
        () => 75 + edge((last) => fractions(last).findings.length === 0, 25, 24),
      ],
    ],
  ),
];

function quality() {
  return limeQuality({
    CCE: 90,
    moisture: 10,
    scheme: "Mississippi RNV",
    sieves: { fractions: [0, 40, 60] },
  });
}
function passing() {
  return limeQuality({
    CCE: 100,
    scheme: "British Columbia",
    sieves: { passing: { 8: 100, 20: 70, 60: 40 } },
  });
}
function fractions(last: number) {
  return limeQuality({ CCE: 100, scheme: "British Columbia", sieves: { fractions: [25, 25, 25, last] } });
}
function limed(measure: "CCE" | "effective", pounds: number): number {
  const rate = quantity(pounds, "lb/1000 ft2", "CaCO3 equivalent");
  return limeProductRate({ rate, measure, quality: quality(), id: "lime-a" }).rate.in("lb/1000 ft2");
}

const turf = "turf other than putting greens and tees";
const greens = "putting greens and tees";
const guidelines: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Commercial Turf - Maintain, Pennsylvania State University: 100 lb, 25 lb on greens and tees, 4 to 6 months apart",
    },
    [maximum(turf, 100), maximum(greens, 25), ...months(turf), ...months(greens)],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Tall Fescue Monograph, Oregon State University: no more than 50 lb/1,000 ft2 at once",
    },
    [maximum("tall fescue turf", 50)],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Soil Testing for Lawns, AY-18, Purdue University, in a copy: no more than 100 lb of agricultural lime per 1,000 ft2 on higher cut turf",
    },
    [maximum("higher cut turf", 100)],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Sulfur is not effective for lowering pH of turfed soils, Purdue University: 5 lb at once, 10 lb a year, mown at 2 in or more",
    },
    [
      maximum("turf mown at 2 in or higher", 5),
      [
        "sulfur in a year, lb/1000 ft2",
        10,
        () => surfaceMaxima.find(({ amendment }) => amendment === "sulfur")?.perYear ?? nan,
      ],
      ["lowest cut, in", 2, () => edge((height) => goes(() => sulfur(height)), 3, 1)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Minimum Levels for Sustainable Nutrition, reference sheet of September 2014: K 37, P 21, Ca 331, Mg 47, S 7",
    },
    [
      ...range("minimum levels, Mehlich 3", "K", "any", 37),
      ...range("minimum levels, Mehlich 3", "P", "any", 21),
      ...range("minimum levels, Mehlich 3", "Ca", "any", 331),
      ...range("minimum levels, Mehlich 3", "Mg", "any", 47),
      ...range("minimum levels, Mehlich 3", "S", "any", 7),
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Minimum levels as ammonium acetate dissolves them: K 31, Mg 41, Ca 248",
    },
    [
      ...range("minimum levels, ammonium acetate", "K", "any", 31),
      ...range("minimum levels, ammonium acetate", "Mg", "any", 41),
      ...range("minimum levels, ammonium acetate", "Ca", "any", 248),
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source: "Soil test interpretation sheet, turf resource guide 2021, table 3, citing Carrow et al. 2003",
    },
    [
      ...range("sufficiency, Mehlich 3", "P", "any", 27, 54),
      ...range("sufficiency, Mehlich 3", "K", "sand", 50, 116),
      ...range("sufficiency, Mehlich 3", "K", "other soils", 75, 176),
      ...range("sufficiency, Mehlich 3", "Ca", "any", 500, 750),
      ...range("sufficiency, Mehlich 3", "Mg", "sand", 60, 120),
      ...range("sufficiency, Mehlich 3", "Mg", "other soils", 70, 140),
      ...range("sufficiency, Mehlich 3", "S", "any", 15, 40),
      ...range("sufficiency, Bray P1", "P", "any", 15, 30),
      ...range("sufficiency, Olsen", "P", "any", 12, 28),
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Plant analysis handbook - turfgrass, University of Georgia: N 2.20-4.00, P 0.30-0.70, K 1.50-3.00, symptoms below 1.00",
    },
    [
      ...tissue("N", 2.2, 4),
      ...tissue("P", 0.3, 0.7),
      ...tissue("K", 1.5, 3),
      ["K of the leaf with symptoms, below", 1, () => tissueRanges.ranges.K.symptomsBelow ?? nan],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Turf irrigation water quality, Oklahoma State University, table 1: 500, 1500, 3000, 5000, 6000 uS/cm",
    },
    [
      saltClass("excellent", 500),
      saltClass("good", 1500),
      saltClass("fair", 3000),
      saltClass("poor", 5000),
      saltClass("very poor", 6000),
      [
        "salts at 1500 uS/cm, mg/L",
        960,
        () => dissolvedSalts({ conductivity: quantity(1500, "uS/cm") }).in("mg/L"),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "from memory",
      source: "800 mg/L for a dS/m above 5 dS/m, as many laboratories have it",
    },
    [
      ["salts at 10 dS/m, mg/L", 8000, () => saltier(10).in("mg/L")],
      ["where 800 begins, dS/m", 5, () => edge((ec) => goes(() => saltier(ec)), 9, 1)],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Working out the fertilizer recommendation, 2014 (leaf N:P:K 8:1:4); Calculating potassium fertilizer requirement (N:K 3:2)",
    },
    [
      ["P for N, cool-season grass", 1 / 8, () => leafRatios["cool-season grass"].P ?? nan],
      ["K for N, cool-season grass", 4 / 8, () => leafRatios["cool-season grass"].K ?? nan],
      ["K for N, bermudagrass", 2 / 3, () => leafRatios.bermudagrass.K ?? nan],
      [
        "25 g of N on cool-season grass take P",
        25 / 8,
        () =>
          nutrientUse({ nitrogen: quantity(25, "g/m2", "N"), nutrient: "P", grass: "cool-season grass" }).in(
            "g/m2",
          ),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Acidifying soil, Royal Horticultural Society: sulfur 135 and 270, ferrous sulfate 1080 and 2160 g/m2, top 15 cm",
    },
    [
      ["sulfur, sandy soil", 135, () => bare("sulfur", "sandy").rate.in("g/m2")],
      ["sulfur, clay", 270, () => bare("sulfur", "clay").rate.in("g/m2")],
      ["ferrous sulfate, sandy soil", 1080, () => bare("ferrous sulfate", "sandy").rate.in("g/m2")],
      ["ferrous sulfate, clay", 2160, () => bare("ferrous sulfate", "clay").rate.in("g/m2")],
      ["depth, cm", 15, () => bare("sulfur", "clay").depth.in("cm")],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      within: 1e-8,
      source: "Turf tips, March 1998, University of Arizona: 2 to 4 oz of product on 1000 ft2",
    },
    [
      ["most iron product, oz", 4, () => edge((oz) => iron(oz).findings.length === 0, 3, 5)],
      ["least iron product, oz", 2, () => edge((oz) => iron(oz).findings.length === 0, 3, 1)],
    ],
  ),
];

function sulfur(height: number) {
  return sulfurApplications({
    total: quantity(15, "lb/1000 ft2", "S"),
    mowingHeight: quantity(height, "in"),
    freeLime: false,
    first: "2026-09-15" as CivilDate,
    monthsApart: 2,
  });
}
function saltier(ec: number) {
  return dissolvedSalts({ conductivity: quantity(ec, "dS/m"), factor: "800 mg/L per dS/m, above 5 dS/m" });
}
function bare(material: "sulfur" | "ferrous sulfate", texture: "sandy" | "clay") {
  return sulfurToIncorporate({ material, texture, pH: 7.2, targetPH: 6.2, freeLime: false });
}
function iron(oz: number) {
  return foliarMicronutrient({ product: quantity(oz, "oz/1000 ft2", "product"), element: "Fe", percent: 20 });
}

const layers: readonly ConstantCheck[] = [
  ...cells(
    {
      room,
      reached: "read",
      source:
        "CEC calculations, Clemson University: 2,000,000 lb; textbook of irrigation: 4,000,000 lb an acre-foot; Brady and Weil as quoted: 2,240,000 kg to 15 cm",
    },
    [
      ["2,000,000 lb/acre", 2e6, () => soilMass({ assumed: "2,000,000 lb/acre" }).in("lb/acre")],
      // 2,000,000 lb at 300,000 lb an inch
      ["their depth, in", 20 / 3, () => assumedSoils["2,000,000 lb/acre"].depth],
      ["4,000,000 lb/acre-ft", 4e6, () => soilMass({ assumed: "4,000,000 lb/acre-ft" }).in("lb/acre")],
      ["their depth, a foot", 12, () => assumedSoils["4,000,000 lb/acre-ft"].depth],
      ["2,240,000 kg/ha", 2.24e6, () => soilMass({ assumed: "2,240,000 kg/ha to 15 cm" }).in("kg/ha")],
      ["their depth, cm", 15, () => assumedSoils["2,240,000 kg/ha to 15 cm"].depth],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Adams-Evans 8 (8.00 - b) (Clemson University); 4 (6.6 - b) (North Carolina); 12 (7.0 - b) (a commercial laboratory)",
    },
    [
      [
        "Adams-Evans at 7.5",
        4,
        () => acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: 7.5 }).in("meq/100 g"),
      ],
      ["Mehlich at 5.6, 1 g/cm3", 4, () => mehlich(5.6)],
      ["the buffer of pH 7.0 at 6.5", 6, () => commercial(6.5)],
      ["and at 7.5", 0, () => commercial(7.5)],
      // (6.6 - 6.1) 4 = 2; 2 (6 - 5) / (6.6 - 5)
      ["lime of North Carolina, pH 5 to 6", 1.25, () => northCarolina(6.1).rate.in("US ton/acre")],
      ["highest target of North Carolina", 6.6, () => edge((to) => goes(() => northCarolina(6.1, to)), 6, 7)],
    ],
  ),
  ...cells(
    { room, reached: "derived", source: "half of the last printed place of a reading, a tenth of pH" },
    [
      [
        "highest reading of Adams-Evans",
        8.05,
        () => edge((b) => goes(() => acidityFromBuffer({ buffer: "Adams-Evans", bufferPH: b })), 8, 9),
      ],
    ],
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Lime and fertilizer requirements, North Carolina: RC = lime - lime x months x 8 % (mineral) or 16 % (M-O, organic)",
    },
    (["mineral", "mineral-organic", "organic"] as const).map(
      (soil) =>
        [`credit after 5 months, ${soil}`, soil === "mineral" ? 0.6 : 0.2, () => credit(soil)] as const,
    ),
  ),
  ...cells(
    {
      room,
      reached: "read",
      source:
        "Practices of Irrigation and On-farm Water Management, section 8.7.1: 3.85 t/ha for 30 cm, 1.7 t an acre-foot, factor 1.25",
    },
    [
      [
        "10 % of 10 meq, 30 cm, t/ha",
        3.85,
        () => gypsum("3.85 t/ha for 30 cm and a meq", 30, "cm").pure.in("t/ha"),
      ],
      [
        "the same to an acre-foot, tons",
        1.7,
        () => gypsum("1.7 US tons for an acre-foot and a meq", 1, "ft").pure.in("US ton/acre"),
      ],
      [
        "with the factor of the field",
        1.25,
        () => gypsum("1.7 US tons for an acre-foot and a meq", 1, "ft").fieldFactor,
      ],
    ],
  ),
  ...cells(
    { room, reached: "derived", source: "the products of the definitions, on figures that divide evenly" },
    [
      [
        "0.6 % of wet matter, 40 % water, is 1 % of dry",
        1,
        () => onDryBasis({ content: wet(0.6), moisture: 40 }).in("% w/w"),
      ],
      [
        "1 % of dry matter, 40 % water, is 0.6 % of wet",
        0.6,
        () => onWetBasis({ content: wet(1), moisture: 40 }).in("% w/w"),
      ],
      // 324 ft2 to an inch is a cubic yard; 100 m2 to 1 cm is a cubic meter
      [
        "compost, dry lb on 1000 ft2",
        600_000 / 324,
        () => compost(324, "ft2", 1, "in", 1000, "lb/yd3").dryRate.in("lb/1000 ft2"),
      ],
      ["compost, dry kg/ha", 60_000, () => compost(100, "m2", 1, "cm", 1000, "kg/m3").dryRate.in("kg/ha")],
      ["dry weight of it, kg", 600, () => compost(100, "m2", 1, "cm", 1000, "kg/m3").dryWeight.in("kg")],
      [
        "element of 10 lb at 20 %",
        2,
        () =>
          foliarMicronutrient({
            product: quantity(10, "lb/acre", "product"),
            element: "Mn",
            percent: 20,
          }).element.in("lb/acre"),
      ],
      // twice 5 lb is the year's 10: the third waits for the day of the first, a year on
      ["the third of three, months after the first", 12, () => monthsTo(sulfur(3).applications[2]?.date)],
      ["parts of 180 at most 100", 90, () => split().applications[0]?.rate.in("lb/1000 ft2") ?? nan],
    ],
  ),
];

const wet = (value: number) => quantity(value, "% w/w", "N/product");
function mehlich(bufferPH: number): number {
  return acidityFromBuffer({ buffer: "Mehlich, North Carolina", bufferPH, weightPerVolume: 1 }).in(
    "meq/100 g",
  );
}
function commercial(bufferPH: number): number {
  return acidityFromBuffer({ buffer: "pH 7.0 buffer of a commercial laboratory", bufferPH }).in("meq/100 g");
}
function northCarolina(bufferPH: number, targetPH = 6) {
  return limeRequirement({ method: "Mehlich buffer, North Carolina", pH: 5, targetPH, bufferPH });
}
function credit(soil: "mineral" | "mineral-organic" | "organic"): number {
  return residualLimeCredit({
    applied: quantity(1, "US ton/acre", "product:standard-lime"),
    months: 5,
    soil,
  }).in("US ton/acre");
}
function gypsum(
  convention: "3.85 t/ha for 30 cm and a meq" | "1.7 US tons for an acre-foot and a meq",
  depth: number,
  unit: "cm" | "ft",
) {
  return gypsumRequirement({
    capacity: quantity(10, "meq/100 g"),
    sodiumPercent: percent(25),
    targetPercent: percent(15),
    convention,
    depth: quantity(depth, unit),
    purity: 100,
  });
}
function compost(
  area: number,
  areaUnit: "ft2" | "m2",
  depth: number,
  depthUnit: "in" | "cm",
  density: number,
  densityUnit: "lb/yd3" | "kg/m3",
) {
  return compostAmount({
    area: quantity(area, areaUnit),
    depth: quantity(depth, depthUnit),
    bulkDensity: quantity(density, densityUnit, "product"),
    moisture: 40,
  });
}
function split() {
  return splitAmendment({
    total: quantity(180, "lb/1000 ft2", "product"),
    most: quantity(100, "lb/1000 ft2", "product"),
    source: "the laboratory",
    first: "2026-10-01" as CivilDate,
    monthsApart: 6,
  });
}
function monthsTo(date: string | undefined): number {
  const [year = nan, month = nan] = (date ?? "").split("-").map(Number);
  return 12 * (year - 2026) + month - 9;
}

/** Classes, factors and limits of the soil room. */
export const soilTableConstants: readonly ConstantCheck[] = [...limes, ...guidelines, ...layers];
