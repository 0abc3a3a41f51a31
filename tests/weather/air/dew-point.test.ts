import { describe, expect, it } from "vitest";
import { type Quantity, quantity } from "../../../src/quantity/index.js";
import { dewPoint } from "../../../src/weather/index.js";
import { problemsOf } from "../../errors.js";

describe("a share of humidity that is written as a percentage", () => {
  it("is refused with the way to write it", () => {
    const call = () => dewPoint({ temperature: quantity(80, "°F"), humidity: quantity(0.65, "%") });
    expect(problemsOf(call)).toMatchObject([
      { code: "range", path: "humidity", expected: '1 % or more: for 65 % write quantity(65, "%")' },
    ]);
  });

  it("is taken as a share where it says so", () => {
    const by = (humidity: Quantity<"1", "none">) =>
      dewPoint({ temperature: quantity(80, "°F"), humidity }).in("°F");
    expect(by(quantity(0.65, "1"))).toBeCloseTo(by(quantity(65, "%")), 9);
  });
});
