import { expect, test } from "vitest";
import { mixingOrders, mixingOrderTable } from "../../../src/tank/index.js";

test("contested pairs are those against which an order stands, the closest first, with the votes of the orders", () => {
  const { contested, order, counts, kinds, type, bestCount } = mixingOrderTable();
  expect(type).toBe("mixing-order-table");
  expect(bestCount).toBeGreaterThanOrEqual(1);
  const votes = (first: string, second: string): number =>
    mixingOrders.filter(({ steps }) => {
      const at = (kind: string): number =>
        steps.findIndex((names) =>
          names.some(
            (name) => name === kind || (kind === "SG" && name === "SP" && !steps.flat().includes("SG")),
          ),
        );
      return at(first) >= 0 && at(second) >= 0 && at(first) < at(second);
    }).length;
  const expected: string[] = [];
  order.forEach((first, i) => {
    for (const second of order.slice(i + 1))
      if (votes(second, first) > 0) expected.push(`${first} ${second}`);
  });
  expect(contested.map(({ first, second }) => `${first} ${second}`).sort()).toEqual(expected.sort());
  for (const { first, second, for: ahead, against } of contested)
    expect([ahead, against], `${first} ${second}`).toEqual([votes(first, second), votes(second, first)]);
  const margins = contested.map(({ for: ahead, against }) => ahead - against);
  expect(margins).toEqual([...margins].sort((a, b) => a - b));
  kinds.forEach((_, i) => {
    expect(counts[i]?.[i]).toBe(0);
  });
});
