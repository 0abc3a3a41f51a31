import { numberIn } from "../../quantity/index.js";

interface Length {
  readonly value: number;
  readonly unit: string;
}

/** Four figures show a distance as a tape gives it. */
export const tidy = (value: number): number => Number(value.toPrecision(4));

/** `25 ft`, and beside a fact in another unit `25 ft (7.62 m)`: who measured in meters compares in meters. */
export const lengthText = (length: Length, fact?: Length): string => {
  const own = `${tidy(length.value)} ${length.unit}`;
  return fact === undefined || fact.unit === length.unit
    ? own
    : `${own} (${tidy(numberIn(length, fact.unit))} ${fact.unit})`;
};
