import {
  acidForAlkalinity,
  adjustedSodiumRatio,
  blendShare,
  blendWaters,
  dissolvedSalts,
  gypsumRequirement,
  inForm,
  ionBalance,
  irrigationLoad,
  irrigationWithLeaching,
  leachingRequirement,
  nitrogenOf,
  quantity,
  residualSodiumCarbonate,
  sodiumAdsorptionRatio,
  sodiumPercentageFromRatio,
  sulfurToIncorporate,
  surfaceMaxima,
  waterSaltClass,
  waterSaltClasses,
} from "../../src/index.js";
import type { PublishedCheck, Source } from "./check.js";

const textbook: Source = {
  title: "Practices of Irrigation and On-farm Water Management",
  publisher: "textbook",
};
const turfGuide: Source = {
  title: "Soil test interpretation sheet, turf resource guide",
  publisher: "turf resource guide 2021-2022",
  year: 2021,
  where: "SAR example",
};
const balanceOf = (ions: { readonly Na: number; readonly Ca: number; readonly Mg: number }) =>
  ionBalance({
    Na: quantity(ions.Na, "mg/L", "Na"),
    Ca: quantity(ions.Ca, "mg/L", "Ca"),
    Mg: quantity(ions.Mg, "mg/L", "Mg"),
    HCO3: quantity(0, "mg/L", "HCO3"),
    Cl: quantity(0, "mg/L", "Cl"),
    SO4: quantity(0, "mg/L", "SO4"),
  }).charges;
const milliequivalents = (ions: Parameters<typeof balanceOf>[0]): readonly number[] => {
  const { Na, Ca, Mg } = balanceOf(ions);
  return [Na, Ca, Mg].map((charge) => charge?.in("meq/L") ?? 0);
};
const ratio = (Na: number, Ca: number, Mg: number): number =>
  sodiumAdsorptionRatio({
    Na: quantity(Na, "meq/L", "Na"),
    Ca: quantity(Ca, "meq/L", "Ca"),
    Mg: quantity(Mg, "meq/L", "Mg"),
  });
const hazards = ["low", "marginal", "high"];
const nitrogenLoad = (value: number): number =>
  irrigationLoad({
    water: { "NO3-N": quantity(value, "mg/L", "NO3-N") },
    depth: quantity(1, "ft"),
  }).nitrogen?.in("lb/acre") ?? 0;

