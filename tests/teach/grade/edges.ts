// How near is near: for each limit of a grade an answer that lies exactly at it, or a hundred-thousandth inside, and one that
// lies as little beyond. The limits are those of the page on teaching; every figure here is reckoned by hand.
import { grade, type QuizAnswer, type QuizGrade, type QuizProblem } from "../../../src/teach/index.js";
import { asked } from "./posed.js";

const pound = 0.45359237;
const of = (
  value: number,
  unit: string,
  decimals: number,
  more: Partial<QuizAnswer> = {},
  problem: Partial<QuizProblem> = {},
): QuizProblem =>
  asked(
    { value, unit, decimals, tolerance: 0.5 * 10 ** -decimals, text: `${value} ${unit}`, ...more },
    problem,
  );

const pounds = of(12.5, "lb", 1);
const slipAt = (value: number): Partial<QuizProblem> => ({
  mistakes: [{ mistake: "product for nutrient", value, text: `${value} lb`, says: "That is the nitrogen." }],
});
const bags = of(12, "count", 0, { tolerance: 0, noun: ["bag", "bags"] });
const fine = { tolerance: 5e-7, decimals: 6 };

type Case = readonly [problem: QuizProblem, text: string, verdict: QuizGrade["verdict"], mistake?: string];

const cases: readonly Case[] = [
  // Half of the last place asked for
  [pounds, "12.55 lb", "right"],
  [pounds, "12.45 lb", "right"],
  [pounds, "12.550001 lb", "close"],
  [pounds, "12.449999 lb", "close"],
  [of(12.5, "lb", 1, { tolerance: 0.06 }), "12.56 lb", "right"],
  [of(12.5, "lb", 1, { tolerance: 0.06 }), "12.560001 lb", "close"],
  // A unit of the learner's own, as fine as it was written: half of 0.1 kg
  [of((5.75 - 2e-6) / pound, "lb", 3), "5.7 kg", "right"],
  [of((5.75 + 2e-6) / pound, "lb", 3), "5.7 kg", "close"],
  // ... but to 1 percent at most: 45 kg are off by 1 percent, half of 1 kg is 1.1 percent
  [of(45 / pound / (1 - 0.01 * (1 - 3e-5)), "lb", 0), "45 kg", "right"],
  [of(45 / pound / (1 - 0.01 * (1 + 3e-5)), "lb", 0), "45 kg", "close"],
  // ... of a temperature, too: 104 °F is 40 °C, and half of 1 °F is 0.278 °C
  [of(40.27, "°C", 1, {}, { units: "metric" }), "104 °F", "right"],
  [of(40.29, "°C", 1, {}, { units: "metric" }), "104 °F", "close"],
  // In two units: ounces beside gallons are weight, also where the number would be right
  [of(3.5, "gal", 1, { of: "spray" }), "3 gal 64 fl oz", "right"],
  [of(3.5, "gal", 1, { of: "spray" }), "3 gal 64 oz", "wrong"],
  [of(12.5, "lb", 1), "12 lb 8 oz", "right"],
  // Close: three last places, up to 5 percent, or 1 percent where that is more
  [pounds, "12.8 lb", "close"],
  [pounds, "12.80001 lb", "wrong"],
  [of(4, "lb", 1), "4.2 lb", "close"],
  [of(4, "lb", 1), "4.20001 lb", "wrong"],
  [of(1250, "lb", 0), "1262.5 lb", "close"],
  [of(1250, "lb", 0), "1262.5006 lb", "wrong"],
  [of(20, "min", 0), "21 min", "close"],
  [of(20, "min", 0), "21.0001 min", "wrong"],
  // A decimal less than was asked for is half of that place off, and no more
  [of(1.25, "lb", 2), "1.2 lb", "close"],
  [of(1.25, "lb", 2), "1.3 lb", "close"],
  [of(1.250002, "lb", 2), "1.2 lb", "wrong"],
  [of(1.249998, "lb", 2), "1.2 lb", "close"],
  [of(1.25, "lb", 2), "1.20 lb", "wrong"],
  [of(125, "lb", 0), "130 lb", "wrong"],
  // A mistake is named to half of the last place and a thousandth
  [of(12.5, "lb", 1, {}, slipAt(25)), "25.075 lb", "wrong", "product for nutrient"],
  [of(12.5, "lb", 1, {}, slipAt(25)), "25.075002 lb", "wrong"],
  [of(12.5, "lb", 1, {}, slipAt(25)), "24.925 lb", "wrong", "product for nutrient"],
  [of(12.5, "lb", 1, {}, slipAt(25)), "24.924998 lb", "wrong"],
  // A decimal point elsewhere, by ten to a thousand either way: the answer less its tolerance
  ...[0.001, 0.01, 0.1, 10, 100, 1000].flatMap((factor): Case[] => [
    [pounds, `${Number((factor * 12.450001).toPrecision(10))} lb`, "wrong", "decimal point one place off"],
    [pounds, `${Number((factor * 12.449999).toPrecision(10))} lb`, "wrong"],
  ]),
  [bags, "120 bags", "wrong", "decimal point one place off"],
  [bags, "121 bags", "wrong"],
  // Numbers in signs and words, with hardly a tolerance
  [of(0.5, "lb", 6, fine), "½ lb", "right"],
  [of(0.25, "lb", 6, fine), "¼ lb", "right"],
  [of(0.75, "lb", 6, fine), "¾ lb", "right"],
  [of(1 / 3, "lb", 6, fine), "⅓ lb", "right"],
  [of(2 / 3, "lb", 6, fine), "⅔ lb", "right"],
  [of(0.125, "lb", 6, fine), "⅛ lb", "right"],
  [of(3.125, "lb", 6, fine), "3⅛ lb", "right"],
  [of(3000, "lb", 6, fine), "3 thousand lb", "right"],
  [of(18.5, "money:USD", 6, fine), "1850 cents", "right"],
  [of(18.5, "money:USD", 6, fine), "1850.01 cents", "close"],
  // As rounding was asked: more decimals than asked for are no fault, fewer are not enough
  [of(3.845, "lb", 2), "3.84 lb", "right"],
  [of(3.845, "lb", 2), "3.85 lb", "right"],
  [of(3.845, "lb", 2), "3.8450 lb", "right"],
  [of(3.845, "lb", 2), "3.8 lb", "close"],
  [of(3.845, "lb", 2), "4 lb", "wrong"],
  [of(1250, "ft2", 0), "1250.4 sq ft", "right"],
  // A comma before decimals where the problem is metric, between thousands where it is not
  [of(12.5, "kg", 1, {}, { units: "metric" }), "12,5 kg", "right"],
  [of(12.5, "kg", 1, {}, { units: "metric" }), "12,55 kg", "right"],
  [of(12.5, "kg", 1, {}, { units: "metric" }), "12,56 kg", "close"],
  [of(12.5, "lb", 1), "12,5 lb", "unread"],
  [of(1250, "ft2", 0), "1,250 sq ft", "right"],
  [of(1250, "m2", 0, {}, { units: "metric" }), "1.250 m²", "right"],
  [of(1250.5, "m2", 1, {}, { units: "metric" }), "1.250,5 m²", "right"],
  [of(1250.5, "ft2", 1), "1,250.5 sq ft", "right"],
  [of(1250.5, "ft2", 1), "1.250,5 sq ft", "unread"],
  [of(1.25, "L", 3, {}, { units: "metric" }), "1,250 L", "right"],
  [of(1.25, "L", 2, {}, { units: "metric" }), "1,25 L", "right"],
  [of(1.25, "L", 2, {}, { units: "metric" }), "1,250 L", "wrong", "decimal point one place off"],
];

/** A number without a unit that would be right in another one, to half a percent: 200 oz are 12.5 lb. */
const meant: readonly (readonly [text: string, number: QuizGrade["number"], unit: QuizGrade["unit"]])[] = [
  ["200", "right", "wrong"],
  ["201", "right", "wrong"],
  ["199", "right", "wrong"],
  ["201.00005", "wrong", "not given"],
  ["198.99995", "wrong", "not given"],
  ["12.5", "right", "not given"],
];

export const gradeFaults = (): readonly string[] => [
  ...cases.flatMap(([problem, text, verdict, mistake]) => {
    const found = grade(problem, text);
    const { value, unit } = problem.answer;
    return found.verdict === verdict && found.mistake === mistake
      ? []
      : [`${value} ${unit}: ${text} is ${found.verdict}, ${found.mistake}; not ${verdict}, ${mistake}`];
  }),
  ...meant.flatMap(([text, number, unit]) => {
    const found = grade(pounds, text);
    return found.number === number && found.unit === unit
      ? []
      : [`12.5 lb: ${text} is ${found.number} as a number, ${found.unit} as a unit`];
  }),
];
