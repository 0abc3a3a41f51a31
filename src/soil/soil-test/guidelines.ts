import {
  allOf,
  expectFields,
  expectList,
  expectNumber,
  expectOneOf,
  expectText,
  fail,
  frozen,
} from "../../quantity/index.js";
import {
  type Extractant,
  extractants,
  type GuidelineRow,
  type SoilGuideline,
  type TestedNutrient,
  testedNutrients,
} from "./guideline-types.js";
import { minimumLevelsAmmoniumAcetate, minimumLevelsMehlich3 } from "./minimum-levels.js";
import { pennsylvaniaPhosphorus } from "./pennsylvania-phosphorus.js";
import { sufficiencyBray, sufficiencyMehlich3, sufficiencyOlsen } from "./sufficiency-ranges.js";

/** A guideline by name. */
export type GuidelineName =
  | "minimum levels, Mehlich 3"
  | "minimum levels, ammonium acetate"
  | "sufficiency, Mehlich 3"
  | "sufficiency, Bray P1"
  | "sufficiency, Olsen"
  | "Pennsylvania, Mehlich 3";

/** The guidelines, each with its extractant and source. */
export const soilGuidelines: Readonly<Record<GuidelineName, SoilGuideline>> = /* @__PURE__ */ frozen({
  "minimum levels, Mehlich 3": minimumLevelsMehlich3,
  "minimum levels, ammonium acetate": minimumLevelsAmmoniumAcetate,
  "sufficiency, Mehlich 3": sufficiencyMehlich3,
  "sufficiency, Bray P1": sufficiencyBray,
  "sufficiency, Olsen": sufficiencyOlsen,
  "Pennsylvania, Mehlich 3": pennsylvaniaPhosphorus,
});

const names = /* @__PURE__ */ Object.keys(soilGuidelines) as readonly GuidelineName[];

/** A guideline by its name, or one of the caller's own. */
export const readGuideline = (input: unknown, path: string): SoilGuideline => {
  if (typeof input === "string") return soilGuidelines[expectOneOf(input, names, path)];
  const fields = ["extractant", "meaning", "rows", "source"] as const;
  const record = expectFields(input, fields, path, `a guideline, or a name: ${names.join("; ")}`);
  return allOf({
    extractant: () => expectOneOf(record.extractant, extractants, `${path}.extractant`),
    meaning: () => expectText(record.meaning, `${path}.meaning`, "what its figures mean"),
    rows: () =>
      expectList(record.rows, `${path}.rows`, "row").map((row, i) => readRow(row, `${path}.rows[${i}]`)),
    source: () => {
      const source = expectFields(
        record.source,
        ["title", "publisher", "year", "where", "url"],
        `${path}.source`,
      );
      return {
        title: expectText(source.title, `${path}.source.title`, "a title"),
        publisher: expectText(source.publisher, `${path}.source.publisher`, "who published it"),
      };
    },
  });
};

const readRow = (input: unknown, path: string): GuidelineRow => {
  const record = expectFields(input, ["nutrient", "soil", "from", "to"], path);
  const row = allOf({
    nutrient: () => expectOneOf(record.nutrient, testedNutrients, `${path}.nutrient`),
    soil: () => expectText(record.soil, `${path}.soil`, 'the soil that it is for, or "any"'),
    from: () => expectNumber(record.from, `${path}.from`, { min: 0 }),
    to: () => (record.to === null || record.to === undefined ? null : expectNumber(record.to, `${path}.to`)),
  });
  return row.to !== null && row.to < row.from
    ? fail("conflict", `${path}.to`, row.to, `${row.from} or more`)
    : row;
};

/** The row of a guideline for a nutrient and a soil, by the extractant of the report. */
export const guidelineRow = (
  guideline: SoilGuideline,
  wanted: {
    readonly nutrient: TestedNutrient;
    readonly extractant: Extractant;
    readonly soil: string | undefined;
  },
): GuidelineRow => {
  const { nutrient, extractant, soil } = wanted;
  if (guideline.extractant !== extractant) {
    fail(
      "conflict",
      "extractant",
      extractant,
      `${guideline.extractant}, which the guideline is for: take the guideline of the extractant of the report`,
    );
  }
  const rows = guideline.rows.filter((row) => row.nutrient === nutrient);
  if (rows.length === 0) {
    const choices = [...new Set(guideline.rows.map((row) => row.nutrient))];
    fail("missing", "nutrient", nutrient, "a nutrient that the guideline has", { choices });
  }
  const found = rows.find((row) => row.soil === "any" || row.soil === soil);
  return (
    found ??
    fail("type", "soil", soil, "the soil or turf that the guideline distinguishes", {
      choices: rows.map((row) => row.soil),
    })
  );
};
