// How near to the answer a number has to be, at each edge.
import { describe, expect, it } from "vitest";
import { grade } from "../../../src/teach/index.js";
import { asked } from "./posed.js";

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
const bags = asked({
  value: 6,
  unit: "count",
  decimals: 0,
  tolerance: 0,
  text: "6 bags",
  noun: ["bag", "bags"],
});
const of = (text: string, problem = product): string => grade(problem, text).verdict;
const named = (text: string) => grade(product, text).mistake;

describe("how near is near", () => {
  it("the tolerance, to its edge; then close, within 1 percent or three last places up to 5 percent; then wrong", () => {
    // 12.5 asked to one decimal: 12.45 to 12.55 are right; 1 percent is 0.125, three places 0.3
    for (const [text, verdict] of [
      ["12.55 lb", "right"],
      ["12.56 lb", "close"],
      ["12.8 lb", "close"],
      ["12.81 lb", "wrong"],
      ["12.2 lb", "close"],
      ["12.19 lb", "wrong"],
      ["12.45 lb", "right"],
      ["12.44 lb", "close"],
    ] as const)
      expect(of(text), text).toBe(verdict);
    // 1 percent of 1,250 is more than three places
    const large = asked({ value: 1250, unit: "ft2", decimals: 0, tolerance: 0.5, text: "1,250 sq ft" });
    expect([of("1262 sq ft", large), of("1263 sq ft", large)]).toEqual(["close", "wrong"]);
    // 5 percent of 4.0 is 0.2, less than three places
    const small = asked({ value: 4, unit: "lb", text: "4.0 lb" });
    expect([of("4.2 lb", small), of("4.21 lb", small)]).toEqual(["close", "wrong"]);
  });

  it("a small whole number: the next one is close, two off are not, and of what is counted none is", () => {
    const minutes = asked({ value: 20, unit: "min", decimals: 0, tolerance: 0.5, text: "20 minutes" });
    expect([of("21 min", minutes), of("22 min", minutes), of("17 min", minutes)]).toEqual([
      "close",
      "wrong",
      "wrong",
    ]);
    expect([of("6 bags", bags), of("7 bags", bags), of("5.9 bags", bags)]).toEqual([
      "right",
      "wrong",
      "wrong",
    ]);
  });

  it("a unit of the learner's own counts as fine as it is written, to 1 percent", () => {
    // 12.5 lb are 5.6699 kg: 5.7 is 0.5 percent off, 6 is 5.8 percent off
    expect([of("5.7 kg"), of("5.67 kg"), of("6 kg")]).toEqual(["right", "right", "wrong"]);
  });

  it("the mistake that leads to a number is named to half of its last place", () => {
    expect([named("2.5 lb"), named("2.55 lb"), named("2.6 lb"), named("2.4 lb")]).toEqual([
      "product for nutrient",
      "product for nutrient",
      undefined,
      undefined,
    ]);
    expect(named("B")).toBe("one unit of area only");
    expect(named("A")).toBeUndefined();
  });

  it("a place off, by ten to a thousand either way, and no further", () => {
    for (const text of ["0.0125 lb", "0.125 lb", "1.25 lb", "125 lb", "1250 lb", "12500 lb"])
      expect(named(text), text).toBe("decimal point one place off");
    expect(named("125000 lb")).toBeUndefined();
    expect(named("0.00125 lb")).toBeUndefined();
  });

  it("a decimal less than was asked for is close", () => {
    expect([of("3.8 lb/1000", rate), of("3.7 lb/1000", rate), of("4 lb/1000", rate)]).toEqual([
      "close",
      "close",
      "wrong",
    ]);
  });

  it("what was read stands in the unit of the question", () => {
    expect(grade(product, "200 oz").read).toBeCloseTo(12.5, 9);
    expect(grade(product, "192").read).toBe(192);
    expect(grade(product, "none")).not.toHaveProperty("read");
    expect(grade(product, "-12.5 lb").read).toBe(-12.5);
  });
});
