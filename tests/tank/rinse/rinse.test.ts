import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { containerRinse, rinseResidue, rinsesFor, tankRinse } from "../../../src/tank/index.js";
import { errorOf } from "../../errors.js";

describe("rinsing a container", () => {
  test("a quarter below 5 gal, a fifth from 5 gal on", () => {
    for (const rule of ["Montana", "Illinois"] as const) {
      const first = (gallons: number) =>
        containerRinse({ container: quantity(gallons, "gal"), rule }).perRinse[0].in("gal");
      expect(first(4.99)).toBeCloseTo(4.99 / 4, 12);
      expect(first(5)).toBe(1);
      expect(first(30)).toBe(6);
    }
    // 20 L is 5.28 gal.
    expect(containerRinse({ container: quantity(20, "L"), rule: "Montana" }).perRinse[0].in("L")).toBe(4);
    // 5 gal are 5 gal, in whatever unit.
    for (const five of [quantity(18.92705892, "L"), quantity(640, "fl oz"), quantity(1155, "in3")])
      expect(containerRinse({ container: five, rule: "Montana" }).perRinse[0].in("gal")).toBeCloseTo(1, 12);
  });

  test("the rules as printed", () => {
    const archive = containerRinse({ container: quantity(10, "L"), rule: "US EPA archive" });
    expect(archive.perRinse.map((water) => water.in("L"))).toEqual([2, 2.5]);
    expect(archive.water.map((water) => water.in("L"))).toEqual([6, 7.5]);
    expect([archive.drainSeconds, archive.shakeSeconds, archive.pressure?.seconds]).toEqual([30, 30, 30]);
    const montana = containerRinse({ container: quantity(2, "gal"), rule: "Montana" });
    expect([montana.withinHours, montana.pressure?.water?.in("gal"), montana.shakeSeconds]).toEqual([
      48,
      1,
      undefined,
    ]);
    expect(montana.rinsate).toContain("spray tank");
    const old = containerRinse({
      container: quantity(2.5, "gal"),
      rule: "1974 definition",
      heel: quantity(4, "fl oz"),
    });
    // (4 / (4 + 32))^3
    expect(old.residue?.in("%")).toBeCloseTo(100 / 729, 9);
  });

  test("where no rule is named, what US labels print: a quarter, whatever the size", () => {
    const jug = containerRinse({ container: quantity(2.5, "gal") });
    expect([jug.rule, jug.rinses, jug.drainSeconds, jug.shakeSeconds, jug.rollSeconds]).toEqual([
      "US federal label text",
      3,
      10,
      10,
      undefined,
    ]);
    expect(jug.perRinse.map((water) => water.in("gal"))).toEqual([0.625, 0.625]);
    expect(jug.steps[0]).toContain("drain for 10 s after it begins to drip");
    expect(jug.steps[1]).toContain("shake for 10 s");
    // A drum of 30 gal takes 7.5 gal a time, where Montana asks for 6, and is rolled.
    const drum = containerRinse({ container: quantity(30, "gal") });
    expect(drum.perRinse[0].in("gal")).toBe(7.5);
    expect([drum.shakeSeconds, drum.rollSeconds]).toEqual([undefined, 30]);
    expect(drum.steps[1]).toContain("roll it on its side, at least one full turn, for 30 s");
    expect(containerRinse({ container: quantity(5, "gal") }).shakeSeconds).toBe(10);
    expect(containerRinse({ container: quantity(5.1, "gal") }).rollSeconds).toBe(30);
  });

  test("what is wrong is named", () => {
    const wrong = errorOf(() =>
      containerRinse({ container: quantity(-1, "gal"), rule: "Ohio" as never, heel: quantity(-1, "gal") }),
    );
    expect(wrong.problems.map(({ code, path }) => [code, path])).toEqual([
      ["range", "container"],
      ["type", "rule"],
      ["range", "heel"],
    ]);
    const container = quantity(1, "gal");
    expect(errorOf(() => containerRinse({ container: quantity(0, "gal") })).path).toBe("container");
    expect(errorOf(() => containerRinse({ container, rule: "Ohio" as never })).path).toBe("rule");
    expect(errorOf(() => containerRinse({ container, heel: quantity(1, "gal") })).code).toBe("conflict");
    expect(errorOf(() => containerRinse({ container: quantity(1, "lb") as never })).code).toBe(
      "unit/mismatch",
    );
  });
});

