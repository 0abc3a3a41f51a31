import fc from "fast-check";
import { all, create, type FactoryFunctionMap } from "mathjs";
import { describe, expect, it } from "vitest";
import * as library from "../../../src/index.js";
import { quantityOf, RatewrightError, unitsOf } from "../../../src/index.js";
import { type CatalogueEntry, catalogue, catalogueEntry, entryResult } from "../../../src/teach/index.js";
import { problem } from "../../../src/teach/problems/index.js";
import { floorOf } from "../../house/floors.js";
import { runs } from "../../properties.js";

const math = create(all as FactoryFunctionMap, {});

/** Equations whose printed constants are rounded, or whose function finds its answer step by step; and how near they come. */
const tolerances: Readonly<Record<string, number>> = {};

const functionsOf = { ln: Math.log, log10: Math.log10, ceil: Math.ceil, floor: Math.floor };

/** The number that an equation gives, by an independent library. */
const computed = (equation: string, numbers: Readonly<Record<string, number>>): number => {
  const result = math.evaluate(equation.split("=")[1] as string, { ...numbers, ...functionsOf });
  return typeof result === "number" ? result : Number.NaN;
};

const functions = new Map<string, unknown>(Object.entries(library));

/** Inputs of an entry at random, in its sensible range and in any unit. */
const drawsOf = (entry: CatalogueEntry) =>
  entry.inputs.map(({ sensible, dimension, of, usualUnits }) => {
    // a slope has units of its own: water by depth of soil is a length by a length, too
    const units = [
      ...unitsOf(dimension as "mass").map(({ unit }) => unit as string),
      ...Object.values(usualUnits),
    ].filter((unit) => unit !== "% grade" || sensible.unit === unit);
    const whole = dimension === "count";
    const number = whole
      ? fc.integer({ min: Math.ceil(sensible.min), max: Math.floor(sensible.max) })
      : fc.double({ min: sensible.min, max: sensible.max, noNaN: true });
    return fc
      .tuple(number, fc.constantFrom(...(units.length > 0 ? units : [sensible.unit])))
      .map(([value, unit]) => {
        const q = quantityOf(value, sensible.unit, of, "draw");
        return whole ? q : quantityOf(q.in(unit as never), unit, of, "draw");
      });
  });

describe("the catalogue", () => {
  const entries = catalogue();

  it("has an id once, in words with hyphens, and an exported function", () => {
    const ids = entries.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
    const names = entries.map(({ name }) => name);
    expect(names.filter((name) => typeof functions.get(name) !== "function")).toEqual([]);
  });

  it("knows the room of each entry, also where a problem was posed before", () => {
    problem({ topic: "spray/speed", level: 1, seed: 1, units: "US" });
    expect(catalogue().filter(({ room }) => !(room in floorOf))).toEqual([]);
  });

  it("says each thing in full", () => {
    for (const entry of entries) {
      expect(entry.title, entry.id).toMatch(/^[A-Z0-9].+[^.]$/);
      if (entry.basis === "published") expect(entry.sources.length, entry.id).toBeGreaterThan(0);
      for (const { title, publisher, url, where } of entry.sources) {
        expect(title.length, entry.id).toBeGreaterThan(5);
        expect(publisher.length, entry.id).toBeGreaterThan(2);
        expect(url ?? "https://", entry.id).toMatch(/^https?:\/\//);
        expect(where?.length ?? 3, entry.id).toBeGreaterThan(2);
      }
      for (const { label, name, symbol } of [...entry.inputs, entry.output]) {
        expect(label, entry.id).toMatch(/^[A-Za-z0-9].*[^.]$/);
        expect(name.length * symbol.length, entry.id).toBeGreaterThan(0);
      }
      expect(entry.traps.length, entry.id).toBeGreaterThan(0);
      expect(
        entry.traps.filter((trap) => !/^[A-Z0-9].+\.$/.test(trap)),
        entry.id,
      ).toEqual([]);
      expect(
        entry.inputs.filter(({ sensible }) => !(sensible.min < sensible.max)),
        entry.id,
      ).toEqual([]);
      for (const { dimension, usualUnits, equationUnits } of [...entry.inputs, entry.output]) {
        for (const unit of [...Object.values(usualUnits), ...Object.values(equationUnits)])
          expect(quantityOf(1, unit, "none", "unit").dimension, entry.id).toBe(dimension);
      }
    }
  });

  it("uses the symbols of its variables, each of them, and no others", () => {
    for (const entry of entries) {
      const [left = "", right = ""] = entry.equation.split("=");
      const used = new Set(right.match(/[A-Za-z][A-Za-z0-9_]*(?!\w*\()/g) ?? []);
      used.delete("pi");
      expect(left.trim(), entry.id).toBe(entry.output.symbol);
      expect([...used].sort(), entry.id).toEqual(entry.inputs.map(({ symbol }) => symbol).sort());
    }
  });

  it.each(entries.map((entry) => [entry.id, entry] as const))(
    "%s: what is read is what runs",
    (id, entry) => {
      let done = 0;
      const draws = drawsOf(entry);
      fc.assert(
        fc.property(
          fc.tuple(...draws),
          fc.constantFrom("US" as const, "metric" as const),
          (given, system) => {
            const inputs = Object.fromEntries(entry.inputs.map(({ name }, n) => [name, given[n]]));
            let result: ReturnType<typeof entryResult>;
            try {
              result = entryResult(id, inputs);
            } catch (error) {
              if (
                error instanceof RatewrightError &&
                error.problems.every(({ code }) => /range|conflict|infeasible/.test(code))
              )
                return;
              throw error;
            }
            const numbers = Object.fromEntries(
              entry.inputs.map(({ symbol, equationUnits }, n) => [
                symbol,
                given[n]?.in(equationUnits[system] as never) as number,
              ]),
            );
            const there = result.in(entry.output.equationUnits[system] as never);
            const first = entry.inputs[0]?.symbol as string;
            // A whole number of bags stays whole where float noise lies above it: the functions guard against that noise.
            const guarded = computed(entry.equation, {
              ...numbers,
              [first]: (numbers[first] as number) * (1 - 1e-11),
            });
            const here =
              entry.equation.includes("ceil(") && guarded === there
                ? guarded
                : computed(entry.equation, numbers);
            const size = Math.max(Math.abs(there), Math.abs(here), 1e-9);
            expect(
              Math.abs(there - here) / size,
              `${entry.equation} is ${here}, ${entry.name} gives ${there}`,
            ).toBeLessThan(tolerances[id] ?? 1e-9);
            done += 1;
          },
        ),
        runs(60),
      );
      expect(done, "draws that the function takes").toBeGreaterThan(8);
    },
  );

  it("names what is wrong", () => {
    expect(() => catalogueEntry("nozle-flow")).toThrow(/nozzle-flow/);
    expect(() => catalogueEntry("nozzleFlow")).toThrow(/nozzle-flow/);
    expect(() => catalogueEntry(3 as never)).toThrow(/id/);
    const problems = (() => {
      try {
        entryResult("nozzle-flow", { speed: quantityOf(3, "lb", "none", "x"), width: 3 });
      } catch (error) {
        return error instanceof RatewrightError
          ? error.problems.map(({ code, path }) => `${code} ${path}`)
          : [];
      }
      return [];
    })();
    expect(problems).toEqual([
      "missing inputs.applicationVolume",
      "unit/mismatch inputs.speed",
      "type inputs.width",
    ]);
    expect(() => entryResult("nozzle-flow", { sped: 1 })).toThrow(/speed/);
  });
});
