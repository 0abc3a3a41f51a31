import { parseQuantity } from "../../src/quantity/index.js";
import type { ConstantCheck } from "./check.js";

const act = "UK Weights and Measures Act 1985, schedule 1";
const hb44 = "NIST Handbook 44, appendix C, General Tables of Units of Measurement";

const row = (text: string, unit: "lb" | "imp gal", printed: number, source: string): ConstantCheck => ({
  room: "quantity",
  what: `1 ${text} in ${unit}`,
  printed,
  here: () => parseQuantity(`1 ${text}`, { dimension: unit === "lb" ? "mass" : "volume" }).in(unit as never),
  source,
  reached: "from memory",
});

/** Measures that are read from text as multiples of a unit. */
export const imperialChecks: readonly ConstantCheck[] = [
  row("stone", "lb", 14, act),
  row("long cwt", "lb", 112, act),
  row("short cwt", "lb", 100, hb44),
  row("long ton", "lb", 2240, hb44),
  row("imp pt", "imp gal", 0.125, act),
  row("imp qt", "imp gal", 0.25, act),
];
