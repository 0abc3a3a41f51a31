// A unit before its number, as in a table or a line of working: it counts like one behind it. 26.8 lb are 12.2 kg, so "kg 26.8"
// is wrong where 26.8 lb are asked for, and "kg 12.15" is right (26.786 x 0.45359237 = 12.150).
import { describe, expect, it } from "vitest";
import { grade, type QuizGrade, type QuizProblem } from "../../../src/teach/index.js";
import { asked } from "./posed.js";

const pounds = asked({ value: 26.786, unit: "lb", of: "product", text: "26.8 lb" });
const perThousand = asked({ value: 3, unit: "lb/1000 ft2", of: "product", text: "3.0 lb per 1,000 sq ft" });
const speed = asked({ value: 3, unit: "mi/h", text: "3.0 mph" });
const price = asked({ value: 975, unit: "money:USD", text: "$975.00" });
const bags = asked({
  value: 7,
  unit: "count",
  decimals: 0,
  tolerance: 0,
  text: "7 bags",
  noun: ["bag", "bags"],
});

type Row = readonly [QuizProblem, QuizGrade["verdict"], QuizGrade["unit"], readonly string[]];
const rows: readonly Row[] = [
  [pounds, "right", "right", ["lb 26.8", "lb: 26.8", "pounds = 26.8", "kg 12.15", "the pounds are 26.8"]],
  [pounds, "right", "right", ["lb 26.8 of product", "answer in lb: 26.8", "lbs of product: 26.8"]],
  [pounds, "wrong", "wrong", ["kg 26.8", "kg: 26.8", "oz 26.8", "gal 26.8", "acres 26.8", "lb/acre 26.8"]],
  // what stands before a number and is no unit: symbols, numbers of a line, words
  [
    pounds,
    "right",
    "not given",
    ["m = 26.8", "A = 26.8", "R: 26.8", "we put in 26.8", "#26.8", "the rate 26.8"],
  ],
  [pounds, "right", "right", ["kg or lb? 26.8 lb"]],
  [perThousand, "right", "right", ["lb/M 3.0", "lb/M: 3.0", "oz/M 48.0"]],
  [perThousand, "wrong", "wrong", ["lb/acre is 3.0", "lb per acre: 3.0", "kg/ha 3.0", "oz/M 3.0"]],
  [speed, "right", "right", ["mph 3.0", "MPH: 3.0"]],
  [speed, "wrong", "wrong", ["km/h 3.0", "ft 3.0"]],
  [price, "right", "right", ["USD 975", "dollars: 975"]],
  [price, "wrong", "wrong", ["EUR 975", "lb 975"]],
  [bags, "right", "right", ["bags 7", "bags: 7"]],
  [bags, "wrong", "wrong", ["lb 7", "gallons: 7"]],
];

describe("a unit before its number", () => {
  it.each(
    rows.flatMap(([problem, verdict, unit, texts]) =>
      texts.map((text) => ({ problem, verdict, unit, text })),
    ),
  )("$text: $verdict, unit $unit", ({ problem, verdict, unit, text }) => {
    expect(grade(problem, text)).toMatchObject({ verdict, unit });
  });
  it("tells the unit that was read", () => {
    expect(grade(pounds, "kg 26.8").says).toContain('you wrote "kg"');
  });
});
