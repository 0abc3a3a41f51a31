import { quantity } from "../../../src/quantity/index.js";

// Worked by hand. A row of five cells of 10 mm with the first one covered: the edge has 10, 20, 30 and 40 mm to go.

export const mm = (value: number) => quantity(value, "mm");
export const percent = (value: number) => quantity(value, "%");
export const source = "made up for the test";
export const rate = (low: number, mid: number, high: number, unit: "mm/d" | "in/d" = "mm/d") => ({
  low: quantity(low, unit),
  mid: quantity(mid, unit),
  high: quantity(high, unit),
  source: "the crew",
});
export const growth = { potential: percent(100), source };
export const rowOfFive = { patches: { covered: [1, 0, 0, 0, 0], columns: 5, cell: mm(10) } };
export const never = [
  "plants that die, wash out or dry out before they root",
  "weeds, disease, insects, wear, mowing height and frost damage",
  "grass that spreads faster one way than another",
  "density: covered ground is not yet turf that can be played on",
  "edges: ground along a border has plants on one side only",
];
export const noFactor = (name: string) => `${name}: no factor given, the stated rate counts in full`;
export const noRooting = "time to root: none given, the spread counts from the day after planting";
