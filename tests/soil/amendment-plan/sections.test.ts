import { describe, expect, it } from "vitest";
import { mg, of, onlyLime, planOf, report, water } from "./practice-field.js";

const clemson = "CEC calculations, Clemson University Agricultural Service Laboratory";
const use = "use plus guideline less test, Mehlich 3";
const sheet = "Minimum Levels for Sustainable Nutrition Soil Guidelines, reference sheet";
const told = [
  // 540 / 200.39 + 62 / 121.525 + 42 / 390.983 + 40 / 229.898 + 4.6
  ["soil", "exchange capacity", "8.086 meq/100 g", "summation", clemson],
  ["soil", "base saturation", "43.11 %", "summation", clemson],
  [
    "lime",
    "lime needed, as CaCO3 equivalent",
    "110 lb/1000 ft2",
    "Mehlich buffer, Pennsylvania turf",
    "Lime recommendations - turf",
  ],
  [
    "lime",
    "lime at hand, ground-limestone",
    "122 lb/1000 ft2, 9760 lb in all",
    "by CCE, 90.16 %",
    "Commercial Turf - Maintain, Pennsylvania State University: rate times 100 over CCE",
  ],
  [
    "lime",
    "apply on 2026-09-15",
    "61 lb/1000 ft2",
    "equal parts of at most 100 lb/1000 ft2",
    "the note of the laboratory",
  ],
  [
    "lime",
    "apply on 2027-03-15",
    "61 lb/1000 ft2",
    "equal parts of at most 100 lb/1000 ft2",
    "the note of the laboratory",
  ],
  // 28.09 lb/1000 ft2 of soil by 1e6 for each ppm
  [
    "nutrients",
    "P2O5 for the season",
    "1.052 lb/1000 ft2 (use 0.375 lb/1000 ft2 + guideline 0.5899 lb/1000 ft2 - test 0.5057 lb/1000 ft2, as P)",
    use,
    sheet,
  ],
  [
    "nutrients",
    "K2O for the season",
    "1.638 lb/1000 ft2 (use 1.5 lb/1000 ft2 + guideline 1.039 lb/1000 ft2 - test 1.18 lb/1000 ft2, as K)",
    use,
    sheet,
  ],
  [
    "water",
    "dissolved salts",
    "588.8 mg/L, good",
    "640 mg/L per dS/m",
    "Turf irrigation water quality: a concise guide",
  ],
  [
    "water",
    "sodium adsorption ratio",
    "2.96",
    "Na / sqrt((Ca + Mg) / 2), meq/L",
    "US Salinity Laboratory 1954, Agriculture Handbook 60, as a turf resource guide has it",
  ],
  [
    "water",
    "residual sodium carbonate",
    "-0.1755 meq/L, hazard low",
    "(HCO3 + CO3) - (Ca + Mg)",
    "Salinity Management Guide: bicarbonate and carbonate",
  ],
  // 0.92 / (15 - 0.92)
  [
    "water",
    "leaching requirement",
    "6.534 %",
    "average root zone",
    "Water quality for agriculture (FAO Irrigation and Drainage Paper 29)",
  ],
  [
    "water",
    "nitrogen in the water of the season",
    "0.2538 lb/1000 ft2",
    "concentration times depth",
    "definition",
  ],
  [
    "water",
    "bicarbonate in the water of the season, as CaCO3",
    "12.19 lb/1000 ft2",
    "concentration times depth",
    "definition",
  ],
];

