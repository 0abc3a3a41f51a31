import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import { containerRinse, type RinseRuleId, rinseRules, tankRinse } from "../../../src/tank/index.js";
import { problemsOf } from "../../errors.js";

// What a person reads who rinses a container, rule by rule; the figures are those of the rules as printed.

const rinse = (gallons: number, rule: RinseRuleId) =>
  containerRinse({ container: quantity(gallons, "gal"), rule });

const last = "Make the container unusable, leave its label on until it is handed in, and never reuse it.";

const rows: readonly (readonly [rule: RinseRuleId, gallons: number, steps: readonly string[]])[] = [
  [
    "US federal label text",
    2,
    [
      "Empty the container into the tank and let it drain for 10 s after it begins to drip.",
      "Put in 0.5 gal of clean water, close it, and shake for 10 s so that the water reaches every side.",
      "Pour the rinse water into the tank and let it drain for 10 s after it begins to drip.",
      "Do this 3 times with fresh water.",
      last,
    ],
  ],
  [
    "Illinois",
    10,
    [
      "Empty the container into the tank and let it drain for 30 s.",
      "Put in 2 gal of clean water, close it, and shake vigorously so that the water reaches every side.",
      "Pour the rinse water into the tank and let it drain for 30 s.",
      "Do this 3 times with fresh water.",
      last,
    ],
  ],
  [
    "Montana",
    2,
    [
      "Empty the container into the tank and let it drain for 30 s.",
      "Put in 0.5 gal of clean water, close it, and shake vigorously so that the water reaches every side.",
      "Pour the rinse water into the tank and let it drain for 30 s.",
      "Do this 3 times with fresh water, and more until no residue is visible.",
      last,
    ],
  ],
  [
    "US EPA archive",
    10,
    [
      "Empty the container into the tank and let it drain for 30 s.",
      "Put in 2 to 2.5 gal of clean water, close it, and shake for 30 s so that the water reaches every side.",
      "Pour the rinse water into the tank and let it drain for 30 s.",
      "Do this 3 times with fresh water.",
      last,
    ],
  ],
  [
    "1974 definition",
    10,
    [
      "Empty the container into the tank and let it drain.",
      "Put in 1 gal of clean water, close it, and shake vigorously so that the water reaches every side.",
      "Pour the rinse water into the tank and let it drain.",
      "Do this 3 times with fresh water.",
      last,
    ],
  ],
];

describe("the steps of a rinse", () => {
  test.each(rows)("%s", (rule, gallons, steps) => {
    expect(rinse(gallons, rule).steps).toEqual(steps);
  });

  test("a drum that is too large to shake is rolled, with the seconds of the rule", () => {
    expect(rinse(30, "US federal label text").steps[1]).toBe(
      "Put in 7.5 gal of clean water, close it, and roll it on its side, at least one full turn, for 30 s, tip it back and forth on one end and then on the other, so that the water reaches every side.",
    );
  });

  test("every rule has its steps here, its source, and a place for its rinse water", () => {
    expect(rows.map(([rule]) => rule).sort()).toEqual(Object.keys(rinseRules).sort());
    for (const [rule, gallons] of rows) {
      const found = rinse(gallons, rule);
      expect(found.source.title).toMatch(/\w/);
      expect(found.source.publisher).toMatch(/\w/);
      expect(found.rinsate).toContain("never pour it on the ground or into a drain");
    }
  });

  test("the seconds of the pressure rinse, or the water that it takes", () => {
    const pressure = (rule: RinseRuleId) => rinse(10, rule).pressure;
    expect(pressure("US federal label text")).toEqual({ seconds: 30 });
    expect(pressure("Illinois")).toEqual({ seconds: 60 });
    expect(pressure("US EPA archive")).toEqual({ seconds: 30 });
    expect(pressure("1974 definition")).toBeUndefined();
    const montana = pressure("Montana");
    expect([montana?.seconds, montana?.water?.toString()]).toEqual([undefined, "5 gal of water"]);
  });

  test("only Montana names hours within which a container is rinsed", () => {
    for (const [rule, gallons] of rows)
      expect(rinse(gallons, rule).withinHours).toBe(rule === "Montana" ? 48 : undefined);
  });

  test("the residue is told where the heel is stated, and only there", () => {
    expect(rinse(10, "Montana")).not.toHaveProperty("residue");
    // A quarter of 4 gal on a heel of 1 gal is one and one: an eighth is left after three.
    const stated = containerRinse({
      container: quantity(4, "gal"),
      rule: "Montana",
      heel: quantity(1, "gal"),
    });
    expect(stated.residue?.in("%")).toBe(12.5);
  });
});

describe("cautions", () => {
  test("of a container: its rinsing, protective equipment, no food containers", () => {
    expect(
      rinse(2, "Montana")
        .cautions.map(({ code }) => code)
        .sort(),
    ).toEqual(["caution/container-rinse", "caution/no-food-containers", "caution/protective-equipment"]);
  });

  test("of a tank: the label, closed tanks, protective equipment; and where its rinse water goes", () => {
    const found = tankRinse({ heel: quantity(2, "gal", "spray"), water: quantity(30, "gal", "water") });
    expect(found.cautions.map(({ code }) => code).sort()).toEqual([
      "caution/closed-tank",
      "caution/label-first",
      "caution/protective-equipment",
    ]);
    expect(found.rinsate).toContain("Spray the rinse water on a labeled site");
    expect(found.rinsate).toContain("Never into a drain");
    // Three rinses of 10 gal on a heel of 2: a sixth to the third; one of 30: a sixteenth; endless ones: e^-15.
    expect(found.rinses).toBe(3);
    expect(found.perRinse.toString()).toBe("10 gal of water");
    expect(found.residue.in("%")).toBeCloseTo(100 / 216, 12);
    expect(found.inOneRinse.in("%")).toBe(6.25);
    expect(found.limit.in("1")).toBeCloseTo(3.059e-7, 10);
    expect(found).not.toHaveProperty("strengthLeft");
  });
});

describe("how many rinses", () => {
  const job = { heel: quantity(1, "L"), water: quantity(2, "L") };
  const told = (rinses: number) => problemsOf(() => tankRinse({ ...job, rinses }))[0];
  test("one is taken and a thousand, neither none nor more, and no part of one", () => {
    expect(told(1)).toBeUndefined();
    expect(told(1000)).toBeUndefined();
    expect(told(1001)).toMatchObject({ code: "range", path: "rinses" });
    expect(told(0)).toMatchObject({ code: "range", path: "rinses" });
    expect(told(1.5)).toMatchObject({ code: "range", path: "rinses" });
    expect(told(1.5)?.expected).toContain("rinses");
  });
});
