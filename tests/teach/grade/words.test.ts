// What a learner is told, word by word, and how each part of the answer is judged.
import { describe, expect, it } from "vitest";
import { grade, type QuizProblem } from "../../../src/teach/index.js";
import { asked } from "./posed.js";

const nitrogen = asked({ value: 12.5, unit: "lb", of: "N", text: "12.5 lb" });
const product = asked(
  { value: 12.5, unit: "lb", of: "product", text: "12.5 lb" },
  {
    mistakes: [
      { mistake: "product for nutrient", value: 2.5, text: "2.5 lb", says: "That is the nitrogen." },
    ],
  },
);
const rate = asked({
  value: 3.75,
  unit: "lb/1000 ft2",
  of: "product",
  decimals: 2,
  tolerance: 0.005,
  text: "3.75 lb per 1,000 sq ft",
});
const volume = asked({ value: 1.5, unit: "gal", of: "spray", text: "1.5 gal" });
const bags = asked({
  value: 6,
  unit: "count",
  decimals: 0,
  tolerance: 0,
  text: "6 bags",
  noun: ["bag", "bags"],
});
const percent = asked({ value: 20, unit: "%", decimals: 0, tolerance: 0.5, text: "20 %" });
const bare = asked({ value: 8.4, unit: "1", text: "8.4" });
const counts = asked({ value: 37.2, unit: "count/ft2", text: "37.2" });
const price = asked({ value: 18.5, unit: "money:USD", decimals: 2, tolerance: 0.005, text: "$18.50" });
const seed = asked({ value: 4, unit: "lb", of: "pure live seed", text: "4.0 lb" });

const notYet = "Not yet. Write down what is given, with units, and see what the question asks for.";
const close = "Very close. Keep all digits on the way, and round once, at the end.";

type Parts = readonly [verdict: string, number: string, unit: string, of: string];
const right: Parts = ["right", "right", "right", "right"];