describe("the sections of a plan", () => {
  const plan = planOf();

  it("tells each figure with its method and its source", () => {
    const figures = plan.figures.map(({ section, of: what, value, method, source }) => [
      section,
      what,
      value,
      method,
      typeof source === "string" ? source : source.title,
    ]);
    expect(figures).toEqual(told);
  });

  it("says what was checked and what was not", () => {
    expect(plan.checked).toEqual([
      "exchange capacity by summation",
      "lime by Mehlich buffer, Pennsylvania turf",
      "P by Mehlich 3",
      "K by Mehlich 3",
      "exchangeable sodium is 2.15 %, at or below the target: no gypsum is called for",
      "cations against anions of the water",
    ]);
    expect(plan.notChecked).toEqual([
      "S: not in the report",
      "phosphorus and nitrogen rules of the place, and what clippings left on the turf give back",
      "potassium in the water, 0.3746 lb/1000 ft2 in the season: it is not credited",
      "salt of the soil, micronutrients, weather, the turf itself and all other rules",
    ]);
    expect(plan.targets.map((one) => one.of)).toEqual(["N", "P2O5", "K2O"]);
    expect(plan.cautions.map(({ code }) => code)).toEqual([
      "caution/label-and-laboratory",
      "caution/amendment-dust",
      "caution/keep-off-water",
      "caution/lime-on-leaves",
      "caution/sodium-hazard",
    ]);
  });

  it("says what no convention was stated for, and what the report lacks", () => {
    const { P, ...elements } = report.elements;
    expect(P).toBeDefined();
    const none = planOf({
      report: { water: undefined, acidity: undefined, elements },
      conventions: { lime: undefined, nutrients: undefined, sodium: undefined, leaching: undefined },
    });
    expect(none.notChecked).toEqual([
      "exchange capacity: it takes calcium, magnesium, potassium and the acidity of the report",
      "lime: no convention was stated",
      "nutrients: no guideline was stated",
      "sodium: no target was stated",
      "irrigation water: not in the report",
      "salt of the soil, micronutrients, weather, the turf itself and all other rules",
    ]);
    expect([none.figures, none.findings, none.checked, none.gypsum, none.water]).toEqual([
      [],
      [],
      [],
      null,
      null,
    ]);
    const sodium = planOf({ report: { acidity: undefined }, conventions: { lime: undefined } });
    expect(sodium.notChecked).toContain("sodium: it takes the exchange capacity and sodium of the report");
  });

  it("says what a water of few figures leaves out", () => {
    const few = planOf({ report: { water: { Cl: water.Cl } }, site: { irrigation: undefined } });
    expect(few.notChecked.slice(-6, -1)).toEqual([
      "ion balance: it takes Ca, Mg, Na, HCO3, Cl and SO4",
      "sodium adsorption ratio: it takes Na, Ca and Mg",
      "residual carbonate: it takes HCO3, Ca and Mg",
      "leaching: it takes the conductivity of the water and a stated level of the soil",
      "what the water supplies: the season's irrigation is not stated",
    ]);
    expect(few.figures.filter(({ section }) => section === "water")).toEqual([]);
    expect(few.nitrogen.value).toBe(3);
    expect(few.checked).not.toContain("cations against anions of the water");
  });

  it("water that brings more nitrogen than was planned leaves none, and says so", () => {
    const rich = planOf({ site: { nitrogen: of(0.25, "lb/1000 ft2", "N") } });
    expect(rich.nitrogen.value).toBe(0);
    // Half of so little nitrogen is less potassium than the soil holds beyond its guideline.
    expect(rich.targets.map((one) => one.of)).toEqual(["P2O5"]);
    expect(rich.findings.at(-1)).toMatchObject({
      code: "soil/water-nitrogen-covers",
      path: "report.water",
      params: { brought: expect.closeTo(0.2538, 4), unit: "lb/1000 ft2" },
    });
  });

  it("gypsum stands with what it replaces", () => {
    const sodic = planOf({ report: { elements: { ...report.elements, Na: mg(400, "Na") } } });
    const [figure] = sodic.figures.filter(({ section }) => section === "sodium");
    expect(figure?.of).toBe("gypsum");
    // 1.7399 meq of 9.652 are 18.03 %; 13.03 % of the capacity are 1.257 meq/100 g.
    expect(figure?.method).toBe("1.257 meq/100 g of sodium to replace, field factor 1.25, purity 90 %");
    expect(sodic.checked).toContain("exchangeable sodium");
    expect(sodic.notChecked).toEqual(
      expect.arrayContaining([
        "gypsum on standing turf: no published maximum for one application was found",
        "drainage: gypsum does nothing unless water can carry the sodium below the roots",
      ]),
    );
  });

  it("iron and free lime come with an alkaline soil", () => {
    const at = (pH: number, freeLime: boolean) => planOf({ report: { pH, freeLime } });
    const iron = (pH: number) => at(pH, false).cautions.some(({ code }) => code === "caution/iron-stains");
    expect([iron(6.9), iron(7)]).toEqual([false, true]);
    const sulfur = (pH: number, freeLime = true) =>
      at(pH, freeLime).notChecked.filter((line) => line.startsWith("sulfur"));
    expect(sulfur(7)).toEqual([]);
    expect(sulfur(7.1, false)).toEqual([]);
    expect(sulfur(7.1)).toEqual([
      "sulfur: with free lime in the soil no rate for turf lowers the pH in a useful time",
    ]);
    expect(at(7, false).checked).toContain("soil pH 7 is at or above the target of 7: no lime is called for");
    expect(at(6.9, false).lime).not.toBeNull();
  });

  it("sodium that free lime may hide is told from pH 7.3 on", () => {
    const hidden = (pH: number) =>
      planOf({ report: { pH } }).notChecked.filter((line) => line.startsWith("sodium hidden"));
    expect(hidden(7.2)).toEqual([]);
    expect(hidden(7.3)).toEqual([
      "sodium hidden by free lime: at pH 7.3 the exchange capacity by summation may be too high, and the sodium percentage too low; a saturation extract shows it (sodiumPercentageFromRatio)",
    ]);
  });
});

