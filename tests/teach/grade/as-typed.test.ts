import { describe, expect, test } from "vitest";
import { grade } from "../../../src/teach/index.js";
import { problem } from "../../../src/teach/problems/index.js";

const speed = problem({ topic: "spray/speed", level: 1, seed: 4, units: "metric" });
const rate = problem({ topic: "nutrient/product-rate", level: 1, seed: 3, units: "US" });

describe("an answer as it is typed or pasted", () => {
  test.each(['"', "'", "“", "«"])("between %s marks it is read as without them", (mark) => {
    const close = mark === "“" ? "”" : mark === "«" ? "»" : mark;
    expect(grade(rate, `${mark}${rate.answer.text}${close}`)).toEqual(grade(rate, rate.answer.text));
    expect(grade(rate, `${mark}${rate.letter}${close}`).verdict).toBe("right");
    expect(grade(rate, `${mark}no idea${close}`).verdict).toBe("unread");
  });

  test("with capitals locked the unit of the question is taken, another one is not", () => {
    expect(speed.answer.unit).toBe("km/h");
    expect(grade(speed, `${speed.answer.value.toFixed(1)} KM/H`)).toMatchObject({
      verdict: "right",
      unit: "right",
    });
    expect(grade(speed, `${speed.answer.value.toFixed(1)} M/H`).verdict).not.toBe("right");
    expect(grade(speed, `${(speed.answer.value * 3).toFixed(1)} KM/H`).verdict).toBe("wrong");
  });
});
