import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { grade, type QuizProblem } from "../../../src/teach/index.js";
import { problem, problemTopics } from "../../../src/teach/problems/index.js";

/** 0.5 lb of N per 1,000 sq ft on 5,000 sq ft from a 20-0-10: 12.5 lb of product, worked by hand. */
const pounds: QuizProblem = {
  type: "quiz-problem",
  version: 1,
  topic: "nutrient/product-rate",
  title: "Product for a nutrient target",
  level: 2,
  seed: 0,
  units: "US",
  text: "How much product does the bowling green take? Answer in lb of product, to one decimal.",
  answer: { value: 12.5, unit: "lb", of: "product", decimals: 1, tolerance: 0.05, text: "12.5 lb" },
  steps: ["Whole area: 0.5 × 100 ÷ 20 × 5,000 ÷ 1,000 = 12.5 lb"],
  choices: [
    { letter: "A", text: "2.5 lb", mistake: "product for nutrient" },
    { letter: "B", text: "12.5 lb" },
    { letter: "C", text: "0.5 lb", mistake: "multiplied by the percentage" },
    { letter: "D", text: "25.0 lb", mistake: "wrong number of the grade" },
  ],
  letter: "B",
  mistakes: [
    { mistake: "product for nutrient", value: 2.5, text: "2.5 lb", says: "That is the nitrogen." },
    { mistake: "multiplied by the percentage", value: 0.5, text: "0.5 lb", says: "Divide." },
    { mistake: "wrong number of the grade", value: 25, text: "25.0 lb", says: "Another number." },
  ],
};
const liters: QuizProblem = {
  ...pounds,
  units: "metric",
  answer: { value: 1.25, unit: "L", of: "product", decimals: 2, tolerance: 0.005, text: "1.25 L" },
  mistakes: [],
};
const ounces: QuizProblem = {
  ...pounds,
  answer: { value: 6.4, unit: "fl oz", of: "product", decimals: 1, tolerance: 0.05, text: "6.4 fl oz" },
  mistakes: [],
};
const rate: QuizProblem = {
  ...pounds,
  answer: {
    value: 3.75,
    unit: "lb/1000 ft2",
    of: "product",
    decimals: 2,
    tolerance: 0.005,
    text: "3.75 lb per 1,000 sq ft",
  },
  mistakes: [],
};
const volume: QuizProblem = {
  ...pounds,
  answer: {
    value: 40,
    unit: "gal/acre",
    of: "spray",
    decimals: 1,
    tolerance: 0.05,
    text: "40.0 gal per acre",
  },
  mistakes: [],
};
const bags: QuizProblem = {
  ...pounds,
  answer: {
    value: 6,
    unit: "count",
    of: "none",
    decimals: 0,
    tolerance: 0,
    text: "6 bags",
    noun: ["bag", "bags"],
  },
  mistakes: [{ mistake: "rounded packages down", value: 5, text: "5 bags", says: "Round up." }],
};

describe("an answer is right", () => {
  it.each([
    [pounds, "about 12.5 lb"],
    [pounds, "12.5"],
    [pounds, "12.54 lb"],
    [pounds, "12 1/2 pounds of product"],
    [pounds, "12½ lbs"],
    [pounds, "25/2 lb"],
    [pounds, "it takes roughly 12.5 lb of the 20-0-10"],
    [pounds, "12.5 pounds of fertilizer."],
    [pounds, "200 oz"],
    [pounds, "5.67 kg"],
    [pounds, "12 lb 8 oz"],
    [pounds, "12 lb and 8 ounces of product"],
    [pounds, "B"],
    [pounds, "(b)"],
    [pounds, "B) 12.5 lb"],
    [liters, "1,25 L"],
    [liters, "ca. 1,25 l"],
    [liters, "1.25 liters of concentrate"],
    [liters, "1250 mL"],
    [ounces, "6.4 fl oz"],
    [ounces, "6.4 fl. oz."],
    [ounces, "0.2 qt"],
    [ounces, "0.05 gal"],
    [rate, "3.75 lb/1000"],
    [rate, "3.75 lb per M"],
    [rate, "3 3/4 pounds of product per thousand square feet"],
    [rate, "163.35 lb/acre"],
    [volume, "40 gpa"],
    [volume, "40 gallons an acre"],
    [volume, "40 gallons of water to the acre"],
    [bags, "6"],
    [bags, "6 full bags"],
    [bags, "6 sacks"],
  ] as const)("%#", (asked, text) => {
    expect(grade(asked, text).verdict, text).toBe("right");
  });
});

