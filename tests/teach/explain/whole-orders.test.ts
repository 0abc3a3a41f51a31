// The working of the two visits whose sheets stand in tests/plan/sheet: every figure was reckoned by hand there, and none is left out.
import { describe, expect, it } from "vitest";
import { type Job, workOrder } from "../../../src/index.js";
import { derivationText, explainWorkOrder } from "../../../src/teach/index.js";
import { read } from "../../house/sources.js";

const workingOf = (name: string) =>
  explainWorkOrder(workOrder(JSON.parse(read(`tests/plan/sheet/whole-${name}.json`)) as Job));
const figures = (name: string): readonly string[] =>
  workingOf(name).derivations.map(
    ({ title, exact }) => `${title}: ${Number(exact.value.toPrecision(5))} ${exact.unit}`,
  );

describe("the working of a whole visit", () => {
  it("in US customary units", () => {
    expect(figures("us")).toEqual([
      "feed 30-0-10: product per area: 2.5 lb/1000 ft2",
      "feed 30-0-10: in all: 117 lb",
      "feed 30-0-10: north pitch: 112.5 lb",
      "feed 30-0-10: verge: 4.5 lb",
      "feed 30-0-10: each pass: 1.25 lb/1000 ft2",
      "feed 30-0-10: packages: 3 count",
      "dollar spot: spray to mix: 28.8 gal",
      "dollar spot: loads: 3 count",
      // 12 gal at 2 gal per 1,000 sq ft: 6,000 sq ft
      "dollar spot: area that one full tank covers: 6 1000 ft2",
      "wetting agent: in all: 57.6 fl oz",
      "wetting agent: load 1: 24 fl oz",
      "wetting agent: load 2: 24 fl oz",
      "wetting agent: load 3: 9.6 fl oz",
      "wetting agent: packages: 1 count",
      "iprodione 50 % WP: in all: 1.8 lb",
      "iprodione 50 % WP: load 1: 0.75 lb",
      "iprodione 50 % WP: load 2: 0.75 lb",
      "iprodione 50 % WP: load 3: 0.3 lb",
      "iprodione 50 % WP: packages: 1 count",
      "patch: spray to mix: 8 gal",
      "patch: loads: 1 count",
      "patch: area that one full tank covers: 6 1000 ft2",
      "thiophanate-methyl 50 % in packets: in all: 1 lb",
      "thiophanate-methyl 50 % in packets: load 1: 1 lb",
      "thiophanate-methyl 50 % in packets: packages: 1 count",
    ]);
    const { type, version, title, units, notExplained } = workingOf("us");
    expect([type, version, title, units, notExplained]).toEqual([
      "workOrderWorking",
      1,
      "Alder Bank Park: fall round",
      "US",
      [],
    ]);
  });

  it("in metric units", () => {
    expect(figures("metric")).toEqual([
      "feed 20-2-8: product per area: 180 kg/ha",
      "feed 20-2-8: in all: 40.619 kg",
      "feed 20-2-8: lawn: 22.619 kg",
      "feed 20-2-8: meadow: 18 kg",
      "feed 20-2-8: each pass: 60 kg/ha",
      "feed 20-2-8: packages: 3 count",
      "weeds: spray to mix: 93.265 L",
      "weeds: loads: 3 count",
      "weeds: area that one full tank covers: 0.1 ha",
      "trinexapac-ethyl 250 g/L EC: in all: 186.53 mL",
      "trinexapac-ethyl 250 g/L EC: load 1: 62.177 mL",
      "trinexapac-ethyl 250 g/L EC: load 2: 62.177 mL",
      "trinexapac-ethyl 250 g/L EC: load 3: 62.177 mL",
      "trinexapac-ethyl 250 g/L EC: packages: 1 count",
      "florasulam 25 % WG: in all: 0.0058291 kg",
      "florasulam 25 % WG: load 1: 0.001943 kg",
      "florasulam 25 % WG: load 2: 0.001943 kg",
      "florasulam 25 % WG: load 3: 0.001943 kg",
      "florasulam 25 % WG: packages: 1 count",
    ]);
    expect(workingOf("metric").units).toBe("metric");
    expect(workingOf("both").units).toBe("US");
  });

  it("line by line, under the name of its figure", () => {
    const [first] = workingOf("us").derivations;
    expect(derivationText(first as never).split("\n")).toEqual([
      "feed 30-0-10: product per area",
      "T = 0.75 lb N/1,000 ft² (nitrogen wanted)",
      "a = 30 % w/w (nitrogen in the product)",
      "R = T × 100 ÷ a",
      "R = (0.75 lb N/1,000 ft²) × 100 ÷ (30 % w/w)",
      "R = 2.5 lb product/1,000 ft²",
      "2.5 lb product/1,000 ft² needs no rounding",
    ]);
  });

  it("tells a figure of the order that the formula does not give", () => {
    const order = workOrder(JSON.parse(read("tests/plan/sheet/whole-us.json")) as Job);
    const changed = JSON.parse(JSON.stringify(order));
    changed.spreads[0].amount.value = 118;
    const { derivations, notExplained } = explainWorkOrder(changed);
    expect(notExplained).toContain(
      "feed 30-0-10: in all: the figure in the order differs from rate times area.",
    );
    expect(derivations.map(({ title }) => title)).not.toContain("feed 30-0-10: in all");
  });
});
