import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applicationsLeft, fewestApplications } from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaint } from "../../errors.js";

const ai = (value: number) => quantity(value, "lb/acre", "ai");

describe("applicationsLeft", () => {
  test.each([
    [73, 0, 7.3, 10],
    [73, 65.7, 7.3, 1],
    [73, 7.3 * 9, 7.3, 1],
    [2, 0, 0.25, 8],
    [0.3, 0.1 + 0.2, 0.1, 0],
    [560, 525, 175, 0],
    [1, 2, 0.5, 0],
  ])("%d less %d at %d: %d", (maximum, used, rate, count) => {
    expect(applicationsLeft({ maximum: ai(maximum), used: ai(used), rate: ai(rate) }).count).toBe(count);
  });

  test("every whole number of tenths, in exact tenths", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.integer({ min: 0, max: 5000 }),
        fc.nat(5000),
        (r, m, u) => {
          const left = applicationsLeft({ maximum: ai(m / 10), used: ai(u / 10), rate: ai(r / 10) });
          expect(left.count).toBe(Math.max(0, Math.floor((m - u) / r)));
          expect(left.remainder.value).toBeCloseTo(Math.max(0, (m - u - left.count * r) / 10), 8);
          expect(left.remainder.value).toBeGreaterThanOrEqual(0);
          expect(left.remainingUnderStatedMaximum.value).toBeCloseTo((m - u) / 10, 9);
        },
      ),
    );
  });

  test("takes what JSON left of quantities", () => {
    const json = JSON.parse(JSON.stringify({ maximum: ai(2), used: ai(1.5), rate: ai(0.2) }));
    const left = applicationsLeft(json);
    expect(left.count).toBe(2);
    expect(left.remainder.toJSON()).toMatchObject({ unit: "lb/acre", of: "ai" });
    expect(left.remainder.value).toBeCloseTo(0.1, 12);
  });

  test("units may differ, substances may not", () => {
    const maximum = quantity(560, "g/ha", "ai");
    expect(applicationsLeft({ maximum, rate: quantity(0.175, "kg/ha", "ai") }).count).toBe(3);
    expect(
      complaint(() => applicationsLeft({ maximum, rate: quantity(1, "kg/ha", "product") as never })),
    ).toBe("substance/mismatch rate");
    expect(complaint(() => applicationsLeft({ maximum, rate: quantity(0, "kg/ha", "ai") }))).toBe(
      "range rate",
    );
    expect(
      complaint(() => applicationsLeft({ maximum: quantity(1, "d") as never, rate: maximum as never })),
    ).toBe("unit/mismatch maximum");
  });

  test("a total in parts of a limit", () => {
    const n = (value: number) => quantity(value, "lb/1000 ft2", "N");
    expect(
      [1, 2, 3, 4, 6].map((total) => fewestApplications({ total: n(total), perApplication: n(1) })),
    ).toEqual([1, 2, 3, 4, 6]);
    expect(fewestApplications({ total: n(0), perApplication: n(1) })).toBe(0);
    expect(fewestApplications({ total: n(0.9 * 3), perApplication: n(0.9) })).toBe(3);
  });
});
