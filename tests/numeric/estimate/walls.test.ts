import { describe, expect, it } from "vitest";
import {
  accurateSum,
  checkAgainstTarget,
  errorOfProduct,
  estimateOfProduct,
  interpolate,
  mean,
  meanEstimate,
  readingsFor,
  standardDeviation,
  statedEstimate,
} from "../../../src/numeric/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { answerOf } from "../../errors.js";

const rate = quantity(3, "lb/acre");
const percent = (value: number) => quantity(value, "%");

describe("fields that are not known are refused", () => {
  const target = { measured: rate, target: rate, tolerance: percent(5) };
  it.each([
    [
      "checkAgainstTarget",
      () => checkAgainstTarget({ ...target, tolerence: percent(3) } as never),
      "tolerence",
    ],
    ["errorOfProduct", () => errorOfProduct([{ value: 2, error: 1, pwoer: 2 } as never]), "pwoer"],
    [
      "estimateOfProduct",
      () => estimateOfProduct(rate, [{ relativeEror: percent(3) } as never]),
      "relativeEror",
    ],
    ["interpolate", () => interpolate({ xs: [0, 1], ys: [0, 1], x: 2, outsid: "hold" } as never), "outsid"],
    ["meanEstimate", () => meanEstimate([rate, rate], { outof: 3 } as never), "outof"],
    [
      "readingsFor",
      () => readingsFor({ coefficientOfVariation: percent(9), margin: percent(3), level: 9 } as never),
      "level",
    ],
    ["standardDeviation", () => standardDeviation([1, 2], { divisor: "n", n: 3 } as never), "n"],
    [
      "statedEstimate",
      () => statedEstimate({ value: rate, error: rate, meaning: "limits", k: 2 } as never),
      "k",
    ],
  ] as const)("%s", (_, call, field) => {
    expect(answerOf(call)).toMatch(new RegExp(`^type .*${field}$`));
  });
});

describe("bare numbers and quantities", () => {
  it.each([
    ["mean", () => mean([rate, rate] as never)],
    ["accurateSum", () => accurateSum([rate] as never)],
    ["standardDeviation", () => standardDeviation([rate, rate] as never, { divisor: "n" })],
  ] as const)("%s of quantities names meanEstimate", (_, call) => {
    expect(call).toThrow(/meanEstimate/);
  });
  it("a temperature names the temperature difference", () => {
    expect(() => meanEstimate([quantity(20, "°C"), quantity(21, "°C")] as never)).toThrow(
      /temperature difference/,
    );
  });
});

describe("lists of a thousand million places do not run away", () => {
  const sparse = new Array(1e9) as never[];
  it.each([
    ["meanEstimate", () => meanEstimate(sparse)],
    ["errorOfProduct", () => errorOfProduct(sparse)],
    ["estimateOfProduct", () => estimateOfProduct(rate, sparse)],
    ["mean", () => mean(sparse)],
  ] as const)("%s", (_, call) => {
    expect(answerOf(call)).toMatch(/^(range|missing) /);
  });
});

it("a factor is an estimate or a relative error, not both", () => {
  const estimate = statedEstimate({ value: rate, error: quantity(0.1, "lb/acre"), meaning: "limits" });
  expect(answerOf(() => estimateOfProduct(rate, [{ estimate, relativeError: percent(3) } as never]))).toBe(
    "conflict factors[0].relativeError",
  );
});

it("what is wrong with a comparison is told together", () => {
  const call = () => checkAgainstTarget({ measured: rate, target: quantity(3, "lb"), tolerance: 5 } as never);
  expect(call).toThrow(/target.*\n.*tolerance/);
});
