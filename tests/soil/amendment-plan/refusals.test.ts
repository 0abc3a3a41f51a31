import { describe, expect } from "vitest";
import { amendmentPlan } from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";
import { conventions, lime, mg, of, planOf, report, site } from "./practice-field.js";

describe("refusals say where in the plan's own input they come from", () => {
  const plan = (change: Parameters<typeof planOf>[0]) => () => planOf(change);
  tellsEach([
    [
      plan({
        report: {
          laboratory: "",
          layer: 3,
          bufferPH: 9,
          buffer: "vinegar",
          acidityPerVolume: 101,
          freeLime: "no",
        },
      }),
      'missing report.laboratory: expected the laboratory, got ""',
      "type report.layer: expected a layer: { depth, bulkDensity }, or { assumed } with the name of a shortcut for its weight, got 3",
      "range report.bufferPH: expected 8.5 or less, got 9",
      'type report.buffer: expected one of "Adams-Evans", "Mehlich, North Carolina", "pH 7.0 buffer of a commercial laboratory", got "vinegar"',
      "range report.acidityPerVolume: expected 100 or less, got 101",
      expect.stringMatching(/^type report\.freeLime: /) as unknown as string,
    ],
    [
      plan({ site: { name: "", area: of(0, "ft2"), soil: "", grass: "rye", irrigation: of(-1, "in") } }),
      'missing site.name: expected the name of the site, got ""',
      "range site.area: expected more than zero, got 0 ft2",
      'type site.grass: expected one of "cool-season grass", "bermudagrass", "seashore paspalum", got "rye"',
      'missing site.soil: expected the soil or turf, got ""',
      "range site.irrigation: expected zero or more, got -1 in",
    ],
    [
      plan({ report: { elements: { P: mg(-1, "P"), K: of(3, "lb/acre", "N"), Ca: 5 } } }),
      "range report.elements.P: expected zero or more, got -1 mg/kg of P/soil",
      "substance/mismatch report.elements.K: expected mg/kg of K/soil, or lb/acre or kg/ha of K, got 3 lb/acre of N",
      expect.stringMatching(
        /^type report\.elements\.Ca: expected a quantity of Ca, got 5/,
      ) as unknown as string,
    ],
    [
      plan({ conventions: { lime: { ...lime, material: { quality: { CCE: 300 } } } } }),
      "missing conventions.lime.material.id: expected an id of the material, got undefined",
    ],
    [
      plan({
        conventions: { lime: { ...lime, most: { amount: of(0, "lb/1000 ft2", "product"), source: "us" } } },
      }),
      "range conventions.lime.most.amount: expected more than zero, got 0 lb/1000 ft2 of product",
    ],
    [
      plan({ conventions: { lime: { ...lime, monthsApart: 30 } } }),
      "range conventions.lime.monthsApart: expected 24 or less, got 30",
    ],
    [
      plan({ conventions: { lime: { ...lime, targetPH: 6.2 } } }),
      "range conventions.lime.targetPH: expected a target that the table has, got 6.2 (say which: 7, 6.5, 6)",
    ],
    [
      plan({ conventions: { nutrients: { guideline: "minimum levels, Mehlich 3", list: [] } } }),
      "missing conventions.nutrients.list: expected at least one nutrient, got an empty list",
    ],
    [
      plan({ conventions: { nutrients: { guideline: "minimum levels, Mehlich 3", list: ["N"] } } }),
      'type conventions.nutrients.list[0]: expected one of "P", "K", "Ca", "Mg", "S", got "N"',
    ],
    [
      plan({
        conventions: {
          nutrients: { guideline: "sufficiency, Mehlich 3", list: ["K"], perNitrogen: { K: 3 } },
        },
      }),
      "range conventions.nutrients.perNitrogen.K: expected 2 or less, got 3",
    ],
    [
      plan({ conventions: { nutrients: { guideline: "sufficiency, Mehlich 3", list: ["K"] } } }),
      "missing site.soil: expected the soil or turf that the guideline distinguishes, got undefined (say which: sand, other soils)",
    ],
    [
      plan({ conventions: { nutrients: { guideline: "sufficiency, Olsen", list: ["P"] } } }),
      'conflict report.extractant: expected Olsen, which the guideline is for: take the guideline of the extractant of the report, got "Mehlich 3"',
    ],
    [
      plan({ conventions: { nutrients: { guideline: "Pennsylvania, Mehlich 3", list: ["K"] } } }),
      'missing conventions.nutrients.list: expected a nutrient that the guideline has, got "K" (say which: P)',
    ],
    [
      plan({
        report: { elements: { ...report.elements, Na: mg(400, "Na") } },
        conventions: { sodium: { targetPercent: of(5, "%"), purity: 0 } },
      }),
      "range conventions.sodium.purity: expected more than 0, got 0",
    ],
    [
      plan({ conventions: { sodium: { targetPercent: of(-5, "%"), purity: 90 } } }),
      "range conventions.sodium.targetPercent: expected zero or more, got -5 %",
    ],
    [
      plan({ conventions: { leaching: { method: "by eye", soil: of(3, "dS/m") } } }),
      'type conventions.leaching.method: expected one of "average root zone", "drainage water", got "by eye"',
    ],
    [
      () => amendmentPlan({ ...report, note: 3 } as never, site as never, conventions as never),
      expect.stringMatching(/^type report\.note: /) as unknown as string,
    ],
    [
      () => amendmentPlan(3 as never, 4 as never, 5 as never),
      "type report: expected what the laboratory wrote, got 3",
      "type site: expected where the amendments go, got 4",
      "type conventions: expected a record with lime, nutrients, sodium, leaching, got 5",
    ],
  ]);
});
