// A stored order is read again, field by field: what a sheet prints may not be missing, nor be of another kind.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { workOrder, workOrderText } from "../../../src/plan/index.js";
import { readOrder } from "../../../src/plan/paper/read-order.js";
import { problemsOf } from "../../errors.js";

const visit = JSON.parse(readFileSync(new URL("../sheet/whole-us.json", import.meta.url), "utf8"));
const base = { value: 0, unit: "°C" };
const interval = { value: 200, unit: "°C d" };
const heat = { method: "simple average", base, interval, source: "label (invented)" };
const days = Array.from({ length: 40 }, () => 15);
const job = {
  ...visit,
  temperatures: {
    type: "daily-temperatures",
    version: 1,
    start: "2026-08-20",
    unit: "°C",
    sensor: "air",
    min: days,
    max: days,
    source: "flat",
  },
  treatments: [visit.treatments[0], { ...visit.treatments[1], degreeDays: heat }, visit.treatments[2]],
  facts: {
    edges: [{ part: "north pitch", from: "water", away: { value: 0, unit: "ft" }, edges: [0] }],
    toWater: { value: 3, unit: "ft" },
  },
  limits: [
    ...visit.limits,
    { kind: "setback", of: "any", atLeast: { value: 15, unit: "ft" }, source: "county (invented)" },
    {
      kind: "buffer",
      of: "any",
      from: "water",
      atLeast: { value: 10, unit: "ft" },
      source: "county (invented)",
    },
  ],
};
type Loose = Record<string, never>;
let kept: string | undefined;
/** The order as a store gives it back; made once, for it is only read here. */
const stored = (): Loose => {
  kept ??= JSON.stringify(workOrder(job as never));
  return JSON.parse(kept);
};
const namesOf = (place: string): string[] => place.split(/[.[\]]+/).filter((name) => name !== "");
const at = (order: unknown, place: string): unknown =>
  namesOf(place).reduce<unknown>((value, name) => (value as Loose)?.[name], order);
const putAt = (order: unknown, place: string, put: unknown): void => {
  const names = namesOf(place);
  const last = names.pop() as string;
  const holder = names.reduce<Loose>((value, name) => value[name] as never, order as Loose);
  if (put === undefined) delete holder[last];
  else (holder as Record<string, unknown>)[last] = put;
};
const withAt = (place: string, put: unknown): unknown => {
  const order = stored();
  putAt(order, place, put);
  return order;
};
const problemsIn = (order: unknown): readonly string[] =>
  problemsOf(() => readOrder(order)).map(({ code, path, expected }) => `${code} ${path}: ${expected}`);
const told = (place: string, put: unknown): readonly string[] => problemsIn(withAt(place, put));
/** Printed as well: what may be absent is absent on paper. */
const printed = (place: string, put: unknown): readonly string[] =>
  problemsOf(() => workOrderText(withAt(place, put) as never)).map(({ code, path }) => `${code} ${path}`);
/** What is told of an order that is spoilt at many places, none of which lies within another. */
const toldAll = (places: readonly string[], put: (place: string) => unknown): readonly string[] => {
  const order = stored();
  for (const place of places) putAt(order, place, put(place));
  return problemsIn(order);
};
/** Places in rounds: those that others lie in come after these. */
const inRounds = (places: readonly string[]): readonly (readonly string[])[] => {
  if (places.length === 0) return [];
  const holds = (one: string): boolean =>
    places.some((other) => other.startsWith(`${one}.`) || other.startsWith(`${one}[`));
  return [places.filter((one) => !holds(one)), ...inRounds(places.filter(holds))];
};

const texts =
  `title site.name site.measures[0].part site.measures[0].shape spreads[0].treatment spreads[0].product
  spreads[0].productName spreads[0].byPart[0].part sprays[0].treatment sprays[0].products[0].product
  sprays[0].products[0].productName sprays[0].order.mixingOrder sprays[0].order.steps[0].action sprays[0].order.steps[0].text
  sprays[0].order.steps[0].reason sprays[0].order.firm[0].first sprays[0].order.firm[0].second nutrients[0].part
  nutrients[0].limits[0].limit.of nutrients[0].tests[0].limit.of nutrients[0].tests[0].limit.states repeats[0].treatment
  buffers[0].treatment buffers[0].part buffers[0].strips[0].from findings[0].code findings[0].text cautions[0].code cautions[0].text
  spreads[0].watering.rules[0].productName spreads[0].watering.rules[0].rule.source`.split(/\s+/);
