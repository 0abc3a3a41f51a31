import {
  allOf,
  expectFields,
  expectNumber,
  expectRecord,
  expectText,
  fail,
  type Quantity,
  quantity,
} from "../../quantity/index.js";
import type { WaterIons } from "./ammonium-sulfate.js";
import { carbonateOf } from "./hardness.js";
import { inWater } from "./in-water.js";

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
const fields = [...ionNames, "pH", "hardness", "HCO3"] as const;

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
  const at = expectText(path, "path", "how an error names the test");
  if (input === undefined || input === null) return fail("missing", at, input, "a test of the water");
  const test: { readonly [K in (typeof fields)[number]]?: unknown } = expectRecord(
    input,
    at,
    "a test of the water",
  );
  const ion = (name: (typeof ionNames)[number]): number | undefined =>
    test[name] === undefined ? undefined : inWater(test[name], name, `${at}.${name}`);
  const read = allOf({
    known: () => expectFields(test, fields, at),
    pH: () => (test.pH === undefined ? undefined : expectNumber(test.pH, `${at}.pH`, { min: 0, max: 14 })),
    K: () => ion("K"),
    Na: () => ion("Na"),
    Ca: () => ion("Ca"),
    Mg: () => ion("Mg"),
    Fe: () => ion("Fe"),
    bicarbonate: () => (test.HCO3 === undefined ? undefined : inWater(test.HCO3, "HCO3", `${at}.HCO3`)),
    stated: () =>
      test.hardness === undefined ? undefined : inWater(test.hardness, "hardness as CaCO3", `${at}.hardness`),
  });
  const { pH, bicarbonate, stated } = read;
  const hardnessBy = (name: "Ca" | "Mg"): number | undefined =>
    read[name] === undefined ? undefined : read[name] * carbonateOf(name);
  const [fromCalcium, fromMagnesium] = [hardnessBy("Ca"), hardnessBy("Mg")];
  const fromIons =
    fromCalcium === undefined || fromMagnesium === undefined ? undefined : fromCalcium + fromMagnesium;
  const hardness = stated ?? fromIons;
  return {
    pH,
    hardness: hardness === undefined ? undefined : quantity(hardness, "mg/L", "hardness as CaCO3"),
    bicarbonate,
    stated,
    fromCalcium,
    fromMagnesium,
    ions: ionsOf(read),
    anyIon: ionNames.some((name) => read[name] !== undefined),
  };
};

/** The ions that were tested, as quantities of their own. */
const ionsOf = (read: Readonly<Record<(typeof ionNames)[number], number | undefined>>): WaterIons => ({
  ...(read.K !== undefined && { K: quantity(read.K, "mg/L", "K") }),
  ...(read.Na !== undefined && { Na: quantity(read.Na, "mg/L", "Na") }),
  ...(read.Ca !== undefined && { Ca: quantity(read.Ca, "mg/L", "Ca") }),
  ...(read.Mg !== undefined && { Mg: quantity(read.Mg, "mg/L", "Mg") }),
  ...(read.Fe !== undefined && { Fe: quantity(read.Fe, "mg/L", "Fe") }),
});
