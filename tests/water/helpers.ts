import { expect } from "vitest";
import { quantity } from "../../src/quantity/index.js";

/** A call as plain JavaScript makes it: the types are not asked. */
export const untyped = (call: unknown, input: unknown) => (): unknown =>
  (call as (input: unknown) => unknown)(input);

export const close = (value: number, wanted: number, relative = 1e-12): void => {
  expect(Math.abs(value - wanted), `${value} beside ${wanted}`).toBeLessThanOrEqual(
    relative * Math.max(Math.abs(wanted), 1e-300),
  );
};

export const mm = (value: number) => quantity(value, "mm");
export const inch = (value: number) => quantity(value, "in");
export const gpm = (value: number) => quantity(value, "gal/min", "water");
export const min = (value: number) => quantity(value, "min");
export const percent = (value: number) => quantity(value, "%");
export const inPerHour = (value: number) => quantity(value, "in/h");
export const mmPerHour = (value: number) => quantity(value, "mm/h");
export const celsius = (value: number) => quantity(value, "°C");
