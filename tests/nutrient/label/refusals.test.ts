import { describe, expect, test } from "vitest";
import {
  analysis,
  fertilizer,
  formFactor,
  formulaWeight,
  highestProductRate,
  liquidFertilizer,
  percentOf,
  productMass,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a label, where the refusal points, and what it says would have been right.

const read = (text: unknown, basis?: unknown, path?: string) => () =>
  analysis(text as never, basis as never, path);
const label = (change: object) => () => fertilizer({ id: "a", analysis: "20-5-10", ...change } as never);
const liters = (change: object) => () =>
  liquidFertilizer({ id: "a", perVolume: { N: quantity(3, "lb/gal", "N") }, ...change } as never);
const slow = (percent: number) => quantity(percent, "% w/w", "N:slow/product");
const wanted = "three percentages with hyphens between, such as 24-0-11 or 12-0-0-26S";

const rows: readonly Refused[] = [
  // A grade
  [read("24"), "text", "analysis", `${wanted}; it ends before a hyphen and the next percentage`],
  [read("24-0"), "text", "analysis", "it ends before a hyphen and the next percentage"],
  [read("24-0-"), "text", "analysis", "it ends before a percentage"],
  [read(""), "missing", "analysis", "it ends before a percentage"],
  [read("24-x-11"), "text", "analysis", 'at character 4, "x" is not a percentage'],
  [read("24/0/11"), "text", "analysis", 'at character 3, "/0/11" is not a hyphen and the next percentage'],
  [
    read("24-0-11-2Zz"),
    "text",
    "analysis",
    'at character 10, "Zz" is not the symbol of a nutrient that is read here, such as S or Fe',
  ],
  [read("24-0-11 green"), "text", "analysis", "is not a percentage with its nutrient, such as 26S or + TE"],
  [read("24-0-11-2Fe-3Fe"), "conflict", "analysis", "each nutrient once; Fe appears again at character 12"],
  [read("24,5-0-11"), "text", "analysis", 'a decimal point, or { decimal: "," } for a comma'],
  [read("24.5-0-11", { decimal: "," }), "text", "analysis", "a decimal comma, as was asked for"],
  [read("3 lb/gal"), "text", "analysis", "liquidFertilizer"],
  [read("x".repeat(121)), "text", "analysis", wanted],
  [read("24-0-11", "oxides"), "type", "basis", '"oxide"'],
  [read("24-0-11", { basis: "oxides" }), "type", "basis", '"element"'],
  [read("24-0-11", { decimal: ";" }), "type", "decimal", '","'],
  [read("24-0-11", { sign: "," }), "type", "basis.sign", "decimal"],
  [read("60-30-20"), "range", "analysis", "100 % or less in all", "110 % in all"],
  [read("24-0-11", undefined, 7 as never), "type", "path", "a path"],
  [read("101-0-0", undefined, "bag"), "range", "bag.percent.N", "0 to 100 %"],
  // As a record
  [read({ N: 24 }), "type", "analysis.N", '{ basis: "oxide", percent: { N: 24 } }'],
  [read({ N: quantity(3, "lb/gal", "N") }), "type", "analysis.N", "liquidFertilizer"],
  [read(7), "type", "analysis", 'a grade such as "24-0-11", or { basis, percent }'],
  [read({ basis: "salt", percent: { N: 1 } }), "type", "analysis.basis", '"oxide"'],
  [read({ basis: "oxide", percent: 7 }), "type", "analysis.percent", "record"],
  [
    read({ basis: "oxide", percent: {} }),
    "missing",
    "analysis.percent",
    "at least one nutrient",
    "no nutrient",
  ],
  [
    read({ basis: "oxide", percent: Object.fromEntries(Array.from("x".repeat(41), (x, i) => [x + i, 1])) }),
    "range",
    "analysis.percent",
    "40 nutrients or fewer",
  ],
  [
    read({ basis: "oxide", percent: Object.fromEntries(Array.from("x".repeat(40), (x, i) => [x + i, 1])) }),
    "substance/unknown",
    "analysis.percent.x39",
    "a nutrient, such as N, P2O5 or Fe",
    "x39",
  ],
  [
    read({ basis: "oxide", percent: { ["x".repeat(60)]: 1 } }),
    "substance/unknown",
    `analysis.percent.${"x".repeat(40)}`,
    "a nutrient",
    "x".repeat(40),
  ],
  [
    read({ basis: "oxide", percent: { Zz: 1 } }),
    "substance/unknown",
    "analysis.percent.Zz",
    "a nutrient, such as N, P2O5 or Fe",
  ],
  [read({ basis: "oxide", percent: { N: "1" } }), "not-finite", "analysis.percent.N", "a percentage"],
  [read({ basis: "oxide", percent: { N: -1 } }), "range", "analysis.percent.N", "0 to 100 %"],
  [
    read({ basis: "oxide", percent: { P: 1 } }),
    "conflict",
    "analysis.percent.P",
    "P2O5 and K2O, as the basis says, or the other basis",
  ],
  [read({ basis: "oxide", percent: { K: 1 } }), "conflict", "analysis.percent.K", "P2O5 and K2O"],
  [
    read({ basis: "element", percent: { P2O5: 1 } }),
    "conflict",
    "analysis.percent.P2O5",
    "P and K, as the basis says",
  ],
  [read({ basis: "element", percent: { K2O: 1 } }), "conflict", "analysis.percent.K2O", "P and K"],
  [
    read({ basis: "oxide", percent: { Ca: 1, CaO: 2 } }),
    "conflict",
    "analysis.percent.Ca",
    "one form of each nutrient",
  ],
  [
    read({ basis: "oxide", percent: { N: 1 }, traceElements: "yes" }),
    "type",
    "analysis.traceElements",
    "true, or nothing",
  ],
  [() => percentOf(undefined as never, "N"), "missing", "analysis", "fertilizer"],
  [
    () => percentOf({ basis: "oxide", percent: { N: 101 } }, "N"),
    "range",
    "analysis.percent.N",
    "0 to 100 %",
  ],
  [
    () => percentOf({ basis: "oxide", percent: { N: -1 } }, "N"),
    "range",
    "analysis.percent.N",
    "0 to 100 %",
    "-1",
  ],
  [() => percentOf({ basis: "oxide", percent: { N: 1 } }, 7 as never), "type", "analysis", "fertilizer"],
  [() => percentOf({ basis: "oxide" } as never, "N"), "type", "analysis.percent", "fertilizer"],
  ...[["bag"], "x".repeat(2001), {}, null].map(
    (path): Refused => [read("24-0-11", undefined, path as never), "type", "path", "a path"],
  ),
  [() => formFactor(7 as never, "P"), "type", "from", "a form of a nutrient, such as P2O5", "7"],
  [() => formFactor("P", 7 as never), "type", "to", "a form of a nutrient, such as P2O5", "7"],
  // The weight of a formula
  [() => formulaWeight(7 as never), "type", "formula", "record"],
  [
    () => formulaWeight({ Zz: 1 } as never),
    "substance/unknown",
    "formula.Zz",
    "Si, P, S, Cl, K, Ca, Fe",
    '"Zz"',
  ],
  [
    () => formulaWeight({ ["x".repeat(60)]: 1 } as never),
    "substance/unknown",
    `formula.${"x".repeat(40)}`,
    "Fe",
  ],
  [() => formulaWeight({ Ca: 1, C: -4 }), "range", "formula", "atoms, 1 or more"],
  [() => formulaWeight({ Ca: Number.NaN }), "not-finite", "formula.Ca", "a finite number"],
  [() => formulaWeight({ Ca: 1e6 + 1 }), "range", "formula.Ca", "1000000 or less"],
  [() => formulaWeight({}), "range", "formula", "atoms, 1 or more"],
  // A product by weight
  [
    label({ id: undefined }),
    "missing",
    "fertilizer.id",
    "a short name without slash or colon, such as feed-a",
  ],
  [label({ id: "a/b" }), "type", "fertilizer.id", "a short name without slash or colon"],
  [label({ id: "x".repeat(201) }), "type", "fertilizer.id", "a short name"],
  [label({ name: 7 }), "type", "fertilizer.name", "a name"],
  [label({ name: "" }), "missing", "fertilizer.name", "a name", '""'],
  [label({ name: " \t" }), "missing", "fertilizer.name", "a name"],
  [
    label({ name: "x".repeat(2001) }),
    "range",
    "fertilizer.name",
    "2000 characters or fewer",
    "a text of 2001 characters",
  ],
  [label({ form: "gel" }), "type", "fertilizer.form", '"dry"'],
  [label({ analysis: undefined }), "missing", "fertilizer.analysis", 'a grade such as "24-0-11"'],
  [label({ analysis: undefined, form: "liquid" }), "missing", "fertilizer.analysis", "liquidFertilizer"],
  [label({ basis: "salt" }), "type", "fertilizer.basis", '"oxide"'],
  [label({ decimal: ";" }), "type", "fertilizer.decimal", '","'],
  [label({ perVolume: { N: 1 } }), "conflict", "fertilizer.perVolume", "a grade in percent by weight"],
  [
    label({ slowNitrogen: quantity(4, "% w/w", "N:slow/N") }),
    "substance/mismatch",
    "fertilizer.slowNitrogen",
    "N:slow/product",
  ],
  [label({ slowNitrogen: slow(-1) }), "range", "fertilizer.slowNitrogen", "zero or more"],
  [
    label({ slowNitrogen: slow(21) }),
    "conflict",
    "fertilizer.slowNitrogen",
    "at most the 20 % N of the analysis",
  ],
  [
    label({ nitrogen: { percent: { urea: 12, waterInsoluble: 8 } }, slowNitrogen: slow(7) }),
    "conflict",
    "fertilizer.slowNitrogen",
    "the 8 % that the breakdown of nitrogen gives",
  ],
  [
    label({ nitrogen: { percent: { urea: 19 } } }),
    "conflict",
    "fertilizer.nitrogen.percent",
    "lines that add up to the 20 % nitrogen of the grade",
  ],
  [
    label({ analysis: "0-0-50", nitrogen: { percent: { urea: 1 } } }),
    "conflict",
    "fertilizer.nitrogen",
    "no breakdown where the analysis states 0 % N",
  ],
  [
    label({ density: quantity(10, "lb/gal") }),
    "conflict",
    "fertilizer.density",
    'no density for a dry product, or form "liquid"',
  ],
  [
    label({ package: quantity(2, "gal") }),
    "conflict",
    "fertilizer.package",
    'a weight for a dry product, or form "liquid"',
  ],
  [
    label({ form: "liquid", density: quantity(0, "lb/gal") }),
    "range",
    "fertilizer.density",
    "more than zero",
  ],
  [
    label({ form: "liquid", density: quantity(1, "lb") }),
    "unit/mismatch",
    "fertilizer.density",
    "a weight per volume",
  ],
  [label({ package: quantity(0, "lb") }), "range", "fertilizer.package", "more than zero"],
  [label({ package: quantity(50, "lb", "N") }), "substance/mismatch", "fertilizer.package", "no substance"],
  [label({ bag: 1 }), "type", "fertilizer.bag", "package"],
  [() => fertilizer(7 as never), "type", "fertilizer", "a fertilizer record: { id, analysis }"],
  // A product by volume
  ...["density", "analysis", "form"].map(
    (field): Refused => [
      liters({ [field]: "x" }),
      "conflict",
      `liquidFertilizer.${field}`,
      `no ${field} here; fertilizer({ id, form: "liquid"`,
    ],
  ),
  [liters({ perVolume: {} }), "missing", "liquidFertilizer.perVolume", "at least one nutrient"],
  [liters({ perVolume: 7 }), "type", "liquidFertilizer.perVolume", "nutrients, each in mass per volume"],
  [
    liters({ perVolume: { N: quantity(-1, "lb/gal", "N") } }),
    "range",
    "liquidFertilizer.perVolume.N",
    "zero or more",
  ],
  [
    liters({ perVolume: { P: quantity(1, "lb/gal", "P"), P2O5: quantity(1, "lb/gal", "P2O5") } }),
    "conflict",
    "liquidFertilizer.perVolume.P",
    "one form of each nutrient",
  ],
  [
    liters({ perVolume: { N: quantity(6, "lb/gal", "N") } }),
    "range",
    "liquidFertilizer.perVolume.N",
    "622 g/L or less or 5.2 lb/gal, the nitrogen of solid urea",
  ],
  [
    liters({ perVolume: { K2O: quantity(2600, "g/L", "K2O") } }),
    "range",
    "liquidFertilizer.perVolume",
    "nutrients that a liquid can hold, 2500 g/L or less in all",
  ],
  [
    liters({ slowNitrogen: quantity(4, "lb/gal", "N:slow") }),
    "conflict",
    "liquidFertilizer.slowNitrogen",
    "at most the nitrogen of the label, 3 lb/gal of N",
  ],
  [
    liters({
      perVolume: { K2O: quantity(1, "lb/gal", "K2O") },
      slowNitrogen: quantity(1, "lb/gal", "N:slow"),
    }),
    "conflict",
    "liquidFertilizer.slowNitrogen",
    "at most the nitrogen of the label, none",
  ],
  [
    liters({ slowNitrogen: slow(4) }),
    "unit/mismatch",
    "liquidFertilizer.slowNitrogen",
    "a weight per volume",
  ],
  [liters({ package: quantity(1, "lb") }), "unit/mismatch", "liquidFertilizer.package", "a volume"],
];

describeRefused("what is refused of a label", rows);

describe("what the refusal of a label does not say", () => {
  test("that there is a record by volume, or an analysis of one, where that is not the question", () => {
    expect(problemsOf(label({ analysis: undefined }))[0]?.expected).toBe('a grade such as "24-0-11"');
    const [problem] = problemsOf(() => productMass(quantity(1, "lb", "N"), 7 as never));
    expect(problem?.expected).toBe("a record made by fertilizer(...)");
  });

  test("more of a formula, or of a label, than anybody reads", () => {
    const many = Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`x${i}`, 1]));
    expect(problemsOf(() => formulaWeight(many as never))).toHaveLength(200);
  });
});

