import {
  activityIndex,
  analysisOfMix,
  blendToGrade,
  fertilizer,
  formFactor,
  highestProductRate,
  nitrogenBreakdown,
  nutrientsSupplied,
  productNitrogen,
  productRate,
  productRates,
  type Quantity,
  quantity,
  ratesBySource,
  releaseClass,
  slowShareNeeded,
} from "../../src/index.js";
import type { LeftOut, PublishedCheck, Source } from "./check.js";

const dry = <const Id extends string>(id: Id, grade: string) => fertilizer({ id, analysis: grade });
const missing = Number.NaN;
const inLb = (q: unknown): number =>
  (q as Quantity<"mass/area", string> | undefined)?.in("lb/1000 ft2") ?? missing;

const practice: Source = {
  title: "Practice problems for fertilizer analysis",
  publisher: "Iowa State University (Agronomy 354)",
  where: "problems 1 to 8",
  url: "http://www.public.iastate.edu/~teloynac/354ppfert.html",
};
const maryland: Source = {
  title: "Maryland Code, Agriculture 6-224",
  publisher: "Maryland statutes",
  year: 2023,
  where: "(a)(1), (b)",
};
const florida: Source = {
  title: "Urban turf fertilizer rule for home lawn fertilization (EP353)",
  publisher: "University of Florida IFAS Extension",
  where: "rate paragraph",
  url: "https://edis.ifas.ufl.edu/publication/ep353",
};
const marion: Source = {
  title: "Code of ordinances, 19-247",
  publisher: "Marion County, Florida",
  year: 2008,
  where: "section text",
  url: "http://marioncounty-fl.elaws.us/code/coor_ch19_artv_sec19-247",
};
const suffolkSteps: Source = {
  title: "Another set of calculations for fertilizer applications",
  publisher: "Cornell Cooperative Extension, Suffolk County",
  where: "slow-release steps a to e",
};
const agricultureText: Source = {
  title: "Calculating agriculture (student text)",
  publisher: "vocational agriculture text",
  year: 2019,
  where: "chapter 9, pages 9-27 and 9-28",
};

/** A product whose nitrogen is slow to a stated share, percent of the nitrogen. */
const withSlow = (grade: string, percentOfProduct: number) =>
  fertilizer({
    id: "p",
    analysis: grade,
    slowNitrogen: quantity(percentOfProduct, "% w/w", "N:slow/product"),
  });

const caps = (total: number, soluble: number) => [
  { id: "total", limit: quantity(total, "lb/1000 ft2", "N") },
  { id: "soluble", limit: quantity(soluble, "lb/1000 ft2", "N:quick") },
];

