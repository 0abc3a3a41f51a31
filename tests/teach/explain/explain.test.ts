import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { quantity, quantityOf, RatewrightError, unitsOf } from "../../../src/index.js";
import {
  catalogue,
  type Derivation,
  derivationMarkdown,
  derivationText,
  explain,
} from "../../../src/teach/index.js";
import { runs } from "../../properties.js";
import { arithmetic, sameComputed, unitAfterNumber } from "./printed-lines.js";

const same = (left: string, right: string, line: string): void => {
  expect(sameComputed(left, right), line).toBe(true);
};

/** Every line that states an equality is recomputed from its printed numbers. */
const recompute = ({ steps, result }: Derivation): number => {
  let lines = 0;
  let putIn = "";
  for (const { kind, text } of steps) {
    const line = arithmetic(text);
    if (kind === "crossing") {
      const [left = "", right = ""] = line.split(" = ");
      same(left, right, text);
      lines += 1;
    }
    if (kind === "substitution") putIn = line.split(" = ")[1] as string;
    if (kind === "result") {
      const [before = "", whole] = (line.split(" = ")[1] as string).split(", rounded up to a whole number: ");
      same(putIn, before, `${putIn} gives ${text}`);
      if (whole !== undefined) expect(Math.ceil(Number(before)), text).toBe(Number(whole));
      lines += 1;
    }
    if (kind === "rounding" && text.includes("≈")) {
      const [from = "", to = ""] = line
        .replace(/, rounded.*/, "")
        .split(" ≈ ")
        .map((part) => part.replace(unitAfterNumber, ""));
      const size = 10 ** Math.floor(Math.log10(Math.abs(Number(from))));
      const digits = Number(/to (\d) sig/.exec(text)?.[1]);
      expect(Math.abs(Number(from) - Number(to)), text).toBeLessThanOrEqual(
        size * 10 ** (1 - digits) * 0.5001,
      );
      expect(Number(to), text).toBeCloseTo(result.value, 8);
      lines += 1;
    }
  }
  return lines;
};

describe("a derivation", () => {
  it.each(catalogue().map((entry) => [entry.id, entry] as const))(
    "%s: every printed line is true",
    (id, entry) => {
      const draws = entry.inputs.map(({ sensible, dimension, of, usualUnits }) => {
        const [min, max] = [Math.ceil(sensible.min), Math.floor(sensible.max)];
        const number =
          dimension === "count"
            ? fc.integer({ min, max })
            : fc.double({ min: sensible.min, max: sensible.max, noNaN: true });
        const units = [
          usualUnits.US,
          usualUnits.metric,
          ...unitsOf(dimension as "mass").map(({ unit }) => unit as string),
        ];
        return fc.tuple(number, fc.constantFrom(...units)).map(([value, unit]) => {
          const q = quantityOf(value, sensible.unit, of, "draw");
          return dimension === "count"
            ? q
            : quantityOf(Number(q.in(unit as never).toPrecision(4)), unit, of, "draw");
        });
      });
      let lines = 0;
      fc.assert(
        fc.property(fc.tuple(...draws), fc.constantFrom("US" as const, "metric" as const), (given, units) => {
          const inputs = Object.fromEntries(entry.inputs.map(({ name }, n) => [name, given[n]]));
          let derivation: Derivation;
          try {
            derivation = explain(id, inputs, { units });
          } catch (error) {
            if (error instanceof RatewrightError) return;
            throw error;
          }
          lines += recompute(derivation);
        }),
        runs(10),
      );
      expect(lines).toBeGreaterThan(3);
    },
  );

  it("would notice a line that is not true", () => {
    expect(() => same(arithmetic("3 mi/h × 5,280"), arithmetic("15,841 ft/h"), "")).toThrow();
    expect(arithmetic("0.9 lb N/1,000 ft² × 43.56")).toBe("0.9 * 43.56");
    expect(arithmetic("R = 100 × (0.9 lb N/1,000 ft²) ÷ (24 % w/w)")).toBe("R = 100 * (0.9) / (24)");
    expect(arithmetic("3 blocks of 1,000 ft² × 1,000")).toBe("3 * 1000");
  });

  const flow = {
    applicationVolume: quantityOf(20, "gal/acre", "spray", "x"),
    speed: quantityOf(4, "mi/h", "none", "x"),
    width: quantityOf(20, "in", "none", "x"),
  };

  it("rounds as asked, in the unit that is asked for", () => {
    const working = explain("nozzle-flow", flow, { digits: 2, unit: "fl oz/min" });
    expect(derivationText(working).split("\n").pop()).toBe(
      "34.4781 fl oz spray/min ≈ 34 fl oz spray/min, rounded to 2 significant digits",
    );
    expect(working.result.value).toBe(34);
    expect(working.exact.in("gal/min" as never)).toBeCloseTo((20 * 4 * 20) / 5940, 12);
  });

  it("is the same out of a store", () => {
    const working = explain("nozzle-flow", flow, { units: "metric" });
    const stored = JSON.parse(JSON.stringify(working)) as Derivation;
    expect(derivationText(stored)).toBe(derivationText(working));
    expect(derivationMarkdown(stored)).toBe(derivationMarkdown(working));
  });

  it("names all that is wrong at once", () => {
    const problems = (call: () => unknown): readonly string[] => {
      try {
        call();
      } catch (error) {
        if (error instanceof RatewrightError)
          return error.problems.map(({ code, path }) => `${code} ${path}`);
        throw error;
      }
      return [];
    };
    expect(
      problems(() =>
        explain("nozzle-flow", { ...flow, speed: undefined }, { units: "us" as "US", digits: 9 }),
      ),
    ).toEqual(["missing inputs.speed", "type options.units", "range options.digits"]);
    expect(problems(() => explain("nozzle-flow", flow, { unit: "lb" }))).toEqual([
      "unit/mismatch options.unit",
    ]);
    expect(problems(() => explain("nozzle-flow", flow, { unti: "lb" } as never))).toEqual([
      "type options.unti",
    ]);
    expect(problems(() => derivationText({} as never))).toEqual(["missing derivation.type"]);
  });

  it("says what an amount is of as a crew says it, without the colons of a name in a store", () => {
    const told = explain("slow-share-needed", {
      total: quantity(1, "lb/1000 ft2", "N"),
      quickCap: quantity(0.5, "lb/1000 ft2", "N:quick"),
    }).steps.map(({ text }) => text);
    expect(told.join(" ")).toContain("0.5 lb quick N/1,000 ft²");
    for (const { id, inputs } of catalogue()) {
      const given = Object.fromEntries(
        inputs.map(({ name, sensible: { min, unit }, of }) => [
          name,
          quantity(min, unit as "lb", of as "none"),
        ]),
      );
      for (const units of ["US", "metric"] as const)
        for (const { text } of explain(id, given, { units }).steps)
          expect(text).not.toMatch(/[a-z]:[A-Za-z]/i);
    }
  });
});
