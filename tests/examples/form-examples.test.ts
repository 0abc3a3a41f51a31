// The figures that a form of the site is tried with: the formula takes them, in either system of units.
import { describe, expect, it } from "vitest";
import { exampleInputs } from "../../.ci/site/example-inputs.js";
import { tradeWords } from "../../.ci/site/trade-words.js";
import { unitsFor } from "../../.ci/site/unit-picker.js";
import { numberIn, quantityOf } from "../../src/quantity/index.js";
import { catalogue, explain } from "../../src/teach/index.js";

const entries = catalogue();

describe("the example of a form", () => {
  it.each(["US", "metric"] as const)(
    "is taken by every formula in %s units, and lies in the range of a practice problem",
    (system) => {
      const refused: string[] = [];
      for (const entry of entries) {
        try {
          const example = exampleInputs(entry, system);
          const given = entry.inputs.map(({ name, of, sensible }) => {
            const { value, unit } = example[name] ?? { value: "", unit: "" };
            const amount = quantityOf(Number(value), unit, of, name);
            const { min, max, unit: at } = sensible;
            const inUsual = numberIn(amount, at);
            if (inUsual < min * (1 - 1e-9) || inUsual > max * (1 + 1e-9))
              refused.push(`${entry.id} ${name}: ${inUsual}`);
            return [name, amount] as const;
          });
          explain(entry.id, Object.fromEntries(given), { units: system });
        } catch (error) {
          refused.push(`${entry.id}: ${String(error)}`);
        }
      }
      expect(refused).toEqual([]);
    },
  );

  it("has a unit that the picker offers, and no input is named as a box of the page is", () => {
    for (const { inputs, output, id } of entries) {
      for (const variable of [...inputs, output]) {
        expect(unitsFor(variable), id).toContain(variable.usualUnits.US);
        expect(unitsFor(variable), id).toContain(variable.usualUnits.metric);
      }
      expect(
        inputs.filter(({ name }) => ["units", "result", "digits", "q"].includes(name)).map(() => id),
      ).toEqual([]);
    }
  });
});

describe("the words of the trade", () => {
  it("are for formulas that there are", () => {
    const ids = new Set(entries.map(({ id }) => id));
    expect(Object.keys(tradeWords).filter((id) => !ids.has(id))).toEqual([]);
  });
});
