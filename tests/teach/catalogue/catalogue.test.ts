import fc from "fast-check";
import { all, create, type EvalFunction, type FactoryFunctionMap } from "mathjs";
import { describe, expect, it } from "vitest";
import * as library from "../../../src/index.js";
import { quantityOf, RatewrightError, unitsOf } from "../../../src/index.js";
import { type CatalogueEntry, catalogue, catalogueEntry, entryResult } from "../../../src/teach/index.js";
import { problem } from "../../../src/teach/problems/index.js";
import { floorOf } from "../../house/floors.js";
import { runs } from "../../properties.js";
import { citationFaults } from "./citation-faults.js";

const math = create(all as FactoryFunctionMap, {});

/** Equations whose printed constants are rounded, or whose function finds its answer step by step; and how near they come. */
const tolerances: Readonly<Record<string, number>> = {};

const functionsOf = { ln: Math.log, log10: Math.log10, ceil: Math.ceil, floor: Math.floor };

/** Each equation is parsed once. */
const compiled = new Map<string, EvalFunction>();

/** The number that an equation gives, by an independent library. */
const computed = (equation: string, numbers: Readonly<Record<string, number>>): number => {
  const right = compiled.get(equation) ?? math.compile(equation.split("=")[1] as string);
  compiled.set(equation, right);
  const result: unknown = right.evaluate({ ...numbers, ...functionsOf });
  return typeof result === "number" ? result : Number.NaN;
};

const functions = new Map<string, unknown>(Object.entries(library));

/** The dimension of a unit, or nothing where it is none. */
const dimensionOf = (unit: string): string | undefined => {
  try {
    return quantityOf(1, unit, "none", "unit").dimension;
  } catch {
    return undefined;
  }
};

/** A name as quantities have it: `N`, `product/spray`, `CaCO3 equivalent`. */
const isSubstanceName = (of: string): boolean => /^[A-Za-z0-9][A-Za-z0-9 :/-]*$/.test(of);

/** What an entry leaves out, or says badly. */
const entryFaults = (entry: CatalogueEntry): readonly string[] => {
  const { id, name, title, inputs, output, equation, traps, basis, sources } = entry;
  const faults: string[] = [];
  const demand = (holds: boolean, what: string): void => {
    if (!holds) faults.push(what);
  };
  demand(/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id), `id "${id}"`);
  demand(typeof functions.get(name) === "function", `function "${name}"`);
  demand(/^[A-Z0-9].+[^.]$/.test(title), `title "${title}"`);
  demand(basis !== "published" || sources.length > 0, "no source");
  demand(traps.length > 0, "no trap");
  for (const trap of traps) demand(/^[A-Z0-9].+\.$/.test(trap), `trap "${trap}"`);
  for (const { sensible, name: input } of inputs) demand(sensible.min < sensible.max, `range of ${input}`);
  for (const variable of [...inputs, output]) {
    demand(/^[A-Za-z0-9].*[^.]$/.test(variable.label), `label "${variable.label}"`);
    demand(variable.name !== "" && variable.symbol !== "", `name "${variable.name}"`);
    demand(variable.of === "none" || isSubstanceName(variable.of), `of "${variable.of}"`);
    for (const units of [variable.usualUnits, variable.equationUnits])
      for (const unit of [units.US, units.metric])
        demand(dimensionOf(unit) === variable.dimension, `unit "${unit}" of ${variable.name}`);
  }
  const [left = "", right = ""] = equation.split("=");
  const used = new Set(right.match(/[A-Za-z][A-Za-z0-9_]*(?!\w*\()/g) ?? []);
  used.delete("pi");
  demand(left.trim() === output.symbol, `"${left.trim()}" for ${output.symbol}`);
  const symbols = inputs.map(({ symbol }) => symbol).sort();
  demand(symbols.join() === [...used].sort().join(), `symbols ${symbols.join()} in "${right}"`);
  return [...faults, ...sources.flatMap(citationFaults)];
};

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

  it("has each id once", () => {
    const ids = entries.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it("knows the room of each entry, also where a problem was posed before", () => {
    problem({ topic: "spray/speed", level: 1, seed: 1, units: "US" });
    expect(catalogue().filter(({ room }) => !(room in floorOf))).toEqual([]);
  });

  // One test for each entry, and no assertion for each word: the judge of changed programs runs them many times.
  it.each(entries.map((entry) => [entry.id, entry] as const))("%s: says each thing in full", (_, entry) => {
    expect(entryFaults(entry)).toEqual([]);
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
            const guarded = entry.equation.includes("ceil(")
              ? computed(entry.equation, { ...numbers, [first]: (numbers[first] as number) * (1 - 1e-11) })
              : Number.NaN;
            const here = guarded === there ? guarded : computed(entry.equation, numbers);
            const size = Math.max(Math.abs(there), Math.abs(here), 1e-9);
            // What is left of sums that nearly cancel is as far off as the last digits of what they are sums of.
            const summed = entry.inputs.flatMap(({ symbol, equationUnits }) =>
              equationUnits[system] === entry.output.equationUnits[system]
                ? [Math.abs(numbers[symbol] as number)]
                : [],
            );
            // What is within 1e-9 of used up is used up: see `exceeds`.
            const noise = (there === 0 ? 1e-9 : 16 * Number.EPSILON) * Math.max(0, ...summed);
            const off = Math.abs(there - here) - noise;
            expect(off / size, `${entry.equation} is ${here}, ${entry.name} gives ${there}`).toBeLessThan(
              tolerances[id] ?? 1e-9,
            );
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
    // the name of a function leads to its entry, where the two are not alike
    expect(() => catalogueEntry("densityAt")).toThrow(/did you mean density-at-temperature/);
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