const lists =
  `spreads sprays nutrients repeats buffers findings cautions checked notChecked spreads[0].parts spreads[0].byPart
  spreads[0].watering.rules spreads[0].watering.notStated sprays[0].parts sprays[0].products sprays[0].products[0].loads
  sprays[0].tank.loads sprays[0].order.steps sprays[0].order.firm sprays[0].order.open sprays[0].order.unopposed sprays[0].order.unsaid
  sprays[0].order.steps[0].cautions sprays[0].order.steps[0].sources nutrients[0].unweighed nutrients[0].limits nutrients[0].tests
  nutrients[0].limits[0].appliesIf buffers[0].strips`.split(/\s+/);
const quantities =
  `site.area.net spreads[0].area spreads[0].rate spreads[0].ratePerPass spreads[0].amount spreads[0].byPart[0].area
  spreads[0].byPart[0].amount spreads[0].byPart[0].perPass sprays[0].area sprays[0].tank.volume sprays[0].tank.capacity
  sprays[0].tank.applicationVolume sprays[0].tank.leftOver.volume sprays[0].tank.loads[0].volume sprays[0].tank.loads[0].area
  sprays[0].products[0].rate sprays[0].products[0].amount sprays[0].products[0].loads[0].amount
  nutrients[0].limits[0].limit.amount nutrients[0].limits[0].after nutrients[0].limits[0].remainingUnderStatedLimits
  repeats[1].degreeDaysAfter.interval repeats[1].degreeDaysAfter.total buffers[0].strips[0].distance buffers[0].strips[0].strip
  buffers[0].strips[0].stated buffers[0].area.part buffers[0].area.strips buffers[0].area.left`.split(/\s+/);
const numbers =
  `spreads[0].passes sprays[0].tank.count sprays[0].tank.loads[0].number sprays[0].products[0].loads[0].number
  sprays[0].order.steps[0].number sprays[0].order.firm[0].counts.for sprays[0].order.firm[0].counts.against
  sprays[0].order.firm[0].counts.same spreads[0].packages.count`.split(/\s+/);
const mayBeLeftOut =
  `site.measures applicator.name applicator.certificate spreads[0].packageSize spreads[0].packages spreads[0].lot
  spreads[0].target spreads[0].supplies spreads[0].spreader.name spreads[0].spreader.setting spreads[0].spreader.swath
  spreads[0].spreader.speed sprays[0].sprayer.nozzle sprays[0].sprayer.pressure sprays[0].sprayer.speed
  sprays[0].products[1].registrationNumber sprays[0].products[1].lot sprays[1].products[0].packets findings[0].source
  sprays[0].order.steps[0].fraction sprays[0].tank.mixedFor spreads[0].watering.rules[0].rule.least
  spreads[0].watering.rules[0].rule.most spreads[0].watering.rules[0].rule.within`.split(/\s+/);
const mayBeNull =
  `spreads[0].watering.least spreads[0].watering.within spreads[0].watering.most spreads[0].watering.notBefore
  spreads[0].watering.by spreads[0].watering.dryUntil spreads[0].watering.remaining spreads[0].watering.forecast spreads[0].watering.runTime
  repeats[0].calendar repeats[0].calendar.reapplyBy repeats[1].degreeDaysAfter repeats[1].degreeDaysAfter.runsOut
  repeats[1].degreeDaysAfter.countedTo nutrients[0].limits[0].violated nutrients[0].limits[0].moreCanBeAppliedFrom
  nutrients[0].tests[0].violated nutrients[0].tests[0].found buffers[0].area`.split(/\s+/);

