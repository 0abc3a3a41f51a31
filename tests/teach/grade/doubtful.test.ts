import { describe, expect, it } from "vitest";
import { grade, type QuizProblem } from "../../../src/teach/index.js";
import { problem } from "../../../src/teach/problems/index.js";

/** A problem of which only the answer matters: no mistake is known of it. */
const asked = (
  units: "US" | "metric",
  value: number,
  unit: string,
  decimals: number,
  text: string,
): QuizProblem => ({
  ...problem({ topic: "nutrient/product-rate", level: 1, seed: 1, units }),
  answer: { value, unit, of: "none", decimals, tolerance: 0.5 * 10 ** -decimals, text },
  mistakes: [],
});

describe("an answer that could be read in two ways", () => {
  it("a comma before three digits is one between thousands, but where the question asks for three decimals", () => {
    const metric = (value: number, unit: string, decimals: number, text: string) =>
      asked("metric", value, unit, decimals, text);
    const minutes = metric(12, "min", 0, "12 minutes");
    expect(grade(minutes, "12,000 minutes")).toMatchObject({ verdict: "wrong", read: 12_000 });
    expect(grade(minutes, "12,0 minutes").verdict).toBe("right");
    const milliliters = metric(3700, "mL", 0, "3,700 mL");
    expect(grade(milliliters, "3,700 mL").verdict).toBe("right");
    expect(grade(milliliters, "3,700 L").verdict).toBe("wrong");
    expect(grade(milliliters, "3.7 L").verdict).toBe("right");
    const water = metric(14_700, "L", 0, "14,700 L");
    expect(grade(water, "14,700 m3").verdict).toBe("wrong");
    expect(grade(water, "14,7 m3").verdict).toBe("right");
    const strength = metric(0.166, "kg/L", 3, "0.166 kg per L");
    expect(grade(strength, "0,166 kg per L").verdict).toBe("right");
    expect(grade(metric(1.166, "kg/L", 3, "1.166 kg per L"), "1,166 kg per L").verdict).toBe("right");
    expect(grade(asked("US", 12.5, "lb", 1, "12.5 lb"), "0,125").verdict).toBe("unread");
  });

  it("a short ton is 2000 lb in either system", () => {
    const short = asked("US", 20, "US ton", 1, "20.0 tons");
    for (const text of ["20 tons", "20 short tons", "20 US tons", "20 U.S. tons", "40,000 lb"])
      expect(grade(short, text).verdict, text).toBe("right");
    expect(grade(short, "20 metric tons").verdict).toBe("wrong");
    const metric = asked("metric", 20, "t", 1, "20.0 t");
    for (const text of ["20 t", "20 tons", "20 tonnes", "20 metric tons"])
      expect(grade(metric, text).verdict, text).toBe("right");
    expect(grade(metric, "20 short tons").verdict).toBe("wrong");
    const rate = asked("US", 3.75, "lb/1000 ft2", 2, "3.75 lb per 1,000 sq ft");
    expect(grade(rate, "0.081675 US ton/acre").verdict).toBe("right");
  });

  it("a learner who reckons with the constant that is printed is right", () => {
    const pond = problem({ topic: "site/pond", level: 1, seed: 17, units: "US" });
    expect(pond.text).toContain("3.75 acres and a mean depth of 7 ft. An acre-foot is 325,851 gallons.");
    // 3.75 x 7 x 325,851
    expect(grade(pond, "8,553,589 gal").verdict).toBe("right");
    expect(grade(pond, "8,553,630 gal").verdict).not.toBe("right");
  });
});
