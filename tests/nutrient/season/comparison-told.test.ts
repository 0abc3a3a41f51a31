import { describe, expect, test } from "vitest";
import { dailyTemperatures } from "../../../src/calendar/index.js";
import { programComparison, quickRelease, statedDuration } from "../../../src/nutrient/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { complaints, problemsOf } from "../../errors.js";

// What a comparison of programs tells, word by word and figure by figure. Figures are reckoned by hand.

const n = (pounds: number) => quantity(pounds, "lb/1000 ft2", "N");

describe("a comparison of programs tells", () => {
  // All of it evenly over 56 days at the slow end, 42 in the middle and 28 at the fast end.
  const even = statedDuration({ days: { low: 28, high: 56 }, source: "the label", name: "even" });
  const evenly = (nitrogen: unknown) => [{ name: "even", nitrogen, model: even }];
  const base = {
    from: "2026-05-01",
    weeks: 3,
    placement: "surface or thatch",
    temperature: { mean: quantity(20, "°C") },
  } as const;
  const compare = (programs: readonly unknown[], more: object = {}) =>
    programComparison({ ...base, programs, ...more } as never);
  const usd = (dollars: number, unit: "acre" | "1000 ft2" = "acre") =>
    money(dollars, "USD").per(quantity(1, unit));

  test("what is out by the end of each week, by each end, all applications together", () => {
    // 1.68 lb: 0.03, 0.04 and 0.06 lb a day; the second, in lb/acre, begins with the second week.
    const found = compare([
      {
        name: "two",
        applications: [
          { date: "2026-05-01", portions: evenly(n(1.68)), cost: usd(43.56) },
          {
            date: "2026-05-08",
            portions: evenly(quantity(1.68 * 43.56, "lb/acre", "N")),
            cost: usd(2, "1000 ft2"),
          },
        ],
      },
    ]);
    const [program] = found.programs;
    expect([found.type, found.version]).toEqual(["program-comparison", 1]);
    expect([program?.name, program?.applications]).toEqual(["two", 2]);
    expect(program?.applied.unit).toBe("lb/1000 ft2");
    expect(program?.applied.value).toBeCloseTo(3.36, 12);
    expect(program?.weeks.map(({ week, from }) => [week, from])).toEqual([
      [1, "2026-05-01"],
      [2, "2026-05-08"],
      [3, "2026-05-15"],
    ]);
    const figures = program?.weeks.flatMap(({ available, outByThen: { low, mid, high } }) =>
      [available, low, mid, high].map(({ value }) => value),
    );
    for (const [i, figure] of [
      0.28, 0.21, 0.28, 0.42, 0.56, 0.63, 0.84, 1.26, 0.56, 1.05, 1.4, 2.1,
    ].entries())
      expect(figures?.[i]).toBeCloseTo(figure, 12);
    const peak = program?.peakSolubleLoad;
    expect(peak?.low.value).toBeCloseTo(0.42, 12);
    expect(peak?.mid.value).toBeCloseTo(0.56, 12);
    expect(peak?.high.value).toBeCloseTo(0.84, 12);
    expect(program?.peakFrom).toBe("2026-05-08");
    // 43.56 a acre is 1 for 1000 ft2, and the first unit is kept: 43.56 + 2 * 43.56.
    expect(program?.cost?.unit).toBe("money:USD/acre");
    expect(program?.cost?.value).toBeCloseTo(130.68, 9);
  });

  test("the peak of a later, larger application", () => {
    const quick = (date: string, pounds: number) => ({
      date,
      portions: [{ name: "urea", nitrogen: n(pounds), model: quickRelease }],
    });
    const late = compare([
      { name: "late", applications: [quick("2026-05-01", 0.5), quick("2026-05-15", 1)] },
    ]);
    expect(late.programs[0]?.peakFrom).toBe("2026-05-15");
  });

  test("which programs have no cost, each by its name, and none where all have one", () => {
    const one = (name: string, ...costs: readonly unknown[]) => ({
      name,
      applications: costs.map((cost, i) => ({
        date: `2026-05-0${i + 1}`,
        portions: evenly(n(1)),
        ...(cost === undefined ? {} : { cost }),
      })),
    });
    const { programs, notChecked, checked } = compare([
      one("all", usd(1), usd(2)),
      one("some", usd(1), undefined),
      one("none", undefined),
    ]);
    expect(programs.map(({ cost }) => cost?.value ?? null)).toEqual([3, null, null]);
    expect(notChecked).toEqual([
      "cost: an application of some, none states none",
      "temperature: the model of even does not respond to it",
      "uptake, losses and moisture",
      "caps and local rules: see remainingNitrogen",
    ]);
    expect(checked).toEqual(["release by each model in this placement", "the repeat scheme of coated urea"]);
    expect(compare([one("all", usd(1))]).notChecked[0]).toBe(
      "temperature: the model of even does not respond to it",
    );
  });

  test("every assumption once, and each finding on a model once, at the first application that has it", () => {
    const coated = statedDuration({
      days: { low: 60, high: 60 },
      coating: "polymer",
      source: "label",
      name: "coated",
    });
    const twice = ["2026-05-01", "2026-05-08"].map((date) => ({
      date,
      portions: [{ name: "coated", nitrogen: n(1), model: coated }],
    }));
    const { assumptions, findings } = compare([
      { name: "first", applications: [{ date: "2026-05-01", portions: evenly(n(1)) }] },
      { name: "a", applications: twice },
      { name: "b", applications: twice },
    ]);
    expect(new Set(assumptions).size).toBe(assumptions.length);
    expect(assumptions).toContain("even release over the stated duration");
    expect(findings.filter(({ code }) => code === "release/placement").map(({ path }) => path)).toEqual([
      "programs[1].applications[0].portions[0].model",
    ]);
  });

  test("a date that is none, or outside, by itself: the temperatures are asked for from the first that is inside", () => {
    const series = (start: string, days: number) =>
      dailyTemperatures({
        start: start as "2026-05-01",
        unit: "°C",
        sensor: "soil at 5 cm",
        source: "made up",
        min: Array.from({ length: days }, () => 10),
        max: Array.from({ length: days }, () => 20),
      });
    const dated = (dates: readonly unknown[], temperature: unknown) =>
      complaints(() =>
        compare([{ name: "a", applications: dates.map((date) => ({ date, portions: evenly(n(1)) })) }], {
          temperature,
        }),
      );
    const second = series("2026-05-08", 14);
    expect(dated(["2026-05-08"], second)).toEqual([]);
    expect(dated(["May", "2026-05-08"], second)).toEqual(["date programs[0].applications[0].date"]);
    expect(dated(["2026-04-30", "2026-05-08"], second)).toEqual(["date programs[0].applications[0].date"]);
    expect(dated(["2026-05-22"], series("2026-05-01", 21))).toEqual([
      "date programs[0].applications[0].date",
    ]);
    expect(dated(["2026-06-22"], series("2026-05-01", 21))).toEqual([
      "date programs[0].applications[0].date",
    ]);
    const week = [1, 2, 3, 4, 5, 6, 7].map((day) => `missing temperature.2026-05-0${day}`);
    expect(dated(["2026-05-01", "2026-05-08"], second)).toEqual(week);
    expect(dated(["May"], second)).toEqual([...week, "date programs[0].applications[0].date"]);
  });

  test("a cost that is no money per area", () => {
    const cost = (given: unknown) =>
      problemsOf(() =>
        compare([{ name: "a", applications: [{ date: "2026-05-01", portions: evenly(n(1)), cost: given }] }]),
      )[0];
    for (const given of [
      7,
      { value: 1, unit: "x money:USD/acre" },
      { value: 1, unit: 7 },
      quantity(1, "lb/acre"),
    ])
      expect([cost(given)?.code, cost(given)?.expected]).toEqual(["unit/mismatch", "money per area"]);
  });
});
