import { describe, expect, test } from "vitest";
import {
  type LabelOnTurf,
  type TurfState,
  type TurfTreatment,
  turfConflicts,
} from "../../../src/plan/index.js";
import type { RatewrightError } from "../../../src/quantity/index.js";

const conflicts = (
  treatment: Omit<TurfTreatment, "id">,
  turf: TurfState,
  date: "2026-05-04" | "2026-05-25" = "2026-05-04",
) => turfConflicts({ date, treatment: { id: "t", ...treatment }, turf });
const codes = (result: ReturnType<typeof conflicts>): readonly string[] =>
  result.findings.map(({ code, severity }) => `${code} ${severity}`);
const label = (more: Omit<LabelOnTurf, "source">): LabelOnTurf => ({ source: "label (invented)", ...more });
const young: TurfState = { established: false, from: "seed", since: "2026-04-27", mowings: 1, stress: [] };

describe("turfConflicts", () => {
  test("a pre-emergent on turf that is being established; a note where the label names it", () => {
    expect(codes(conflicts({ use: "pre-emergent herbicide" }, young))).toEqual([
      "grow-in/pre-emergent-stops-rooting warning",
    ]);
    expect(
      codes(conflicts({ use: "pre-emergent herbicide", label: label({ namesNewTurf: true }) }, young)),
    ).toEqual(["grow-in/pre-emergent-stops-rooting note"]);
    expect(codes(conflicts({ use: "pre-emergent herbicide" }, { ...young, established: true }))).toEqual([]);
  });

  test("a regulator on turf that is not established", () => {
    expect(codes(conflicts({ use: "growth regulator" }, young))).toEqual([
      "grow-in/regulator-not-established warning",
    ]);
  });

  test("age against the label, to the day", () => {
    const use = "post-emergent herbicide";
    const four = { use, label: label({ minimumDaysAfterSeeding: 28 }) } as const;
    // 27 April + 28 days is 25 May.
    expect(codes(conflicts(four, young))).toEqual(["grow-in/too-soon-after-seeding warning"]);
    expect(codes(conflicts(four, young, "2026-05-25"))).toEqual([]);
    expect(codes(conflicts({ use, label: label({ minimumMowings: 2 }) }, young))).toEqual([
      "grow-in/too-few-mowings warning",
    ]);
    expect(codes(conflicts({ use, label: label({ minimumMowings: 2 }) }, { ...young, mowings: 2 }))).toEqual(
      [],
    );
    expect(codes(conflicts({ use }, young))).toEqual(["grow-in/herbicide-on-young-turf caution"]);
  });

  test("a figure that the label states counts for every use", () => {
    // 4 May and 30 days are 3 June.
    for (const use of ["other", "fungicide", "insecticide", "fertilizer"] as const) {
      const month = { use, label: label({ minimumDaysToSeeding: 30 }) };
      expect(codes(conflicts(month, { stress: [], seedingOn: "2026-06-02" }))).toEqual([
        "grow-in/too-soon-before-seeding warning",
      ]);
      expect(codes(conflicts(month, { stress: [], seedingOn: "2026-06-03" }))).toEqual([]);
      expect(conflicts(month, { stress: [] }).notChecked).toContain(
        "t: the days to a seeding; the label requires 30.",
      );
      expect(conflicts({ use }, { stress: [], seedingOn: "2026-06-02" }).notChecked).toEqual([]);
    }
  });

  test("an application before the seeding has no days since it: it is asked for the days to it", () => {
    const use = "post-emergent herbicide";
    const both = { use, label: label({ minimumDaysAfterSeeding: 28, minimumDaysToSeeding: 14 }) } as const;
    const bare: TurfState = { established: true, stress: [], since: "2026-05-17" };
    const thirteen = conflicts(both, bare);
    expect(codes(thirteen)).toEqual(["grow-in/too-soon-before-seeding warning"]);
    expect(thirteen.notChecked).toContain(
      "t: the days since seeding, because the seeding on 2026-05-17 is yet to come.",
    );
    expect(codes(conflicts(both, { ...bare, since: "2026-05-18" }))).toEqual([]);
    // Of two seedings to come the next one counts
    expect(codes(conflicts(both, { ...bare, seedingOn: "2026-09-01" }))).toEqual([
      "grow-in/too-soon-before-seeding warning",
    ]);
    // Sod is laid, not sown: the figure is not of it.
    expect(codes(conflicts(both, { ...bare, from: "sod" }))).toEqual([]);
  });

  test("a grass that the label rules out is found in a fuller name, and no other is", () => {
    const ruled = { use: "post-emergent herbicide", label: label({ notSpecies: ["Bentgrass"] }) } as const;
    const of = (species: string) => conflicts(ruled, { established: true, stress: [], species }).findings;
    expect(of("creeping bentgrass").map(({ text }) => text)).toEqual([
      "post-emergent herbicide: the label rules out Bentgrass, and this turf is creeping bentgrass.",
    ]);
    expect(of("annual bluegrass and creeping bentgrass")).toHaveLength(1);
    expect(of("creeping bentgrass, annual bluegrass")).toHaveLength(1);
    expect(of("bentgrass/ryegrass")).toHaveLength(1);
    expect(of("bentgrass").map(({ text }) => text)).toEqual([
      "post-emergent herbicide: the label rules out bentgrass.",
    ]);
    expect(of("annual bluegrass")).toEqual([]);
  });

  test("a seeding that is to come: flurprimidol and two weeks (University of Georgia turf guide)", () => {
    const regulator = {
      use: "growth regulator",
      activeIngredient: "flurprimidol",
      label: label({ minimumDaysToSeeding: 14 }),
    } as const;
    const old: TurfState = { established: true, stress: [] };
    expect(codes(conflicts(regulator, { ...old, seedingOn: "2026-05-17" }))).toEqual([
      "grow-in/too-soon-before-seeding warning",
    ]);
    expect(codes(conflicts(regulator, { ...old, seedingOn: "2026-05-18" }))).toEqual([]);
    const unknown = conflicts({ use: "pre-emergent herbicide" }, { ...old, seedingOn: "2026-06-01" });
    expect(codes(unknown)).toEqual(["grow-in/pre-emergent-before-seeding caution"]);
    expect(unknown.notChecked.join()).toMatch(/2026-06-01, because the label's figure is not stated/);
  });

  test("species and temperature against the label, across units", () => {
    const treatment = {
      use: "post-emergent herbicide",
      label: label({ species: ["perennial ryegrass"], maximumTemperature: { value: 85, unit: "°F" } }),
    } as const;
    const turf: TurfState = {
      established: true,
      species: "creeping bentgrass",
      stress: [],
      maximumTemperature: { value: 30, unit: "°C" },
    };
    expect(codes(conflicts(treatment, turf))).toEqual([
      "grow-in/species-not-on-label warning",
      "grow-in/too-hot warning",
    ]);
    expect(
      codes(
        conflicts(treatment, {
          ...turf,
          species: "perennial ryegrass",
          maximumTemperature: { value: 29, unit: "°C" },
        }),
      ),
    ).toEqual([]);
  });

  test("stress, and what is not known", () => {
    expect(codes(conflicts({ use: "fertilizer" }, { stress: ["heat", "drought"] }))).toEqual([
      "grow-in/stress caution",
    ]);
    const blank = conflicts({ use: "post-emergent herbicide" }, {});
    expect(blank.findings).toEqual([]);
    expect(blank.checked).toEqual([]);
    expect(blank.notChecked).toHaveLength(3);
  });

  test("a wrong input is told", () => {
    expect(() => conflicts({ use: "magic" as never }, young)).toThrow(/treatment.use/);
    expect(() => conflicts({ use: "other" }, { maximumTemperature: { value: 3, unit: "ft" } })).toThrow(
      /unit|temperature/,
    );
  });
});

describe("what comes from JSON", () => {
  const ask = (label: object, turf: object): readonly string[] => {
    try {
      const treatment = { id: "a", use: "post-emergent herbicide", label: { source: "label", ...label } };
      return turfConflicts({ date: "2026-05-04", treatment, turf } as never).findings.map(({ code }) => code);
    } catch (error) {
      return (error as RatewrightError).problems.map(({ code, path }) => `${code} ${path}`);
    }
  };
  test("label and turf are read whole, and everything wrong is told at once", () => {
    const label = {
      minimumMowings: "ten",
      minimumDaysAfterSeeding: 1.5,
      notSpecies: "any",
      source: undefined,
    };
    expect(ask(label, { stress: "heat", established: "no", from: "plug" })).toEqual([
      "not-finite treatment.label.minimumMowings",
      "range treatment.label.minimumDaysAfterSeeding",
      "type treatment.label.notSpecies",
      "missing treatment.label.source",
      "type turf.from",
      "type turf.established",
      "type turf.stress",
    ]);
    expect(ask({ species: [5] }, { stress: ["cold"] })).toEqual([
      "type treatment.label.species[0]",
      "type turf.stress[0]",
    ]);
  });

  test("a species that the label rules out, written with a capital, is the same species", () => {
    const turf = { species: "bermudagrass", established: true, stress: [] };
    expect(ask({ notSpecies: ["Bermudagrass"] }, turf)).toEqual(["grow-in/species-not-on-label"]);
    expect(ask({ species: ["Bermudagrass "] }, turf)).toEqual([]);
  });
});
