// The figures that a form of the site is tried with: the formula takes them, in either system of units.
import { describe, expect, it } from "vitest";
import { workOut } from "../../.ci/site/client/work-out.js";
import { exampleInputs } from "../../.ci/site/example-inputs.js";
import { pathOf } from "../../.ci/site/repository.js";
import { pageWords, tradeWords } from "../../.ci/site/trade-words.js";
import { unitsFor } from "../../.ci/site/unit-picker.js";
import { numberIn, quantityOf } from "../../src/quantity/index.js";
import { catalogue, explain } from "../../src/teach/index.js";
import { filesBelow } from "../house/sources.js";

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

/** The problem of a box with a figure below zero stands below the form, for no box alone is at fault. */
const belowTheForm: ReadonlySet<string> = new Set([]);

describe("a figure below zero", () => {
  it("is a problem beside its own box, or beside the one that it contradicts; never lost below the form", () => {
    const lost = entries.flatMap((entry) => {
      const example = exampleInputs(entry, "US");
      return entry.inputs.flatMap((wrong) => {
        const state = new Map([["units", "US"]]);
        for (const { name } of entry.inputs) {
          const { value, unit } = example[name] as { value: string; unit: string };
          state.set(name, name === wrong.name ? "-1" : value).set(`${name}.unit`, unit);
        }
        const { problems } = workOut(entry.id, entry.inputs, state);
        return problems.has("") ? [`${entry.id} ${wrong.name}`] : [];
      });
    });
    expect(lost.filter((name) => !belowTheForm.has(name))).toEqual([]);
  });
});

describe("the words of the trade", () => {
  it("are for formulas that there are", () => {
    const ids = new Set(entries.map(({ id }) => id));
    expect(Object.keys(tradeWords).filter((id) => !ids.has(id))).toEqual([]);
  });

  it("are for pages that there are", () => {
    const paths = new Set(filesBelow("docs").map(pathOf));
    expect(Object.keys(pageWords).filter((path) => !paths.has(path))).toEqual([]);
  });
});
