import { expectFields, type Finding, type RatewrightError } from "../../quantity/index.js";
import { dissolvedSalts, waterSaltClass, waterSaltClasses } from "../irrigation-water/dissolved-salts.js";
import { ionBalance } from "../irrigation-water/ion-balance.js";
import { irrigationLoad } from "../irrigation-water/irrigation-load.js";
import {
  type LeachingLevel,
  type LeachingRequirement,
  leachingRequirement,
} from "../irrigation-water/leaching.js";
import { residualSodiumCarbonate } from "../irrigation-water/residual-carbonate.js";
import { sodiumAdsorptionRatio } from "../irrigation-water/sodium-ratio.js";
import type { WaterAnalysis } from "../irrigation-water/water-analysis.js";
import type { PlanFigure, SectionNotes, WaterPlan } from "./plan-types.js";
import type { ReadAmendmentSite, ReadReport } from "./read-plan-input.js";
import { amountText, orFinding, relocate } from "./relocate.js";

/** The water, or `null` where none was tested. */
export type WaterSection = SectionNotes & { readonly water: WaterPlan | null };

const at = "report.water";

/** Runs a formula where the analysis has what it takes. */
const where = <T>(water: WaterAnalysis, ions: readonly (keyof WaterAnalysis)[], run: () => T): T | null =>
  ions.every((ion) => water[ion] !== undefined) ? relocate(run, (path) => path.replace(/^water/, at)) : null;

const leachingOf = (
  input: unknown,
  water: WaterAnalysis,
): { readonly value: LeachingRequirement | null; readonly findings: readonly Finding[] } => {
  const { conductivity } = water;
  if (input === undefined || conductivity === undefined) return { value: null, findings: [] };
  const path = "conventions.leaching";
  const level = expectFields(input, ["method", "soil", "drainage"], path);
  const run = (): LeachingRequirement =>
    leachingRequirement({ ...(level as LeachingLevel), water: conductivity });
  const place = (name: string): string => (name === "water" ? `${at}.conductivity` : `${path}.${name}`);
  return orFinding(() => relocate(run, place), tooSalty);
};

/** A water that no leaching keeps at the stated level. */
const tooSalty = ({ code, path, got, expected }: RatewrightError): Finding | undefined =>
  code === "infeasible"
    ? {
        code: "water/too-salty-for-level",
        severity: "warning",
        path,
        params: { conductivity: got },
        text: `The water is too salty for the stated level of the soil: it wants ${expected}.`,
      }
    : undefined;

/** What the irrigation water means, as far as it was tested. */
export const waterSection = (
  leachingInput: unknown,
  { water }: ReadReport,
  site: ReadAmendmentSite,
): WaterSection => {
  if (water === undefined) {
    return {
      water: null,
      figures: [],
      findings: [],
      checked: [],
      notChecked: ["irrigation water: not in the report"],
    };
  }
  const { irrigation } = site;
  const leaching = leachingOf(leachingInput, water);
  const found: WaterPlan = {
    balance: where(water, ["Ca", "Mg", "Na", "HCO3", "Cl", "SO4"], () => ionBalance(water)),
    sodiumRatio: where(water, ["Ca", "Mg", "Na"], () => sodiumAdsorptionRatio(water)),
    residualCarbonate: where(water, ["Ca", "Mg", "HCO3"], () => residualSodiumCarbonate(water)),
    leaching: leaching.value,
    load: irrigation === undefined ? null : irrigationLoad({ water, depth: irrigation }),
  };
  const missing = [
    [found.balance, "ion balance: it takes Ca, Mg, Na, HCO3, Cl and SO4"],
    [found.sodiumRatio, "sodium adsorption ratio: it takes Na, Ca and Mg"],
    [found.residualCarbonate, "residual carbonate: it takes HCO3, Ca and Mg"],
    [found.leaching, "leaching: it takes the conductivity of the water and a stated level of the soil"],
    [found.load, "what the water supplies: the season's irrigation is not stated"],
  ] as const;
  return {
    water: found,
    figures: figuresOf(found, water),
    findings: [...(found.balance?.findings ?? []), ...leaching.findings, ...(found.leaching?.findings ?? [])],
    checked: found.balance === null ? [] : ["cations against anions of the water"],
    notChecked: [
      ...missing.flatMap(([value, text]) => (value === null ? [text] : [])),
      ...(found.load?.ions.K === undefined
        ? []
        : [`potassium in the water, ${amountText(found.load.ions.K)} in the season: it is not credited`]),
    ],
  };
};

const figuresOf = (found: WaterPlan, { conductivity }: WaterAnalysis): PlanFigure[] => {
  const figures: PlanFigure[] = [];
  const add = (of: string, value: string, method: string, source: PlanFigure["source"]): void => {
    figures.push({ section: "water", of, value, method, source });
  };
  if (conductivity !== undefined) {
    const salts = dissolvedSalts({ conductivity });
    const value = `${amountText(salts)}, ${waterSaltClass(conductivity)}`;
    add("dissolved salts", value, "640 mg/L per dS/m", waterSaltClasses.source);
  }
  if (found.sodiumRatio !== null) {
    const value = String(Number(found.sodiumRatio.toPrecision(3)));
    add(
      "sodium adsorption ratio",
      value,
      "Na / sqrt((Ca + Mg) / 2), meq/L",
      "US Salinity Laboratory 1954, Agriculture Handbook 60, as a turf resource guide has it",
    );
  }
  if (found.residualCarbonate !== null) {
    const { value, hazard, source } = found.residualCarbonate;
    add(
      "residual sodium carbonate",
      `${amountText(value)}, hazard ${hazard}`,
      "(HCO3 + CO3) - (Ca + Mg)",
      source,
    );
  }
  if (found.leaching !== null) {
    const { share, method, source } = found.leaching;
    add("leaching requirement", amountText(share), method, source);
  }
  if (found.load?.nitrogen) {
    add(
      "nitrogen in the water of the season",
      amountText(found.load.nitrogen),
      "concentration times depth",
      "definition",
    );
  }
  if (found.load?.carbonate) {
    add(
      "bicarbonate in the water of the season, as CaCO3",
      amountText(found.load.carbonate),
      "concentration times depth",
      "definition",
    );
  }
  return figures;
};
