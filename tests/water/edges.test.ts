import { describe, expect, test } from "vitest";
import { quantity } from "../../src/quantity/index.js";
import {
  availableWater,
  dailyReferenceEvapotranspiration,
  distributionUniformity,
  hargreavesEvapotranspirationsMmPerD,
  turfUse,
} from "../../src/water/index.js";
import { complaint, problemsOf } from "../errors.js";

describe("what is missing or beside its kind", () => {
  test("a wind without a speed", () => {
    for (const speed of [undefined, null])
      expect(
        complaint(() =>
          dailyReferenceEvapotranspiration({
            min: quantity(10, "°C"),
            max: quantity(25, "°C"),
            moisture: { vaporPressure: quantity(1, "kPa") },
            sunlight: { solar: quantity(20, "MJ/m2/d") },
            wind: { speed, height: quantity(2, "m") },
            latitude: quantity(40, "deg"),
            elevation: quantity(0, "m"),
            date: "2026-06-21",
          } as never),
        ),
      ).toBe("missing wind.speed");
  });

  test("a layer without a capacity", () => {
    for (const capacity of [undefined, null])
      expect(
        complaint(() => availableWater({ layers: [{ thickness: quantity(8, "in"), capacity }] } as never)),
      ).toBe("missing layers[0].capacity");
  });

  test("catches may be depths, volumes of water or depths per time", () => {
    const rates = [10, 20, 30, 40].map((value) => quantity(value, "mm/h"));
    // the lowest of four, 10, by the mean, 25
    expect(distributionUniformity({ catches: rates }).in("%")).toBe(40);
    const masses = [1, 2, 3, 4].map((value) => quantity(value, "kg"));
    expect(complaint(() => distributionUniformity({ catches: masses } as never))).toBe(
      "unit/mismatch catches[0]",
    );
  });

  test("a day without reference evapotranspiration has no use; dew is refused", () => {
    expect(turfUse({ reference: quantity(0, "mm/d"), coefficient: 0.8 }).value).toBe(0);
    expect(complaint(() => turfUse({ reference: quantity(-0.1, "mm/d"), coefficient: 0.8 }))).toBe(
      "range reference",
    );
  });

  test("a mean below -17.8 °C is told with that bound", () => {
    const of = (value: number) => Float64Array.of(value);
    const [problem] = problemsOf(() =>
      hargreavesEvapotranspirationsMmPerD({
        tMinC: of(-30),
        tMaxC: of(-20),
        latitudeDeg: of(45),
        dayOfYear: of(20),
      }),
    );
    expect(problem?.path).toBe("tMaxC[0]");
    expect(problem?.params).toMatchObject({ min: -17.8, unit: "°C" });
  });
});
