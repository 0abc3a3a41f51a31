import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  crewWage,
  effectiveFieldCapacity,
  fieldEfficiency,
  laborHours,
  loadedWage,
  money,
  overtimeShare,
  quantity,
  workRate,
} from "../../../src/index.js";
import { complaints } from "../../errors.js";

const hour = quantity(1, "h");
const percent = (value: number) => quantity(value, "%");
const wage = (value: number) => money(value, "USD").per(hour);
const share = fc.double({ min: 1.1, max: 99, noNaN: true });

describe("loadedWage", () => {
  it("adds up, step by step", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 80, noNaN: true }),
        share,
        share,
        share,
        (pay, overtime, risk, burden) => {
          const one = loadedWage({
            wage: wage(pay),
            overtime: percent(overtime),
            risk: percent(risk),
            burden: percent(burden),
          });
          expect(one.wage.plus(one.overtime).plus(one.risk).value).toBeCloseTo(one.paid.value, 9);
          expect(one.paid.plus(one.burden).value).toBeCloseTo(one.cost.value, 9);
          expect(one.cost.value).toBeGreaterThanOrEqual(pay - 1e-9);
        },
      ),
    );
  });

  it("takes a wage by another time, and no hidden zero", () => {
    const perDay = money(160, "EUR").per(quantity(8, "h"));
    const none = percent(0);
    expect(loadedWage({ wage: perDay, overtime: none, risk: none, burden: none }).cost.unit).toBe(
      "money:EUR/h",
    );
    expect(complaints(() => loadedWage({ wage: wage(20) } as never))).toEqual([
      "missing overtime",
      "missing risk",
      "missing burden",
    ]);
    expect(
      complaints(() =>
        loadedWage({ wage: money(20, "USD"), overtime: none, risk: none, burden: none } as never),
      ),
    ).toEqual(["unit/mismatch wage"]);
    expect(
      complaints(() =>
        loadedWage({ wage: quantity(20, "lb"), overtime: none, risk: none, burden: none } as never),
      ),
    ).toEqual(["unit/mismatch wage"]);
  });
});

describe("crewWage and overtimeShare", () => {
  it("lie between the lowest and the highest wage, and weigh by hours", () => {
    const crew = [
      { wage: wage(20), hours: quantity(30, "h") },
      { wage: wage(14), hours: quantity(10, "h") },
    ];
    expect(crewWage(crew).value).toBeCloseTo(18.5, 12);
    const euro = { wage: money(14, "EUR").per(hour), hours: hour };
    expect(complaints(() => crewWage([...crew, euro as never]))).toEqual(["unit/mismatch crew[2].wage"]);
    expect(complaints(() => crewWage([]))).toEqual(["missing crew"]);
  });

  it("are what the week is paid", () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 100, noNaN: true }), (hours) => {
        const extra = overtimeShare({ hours: quantity(hours, "h") }).in("%") / 100;
        const paid = Math.min(hours, 40) + 1.5 * Math.max(0, hours - 40);
        expect(hours * (1 + extra)).toBeCloseTo(paid, 9);
      }),
    );
    expect(complaints(() => overtimeShare({ hours: quantity(200, "h") }))).toEqual(["range hours"]);
  });
});

describe("laborHours", () => {
  const task = {
    name: "mow",
    area: quantity(2, "acre"),
    swath: quantity(5, "ft"),
    speed: quantity(4, "mi/h"),
    efficiency: percent(80),
  };

  it("is the area by the work rate, times and people counted", () => {
    const { swath, speed, efficiency } = task;
    const { tasks, manHours, people } = laborHours({
      tasks: [{ ...task, times: 10, people: 2 }],
      hoursPerPerson: quantity(20, "h"),
    });
    const each = quantity(2, "acre").per(effectiveFieldCapacity({ swath, speed, efficiency })).in("h");
    expect(tasks[0]?.each.in("h")).toBeCloseTo(each, 12);
    expect(manHours.in("h")).toBeCloseTo(20 * each, 9);
    expect(people).toBe(Math.ceil(manHours.in("h") / 20));
  });

  it("adds up over tasks and halves with twice the width", () => {
    const one = laborHours({ tasks: [task] }).manHours.in("h");
    expect(
      laborHours({ tasks: [task, { ...task, swath: quantity(10, "ft") }] }).manHours.in("h"),
    ).toBeCloseTo(1.5 * one, 9);
    expect(laborHours({ tasks: [task] }).people).toBeNull();
  });

  it("names the task and the field that is wrong", () => {
    const { efficiency: _, ...rest } = task;
    expect(complaints(() => laborHours({ tasks: [task, { ...rest, people: 1.5 }] } as never))).toEqual([
      "missing tasks[1].efficiency",
      "range tasks[1].people",
    ]);
  });
});

describe("fieldEfficiency", () => {
  const machine = {
    swath: quantity(20, "ft"),
    speed: quantity(4, "mi/h"),
    runLength: quantity(100, "yd"),
    turn: quantity(20, "s"),
  };

  it("gives the work rate that effectiveFieldCapacity gives with its efficiency, and shares of one whole", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 0.1, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (overlap, load, fill) => {
          const found = fieldEfficiency({
            ...machine,
            overlap: percent(overlap),
            load: quantity(load, "acre"),
            fill: quantity(fill, "min"),
          });
          const { working, turning, standing, efficiency } = found;
          expect(working.in("%") + turning.in("%") + standing.in("%")).toBeCloseTo(100, 9);
          expect(
            effectiveFieldCapacity({ swath: machine.swath, speed: machine.speed, efficiency }).in("acre/h"),
          ).toBeCloseTo(found.workRate.in("acre/h"), 9);
          const byShares = workRate({
            swath: quantity((20 * (100 - overlap)) / 100, "ft"),
            speed: machine.speed,
            standing,
            turning: percent((100 * turning.in("%")) / (100 - standing.in("%"))),
          });
          expect(byShares.in("acre/h")).toBeCloseTo(found.workRate.in("acre/h"), 6);
        },
      ),
    );
  });

  it("answers in the system that the swath is given in", () => {
    const metric = fieldEfficiency({
      swath: quantity(6, "m"),
      speed: quantity(6, "km/h"),
      overlap: percent(0),
      runLength: quantity(100, "m"),
      turn: quantity(15, "s"),
    });
    // 100 m of 6 m at 100 m/min take 60 s and a turn of 15 s: 600 m2 in 75 s.
    expect(metric.workRate.unit).toBe("ha/h");
    expect(metric.workRate.in("ha/h")).toBeCloseTo(2.88, 9);
  });

  it("does not take half of what a fill is", () => {
    const base = { ...machine, overlap: percent(0) };
    expect(complaints(() => fieldEfficiency({ ...base, load: quantity(1, "acre") }))).toEqual([
      "missing fill",
    ]);
    expect(complaints(() => fieldEfficiency({ ...base, fill: quantity(1, "h") }))).toEqual(["missing load"]);
    expect(complaints(() => fieldEfficiency(machine as never))).toEqual(["missing overlap"]);
    expect(
      complaints(() => workRate({ ...machine, standing: percent(100), turning: percent(0) } as never)),
    ).toEqual(["type input.runLength", "type input.turn"]);
  });
});
