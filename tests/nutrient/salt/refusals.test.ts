import { describe, expect, test } from "vitest";
import {
  blendSaltIndex,
  burnRisk,
  compareSaltIndexes,
  foliarBurnRisk,
  partialSaltIndex,
  saltIndex,
  scaledSaltIndex,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of salt indexes, what is told of burning, and what happens exactly at a limit.

const made = (change: object) => () =>
  saltIndex({ value: 1, scale: "per unit", basis: "N", source: "a list", ...change } as never);
const perUnit = (value: number, basis = "N") =>
  saltIndex({ value, scale: "per unit", basis: basis as "N", source: "a list" });
const byWeight = (value: number) => saltIndex({ value, scale: "by weight", source: "a list" });
const units = (change: object) => () =>
  partialSaltIndex(byWeight(75), { percent: 45, basis: "N", ...change } as never);
const blend = (parts: unknown) => () => blendSaltIndex(parts as never);
const spray = (change: object) => () =>
  foliarBurnRisk({
    source: "urea",
    nitrogen: quantity(1, "lb/1000 ft2", "N"),
    volume: quantity(2, "gal/1000 ft2", "spray"),
    ...change,
  } as never);

const rows: readonly Refused[] = [
  [made({ value: -1 }), "range", "value", "0 or more"],
  [made({ value: 1001 }), "range", "value", "1000 or less"],
  [made({ scale: "per pound" }), "type", "scale", '"by weight"'],
  [made({ basis: undefined }), "missing", "basis", "the nutrients that count as units, such as N or N+K2O"],
  [made({ basis: "S" }), "type", "basis", '"N+K2O"'],
  [made({ scale: "by weight" }), "conflict", "basis", "no basis by weight"],
  [made({ source: "" }), "missing", "source", "a source"],
  [made({ of: "N" }), "type", "input.of", "basis"],
  [
    () => partialSaltIndex(perUnit(1) as never, { percent: 45, basis: "N" }),
    "conflict",
    "byWeight.scale",
    'a salt index on the scale "by weight"',
  ],
  [
    () => partialSaltIndex(7 as never, { percent: 45, basis: "N" }),
    "type",
    "byWeight",
    "a salt index, with its scale",
  ],
  [units({ percent: 0 }), "range", "units.percent", "more than 0"],
  [units({ percent: 101 }), "range", "units.percent", "100 or less"],
  [units({ percent: 0.01 }), "range", "units.percent", "an index of 1000 or less"],
  [units({ basis: "S" }), "type", "units.basis", '"N+K2O"'],
  [units({ of: "N" }), "type", "units.of", "percent"],
  [
    () => scaledSaltIndex(byWeight(1) as never),
    "conflict",
    "partial.scale",
    'a salt index on the scale "per unit"',
  ],
  [() => scaledSaltIndex(perUnit(100)), "range", "partial.value", "an index of 1000 or less"],
  [
    () => compareSaltIndexes(perUnit(1), byWeight(1) as never),
    "conflict",
    "b.scale",
    'a salt index on the scale "per unit"',
  ],
  [
    () => compareSaltIndexes(perUnit(1), perUnit(1, "K2O")),
    "conflict",
    "b.basis",
    "the basis of the first, which is N",
  ],
  [() => compareSaltIndexes(7 as never, perUnit(1) as never), "missing", "a.scale", '"per unit"'],
  [blend([]), "missing", "parts", "part"],
  [blend([7]), "type", "parts[0]", "{ units, partial }"],
  [blend([{ units: -1, partial: perUnit(1) }]), "range", "parts[0].units", "0 or more"],
  [blend([{ units: 101, partial: perUnit(1) }]), "range", "parts[0].units", "100 or less"],
  [
    blend([{ units: 1, partial: byWeight(1) }]),
    "conflict",
    "parts[0].partial.scale",
    'a salt index on the scale "per unit"',
  ],
  [
    blend([
      { units: 60, partial: perUnit(1) },
      { units: 50, partial: perUnit(1) },
    ]),
    "range",
    "parts",
    "100 units in all or fewer",
  ],
  [blend([{ units: 100, partial: perUnit(11) }]), "range", "parts", "an index of 1000 or less"],
  [() => burnRisk(byWeight(1) as never), "conflict", "partial.scale", 'a salt index on the scale "per unit"'],
  [() => burnRisk(perUnit(1), { scheme: "Ohio" as never }), "type", "options.scheme", '"turf list"'],
  [() => burnRisk(perUnit(1), { list: 1 } as never), "type", "options.list", "scheme"],
  [spray({ source: "water" }), "type", "source", '"urea"'],
  [spray({ nitrogen: quantity(0, "lb/1000 ft2", "N") }), "range", "nitrogen", "more than zero"],
  [spray({ volume: quantity(0, "gal/1000 ft2", "spray") }), "range", "volume", "more than zero"],
  [spray({ volume: quantity(1, "gal/1000 ft2", "water") }), "substance/mismatch", "volume", "spray"],
];

describeRefused("what is refused of salt indexes", rows);

describe("classes of burning, at their printed ends", () => {
  const of = (value: number, scheme: "Oregon State University" | "turf list", basis = "N") =>
    burnRisk(perUnit(value, basis), { scheme });

  test("by the turf list 1.5 is not high, above it is", () => {
    expect([0, 1.5, 1.51, 5].map((value) => of(value, "turf list").class)).toEqual([
      "low",
      "low",
      "high",
      "high",
    ]);
    expect(of(1.6, "turf list").findings[0]).toMatchObject({
      code: "salt/high",
      severity: "caution",
      path: "partial",
      params: { value: 1.6, class: "high", scheme: "turf list", basis: "N" },
    });
    expect(of(1.6, "turf list").findings[0]?.text).toMatch(
      /^A salt index of 1\.6 per unit of N is high: leaves burn more easily, by .+\.$/,
    );
    expect(of(1, "turf list").findings).toEqual([]);
  });

  test("by the university 0.7 is low, 1.7 moderate, 3.2 high, and what lies between has no class", () => {
    const classes = [0.7, 0.71, 1.69, 1.7, 1.71, 3.19, 3.2].map(
      (value) => of(value, "Oregon State University").class,
    );
    expect(classes).toEqual(["low", undefined, undefined, "moderate", undefined, undefined, "high"]);
    expect(of(1.7, "Oregon State University").findings[0]).toMatchObject({
      code: "salt/moderate",
      severity: "note",
    });
    expect(of(1.7, "Oregon State University").findings[0]?.text).toContain(
      "is moderate: watch rate, heat and wet leaves, by",
    );
    expect(of(1, "Oregon State University").notChecked[0]).toBe(
      "1 per unit of N: it lies between two classes of Oregon State University",
    );
    expect(of(1, "Oregon State University").checked).toEqual([]);
    expect(of(0.5, "Oregon State University").checked).toEqual([
      "salt index per unit of N by Oregon State University",
    ]);
  });

  test("an index of another basis is not sorted, and that is said", () => {
    const found = of(5, "Oregon State University", "K2O");
    expect(found).not.toHaveProperty("class");
    expect(found.notChecked[0]).toBe(
      "the index per unit of K2O: Oregon State University sorts per unit of N",
    );
    expect(of(5, "turf list", "P2O5").notChecked[0]).toBe(
      "the index per unit of P2O5: turf list sorts per unit of N, K2O, N+P2O5",
    );
    expect(found.notChecked.slice(1)).toEqual([
      "wet leaves, heat, drought, overlaps and watering-in: each changes the risk more than the index (common practice, no source)",
      "injury on this soil, which the index does not predict",
    ]);
  });
});

describe("burning by a spray, against one field study", () => {
  const result = (source: string, pounds: number, gallons: number) =>
    spray({
      source,
      nitrogen: quantity(pounds, "lb/1000 ft2", "N"),
      volume: quantity(gallons, "gal/1000 ft2", "spray"),
    })();
  const burned = (source: string, pounds: number, gallons: number) =>
    result(source, pounds, gallons).findings.map(({ code }) => code);

  test("urea from 1 lb on in up to 4 gal, the solution in up to 1 gal, triazone not", () => {
    expect(burned("urea", 1, 4)).toEqual(["salt/foliar-burn"]);
    expect(burned("urea", 1, 4.1)).toEqual([]);
    expect(burned("urea", 0.9, 1)).toEqual([]);
    expect(burned("formaldehyde-urea solution", 1, 1)).toEqual(["salt/foliar-burn"]);
    expect(burned("formaldehyde-urea solution", 1, 1.1)).toEqual([]);
    expect(burned("triazone solution", 1, 1)).toEqual([]);
    expect(burned("other", 5, 0.5)).toEqual([]);
  });

  test("in the words of the study", () => {
    expect(result("urea", 1, 2).findings[0]?.text).toBe(
      "At 1 lb N per 1000 ft2 in hot weather urea burned leaves most at 1, 2 and 4 gal per 1000 ft2.",
    );
    expect(result("formaldehyde-urea solution", 1, 1).findings[0]?.text).toBe(
      "At 1 lb N per 1000 ft2 in hot weather a urea-formaldehyde solution burned leaves in 1 gal per 1000 ft2.",
    );
    expect(result("urea", 1, 2).findings[0]).toMatchObject({ severity: "warning", path: "source" });
  });

  test("what the study does not reach is said", () => {
    const left = (source: string, pounds: number, gallons: number) =>
      result(source, pounds, gallons).notChecked[0];
    const beyond = "this rate and volume: the study had 1 lb N in 1 to 4 gal per 1000 ft2";
    expect(left("urea", 0.5, 2)).toBe(beyond);
    expect(left("formaldehyde-urea solution", 1, 2)).toBe(
      `${beyond}, and reports burn of this solution for 1 gal only`,
    );
    expect(left("triazone solution", 1.1, 2)).toBe(beyond);
    expect(left("triazone solution", 1, 0.9)).toBe(beyond);
    expect(left("other", 1, 2)).toBe("this source: the study had three others");
    expect(left("triazone solution", 1, 1)).toMatch(/^wet leaves/);
    expect(result("triazone solution", 1, 1).checked).toEqual(["leaf burn against one field study"]);
    expect(result("other", 1, 1).checked).toEqual([]);
  });
});

test("indexes by hand, and the ends of their ranges", () => {
  // Urea: 75 by weight and 45 % N are 1.667 per unit; by sodium nitrate of 16.5 %, 27.5.
  const urea = partialSaltIndex(byWeight(75), { percent: 45, basis: "N" });
  expect(urea.value).toBeCloseTo(5 / 3, 12);
  expect(scaledSaltIndex(urea).value).toBeCloseTo(27.5, 12);
  expect(
    blendSaltIndex([
      { units: 10, partial: urea },
      { units: 20, partial: perUnit(0.5, "K2O") },
    ]).value,
  ).toBeCloseTo(10 * (5 / 3) + 10, 12);
  expect([
    compareSaltIndexes(perUnit(1), perUnit(2)),
    compareSaltIndexes(perUnit(2), perUnit(1)),
    compareSaltIndexes(perUnit(1), perUnit(1)),
  ]).toEqual([-1, 1, 0]);
  for (const call of [
    made({ value: 0 }),
    made({ value: 1000 }),
    units({ percent: 100 }),
    () => partialSaltIndex(byWeight(1000), { percent: 1, basis: "N" }),
    blend([{ units: 100, partial: perUnit(10) }]),
  ])
    expect(problemsOf(call)).toEqual([]);
});
