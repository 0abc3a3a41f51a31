import { quantity } from "../../src/quantity/index.js";
import { type SpreadPattern, spreadPattern } from "../../src/spread/index.js";

export const ft = (value: number) => quantity(value, "ft");
export const m = (value: number) => quantity(value, "m");
export const lb = (value: number) => quantity(value, "lb", "product");
export const perThousand = (value: number) => quantity(value, "lb/1000 ft2", "product");
export const percent = (value: number) => quantity(value, "%");

/** A pattern of pans one meter apart. */
export const row = (catches: readonly number[], left: number = (catches.length - 1) / 2): SpreadPattern =>
  spreadPattern({ catches, unit: "g", pans: { spacing: m(1), left } });
