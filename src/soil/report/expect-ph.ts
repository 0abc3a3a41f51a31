import { expectNumber } from "../../quantity/index.js";

/** Takes the pH of a soil: those of soils that carry turf lie between 3 and 10.5, and a slip lies outside. */
export const expectSoilPH = (input: unknown, path: string): number =>
  expectNumber(input, path, { min: 3, max: 10.5 });

/** Takes the pH of a soil in a buffer, which starts between 6.6 and 8.0. */
export const expectBufferPH = (input: unknown, path: string): number =>
  expectNumber(input, path, { min: 3, max: 8.5 });

/** A percentage of a whole, as printed. */
export const expectPercent = (input: unknown, path: string, max = 100): number =>
  expectNumber(input, path, { min: 0, max });

/** A number for a sentence: four digits. */
export const short = (value: number): number => Number(value.toPrecision(4));
