// What a learner may write in a unit of his own, with the marks of a phone or a spreadsheet, or with a minus. The figures are
// reckoned by hand: a stone is 14 lb, and 1.29 fl oz per 1,000 sq ft are 0.129 fl oz per 100 sq ft.
import { describe, expect, it } from "vitest";
import { grade, type QuizGrade, type QuizProblem } from "../../../src/teach/index.js";
import { asked } from "./posed.js";

const pounds = asked({ value: 26.786, unit: "lb", of: "product", text: "26.8 lb" });
const perThousand = asked({
  value: 1.2856,
  unit: "fl oz/1000 ft2",
  of: "product",
  decimals: 2,
  tolerance: 0.005,
  text: "1.29 fl oz per 1,000 sq ft",
});
const cents = { decimals: 2, tolerance: 0.005 };
const perPound = asked({ value: 5.75, unit: "money:USD/lb", text: "$5.75 per lb", ...cents });
const price = asked({ value: 975, unit: "money:EUR", text: "€975.00", ...cents }, { units: "metric" });
const speed = asked({ value: 3, unit: "mi/h", text: "3.0 mph" });
const minutes = asked({ value: 82.5, unit: "min", decimals: 0, tolerance: 0.5, text: "83 minutes" });
const volume = asked({ value: 43.5, unit: "gal/acre", of: "spray", text: "43.5 gal per acre" });
const grubs = asked({ value: 37.2, unit: "count/ft2", text: "37.2" });
const phosphate = asked({ value: 15.4, unit: "lb", of: "P2O5", text: "15.4 lb" });
const potassium = asked({ value: 2.18, unit: "lb", of: "K", ...cents, text: "2.18 lb" });
const perSquare = asked({ value: 3.15, unit: "money:USD/1000 ft2", text: "$3.15 per 1,000 sq ft", ...cents });
const kilograms = asked(
  { value: 3.825, unit: "kg", of: "product", decimals: 3, tolerance: 0.0005, text: "3.825 kg" },
  { units: "metric" },
);
const hectares = asked(
  { value: 1250, unit: "kg/ha", of: "product", decimals: 0, tolerance: 0.5, text: "1,250 kg per ha" },
  { units: "metric" },
);
const bags = asked({
  value: 7,
  unit: "count",
  decimals: 0,
  tolerance: 0,
  text: "7 bags",
  noun: ["bag", "bags"],
});

type Row = readonly [QuizProblem, QuizGrade["verdict"], readonly string[]];
const rows: readonly Row[] = [
  // a unit that is a number of another: 1.913 stone are 26.78 lb, 26.8 stone are 375
  [
    pounds,
    "right",
    ["1.913 stone", "2.68E+01 lb", "2.68E1", "(26.8)", "(26.8) lb", "**26.8 lb**", "26.8 (lb)"],
  ],
  [pounds, "wrong", ["26.8 stone", "-26.8 lb", "–26.8 lb", "− 26.8 lb", "minus 26.8 lb", "negative 26.8"]],
  [perThousand, "right", ["0.129 fl oz/100 sq ft", "0.1286 fl oz per 100 sq ft"]],
  [perThousand, "wrong", ["1.29 fl oz per 100 sq ft", "1.29 fl oz/acre"]],
  [
    perPound,
    "right",
    ["$5.75", "$11,500/US ton", "$11,500 per ton", "5 dollars and 75 cents", "5 dollars 75"],
  ],
  [perPound, "wrong", ["-$5.75", "£5.75", "5.75 lb", "5.75 lb of N"]],
  [perSquare, "right", ["$3.15", "$3.15/1000 sq ft", "$3.15 per 1,000", "$3.15/M", "$137.21 per acre"]],
  [perSquare, "wrong", ["$3.15 per 100 sq ft", "$3.15/acre", "$3.15/ft2", "$3.15 per lb"]],
  // as the question has it
  [phosphate, "right", ["15.4 lb of phosphate (P2O5)", "15.4 lb phosphate", "15.4 lb P2O5 (phosphate)"]],
  [potassium, "right", ["2.18 lb of potassium (K)", "2.18 lb K"]],
  [potassium, "wrong", ["2.18 lb of potash (K2O)"]],
  // grams where it is kilograms: a point is between thousands in the unit of the question alone
  [kilograms, "wrong", ["3.825 g", "3.825 mg"]],
  [kilograms, "right", ["3.825 kg", "3,825 kg", "3825 g", "3,825 g", "3 825 g"]],
  [hectares, "right", ["1.250 kg/ha", "1,250 kg/ha"]],
  [price, "right", ["975 €", "€975 total", "€ 975,-"]],
  [price, "wrong", ["£975", "975 pounds", "975 GBP", "975 yen", "975 kg", "975 %"]],
  [speed, "right", ["3 m.p.h.", "3 MPH."]],
  [volume, "right", ["43.5 g.p.a.", "43.5 G.P.A."]],
  [minutes, "right", ["1h23", "1h23m", "1h 23m", "1 h 23 min", "1h23min", "1 hr 23"]],
  [minutes, "wrong", ["1h32m", "83 h"]],
  [pounds, "right", ["choice A", "option a", "letter A", "the answer is A", "answer: A", "It's (A)"]],
  [pounds, "wrong", ["choice B", "minus 26 lb 13 oz"]],
  [bags, "right", ["(7)", "(7 bags)", "seven (7) bags"]],
  // money where a weight or a number of bags is asked for
  [pounds, "wrong", ["$26.8", "26.8 £", "€26.8 lb"]],
  [bags, "wrong", ["$7", "7 €"]],
  [pounds, "unread", ["A or B", "26.8π lb"]],
];

