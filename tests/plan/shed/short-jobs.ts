import type { Job } from "../../../src/plan/index.js";
import { smallJob } from "../helpers.js";

// Short jobs on one lawn, so that one thing is seen at a time.

export const product = (value: number, unit: string) => ({ value, unit, of: "product" });
export const lawn = (ft2: number): Job["site"] => ({
  name: "Lawn",
  parts: [{ shape: "measured", area: { value: ft2, unit: "ft2" } }],
});
export const liquid = (more: object = {}) =>
  ({ id: "wetter", form: "liquid", formulation: "surfactant", ...more }) as Job["products"][number];
export const sprayJob = (
  ft2: number,
  products: Job["products"],
  rates: readonly object[],
  more: object = {},
): Job => ({
  ...smallJob({
    site: lawn(ft2),
    products,
    sprayer: {
      tank: { value: 10, unit: "gal" },
      applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" },
      ...more,
    },
  }),
  treatments: rates.map((rate, i) => ({
    id: `s${i}`,
    method: "spray" as const,
    mix: products.map(({ id }) => ({ product: id, rate: rate as never })),
  })),
});
export const oz3 = product(3, "fl oz/1000 ft2");
