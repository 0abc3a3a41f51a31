import { costPerArea, fertilizer, money, nutrientsSupplied, productRate, quantity } from "../../src/index.js";
import type { Answer, PublishedCheck } from "./check.js";

const read = "read" as const;
const dry = (analysis: string) => fertilizer({ id: "p", analysis });
/** An Australian analysis: phosphorus as the element. */
const superphosphate = (percent: number) =>
  fertilizer({ id: "super", analysis: { basis: "element", percent: { P: percent } } });

/** Percent of nitrogen, and the printed pounds for 0.1 and 0.2 lb N/100 ft2 and for 1 lb N/1000 ft2. */
const grades: readonly (readonly [number, number, number, number])[] = [
  [45, 0.2, 0.4, 2.2],
  [37, 0.3, 0.5, 2.7],
  [36, 0.3, 0.6, 2.8],
  [33, 0.3, 0.3, 3],
  [32, 0.3, 0.6, 3.1],
  [30, 0.3, 0.7, 3.3],
  [28, 0.4, 0.7, 3.6],
  [27, 0.4, 0.7, 3.7],
  [25, 0.4, 0.8, 4],
  [24, 0.4, 0.8, 4.2],
  [22, 0.5, 0.9, 4.5],
  [21, 0.5, 1, 4.8],
  [20, 0.5, 1, 5],
  [19, 0.5, 1, 5.3],
  [18, 0.6, 1.1, 5.6],
  [16, 0.6, 1.3, 6.3],
  [15, 0.7, 1.3, 6.7],
  [13, 0.8, 1.5, 7.7],
  [12, 0.8, 1.7, 8.3],
  [10, 1, 2, 10],
  [6, 1.7, 3.3, 16.7],
  [5, 2, 4, 20],
];
/** Two figures of the column for 0.2 lb N/100 ft2 are off. */
const off: Readonly<Record<number, Answer["wrong"]>> = {
  33: { right: 0.6, why: "the figure of the column beside it: 0.2 / 0.33 = 0.606" },
  19: { right: 1.1, why: "twice the rounded 0.5: 0.2 / 0.19 = 1.053" },
};
const needed = (nitrogen: number, percent: number, area: string) =>
  productRate(quantity(nitrogen, "lb/1000 ft2", "N"), dry(`${percent}-0-0`))
    .times(quantity(area === "100 ft2" ? 100 : 1000, "ft2"))
    .in("lb");

/** Worked examples of product and cost from bulletins and manuals. */
export const nutrientBulletinChecks: readonly PublishedCheck[] = [
  {
    entry: "fert-131",
    formulas: ["productRate"],
    source: {
      title: "Step-by-step fertilizer guide for home grounds and gardening",
      publisher: "University of Massachusetts Amherst Extension",
      url: "https://ag.umass.edu/print/15878",
    },
    reached: read,
    given: "3 lb N/1000 ft2 from 24-25-4",
    answers: [{ of: "lb product/1000 ft2", printed: 12.5, to: 0.1 }],
    compute: () => [productRate(quantity(3, "lb/1000 ft2", "N"), dry("24-25-4")).in("lb/1000 ft2")],
  },
  {
    entry: "fert-132",
    formulas: ["productRate"],
    source: {
      title: "Calculating fertilizer rates, garden notes 233",
      publisher: "Colorado State University Extension",
      where: "table 1",
      url: "http://www.ext.colostate.edu/mg/gardennotes/233.html",
    },
    reached: read,
    given: "grades of 5 to 45 % N; 0.1 and 0.2 lb N/100 ft2 and 1 lb N/1000 ft2",
    answers: grades.flatMap(([percent, tenth, fifth, whole]) => [
      { of: `lb/100 ft2 of ${percent} % for 0.1 lb N`, printed: tenth, to: 0.1 },
      {
        of: `lb/100 ft2 of ${percent} % for 0.2 lb N`,
        printed: fifth,
        to: 0.1,
        ...(off[percent] && { wrong: off[percent] }),
      },
      { of: `lb/1000 ft2 of ${percent} % for 1 lb N`, printed: whole, to: 0.1 },
    ]),
    compute: () =>
      grades.flatMap(([percent]) => [
        needed(1, percent, "100 ft2"),
        needed(2, percent, "100 ft2"),
        needed(1, percent, "1000 ft2"),
      ]),
  },
  {
    entry: "fert-133",
    formulas: ["productRate", "nutrientsSupplied"],
    source: {
      title: "Fertiliser calculations, DPI 496",
      publisher: "New South Wales Department of Primary Industries",
      year: 2004,
      where: "calculations A and B",
      url: "https://scribd.com/document/441563037/fertiliser-calculations-pdf",
    },
    reached: read,
    given: "single superphosphate of 8.8 % P (the element): for 20 kg P/ha, and what 125 kg/ha brings",
    answers: [
      { of: "kg product/ha", printed: 227, to: 1 },
      { of: "kg P/ha", printed: 11, to: 1 },
    ],
    compute: () => {
      const product = superphosphate(8.8);
      const brought = nutrientsSupplied(quantity(125, "kg/ha", "product:super"), product);
      return [
        productRate(quantity(20, "kg/ha", "P"), product).in("kg/ha"),
        brought.P?.in("kg/ha") ?? Number.NaN,
      ];
    },
  },
  {
    entry: "fert-134",
    formulas: ["productRate", "costPerArea"],
    source: {
      title: "Dairy soils and fertiliser manual, chapter 14: calculating rates and costs",
      publisher: "Dairy Australia",
      year: 2013,
      where: "14.3.1, first example",
      url: "http://fertsmart.dairyingfortomorrow.com.au/dairy-soils-and-fertiliser-manual/chapter-14-calculating-rates-and-costs/14-3-the-cost-saving-of-applying-the-correct-blend-of-fertiliser/",
    },
    reached: read,
    given:
      "25 kg P/ha from single superphosphate of 8.9 % P; 364 AUD/t and 40 AUD/t for freight and spreading",
    answers: [
      { of: "kg product/ha", printed: 281, to: 1 },
      { of: "AUD/ha for the 281 kg", printed: 113.52, to: 0.01 },
    ],
    compute: () => {
      const product = superphosphate(8.9);
      const price = money(364 + 40, "AUD").per(quantity(1, "t"));
      const rate = quantity(281, "kg/ha", "product:super");
      return [
        productRate(quantity(25, "kg/ha", "P"), product).in("kg/ha"),
        costPerArea({ product, rate, price }).in("money:AUD/ha"),
      ];
    },
  },
];
