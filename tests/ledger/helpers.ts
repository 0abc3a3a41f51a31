import type { LedgerEntry } from "../../src/ledger/index.js";

/** An entry with every field. */
export const full: LedgerEntry = {
  id: "2026-007",
  date: "2026-05-26",
  start: "07:30-05:00",
  end: "08:15-05:00",
  parts: ["bowling green", "green; upper \\ lower"],
  area: { value: 14_400, unit: "ft2" },
  product: "regulator-a",
  productName: 'regulator "A", 120 g/L EC',
  form: "liquid",
  density: { value: 1.02, unit: "kg/L" },
  contents: [{ value: 120, unit: "g/L", of: "ai:trinexapac-ethyl/product" }],
  amount: { value: 1.8, unit: "fl oz", of: "product" },
  treatment: "regulate the lawn",
  target: "clippings",
  method: "boom sprayer",
  site: "bowling green",
  location: "Alder Bank Park",
  registrationNumber: "0000-00",
  activeIngredient: "trinexapac-ethyl",
  restrictedUse: false,
  lot: "L-7",
  applicator: "A. Crew",
  certificate: "C-1",
  carrierVolume: { value: 14.4, unit: "gal", of: "spray" },
  reEntryHours: 12,
  weather: {
    wind: { value: 5.5, unit: "mi/h" },
    windFrom: "SW",
    temperature: { value: 68, unit: "°F" },
    humidity: { value: 55, unit: "%" },
    sky: "overcast",
  },
  note: "first line\nsecond line",
};
/** An entry of a fertilizer, by its amount. */
export const fed: LedgerEntry = {
  id: "2026-001",
  date: "2026-04-20",
  parts: ["north pitch"],
  area: { value: 5518.44, unit: "m2" },
  product: "feed-a",
  analysis: "24-0-11",
  slowNitrogen: { value: 12, unit: "% w/w", of: "N:slow/product" },
  amount: { value: 101.1, unit: "kg" },
};
/** An entry of what went down per area. */
export const stated: LedgerEntry = {
  id: "2026-002",
  date: "2026-04-21",
  supplies: [
    { value: 0.4, unit: "lb/1000 ft2", of: "N" },
    { value: 0.1, unit: "lb/1000 ft2", of: "N:slow" },
    { value: 0.1, unit: "lb/1000 ft2", of: "P2O5" },
  ],
};
