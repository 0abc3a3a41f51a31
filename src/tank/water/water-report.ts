import { expectFields, type Finding, type Quantity } from "../../quantity/index.js";
import {
  type AmmoniumSulfateMinimum,
  ammoniumSulfateFromHardness,
  ammoniumSulfateMinimum,
} from "./ammonium-sulfate.js";
import { type HardnessSchemeId, hardnessClass } from "./hardness.js";
import { alkalineHydrolysis } from "./hydrolysis.js";
import {
  hardnessFindings,
  hydrolysisFindings,
  notCheckedInHardWater,
  pHFindings,
  sulfateFindings,
} from "./water-findings.js";
import { expectWaterInput, type ReadWaterInput } from "./water-input.js";
import type { ReadWater } from "./water-test.js";
import type { WaterReport, WaterReportInput } from "./water-types.js";

type SulfateRange = NonNullable<WaterReport["ammoniumSulfateFromHardness"]>;

/**
 * The range by hardness, where it says more than the cations tested do: of a hardness that was printed,
 * with calcium and magnesium not both known. Potassium, sodium and iron, as far as tested, come on top.
 */
const rangeByHardness = ({ hardness, ions: { Ca, Mg, K, Na, Fe } }: ReadWater): SulfateRange | undefined => {
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
  const read = expectWaterInput(input);
  const { water } = read;
  const { hardness } = water;
  const range = rangeByHardness(water);
  const minimum = water.anyIon && range === undefined ? ammoniumSulfateMinimum(water.ions) : undefined;
  const breakdown = breakdownPart(read);
  const parts: readonly Part[] = [
    hardnessPart(read),
    bicarbonatePart(water.bicarbonate),
    sulfatePart(read, minimum, range),
    pHPart(read),
    breakdown,
  ];
  return {
    type: "water-report",
    version: 1,
    ...(hardness && { hardness, classes: classesOf(hardness) }),
    ...(minimum && { ammoniumSulfate: minimum }),
    ...(range && { ammoniumSulfateFromHardness: range }),
    hydrolysis: breakdown.hydrolysis,
    findings: parts.flatMap(({ findings = [] }) => findings),
    checked: parts.flatMap(({ checked }) => checked ?? []),
    notChecked: [
      ...parts.flatMap(({ notChecked = [] }) => notChecked),
      "what the labels say about water, temperature, alkalinity, and how the mix changes pH and hardness",
    ],
  };
};

/** What one value of a water test comes to. */
interface Part {
  readonly findings?: readonly Finding[];
  readonly checked?: string;
  readonly notChecked?: readonly string[];
}

const hardnessPart = ({ water, products }: ReadWaterInput): Part =>
  water.hardness === undefined
    ? { notChecked: ["hardness: not tested, nor both calcium and magnesium"] }
    : {
        checked: "hardness against published thresholds",
        findings: hardnessFindings(water, products),
        notChecked: notCheckedInHardWater(water.hardness, products),
      };

const bicarbonatePart = (bicarbonate: number | undefined): Part =>
  bicarbonate === undefined
    ? { notChecked: ["bicarbonate: not tested"] }
    : {
        checked: "bicarbonate against 500 ppm",
        findings: bicarbonate >= 500 ? [bicarbonateFinding(bicarbonate)] : [],
      };

const sulfatePart = (
  { water, sulfate }: ReadWaterInput,
  minimum: AmmoniumSulfateMinimum | undefined,
  range: SulfateRange | undefined,
): Part =>
  minimum === undefined && range === undefined
    ? { notChecked: ["ammonium sulfate: neither cations nor hardness are tested"] }
    : {
        checked: "ammonium sulfate against the minimum by the cation equation",
        findings: sulfateFindings(minimum, range, water.ions, sulfate),
      };

const pHPart = ({ water: { pH }, products }: ReadWaterInput): Part =>
  pH === undefined
    ? { notChecked: ["pH: not tested"] }
    : {
        checked: "pH against the labels, as far as stated, and published ranges",
        findings: pHFindings(pH, products),
      };

/** What alkaline water destroys of each product before the tank is empty; without a pH there is nothing to say. */
const breakdownPart = ({
  water: { pH },
  products,
  timeToEmpty,
}: ReadWaterInput): Part & Pick<WaterReport, "hydrolysis"> => {
  const hydrolysis: WaterReport["hydrolysis"][number][] = [];
  const findings: Finding[] = [];
  const notChecked: string[] = [];
  if (pH === undefined) return { hydrolysis };
  for (const { id, name = id, active } of products) {
    const lacking =
      active === undefined
        ? "no active ingredient is stated"
        : timeToEmpty === undefined
          ? "no time until the tank is empty is stated"
          : undefined;
    const loss =
      active === undefined || timeToEmpty === undefined
        ? undefined
        : alkalineHydrolysis({ active, pH, time: timeToEmpty });
    if (loss === undefined || timeToEmpty === undefined) {
      const why = lacking ?? `no half-life of ${active} on file`;
      notChecked.push(`breakdown of ${name} in the tank: ${why}`);
      continue;
    }
    hydrolysis.push({ ...loss, product: id });
    findings.push(...hydrolysisFindings(loss, name, timeToEmpty));
  }
  return {
    hydrolysis,
    findings,
    notChecked,
    ...(hydrolysis.length > 0 && { checked: "breakdown in the tank by published half-lives" }),
  };
};

const classesOf = (
  hardness: Quantity<"mass/volume", "hardness as CaCO3">,
): Readonly<Record<HardnessSchemeId, string>> => ({
  USGS: hardnessClass(hardness, "USGS"),
  Vermont: hardnessClass(hardness, "Vermont"),
});

const bicarbonateFinding = (bicarbonate: number): Finding => ({
  code: "water/bicarbonate",
  severity: "caution",
  params: { bicarbonate, limit: 500, unit: "mg/L" },
  text: `Bicarbonate is ${Number(bicarbonate.toPrecision(3))} mg/L: from 500 it can weaken group 1 (dim) herbicides and 2,4-D amine, by this source.`,
  source: { title: "Spray water quality", publisher: "Saskatchewan Agriculture", year: 2021 },
});
