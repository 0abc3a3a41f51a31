import { describe, expect } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const ppm = (value: number, of: string) => quantity(value, "mg/kg", of as "K/soil");
const lb = (value: number, of = "CaCO3 equivalent") => quantity(value, "lb/1000 ft2", of as "S");
const record = (start: string) => expect.stringMatching(new RegExp(`^${start}`)) as unknown as string;

describe("soil tests, leaves and organic matter", () => {
  const reading = (more: object) => () =>
    call.soilTestReading({
      nutrient: "K",
      content: ppm(60, "K/soil"),
      extractant: "Mehlich 3",
      guideline: "sufficiency, Mehlich 3",
      soil: "sand",
      ...more,
    });
  const own = {
    extractant: "Mehlich 3",
    meaning: "what the county states",
    rows: [{ nutrient: "K", soil: "any", from: 50, to: 40 }],
    source: { title: "Turf", publisher: "a county" },
  };
  const use = (more: object) => () =>
    call.nutrientUse({ nitrogen: lb(4, "N"), nutrient: "K", grass: "bermudagrass", ...more });
  const nitrogen = (more: object) => () =>
    call.availableNitrogen({
      organic: lb(4, "N"),
      firstYear: 40,
      years: 3,
      later: "half of the year before",
      ...more,
    });
  tellsEach([
    [
      reading({ content: quantity(100, "lb/acre", "K") }),
      "unit/mismatch content: expected a content, such as mg/kg; contentInSoil(amount, layer) gives it, got 100 lb/acre of K",
    ],
    [
      reading({ extractant: "Olsen" }),
      'conflict extractant: expected Mehlich 3, which the guideline is for: take the guideline of the extractant of the report, got "Olsen"',
    ],
    [
      reading({ soil: undefined }),
      "missing soil: expected the soil or turf that the guideline distinguishes, got undefined (say which: sand, other soils)",
    ],
    [
      reading({ soil: "clay" }),
      'type soil: expected the soil or turf that the guideline distinguishes, got "clay" (say which: sand, other soils)',
    ],
    [
      reading({ guideline: "Pennsylvania, Mehlich 3" }),
      'missing nutrient: expected a nutrient that the guideline has, got "K" (say which: P)',
    ],
    [reading({ guideline: own }), "conflict guideline.rows[0].to: expected 50 or more, got 40"],
    [
      reading({
        guideline: { ...own, meaning: "", rows: [{ nutrient: "N", soil: "", from: -1 }], source: {} },
      }),
      'missing guideline.meaning: expected what its figures mean, got ""',
      'type guideline.rows[0].nutrient: expected one of "P", "K", "Ca", "Mg", "S", got "N"',
      'missing guideline.rows[0].soil: expected the soil that it is for, or "any", got ""',
      "range guideline.rows[0].from: expected 0 or more, got -1",
      "missing guideline.source.title: expected a title, got undefined",
    ],
    [
      reading({ guideline: { ...own, rows: [], source: { title: "Turf" } } }),
      "missing guideline.rows: expected at least one row, got an empty list",
      "missing guideline.source.publisher: expected who published it, got undefined",
    ],
    [
      reading({ guideline: "by eye" }),
      record('type guideline: expected one of "minimum levels, Mehlich 3", '),
    ],
    [use({ perNitrogen: 0.5 }), "conflict perNitrogen: expected a grass or a ratio, not both, got both"],
    [use({ grass: undefined, perNitrogen: 2.1 }), "range perNitrogen: expected 2 or less, got 2.1"],
    [
      use({ nutrient: "P" }),
      "missing perNitrogen: expected parts of P for each part of nitrogen, from a leaf analysis: none was read for bermudagrass, got undefined",
    ],
    [
      use({ nutrient: "Mg", grass: "cool-season grass" }),
      "missing perNitrogen: expected parts of Mg for each part of nitrogen, from a leaf analysis: none was read for cool-season grass, got undefined",
    ],
    [
      () => call.tissueReading({ nutrient: "Fe", content: quantity(11, "% w/w") }),
      'type nutrient: expected one of "N", "P", "K", got "Fe"',
      "range content: expected 10 or less, got 11",
    ],
    [nitrogen({ firstYear: 51 }), "range firstYear: expected 50 or less, got 51"],
    [
      nitrogen({ firstYear: 101, later: "same share of what is left" }),
      "range firstYear: expected 100 or less, got 101",
    ],
    [nitrogen({ years: 51 }), "range years: expected 50 or less, got 51"],
    [nitrogen({ years: 0 }), "range years: expected 1 or more, got 0"],
    [nitrogen({ years: 1.5 }), "range years: expected a whole number of years, got 1.5"],
    [
      () =>
        call.foliarMicronutrient({
          product: quantity(3, "fl oz/1000 ft2", "product"),
          element: "Ni",
          percent: 101,
        }),
      'unit/mismatch product: expected a weight: rate.times(quantity(11, "lb/gal")), with the density of the jug, got 3 fl oz/1000 ft2 of product',
      'type element: expected one of "Fe", "Mn", "Zn", "Cu", "B", got "Ni"',
      "range percent: expected 100 or less, got 101",
    ],
    [
      () => call.onDryBasis({ content: quantity(60, "% w/w"), moisture: 50 }),
      "range content: expected 50 % or less, which is the dry matter, got 60 % w/w",
    ],
    [
      () => call.onWetBasis({ content: quantity(60, "% w/w"), moisture: 100 }),
      "range moisture: expected less than 100, got 100",
    ],
    [
      () =>
        call.compostAmount({
          area: quantity(0, "ft2"),
          depth: quantity(0, "in"),
          bulkDensity: quantity(900, "lb/yd3", "product"),
          moisture: 100,
        }),
      "range area: expected more than zero, got 0 ft2",
      "range depth: expected more than zero, got 0 in",
      "range moisture: expected less than 100, got 100",
    ],
  ]);
});
