import { quantity } from "../../src/quantity/index.js";
import {
  alkalineHydrolysis,
  ammoniumSulfateRates,
  amountFor,
  areaPerTank,
  concentrateFor,
  containerRinse,
  dilutionAmounts,
  type Formulation,
  finishedFrom,
  formulationOf,
  formulations,
  halfLives,
  hardnessFromIons,
  hydrolysisLoss,
  jugCode,
  labelRate,
  mixToFinish,
  perVolume,
  rinseResidue,
  rinsesFor,
  strengthOf,
  tankRinse,
  waterReport,
} from "../../src/tank/index.js";
import { to } from "./answer.js";
import type { PublishedCheck, Source } from "./check.js";

const read = "read" as const;
const spray = (value: number) => quantity(value, "gal", "spray");
const hard = (value: number, unit: "mg/L" | "grain/gal" | "grain/imp gal" = "mg/L") =>
  quantity(value, unit, "hardness as CaCO3");
const gallonsPerAcre = (value: number) => quantity(value, "gal/acre", "spray");

const army = (where: string): Source => ({
  title: "Pesticides in the Military, subcourse MD0173",
  publisher: "US Army Medical Department Center and School",
  where,
  url: "http://armymedical.tpub.com/MD0173/Weight-Volume-Calculations-Pesticides-in-the-Military-36.htm",
});
const environment = (where: string): Source => ({
  title: "Mathematics and Statistics for the Environment",
  publisher: "book extract on a reference site",
  where,
  url: "http://what-when-how.com/Tutorial/topic-topic-1524mbeo/Mathematics-and-Statistics-for-the-Environment-637.html",
});
const spotLeaflet = (where: string): Source => ({
  title: "Guidelines for spot spraying (aminopyralid)",
  publisher: "herbicide maker's leaflet, US",
  where,
});

/** Gallons per acre, and the printed fluid ounces in 20 gal at 5 and at 7 fl oz/acre. */
const spots: readonly (readonly [number, number, number])[] = [
  [20, 5, 7],
  [30, 3.3, 4.7],
  [40, 2.5, 3.5],
  [50, 2, 2.8],
  [60, 1.7, 2.3],
  [70, 1.4, 2],
  [80, 1.3, 1.8],
  [90, 1.1, 1.6],
  [100, 1, 1.4],
];
const inTank = (gallons: number, rate: number, volume: number) =>
  amountFor({
    rate: quantity(rate, "fl oz/acre", "product"),
    form: "liquid",
    area: areaPerTank({ capacity: spray(gallons), applicationVolume: gallonsPerAcre(volume) }),
  });

/** Parts of water to one, and the printed ounces of concentrate in a gallon, to the half ounce. */
const parts: readonly (readonly [number, number])[] = [
  [4, 25.5],
  [10, 11.5],
  [12, 10],
  [15, 8],
  [20, 6],
  [32, 4],
  [40, 3],
  [50, 2.5],
  [64, 2],
  [128, 1],
  [256, 0.5],
  [512, 0.25],
];

const international: readonly (readonly [Formulation, string])[] = [
  ["CS", "capsule suspension"],
  ["DC", "dispersible concentrate"],
  ["EC", "emulsifiable concentrate"],
  ["EG", "emulsifiable granule"],
  ["EO", "emulsion, water in oil"],
  ["EP", "emulsifiable powder"],
  ["EW", "emulsion, oil in water"],
  ["GL", "emulsifiable gel"],
  ["GW", "water soluble gel"],
  ["ME", "micro-emulsion"],
  ["OD", "oil dispersion"],
  ["SC", "suspension concentrate"],
  ["SE", "suspo-emulsion"],
  ["SG", "water soluble granule"],
  ["SL", "soluble concentrate"],
  ["SP", "water soluble powder"],
  ["ST", "water soluble tablet"],
  ["WG", "water dispersible granule"],
  ["WP", "wettable powder"],
  ["WT", "water dispersible tablet"],
];

