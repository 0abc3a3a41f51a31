import { describe, expect, test } from "vitest";
import {
  crewWage,
  fieldEfficiency,
  laborHours,
  loadedWage,
  overtimeShare,
  workRate,
} from "../../../src/price/index.js";
import { money, quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const hour = quantity(1, "h");
const usd = (value: number) => money(value, "USD").per(hour);
const percent = (value: number) => quantity(value, "%");
const h = (value: number) => quantity(value, "h");
const call =
  <I>(of: (input: never) => unknown, good: I) =>
  (change: object) =>
  () =>
    of({ ...good, ...change } as never);

const pay = call(loadedWage, {
  wage: usd(16),
  overtime: percent(10),
  risk: percent(10),
  burden: percent(20),
});

test("what a man-hour costs", () => {
  expectRefusals([
    [pay({ wage: undefined }), "missing", "wage", /^the wage, such as money\(20, "USD"\) per 1 h/],
    [pay({ wage: null }), "missing", "wage", /^the wage/],
    [pay({ wage: 16 }), "type", "wage", /^the wage, such as money/],
    [pay({ wage: "16 USD" }), "type", "wage", /^the wage/],
    [pay({ wage: h(3) }), "unit/mismatch", "wage", /^the wage, such as money/],
    [pay({ wage: money(16, "USD") }), "unit/mismatch", "wage", /./],
    [pay({ wage: { value: -1, unit: "money:USD/h" } }), "range", "wage", /zero or more/],
    [pay({ overtime: undefined }), "missing", "overtime", /^what overtime adds, 0 % where there is none/],
    [
      pay({ overtime: 10 }),
      "type",
      "overtime",
      /^what overtime adds with its unit, such as quantity\(10, "%"\)/,
    ],
    [pay({ overtime: "10 %" }), "type", "overtime", /with its unit/],
    [pay({ overtime: percent(100) }), "range", "overtime", /"below":100,"unit":"%"/],
    [pay({ risk: undefined }), "missing", "risk", /^what risk adds/],
    [pay({ risk: percent(100) }), "range", "risk", /100/],
    [pay({ burden: undefined }), "missing", "burden", /^the labor burden/],
    [pay({ burden: percent(200) }), "range", "burden", /200/],
  ]);
  expect(pay({ overtime: percent(99.9), risk: percent(99.9), burden: percent(199.9) })).not.toThrow();
});

describe("a crew", () => {
  const one = { wage: usd(18), hours: h(10) };
  const crew = (change: object) => () => crewWage([one, { ...one, ...change }] as never);
  const people = (count: number) => () => crewWage(Array.from({ length: count }, () => one));

  test("names the person", () => {
    expectRefusals([
      [() => crewWage([]), "missing", "crew", /person/],
      [crew({ wage: undefined }), "missing", "crew[1].wage", /^the wage, such as money\(20, "USD"\) per 1 h/],
      [
        crew({ wage: money(9, "EUR").per(hour) }),
        "unit/mismatch",
        "crew[1].wage",
        /^the wage in USD, as the first amount is: there are no exchange rates here/,
      ],
      [crew({ hours: undefined }), "missing", "crew[1].hours", /^the hours of the person/],
      [crew({ hours: h(0) }), "range", "crew[1].hours", /more than zero/],
      [people(1001), "range", "crew", /"max":1000/],
    ]);
    expect(complaints(crew({ wage: 3, hours: 4 }))).toEqual(["type crew[1].wage", "type crew[1].hours"]);
    expect(complaints(crew({ fuss: 1 }))).toEqual(["type crew[1].fuss"]);
    expect(people(1000)().value).toBe(18);
  });
});

test("overtime of a week", () => {
  const week = call(overtimeShare, { hours: h(45) });
  expectRefusals([
    [week({ hours: undefined }), "missing", "hours", /^the paid hours of the week/],
    [week({ hours: h(0) }), "range", "hours", /more than zero/],
    [week({ hours: h(169) }), "range", "hours", /the hours of one person in one week.*"max":168,"unit":"h"/],
    [week({ regular: h(0) }), "range", "regular", /more than zero/],
    [week({ regular: 40 }), "type", "regular", /./],
    [week({ factor: 0.9 }), "range", "factor", /"min":1,"max":3/],
    [week({ factor: 3.1 }), "range", "factor", /"max":3/],
  ]);
  expect(week({ hours: h(168), factor: 3 })).not.toThrow();
});

test("the hours of tasks", () => {
  const task = {
    name: "mow pitches",
    area: quantity(4, "acre"),
    swath: quantity(6, "ft"),
    speed: quantity(5, "mi/h"),
    efficiency: percent(80),
  };
  const tasks = (change: object) => () => laborHours({ tasks: [task, { ...task, ...change }] as never });
  const many = (count: number) => () => laborHours({ tasks: Array.from({ length: count }, () => task) });
  expectRefusals([
    [() => laborHours({ tasks: [] }), "missing", "tasks", /task/],
    [tasks({ name: "" }), "missing", "tasks[1].name", /^the name of the task/],
    [tasks({ area: undefined }), "missing", "tasks[1].area", /^the area of the task/],
    [tasks({ area: quantity(0, "acre") }), "range", "tasks[1].area", /more than zero/],
    [tasks({ swath: undefined }), "missing", "tasks[1].swath", /./],
    [tasks({ efficiency: percent(101) }), "range", "tasks[1].efficiency", /100/],
    [tasks({ times: 0 }), "range", "tasks[1].times", /"above":0,"max":1000/],
    [tasks({ times: 1001 }), "range", "tasks[1].times", /1000/],
    [tasks({ people: 0 }), "range", "tasks[1].people", /"min":1,"max":1000/],
    [tasks({ people: 1001 }), "range", "tasks[1].people", /1000/],
    [tasks({ people: 1.5 }), "range", "tasks[1].people", /"step":1,"count":"people"/],
    [many(1001), "range", "tasks", /"max":1000/],
    [() => laborHours({ tasks: [task], hoursPerPerson: h(0) }), "range", "hoursPerPerson", /more than zero/],
    [() => laborHours({ tasks: [task], hoursPerPerson: 1200 as never }), "type", "hoursPerPerson", /./],
  ]);
  expect(many(1000)().tasks).toHaveLength(1000);
  // Half a time is every other year
  expect(laborHours({ tasks: [{ ...task, times: 0.5, people: 1000 }] }).manHours.in("h")).toBeGreaterThan(0);
});

test("the time of a machine", () => {
  const run = call(fieldEfficiency, {
    swath: quantity(20, "ft"),
    speed: quantity(4, "mi/h"),
    overlap: percent(0),
    runLength: quantity(352, "ft"),
    turn: quantity(15, "s"),
    load: quantity(4, "acre"),
    fill: quantity(20, "min"),
  });
  const rate = call(workRate, {
    swath: quantity(90, "ft"),
    speed: quantity(14, "mi/h"),
    standing: percent(37),
    turning: percent(15),
  });
  expectRefusals([
    [run({ swath: undefined }), "missing", "swath", /^a length/],
    [run({ swath: quantity(0, "ft") }), "range", "swath", /more than zero/],
    [run({ runLength: undefined }), "missing", "runLength", /^a length/],
    [run({ speed: undefined }), "missing", "speed", /^a speed/],
    [run({ speed: quantity(0, "mi/h") }), "range", "speed", /more than zero/],
    [run({ overlap: undefined }), "missing", "overlap", /^the overlap as a share of the swath, 0 %/],
    [run({ overlap: percent(100) }), "range", "overlap", /"below":100/],
    [run({ turn: undefined }), "missing", "turn", /^the time of one turn, 0 s where there is none/],
    [run({ load: quantity(0, "acre") }), "range", "load", /more than zero/],
    [run({ load: undefined }), "missing", "load", /^the area that one load covers/],
    [run({ fill: undefined }), "missing", "fill", /^the time that a fill takes/],
    [run({ fill: 20 }), "type", "fill", /./],
    [run({ fill: quantity(-1, "min") }), "range", "fill", /zero or more/],
    [
      rate({ standing: undefined }),
      "missing",
      "standing",
      /^the share of the time that the machine is stopped/,
    ],
    [rate({ standing: percent(100) }), "range", "standing", /100/],
    [rate({ turning: undefined }), "missing", "turning", /^the share of the driving that is turning/],
    [rate({ turning: percent(100) }), "range", "turning", /100/],
  ]);
  // A swath in meters is told in hectares: 6 m at 5 km/h without a turn is 3 ha/h
  const metric = fieldEfficiency({
    swath: quantity(6, "m"),
    speed: quantity(5, "km/h"),
    overlap: percent(0),
    runLength: quantity(100, "m"),
    turn: quantity(0, "s"),
  });
  expect([metric.workRate.unit, metric.workRate.value]).toEqual(["ha/h", expect.closeTo(3, 9)]);
  expect(
    fieldEfficiency({
      swath: quantity(8.25, "ft"),
      speed: quantity(1, "mi/h"),
      overlap: percent(0),
      runLength: quantity(352, "ft"),
      turn: quantity(0, "s"),
    }).workRate,
  ).toMatchObject({ unit: "acre/h", value: expect.closeTo(1, 9) });
});
