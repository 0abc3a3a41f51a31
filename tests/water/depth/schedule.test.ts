import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  cycleAndSoak,
  type IntakeSoil,
  soilIntake,
  timeToRunoff,
  wateringWeek,
} from "../../../src/water/index.js";
import { complaints } from "../../errors.js";
import { close, inch, inPerHour, min, mm, mmPerHour, percent, untyped } from "../helpers.js";

const soils: readonly IntakeSoil[] = [
  "clay",
  "silty clay",
  "clay loam",
  "loam",
  "sandy loam",
  "loamy sand",
  "sand",
];

describe("soil intake", () => {
  test("coarser soil takes more in, and steeper ground holds less", () => {
    const grades = [0, 3, 3.1, 6, 8, 12, 12.1, 40];
    soils.forEach((soil, i) => {
      const at = grades.map((g) => soilIntake({ soil, slope: quantity(g, "% grade") }));
      at.slice(1).forEach((one, k) => {
        expect(one.storage.in("in")).toBeLessThanOrEqual((at[k] as typeof one).storage.in("in"));
      });
      expect(at.map(({ slopeUpTo }) => slopeUpTo)).toEqual([3, 3, 6, 6, 12, 12, null, null]);
      const finer = soils[i - 1];
      if (finer === undefined) return;
      const slope = quantity(2, "% grade");
      expect(soilIntake({ soil, slope }).intake.in("in/h")).toBeGreaterThan(
        soilIntake({ soil: finer, slope }).intake.in("in/h"),
      );
    });
  });
  test("refuses a soil and a slope that are none", () => {
    expect(complaints(untyped(soilIntake, { soil: "peat", slope: quantity(-1, "% grade") }))).toEqual([
      "type soil",
      "range slope",
    ]);
    expect(complaints(untyped(soilIntake, { soil: "clay", slope: 5 }))).toEqual(["type slope"]);
  });
});

describe("time to runoff", () => {
  test("the soil has taken all the rain until then, by Horton's curve integrated step by step", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 30, noNaN: true }),
        fc.double({ min: 0.05, max: 0.95, noNaN: true }),
        fc.double({ min: 1.2, max: 8, noNaN: true }),
        fc.double({ min: 0.5, max: 10, noNaN: true }),
        (fc0, share, times, b) => {
          const f0 = fc0 * times;
          const p = fc0 + (f0 - fc0) * share;
          const t = timeToRunoff({
            rate: mmPerHour(p),
            initial: mmPerHour(f0),
            basic: mmPerHour(fc0),
            decay: quantity(b, "1/h"),
          }).in("h");
          // Capacity falls to p at u = ln((f0 - fc)/(p - fc)) / b; by then the curve has taken F, which the rain brings in F/p.
          const u = Math.log((f0 - fc0) / (p - fc0)) / b;
          const steps = 4000;
          let taken = 0;
          for (let i = 0; i < steps; i++) {
            const s = ((i + 0.5) * u) / steps;
            taken += (fc0 + (f0 - fc0) * Math.exp(-b * s)) * (u / steps);
          }
          close(t, taken / p, 1e-5);
        },
      ),
      { numRuns: 50 },
    );
  });
  test("faster rain runs off sooner", () => {
    const soil = { initial: mmPerHour(60), basic: mmPerHour(8), decay: quantity(3, "1/h") };
    const times = [9, 15, 30, 59].map((p) => timeToRunoff({ ...soil, rate: mmPerHour(p) }).in("min"));
    expect([...times].sort((a, b) => b - a)).toEqual(times);
    expect(complaints(() => timeToRunoff({ ...soil, rate: mmPerHour(8) }))).toEqual(["range rate"]);
    expect(complaints(() => timeToRunoff({ ...soil, rate: mmPerHour(60) }))).toEqual(["range rate"]);
    expect(complaints(() => timeToRunoff({ ...soil, initial: mmPerHour(8), rate: mmPerHour(9) }))).toEqual([
      "range initial",
    ]);
  });
});