describe("what else a label may leave out, or state at a limit", () => {
  test("an undefined option is none", () => {
    expect(analysis("24.5-0-11", { decimal: undefined } as never).percent.N).toBe(24.5);
    expect(analysis("24-2-11", { basis: undefined } as never).basis).toBe("oxide");
  });

  test("nothing below zero is zero, and what is not there has no field", () => {
    const read = analysis({ basis: "oxide", percent: { N: -0, K2O: 100 } });
    expect(read).toStrictEqual({ basis: "oxide", percent: { N: 0, K2O: 100 } });
    expect(percentOf({ basis: "oxide", percent: { N: -0 } }, "N")).toBe(0);
  });

  test("a percent out of range says between what it may lie", () => {
    const [problem] = problemsOf(() => percentOf({ basis: "oxide", percent: { N: 101 } }, "N"));
    expect(problem?.params).toEqual({ min: 0, max: 100, unit: "%" });
  });

  test("a path, a name and a text of 2000 characters", () => {
    const long = "x".repeat(2000);
    expect(fertilizer({ id: "a", name: long, analysis: "1-0-0" }).name).toBe(long);
    expect(analysis("24-0-11", "oxide", long).percent.N).toBe(24);
  });

  test("a source that is neither a text nor a record", () => {
    const limit = quantity(1, "lb/1000 ft2", "N");
    const given = (source: unknown) => () =>
      highestProductRate({
        product: fertilizer({ id: "a", analysis: "20-5-10" }),
        caps: [{ limit, source }],
      } as never);
    for (const source of [7, null, true]) {
      const [problem] = problemsOf(given(source));
      expect([problem?.code, problem?.path, problem?.expected]).toEqual([
        "type",
        "caps[0].source",
        "a source",
      ]);
    }
    expect(problemsOf(given({ title: " ", publisher: "x", year: 0 })).map(({ path }) => path)).toEqual([
      "caps[0].source.title",
      "caps[0].source.year",
    ]);
  });
});
