import { ratioOf } from "../unit/units.js";
import { finite } from "./expected.js";

/** A number of one unit in another unit of the same dimension. */
export const converted = (value: number, from: string, to: string): number => {
  const ratio = ratioOf(from, to, "unit");
  return finite(((value - ratio.from) * ratio.top) / ratio.bottom + ratio.to, "value", value);
};
