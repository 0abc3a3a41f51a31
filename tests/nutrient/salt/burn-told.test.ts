import { describe, expect, test } from "vitest";
import {
  burnRisk,
  burnSchemes,
  foliarBurnRisk,
  saltIndex,
  tabulatedSaltIndex,
  turfListSaltIndexes,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { problemsOf } from "../../errors.js";

// What is told of burning, word by word: what was looked at, what was found, and what no index and no study says.

const others =
  "wet leaves, heat, drought, overlaps and watering-in: each changes the risk more than the index (common practice, no source)";
const soil = "injury on this soil, which the index does not predict";
const perUnit = (value: number, basis: "N" | "K2O" = "N") =>
  saltIndex({ value, scale: "per unit", basis, source: "a label" });

describe("a class of burning tells", () => {
  test("by which scheme, and what the index does not say", () => {
    const { type, version, scheme, checked, notChecked } = burnRisk(perUnit(0.5));
    expect([type, version, scheme]).toEqual(["burn-risk", 1, "Oregon State University"]);
    expect(checked).toEqual(["salt index per unit of N by Oregon State University"]);
    expect(notChecked).toEqual([others, soil]);
  });

  test("where a scheme does not sort an index, or has no class for it", () => {
    const potash = burnRisk(perUnit(1.2, "K2O"));
    expect(potash).not.toHaveProperty("class");
    expect(potash.checked).toEqual([]);
    expect(potash.notChecked).toEqual([
      "the index per unit of K2O: Oregon State University sorts per unit of N",
      others,
      soil,
    ]);
    expect(burnRisk(perUnit(1.2345)).notChecked).toEqual([
      "1.23 per unit of N: it lies between two classes of Oregon State University",
      others,
      soil,
    ]);
  });

  test("the risk in words, with the source of the scheme", () => {
    expect(burnRisk(perUnit(1.7)).findings).toEqual([
      {
        code: "salt/moderate",
        severity: "note",
        path: "partial",
        params: { value: 1.7, class: "moderate", scheme: "Oregon State University", basis: "N" },
        text: `A salt index of 1.7 per unit of N is moderate: watch rate, heat and wet leaves, by ${burnSchemes["Oregon State University"].source.title}.`,
        source: burnSchemes["Oregon State University"].source,
      },
    ]);
  });

  test("that a printed index is doubted, by where it is printed", () => {
    const [doubt] = burnRisk({ ...perUnit(0.5), doubtful: "another edition has 0.6" }).findings;
    expect(doubt).toEqual({
      code: "salt/doubtful-figure",
      severity: "note",
      path: "partial.value",
      params: { value: 0.5 },
      text: "The printed index is in doubt: another edition has 0.6.",
      source: "a label",
    });
  });

  test("an index of the turf list by the turf list, one of another source by the university", () => {
    const listed = tabulatedSaltIndex(turfListSaltIndexes, turfListSaltIndexes.rows[0]?.material as string);
    expect(burnRisk(listed).scheme).toBe("turf list");
    expect(burnRisk(perUnit(1)).scheme).toBe("Oregon State University");
  });
});

describe("leaf burn tells", () => {
  const ask = (source: unknown, lb: number, gal: number) =>
    foliarBurnRisk({
      source,
      nitrogen: quantity(lb, "lb/1000 ft2", "N"),
      volume: quantity(gal, "gal/1000 ft2", "spray"),
    } as never);
  const study = {
    title: "Fertilizer burn study (Agnew and Moore)",
    publisher: "Iowa State University, turf research report, page 69",
    year: 1989,
    where: "abstract",
    url: "https://tic.msu.edu/tgif/fullrecord?recno=18060",
  };
  const grass = "another grass, another season: the study had Kentucky bluegrass in July and August";
  const known = ["leaf burn against one field study"];
  const finding = { code: "salt/foliar-burn", severity: "warning", path: "source", source: study };

  test("what burned in the study, and by how much", () => {
    expect(ask("urea", 1, 2)).toEqual({
      type: "burn-risk",
      version: 1,
      findings: [
        {
          ...finding,
          params: { source: "urea", nitrogen: 1, volume: 2 },
          text: "At 1 lb N per 1000 ft2 in hot weather urea burned leaves most at 1, 2 and 4 gal per 1000 ft2.",
        },
      ],
      checked: known,
      notChecked: [others, grass],
    });
    expect(ask("formaldehyde-urea solution", 1, 1).findings).toEqual([
      {
        ...finding,
        params: { source: "formaldehyde-urea solution", nitrogen: 1, volume: 1 },
        text: "At 1 lb N per 1000 ft2 in hot weather a urea-formaldehyde solution burned leaves in 1 gal per 1000 ft2.",
      },
    ]);
  });

  test("what the study does not reach", () => {
    const short = "this rate and volume: the study had 1 lb N in 1 to 4 gal per 1000 ft2";
    expect(ask("urea", 0.5, 2).notChecked).toEqual([short, others, grass]);
    expect(ask("triazone solution", 2, 2).notChecked).toEqual([short, others, grass]);
    expect(ask("formaldehyde-urea solution", 1, 2).notChecked).toEqual([
      `${short}, and reports burn of this solution for 1 gal only`,
      others,
      grass,
    ]);
    expect(ask("other", 1, 1)).toEqual({
      type: "burn-risk",
      version: 1,
      findings: [],
      checked: [],
      notChecked: ["this source: the study had three others", others, grass],
    });
    expect(ask("triazone solution", 1, 1)).toMatchObject({ findings: [], checked: known });
  });
});

test("a row of a table that is no index is refused in the table", () => {
  const table = (row: object) => ({
    scale: "by weight",
    source: "a label",
    rows: [{ material: "x", basis: null, ...row }],
  });
  const told = (row: object) => problemsOf(() => tabulatedSaltIndex(table(row) as never, "x"))[0];
  expect([told({ value: -1 })?.code, told({ value: -1 })?.path]).toEqual(["range", "table.value"]);
  expect([told({ value: 1, note: "g" })?.code, told({ value: 1, note: "g" })?.path]).toEqual([
    "type",
    "table.rows[0].note",
  ]);
});