/** Share lost after the half-life that this publisher prints, in percent: it is half. */
const lost = (
  active: string,
  publisher: string,
  rows: readonly (readonly [number, number, "min" | "h" | "d"])[],
): readonly number[] =>
  rows.map(([pH, printed, unit]) => {
    const row = halfLives.find(
      (one) => one.active === active && one.pH === pH && one.source.publisher.startsWith(publisher),
    );
    if (row === undefined) return Number.NaN;
    const { value, unit: of } = row.longest;
    return hydrolysisLoss({ halfLife: quantity(value, of), time: quantity(printed, unit) }).atEnd.in("%");
  });

/** Examples of mixing, dilution, water and rinsing that were read after the first collection. */
export const tankFieldChecks: readonly PublishedCheck[] = [
  {
    entry: "mix-101",
    formulas: ["perVolume", "amountFor"],
    source: {
      title: "Agrochemical and Pesticide Safety (handbook extract)",
      publisher: "handbook",
      where: "p. 126, example 1",
      url: "http://what-when-how.com/Tutorial/topic-166581h5j/Agrochemical-and-Pesticide-Safety-126.html",
    },
    reached: read,
    given: "2 lb per 100 gal in 500 gal",
    answers: [to("lb", 10, 1)],
    compute: () => [
      amountFor({
        rate: perVolume(quantity(2, "lb", "product"), spray(100)),
        form: "dry",
        sprayVolume: spray(500),
      }).in("lb"),
    ],
  },
  {
    entry: "mix-102",
    formulas: ["concentrateFor", "finishedFrom"],
    source: army("page 35 and 36, problem 1"),
    reached: read,
    given: "55 gal of 1 % from a 48 % concentrate, by volume; and the 1.146 gal back",
    answers: [
      to("gal of concentrate", 1.146, 0.001),
      to("gal of water to the rounded 1.1", 53.9, 0.1),
      to("gal finished", 55, 0.1),
    ],
    compute: () => {
      const strength = quantity(1, "% v/v", "ai/spray");
      const concentration = quantity(48, "% v/v", "ai/product");
      const made = concentrateFor({ strength, concentration, finished: spray(55) });
      return [
        made.product.in("gal"),
        made.carrier?.in("gal") ?? Number.NaN,
        finishedFrom({ product: quantity(1.146, "gal", "product"), concentration, strength }).in("gal"),
      ];
    },
  },
  {
    entry: "mix-103",
    formulas: ["amountFor"],
    source: {
      title: "How much product to add in handheld sprayers?",
      publisher: "University of Illinois Extension, Pest Management and Crop Development Bulletin",
      year: 2006,
      where: "issue 10, article 5",
      url: "http://bulletin.ipm.illinois.edu/article.php?id=539",
    },
    reached: read,
    given: "0.5 % of 2 gal",
    answers: [to("fl oz in 2 gal", 256, 1), to("fl oz", 1.28, 0.01)],
    compute: () => [
      spray(2).in("fl oz"),
      amountFor({
        rate: quantity(0.5, "% v/v", "product/spray"),
        form: "liquid",
        sprayVolume: spray(2),
      }).in("fl oz"),
    ],
  },
  {
    entry: "mix-104",
    formulas: ["amountFor", "areaPerTank", "labelRate"],
    source: spotLeaflet("table, fl oz in 20 gal"),
    reached: read,
    given: "5 and 7 fl oz/acre at 20 to 100 gal/acre",
    answers: spots.flatMap(([volume, low, high]) => [
      to(`fl oz, 5 fl oz/acre at ${volume} gal/acre`, low, 0.1),
      to(`fl oz, 7 fl oz/acre at ${volume} gal/acre`, high, 0.1),
    ]),
    compute: () => {
      const stated = labelRate({
        min: quantity(5, "fl oz/acre", "product"),
        max: quantity(7, "fl oz/acre", "product"),
        use: "spot",
      });
      return spots.flatMap(([volume]) =>
        [stated.min, stated.max].map((rate) => inTank(20, rate.value, volume).in("fl oz")),
      );
    },
  },
  {
    entry: "mix-105",
    formulas: ["amountFor", "areaPerTank"],
    source: spotLeaflet("example of a 3 gal tank"),
    reached: read,
    given: "5 fl oz/acre at 40 gal/acre in 3 gal",
    answers: [
      to("mL", 11.4, 0.1, {
        wrong: { right: 11.1, why: "counts 30 mL to the fluid ounce and rounds a gallon's 3.75 up to 3.8" },
      }),
    ],
    compute: () => [inTank(3, 5, 40).in("mL")],
  },
  {
    entry: "mix-107",
    formulas: ["dilutionAmounts"],
    source: {
      title: "Cleaning pruning tools: table of UF/IFAS (Disinfecting pruning tools)",
      publisher: "Cooperative Extension, question answered in Cuyahoga County, Ohio",
      year: 2012,
      url: "https://ask.extension.org/questions/111201",
    },
    reached: read,
    given: "1 plus 3, 1 plus 1 and 1 plus 9 parts; a cup of the first two",
    answers: [
      to("%, 1 plus 3", 25, 1),
      to("%, 1 plus 1", 50, 1),
      to("%, 1 plus 9", 10, 1),
      to("cup of bleach", 0.25, 0.01),
      to("cup of water to it", 0.75, 0.01),
      to("cup of alcohol", 0.5, 0.01),
    ],
    compute: () => {
      // A cup is half a pint.
      const cup = quantity(0.5, "pt", "spray");
      const [bleach, alcohol, phosphate] = [3, 1, 9].map((count) =>
        dilutionAmounts({ parts: count, reading: "1 plus x", finished: cup }),
      ) as [
        ReturnType<typeof dilutionAmounts>,
        ReturnType<typeof dilutionAmounts>,
        ReturnType<typeof dilutionAmounts>,
      ];
      return [
        bleach.share.in("% v/v"),
        alcohol.share.in("% v/v"),
        phosphate.share.in("% v/v"),
        bleach.product.in("pt") * 2,
        bleach.carrier.in("pt") * 2,
        alcohol.product.in("pt") * 2,
      ];
    },
  },
  {
    entry: "mix-108",
    formulas: ["dilutionAmounts"],
    source: {
      title: "Dilution control conversion chart",
      publisher: "maker of cleaning concentrates",
      where: "column of one gallon; end use cost",
      url: "https://docslib.org/doc/12198174/dilution-control-conversion-chart",
    },
    reached: read,
    given: "1:x, the larger number the parts of water, in a gallon; a gallon at 1:32",
    answers: [
      ...parts.map(([count, ounces]) => to(`fl oz in 1 gal at 1:${count}`, ounces, 0.5)),
      to("gal made of 1 gal at 1:32", 33, 1),
      to("gal of water in it", 32, 1),
    ],
    compute: () => {
      const whole = dilutionAmounts({ parts: 32, reading: "1 plus x", finished: spray(33) });
      return [
        ...parts.map(([count]) =>
          dilutionAmounts({ parts: count, reading: "1 plus x", finished: spray(1) }).product.in("fl oz"),
        ),
        whole.finished.in("gal") / whole.product.in("gal"),
        whole.carrier.in("gal"),
      ];
    },
  },
  {
    entry: "mix-109",
    formulas: ["dilutionAmounts", "finishedFrom"],
    source: {
      title: "The dilution solution",
      publisher: "trade magazine of cleaners",
      year: 2010,
      url: "http://www.icsmag.com/articles/print/the-dilution-solution",
    },
    reached: read,
    given: "5 qt of concentrate, eight times as much water",
    answers: [to("qt of water", 40, 1), to("qt finished", 45, 1), to("qt finished, by strength", 45, 1)],
    compute: () => {
      const mixed = dilutionAmounts({
        parts: 8,
        reading: "1 plus x",
        finished: quantity(45, "qt", "spray"),
      });
      const made = finishedFrom({
        product: quantity(5, "qt", "product"),
        concentration: quantity(100, "% v/v", "ai/product"),
        strength: quantity(mixed.share.in("% v/v"), "% v/v", "ai/spray"),
      });
      return [mixed.carrier.in("qt"), mixed.finished.in("qt"), made.in("qt")];
    },
  },
  {
    entry: "mix-110",
    formulas: ["strengthOf", "finishedFrom"],
    source: {
      title: "Garden tool disinfection with hypochlorite",
      publisher: "laboratory supplier, Canada",
      where: "diluting 5 % to 0.5 %",
      url: "https://indigoinstruments.com/test_strips/disinfectants_sanitizers/chlorine_and_iodine/garden-tool-disinfection-hypochlorite-bleach-test-strips-33815-10k.html",
    },
    reached: read,
    given: "one part of 5 % and 9 parts of water",
    answers: [to("% w/v", 0.5, 0.1), to("ppm (mg/L)", 5000, 1000), to("parts in all", 10, 1)],
    compute: () => {
      const bleach = {
        product: quantity(1, "L", "product"),
        concentration: quantity(5, "% w/v", "ai/product"),
      };
      const strength = strengthOf({ ...bleach, finished: quantity(10, "L", "spray") });
      return [
        strength.in("% w/v"),
        strength.in("mg/L"),
        finishedFrom({ ...bleach, strength: quantity(0.5, "% w/v", "ai/spray") }).in("L"),
      ];
    },
  },
  {
    entry: "mix-111",
    formulas: ["perVolume"],
    source: {
      title: "Orchard sprayer manual, consumption for the concentration",
      publisher: "equipment maker, Slovenia",
      where: "page 18",
    },
    reached: read,
    given: "0.2 % of 1500 L/ha; the same kilograms in 500 L/ha",
    answers: [to("% w/v of 3 kg in 1500 L", 0.2, 0.1), to("times as strong in 500 L", 3, 1)],
    compute: () => {
      const kilograms = quantity(3, "kg", "product");
      const [full, low] = [1500, 500].map((liters) =>
        perVolume(kilograms, quantity(liters, "L", "spray")).in("% w/v"),
      ) as [number, number];
      return [full, low / full];
    },
  },
  {
    entry: "mix-112",
    formulas: ["concentrateFor"],
    source: environment("example 23.19"),
    reached: read,
    given: "0.5 mg/L of copper in 15 million gal, from copper sulfate of 25 %",
    answers: [to("lb", 250, 1)],
    compute: () => [
      concentrateFor({
        strength: quantity(0.5, "mg/L", "ai/spray"),
        concentration: quantity(25, "% w/w", "ai/product"),
        finished: spray(15e6),
      }).product.in("lb"),
    ],
  },
  {
    entry: "mix-113",
    formulas: ["amountFor", "perVolume"],
    source: environment("examples 23.20 and 23.21"),
    reached: read,
    given: "0.9 lb/acre-ft in 35 acre-ft; 5.2 lb/acre on 6 acres",
    answers: [to("lb by volume", 31.5, 0.1), to("lb by area", 31.2, 0.1)],
    compute: () => [
      amountFor({
        rate: perVolume(quantity(0.9, "lb", "product"), quantity(1, "acre-ft", "spray")),
        form: "dry",
        sprayVolume: quantity(35, "acre-ft", "spray"),
      }).in("lb"),
      amountFor({
        rate: quantity(5.2, "lb/acre", "product"),
        form: "dry",
        area: quantity(6, "acre"),
      }).in("lb"),
    ],
  },
  {
    entry: "mix-114",
    formulas: ["mixToFinish"],
    source: {
      title: "Crop protection (Agdex 606-1)",
      publisher: "Alberta Agriculture",
      where: "sprayer calibration example, step 6",
      url: "http://agriculture.alberta.ca/flippingbook/agdex/606-1/files/assets/basic-html/page17.html",
    },
    reached: read,
    given: "30 acres at 40 L/acre",
    answers: [to("L needed", 1200, 1), to("L to mix", 1200, 1)],
    compute: () => {
      const mix = mixToFinish({
        area: quantity(30, "acre"),
        applicationVolume: quantity(40, "L/acre", "spray"),
      });
      return [mix.needed.in("L"), mix.toMix.in("L")];
    },
  },
  {
    entry: "mix-115",
    formulas: ["mixToFinish"],
    source: {
      title: "Agrochemical and Pesticide Safety (handbook extract)",
      publisher: "handbook",
      where: "p. 128, example 4",
      url: "http://what-when-how.com/Tutorial/topic-166581h5j/Agrochemical-and-Pesticide-Safety-128.html",
    },
    reached: read,
    given: "the job takes less than a tank: 3.5 acres at 15 gal/acre",
    answers: [to("gal", 52.5, 0.1)],
    compute: () => [
      mixToFinish({ area: quantity(3.5, "acre"), applicationVolume: gallonsPerAcre(15) }).toMix.in("gal"),
    ],
  },
  {
    entry: "mix-116",
    formulas: ["tankRinse", "rinseResidue", "rinsesFor"],
    source: {
      title: "Exponential rinsing",
      publisher: "cleaning consultants, US",
      where: "scenarios 1 and 2",
      url: "http://bfksolutions.com/exponential-rinsing/",
    },
    reached: read,
    given: "300 gal at once or in three rinses, where 0.33 % stays after 300 gal: 1 gal held back",
    answers: [
      to("%, all at once", 0.33, 0.01),
      to("%, first of three", 1, 1),
      to("ppm, after two of 100 gal", 100, 10),
      to("ppm, after three", 1, 1),
      to("rinses down to 1 ppm", 3, 1),
    ],
    compute: () => {
      const heel = quantity(1, "gal", "spray");
      const water = quantity(300, "gal", "water");
      const split = tankRinse({ heel, water, rinses: 3 });
      const after = (rinses: number) =>
        rinseResidue({ heel, rinse: quantity(100, "gal", "water"), rinses }).in("%");
      return [
        split.inOneRinse.in("%"),
        after(1),
        after(2) * 1e4,
        split.residue.in("%") * 1e4,
        rinsesFor({ heel, water, target: quantity(0.0001, "%") }),
      ];
    },
    note: "Of industrial parts. What stays is not printed: 0.33 % of 300 gal is 1 gal. The source takes the residue as inverse to the water; by mass balance it is 1 in 101.",
  },
  {
    entry: "mix-117",
    formulas: ["containerRinse"],
    source: {
      title: "The trouble with triple rinsing",
      publisher: "water treatment company, US",
      year: 2010,
    },
    reached: read,
    given: "a drum of 55 gal, a quarter full, three times",
    answers: [to("gal in all", 41.25, 0.01), to("rinses", 3, 1)],
    compute: () => {
      const drum = containerRinse({
        container: quantity(55, "gal"),
        rule: "US federal label text",
      });
      return [drum.water[0].in("gal"), drum.rinses];
    },
  },
  {
    entry: "mix-118",
    formulas: ["hardnessFromIons", "waterReport"],
    source: {
      title: "Water hardness",
      publisher: "page of standards, US (Wiktel)",
      where: "formula and equivalents",
      url: "https://wiktel.com/standards/hardnes.htm",
    },
    reached: read,
    given: "1 ppm of Ca and of Mg; 1 ppm and 1 grain per US gallon in other degrees",
    answers: [
      to("ppm as CaCO3 of 1 ppm Ca", 2.497, 0.001),
      to("ppm as CaCO3 of 1 ppm Mg", 4.115, 0.001, {
        wrong: { right: 4.118, why: "100.09 / 24.32, the atomic weight of old tables; today's is 24.305" },
      }),
      to("grain/US gal of 1 ppm", 0.058, 0.001),
      to("grain/imp gal (Clark) of 1 ppm", 0.07, 0.01),
      to("ppm of 1 grain/US gal", 17.1, 0.1),
      to("Clark of 1 grain/US gal", 1.2, 0.01),
    ],
    compute: () => {
      const of = (ca: number, mg: number): number =>
        hardnessFromIons({ Ca: quantity(ca, "mg/L", "Ca"), Mg: quantity(mg, "mg/L", "Mg") }).in("mg/L");
      const one = waterReport({ test: { hardness: hard(1) } }).hardness;
      return [
        of(1, 0),
        of(0, 1),
        one?.in("grain/gal") ?? Number.NaN,
        one?.in("grain/imp gal") ?? Number.NaN,
        hard(1, "grain/gal").in("mg/L"),
        hard(1, "grain/gal").in("grain/imp gal"),
      ];
    },
  },
  {
    entry: "mix-119",
    formulas: ["waterReport"],
    source: {
      title: "Understanding water hardness",
      publisher: "Rutgers Cooperative Extension (North Jersey tree fruit)",
      url: "http://www.virtualorchard.net/Apogee/waterhardness.html",
    },
    reached: read,
    given: "250 and 50 ppm; one grain per gallon",
    answers: [
      to("grain/gal of 250 ppm", 14.6, 0.1),
      to("grain/gal of 50 ppm", 3, 1),
      to("ppm of a grain/gal", 17.1, 0.1),
    ],
    compute: () => [
      ...[250, 50].map(
        (value) => waterReport({ test: { hardness: hard(value) } }).hardness?.in("grain/gal") ?? Number.NaN,
      ),
      hard(1, "grain/gal").in("mg/L"),
    ],
  },
  {
    entry: "mix-120",
    kind: "transcription",
    formulas: ["waterReport"],
    source: {
      title: "5 steps to fixing hard spray water",
      publisher: "Farm Progress, reporting Purdue University",
      where: "step three",
      url: "https://www.farmprogress.com/story-five-steps-fixing-hard-spray-water-9-136666-nl_8_nlr_14",
    },
    reached: read,
    given: "dry ammonium sulfate, the usual rate",
    answers: [
      to("lb/100 gal, least", 8.5, 0.1),
      to("lb/100 gal, most", 17, 1),
      to("findings that it is below the minimum in water of 1000 ppm", 0, 1),
    ],
    compute: () => {
      const rate = ammoniumSulfateRates.find(({ about }) => about.startsWith("general"));
      const least = quantity((rate?.min ?? 0) / 100, "lb/gal", "product:sulfate/spray");
      const { findings } = waterReport({ test: { hardness: hard(1000) }, ammoniumSulfate: least });
      return [
        rate?.min ?? 0,
        rate?.max ?? 0,
        findings.filter(({ code }) => code === "water/sulfate-below-minimum").length,
      ];
    },
  },
  {
    entry: "mix-121",
    kind: "transcription",
    formulas: ["hydrolysisLoss"],
    source: {
      title: "Thiophanate-methyl (077), evaluation of 1998",
      publisher: "FAO/WHO Joint Meeting on Pesticide Residues",
      year: 1998,
      where: "physical and chemical properties, hydrolysis at 25 °C",
    },
    reached: read,
    given: "half-lives of 867 d at pH 5, 36 d at pH 7, 0.7 d at pH 9",
    answers: [
      ...[5, 7, 9].map((pH) => to(`% lost after the half-life at pH ${pH}`, 50, 1)),
      to("% lost at pH 9 after two of them", 75, 1),
    ],
    compute: () => [
      ...lost("thiophanate-methyl", "FAO/WHO", [
        [5, 867, "d"],
        [7, 36, "d"],
        [9, 0.7, "d"],
      ]),
      hydrolysisLoss({ halfLife: quantity(0.7, "d"), time: quantity(1.4, "d") }).atEnd.in("%"),
    ],
  },
  {
    entry: "mix-122",
    kind: "transcription",
    formulas: ["alkalineHydrolysis", "hydrolysisLoss"],
    source: {
      title: "Carbaryl, data sheet with the stability of the pesticide handbooks",
      publisher: "chemical supplier, China",
      where: "Stability",
      url: "http://szchemsz.com/en/products_01.asp?Menuid=45&Menuidd=25&id=80",
    },
    reached: read,
    given: "half-lives of 12 d at pH 7 and 3.2 h at pH 9",
    answers: [
      to("% lost after the half-life at pH 7", 50, 1),
      to("% lost after the half-life at pH 9", 50, 1),
      to("% lost at pH 9 after it, at most", 50, 1),
    ],
    compute: () => [
      ...lost("carbaryl", "chemical supplier", [
        [7, 12, "d"],
        [9, 3.2, "h"],
      ]),
      alkalineHydrolysis({ active: "carbaryl", pH: 9, time: quantity(3.2, "h") })?.atEnd[1].in("%") ??
        Number.NaN,
    ],
    note: "Far shorter than the 24 to 30 and 1 to 3 days of a garden column: the library takes both ends.",
  },
  {
    entry: "mix-123",
    kind: "transcription",
    formulas: ["alkalineHydrolysis", "hydrolysisLoss"],
    source: {
      title: "Captan, registration dossier, endpoint summary of environmental fate",
      publisher: "European Chemicals Agency",
      year: 2023,
      where: "description of key information",
      url: "https://poisoncentres.echa.europa.eu/hr/web/guest/registration-dossier/-/registered-dossier/12775/5/1",
    },
    reached: read,
    given: "a half-life of 4.9 h at pH 7",
    answers: [to("% lost after the half-life", 50, 1), to("% lost at pH 7 after it, at most", 50, 1)],
    compute: () => [
      ...lost("captan", "European", [[7, 4.9, "h"]]),
      alkalineHydrolysis({ active: "captan", pH: 7, time: quantity(4.9, "h") })?.atEnd[1].in("%") ??
        Number.NaN,
    ],
  },
  {
    entry: "mix-124",
    kind: "transcription",
    formulas: ["formulationOf"],
    source: {
      title: "Catalogue of pesticide formulation types and international coding system, 7th edition",
      publisher: "CropLife International",
      year: 2017,
      where: "Technical Monograph No. 2, list of codes, in a transcription",
      url: "https://tom.ji42.com/?p=22735",
    },
    reached: read,
    given: "codes of what is mixed with water, each with its printed meaning",
    answers: international.map(([code, meaning]) => to(`${code} is ${meaning} (1 = yes)`, 1, 1)),
    compute: () =>
      international.map(([code, meaning]) => {
        const kind = formulationOf(code, { scheme: "international" });
        return formulations[kind].name.startsWith(meaning) ? 1 : 0;
      }),
  },
  {
    entry: "mix-126",
    kind: "transcription",
    formulas: ["jugCode"],
    source: {
      title: "Herbicide Formulations and Calculations: Active Ingredient or Acid Equivalent?",
      publisher: "University of Illinois",
      where: "numbers and letters behind a name",
    },
    reached: read,
    given: "codes 4L (as a flowable, 4F), 90DF and 3.3EC",
    answers: [to("lb/gal of 4F", 4, 1), to("lb in a lb of 90DF", 0.9, 0.01), to("lb/gal of 3.3EC", 3.3, 0.1)],
    compute: () =>
      (["4F", "90DF", "3.3EC"] as const).map((code) => {
        const { content } = jugCode(code);
        if (content === undefined) return Number.NaN;
        return content.dimension === "mass/mass" ? content.in("lb/lb") : content.in("lb/gal");
      }),
  },
  {
    entry: "mix-125",
    kind: "transcription",
    formulas: ["formulationOf"],
    source: {
      title: "Learn terminology on pesticide packaging",
      publisher: "Daily Press (Virginia)",
      year: 1992,
      url: "http://articles.dailypress.com/1992-07-01/news/9207010047_1_concentrates-formulations-mixing",
    },
    reached: read,
    given: "EC or E, F, WP or W, SP on US labels",
    answers: ["EC", "E", "F", "WP", "W", "SP"].map((code) => to(`${code} as printed (1 = yes)`, 1, 1)),
    compute: () =>
      (
        [
          ["EC", "EC"],
          ["E", "EC"],
          ["F", "SC"],
          ["WP", "WP"],
          ["W", "WP"],
          ["SP", "SP"],
        ] as const
      ).map(([code, kind]) => (formulationOf(code, { scheme: "US label" }) === kind ? 1 : 0)),
    note: "The page reads L as a flowable; other lists do not, so that L is refused with its choices.",
  },
];
