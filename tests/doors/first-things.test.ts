import { describe, expect, it } from "vitest";
import { Quantity, RatewrightError } from "../../src/index.js";
import { firstThings } from "./first-things.js";
import type { Figure, FirstThing } from "./trial.js";

const refusal = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    if (!(error instanceof RatewrightError)) throw error;
    const choices = error.problems.flatMap((one) => [one.code, one.path, ...(one.choices ?? [])]);
    return [error.message, ...choices].join("\n");
  }
  throw new Error("it was not refused");
};

const expectFigure = (came: unknown, figure: Figure): void => {
  if (typeof figure !== "object") {
    if (typeof figure === "number") expect(came).toBeCloseTo(figure, 9);
    else expect(came).toBe(figure);
    return;
  }
  const [value, unit, of] = figure;
  expect(came).toBeInstanceOf(Quantity);
  const number = (came as Quantity<string, string>).in(unit as never);
  expect(Math.abs(number - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-7);
  if (of !== undefined) expect((came as Quantity<string, string>).of).toBe(of);
};

const check = ({ run, gives, refused, way, wayGives }: FirstThing): void => {
  if (gives !== undefined) expectFigure(run(), gives);
  if (refused === undefined) return;
  const said = refusal(run);
  for (const words of refused) expect(said).toContain(words);
  if (way === undefined || wayGives === undefined) throw new Error("a refusal without a way on");
  expectFigure(way(), wayGives);
};

for (const [what, things] of Object.entries(firstThings)) {
  describe(`what people do first: ${what}`, () => {
    it.each(things.map((thing) => [thing.title, thing] as const))("%s", (_title, thing) => check(thing));
  });
}

describe("the script", () => {
  it("tries at least 250 things", () => {
    expect(Object.values(firstThings).flat().length).toBeGreaterThanOrEqual(250);
  });
});
