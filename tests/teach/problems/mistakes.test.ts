// What a mistake leads to, by what its name means: a foot for an inch is twelve times too much or too little, and who rounds
// bags down has too few. No figure here comes from the program.
import { describe, expect, it } from "vitest";
import { problem, problemTopics } from "../../../src/teach/problems/index.js";

const phosphate = (2 * 30.974 + 5 * 15.999) / (2 * 30.974);

/** By how much the answer is off, either way, where the name says so. */
const factors: Readonly<Record<string, readonly number[]>> = {
  "27 for 9": [3],
  "P for P2O5": [1 / phosphate],
  "P2O5 for P the wrong way": [1 / phosphate ** 2],
  "oxide for element": [phosphate],
  "acre for 1,000 sq ft": [43.56, 1 / 43.56],
  "acre as 1,000 sq ft times 10": [4.356, 1 / 4.356],
  "hectare for 100 m²": [100, 0.01],
  "cubic feet for cubic yards": [27],
  "decimal point one place off": [10, 0.1],
  "seconds for minutes": [60, 1 / 60],
  "yards for feet": [3, 1 / 3],
  "fluid ounces in a quart": [4, 1 / 4, 2],
  "rectangle for triangle": [2],
  "halved twice": [1 / 2],
  "square for circle": [4 / Math.PI],
  "sum of the sides": [2],
  "whole rate on each pass": [2],
  "percentage as a whole number": [0.01, 100],
  "one half-life too few": [2],
  "one half-life too many": [1 / 2],
  "range for deviation": [Math.SQRT2],
  "root of the sum": [Math.SQRT1_2],
  "distance of one run, time of both": [1 / 2],
  "two thirds of the cut": [4 / 9],
  "three times the cut": [2],
};

const more = `added the part|average of purity and germination|averaged speeds wrongly|carrier for product|counted every nozzle|
  counted without the package size|all water for the part used|all energy for light|ends counted in full|forgot passes|flow over time|forgot the base|
  forgot to take the part out|forgot what is gone already|half of the most at one time|half the swath|high for mean|markup for margin|
  nutrient for product|one application too many|one package too many|one pass too many|one rinse only|product for season's total|
  rounded for each application|share of the cut height|swath for spacing|use of the whole time|water for product|whole height again|
  whole job for the last load|whole row for the band|wind at the station|potash for potassium|forgot to divide by the cores|
  forgot the growth before|divided by the percent alone|one part to the other|width upside down|price of part of a package|forgot the swath`;
const less = `counted a pass twice|divided by the number of nozzles|forgot efficiency|forgot the extra|forgot the number of applications|
  forgot the number of nozzles|forgot the rating|last strip left out|lead time only|live seed for bulk seed|low for mean|margin for markup|
  multiplied by efficiency|multiplied by the live share|multiplied by the rating|one bag only|one day only|one rinse too many|percent taken off|
  product for nutrient|rounded applications down|rounded packages down|stock kept back only|subtracted the losses|time left out|
  water weight for the liquid|triangle for rectangle|ends left out|forgot the square of the radius|negative days counted|driest against wettest|
  forgot the distance between widths|price of the product for that of the nutrient|time upside down|density the wrong way`;
const listOf = (text: string): ReadonlySet<string> => new Set(text.split("|").map((name) => name.trim()));
const [tooMuch, tooLittle] = [listOf(more), listOf(less)];

describe.each(problemTopics)("the mistakes of $topic", ({ topic, levels }) => {
  it("lead where their names say", () => {
    for (const level of levels)
      for (const units of ["US", "metric"] as const)
        for (let seed = 0; seed < 6; seed++) {
          const { answer, mistakes } = problem({ topic, level, seed, units });
          for (const { mistake, value, text } of mistakes) {
            const told = `${topic} ${level} ${units} ${seed}: ${mistake}, ${text} for ${answer.text}`;
            const off = value / answer.value;
            const known = factors[mistake];
            if (known !== undefined)
              expect(
                known.some((factor) => Math.abs(off / factor - 1) < 5e-3),
                told,
              ).toBe(true);
            if (tooMuch.has(mistake)) expect(off, told).toBeGreaterThan(1);
            if (tooLittle.has(mistake)) expect(off, told).toBeLessThan(1);
          }
        }
  });
});
