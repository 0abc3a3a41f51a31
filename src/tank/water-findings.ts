import { exceeds } from "../numeric/index.js";
import { type Finding, fail, type Quantity, quantity } from "../quantity/index.js";
import type { AmmoniumSulfateMinimum, AmmoniumSulfateRate } from "./ammonium-sulfate.js";
import type { AlkalineHydrolysis } from "./hydrolysis.js";
import { expectRate, type RateOf } from "./rate.js";
import { carrierPHs, hardnessThresholds } from "./water-facts.js";
import type { WaterProduct } from "./water-types.js";

const digits = (value: number, most = 3): number => Number(value.toPrecision(most));

/** Published thresholds that a hardness passes. */
export const hardnessFindings = (
  hardness: Quantity<"mass/volume", "hardness as CaCO3">,
  products: readonly WaterProduct[],
): readonly Finding[] => {
  const passed = hardnessThresholds.filter(({ value, unit }) =>
    exceeds(hardness.in("mg/L"), quantity(value, unit, "hardness as CaCO3").in("mg/L")),
  );
  if (passed.length === 0) return [];
  const ppm = digits(hardness.in("mg/L"));
  const findings: Finding[] = [
    {
      code: "water/hardness",
      severity: "caution",
      params: {
        hardness: hardness.in("mg/L"),
        unit: "mg/L",
        passed: passed.map(({ value, unit, about }) => `${value} ${unit}: ${about}`),
      },
      text: `Hardness is ${ppm} mg/L as CaCO3 (${digits(hardness.in("grain/gal"))} grains per US gallon). Published thresholds below it: ${passed.map(({ value, unit, about, source }) => `${value} ${unit}, ${about} (${source.publisher})`).join("; ")}. Salts of weak acids lose the most; the label says which.`,
    },
  ];
  const ruin = passed.find(({ about }) => about.startsWith("2,4-D amine"));
  for (const { id, name = id, contains = [] } of products) {
    if (ruin === undefined || !contains.includes("amine phenoxy")) continue;
    findings.push({
      code: "water/hardness-amine",
      severity: "warning",
      params: { product: id, hardness: hardness.in("mg/L"), unit: "mg/L" },
      text: `${name} is an amine phenoxy: in water this hard 2,4-D amine is said to be nearly useless.`,
      source: ruin.source,
    });
  }
  return findings;
};

/** The minimum of ammonium sulfate, and whether the mix has as much. */
export const sulfateFindings = (
  minimum: AmmoniumSulfateMinimum | undefined,
  range: { readonly min: AmmoniumSulfateRate; readonly max: AmmoniumSulfateRate } | undefined,
  given: RateOf | undefined,
): readonly Finding[] => {
  const source = minimum?.source ?? "derived from the cation equation and molar masses";
  const pounds = (rate: AmmoniumSulfateRate): number => rate.in("lb/gal") * 100;
  const most =
    minimum === undefined ? (range === undefined ? 0 : pounds(range.max)) : pounds(minimum.minimum);
  const findings: Finding[] = [];
  if (minimum !== undefined) {
    findings.push({
      code: "water/sulfate-minimum",
      severity: "note",
      params: { poundsPer100Gallons: most, notCounted: minimum.notCounted },
      text: minimum.text,
      source,
    });
  } else if (range !== undefined) {
    findings.push({
      code: "water/sulfate-range",
      severity: "note",
      params: { least: pounds(range.min), most },
      text: `By the published equation at least ${digits(pounds(range.min))} to ${digits(most)} lb of ammonium sulfate per 100 gal, as the hardness is magnesium or calcium; sodium, potassium and iron come on top. That is a minimum by the equation, not the need.`,
      source,
    });
  }
  if (given === undefined) return findings;
  const { rate, basis } = expectRate(given, "ammoniumSulfate");
  if (basis !== "spray volume" || rate.dimension !== "mass/volume") {
    fail("unit/mismatch", "ammoniumSulfate", rate, "a mass of ammonium sulfate per volume of spray");
  }
  const has = (rate as unknown as Quantity<"mass/volume", string>).in("lb/gal") * 100;
  if (exceeds(most, has)) {
    findings.push({
      code: "water/sulfate-below-minimum",
      severity: "warning",
      params: { poundsPer100Gallons: has, minimum: most },
      text: `The mix has ${digits(has)} lb of ammonium sulfate per 100 gal, less than the ${digits(most)} lb that the published equation gives as the minimum for this water.`,
      source,
    });
  }
  return findings;
};

const general = carrierPHs[0];

/** The pH against the labels and what is published in general. */
export const pHFindings = (pH: number, products: readonly WaterProduct[]): readonly Finding[] => {
  const findings: Finding[] = [];
  for (const { id, name = id, labelPH } of products) {
    const { min, max } = labelPH ?? {};
    if ((min === undefined || pH >= min) && (max === undefined || pH <= max)) continue;
    const wanted =
      min === undefined ? `${max} or less` : max === undefined ? `${min} or more` : `${min} to ${max}`;
    findings.push({
      code: "water/pH-label",
      severity: "warning",
      params: { product: id, pH, ...(min !== undefined && { min }), ...(max !== undefined && { max }) },
      text: `The water has pH ${pH}; the label of ${name} asks for ${wanted}.`,
      source: `the label of ${name}`,
    });
  }
  const ranges = carrierPHs
    .map(
      ({ min, max, source }) => `${min === undefined ? "below" : `${min} to`} ${max} (${source.publisher})`,
    )
    .join(", ");
  if (pH > 7) {
    findings.push({
      code: "water/pH-alkaline",
      severity: "caution",
      params: { pH },
      text: `The water has pH ${pH}, on the alkaline side. Published ranges for spray water: ${ranges}. Organophosphates and carbamates are most at risk, sulfonylureas prefer a high pH: the label decides. How much acid it takes depends on the alkalinity, so measure after each addition.`,
      ...(general && { source: general.source }),
    });
  } else if (pH > 6) {
    findings.push({
      code: "water/pH-spray-soon",
      severity: "note",
      params: { pH },
      text: `The water has pH ${pH}: from 6 to 7 spray the mix at once. Published ranges: ${ranges}.`,
      ...(general && { source: general.source }),
    });
  } else if (pH < 4) {
    findings.push({
      code: "water/pH-acid",
      severity: "caution",
      params: { pH },
      text: `The water has pH ${pH}, below every published range for spray water: ${ranges}.`,
    });
  }
  return findings;
};

/** What is lost of a product before the tank is empty. */
export const hydrolysisFinding = (
  loss: AlkalineHydrolysis,
  name: string,
  time: Quantity<"time", "none">,
): Finding => {
  const [least, most] = loss.atEnd.map((share) => digits(share.in("%"))) as [number, number];
  const printed = loss.rows.map(
    ({ pH, shortest, longest }) =>
      `pH ${pH}: ${shortest.value === longest.value ? "" : `${shortest.value} to `}${longest.value} ${longest.unit}`,
  );
  const source = loss.rows[0]?.source;
  return {
    code: "water/hydrolysis",
    severity: "caution",
    params: { active: loss.active, pH: loss.pH, hours: time.in("h"), least, most },
    text: `${name}: water of pH ${loss.pH} destroys ${least === most ? `${most} %` : `${least} to ${most} %`} of ${loss.active} before the tank is empty (${digits(time.in("h"))} h), by published half-lives (${printed.join("; ")}). Mix less at a time, or bring the pH down as the label says.`,
    ...(source && { source }),
  };
};
