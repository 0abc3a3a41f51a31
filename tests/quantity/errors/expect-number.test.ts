import { expect, it } from "vitest";
import { expectNumber, quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

it("a quantity where a bare number is due is told how to give the number", () => {
  for (const given of [quantity(92, "%"), { value: 92, unit: "%" }])
    expect(problemsOf(() => expectNumber(given, "purity"))).toMatchObject([
      {
        code: "not-finite",
        path: "purity",
        expected: 'a bare number here: amount.in("...") gives it in the unit that the field is in',
      },
    ]);
});