describe("an answer is wrong, and says in which part", () => {
  it.each([
    [pounds, "12.5 lb of nitrogen", { number: "right", unit: "right", of: "wrong" }, /nitrogen.*product/],
    [pounds, "12.5 gal", { number: "right", unit: "wrong" }, /gal.*lb/],
    [pounds, "200", { number: "right", unit: "wrong" }, /right in oz/],
    [pounds, "2.5 lb", { number: "wrong", mistake: "product for nutrient" }, /That is the nitrogen/],
    [pounds, "A", { number: "wrong", mistake: "product for nutrient" }, /That is the nitrogen/],
    [pounds, "125 lb", { mistake: "decimal point one place off" }, /decimal point/],
    [pounds, "-12.5 lb", { number: "wrong" }, /Not yet/],
    [pounds, "31 lb", { number: "wrong" }, /Not yet/],
    [ounces, "6.4 oz", { number: "right", unit: "wrong" }, /fl oz/],
    [rate, "3.75 lb", { number: "right", unit: "wrong" }, /per 1,000 sq ft/],
    [rate, "3.75 lb N/1000 ft2", { number: "right", of: "wrong" }, /nitrogen/],
    [bags, "5 bags", { mistake: "rounded packages down" }, /Round up/],
    [bags, "5.4 bags", { number: "wrong" }, /Not yet/],
    [bags, "6 lb", { number: "right", unit: "wrong" }, /bags/],
  ] as const)("%#", (asked, text, parts, says) => {
    const found = grade(asked, text);
    expect(found, text).toMatchObject({ verdict: "wrong", ...parts });
    expect(found.says, text).toMatch(says);
    expect(found.says).not.toContain(asked.answer.text);
  });

  it("or close, where rounding on the way explains it", () => {
    expect(grade(pounds, "12.6 lb").verdict).toBe("close");
    expect(grade(pounds, "12.6 lb").says).toMatch(/round once/);
    expect(grade(pounds, "13.5 lb").verdict).toBe("wrong");
  });

  it("or unread, with what to write", () => {
    expect(grade(pounds, "no idea")).toMatchObject({
      verdict: "unread",
      says: expect.stringMatching(/number/),
    });
    expect(grade(pounds, "").verdict).toBe("unread");
    expect(grade(pounds, "--12.5 lb").verdict).toBe("unread");
    expect(grade(pounds, "E")).toMatchObject({ verdict: "unread", says: expect.stringMatching(/A to D/) });
    expect(grade(pounds, "12-13 lb")).toMatchObject({
      verdict: "unread",
      says: expect.stringMatching(/more than one/),
    });
    expect(grade(pounds, "12,5 lb")).toMatchObject({
      verdict: "unread",
      says: expect.stringMatching(/decimal point/),
    });
  });
});

describe("every problem", () => {
  /** Some of each topic; posed as a test runs, so that a file can be read without waiting for them. */
  const asked = (seeds: readonly number[]): readonly QuizProblem[] =>
    problemTopics.flatMap(({ topic, levels }) =>
      levels.flatMap((level) =>
        (["US", "metric"] as const).flatMap((units) =>
          seeds.map((seed) => problem({ topic, level, seed, units })),
        ),
      ),
    );

  it("takes its own key, in words and as a letter, also after JSON", () => {
    for (const each of asked([1, 2, 3])) {
      expect(grade(each, `about ${each.answer.text}`).verdict, each.text).toBe("right");
      expect(grade(each, each.letter).verdict).toBe("right");
      expect(
        grade(JSON.parse(JSON.stringify(each)) as QuizProblem, String(each.answer.value)).verdict,
        each.text,
      ).toBe("right");
    }
  });

  it("knows each of its wrong answers", () => {
    for (const each of asked([1, 2, 3])) {
      for (const { mistake, text } of each.mistakes) {
        expect(grade(each, text), `${each.text} ${text}`).toMatchObject({ verdict: "wrong", mistake });
      }
    }
  });
});

describe("what comes in", () => {
  it("may be any text: it is graded, not thrown", () => {
    const piece = fc.constantFrom(
      "3",
      "12.5",
      "lb",
      "oz",
      " ",
      "/",
      "per",
      "-",
      ",",
      ".",
      "½",
      "$",
      "N",
      "of",
      "acre",
      "1000",
      "(",
      "%",
      "°F d",
      "to",
    );
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string({ maxLength: 60 }),
          fc.array(piece, { maxLength: 12 }).map((all) => all.join("")),
        ),
        (text) => {
          for (const each of [pounds, liters, bags, rate]) {
            const found = grade(each, text);
            expect(["right", "close", "wrong", "unread"]).toContain(found.verdict);
            expect(JSON.stringify(found)).not.toMatch(/NaN|Infinity|undefined/);
          }
        },
      ),
    );
  });

  it("is refused where it is no problem or no text", () => {
    expect(() => grade(pounds, undefined as never)).toThrow(/answer/);
    expect(() => grade(pounds, "3".repeat(301))).toThrow(/300 characters or fewer/);
    expect(() => grade({} as never, "3")).toThrow(/problem/);
    expect(() => grade({ ...pounds, answer: { ...pounds.answer, value: Number.NaN } }, "3")).toThrow(
      /answer.value/,
    );
    expect(() => grade({ ...pounds, answr: 1 } as never, "3")).toThrow(/answr/);
  });

  it("counts with a period at the end, and small whole numbers, are graded as what they are", () => {
    const passes = problem({ topic: "spread/passes", level: 1, seed: 0, units: "US" });
    expect(grade(passes, `It is ${passes.answer.text}.`).verdict).toBe("right");
    const left: QuizProblem = {
      ...pounds,
      units: "metric",
      answer: { value: 20, unit: "kg/ha", of: "N", decimals: 0, tolerance: 0.5, text: "20 kg per ha" },
      mistakes: [],
    };
    expect(grade(left, "20 lb per acre").verdict).toBe("wrong");
    expect(grade(left, "17 kg per ha").verdict).toBe("wrong");
    expect(grade(left, "21 kg per ha").verdict).toBe("close");
  });

  it("a learner who leaves out the losses is told so, also where the count comes out even", () => {
    const plugs = problem({ topic: "stand/plugs", level: 2, seed: 11, units: "metric" });
    expect(plugs.text).toContain("20 m², is planted with plugs in a square grid, 40 cm apart");
    expect(grade(plugs, "125 plugs").mistake).toBe("forgot the extra");
  });
});
