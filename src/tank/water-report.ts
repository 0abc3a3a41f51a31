import {
  checks,
  expectNumber,
  expectQuantity,
  expectRecord,
  type Finding,
  fail,
  type Quantity,
} from "../quantity/index.js";
import { ammoniumSulfateFromHardness, ammoniumSulfateMinimum } from "./ammonium-sulfate.js";
import { type HardnessSchemeId, hardnessClass, hardnessSchemes } from "./hardness.js";
import { type AlkalineHydrolysis, alkalineHydrolysis } from "./hydrolysis.js";
import { expectRate } from "./rate.js";
import { hardnessFindings, hydrolysisFinding, pHFindings, sulfateFindings } from "./water-findings.js";
import { expectWaterTest, type ReadWater } from "./water-test.js";
import type { WaterProduct, WaterReport, WaterReportInput } from "./water-types.js";

/** Every problem of the input, or none. */
const expectWaterInput = (
  input: WaterReportInput,
): ReadWater & { readonly timeToEmpty: Quantity<"time", "none"> | undefined } => {
  const door = checks();
  const water = door.run(() => expectWaterTest(input.test, "test"));
  const timeToEmpty =
    input.timeToEmpty === undefined
      ? undefined
      : door.run(() =>
          expectQuantity(
            input.timeToEmpty,
            { dimension: "time", of: "none", bound: "non-negative" },
            "timeToEmpty",
          ),
        );
  const products: unknown = input.products ?? [];
  if (Array.isArray(products)) {
    for (const [i, product] of products.entries()) door.run(() => expectProduct(product, `products[${i}]`));
  } else door.run(() => fail("type", "products", products, "a list of products"));
  if (input.ammoniumSulfate !== undefined)
    door.run(() => expectRate(input.ammoniumSulfate, "ammoniumSulfate"));
  door.done();
  return { ...(water as ReadWater), timeToEmpty };
};

const expectProduct = (input: unknown, path: string): void => {
  if (typeof input !== "object" || input === null) fail("type", path, input, "a product");
  const { id, labelPH, contains } = input as WaterProduct;
  if (typeof id !== "string" || id === "") fail("missing", `${path}.id`, id, "an id of the product");
  if (contains !== undefined && !Array.isArray(contains))
    fail("type", `${path}.contains`, contains, "a list");
  for (const end of ["min", "max"] as const) {
    const value = labelPH?.[end];
    if (value !== undefined) expectNumber(value, `${path}.labelPH.${end}`, { min: 0, max: 14 });
  }
};

/**
 * What a water test means for a mix: hardness and its class by each list, the minimum of ammonium sulfate
 * by the cation equation, the pH against the labels and published ranges, and what alkaline water destroys
 * before the tank is empty. Hardness is taken from the test, or from calcium and magnesium.
 *
 * Only published thresholds and half-lives are applied; everything else is listed in `notChecked`.
 *
 * @param input - `test`, what the laboratory printed; `products` of the mix, `timeToEmpty` and the
 *   `ammoniumSulfate` in the mix (per volume), as far as known
 * @throws RatewrightError with every problem, under paths such as `test.hardness`: `missing`, `range` (a
 *   negative hardness, a pH outside 0 to 14), `not-finite`, `unit/mismatch`, `substance/mismatch`
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
 * report.hydrolysis[0]?.atEnd.map((share) => Number(share.in("%").toFixed(1))); // => [98.4, 98.4]
 * report.findings.map(({ code }) => code); // => ["water/hardness", "water/sulfate-range", "water/pH-alkaline", "water/hydrolysis"]
 * ```
 */
export const waterReport = (input: WaterReportInput): WaterReport => {
  expectRecord(input, "input");
  const { pH, hardness, bicarbonate, ions, anyIon, timeToEmpty } = expectWaterInput(input);
  const { products = [], ammoniumSulfate } = input;
  const checked: string[] = [];
  const notChecked: string[] = [];
  const findings: Finding[] = [];
  const minimum = anyIon ? ammoniumSulfateMinimum(ions) : undefined;
  const range = !anyIon && hardness !== undefined ? ammoniumSulfateFromHardness(hardness) : undefined;
  if (hardness === undefined)
    notChecked.push("hardness: the test gives neither it nor both calcium and magnesium");
  else {
    checked.push("hardness against published thresholds");
    findings.push(...hardnessFindings(hardness, products));
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
    findings.push(...sulfateFindings(minimum, range, ammoniumSulfate));
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
      findings.push(hydrolysisFinding(loss, name, timeToEmpty));
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
  text: `Bicarbonate is ${Number(bicarbonate.toPrecision(3))} mg/L: from 500 it is said to weaken group 1 (dim) herbicides and 2,4-D amine.`,
  source: { title: "Spray water quality", publisher: "Saskatchewan Agriculture", year: 2021 },
});