/** Published examples of analysis, several targets, caps, splits and blends. */
export const nutrientRateChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-006",
    formulas: ["ratesBySource"],
    source: {
      title: "Four steps in fertilizer calculations (turf management lecture)",
      publisher: "university lecture in a document archive",
      where: "example 1, harder version",
    },
    reached: "read",
    kind: "worked example",
    given: "15 000 ft2, 1 lb N/1000 ft2, 75 % of it from 31-0-0 and 25 % from 46-0-0, in one call",
    answers: [
      { of: "lb N from the slow source", printed: 11.25, to: 0.01 },
      { of: "lb N from urea", printed: 3.75, to: 0.01 },
      { of: "lb of 31-0-0", printed: 36.3, to: 0.1 },
      { of: "lb of 46-0-0", printed: 8.2, to: 0.1 },
    ],
    compute: () => {
      const lawn = quantity(15_000, "ft2");
      const parts = ratesBySource({
        target: quantity(1, "lb/1000 ft2", "N"),
        parts: [
          { product: dry("slow", "31-0-0"), share: quantity(75, "%") },
          { product: dry("urea", "46-0-0"), share: quantity(25, "%") },
        ],
      });
      return [
        ...parts.map(({ part }) => part.times(lawn).in("lb")),
        ...parts.map(({ rate }) => rate.times(lawn).in("lb")),
      ];
    },
  },
  {
    entry: "fert-022",
    formulas: ["formFactor", "quantity"],
    source: { title: "Conversion rates", publisher: "Fertilizer Association of Ireland", where: "tables" },
    reached: "read",
    kind: "worked example",
    given: "13 factors, the 'unit' of fertilizer being 0.5 kg; two of them wrong and one cut",
    answers: [
      { of: "kg/ha in 1 unit/acre", printed: 1.23, to: 0.01, printing: "cut" },
      { of: "kg/ha in 100 units/acre", printed: 124, to: 1 },
      { of: "t/ha in 1 imperial ton/acre", printed: 2.51, to: 0.01 },
      { of: "P2O5 for P", printed: 2.291, to: 0.001 },
      { of: "K2O for K", printed: 1.205, to: 0.001 },
      { of: "MgO for Mg", printed: 1.658, to: 0.001 },
      { of: "SO3 for S", printed: 2.5, to: 0.1 },
      { of: "P in P2O5", printed: 0.436, to: 0.001 },
      { of: "K in K2O", printed: 0.83, to: 0.01 },
      { of: "Mg in MgO", printed: 0.603, to: 0.001 },
      { of: "S in SO3", printed: 0.4, to: 0.1 },
      {
        of: "t in a hundredweight of 112 lb",
        printed: 0.058,
        to: 0.001,
        wrong: { right: 0.051, why: "misprint: 112 lb is 0.0508 t" },
      },
      {
        of: "L in an imperial quart",
        printed: 1.18,
        to: 0.01,
        wrong: { right: 1.14, why: "misprint: a quarter of 4.546 L" },
      },
    ],
    compute: () => [
      quantity(0.5, "kg/acre").in("kg/ha"),
      quantity(50, "kg/acre").in("kg/ha"),
      quantity(2240, "lb/acre").in("t/ha"),
      ...(
        [
          ["P", "P2O5"],
          ["K", "K2O"],
          ["Mg", "MgO"],
          ["S", "SO3"],
          ["P2O5", "P"],
          ["K2O", "K"],
          ["MgO", "Mg"],
          ["SO3", "S"],
        ] as const
      ).map(([from, to]) => formFactor(from, to) ?? missing),
      quantity(112, "lb").in("t"),
      quantity(0.25, "imp gal").in("L"),
    ],
  },
  {
    entry: "fert-027",
    formulas: ["productRate", "nutrientsSupplied", "formFactor"],
    source: practice,
    reached: "derived",
    kind: "worked example",
    given: "120 lb/acre of 35-0-0; 160 lb/acre of 6-10-8; 40 % K2O as K; 20 % P as P2O5 (no key in print)",
    answers: [
      { of: "lb N/acre", printed: 42, to: 1 },
      { of: "lb N", printed: 9.6, to: 0.1 },
      { of: "lb P2O5", printed: 16, to: 0.1 },
      { of: "lb K2O", printed: 12.8, to: 0.1 },
      { of: "% K", printed: 33.2, to: 0.1 },
      { of: "% P2O5", printed: 45.8, to: 0.1 },
    ],
    compute: () => {
      const nitrate = nutrientsSupplied(quantity(120, "lb/acre", "product:an"), dry("an", "35-0-0"));
      const mixed = nutrientsSupplied(quantity(160, "lb/acre", "product:m"), dry("m", "6-10-8"));
      return [
        ...[nitrate.N, mixed.N, mixed.P2O5, mixed.K2O].map((q) => q?.in("lb/acre") ?? missing),
        40 * (formFactor("K2O", "K") ?? missing),
        20 * (formFactor("P", "P2O5") ?? missing),
      ];
    },
  },
  {
    entry: "fert-028",
    formulas: ["productRates"],
    source: {
      title: "How to interpret fertilizer recommendations",
      publisher: "agricultural supplier's advice page, Kenya",
      where: "example 1",
    },
    reached: "read",
    kind: "worked example",
    given: "80 kg N and 60 kg P2O5 per ha from 18-46-0, then 26-0-0",
    answers: [
      { of: "kg/ha of 18-46-0", printed: 130.4, to: 0.1 },
      { of: "kg N/ha credited", printed: 23.47, to: 0.01, printing: "cut" },
    ],
    compute: () => {
      const { steps } = productRates({
        steps: [
          { target: quantity(80, "kg/ha", "N"), product: dry("can", "26-0-0") },
          { target: quantity(60, "kg/ha", "P2O5"), product: dry("dap", "18-46-0") },
        ],
      });
      return [steps[0]?.rate.in("kg/ha") ?? missing, steps[1]?.credited.in("kg/ha") ?? missing];
    },
  },
  {
    entry: "fert-029",
    formulas: ["productRates"],
    source: { title: "How to replenish your soil", publisher: "garden magazine", where: "worked example" },
    reached: "read",
    kind: "worked example",
    given: "3 lb N and 1 lb 'P', taken as P2O5, per 1000 ft2 from 11-55-0, then 21-0-0",
    answers: [
      { of: "lb of 11-55-0", printed: 1.8, to: 0.1 },
      { of: "lb N credited", printed: 0.2, to: 0.1 },
      { of: "lb N left", printed: 2.8, to: 0.1 },
      { of: "lb of 21-0-0", printed: 13.3, to: 0.1 },
      {
        of: "lb of 11-55-0 for 1 lb of elemental P",
        printed: 1.8,
        to: 0.1,
        wrong: { right: 4.2, why: "the label prints P2O5: 1 lb P is 2.29 lb P2O5" },
      },
      {
        of: "lb of 21-0-0 beside it",
        printed: 13.3,
        to: 0.1,
        wrong: { right: 12.1, why: "follows from the same" },
      },
    ],
    compute: () => {
      const nitrogen = { target: quantity(3, "lb/1000 ft2", "N"), product: dry("as", "21-0-0") };
      const map = dry("map", "11-55-0");
      const printed = productRates({
        steps: [nitrogen, { target: quantity(1, "lb/1000 ft2", "P2O5"), product: map }],
      });
      const element = productRates({
        steps: [nitrogen, { target: quantity(1, "lb/1000 ft2", "P"), product: map }],
      });
      return [
        inLb(printed.steps[0]?.rate),
        inLb(printed.steps[1]?.credited),
        inLb(printed.steps[1]?.remaining),
        inLb(printed.steps[1]?.rate),
        inLb(element.steps[0]?.rate),
        inLb(element.steps[1]?.rate),
      ];
    },
  },
  {
    entry: "fert-030",
    formulas: ["blendToGrade"],
    source: {
      title: "Fertilizer terms and calculations (lecture, topic 20)",
      publisher: "North Carolina State University",
      where: "filler example",
      url: "http://broome.soil.ncsu.edu/ssc012/Lecture/topic20.html",
    },
    reached: "read",
    kind: "worked example",
    given: "2000 lb of 0-8-8 from 0-20-0 and 0-0-60",
    answers: [
      { of: "lb of 0-20-0", printed: 800, to: 1 },
      { of: "lb of 0-0-60", printed: 267, to: 1 },
      { of: "lb of filler", printed: 933, to: 1 },
    ],
    compute: () => {
      const { parts, filler } = blendToGrade({
        batch: quantity(2000, "lb"),
        grade: "0-8-8",
        materials: [dry("super", "0-20-0"), dry("muriate", "0-0-60")],
      });
      return [...parts.map(({ amount }) => amount.in("lb")), filler.in("lb")];
    },
  },
  {
    entry: "fert-031",
    formulas: ["blendToGrade", "productRate"],
    source: {
      title: "How to calculate a fertilizer grade (agronomist's answer)",
      publisher: "agronomy question-and-answer site",
      where: "example",
    },
    reached: "read",
    kind: "worked example",
    given: "100 kg of 19-19-19 from 0-0-60, 18-46-0 and 46-0-0; the source adds up rounded parts",
    answers: [
      { of: "kg of 0-0-60", printed: 31.7, to: 0.1 },
      { of: "kg of 18-46-0", printed: 41.3, to: 0.1 },
      { of: "kg N from 18-46-0", printed: 7.43, to: 0.01, printing: "cut" },
      {
        of: "kg of 46-0-0",
        printed: 25.2,
        to: 0.1,
        wrong: { right: 25.1, why: "the 11.57 kg of N left are rounded up to 11.6 on the way" },
      },
      {
        of: "kg of filler",
        printed: 1.8,
        to: 0.1,
        wrong: { right: 1.9, why: "100 less the sum of the rounded parts" },
      },
      { of: "kg of filler from the printed parts", printed: 1.8, to: 0.1 },
    ],
    compute: () => {
      const { parts, filler } = blendToGrade({
        batch: quantity(100, "kg"),
        grade: "19-19-19",
        materials: [dry("kcl", "0-0-60"), dry("dap", "18-46-0"), dry("urea", "46-0-0")],
      });
      const [kcl, dap, urea] = parts.map(({ amount }) => amount.in("kg")) as [number, number, number];
      const credit = nutrientsSupplied(quantity(dap, "kg", "product:dap"), dry("dap", "18-46-0")).N;
      return [kcl, dap, credit?.in("kg") ?? missing, urea, filler.in("kg"), 100 - 31.7 - 41.3 - 25.2];
    },
  },
  {
    entry: "fert-031",
    formulas: ["analysisOfMix"],
    source: {
      title: "How to calculate a fertilizer grade (agronomist's answer)",
      publisher: "agronomy question-and-answer site",
      where: "example, the other way round",
    },
    reached: "read",
    kind: "worked example",
    given: "31.7 kg of 0-0-60, 41.3 kg of 18-46-0, 25.2 kg of 46-0-0 and 1.8 kg of filler",
    answers: [
      { of: "% N", printed: 19, to: 1 },
      { of: "% P2O5", printed: 19, to: 1 },
      { of: "% K2O", printed: 19, to: 1 },
    ],
    compute: () => {
      const part = (id: string, grade: string, kg: number) => ({
        product: dry(id, grade),
        amount: quantity(kg, "kg", `product:${id}` as const),
      });
      const { percent } = analysisOfMix({
        parts: [part("kcl", "0-0-60", 31.7), part("dap", "18-46-0", 41.3), part("urea", "46-0-0", 25.2)],
        filler: quantity(1.8, "kg"),
      });
      return [percent.N, percent.P2O5, percent.K2O].map((found) => found ?? missing);
    },
  },
  {
    entry: "fert-032",
    formulas: ["nutrientsSupplied"],
    source: { ...agricultureText, where: "examples A, B and C" },
    reached: "read",
    kind: "worked example",
    given: "1000 lb of 8-10-4; a ton of 15-12-4; 40 lb of a 60 % K2O salt",
    answers: [
      { of: "lb N", printed: 80, to: 1 },
      { of: "lb P2O5", printed: 100, to: 1 },
      { of: "lb K2O", printed: 40, to: 1 },
      { of: "lb of nutrients in the ton", printed: 620, to: 1 },
      { of: "lb K2O in the salt", printed: 24, to: 1 },
    ],
    compute: () => {
      const in1000 = nutrientsSupplied(quantity(1000, "lb", "product:a"), dry("a", "8-10-4"));
      const inTon = nutrientsSupplied(quantity(1, "US ton", "product:b"), dry("b", "15-12-4"));
      const salt = nutrientsSupplied(quantity(40, "lb", "product:c"), dry("c", "0-0-60"));
      const lb = (q: unknown): number => (q as Quantity<"mass", string> | undefined)?.in("lb") ?? missing;
      return [
        lb(in1000.N),
        lb(in1000.P2O5),
        lb(in1000.K2O),
        lb(inTon.N) + lb(inTon.P2O5) + lb(inTon.K2O),
        lb(salt.K2O),
      ];
    },
  },
  {
    entry: "fert-032",
    formulas: ["blendToGrade"],
    source: { ...agricultureText, where: "example F: the equations are printed, the solution was not seen" },
    reached: "derived",
    kind: "worked example",
    given: "a ton of 17-7-0 from 3-20-0 and 36-0-0",
    answers: [
      { of: "lb of 3-20-0", printed: 700, to: 1 },
      { of: "lb of 36-0-0", printed: 886.1, to: 0.1 },
      { of: "lb of filler", printed: 413.9, to: 0.1 },
    ],
    compute: () => {
      const { parts, filler } = blendToGrade({
        batch: quantity(1, "US ton"),
        grade: "17-7-0",
        materials: [dry("super", "3-20-0"), dry("an", "36-0-0")],
      });
      return [...parts.map(({ amount }) => amount.in("lb")), filler.in("lb")];
    },
  },
  {
    entry: "fert-040",
    formulas: ["nitrogenBreakdown"],
    source: {
      title: "Fertilizer selection",
      publisher: "Suffolk County, New York, with Cornell Cooperative Extension",
      where: "label box",
      url: "https://healthylawns.suffolkcountyny.gov/lawn/fertilizing/selection.htm",
    },
    reached: "read",
    kind: "worked example",
    given: "30-5-10 with 15 % WIN",
    answers: [{ of: "% of the nitrogen slow", printed: 50, to: 1 }],
    compute: () => [
      nitrogenBreakdown({ percent: { urea: 15, waterInsoluble: 15 } }, 30).slowShare.in("% w/w"),
    ],
  },
  {
    entry: "fert-040",
    formulas: ["highestProductRate"],
    source: {
      title: "Fertilizer selection",
      publisher: "Suffolk County, New York, with Cornell Cooperative Extension",
      where: "limit of 0.5 lb of soluble N",
      url: "https://healthylawns.suffolkcountyny.gov/lawn/fertilizing/selection.htm",
    },
    reached: "derived",
    given: "30-5-10 with 15 % WIN under 0.5 lb soluble N/1000 ft2",
    answers: [
      { of: "lb N/1000 ft2", printed: 1, to: 0.1 },
      { of: "lb product/1000 ft2", printed: 3.33, to: 0.01 },
    ],
    compute: () => {
      const found = highestProductRate({
        product: fertilizer({
          id: "p",
          analysis: "30-5-10",
          nitrogen: { percent: { urea: 15, waterInsoluble: 15 } },
        }),
        caps: [{ limit: quantity(0.5, "lb/1000 ft2", "N:quick") }],
      });
      return [inLb(found.supplied.N), inLb(found.rate)];
    },
  },
  ...(["fert-042", "soil-082"] as const).map(
    (entry): PublishedCheck => ({
      entry,
      formulas: ["releaseClass", "nitrogenBreakdown"],
      source: suffolkSteps,
      reached: entry === "soil-082" ? "read" : "derived",
      kind: "transcription",
      given:
        "thresholds 0.29 and 0.15 of WIN by total N: the class just above, at and just below each, as 3, 2, 1",
      answers: [
        { of: "class above 0.29", printed: 3, to: 1 },
        { of: "class at 0.29", printed: 2, to: 1 },
        { of: "class above 0.15", printed: 2, to: 1 },
        { of: "class at 0.15", printed: 1, to: 1 },
        {
          of: "ratio for 20 % N with 6 % WIN by 'divide total N by WIN'",
          printed: 3.3,
          to: 0.1,
          wrong: { right: 0.3, why: "inverted in words: the thresholds are of WIN by total N" },
        },
      ],
      compute: () => {
        const classes = ["quick", "moderate", "slow"];
        const rank = (win: number): number => {
          const broken = nitrogenBreakdown({ percent: { urea: 20 - win, waterInsoluble: win } }, 20);
          return classes.indexOf(releaseClass(broken, "suffolk water-insoluble").class) + 1;
        };
        const example = nitrogenBreakdown({ percent: { urea: 14, waterInsoluble: 6 } }, 20);
        return [
          rank(5.81),
          rank(5.8),
          rank(3.01),
          rank(3),
          (example.waterInsolubleShare?.in("% w/w") ?? missing) / 100,
        ];
      },
    }),
  ),
  {
    entry: "fert-043",
    formulas: ["nitrogenBreakdown"],
    source: {
      title: "Water-insoluble nitrogen (turf pages)",
      publisher: "University of California integrated pest management program",
      where: "note; the rule is printed, the numbers are ours",
      url: "https://ipm.ucanr.edu/TOOLS/TURF/MAINTAIN/winamt.html",
    },
    reached: "derived",
    given: "24 % N, 2 % WIN, 6 % sulfur-coated urea; and no breakdown at all",
    answers: [
      { of: "% of the nitrogen slow", printed: 33.3, to: 0.1 },
      { of: "% of the nitrogen slow without a breakdown", printed: 0, to: 1 },
    ],
    compute: () => [
      nitrogenBreakdown({ percent: { urea: 16, waterInsoluble: 2, coated: 6 } }, 24).slowShare.in("% w/w"),
      productNitrogen(dry("p", "24-0-0")).slowShare.in("% w/w"),
    ],
  },
  ...(["fert-044", "soil-050"] as const).map(
    (entry): PublishedCheck => ({
      entry,
      formulas: ["highestProductRate", "slowShareNeeded", "nutrientsSupplied"],
      source: maryland,
      reached: "derived",
      given: "0.7 lb soluble, 0.9 lb total, 20 % slow (caps printed, answers ours)",
      answers: [
        { of: "lb soluble N at 0.9 lb", printed: 0.72, to: 0.01 },
        { of: "% slow needed at 0.9 lb", printed: 22.2, to: 0.1 },
        { of: "highest lb N/1000 ft2", printed: 0.875, to: 0.001 },
      ],
      compute: () => {
        const product = withSlow("20-0-0", 4);
        const full = productRate(quantity(0.9, "lb/1000 ft2", "N"), product);
        return [
          inLb(nutrientsSupplied(full, product)["N:quick"]),
          slowShareNeeded({
            total: quantity(0.9, "lb/1000 ft2", "N"),
            quickCap: quantity(0.7, "lb/1000 ft2", "N:quick"),
          }).in("% w/w"),
          inLb(highestProductRate({ product, caps: caps(0.9, 0.7) }).supplied.N),
        ];
      },
    }),
  ),
  ...(["fert-045", "soil-048"] as const).map(
    (entry): PublishedCheck => ({
      entry,
      formulas: ["highestProductRate"],
      source: florida,
      reached: "read",
      kind: "round trip",
      given: "2 lb N/1000 ft2 with 65 % controlled release under 0.7 lb soluble: both caps at once",
      answers: [
        { of: "lb soluble N/1000 ft2", printed: 0.7, to: 0.1 },
        { of: "lb N/1000 ft2", printed: 2, to: 1 },
        { of: "caps that bind", printed: 2, to: 1 },
      ],
      compute: () => {
        const found = highestProductRate({ product: withSlow("40-0-0", 26), caps: caps(2, 0.7) });
        return [inLb(found.supplied["N:quick"]), inLb(found.supplied.N), found.binding.length];
      },
    }),
  ),
  ...(["fert-046", "soil-049"] as const).map(
    (entry): PublishedCheck => ({
      entry,
      formulas: ["highestProductRate"],
      source: marion,
      reached: "read",
      kind: "round trip",
      given:
        "10-10-10, all quick, and 30-2-10 with 30 % slow, under 0.7 lb soluble N, 1.0 lb N, 0.25 lb P2O5",
      answers: [
        { of: "lb P2O5/1000 ft2 of 10-10-10, bound by phosphate", printed: 0.25, to: 0.01 },
        { of: "lb N/1000 ft2 of 30-2-10", printed: 1, to: 0.1 },
        { of: "lb soluble N/1000 ft2 of 30-2-10", printed: 0.7, to: 0.1 },
      ],
      compute: () => {
        const limits = [...caps(1, 0.7), { id: "phosphate", limit: quantity(0.25, "lb/1000 ft2", "P2O5") }];
        const even = highestProductRate({ product: dry("even", "10-10-10"), caps: limits });
        const slow = highestProductRate({ product: withSlow("30-2-10", 9), caps: limits });
        return [inLb(even.supplied.P2O5), inLb(slow.supplied.N), inLb(slow.supplied["N:quick"])];
      },
    }),
  ),
  {
    entry: "fert-046",
    formulas: ["slowShareNeeded"],
    source: marion,
    reached: "derived",
    kind: "worked example",
    given: "1 lb N under 0.7 lb soluble",
    answers: [{ of: "% slow needed", printed: 30, to: 1 }],
    compute: () => [
      slowShareNeeded({
        total: quantity(1, "lb/1000 ft2", "N"),
        quickCap: quantity(0.7, "lb/1000 ft2", "N:quick"),
      }).in("% w/w"),
    ],
  },
  {
    entry: "fert-048",
    formulas: ["activityIndex"],
    source: {
      title: "Turfgrass fertilizers: availability of slow nitrogen",
      publisher: "University of Arizona Extension",
      year: 1995,
      where: "activity index; formula and minimum printed, numbers ours",
      url: "https://turf.arizona.edu/ccps0595.html",
    },
    reached: "derived",
    kind: "worked example",
    given: "CWIN 24 %, HWIN 12 %",
    answers: [
      { of: "AI, %", printed: 50, to: 1 },
      { of: "least AI, %", printed: 40, to: 1 },
    ],
    compute: () => {
      const { index, minimum } = activityIndex({
        coldInsoluble: quantity(24, "% w/w", "N/product"),
        hotInsoluble: quantity(12, "% w/w", "N/product"),
      });
      return [index.in("%"), minimum.in("%")];
    },
  },
  {
    entry: "fert-049",
    formulas: ["nitrogenBreakdown"],
    source: {
      title: "Florida Administrative Code 5E-1.003, labels or tags",
      publisher: "Florida regulation",
      where: "(b); the rule is printed, the numbers are ours",
    },
    reached: "derived",
    kind: "worked example",
    given: "nitrate 2, ammoniacal 4, urea 10, WIN 8",
    answers: [
      { of: "% N in all", printed: 24, to: 1 },
      { of: "% of the nitrogen insoluble", printed: 33.3, to: 0.1 },
    ],
    compute: () => {
      const found = nitrogenBreakdown(
        { percent: { nitrate: 2, ammoniacal: 4, urea: 10, waterInsoluble: 8 } },
        24,
      );
      return [found.total.in("% w/w"), found.waterInsolubleShare?.in("% w/w") ?? missing];
    },
  },
  {
    entry: "fert-067",
    formulas: ["productRate"],
    source: {
      title: "Nitrogen fertilizer characteristics",
      publisher: "county environmental health file (University of California table)",
      where: "table 1, lb of material per lb of N",
    },
    reached: "read",
    kind: "worked example",
    given: "ten materials; their nitrogen is printed rounded, which shows in three rows",
    answers: [
      { of: "lb for 82 % N", printed: 1.22, to: 0.01 },
      { of: "lb for 21 % N", printed: 4.76, to: 0.01 },
      { of: "lb for 33.5 % N", printed: 2.98, to: 0.01, printing: "cut" },
      { of: "lb for 15.5 % N", printed: 6.45, to: 0.01 },
      { of: "lb for 46 % N", printed: 2.17, to: 0.01 },
      { of: "lb for 20 % N, aqua ammonia", printed: 5, to: 0.1 },
      {
        of: "lb for 17 % N",
        printed: 5.92,
        to: 0.01,
        wrong: { right: 5.88, why: "the printed weight stands for 16.9 % N" },
      },
      { of: "lb for 32 % N", printed: 3.12, to: 0.01 },
      {
        of: "lb for 23 % N",
        printed: 4.37,
        to: 0.01,
        wrong: { right: 4.35, why: "the printed weight stands for 22.9 % N" },
      },
      {
        of: "lb for 20 % N, ammonium nitrate solution",
        printed: 4.98,
        to: 0.01,
        wrong: { right: 5, why: "the printed weight stands for 20.1 % N" },
      },
    ],
    compute: () =>
      [82, 21, 33.5, 15.5, 46, 20, 17, 32, 23, 20].map((percent) =>
        productRate(quantity(1, "lb/1000 ft2", "N"), dry("p", `${percent}-0-0`)).in("lb/1000 ft2"),
      ),
  },
  {
    entry: "spread-013",
    formulas: ["highestProductRate", "quantity"],
    source: {
      title: "Drop spreader calibration page",
      publisher: "Rutgers (Snyder research farm)",
      where: "calculation 2",
    },
    reached: "read",
    kind: "worked example",
    given: "cap of 0.9 lb N/1000 ft2 in two passes of a product of 10 % N",
    answers: [{ of: "lb N/1000 ft2 per pass", printed: 0.45, to: 0.01 }],
    compute: () => {
      const found = highestProductRate({
        product: dry("p", "10-0-0"),
        caps: [{ limit: quantity(0.9, "lb/1000 ft2", "N") }],
      });
      return [inLb(found.supplied.N) / 2];
    },
  },
  {
    entry: "soil-099",
    formulas: ["quantity"],
    source: {
      title: "Limited lawn and ornamental 2024 (practice set)",
      publisher: "anonymous upload to a quiz site",
      year: 2024,
      where: "questions 1 and 5",
    },
    reached: "read",
    kind: "worked example",
    given: "1.5 lb/1000 ft2 on 7500 ft2; 2 lb/acre on 3 acres",
    answers: [
      { of: "lb", printed: 11.25, to: 0.01 },
      { of: "lb", printed: 6, to: 1 },
    ],
    compute: () => [
      quantity(1.5, "lb/1000 ft2", "product").times(quantity(7500, "ft2")).in("lb"),
      quantity(2, "lb/acre", "product").times(quantity(3, "acre")).in("lb"),
    ],
  },
];

/** Published examples of these formulas that are not checked, and why. */
export const nutrientRateLeftOut: readonly LeftOut[] = [
  {
    entry: "soil-042",
    reason:
      "prints shares of compost nitrogen by year (10 to 15 %, then half each year); compost is no material of this room",
  },
  { entry: "soil-040", reason: "states a rate of product and of water for foliar iron; nothing to compute" },
];
