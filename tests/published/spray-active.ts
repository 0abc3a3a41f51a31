import {
  acidEquivalentOf,
  acidShare,
  amountFor,
  concentrateFor,
  perVolume,
  productForActive,
  quantity,
  strengthOf,
  targetCatch,
  weightPerVolumeOf,
} from "../../src/index.js";
import { to } from "./answer.js";
import type { Answer, PublishedCheck, Source } from "./check.js";

const read = "read" as const;
const army = (where: string): Source => ({
  title: "Pesticides in the Military, subcourse MD0173",
  publisher: "US Army Medical Department Center and School",
  where,
});
const newEngland = (where: string): Source => ({
  title: "New England Vegetable Management Guide, dilution tables",
  publisher: "New England Extension",
  where,
});
const pacific: Source = {
  title: "PNW Weed Management Handbook, weights and measures",
  publisher: "Pacific Northwest Extension",
};
const gallons = (value: number) => quantity(value, "gal", "spray");
const ai = (value: number) => quantity(value, "lb/acre", "ai");

const powder = (entry: string): PublishedCheck => ({
  entry,
  formulas: ["productForActive"],
  source: {
    title: "Agrochemical and Pesticide Safety (handbook extract)",
    publisher: "handbook",
    where: "p. 128, example 5",
  },
  reached: read,
  given: "2 lb ai/acre of an 80 % wettable powder",
  answers: [to("lb/acre", 2.5, 0.1)],
  compute: () => [
    productForActive({ active: ai(2), content: quantity(80, "% w/w", "ai/product") }).in("lb/acre"),
  ],
});

const rates = [0.25, 0.5, 0.75, 1, 1.5, 2] as const;
/** lb ai/gal, the last printed place, and pints per acre at each rate. */
const pints: readonly (readonly [number, number, readonly number[]])[] = [
  [1, 1, [2, 4, 6, 8, 12, 16]],
  [2, 1, [1, 2, 3, 4, 6, 8]],
  // This row is printed to the quarter pint.
  [2.64, 0.25, [0.75, 1.5, 2.25, 3, 4.5, 6]],
  [3, 0.1, [0.7, 1.33, 2, 2.7, 4, 5.33]],
  [3.34, 0.1, [0.6, 1.2, 1.8, 2.4, 3.6, 4.8]],
  [4, 0.1, [0.5, 1, 1.5, 2, 3, 4]],
  [5, 0.1, [0.4, 0.8, 1.2, 1.6, 2.4, 3.2]],
  [6, 0.1, [0.33, 0.7, 1, 1.33, 2, 2.7]],
  [6.7, 0.1, [0.3, 0.6, 0.9, 1.2, 1.8, 2.4]],
  [8, 0.01, [0.25, 0.5, 0.75, 1, 1.5, 2]],
];
const pintsOf = (content: number, rate: number): number =>
  productForActive({ active: ai(rate), content: quantity(content, "lb/gal", "ai/product") }).in("pt/acre");
/** The row of 7 lb/gal, of which copies differ. */
const seven = (at150: Answer): readonly Answer[] => [
  to("pt/acre, 7 lb/gal, 0.25 lb", 0.29, 0.01),
  to("pt/acre, 7 lb/gal, 0.5 lb", 0.57, 0.01),
  to("pt/acre, 7 lb/gal, 0.75 lb", 0.87, 0.01, { wrong: { right: 0.86, why: "0.857" } }),
  to("pt/acre, 7 lb/gal, 1 lb", 1.14, 0.01),
  at150,
  to("pt/acre, 7 lb/gal, 2 lb", 2.3, 0.1),
];
const pintTable = (entry: string, at150: Answer): PublishedCheck => ({
  entry,
  formulas: ["productForActive"],
  source: pacific,
  reached: read,
  given: "pints per acre for lb ai/acre and lb ai/gal",
  answers: [
    ...pints.flatMap(([content, place, row]) =>
      row.map((printed, i) => to(`pt/acre, ${content} lb/gal, ${rates[i]} lb`, printed, place)),
    ),
    ...seven(at150),
  ],
  compute: () => [
    ...pints.flatMap(([content]) => rates.map((rate) => pintsOf(content, rate))),
    ...rates.map((rate) => pintsOf(7, rate)),
  ],
});