describe("cycle and soak", () => {
  test("the cycles make the run, none outlasts the time to runoff, and the soak takes in what stands", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 120, noNaN: true }),
        fc.double({ min: 5, max: 60, noNaN: true }),
        fc.double({ min: 1, max: 50, noNaN: true }),
        fc.double({ min: 8, max: 60, noNaN: true }),
        (run, p, f, longest) => {
          const input = { runTime: min(run), rate: mmPerHour(p), intake: mmPerHour(f) };
          const plan = cycleAndSoak({ ...input, timeToRunoff: min(longest) });
          close(plan.cycles * plan.cycle.in("min"), run, 1e-12);
          if (p <= f) expect(plan.cycles).toBe(1);
          else {
            expect(plan.cycle.in("min")).toBeLessThanOrEqual(longest * (1 + 1e-9));
            expect((plan.cycles - 1) * longest).toBeLessThan(run);
            // what one cycle leaves standing is what the soak takes in
            if (plan.cycles > 1) close((p - f) * plan.cycle.in("h"), f * plan.soak.in("h"), 1e-9);
          }
          close(plan.elapsed.in("min"), run + (plan.cycles - 1) * plan.soak.in("min"), 1e-12);
        },
      ),
    );
  });
  test("the storage on the ground gives the time to runoff", () => {
    const input = { runTime: min(60), rate: inPerHour(1), intake: inPerHour(0.2) };
    const byStorage = cycleAndSoak({ ...input, storage: inch(0.2) });
    const byTime = cycleAndSoak({ ...input, timeToRunoff: min(15) });
    expect(byStorage).toEqual(byTime);
    expect(byStorage.cycles).toBe(4);
    const soil = soilIntake({ soil: "clay loam", slope: quantity(5, "% grade") });
    expect(
      cycleAndSoak({ runTime: min(60), rate: inPerHour(1), intake: soil.intake, storage: soil.storage })
        .cycles,
    ).toBe(4);
  });
  test("a soak that is too short is told, and a run of a hundred cycles refused", () => {
    const input = { runTime: min(60), rate: inPerHour(1), intake: inPerHour(0.2), timeToRunoff: min(15) };
    expect(cycleAndSoak({ ...input, soak: min(60) }).findings).toEqual([]);
    expect(cycleAndSoak({ ...input, soak: min(30) }).findings.map(({ code }) => code)).toEqual([
      "water/short-soak",
    ]);
    expect(complaints(() => cycleAndSoak({ ...input, timeToRunoff: min(0.5) }))).toEqual([
      "infeasible runTime",
    ]);
    expect(complaints(() => cycleAndSoak({ ...input, storage: inch(0.2) }))).toEqual(["conflict storage"]);
    const { timeToRunoff: _, ...bare } = input;
    expect(complaints(() => cycleAndSoak(bare))).toEqual(["missing timeToRunoff"]);
    expect(complaints(() => cycleAndSoak({ ...bare, storage: inch(0) }))).toEqual(["range storage"]);
    expect(cycleAndSoak({ ...bare, intake: inPerHour(1) }).cycles).toBe(1);
  });
});

describe("the watering week", () => {
  const days = fc.uniqueArray(fc.integer({ min: 1, max: 7 }), { minLength: 1, maxLength: 7 });
  test("the days together get what is needed and no rain made good", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 80, noNaN: true }),
        days,
        fc.constantFrom("equal" as const, "by days" as const),
        (need, rain, list, split) => {
          const week = wateringWeek({
            need: mm(need),
            rain: mm(rain),
            days: list as never,
            rate: mmPerHour(12),
            split,
            efficiency: percent(80),
          });
          const net = week.days.reduce((sum, day) => sum + day.net.in("mm"), 0);
          expect(net).toBeCloseTo(Math.max(0, need - rain), 7);
          expect(week.days.reduce((sum, day) => sum + day.covers, 0)).toBe(7);
          expect(week.days.map(({ weekday }) => weekday)).toEqual([...list].sort((a, b) => a - b));
          for (const day of week.days) expect(day.gross.in("mm") * 0.8).toBeCloseTo(day.net.in("mm"), 9);
        },
      ),
    );
  });
  test("by days: Monday, Wednesday and Saturday get 2, 3 and 2 sevenths", () => {
    const week = wateringWeek({ need: mm(28), days: [6, 1, 3], rate: mmPerHour(12), split: "by days" });
    expect(week.days.map((day) => day.net.in("mm"))).toEqual([8, 12, 8]);
    expect(week.days.map((day) => day.runTime.in("min"))).toEqual([40, 60, 40]);
  });
  test("a window too short, and more than the root zone holds", () => {
    const week = wateringWeek({
      need: inch(1.5),
      days: [3],
      rate: inPerHour(0.5),
      window: quantity(2, "h"),
      holds: inch(1),
    });
    expect(week.findings.map(({ code }) => code)).toEqual([
      "water/window-too-short",
      "water/below-the-roots",
    ]);
    expect(week.findings.map(({ text }) => text)).toEqual([
      "Wednesday needs 180 min, and the window is 120 min.",
      "Wednesday puts 1.5 in in the root zone, which holds 1 in: the rest drains below the roots.",
    ]);
    expect(
      wateringWeek({
        need: inch(1),
        days: [3],
        rate: inPerHour(0.5),
        window: quantity(2, "h"),
        holds: inch(1),
      }).findings,
    ).toEqual([]);
  });
  test("refuses days that are none, twice, or not there", () => {
    const base = { need: mm(20), rate: mmPerHour(10) };
    expect(complaints(untyped(wateringWeek, { ...base, days: [] }))).toEqual(["missing days"]);
    expect(complaints(untyped(wateringWeek, { ...base, days: [1, 1, 8, "Mon"] }))).toEqual([
      "duplicate days[1]",
      "range days[2]",
      "range days[3]",
    ]);
    expect(complaints(untyped(wateringWeek, { ...base, days: Array(8).fill(1) }))).toEqual(["range days"]);
    expect(complaints(untyped(wateringWeek, { ...base, day: [1] }))).toEqual(["type day", "missing days"]);
  });
});
