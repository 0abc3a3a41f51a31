import { amendmentPlan } from "../../../src/soil/index.js";

// The practice field of the example: its report, its site and its conventions, as JSON has them.

export const of = (value: number, unit: string, substance = "none") => ({ value, unit, of: substance });
export const mg = (value: number, name: string) => of(value, "mg/kg", `${name}/soil`);
export const water = {
  Ca: of(52, "mg/L", "Ca"),
  Mg: of(18, "mg/L", "Mg"),
  Na: of(97, "mg/L", "Na"),
  K: of(6, "mg/L", "K"),
  HCO3: of(238, "mg/L", "HCO3"),
  Cl: of(96, "mg/L", "Cl"),
  SO4: of(72, "mg/L", "SO4"),
  NO3: of(18, "mg/L", "NO3"),
  conductivity: of(0.92, "dS/m"),
};
export const report = {
  laboratory: "an invented county laboratory",
  date: "2026-03-02",
  extractant: "Mehlich 3",
  layer: { depth: of(4, "in"), bulkDensity: of(1.35, "g/mL", "soil") },
  pH: 5.4,
  acidity: of(4.6, "meq/100 g"),
  elements: { P: mg(18, "P"), K: mg(42, "K"), Ca: mg(540, "Ca"), Mg: mg(62, "Mg"), Na: mg(40, "Na") },
  freeLime: false,
  water,
};
export const site = {
  name: "practice field A",
  area: of(80_000, "ft2"),
  standing: true,
  nitrogen: of(3, "lb/1000 ft2", "N"),
  grass: "cool-season grass",
  irrigation: of(12, "in"),
};
export const lime = {
  method: "Mehlich buffer, Pennsylvania turf",
  targetPH: 7,
  material: { id: "ground-limestone", quality: { CCE: 92, moisture: 2 } },
  most: { amount: of(100, "lb/1000 ft2", "product"), source: "the note of the laboratory" },
  first: "2026-09-15",
  monthsApart: 6,
};
export const conventions = {
  lime,
  nutrients: { guideline: "minimum levels, Mehlich 3", list: ["P", "K", "S"] },
  sodium: { targetPercent: of(5, "%"), purity: 90 },
  leaching: { method: "average root zone", soil: of(3, "dS/m") },
};
export const planOf = (change: { report?: object; site?: object; conventions?: object } = {}) =>
  amendmentPlan(
    { ...report, ...change.report } as never,
    { ...site, ...change.site } as never,
    { ...conventions, ...change.conventions } as never,
  );
export const onlyLime = (more: object, reported: object = {}) =>
  planOf({
    report: reported,
    conventions: { lime: { ...lime, ...more }, nutrients: undefined, sodium: undefined, leaching: undefined },
  });