const amounts = [0.5, 1, 3, 5] as const;
/** Gallons for 0.5, 1, 3 and 5 lb ai, from the printed quarts and pints; a pair is printed and right. */
const concentrates: readonly (readonly [number, readonly (number | readonly [number, number])[]])[] = [
  [1.5, [4 / 12, 8 / 12, 2, 10 / 3]],
  [2, [1 / 4, 1 / 2, 1.5, 2.5]],
  [4, [1 / 8, 1 / 4, 3 / 4, 5 / 4]],
  [6, [1 / 12, 1 / 6, [1.5 / 4, 0.5], [2.5 / 4, 0.833]]],
  [8, [1 / 16, 1 / 8, 1.5 / 4, 2.5 / 4]],
];
/** Percent of ai and pounds for the same, with the place to which the row is printed. */
const powders: readonly (readonly [number, number, readonly number[]])[] = [
  [15, 0.01, [10 / 3, 20 / 3, 20, 100 / 3]],
  [25, 0.01, [2, 4, 12, 20]],
  [40, 0.01, [1.25, 2.5, 7.5, 12.5]],
  [1, 1, [50, 100, 300, 500]],
  [1.5, 1, [33, 67, 200, 333]],
  [2.5, 1, [20, 40, 120, 200]],
  [5, 1, [10, 20, 60, 100]],
];

/** Per square rod and per 1000 ft2 at 1 lb ai/acre: content, printed, place, printed, place. */
const liquids: readonly (readonly [number, number, number, number])[] = [
  [0.67, 35, 1, 130],
  [1, 24, 1, 87],
  [1.5, 16, 1, 58],
  [2, 12, 1, 43],
  [3, 8, 1, 29],
  [3.34, 7, 1, 26],
  [4, 6, 1, 22],
  [6, 4, 1, 14],
  [7, 3.5, 0.5, 12],
];
const dries: readonly (readonly [number, number, number, number, "cut"?])[] = [
  [100, 2.8, 0.1, 10],
  [90, 3.1, 0.1, 12, "cut"],
  [80, 3.5, 0.1, 13],
  [75, 3.8, 0.1, 14],
  [70, 4, 0.1, 15, "cut"],
  [65, 4.4, 0.1, 16],
  [60, 4.7, 0.1, 17],
  [50, 5.6, 0.1, 21, "cut"],
  [40, 7, 1, 26],
  [30, 9.4, 0.1, 35, "cut"],
  [20, 14.1, 0.1, 52, "cut"],
];
const rod = quantity(272.3, "ft2");
const plot = quantity(1000, "ft2");
const liquidOn = (content: number, area: typeof rod): number =>
  productForActive({ active: ai(1), content: quantity(content, "lb/gal", "ai/product") })
    .times(area)
    .in("mL");
const dryOn = (percent: number, area: typeof rod): number =>
  productForActive({ active: ai(1), content: quantity(percent, "% w/w", "ai/product") })
    .times(area)
    .in("g");

const recipe = (unit: "pt" | "qt" | "gal", value: number, volume: number) =>
  amountFor({
    rate: perVolume(quantity(value, unit, "product"), gallons(100)),
    form: "liquid",
    sprayVolume: gallons(volume),
  });
const dryRecipe = (pounds: number, volume: number) =>
  amountFor({
    rate: perVolume(quantity(pounds, "lb", "product"), gallons(100)),
    form: "dry",
    sprayVolume: gallons(volume),
  });

const percents = [0.03125, 0.0625, 0.125, 0.25, 0.5, 1] as const;
/** lb ai/gal and printed pints per 100 gal; those after the third place are right where the row is not. */
const weightTable: readonly (readonly [number, number, readonly number[], (readonly number[])?])[] = [
  [1, 1, [2, 4, 8, 16, 32, 64]],
  [1.5, 0.1, [1.5, 3, 6, 12, 24, 48], [1.3, 2.7, 5.3, 10.7, 21.3, 42.7]],
  [2, 1, [1, 2, 4, 8, 16, 32]],
  [3, 0.01, [0.75, 1.5, 3, 6, 12, 24], [0.67, 1.33, 2.67, 5.33, 10.67, 21.33]],
  [4, 0.1, [0.5, 1, 2, 4, 8, 16]],
  [5, 0.01, [0.4375, 0.875, 1.75, 3.5, 7, 14], [0.4, 0.8, 1.6, 3.2, 6.4, 12.8]],
];

