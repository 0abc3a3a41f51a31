import { fail } from "../errors/errors.js";
import { ratioOf } from "../unit/units.js";

/** A number of one unit in another unit of the same dimension. */
export const converted = (value: number, from: string, to: string, path = "value"): number => {
  const ratio = ratioOf(from, to, "unit");
  const found = ((value - ratio.from) * ratio.top) / ratio.bottom + ratio.to;
  return Number.isFinite(found)
    ? found
    : fail("not-finite", path, { value, unit: from }, `an amount that is a finite number of ${to}`);
};