describe("lime by what the report has", () => {
  it("the acidity by volume of North Carolina goes before its buffer pH", () => {
    const method = "Mehlich buffer, North Carolina";
    const quality = { equalToTon: of(2000, "lb", "product") };
    const material = { id: "lime-a", quality };
    const most = { amount: of(10, "US ton/acre", "product"), source: "the laboratory" };
    const needed = (reported: object) =>
      onlyLime({ method, targetPH: 6, material, most }, reported).lime?.requirement.rate.in("US ton/acre");
    // 2.4 (6 - 5.4) / (6.6 - 5.4), and with 4 (6.6 - 6.3) = 1.2 half of that
    expect(needed({ acidityPerVolume: 2.4 })).toBeCloseTo(1.2, 12);
    expect(needed({ bufferPH: 6.3 })).toBeCloseTo(0.6, 12);
    expect(needed({ bufferPH: 6.3, acidityPerVolume: 2.4 })).toBeCloseTo(1.2, 12);
  });

  it("a buffer stands for the acidity that the report does not print", () => {
    const buffered = planOf({ report: { acidity: undefined, buffer: "Adams-Evans", bufferPH: 7.6 } });
    expect(buffered.exchange?.acidity.in("meq/100 g")).toBeCloseTo(3.2, 12);
    expect(buffered.figures[0]?.method).toBe("summation, acidity by Adams-Evans");
    const byVolume = planOf({
      report: { acidity: undefined, buffer: "Mehlich, North Carolina", bufferPH: 6 },
      conventions: { lime: undefined },
    });
    expect(byVolume.exchange).toBeNull();
  });

  it("a table that does not reach leaves the rest of the plan, and says what it wants", () => {
    const beyond = planOf({ report: { acidity: of(26, "meq/100 g") } });
    expect(beyond.lime).toBeNull();
    expect(beyond.findings.find(({ code }) => code === "lime/beyond-table")).toMatchObject({
      severity: "warning",
      path: "report.acidity",
      params: { reading: "26" },
      text: 'No lime is planned: the method has no rate for a reading of 26. It wants 2 to 25.7, which is where the table reaches: beyond it take the rate that the laboratory printed, or the method "exchangeable acidity".',
    });
    expect(beyond.notChecked).toContain(
      "lime: Mehlich buffer, Pennsylvania turf has no rate for this reading",
    );
  });

  it("a depth that differs from the sampled one is told", () => {
    const note = (depth: number) =>
      onlyLime(
        { method: "Sikora buffer, Oregon", targetPH: 6.4 },
        { bufferPH: 6.2, layer: { depth: of(depth, "in"), bulkDensity: of(1.35, "g/mL", "soil") } },
      );
    // The lime of Oregon is rated by an effective value.
    const rated = (depth: number) =>
      onlyLime(
        {
          method: "Sikora buffer, Oregon",
          targetPH: 6.4,
          material: { id: "lime-a", quality: { effective: 90 } },
        },
        { bufferPH: 6.2, layer: { depth: of(depth, "in"), bulkDensity: of(1.35, "g/mL", "soil") } },
      ).notChecked.filter((line) => line.startsWith("depth"));
    expect(() => note(6)).toThrow(/conventions\.lime\.material\.quality\.effective/);
    expect(rated(6)).toEqual([]);
    expect(rated(4)).toEqual([
      "depth: Sikora buffer, Oregon is for 6 in of soil, the report sampled 4 in; limeForDepth adjusts a rate where the lime reaches another depth",
    ]);
  });
});