/** Published examples of active ingredient, acid equivalent and strengths. */
export const sprayActiveChecks: readonly PublishedCheck[] = [
  powder("spray-046"),
  powder("soil-091"),
  {
    entry: "spray-048",
    formulas: ["productForActive"],
    source: {
      title: "Get the recipe right (University of Missouri engineer's steps; method of MU G1272)",
      publisher: "Corn and Soybean Digest",
      where: "2,4-D example",
    },
    reached: read,
    given: "1.5 lb/acre of a 4 lb/gal liquid, both as acid equivalent",
    answers: [to("gal/acre", 0.375, 0.001), to("pt/acre", 3, 1)],
    compute: () => {
      const rate = productForActive({
        active: quantity(1.5, "lb/acre", "ae"),
        content: quantity(4, "lb/gal", "ae/product"),
      });
      return [rate.in("gal/acre"), rate.in("pt/acre")];
    },
    note: "The magazine says active ingredient, the worksheet acid equivalent: both figures have to be of one.",
  },
  {
    entry: "spray-052",
    formulas: ["productForActive"],
    source: newEngland("pounds of actual pesticide per 100 gal"),
    reached: read,
    given: "product for 0.5, 1, 3 and 5 lb ai",
    answers: [
      ...concentrates.flatMap(([content, row]) =>
        row.map((cell, i) =>
          typeof cell === "number"
            ? to(`gal, ${content} lb/gal, ${amounts[i]} lb`, cell, 0.001)
            : to(`gal, ${content} lb/gal, ${amounts[i]} lb`, cell[0], 0.001, {
                wrong: { right: cell[1], why: "the figure of 8 lb/gal was repeated" },
              }),
        ),
      ),
      ...powders.flatMap(([percent, place, row]) =>
        row.map((printed, i) => to(`lb, ${percent} %, ${amounts[i]} lb`, printed, place)),
      ),
    ],
    compute: () => [
      ...concentrates.flatMap(([content]) =>
        amounts.map((pounds) =>
          productForActive({
            active: quantity(pounds, "lb", "ai"),
            content: quantity(content, "lb/gal", "ai/product"),
          }).in("gal"),
        ),
      ),
      ...powders.flatMap(([percent]) =>
        amounts.map((pounds) =>
          productForActive({
            active: quantity(pounds, "lb", "ai"),
            content: quantity(percent, "% w/w", "ai/product"),
          }).in("lb"),
        ),
      ),
    ],
  },
  {
    entry: "spray-053",
    formulas: ["perVolume", "amountFor"],
    source: newEngland("gallons of finished spray"),
    reached: read,
    given: "amounts per 100 gal in 25 gal and in 1 gal",
    answers: [
      to("fl oz in 25 gal of 1/2 pt", 2, 1),
      to("fl oz in 25 gal of 1 pt", 4, 1),
      to("pt in 25 gal of 1 qt", 0.5, 0.1),
      to("qt in 25 gal of 1 gal", 1, 0.1),
      to("tsp in 1 gal of 1/2 pt", 0.5, 0.5),
      to("tsp in 1 gal of 1 pt", 1, 0.5),
      to("tsp in 1 gal of 1 qt", 2, 0.5),
      to("tbsp in 1 gal of 1 gal", 2.5, 0.5),
      to("oz in 25 gal of 1 lb", 4, 1),
      to("oz in 25 gal of 3 lb", 12, 1),
      to("g in 1 gal of 1 lb", 5, 1),
      to("g in 1 gal of 2 lb", 10, 1, { wrong: { right: 9, why: "9.07; 10 % too much" } }),
      to("g in 1 gal of 3 lb", 14, 1),
      to("g in 1 gal of 4 lb", 20, 1, { wrong: { right: 18, why: "18.14; 10 % too much" } }),
    ],
    compute: () => [
      recipe("pt", 0.5, 25).in("fl oz"),
      recipe("pt", 1, 25).in("fl oz"),
      recipe("qt", 1, 25).in("pt"),
      recipe("gal", 1, 25).in("qt"),
      recipe("pt", 0.5, 1).in("tsp"),
      recipe("pt", 1, 1).in("tsp"),
      recipe("qt", 1, 1).in("tsp"),
      recipe("gal", 1, 1).in("tbsp"),
      dryRecipe(1, 25).in("oz"),
      dryRecipe(3, 25).in("oz"),
      ...[1, 2, 3, 4].map((pounds) => dryRecipe(pounds, 1).in("g")),
    ],
  },
  pintTable("spray-054", to("pt/acre, 7 lb/gal, 1.5 lb", 1.7, 0.1)),
  pintTable(
    "soil-100",
    to("pt/acre, 7 lb/gal, 1.5 lb", 1.8, 0.1, {
      wrong: { right: 1.7, why: "1.714; another copy prints 1.7" },
    }),
  ),
  {
    entry: "spray-055",
    formulas: ["productForActive"],
    source: { ...pacific, where: "amount of chemical for 1 square rod and 1000 ft2" },
    reached: read,
    given: "1 lb ai/acre on 272.3 ft2 and on 1000 ft2",
    answers: [
      ...liquids.flatMap(([content, onRod, place, onPlot]) => [
        to(`mL on a square rod, ${content} lb/gal`, onRod, place),
        to(`mL on 1000 ft2, ${content} lb/gal`, onPlot, onPlot === 130 ? 10 : 1),
      ]),
      to("mL on a square rod, 2.5 lb/gal", 10, 1, { wrong: { right: 9, why: "9.46" } }),
      to("mL on 1000 ft2, 2.5 lb/gal", 35, 1),
      ...dries.flatMap(([percent, onRod, place, onPlot, printing]) => [
        to(`g on a square rod, ${percent} %`, onRod, place, printing === undefined ? {} : { printing }),
        to(`g on 1000 ft2, ${percent} %`, onPlot, 1),
      ]),
    ],
    compute: () => [
      ...liquids.flatMap(([content]) => [liquidOn(content, rod), liquidOn(content, plot)]),
      liquidOn(2.5, rod),
      liquidOn(2.5, plot),
      ...dries.flatMap(([percent]) => [dryOn(percent, rod), dryOn(percent, plot)]),
    ],
  },
  {
    entry: "spray-058",
    formulas: ["targetCatch"],
    source: {
      title: "Band applicators",
      publisher: "Pesticide Environmental Stewardship (university consortium)",
    },
    reached: read,
    given: "ft2 of band on which 1 lb/acre is 1 oz",
    answers: [to("ft2", 2722, 1, { printing: "cut" })],
    compute: () => {
      const square = { swath: quantity(1, "ft"), distance: quantity(1, "ft") };
      return [1 / targetCatch({ rate: quantity(1, "lb/acre", "product"), ...square }).in("oz")];
    },
  },
  {
    entry: "spray-060",
    formulas: ["amountFor"],
    source: {
      title: "Applicator practice problems (forestry)",
      publisher: "unnamed extension slide set",
      where: "problem 1",
    },
    reached: read,
    given: "3 % of 3 gal",
    answers: [to("gal", 0.09, 0.01), to("fl oz", 12, 1)],
    compute: () => {
      const rate = quantity(3, "% v/v", "product/spray");
      const product = amountFor({ rate, form: "liquid", sprayVolume: gallons(3) });
      return [product.in("gal"), product.in("fl oz")];
    },
    note: "11.52 fl oz: the printed 12 is rounded up by 4 %.",
  },
  {
    entry: "spray-061",
    formulas: ["concentrateFor"],
    source: {
      title: "Pesticide dilution table (G7510)",
      publisher: "University of Missouri Extension",
      url: "https://extension.missouri.edu/publications/g7510",
    },
    reached: read,
    given: "percent ai by weight in 100 gal, water at 8 lb/gal",
    answers: weightTable.flatMap(([content, place, row, right]) =>
      row.map((printed, i) =>
        to(
          `pt, ${content} lb/gal, ${percents[i]} %`,
          printed,
          place,
          right === undefined
            ? {}
            : {
                wrong: {
                  right: right[i] as number,
                  why: "the other rows follow water at 8 lb/gal; this one is above",
                },
              },
        ),
      ),
    ),
    compute: () =>
      weightTable.flatMap(([content]) =>
        percents.map((percent) =>
          concentrateFor({
            strength: quantity(percent, "% w/w", "ai/spray"),
            concentration: quantity(content, "lb/gal", "ai/product"),
            finished: gallons(100),
            density: quantity(8, "lb/gal"),
          }).product.in("pt"),
        ),
      ),
    note: "Water weighs 8.34 lb/gal, so that the whole table is 4.1 % low.",
  },
  {
    entry: "spray-063",
    formulas: ["strengthOf", "concentrateFor"],
    source: {
      title: "Nutrition and fertility calculations",
      publisher: "Texas A&M AgriLife Extension",
      where: "practical examples I and II",
    },
    reached: read,
    given: "33 % material, ounces in 100 gal",
    answers: [
      to("ppm of 1 oz", 29.75, 0.01, {
        wrong: { right: 24.71, why: "0.33 x 75 is 24.75 (and the 75 is 74.89)" },
      }),
      to("oz for 150 ppm", 5, 1, { wrong: { right: 6, why: "follows from the wrong ppm of an ounce" } }),
      to("oz for 200 ppm", 7, 1, { wrong: { right: 8, why: "follows from the wrong ppm of an ounce" } }),
      to("oz in 100 gal of 1:100 stock", 700, 1, {
        wrong: { right: 809, why: "follows from the wrong ppm of an ounce" },
      }),
    ],
    compute: () => {
      const concentration = quantity(33, "% w/w", "N/product");
      const ounces = (ppm: number): number =>
        concentrateFor({
          strength: quantity(ppm, "mg/L", "N/spray"),
          concentration,
          finished: gallons(100),
        }).product.in("oz");
      const one = strengthOf({
        product: quantity(1, "oz", "product"),
        concentration,
        finished: gallons(100),
      });
      return [one.in("mg/L"), ounces(150), ounces(200), ounces(200 * 100)];
    },
  },
  {
    entry: "spray-064",
    formulas: ["concentrateFor"],
    source: {
      title: "Formulas for determining application rates",
      publisher: "Virginia Department of Wildlife Resources",
      url: "https://dwr.virginia.gov/fishing/aquatic-plant-id-and-treatment/formulas-for-determining-application-rates/",
    },
    reached: read,
    given: "what makes 1 ppm and 1 % (weight by volume)",
    answers: [
      to("lb/acre-ft for 1 ppm", 2.7, 0.1),
      to("g/gal for 1 ppm", 0.0038, 0.0001),
      to("g/ft3 for 1 ppm", 0.0283, 0.0001),
      to("oz/gal for 1 %", 1.34, 0.01),
      to("g/gal for 1 %", 38, 1),
      to("g/L for 1 %", 10, 1),
    ],
    compute: () => {
      const pure = quantity(100, "% w/w", "ai/product");
      const ppm = quantity(1, "mg/L", "ai/spray");
      const percent = quantity(1, "% w/v", "ai/spray");
      const made = (strength: typeof ppm, finished: ReturnType<typeof gallons>) =>
        concentrateFor({ strength, concentration: pure, finished }).product;
      return [
        made(ppm, quantity(1, "acre-ft", "spray")).in("lb"),
        made(ppm, gallons(1)).in("g"),
        made(ppm, quantity(1, "ft3", "spray")).in("g"),
        made(percent, gallons(1)).in("oz"),
        made(percent, gallons(1)).in("g"),
        made(percent, quantity(1, "L", "spray")).in("g"),
      ];
    },
  },
  {
    entry: "soil-075",
    formulas: ["acidShare", "acidEquivalentOf"],
    source: { title: "Ingredient statement of a glyphosate dimethylamine salt", publisher: "label document" },
    reached: read,
    given: "5.07 lb/gal of the salt",
    answers: [to("lb ae/gal", 4, 0.1)],
    compute: () => [
      acidEquivalentOf(quantity(5.07, "lb/gal", "ai"), acidShare("glyphosate", "dimethylammonium")).in(
        "lb/gal",
      ),
    ],
  },
  {
    entry: "soil-084",
    formulas: ["concentrateFor"],
    source: army("page 36"),
    reached: read,
    given: "10 lb of 5 % dust from 80 % powder",
    answers: [to("lb of powder", 0.625, 0.001), to("oz of powder", 10, 1), to("lb of carrier", 9.375, 0.001)],
    compute: () => {
      const dust = concentrateFor({
        strength: quantity(5, "% w/w", "ai/spray"),
        concentration: quantity(80, "% w/w", "ai/product:carbaryl"),
        finished: quantity(10, "lb", "spray"),
      });
      return [dust.product.in("lb"), dust.product.in("oz"), dust.carrier?.in("lb") ?? 0];
    },
  },
  {
    entry: "soil-085",
    formulas: ["concentrateFor"],
    source: army("page 37"),
    reached: read,
    given: "5 gal of 2 % from 80 % powder, 8.34 lb/gal",
    answers: [to("lb", 1.04, 0.01)],
    compute: () => [
      concentrateFor({
        strength: quantity(2, "% w/w", "ai/spray"),
        concentration: quantity(80, "% w/w", "ai/product:carbaryl"),
        finished: gallons(5),
        density: quantity(8.34, "lb/gal"),
      }).product.in("lb"),
    ],
  },
  {
    entry: "soil-087",
    formulas: ["weightPerVolumeOf"],
    source: army("page 43"),
    reached: read,
    given: "0.3 lb/acre in spray of 6 %, 8.34 lb/gal",
    answers: [to("gal/acre", 0.6, 0.1)],
    compute: () => {
      const strength = weightPerVolumeOf(quantity(6, "% w/w", "ai/spray"), quantity(8.34, "lb/gal", "spray"));
      return [
        quantity(0.3, "lb/acre", "ai")
          .per(quantity(strength.in("lb/gal"), "lb/gal", "ai/spray"))
          .in("gal/acre"),
      ];
    },
  },
];
