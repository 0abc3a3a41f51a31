import { expect, test } from "vitest";
import { insectModel, insectTargets, insectTargetsFor } from "../../../src/index.js";
import { complaints } from "../../errors.js";
import { expectRefusals } from "../../refusals.js";

const target = {
  id: "own",
  insect: "white grub",
  event: "adults",
  from: 100,
  to: 120,
  unit: null,
  method: null,
  base: null,
  upper: null,
  cutoff: null,
  sensor: null,
  start: null,
  region: "the park",
  note: "invented",
  source: { title: "notes", publisher: "the park" },
} as const;
const assume = {
  unit: "°F d",
  method: "simple average",
  base: { value: 50, unit: "°F" },
  upper: "none",
  sensor: "air",
  start: "03-01",
} as const;
const put =
  (change: object, parts: object = assume) =>
  () =>
    insectModel({ target: { ...target, ...change }, assume: parts } as never);
const without = (part: keyof typeof assume) => {
  const { [part]: _, ...rest } = assume;
  return put({}, rest);
};

test("a part that is neither stated nor assumed is asked for in its own words", () => {
  const open = "the source does not state it";
  expectRefusals([
    [without("unit"), "missing", "assume.unit", new RegExp(`^"°C d" or "°F d": ${open}`)],
    [
      without("method"),
      "missing",
      "assume.method",
      new RegExp(`^a method of counting, such as "simple average": ${open}`),
    ],
    [without("base"), "missing", "assume.base", new RegExp(`^a base temperature with its unit: ${open}`)],
    [without("upper"), "missing", "assume.upper", new RegExp(`^an upper threshold, or "none": ${open}`)],
    [without("sensor"), "missing", "assume.sensor", new RegExp(`^"air", or soil at a depth: ${open}`)],
    [
      without("start"),
      "missing",
      "assume.start",
      new RegExp(`^the day of the year from which degree days count, MM-DD: ${open}`),
    ],
    [put({ unit: "°C d" }), "conflict", "assume.unit", /^nothing: the source of the target states it/],
  ]);
  expect(complaints(put({}, {}))).toHaveLength(6);
});

test("a target of one's own says what is wrong with it", () => {
  expectRefusals([
    [() => insectModel({ target: 3 as never }), "type", "target", /./],
    [put({ fuss: 1 }), "type", "target.fuss", /./],
    [put({}, { ...assume, fuss: 1 }), "type", "assume.fuss", /./],
    [put({ insect: "" }), "missing", "target.insect", /^the name of an insect/],
    [put({ region: "" }), "missing", "target.region", /^where the figure was found/],
    [put({ from: -1 }), "range", "target.from", /"min":0/],
    [put({ to: -1 }), "range", "target.to", /"min":0/],
    [put({ to: 99 }), "conflict", "target.to", /^not less than from, which is 100/],
    [put({ source: { title: "a", editor: "b" } }), "type", "target.source.editor", /./],
  ]);
  expect(put({ to: 100 })().to?.in("°F d")).toBe(100);
  expect(put({ from: 0, to: null })().to).toBeNull();
  expect(put({ source: "notes of the park" })().model.id).toBe(put({})().model.id);
});

test("what is assumed is told, the cutoff too, and what the source states is not", () => {
  const upper = { ...assume, upper: { value: 86, unit: "°F" } } as const;
  const horizontal = put({}, { ...upper, cutoff: "horizontal" })();
  expect(horizontal.assumed).toEqual(["unit", "method", "base", "upper", "sensor", "start", "cutoff"]);
  const stated = put(
    { upper: upper.upper, cutoff: "horizontal" },
    (({ upper: _, ...rest }) => rest)(upper),
  )();
  expect(stated.assumed).toEqual(["unit", "method", "base", "sensor", "start"]);
  expect(stated.model).toEqual(horizontal.model);
  const full = put({ ...assume, upper: { value: 86, unit: "°F" }, cutoff: "horizontal" }, {})();
  expect([full.assumed, full.findings.map(({ code }) => code)]).toEqual([[], ["insect/scout"]]);
  expect(full.findings[0]).toMatchObject({
    params: { insect: "white grub", region: "the park" },
    text: "Degree-days say when to scout for white grub, as found in the park. Count insects before you treat, and follow the label.",
  });
  expect(put({})().findings[1]).toMatchObject({
    params: { assumed: ["unit", "method", "base", "upper", "sensor", "start"] },
    text: "Not stated by the source and assumed here: unit, method, base, upper, sensor, start. Another assumption gives other dates.",
  });
});

test("targets are found by a word, one or many, with blanks beside it", () => {
  const ids = (word: string) => insectTargetsFor(word).map(({ id }) => id);
  expect(ids(" Japanese beetles ")).toEqual(ids("japanese beetle"));
  expect(ids("Billbugs")).toEqual(ids("billbug"));
  expect(ids("billbug").length).toBeGreaterThan(1);
  expect(ids("")).toEqual(insectTargets.map(({ id }) => id));
  expectRefusals([
    [() => insectTargetsFor(3 as never), "type", "word", /^a word of the insect or the event/],
  ]);
});