describe("an answer in a unit of the learner's own, or with marks about it", () => {
  it.each(rows.flatMap(([problem, verdict, texts]) => texts.map((text) => ({ problem, verdict, text }))))(
    "$problem.answer.text: $text is $verdict",
    ({ problem, verdict, text }) => {
      const found = grade(problem, text);
      expect(found.verdict, found.says).toBe(verdict);
    },
  );

  const notYet = "Not yet. Write down what is given, with units, and see what the question asks for.";
  it.each<readonly [QuizProblem, string, string]>([
    // the number that was asked for, beside a unit of the same kind
    [
      pounds,
      "26.8 oz",
      'The number is right. The unit does not fit: you wrote "oz", and the question asks for lb.',
    ],
    [
      perThousand,
      "1.29 fl oz per 100 sq ft",
      'The number is right. The unit does not fit: you wrote "fl oz per 100 sq ft", and the question asks for fl oz per 1,000 sq ft.',
    ],
    [
      speed,
      "3 km/h",
      'The number is right. The unit does not fit: you wrote "km/h", and the question asks for mph.',
    ],
    [
      perPound,
      "$5.75/kg",
      'The number is right. The unit does not fit: you wrote "$/kg", and the question asks for dollars per lb.',
    ],
    // money
    [perPound, "5.75", "Right. Write the unit, too, so that nobody has to guess: dollars per lb."],
    [
      price,
      "$975",
      'The number is right. The unit does not fit: you wrote "$", and the question asks for euros.',
    ],
    [
      price,
      "975 dollars",
      'The number is right. The unit does not fit: you wrote "dollars", and the question asks for euros.',
    ],
    // what was written is quoted as it was written
    [
      grubs,
      "37.2 per ft",
      'The number is right. The unit does not fit: you wrote "per ft", and the question asks for the number alone.',
    ],
    // a point that is two or three places off is not one place off
    [pounds, "26,786 lb", "Not yet. The decimal point is in the wrong place. Count the places again."],
    [bags, "0.7 bags", "Not yet. The decimal point is in the wrong place. Count the places again."],
    [
      pounds,
      "-26.8 lb",
      "Not yet. The answer is not less than zero. Check the sign, and which figure you subtracted from which.",
    ],
    // rounded to fewer places than the question asks for, which is not rounding on the way
    [pounds, "27 lb", "Very close, but rounded too far. See how many decimals the question asks for."],
    [pounds, "26.7 lb", "Very close. Keep all digits on the way, and round once, at the end."],
    [pounds, "40 lb", notYet],
  ])("%#: tells what is wrong", (problem, text, says) => expect(grade(problem, text).says).toBe(says));

  it("a number that a known mistake leads to is that mistake, not a unit that it happens to fit", () => {
    const spray = asked(
      { value: 9.6, unit: "fl oz", of: "product", text: "9.6 fl oz" },
      {
        mistakes: [
          { mistake: "ounce for fluid ounce", value: 1.2, text: "1.2 fl oz", says: "You took 16 for 128." },
          { mistake: "forgot to convert", value: 0.075, text: "0.1 fl oz", says: "Convert." },
        ],
      },
    );
    // 1.2 cups are 9.6 fl oz, and nobody thinks of cups
    expect(grade(spray, "1.2")).toMatchObject({
      mistake: "ounce for fluid ounce",
      says: "Not yet. You took 16 for 128.",
    });
    // 0.075 gal are 9.6 fl oz, and that is what was not converted
    expect(grade(spray, "0.075").says).toContain("Your number is right in gal.");
    // 9.992 imperial fluid ounces are 9.6 fl oz: no unit of a question in US units
    expect(grade(asked({ value: 9.6, unit: "fl oz", text: "9.6 fl oz" }), "9.99").says).not.toContain("imp");
  });
});