describe("a stored order", () => {
  test("has all the places that are looked at here", () => {
    const order = stored();
    for (const place of [...texts, ...lists, ...quantities, ...numbers, ...mayBeLeftOut])
      expect(at(order, place), place).toBeDefined();
    expect(problemsOf(() => workOrderText(order as never))).toEqual([]);
  });
  test("a text that is missing, or none", () => {
    for (const [put, code] of [
      [undefined, "missing"],
      [5, "type"],
    ] as const)
      expect([...toldAll(texts, () => put)].sort()).toEqual(
        texts.map((place) => `${code} order.${place}: a text`).sort(),
      );
    expect(told("title", "x".repeat(20_001))).toEqual(["range order.title: 20000 characters or fewer"]);
    expect(told("title", "")).toEqual([]);
  });
  test("a list that is missing, or none", () => {
    for (const round of inRounds(lists))
      for (const [put, code] of [
        [undefined, "missing"],
        ["x", "type"],
      ] as const)
        expect([...toldAll(round, () => put)].sort()).toEqual(
          round.map((place) => `${code} order.${place}: a list, as workOrder returned it`).sort(),
        );
    expect(
      told(
        "checked",
        Array.from({ length: 20_001 }, () => "x"),
      ),
    ).toEqual(["range order.checked: 20000 items or fewer"]);
  });
  test("a quantity that is missing, of another dimension, or below zero", () => {
    // What is used of a limit, and what remains, may be of any kind and below zero.
    const bound = quantities.filter((place) => !place.includes("limits[0]"));
    const places = (code: string, all: readonly string[], put: (place: string) => unknown): void =>
      expect([...toldAll(all, put)].map((text) => text.replace(/: .*/, "")).sort()).toEqual(
        all.map((place) => `${code} order.${place}`).sort(),
      );
    places("missing", quantities, () => undefined);
    places("unit/mismatch", bound, () => ({ value: 1, unit: "psi" }));
    for (const value of [-1, 1e308])
      places("range", bound, (place) => ({ ...(at(stored(), place) as object), value }));
    expect(told("spreads[0].area", { value: 1, unit: "psi" })).toEqual([
      "unit/mismatch order.spreads[0].area: an area, such as 5000 ft2 or 500 m2",
    ]);
    expect(told("spreads[0].rate", { value: 1, unit: "psi" })).toEqual([
      "unit/mismatch order.spreads[0].rate: a weight over an area, a volume over an area, a weight per volume, a share by volume or a share by weight, such as 1 lb/1000 ft2, 1 gal/1000 ft2, 10 lb/gal, 0.25 % v/v or 24 % w/w",
    ]);
    expect(told("nutrients[0].limits[0].remainingUnderStatedLimits.value", -3)).toEqual([]);
  });
  test("a number that is none, or not whole where things are counted", () => {
    for (const put of ["x", null])
      expect(
        [...toldAll(numbers, () => put)].map((text) => text.replace(/^\S+ order\.|: .*/g, "")).sort(),
      ).toEqual([...numbers].sort());
    expect(told("sprays[0].tank.loads[0].number", 1.5)[0]).toMatch(
      /^range order\.sprays\[0\]\.tank\.loads\[0\]\.number: .*whole number/,
    );
    expect(told("sprays[0].tank.loads[0].number", 0).length).toBe(1);
    expect(told("sprays[0].order.firm[0].counts.for", undefined)).toEqual([
      "missing order.sprays[0].order.firm[0].counts.for: a finite number",
    ]);
    expect(told("sprays[0].order.firm[0].counts.for", null)).toEqual([
      "not-finite order.sprays[0].order.firm[0].counts.for: a finite number",
    ]);
    expect(told("spreads[0].packages.count", 0)).toEqual([]);
    expect(told("spreads[0].packages.count", 0.5).length).toBe(1);
  });
  test("what may be left out, and what may be null", () => {
    const rounds = inRounds(mayBeNull);
    for (const round of [mayBeLeftOut, ...rounds])
      expect(toldAll(round, () => (round === mayBeLeftOut ? undefined : null))).toEqual([]);
    for (const round of rounds) {
      expect(toldAll(round, () => undefined)).toHaveLength(round.length);
      const others = round.filter((place) => !place.endsWith("found"));
      expect(toldAll(others, () => "?")).toHaveLength(others.length);
    }
  });
  test("what may be left out is read where it is there", () => {
    const names =
      `applicator.name applicator.certificate spreads[0].spreader.name spreads[0].spreader.setting spreads[0].lot
      sprays[0].sprayer.nozzle sprays[0].products[1].registrationNumber sprays[0].products[1].lot
      nutrients[0].tests[0].limit.of nutrients[0].tests[0].limit.states`.split(/\s+/);
    const amounts =
      `spreads[0].spreader.swath spreads[0].spreader.speed spreads[0].target sprays[0].sprayer.pressure
      sprays[0].sprayer.speed sprays[0].sprayer.residualVolume spreads[0].watering.rules[0].rule.least
      spreads[0].watering.rules[0].rule.most spreads[0].watering.rules[0].rule.within`.split(/\s+/);
    const counts = ["spreads[0].packages.count"];
    const wrong = (place: string) => (counts.includes(place) ? 0.5 : { value: 3, unit: "count" });
    const put = (place: string) => (names.includes(place) ? 5 : wrong(place));
    const places = toldAll([...names, ...amounts, ...counts], put).map((text) => text.replace(/: .*/, ""));
    const due = [
      ...names.map((place) => `type order.${place}`),
      ...amounts.map((place) => `unit/mismatch order.${place}`),
      ...counts.map((place) => `range order.${place}`),
    ];
    expect(places.sort()).toEqual(due.sort());
  });
  test("and is printed without it", () => {
    for (const place of mayBeLeftOut) expect(printed(place, undefined), place).toEqual([]);
    for (const place of mayBeNull) expect(printed(place, null), place).toEqual([]);
  });
  test.each<readonly [string, unknown, string]>([
    ["version", 2, "range order.version: version 1, the one this release reads"],
    ["type", "job", "type order.type: work-order: give what workOrder returned"],
    ["units", "SI", 'type order.units: one of "US customary", "metric", "both"'],
    ["units", undefined, 'missing order.units: one of "US customary", "metric", "both"'],
    ["spreads[0].method", "spray", 'type order.spreads[0].method: one of "spread"'],
    ["sprays[0].method", "spread", 'type order.sprays[0].method: one of "spray"'],
    [
      "spreads[0].labelRate",
      "fine",
      'type order.spreads[0].labelRate: one of "within", "outside", "not stated", "other measure"',
    ],
    ["sprays[0].products[0].form", "gas", 'type order.sprays[0].products[0].form: one of "dry", "liquid"'],
    [
      "sprays[0].products[0].formulation",
      "mud",
      "type order.sprays[0].products[0].formulation: a kind of product, as workOrder returned it",
    ],
    ["findings[0].severity", "bad", 'type order.findings[0].severity: one of "note", "caution", "warning"'],
    ["cautions[0].place", "front", 'type order.cautions[0].place: one of "stop", "step", "after", "back"'],
    ["buffers[0].area.by", "eye", 'type order.buffers[0].area.by: one of "outline", "length"'],
    [
      "nutrients[0].limits[0].limit.kind",
      "test",
      'type order.nutrients[0].limits[0].limit.kind: one of "amount", "count"',
    ],
    [
      "nutrients[0].limits[0].limit.per",
      "month",
      'type order.nutrients[0].limits[0].limit.per: one of "application", "calendar year"',
    ],
    ["nutrients[0].limits[0].limit.per", 5, "type order.nutrients[0].limits[0].limit.per: a period"],
    ["nutrients[0].yearSoFar", 5, "type order.nutrients[0].yearSoFar: amounts by name"],
    ["nutrients[0].yearSoFar.N", 5, "type order.nutrients[0].yearSoFar.N: a quantity"],
    ["site.area", 5, "type order.site.area: a record, as workOrder returned it"],
    ["sprays[0].tank.count", 2, "conflict order.sprays[0].tank.count: 3, as many as there are loads"],
    ["sprays[0].products[0].loads", [], "conflict order.sprays[0].products[0].loads: 3, as the tank has"],
    [
      "sprays[0].products[0].loads[1].amount",
      { value: 1, unit: "lb" },
      "unit/mismatch order.sprays[0].products[0].loads[1].amount: a volume, such as 2 gal or 8 L",
    ],
    [
      "sprays[0].products[0].measured",
      { unit: "oz", step: 1 },
      "unit/mismatch order.sprays[0].products[0].measured.unit: a unit for a volume, such as gal or L",
    ],
    [
      "sprays[0].products[0].measured",
      { unit: "mL", step: 0 },
      "range order.sprays[0].products[0].measured.step: more than zero",
    ],
    [
      "sprays[1].products[0].packets.perLoad",
      [1, 1],
      "conflict order.sprays[1].products[0].packets.perLoad: 1, as the tank has",
    ],
    [
      "spreads[0].packageSize",
      { value: 1001, unit: "t" },
      "range order.spreads[0].packageSize: 1000 t or less in one package",
    ],
  ])("%s", (place, put, expected) => expect(told(place, put)).toContain(expected));
  test("a period by days, by months, or from a day to a day", () => {
    for (const per of [{ days: 30 }, { months: 12 }, { from: "04-01", to: "09-30" }, "calendar year"])
      expect(told("nutrients[0].limits[0].limit.per", per), JSON.stringify(per)).toEqual([]);
    for (const per of [{ days: 1.5 }, { months: "x" }, { from: 5, to: "09-30" }])
      expect(told("nutrients[0].limits[0].limit.per", per)).toHaveLength(1);
  });
});