/** Published figures of sulfur, gypsum, sodium and irrigation water. */
export const soilWaterChecks: readonly PublishedCheck[] = [
  {
    entry: "soil-023",
    formulas: ["sulfurApplications"],
    source: {
      title: "Sulfur is not effective for lowering pH of turfed soils",
      publisher: "Purdue University Turfgrass Science",
      url: "https://turf.purdue.edu/sulfur-is-not-effective-for-lowering-ph-of-turfed-soils/?cat=55",
    },
    reached: "read",
    kind: "transcription",
    given: "elemental sulfur on established turf mown at 2 in or higher",
    answers: [
      { of: "lb S/1000 ft2 at once", printed: 5, to: 1 },
      { of: "lb S/1000 ft2 a year", printed: 10, to: 1 },
    ],
    compute: () =>
      surfaceMaxima
        .filter(({ amendment }) => amendment === "sulfur")
        .flatMap(({ amount, perYear }) => [amount, perYear ?? 0]),
  },
  {
    entry: "soil-024",
    formulas: ["sulfurToIncorporate"],
    source: {
      title: "Acidifying soil",
      publisher: "Royal Horticultural Society",
      where: "Quantities to apply",
      url: "https://rhs.org.uk/soil-composts-mulches/acidifying-soil",
    },
    reached: "read",
    kind: "transcription",
    given: "from pH 7.0-7.5 to 6.0-6.5, top 15 cm: sulfur and ferrous sulfate, sandy and clay",
    answers: [
      { of: "g/m2 sulfur, sandy", printed: 135, to: 1 },
      { of: "oz/yd2", printed: 4, to: 1 },
      { of: "g/m2 sulfur, clay", printed: 270, to: 1 },
      { of: "oz/yd2", printed: 8, to: 1 },
      { of: "g/m2 ferrous sulfate, sandy", printed: 1080, to: 1 },
      { of: "oz/yd2", printed: 32, to: 1 },
      { of: "g/m2 ferrous sulfate, clay", printed: 2160, to: 1 },
      { of: "oz/yd2", printed: 63, to: 1, printing: "cut" },
    ],
    compute: () =>
      (["sulfur", "ferrous sulfate"] as const).flatMap((material) =>
        (["sandy", "clay"] as const).flatMap((texture) => {
          const { rate } = sulfurToIncorporate({
            material,
            texture,
            pH: 7.2,
            targetPH: 6.2,
            freeLime: false,
          });
          return [rate.in("g/m2"), rate.in("oz/yd2")];
        }),
      ),
  },
  {
    entry: "soil-025",
    formulas: ["gypsumRequirement"],
    source: { ...textbook, where: "example 8.7" },
    reached: "read",
    kind: "worked example",
    given: "ESP 35 to 15 %, CEC 22 meq/100 g, 40 cm, 3.85 t/ha for 30 cm and a meq, field factor 1.25",
    answers: [
      { of: "meq/100 g", printed: 4.4, to: 0.1 },
      { of: "t/ha", printed: 22.58, to: 0.01, printing: "cut" },
      { of: "t/ha in the field", printed: 28.23, to: 0.01 },
    ],
    compute: () => {
      const need = gypsumRequirement({
        capacity: quantity(22, "meq/100 g"),
        sodiumPercent: quantity(35, "%"),
        targetPercent: quantity(15, "%"),
        convention: "3.85 t/ha for 30 cm and a meq",
        depth: quantity(40, "cm"),
        purity: 100,
        fieldFactor: 1.25,
      });
      return [need.sodium.in("meq/100 g"), need.pure.in("t/ha"), need.rate.in("t/ha")];
    },
  },
  {
    entry: "soil-026",
    formulas: ["gypsumRequirement"],
    source: { ...textbook, where: "section 8.7.1" },
    reached: "read",
    kind: "worked example",
    given: "1 meq of sodium/100 g, an acre-foot of soil, by weight of soil",
    answers: [{ of: "ton of pure gypsum/acre-ft", printed: 1.7, to: 0.1 }],
    compute: () => [
      gypsumRequirement({
        capacity: quantity(10, "meq/100 g"),
        sodiumPercent: quantity(25, "%"),
        targetPercent: quantity(15, "%"),
        layer: { assumed: "4,000,000 lb/acre-ft" },
        purity: 100,
      }).pure.in("US ton/acre"),
    ],
  },
  {
    entry: "soil-027",
    formulas: ["sodiumPercentageFromRatio"],
    source: {
      title: "Exchangeable sodium percentage, quoting Oklahoma Administrative Code 165:10",
      publisher: "Oklahoma Corporation Commission rule",
      where: "the formula; the figure is worked by hand",
    },
    reached: "derived",
    kind: "worked example",
    given: "SAR 13",
    answers: [{ of: "percent", printed: 15.2, to: 0.1 }],
    compute: () => [sodiumPercentageFromRatio(13).percent?.in("%") ?? 0],
  },
  {
    entry: "soil-028",
    formulas: ["ionBalance"],
    source: turfGuide,
    reached: "read",
    kind: "worked example",
    given: "Na 1000, Ca 200, Mg 100 ppm",
    answers: [
      {
        of: "meq/L of Na",
        printed: 44,
        to: 1,
        wrong: { right: 43, why: "1000 / 23 is 43.5; the lines below the heading divide 1500, 300 and 150" },
      },
      { of: "meq/L of Ca", printed: 10, to: 1 },
      { of: "meq/L of Mg", printed: 8.2, to: 0.1 },
    ],
    compute: () => milliequivalents({ Na: 1000, Ca: 200, Mg: 100 }),
  },
  {
    entry: "soil-028",
    formulas: ["sodiumAdsorptionRatio"],
    source: turfGuide,
    reached: "read",
    kind: "worked example",
    given: "the printed 44, 10 and 8.2 meq/L",
    answers: [{ of: "SAR", printed: 14.6, to: 0.1 }],
    compute: () => [ratio(44, 10, 8.2)],
  },
  {
    entry: "soil-030",
    formulas: ["residualSodiumCarbonate"],
    source: {
      title: "Salinity Management Guide: bicarbonate and carbonate",
      publisher: "a guide to water reuse",
      url: "http://www.salinitymanagement.org/Salinity%20Management%20Guide/ls/ls_3f3.html",
    },
    reached: "read",
    kind: "transcription",
    given: "classes from 1.25 and from 2.5 meq/L: 1.24, 1.25, 2.49, 2.5",
    answers: [1, 2, 2, 3].map((printed) => ({ of: "class, 1 to 3", printed, to: 1 })),
    compute: () =>
      [1.24, 1.25, 2.49, 2.5].map((value) => {
        const found = residualSodiumCarbonate({
          HCO3: quantity(value + 3, "meq/L", "HCO3"),
          Ca: quantity(2, "meq/L", "Ca"),
          Mg: quantity(1, "meq/L", "Mg"),
        });
        return hazards.indexOf(found.hazard) + 1;
      }),
  },
  {
    entry: "soil-031",
    formulas: ["dissolvedSalts", "waterSaltClass"],
    source: waterSaltClasses.source,
    reached: "read",
    kind: "transcription",
    given: "500, 1500, 3000, 5000, 6000 uS/cm",
    answers: [
      ...[320, 960, 1920, 3200, 3840].map((printed) => ({ of: "mg/L", printed, to: 1 })),
      ...[1, 2, 3, 4, 5].map((printed) => ({ of: "class from excellent", printed, to: 1 })),
    ],
    compute: () => {
      const limits = [500, 1500, 3000, 5000, 6000].map((value) => quantity(value, "uS/cm"));
      const classes = waterSaltClasses.classes.map(({ name }) => name);
      return [
        ...limits.map((conductivity) => dissolvedSalts({ conductivity }).in("mg/L")),
        ...limits.map((conductivity) => classes.indexOf(waterSaltClass(conductivity)) + 1),
      ];
    },
  },
  {
    entry: "soil-033",
    formulas: ["leachingRequirement", "irrigationWithLeaching"],
    source: {
      title: "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
      publisher: "FAO",
      year: 1985,
    },
    reached: "from memory",
    kind: "worked example",
    given: "ECw 1.2, ECe 2.5 dS/m; 800 mm with the printed 0.10",
    answers: [
      { of: "percent", printed: 10, to: 2 },
      { of: "mm", printed: 890, to: 10 },
    ],
    compute: () => [
      leachingRequirement({
        method: "average root zone",
        water: quantity(1.2, "dS/m"),
        soil: quantity(2.5, "dS/m"),
      }).share.in("%"),
      irrigationWithLeaching({ use: quantity(800, "mm"), share: quantity(10, "%") }).in("mm"),
    ],
  },
  {
    entry: "soil-045",
    formulas: ["irrigationLoad"],
    source: {
      title: "Salinity guide: plant nutrients in recycled water",
      publisher: "a guide to water reuse",
    },
    reached: "read",
    kind: "worked example",
    given: "15 and 50 mg N/L, an acre-foot",
    answers: [41, 136].map((printed) => ({ of: "lb N/acre-ft", printed, to: 1 })),
    compute: () => [15, 50].map(nitrogenLoad),
  },
  {
    entry: "soil-046",
    formulas: ["irrigationLoad", "inForm", "nitrogenOf"],
    source: {
      title: "Nitrogen in irrigation water",
      publisher: "University of California Solution Center for Nutrient Management",
      where: "example",
    },
    reached: "read",
    kind: "worked example",
    given: "45 ppm NO3; the printed 10 ppm NO3-N, an acre-foot",
    answers: [
      { of: "ppm NO3-N", printed: 10, to: 1 },
      { of: "ppm N, of the ion", printed: 10, to: 1 },
      { of: "lb N/acre-ft", printed: 27, to: 1 },
    ],
    compute: () => [
      inForm(quantity(45, "mg/L", "NO3"), "NO3-N").in("mg/L"),
      nitrogenOf(quantity(45, "mg/L", "NO3")).in("mg/L"),
      nitrogenLoad(10),
    ],
  },
  {
    entry: "soil-103",
    formulas: ["irrigationLoad", "quantity"],
    source: {
      title: "Formulas for determining application rates",
      publisher: "Virginia Department of Wildlife Resources",
      url: "https://dwr.virginia.gov/fishing/aquatic-plant-id-and-treatment/formulas-for-determining-application-rates/",
    },
    reached: "read",
    kind: "worked example",
    given: "1 ppm in an acre-foot of water",
    answers: [
      { of: "lb", printed: 2.7, to: 0.1 },
      { of: "gal in an acre-foot", printed: 326_000, to: 1000 },
    ],
    compute: () => [nitrogenLoad(1), quantity(1, "acre-ft").in("gal")],
  },
  {
    entry: "soil-110",
    formulas: ["blendShare"],
    source: { ...textbook, where: "example 8.3" },
    reached: "read",
    kind: "worked example",
    given: "waters of 2 and 15 dS/m, target 8 dS/m",
    answers: [{ of: "percent of the first", printed: 53, to: 1, printing: "cut" }],
    compute: () => [
      blendShare({
        first: quantity(2, "dS/m"),
        second: quantity(15, "dS/m"),
        target: quantity(8, "dS/m"),
      }).in("%"),
    ],
  },
  {
    entry: "soil-111",
    formulas: ["blendWaters"],
    source: { ...textbook, where: "example 8.4" },
    reached: "read",
    kind: "worked example",
    given: "10 and 50 mg/L at 70 and 30 %",
    answers: [{ of: "mg/L", printed: 22, to: 1 }],
    compute: () => {
      const { water } = blendWaters([
        { share: quantity(70, "%"), water: { Cl: quantity(10, "mg/L", "Cl") } },
        { share: quantity(30, "%"), water: { Cl: quantity(50, "mg/L", "Cl") } },
      ]);
      return [water.Cl?.value ?? 0];
    },
  },
  {
    entry: "soil-112",
    formulas: ["irrigationWithLeaching"],
    source: {
      title: "Irrigation water quality (slides)",
      publisher: "Asian Turfgrass Center",
      year: 2017,
      where: "slides 17-19",
    },
    reached: "read",
    kind: "worked example",
    given: "4 mm of use, leaching requirement 0.05",
    answers: [{ of: "mm", printed: 4.2, to: 0.1 }],
    compute: () => [irrigationWithLeaching({ use: quantity(4, "mm"), share: quantity(5, "%") }).in("mm")],
  },
  {
    entry: "soil-113",
    formulas: ["ionBalance"],
    source: {
      title: "Water Quality, example 6.8: sodium adsorption ratio",
      publisher: "textbook of environmental engineering (web copy)",
      where: "supplies A and B",
    },
    reached: "read",
    kind: "worked example",
    given: "A: Na 144, Ca 4.6, Mg 1.1 mg/L; B: Na 63, Ca 108, Mg 33 mg/L",
    answers: [
      {
        of: "meq/L of Na in A",
        printed: 11.1,
        to: 0.1,
        wrong: { right: 6.3, why: "144 / 23 is 6.3; 11.1 is the 255 of dissolved solids" },
      },
      { of: "meq/L of Ca in A", printed: 0.23, to: 0.01 },
      { of: "meq/L of Mg in A", printed: 0.09, to: 0.01 },
      { of: "meq/L of Na in B", printed: 2.74, to: 0.01 },
      { of: "meq/L of Ca in B", printed: 5.4, to: 0.1 },
      { of: "meq/L of Mg in B", printed: 2.72, to: 0.01 },
    ],
    compute: () => [
      ...milliequivalents({ Na: 144, Ca: 4.6, Mg: 1.1 }),
      ...milliequivalents({ Na: 63, Ca: 108, Mg: 33 }),
    ],
  },
  {
    entry: "soil-114",
    formulas: ["acidForAlkalinity"],
    source: {
      title: "Adjusting Alkalinity with Acids",
      publisher: "University of Massachusetts Amherst Extension",
      where: "table 1, read in a copy",
      url: "https://ag.umass.edu/greenhouse-floriculture/fact-sheets/adjusting-alkalinity-with-acids",
    },
    reached: "read",
    kind: "worked example",
    given: "sulfuric acid of 93 %, 1.835 g/mL: 136 mg/L of alkalinity, a fluid ounce in 100 gal",
    answers: [
      { of: "fl oz/100 gal", printed: 1, to: 0.01 },
      { of: "ppm S", printed: 43.6, to: 0.1 },
      {
        of: "mL/100 gal for a ppm",
        printed: 0.23,
        to: 0.01,
        wrong: { right: 0.22, why: "a fluid ounce, 29.57 mL, for 136 ppm is 0.217 mL" },
      },
    ],
    compute: () => {
      const alkalinity = (value: number) => quantity(value, "mg/L", "CaCO3 equivalent");
      const found = acidForAlkalinity({
        alkalinity: alkalinity(136),
        target: alkalinity(0),
        acid: "sulfuric acid",
        strength: quantity(93, "% w/w"),
        density: quantity(1.835, "g/mL", "product"),
      });
      const ounces = found.dose.in("fl oz/gal") * 100;
      const milliliters = quantity(ounces, "fl oz").in("mL");
      return [ounces, found.brings.in("mg/L"), milliliters / 136];
    },
  },
  {
    entry: "soil-115",
    formulas: ["sodiumAdsorptionRatio"],
    source: {
      ...turfGuide,
      title: "Assessing soils for sodium problems, table 7",
      publisher: "turf resource guide, another edition",
      where: "example under table 7",
    },
    reached: "read",
    kind: "worked example",
    given: "44, 10 and 8.2 meq/L",
    answers: [
      {
        of: "SAR",
        printed: 20.6,
        to: 0.1,
        wrong: { right: 14.6, why: "the root was taken before the half: 44 / (sqrt(18.2) / 2)" },
      },
    ],
    compute: () => [ratio(44, 10, 8.2)],
  },
  {
    entry: "soil-116",
    formulas: ["adjustedSodiumRatio"],
    source: {
      title: "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
      publisher: "FAO",
      year: 1985,
    },
    reached: "from memory",
    kind: "worked example",
    given: "Ca 2.32, Mg 1.44, Na 7.73, CO3 0.42, HCO3 3.66 meq/L, 1.15 dS/m",
    answers: [
      { of: "SAR", printed: 5.64, to: 0.01 },
      { of: "adjusted", printed: 6.45, to: 0.1 },
    ],
    compute: () => {
      const water = {
        Na: quantity(7.73, "meq/L", "Na"),
        Ca: quantity(2.32, "meq/L", "Ca"),
        Mg: quantity(1.44, "meq/L", "Mg"),
        HCO3: quantity(3.66, "meq/L", "HCO3"),
        CO3: quantity(0.42, "meq/L", "CO3"),
        conductivity: quantity(1.15, "dS/m"),
      };
      const found = adjustedSodiumRatio({ water, method: "equilibrium calcium" });
      return [found.unadjusted, found.ratio];
    },
  },
];