describe("residue", () => {
  const volume = fc.double({ min: 0.01, max: 100, noNaN: true });

  test("equal rinses leave no more than any other split of the same water", () => {
    fc.assert(
      fc.property(
        volume,
        volume,
        fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 6 }),
        (heel, water, weights) => {
          const sum = weights.reduce((a, b) => a + b, 0);
          const uneven = weights.reduce((left, weight) => (left * heel) / (heel + (water * weight) / sum), 1);
          const rinse = tankRinse({
            heel: quantity(heel, "L"),
            water: quantity(water, "L"),
            rinses: weights.length,
          });
          expect(rinse.residue.in("1")).toBeLessThanOrEqual(uneven * (1 + 1e-9));
          expect(rinse.residue.in("1")).toBeGreaterThanOrEqual(rinse.limit.in("1") * (1 - 1e-9));
          expect(rinse.residue.in("1")).toBeLessThanOrEqual(rinse.inOneRinse.in("1") * (1 + 1e-9));
        },
      ),
    );
  });

  test("half the tank of rinse water as large as the heel leaves half, however large", () => {
    for (const size of [1e-300, 1, 1e300])
      expect(rinseResidue({ heel: quantity(size, "L"), rinse: quantity(size, "L"), rinses: 3 }).in("%")).toBe(
        12.5,
      );
  });

  test("rinsesFor is the smallest number that reaches the target", () => {
    fc.assert(
      fc.property(
        volume,
        fc.double({ min: 1, max: 8, noNaN: true }),
        fc.double({ min: 0.001, max: 0.9, noNaN: true }),
        (heel, times, share) => {
          const job = { heel: quantity(heel, "L"), water: quantity(heel * times, "L") };
          // rinsesFor looks no further than a thousand rinses.
          fc.pre(share > (1 + times / 1000) ** -1000 * (1 + 1e-9));
          const n = rinsesFor({ ...job, target: quantity(share * 100, "%") });
          const left = (rinses: number) => tankRinse({ ...job, rinses }).residue.in("1");
          expect(left(n)).toBeLessThanOrEqual(share * (1 + 1e-9));
          if (n > 1) expect(left(n - 1)).toBeGreaterThan(share * (1 - 1e-9));
        },
      ),
    );
  });

  test("what is wrong is named", () => {
    const heel = quantity(1, "gal", "spray");
    const water = quantity(2, "gal", "water");
    expect(errorOf(() => rinsesFor({ heel, water, target: quantity(1, "%") })).code).toBe("infeasible");
    expect(errorOf(() => rinsesFor({ heel, water, target: quantity(0, "%") })).path).toBe("target");
    // e^-2 = 13.5 %: endless rinsing gets to 13.6 %, but not a thousand rinses to 13.5336 %.
    const endless = (percent: number) =>
      errorOf(() => rinsesFor({ heel, water, target: quantity(percent, "%") })).expected;
    expect(endless(13.5)).toContain("even endless rinsing leaves 13.5 %");
    expect(endless(13.5336)).toContain("more than 1000 rinses");
    expect(rinsesFor({ heel, water, target: quantity(13.6, "%") })).toBeGreaterThan(100);
    const paths = (run: () => unknown) => errorOf(run).problems.map(({ path }) => path);
    expect(paths(() => rinsesFor({} as never))).toEqual(["heel", "water", "target"]);
    expect(paths(() => rinseResidue({ rinses: null } as never))).toEqual(["heel", "rinse", "rinses"]);
    expect(paths(() => tankRinse({ rinses: 0, strength: null } as never))).toEqual([
      "heel",
      "water",
      "rinses",
      "strength",
    ]);
    expect(errorOf(() => tankRinse({ heel, water, rinses: 1.5 })).path).toBe("rinses");
    expect(errorOf(() => tankRinse({ heel, water, rinses: 0 })).path).toBe("rinses");
    expect(errorOf(() => rinseResidue({ heel: quantity(0, "gal"), rinse: water })).path).toBe("heel");
    expect(errorOf(() => tankRinse({ heel, water, strength: quantity(1, "lb") })).path).toBe("strength");
    const strong = tankRinse({ heel, water, rinses: 2, strength: quantity(8, "g/L", "product/spray") });
    expect(strong.strengthLeft?.toString()).toBe("2 g/L of product/spray");
  });
});
