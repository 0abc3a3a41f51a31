import { expectTypeOf, test } from "vitest";
import {
  blendSaltIndex,
  burnRisk,
  compareSaltIndexes,
  type Fertilizer,
  fertilizer,
  type Injector,
  injector,
  limeForNitrogen,
  partialSaltIndex,
  potentialAcidityOfSource,
  productForConcentration,
  quickRelease,
  releasedNitrogen,
  remainingNitrogen,
  type SaltIndex,
  saltIndex,
  scaledSaltIndex,
} from "../../../src/nutrient/index.js";
import { type Quantity, quantity } from "../../../src/quantity/index.js";

const weight = saltIndex({ value: 74, scale: "by weight", source: "x" });
const unit = saltIndex({ value: 1.6, scale: "per unit", basis: "N", source: "x" });
const scaled = scaledSaltIndex(unit);

test("salt indexes of two scales do not meet", () => {
  expectTypeOf(weight).toEqualTypeOf<SaltIndex<"by weight">>();
  expectTypeOf(unit).toEqualTypeOf<SaltIndex<"per unit">>();
  expectTypeOf(scaled).toEqualTypeOf<SaltIndex<"per unit, sodium nitrate 100">>();
  expectTypeOf(blendSaltIndex([{ units: 46, partial: unit }])).toEqualTypeOf<SaltIndex<"by weight">>();
  // @ts-expect-error two scales
  compareSaltIndexes(unit, weight);
  // @ts-expect-error two scales
  compareSaltIndexes(weight, unit);
  // @ts-expect-error two scales
  compareSaltIndexes(scaled, unit);
  // @ts-expect-error by weight is not per unit
  burnRisk(weight);
  // @ts-expect-error scaled is not per unit
  blendSaltIndex([{ units: 46, partial: scaled }]);
  // @ts-expect-error per unit is not by weight
  partialSaltIndex(unit, { percent: 46, basis: "N" });
  // @ts-expect-error per unit of what
  saltIndex({ value: 1.6, scale: "per unit", source: "x" });
});

test("injectors carry their reading", () => {
  expectTypeOf(injector("1:100")).toEqualTypeOf<Injector<"1:N">>();
  expectTypeOf(injector("1+100")).toEqualTypeOf<Injector<"1+N">>();
  // @ts-expect-error a ratio has to say how it is meant
  injector("100");
});

test("substances stay apart", () => {
  const product: Fertilizer<"s"> = fertilizer({ id: "s", analysis: "20-20-20" });
  expectTypeOf(productForConcentration(quantity(200, "mg/L", "N"), product)).toEqualTypeOf<
    Quantity<"mass/volume", "product:s">
  >();
  // @ts-expect-error a mass is no concentration
  productForConcentration(quantity(200, "lb", "N"), product);
  const acidity = potentialAcidityOfSource({ source: "urea", convention: "half nitrogen credit" });
  expectTypeOf(acidity).toEqualTypeOf<Quantity<"mass/mass", "CaCO3 equivalent/N">>();
  expectTypeOf(limeForNitrogen([{ nitrogen: quantity(4, "lb/1000 ft2", "N"), acidity }])).toEqualTypeOf<
    Quantity<"mass/area", "CaCO3 equivalent">
  >();
  const perProduct = quantity(110, "% w/w", "CaCO3 equivalent/product");
  // @ts-expect-error acidity per product is not acidity per nitrogen
  limeForNitrogen([{ nitrogen: quantity(4, "lb/1000 ft2", "N"), acidity: perProduct }]);
  remainingNitrogen({
    on: "2026-05-01",
    applied: [],
    // @ts-expect-error a cap of phosphate is no cap of nitrogen
    caps: { perYear: { amount: quantity(1, "lb/1000 ft2", "P2O5"), source: "x" } },
  });
});

test("placement is required", () => {
  // @ts-expect-error without placement
  releasedNitrogen({
    applied: "2026-05-01",
    days: 7,
    temperature: { mean: quantity(20, "°C") },
    portions: [{ name: "N", nitrogen: quantity(1, "lb/1000 ft2", "N"), model: quickRelease }],
  });
});
