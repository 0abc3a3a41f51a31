import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { headerStrips, panRow, passesFor, passRates } from "../../../src/spread/index.js";
import { complaints } from "../../errors.js";
import { ft, m, perThousand } from "../helpers.js";

describe("passRates", () => {
  test("the passes add up to the rate, the loads to the amount", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 1e4, noNaN: true }),
        fc.integer({ min: 1, max: 12 }),
        (rate, passes) => {
          const plan = passRates({ rate: perThousand(rate), passes, area: quantity(3000, "ft2") });
          expect(plan.perPass.value * passes).toBeCloseTo(rate, 9);
          expect((plan.load?.perPass.in("lb") as number) * passes).toBeCloseTo(3 * rate, 6);
        },
      ),
    );
  });

  test("a limit counts the sum: half the rate twice passes a limit that half the rate does not", () => {
    const nitrogen = (value: number) => quantity(value, "lb/1000 ft2", "N");
    const over = passRates({ rate: nitrogen(1.2), limit: nitrogen(0.9) });
    expect(over.perPass.value).toBe(0.6);
    expect(over.findings.map(({ code }) => code)).toEqual(["limit/exceeded"]);
    expect(passRates({ rate: nitrogen(0.9), limit: nitrogen(0.9) }).findings).toEqual([]);
    const acre = passRates({ rate: nitrogen(1), limit: quantity(43.56, "lb/acre", "N") });
    expect(acre.findings).toEqual([]);
    expect(acre.checked).toHaveLength(1);
    expect(passRates({ rate: nitrogen(1) }).notChecked).toHaveLength(1);
  });

  test("a limit on nitrogen is no limit on product", () => {
    const limit = quantity(0.9, "lb/1000 ft2", "N");
    expect(complaints(() => passRates({ rate: perThousand(5), limit: limit as never }))).toEqual([
      "substance/mismatch limit",
    ]);
    expect(complaints(() => passRates({ rate: perThousand(5), passes: 0 }))).toEqual(["range passes"]);
    expect(complaints(() => passRates({ rate: perThousand(0) }))).toEqual(["range rate"]);
    expect(complaints(() => passRates({ rate: perThousand(0), passes: 0 }))).toEqual([
      "range rate",
      "range passes",
    ]);
    // A form field left empty is left out: two passes, not one.
    const empty = passRates({ rate: perThousand(4), passes: null } as never);
    expect([empty.passes, empty.perPass.value]).toEqual([2, 2]);
  });
});

describe("passesFor", () => {
  test("cover the side, and one fewer would not", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 5000, noNaN: true }),
        fc.double({ min: 0.5, max: 60, noNaN: true }),
        (side, swath) => {
          const { count, lastWidth, evenSpacing, exact } = passesFor({ side: m(side), swath: m(swath) });
          expect(count * swath).toBeGreaterThanOrEqual(side * (1 - 1e-11));
          expect((count - 1) * swath).toBeLessThan(side);
          expect((count - 1) * swath + lastWidth.in("m")).toBeCloseTo(side, 6);
          expect(lastWidth.in("m")).toBeGreaterThan(0);
          expect(evenSpacing.in("m")).toBeLessThanOrEqual(swath * (1 + 1e-11));
          expect(exact).toBeCloseTo(side / swath, 9);
        },
      ),
    );
  });

  test("float noise buys no pass", () => {
    const even = passesFor({ side: ft(3 * 1.1), swath: ft(1.1) });
    expect(even.count).toBe(3);
    expect(even.lastWidth.in("ft")).toBe(1.1);
    expect(passesFor({ side: m(30.48), swath: ft(10) }).count).toBe(10);
    expect(passesFor({ side: ft(5), swath: ft(20) }).count).toBe(1);
  });

  test("no side and no swath are errors", () => {
    expect(complaints(() => passesFor({ side: ft(0), swath: ft(0) }))).toEqual(["range side", "range swath"]);
    expect(complaints(() => passesFor({ side: ft(1e9), swath: quantity(1, "um") }))).toEqual(["range swath"]);
  });
});

describe("headerStrips", () => {
  test("strips and inner passes cover the whole, at one swath for what the gate is open", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 400 }),
        fc.integer({ min: 20, max: 400 }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom("perimeter" as const, "ends" as const),
        (a, b, strips, along) => {
          const plan = headerStrips({ length: m(a), width: m(b), swath: m(2), strips, along });
          expect(plan.headerArea.in("m2") + plan.inner.area.in("m2")).toBeCloseTo(a * b, 6);
          const header = plan.distance.in("m") - plan.innerPasses * plan.inner.length.in("m");
          // The strips do not overlap one another: their length times the swath is their area.
          expect(header * 2).toBeCloseTo(plan.headerArea.in("m2"), 6);
          expect(plan.innerPasses * 2).toBeGreaterThanOrEqual(plan.inner.width.in("m") - 1e-9);
        },
      ),
    );
  });

  test("two rounds of 10 ft on 200 by 100 ft, by hand", () => {
    const lawn = { length: ft(200), width: ft(100), swath: ft(10), strips: 2 };
    const round = headerStrips({ ...lawn, along: "perimeter" });
    // The rounds run at 5 and 15 ft from the edge: 2 (190 + 90) and 2 (170 + 70); then six passes of 160 ft.
    expect(round.distance.in("ft")).toBe(560 + 480 + 6 * 160);
    expect([round.inner.length.in("ft"), round.inner.width.in("ft")]).toEqual([160, 60]);
    expect([round.innerPasses, round.headerArea.in("ft2")]).toEqual([6, 20_000 - 9600]);
    // Two strips of 100 ft across each end; then ten passes of 160 ft.
    const ends = headerStrips({ ...lawn, along: "ends" });
    expect(ends.distance.in("ft")).toBe(4 * 100 + 10 * 160);
    expect([ends.innerPasses, ends.headerArea.in("ft2")]).toEqual([10, 4000]);
  });

  test("strips that fill the lawn leave nothing, wider ones are refused", () => {
    const lawn = { length: ft(40), width: ft(20), swath: ft(5) };
    const full = headerStrips({ ...lawn, strips: 2, along: "perimeter" });
    expect(full.inner.area.in("ft2")).toBe(0);
    expect(full.innerPasses).toBe(0);
    expect(complaints(() => headerStrips({ ...lawn, strips: 3, along: "perimeter" }))).toEqual([
      "infeasible strips",
    ]);
    expect(headerStrips({ ...lawn, strips: 3, along: "ends" }).inner.length.in("ft")).toBe(10);
    expect(complaints(() => headerStrips({ ...lawn, strips: 0.5, along: "ends" }))).toEqual(["range strips"]);
    expect(complaints(() => headerStrips({ ...lawn, strips: 1 } as never))).toEqual(["missing along"]);
    expect(
      complaints(() => headerStrips({ ...lawn, width: ft(0), strips: -1, along: "round" } as never)),
    ).toEqual(["range width", "range strips", "type along"]);
    expect(complaints(() => headerStrips({ ...lawn, along: "ends" } as never))).toEqual(["missing strips"]);
  });
});

test("a row of pans has one at the center and as many on either side", () => {
  const row = panRow({ swath: m(10), spacing: quantity(50, "cm") });
  expect(row.pans).toEqual({ least: 31, most: 41 });
  expect([row.least.in("m"), row.most.in("m")]).toEqual([15, 20]);
  expect(panRow({ swath: m(10) }).pans).toBeUndefined();
  expect(complaints(() => panRow({ swath: m(10), spacing: m(0) }))).toEqual(["range spacing"]);
});
