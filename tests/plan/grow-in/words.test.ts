// What is told of a treatment on young turf, word by word, and what is shown not to be told just on the other side.
import { describe, expect, test } from "vitest";
import {
  type LabelOnTurf,
  type TurfState,
  type TurfTreatment,
  turfConflicts,
} from "../../../src/plan/index.js";

const common = "common practice, no source";
const label = (more: Omit<LabelOnTurf, "source">): LabelOnTurf => ({ source: "the label", ...more });
const asked = (treatment: Omit<TurfTreatment, "id">, turf: TurfState, date = "2026-05-04" as const) =>
  turfConflicts({ date, treatment: { id: "t", ...treatment }, turf });
const old: TurfState = { established: true, stress: [] };
const young: TurfState = { ...old, established: false };

const finding = (code: string, severity: string, text: string, params: object, source = common): unknown => ({
  code: `grow-in/${code}`,
  severity,
  path: "treatment t",
  params: { treatment: "t", date: "2026-05-04", ...params },
  text,
  source,
});

describe("on turf that is being established", () => {
  test("a pre-emergent", () => {
    const text =
      "prodiamine: a pre-emergent stops seed, stolons and plugs from rooting; this turf is being established from";
    const use = { use: "pre-emergent herbicide", activeIngredient: "prodiamine" } as const;
    expect(asked(use, { ...young, from: "sprigs" }).findings).toEqual([
      finding("pre-emergent-stops-rooting", "warning", `${text} sprigs.`, { from: "sprigs", named: 0 }),
    ]);
    expect(asked({ ...use, label: label({ namesNewTurf: true }) }, young).findings).toEqual([
      finding(
        "pre-emergent-stops-rooting",
        "note",
        `${text} seed or runners. The label names use on new turf.`,
        { from: "seed or runners", named: 1 },
        "the label",
      ),
    ]);
    expect(asked({ ...use, label: label({ namesNewTurf: false }) }, young).findings).toMatchObject([
      { severity: "warning", source: common },
    ]);
  });
  test("a growth regulator", () => {
    const text = "growth regulator: a growth regulator slows fill-in of turf that is not yet established.";
    expect(asked({ use: "growth regulator" }, { ...young, from: "plugs" }).findings).toEqual([
      finding("regulator-not-established", "warning", text, { from: "plugs" }),
    ]);
    expect(asked({ use: "growth regulator", label: label({ namesNewTurf: true }) }, young).findings).toEqual([
      finding("regulator-not-established", "note", text, { from: "seed or runners" }, "the label"),
    ]);
  });
  test("a post-emergent whose label states no age; one that states it is held against that", () => {
    const use = { use: "post-emergent herbicide" } as const;
    expect(asked(use, young).findings).toEqual([
      finding(
        "herbicide-on-young-turf",
        "caution",
        "post-emergent herbicide: rates that established turf tolerates can injure young turf; the label says how old it must be.",
        { from: "seed or runners" },
      ),
    ]);
    expect(asked({ ...use, label: label({ namesNewTurf: true }) }, young).findings).toMatchObject([
      { severity: "note" },
    ]);
    expect(asked({ ...use, label: label({ minimumMowings: 2 }) }, young).findings).toEqual([]);
    expect(asked({ ...use, label: label({ minimumDaysAfterSeeding: 28 }) }, young).findings).toEqual([]);
  });
  test("what does not act on plants is not asked", () => {
    for (const use of ["fertilizer", "fungicide", "insecticide", "other"] as const) {
      const { findings, checked, notChecked } = asked({ use }, young);
      expect(findings).toEqual([]);
      expect([...checked, ...notChecked].join()).not.toContain("established");
    }
  });
});

