import { expectQuantity, outOfRange } from "../../quantity/index.js";

// A bound that is chosen here, above any water: beyond it a figure is in uS/cm, which are a thousand to the dS/m.
const most = 300;

/** A conductivity of water or soil, in dS/m. */
export const conductivityAt = (
  input: unknown,
  path: string,
  bound: "non-negative" | "positive" = "non-negative",
): number => {
  const value = expectQuantity(input, { dimension: "conductivity", of: "none", bound }, path).in("dS/m");
  return value > most
    ? outOfRange(
        path,
        input,
        { max: most, unit: "dS/m" },
        "{}: a report in uS/cm prints a thousand times the figure in dS/m",
      )
    : value;
};
