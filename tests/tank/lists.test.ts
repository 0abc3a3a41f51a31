import { describe, expect, test } from "vitest";
import { quantity, RatewrightError } from "../../src/quantity/index.js";
import { calibrationByCatch, groundSpeed, nozzleCheck, pulseTips } from "../../src/spray/index.js";
import { effectiveSwath, spreadPattern } from "../../src/spread/index.js";
import {
  incompatibilities,
  jarTest,
  loadingOrder,
  type MixProduct,
  waterReport,
} from "../../src/tank/index.js";

/** A list that says it has a thousand million items, and has none. */
const endless = (): never => {
  const list: unknown[] = [];
  list.length = 1e9;
  return list as never;
};

const pathOf = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error.path;
    throw error;
  }
  return "nothing was refused";
};

const course = quantity(100, "ft");
const width = quantity(20, "in");
const time = quantity(30, "s");
const product: MixProduct = { id: "a", formulation: "SC" };

describe("a list without an end is refused before it is read", () => {
  test.each<readonly [string, () => unknown]>([
    ["catches", () => calibrationByCatch({ catches: endless(), course, width })],
    ["times", () => groundSpeed({ course, times: endless() })],
    [
      "catches",
      () =>
        nozzleCheck({
          catches: endless(),
          time,
          divisor: "n",
          rated: quantity(1, "gal/min", "water"),
        } as never),
    ],
    ["sizes", () => pulseTips({ sizes: endless() } as never)],
    ["catches", () => spreadPattern({ catches: endless(), unit: "g", pans: { spacing: width, left: 3 } })],
    ["products", () => loadingOrder({ products: endless() })],
    ["products[0].contains", () => incompatibilities({ products: [{ ...product, contains: endless() }] })],
    ["products", () => jarTest({ jar: quantity(1, "L", "spray"), products: endless() })],
    ["products", () => waterReport({ test: { pH: 7 }, products: endless() })],
    [
      "pattern.offsets",
      () =>
        effectiveSwath(
          {
            ...spreadPattern({ catches: [0, 1, 2, 1, 0], unit: "g", pans: { spacing: course, left: 2 } }),
            offsets: endless(),
          },
          {} as never,
        ),
    ],
  ])("%s", (path, run) => {
    expect(pathOf(run)).toBe(path);
  });
});

test("more than fifty products in one tank are a slip, and fifty take no time", () => {
  const mix = (count: number): MixProduct[] =>
    Array.from({ length: count }, (_, i) => ({ id: `p${i}`, formulation: i % 2 === 0 ? "SC" : "EC" }));
  expect(pathOf(() => loadingOrder({ products: mix(51) }))).toBe("products");
  const started = performance.now();
  expect(loadingOrder({ products: mix(50) }).order).toHaveLength(50);
  expect(performance.now() - started).toBeLessThan(5000);
});

test("what a caller changes afterward changes no result", () => {
  const amount = { value: 2, unit: "lb", of: "product:a" };
  const contains: MixProduct["contains"][] = [["ammonium sulfate"]];
  const order = loadingOrder({
    products: [{ id: "a", formulation: "SP", amount, contains: contains[0] ?? [] }],
  });
  amount.value = 9;
  expect(order.steps.find(({ action }) => action === "add")?.amount?.value).toBe(2);
});