describe("against the label", () => {
  const use = { use: "post-emergent herbicide" } as const;
  test("mowings", () => {
    const two = { ...use, label: label({ minimumMowings: 2 }) };
    expect(asked(two, { ...old, mowings: 1 }).findings).toEqual([
      finding(
        "too-few-mowings",
        "warning",
        "post-emergent herbicide: 1 mowing; the label requires 2.",
        { mowings: 1, minimum: 2 },
        "the label",
      ),
    ]);
    expect(asked(two, { ...old, mowings: 0 }).findings[0]?.text).toContain(
      "0 mowings; the label requires 2.",
    );
    expect(asked(two, { ...old, mowings: 2 }).findings).toEqual([]);
    expect(asked(two, { ...old, mowings: 2 }).checked).toContain("t: mowings against the label");
    expect(asked(two, old).notChecked).toContain("t: the number of mowings; the label requires 2.");
  });
  test("days after seeding, to the day", () => {
    const month = { ...use, label: label({ minimumDaysAfterSeeding: 28 }) };
    // 7 April + 28 days is 5 May, 6 April + 28 days is 4 May.
    expect(asked(month, { ...old, since: "2026-04-07" }).findings).toEqual([
      finding(
        "too-soon-after-seeding",
        "warning",
        "post-emergent herbicide: 2026-05-04 is before 2026-05-05, 28 days after seeding on 2026-04-07.",
        { since: "2026-04-07", earliest: "2026-05-05", minimum: 28 },
        "the label",
      ),
    ]);
    expect(asked(month, { ...old, since: "2026-04-06" }).findings).toEqual([]);
    expect(asked(month, { ...old, since: "2026-04-06" }).checked).toContain(
      "t: days since seeding against the label",
    );
    expect(asked(month, old).notChecked).toContain("t: the days since seeding; the label requires 28.");
  });
  test("days to a seeding, and none for one that lies behind", () => {
    const weeks = { use: "growth regulator", label: label({ minimumDaysToSeeding: 14 }) } as const;
    expect(asked(weeks, { ...old, seedingOn: "2026-05-17" }).findings).toEqual([
      finding(
        "too-soon-before-seeding",
        "warning",
        "growth regulator: seeding on 2026-05-17 is before 2026-05-18, 14 days after this application.",
        { seedingOn: "2026-05-17", earliest: "2026-05-18", minimum: 14 },
        "the label",
      ),
    ]);
    expect(asked(weeks, { ...old, seedingOn: "2026-05-18" }).findings).toEqual([]);
    expect(asked(weeks, { ...old, seedingOn: "2026-05-18" }).checked).toContain(
      "t: days to the seeding against the label",
    );
    expect(asked(weeks, { ...old, seedingOn: "2026-05-03" }).checked).not.toContain(
      "t: days to the seeding against the label",
    );
    expect(asked(weeks, { ...old, seedingOn: "2026-05-04" }).findings.length).toBe(1);
    expect(asked({ use: "fertilizer" }, { ...old, seedingOn: "2026-05-17" }).notChecked).toEqual([]);
    const unknown =
      "t: the days from the application to seeding on 2026-05-17, because the label's figure is not stated.";
    expect(asked({ use: "growth regulator" }, { ...old, seedingOn: "2026-05-17" }).notChecked).toContain(
      unknown,
    );
    expect(asked({ use: "growth regulator" }, { ...old, seedingOn: "2026-05-17" }).findings).toEqual([]);
    const text =
      "pre-emergent herbicide: a pre-emergent works for weeks to months and stops seed sown on 2026-05-17.";
    expect(asked({ use: "pre-emergent herbicide" }, { ...old, seedingOn: "2026-05-17" }).findings).toEqual([
      finding("pre-emergent-before-seeding", "caution", text, { seedingOn: "2026-05-17" }),
    ]);
    expect(
      asked(
        { use: "pre-emergent herbicide", label: label({ namesNewTurf: true }) },
        { ...old, seedingOn: "2026-05-17" },
      ).findings,
    ).toMatchObject([{ severity: "note" }]);
  });
  test("the species, named or ruled out", () => {
    const named = { ...use, label: label({ species: ["perennial ryegrass"] }) };
    const ruled = { ...use, label: label({ notSpecies: ["creeping bentgrass"] }) };
    const bent = { ...old, species: "creeping bentgrass" };
    const told = (verb: string) =>
      finding(
        "species-not-on-label",
        "warning",
        `post-emergent herbicide: the label ${verb} creeping bentgrass.`,
        { species: "creeping bentgrass" },
        "the label",
      );
    expect(asked(named, bent).findings).toEqual([told("does not name")]);
    expect(asked(ruled, bent).findings).toEqual([told("rules out")]);
    expect(asked(ruled, { ...old, species: "perennial ryegrass" }).findings).toEqual([]);
    expect(asked(named, { ...old, species: "perennial ryegrass" }).checked).toContain(
      "t: the species against the label",
    );
    expect(asked(named, old).notChecked).toContain("t: the species of the turf against the label.");
    expect(asked(use, bent).notChecked).toContain(
      "t: the turf species, because the species on the label are not stated.",
    );
    expect(asked({ use: "fertilizer" }, bent).notChecked).toEqual([]);
  });
  test("the heat of the day, in the unit of the label", () => {
    const mild = {
      use: "fungicide",
      label: label({ maximumTemperature: { value: 86, unit: "°F" } }),
    } as const;
    const day = (value: number) => asked(mild, { ...old, maximumTemperature: { value, unit: "°C" } });
    expect(day(30).findings).toEqual([]);
    expect(day(30).checked).toContain("t: the temperature against the label");
    // 31 °C are 87.8 °F
    expect(day(31).findings).toEqual([
      finding(
        "too-hot",
        "warning",
        "fungicide: 87.8 °F is expected; the label maximum is 86 °F.",
        { temperature: expect.closeTo(87.8, 6), maximum: 86, unit: "°F" },
        "the label",
      ),
    ]);
    expect(asked(mild, old).notChecked).toContain("t: the temperature of the day against the label.");
  });
});

test("heat and drought stress: asked of what acts on plants and of fertilizer", () => {
  for (const use of [
    "fertilizer",
    "growth regulator",
    "pre-emergent herbicide",
    "post-emergent herbicide",
  ] as const) {
    expect(asked({ use }, { ...old, stress: ["heat", "drought"] }).findings).toEqual([
      finding(
        "stress",
        "caution",
        `${use}: turf under heat and drought stress is injured more easily and takes up less.`,
        {
          stress: ["heat", "drought"],
        },
      ),
    ]);
    expect(asked({ use }, old).checked).toContain("t: heat and drought stress");
    expect(asked({ use }, { established: true }).notChecked).toContain(
      "t: heat and drought stress of the turf.",
    );
  }
  for (const use of ["fungicide", "insecticide", "other"] as const)
    expect(asked({ use }, { stress: ["heat"] }).findings).toEqual([]);
  expect(asked({ use: "growth regulator" }, { stress: [] }).notChecked).toContain(
    "t: whether the turf is established.",
  );
  expect(asked({ use: "growth regulator" }, old).checked).toContain("t: whether the turf is established");
});