describe("what a learner is told", () => {
  it.each<readonly [QuizProblem, string, Parts, string]>([
    [nitrogen, "12.5 lb of N", right, "Right."],
    [nitrogen, "12.5 lb", ["right", "right", "right", "not given"], "Right."],
    [
      nitrogen,
      "12.5",
      ["right", "right", "not given", "not given"],
      "Right. Write the unit, too, so that nobody has to guess: lb.",
    ],
    [
      rate,
      "3.75",
      ["right", "right", "not given", "not given"],
      "Right. Write the unit, too, so that nobody has to guess: lb per 1,000 sq ft.",
    ],
    [
      percent,
      "20",
      ["right", "right", "not given", "not given"],
      "Right. Write the unit, too, so that nobody has to guess: percent.",
    ],
    [
      price,
      "18.50",
      ["right", "right", "not given", "not given"],
      "Right. Write the unit, too, so that nobody has to guess: dollars.",
    ],
    [bags, "6", ["right", "right", "not given", "not given"], "Right."],
    [bare, "8.4", ["right", "right", "not given", "not given"], "Right."],
    [counts, "37.2", ["right", "right", "not given", "not given"], "Right."],
    [nitrogen, "12.5 punds", ["right", "right", "right", "not given"], 'Right. "punds" was read as lb.'],
    [bags, "6 bgs", ["right", "right", "right", "not given"], 'Right. "bgs" was read as bags.'],
    [
      nitrogen,
      "12.5 galons",
      ["wrong", "right", "wrong", "not given"],
      'The number is right. The unit does not fit: you wrote "galons", and the question asks for lb.',
    ],
    [
      asked({ value: 96, unit: "min", decimals: 0, tolerance: 0.5, text: "96 minutes" }),
      "96 horus",
      ["wrong", "wrong", "wrong", "not given"],
      `${notYet} No unit is written "horus". Did you mean hours? Write the unit again.`,
    ],
    [
      nitrogen,
      "12.5 gal",
      ["wrong", "right", "wrong", "not given"],
      'The number is right. The unit does not fit: you wrote "gal", and the question asks for lb.',
    ],
    [
      nitrogen,
      "12.5 lb of P2O5",
      ["wrong", "right", "right", "wrong"],
      "The number is right. You wrote phosphate (P2O5). The question asks for nitrogen.",
    ],
    [
      nitrogen,
      "12.5 gal of K2O",
      ["wrong", "right", "wrong", "wrong"],
      'The number is right. The unit does not fit: you wrote "gal", and the question asks for lb. You wrote potash (K2O). The question asks for nitrogen.',
    ],
    [
      product,
      "12.5 lb P",
      ["wrong", "right", "right", "wrong"],
      "The number is right. You wrote phosphorus (P). The question asks for product.",
    ],
    [
      product,
      "12.5 lb of potassium",
      ["wrong", "right", "right", "wrong"],
      "The number is right. You wrote potassium (K). The question asks for product.",
    ],
    [
      product,
      "12.5 lb of active ingredient",
      ["wrong", "right", "right", "wrong"],
      "The number is right. You wrote active ingredient. The question asks for product.",
    ],
    [
      seed,
      "4.0 lb of seed",
      ["wrong", "right", "right", "wrong"],
      "The number is right. You wrote seed. The question asks for pure live seed.",
    ],
    [volume, "1.5 gal of water", right, "Right."],
    [
      volume,
      "192 oz",
      ["wrong", "right", "wrong", "not given"],
      "The number is right. Write fl oz for a volume. Ounces alone are weight: 16 to the pound, where a gallon has 128 fluid ounces.",
    ],
    [
      volume,
      "192",
      ["wrong", "right", "wrong", "not given"],
      "Your number is right in fl oz. The question asks for gal: convert it, or write your unit.",
    ],
    [
      percent,
      "0.2",
      ["wrong", "right", "wrong", "not given"],
      "That is the share as a decimal. The question asks for percent: multiply by 100.",
    ],
    [
      bags,
      "6 jars",
      ["wrong", "right", "wrong", "not given"],
      'The number is right. The unit does not fit: you wrote "jars", and the question asks for bags.',
    ],
    [
      bare,
      "8.4 lb",
      ["wrong", "right", "wrong", "not given"],
      'The number is right. The unit does not fit: you wrote "lb", and the question asks for the number alone.',
    ],
    [product, "2.5 lb", ["wrong", "wrong", "right", "not given"], "Not yet. That is the nitrogen."],
    [product, "12.6 lb", ["close", "wrong", "right", "not given"], close],
    [
      product,
      "12.6 gal",
      ["wrong", "wrong", "wrong", "not given"],
      `${notYet} The unit does not fit: you wrote "gal", and the question asks for lb.`,
    ],
    [product, "40 lb", ["wrong", "wrong", "right", "not given"], notYet],
    [
      product,
      "125 lb",
      ["wrong", "wrong", "right", "not given"],
      "Not yet. The decimal point is in the wrong place. Count the places again.",
    ],
    [
      product,
      "none",
      ["unread", "not given", "not given", "not given"],
      "There is no number in your answer. Write a number and its unit, or the letter of a choice.",
    ],
    [
      product,
      "12.5 lb or 13",
      ["unread", "not given", "not given", "not given"],
      "There is more than one number in your answer. Write the one that you mean, with its unit.",
    ],
    [
      product,
      "12,5 lb",
      ["unread", "not given", "not given", "not given"],
      "Write a decimal point, not a comma: 3.5, not 3,5.",
    ],
    [
      product,
      "more than 12.5 lb",
      ["unread", "not given", "not given", "not given"],
      "Say how much it is, not what it is more or less than.",
    ],
    [
      product,
      "E",
      ["unread", "not given", "not given", "not given"],
      "There is no choice E. The choices are A to D.",
    ],
    [product, "a", right, "Right."],
    [product, "(A)", right, "Right."],
    [product, "B", ["wrong", "wrong", "not given", "not given"], expect.stringMatching(/^Not yet\. ./)],
  ])("%#", (problem, text, [verdict, number, unit, of], says) => {
    expect(grade(problem, text), text).toMatchObject({
      type: "quiz-grade",
      version: 1,
      verdict,
      number,
      unit,
      of,
      says,
    });
  });
});
