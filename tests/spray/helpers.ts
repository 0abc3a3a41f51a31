import { quantity, RatewrightError } from "../../src/quantity/index.js";

/** The problems of a call, as `code path`; none where it went through. */
export const failures = (run: () => unknown): string[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof RatewrightError) return error.problems.map(({ code, path }) => `${code} ${path}`);
    throw error;
  }
  return [];
};

export const mph = (value: number) => quantity(value, "mi/h");
export const inches = (value: number) => quantity(value, "in");
export const gpm = (value: number) => quantity(value, "gal/min", "spray");
export const gpa = (value: number) => quantity(value, "gal/acre", "spray");
export const psi = (value: number) => quantity(value, "psi");
export const percent = (value: number) => quantity(value, "%");
export const ounces = (value: number) => quantity(value, "fl oz", "water");
export const seconds = (value: number) => quantity(value, "s");
