import { expectFields, type Finding } from "../../quantity/index.js";
import {
  type AmmoniumSulfateRate,
  ammoniumSulfateFromHardness,
  ammoniumSulfateMinimum,
} from "./ammonium-sulfate.js";
import { type HardnessSchemeId, hardnessClass, hardnessSchemes } from "./hardness.js";
import { type AlkalineHydrolysis, alkalineHydrolysis } from "./hydrolysis.js";
import {
  hardnessFindings,
  hydrolysisFindings,
  notCheckedInHardWater,
  pHFindings,
  sulfateFindings,
} from "./water-findings.js";
import { expectWaterInput } from "./water-input.js";
import type { ReadWater } from "./water-test.js";
import type { WaterReport, WaterReportInput } from "./water-types.js";

/**
 * The range by hardness, where it says more than the cations tested do: of a hardness that was printed,
 * with calcium and magnesium not both known. Potassium, sodium and iron, as far as tested, come on top.
 */
const rangeByHardness = ({
  hardness,
  ions: { Ca, Mg, K, Na, Fe },
}: ReadWater): { readonly min: AmmoniumSulfateRate; readonly max: AmmoniumSulfateRate } | undefined => {
  if (hardness === undefined || (Ca !== undefined && Mg !== undefined)) return undefined;
  const { min, max } = ammoniumSulfateFromHardness(hardness);
  const rest = { ...(K && { K }), ...(Na && { Na }), ...(Fe && { Fe }) };
  if (Object.keys(rest).length === 0) return { min, max };
  const { minimum } = ammoniumSulfateMinimum(rest);
  return { min: min.plus(minimum), max: max.plus(minimum) };
};

/**
 * What a water test means for a mix: hardness and its class by each list, the minimum of ammonium sulfate
 * by the cation equation, the pH against the labels and published ranges, and what alkaline water destroys
 * before the tank is empty. Hardness is taken as printed, or from calcium and magnesium; where the two
 * are both there and disagree by more than a tenth, a finding says so. Where calcium and magnesium are not
 * both tested, the minimum of ammonium sulfate is a range by the printed hardness.
 *
 * Only published thresholds and half-lives are applied; everything else is listed in `notChecked`.
 *
 * @param input - `test`, what the laboratory printed; `products` of the mix, `timeToEmpty` and the
 *   `ammoniumSulfate` in the mix (per volume), as far as known
 * @throws RatewrightError with every problem, under paths such as `test.hardness`: `missing`, `range` (a
 *   negative hardness, a pH outside 0 to 14), `not-finite`, `unit/mismatch`, `substance/mismatch`, `type`,
 *   `duplicate` (two products with one id), `conflict` (a label whose least pH is above its most)
 *
 * Source: named in each finding; see `hardnessThresholds`, `carrierPHs`, `halfLives`.
 *
 * @example
 * ```ts
 * import { quantity, waterReport } from "ratewright";
 * const report = waterReport({
 *   test: { pH: 8, hardness: quantity(25, "grain/gal", "hardness as CaCO3") },
 *   products: [{ id: "fungicide", active: "captan" }],
 *   timeToEmpty: quantity(1, "h"),
 * });
 * report.classes; // => { USGS: "very hard", Vermont: "very hard" }
 * report.hydrolysis[0]?.atEnd.map((share) => share.in("%")); // => [98, 99]
 * report.findings.map(({ code }) => code); // => ["water/hardness", "water/sulfate-range", "water/pH-alkaline", "water/hydrolysis"]
 * ```
 */
export const waterReport = (input: WaterReportInput): WaterReport => {
  expectFields(input, ["test", "products", "timeToEmpty", "ammoniumSulfate"]);
  const { water, products, timeToEmpty, sulfate } = expectWaterInput(input);
  const { pH, hardness, bicarbonate, ions, anyIon } = water;
  const checked: string[] = [];
  const notChecked: string[] = [];
  const findings: Finding[] = [];
  const range = rangeByHardness(water);
  const minimum = anyIon && range === undefined ? ammoniumSulfateMinimum(ions) : undefined;
  if (hardness === undefined)
    notChecked.push("hardness: the test gives neither it nor both calcium and magnesium");
  else {
    checked.push("hardness against published thresholds");
    findings.push(...hardnessFindings(water, products));
    notChecked.push(...notCheckedInHardWater(hardness, products));
  }
  if (bicarbonate === undefined) notChecked.push("bicarbonate: not tested");
  else {
    checked.push("bicarbonate against 500 ppm");
    if (bicarbonate >= 500) findings.push(bicarbonateFinding(bicarbonate));
  }
  if (minimum === undefined && range === undefined) {
    notChecked.push("ammonium sulfate: neither cations nor hardness are tested");
  } else {
    checked.push("ammonium sulfate against the minimum by the cation equation");
    findings.push(...sulfateFindings(minimum, range, ions, sulfate));
  }
  const hydrolysis: (AlkalineHydrolysis & { readonly product: string })[] = [];
  if (pH === undefined) notChecked.push("pH: not tested");
  else {
    checked.push("pH against the labels, as far as stated, and published ranges");
    findings.push(...pHFindings(pH, products));
    for (const { id, name = id, active } of products) {
      if (active === undefined || timeToEmpty === undefined) {
        notChecked.push(
          `breakdown of ${name} in the tank: ${active === undefined ? "no active ingredient is" : "no time until the tank is empty is"} stated`,
        );
        continue;
      }
      const loss = alkalineHydrolysis({ active, pH, time: timeToEmpty });
      if (loss === undefined) {
        notChecked.push(`breakdown of ${name} in the tank: no half-life of ${active} was read in a source`);
        continue;
      }
      hydrolysis.push({ ...loss, product: id });
      findings.push(...hydrolysisFindings(loss, name, timeToEmpty));
    }
    if (hydrolysis.length > 0) checked.push("breakdown in the tank by published half-lives");
  }
  notChecked.push(
    "what the labels say of water, temperature, alkalinity, and how the mix changes pH and hardness",
  );
  return {
    type: "water-report",
    version: 1,
    ...(hardness && {
      hardness,
      classes: Object.fromEntries(
        Object.keys(hardnessSchemes).map((id) => [id, hardnessClass(hardness, id as HardnessSchemeId)]),
      ) as Record<HardnessSchemeId, string>,
    }),
    ...(minimum && { ammoniumSulfate: minimum }),
    ...(range && { ammoniumSulfateFromHardness: range }),
    hydrolysis,
    findings,
    checked,
    notChecked,
  };
};

const bicarbonateFinding = (bicarbonate: number): Finding => ({
  code: "water/bicarbonate",
  severity: "caution",
  params: { bicarbonate, limit: 500, unit: "mg/L" },
  text: `Bicarbonate is ${Number(bicarbonate.toPrecision(3))} mg/L: from 500 it can weaken group 1 (dim) herbicides and 2,4-D amine, by this source.`,
  source: { title: "Spray water quality", publisher: "Saskatchewan Agriculture", year: 2021 },
});
