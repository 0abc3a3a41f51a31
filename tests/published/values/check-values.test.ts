import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import { beforeAll, describe, expect, it } from "vitest";
import {
  agreesWithFigure,
  type CheckFigure,
  type CheckValues,
  checkValues,
  checkValuesText,
  figureOf,
} from "./check-values.js";

const read = (name: string): string =>
  readFileSync(new URL(`../../../docs/${name}`, import.meta.url), "utf8");

describe("docs/check-values.json", () => {
  const text = read("check-values.json");
  const values = JSON.parse(text) as CheckValues;
  const figures = values.checks.flatMap(({ id, figures }) => figures.map((figure) => ({ id, ...figure })));

  it("is up to date: npm run evidence writes it", async () => {
    expect(checkValuesText(await checkValues()) === text).toBe(true);
  }, 300_000);

  it("keeps to its schema", () => {
    const check = new Ajv({ allowUnionTypes: true }).compile(JSON.parse(read("check-values.schema.json")));
    expect(check(values), JSON.stringify(check.errors?.slice(0, 3))).toBe(true);
    expect(check({ ...values, version: 2 })).toBe(false);
  });

  it("names each check once and each source", () => {
    expect(new Set(values.checks.map(({ id }) => id)).size).toBe(values.checks.length);
    expect([...new Set(values.checks.map(({ source }) => source))].sort()).toEqual(
      Object.keys(values.sources).sort(),
    );
    expect(figures.length).toBe(values.figures);
  });

  it("gives every figure from the file alone", () => {
    const off = figures.filter((figure) => !agreesWithFigure(figureOf(figure), figure));
    expect(off).toEqual([]);
  });

  it("holds most of the published figures, and a function of every room that has a formula", () => {
    expect(values.figures / values.published).toBeGreaterThan(0.6);
    expect(new Set(figures.map(({ function: name }) => name)).size).toBeGreaterThan(250);
  });
});

describe("a figure of the file", () => {
  let rate: CheckFigure;
  beforeAll(() => {
    rate = {
      function: "spreadRate",
      arguments: [
        { amount: { value: 2, unit: "lb", of: "product" }, area: { value: 500, unit: "ft2", of: "none" } },
      ],
      at: [],
      unit: "lb/1000 ft2",
      asked: "lb/1000 ft2",
      printed: 4,
      tolerance: 0.5,
    };
  });

  it("agrees within the tolerance, on either side", () => {
    expect(figureOf(rate)).toBe(4);
    expect(agreesWithFigure(4.49, rate)).toBe(true);
    expect(agreesWithFigure(3.51, rate)).toBe(true);
    expect(agreesWithFigure(4.51, rate)).toBe(false);
    expect(agreesWithFigure(3.49, rate)).toBe(false);
  });

  it("that was cut agrees from itself upward", () => {
    const cut: CheckFigure = { ...rate, tolerance: 1, rounding: "cut" };
    expect(agreesWithFigure(4.99, cut)).toBe(true);
    expect(agreesWithFigure(3.99, cut)).toBe(false);
  });

  it("that is wrong in its source is held to the right one", () => {
    expect(agreesWithFigure(4, { ...rate, printed: 5, right: 4 })).toBe(true);
    expect(agreesWithFigure(5, { ...rate, printed: 5, right: 4 })).toBe(false);
  });
});
