import { quantity } from "../../src/quantity/index.js";

export const mph = (value: number) => quantity(value, "mi/h");
export const inches = (value: number) => quantity(value, "in");
export const gpm = (value: number) => quantity(value, "gal/min", "spray");
export const gpa = (value: number) => quantity(value, "gal/acre", "spray");
export const psi = (value: number) => quantity(value, "psi");
export const percent = (value: number) => quantity(value, "%");
export const ounces = (value: number) => quantity(value, "fl oz", "water");
export const seconds = (value: number) => quantity(value, "s");
