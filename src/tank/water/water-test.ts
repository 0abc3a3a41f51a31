import { checks, expectNumber, fail, type Quantity, quantity } from "../../quantity/index.js";
import type { WaterIons } from "./ammonium-sulfate.js";
import { carbonateOf, hardnessFromIons } from "./hardness.js";
import { inWater } from "./in-water.js";
import type { WaterTest } from "./water-types.js";

/** A water test, read and checked. */
export interface ReadWater {
  readonly pH: number | undefined;
  /** As tested, or from calcium and magnesium. */
  readonly hardness: Quantity<"mass/volume", "hardness as CaCO3"> | undefined;
  /** mg/L of HCO3. */
  readonly bicarbonate: number | undefined;
  /** As printed, and what calcium and magnesium each make of it, in mg/L as CaCO3. */
  readonly stated: number | undefined;
  readonly fromCalcium: number | undefined;
  readonly fromMagnesium: number | undefined;
  readonly ions: WaterIons;
  readonly anyIon: boolean;
}

const ionNames = ["K", "Na", "Ca", "Mg", "Fe"] as const;
const fields: readonly string[] = [...ionNames, "pH", "hardness", "HCO3"];

/**
 * Takes a water test at the door of a formula, or throws with all that is wrong with it. A field that is
 * not known is a problem too: `ph` for `pH` would go unread.
 *
 * @param input - `pH`, `hardness`, `HCO3`, `K`, `Na`, `Ca`, `Mg`, `Fe`, as far as tested
 * @param path - what to call it in a message
 * @throws RatewrightError `missing`, `type` (an unknown field), `range`, `not-finite`, `unit/mismatch`,
 *   `substance/mismatch`
 *
 * @example
 * ```ts
 * import { expectWaterTest, quantity } from "ratewright";
 * const water = expectWaterTest({ Ca: quantity(80, "mg/L", "Ca"), Mg: quantity(20, "mg/L", "Mg") }, "water");
 * Number(water.hardness?.in("mg/L").toFixed(1)); // => 282.1
 * water.pH; // => undefined
 * ```
 */
export const expectWaterTest = (input: unknown, path: string): ReadWater => {
  if (input === undefined || input === null) return fail("missing", path, input, "a test of the water");
  if (typeof input !== "object" || Array.isArray(input))
    return fail("type", path, input, "a test of the water");
  const test = input as WaterTest;
  const door = checks();
  for (const name of Object.keys(test)) {
    if (fields.includes(name)) continue;
    const like = fields.find((field) => field.toLowerCase() === name.toLowerCase());
    door.run(() =>
      fail("type", `${path}.${name}`, name, `a field of a water test: ${fields.join(", ")}`, {
        ...(like !== undefined && { suggestion: like }),
      }),
    );
  }
  const pH =
    test.pH === undefined
      ? undefined
      : door.run(() => expectNumber(test.pH, `${path}.pH`, { min: 0, max: 14 }));
  const inTest: Partial<Record<(typeof ionNames)[number], number | undefined>> = {};
  for (const ion of ionNames) {
    if (test[ion] !== undefined) inTest[ion] = door.run(() => inWater(test[ion], ion, `${path}.${ion}`));
  }
  const bicarbonate =
    test.HCO3 === undefined ? undefined : door.run(() => inWater(test.HCO3, "HCO3", `${path}.HCO3`));
  const stated =
    test.hardness === undefined
      ? undefined
      : door.run(() => inWater(test.hardness, "hardness as CaCO3", `${path}.hardness`));
  door.done();
  const { Ca, Mg } = test;
  const hardnessBy = (ion: "Ca" | "Mg"): number | undefined =>
    inTest[ion] === undefined ? undefined : inTest[ion] * carbonateOf(ion);
  return {
    pH,
    hardness:
      stated !== undefined
        ? quantity(stated, "mg/L", "hardness as CaCO3")
        : Ca !== undefined && Mg !== undefined
          ? hardnessFromIons({ Ca, Mg })
          : undefined,
    bicarbonate,
    stated,
    fromCalcium: hardnessBy("Ca"),
    fromMagnesium: hardnessBy("Mg"),
    ions: test,
    anyIon: ionNames.some((ion) => test[ion] !== undefined),
  };
};
