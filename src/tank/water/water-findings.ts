import { figuresApart, roundedApart } from "../../numeric/house.js";
import { exceeds } from "../../numeric/index.js";
import { type Finding, numberIn, type Quantity, quantity, unitSystem } from "../../quantity/index.js";
import type { AmmoniumSulfateMinimum, AmmoniumSulfateRate, WaterIons } from "./ammonium-sulfate.js";
import type { AlkalineHydrolysis } from "./hydrolysis.js";
import { carrierPHs, hardnessThresholds } from "./water-facts.js";
import type { ReadWater } from "./water-test.js";
import type { WaterProduct } from "./water-types.js";

const digits = (value: number, most = 3): number => Number(value.toPrecision(most));

type Hardness = Quantity<"mass/volume", "hardness as CaCO3">;

const passedBy = (hardness: Hardness) =>
  hardnessThresholds.filter(({ value, unit }) =>
    exceeds(hardness.in("mg/L"), quantity(value, unit, "hardness as CaCO3").in("mg/L")),
  );

/** The threshold for amine phenoxies among those passed. */
const ruinOf = (passed: ReturnType<typeof passedBy>) =>
  passed.find(({ about }) => about.startsWith("2,4-D amine"));

/** Products of which nobody says whether water this hard ruins them. */
export const notCheckedInHardWater = (
  hardness: Hardness,
  products: readonly WaterProduct[],
): readonly string[] => {
  const silent = products.filter(({ contains }) => contains === undefined);
  return silent.length === 0 || ruinOf(passedBy(hardness)) === undefined
    ? []
    : [
        `amine phenoxies in water this hard, for ${silent.map(({ id, name = id }) => name).join(", ")}: "contains" is not stated`,
      ];
};

/** By how much a printed hardness may miss that of calcium and magnesium: a rule of this library, no source. */
const leeway = 0.1;

/** A printed hardness that the calcium and magnesium of the same test contradict. */
const disagreement = ({ stated, fromCalcium, fromMagnesium }: ReadWater): readonly Finding[] => {
  const parts = Object.entries({ calcium: fromCalcium, magnesium: fromMagnesium }).flatMap(([name, part]) =>
    part === undefined ? [] : [{ name, part }],
  );
  if (stated === undefined) return [];
  const known = parts.reduce((sum, { part }) => sum + part, 0);
  const less = exceeds(known, stated * (1 + leeway));
  // One of the two alone says only that there is as much hardness, not that there is no more.
  const more = parts.length === 2 && exceeds(stated, known * (1 + leeway));
  if (!less && !more) return [];
  const inGrains = Math.abs(known / stated / quantity(1, "grain/gal").in("mg/L") - 1) < leeway;
  const names = parts.map(({ name }) => name).join(" and ");
  return [
    {
      code: "water/hardness-disagrees",
      severity: "warning",
      params: { hardness: stated, fromIons: known, unit: "mg/L" },
      text: `The test gives a hardness of ${digits(stated)} mg/L as CaCO3, and ${names} for ${parts.length === 1 ? "at least " : ""}${digits(known)}: one of the figures was misread, or has the wrong unit.${inGrains ? " They are about 17 times apart: is the hardness in grains per gallon?" : ""}`,
      source: "derived from molar masses",
    },
  ];
};

/** Published thresholds that a hardness passes, and whether the figures of the test agree. */
export const hardnessFindings = (water: ReadWater, products: readonly WaterProduct[]): readonly Finding[] => [
  ...disagreement(water),
  ...(water.hardness === undefined ? [] : thresholdFindings(water.hardness, products)),
];

const thresholdFindings = (hardness: Hardness, products: readonly WaterProduct[]): readonly Finding[] => {
  const passed = passedBy(hardness);
  if (passed.length === 0) return [];
  // In as many figures as it takes to read apart from every threshold that it passes.
  const told = (unit: "mg/L" | "grain/gal"): number =>
    digits(
      hardness.in(unit),
      Math.max(
        ...passed.map((each) =>
          figuresApart(hardness.in(unit), quantity(each.value, each.unit, "hardness as CaCO3").in(unit), 3),
        ),
      ),
    );
  const findings: Finding[] = [
    {
      code: "water/hardness",
      severity: "caution",
      params: {
        hardness: hardness.in("mg/L"),
        unit: "mg/L",
        passed: passed.map(({ value, unit, about }) => `${value} ${unit}: ${about}`),
      },
      text: `Hardness is ${told("mg/L")} mg/L as CaCO3 (${told("grain/gal")} grains per US gallon). Published thresholds below it: ${passed.map(({ value, unit, about, source }) => `${value} ${unit}, ${about} (${source.publisher})`).join("; ")}. Salts of weak acids lose the most: see the label.`,
    },
  ];
  const ruin = ruinOf(passed);
  for (const { id, name = id, contains } of products) {
    if (ruin === undefined || !contains?.includes("amine phenoxy")) continue;
    findings.push({
      code: "water/hardness-amine",
      severity: "warning",
      params: { product: id, hardness: hardness.in("mg/L"), unit: "mg/L" },
      text: `${name} is an amine phenoxy: in water this hard 2,4-D amine can lose most of its activity.`,
      source: ruin.source,
    });
  }
  return findings;
};

/** The minimum of ammonium sulfate, and whether the mix has as much. */
export const sulfateFindings = (
  minimum: AmmoniumSulfateMinimum | undefined,
  range: { readonly min: AmmoniumSulfateRate; readonly max: AmmoniumSulfateRate } | undefined,
  { K, Na, Fe }: WaterIons,
  given: Quantity<"mass/volume", string> | undefined,
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
    const untested = Object.entries({ K, Na, Fe }).flatMap(([ion, tested]) => (tested ? [] : [ion]));
    const tested = Object.entries({ K, Na, Fe }).flatMap(([ion, found]) => (found ? [ion] : []));
    findings.push({
      code: "water/sulfate-range",
      severity: "note",
      params: { least: pounds(range.min), most, notCounted: untested },
      text: `By the published equation at least ${digits(pounds(range.min))} to ${digits(most)} lb of ammonium sulfate per 100 gal (${digits(range.min.in("g/L") * 100)} to ${digits(range.max.in("g/L") * 100)} g per 100 L), depending on how much of the hardness is magnesium${tested.length > 0 ? `, with ${tested.join(", ")}` : ""}${untested.length > 0 ? `; ${untested.join(", ")}, not tested, would add to it` : ""}. That is a minimum by the equation, not the need.`,
      source,
    });
  }
  if (given === undefined) return findings;
  const has = given.in("lb/gal") * 100;
  if (exceeds(most, has)) {
    const told = roundedApart(has, most, 3);
    const [grams, least] = [has, most].map((lb) => numberIn({ value: lb, unit: "lb/gal" }, "g/L")) as [
      number,
      number,
    ];
    const metric = roundedApart(grams, least, 3);
    const isMetric = unitSystem(given.unit) === "metric";
    findings.push({
      code: "water/sulfate-below-minimum",
      severity: "warning",
      params: { poundsPer100Gallons: has, minimum: most },
      text: `The mix has ${
        isMetric
          ? `${metric(grams)} g of ammonium sulfate per 100 L (${told(has)} lb per 100 gal), less than the ${metric(least)} g (${told(most)} lb)`
          : `${told(has)} lb of ammonium sulfate per 100 gal (${metric(grams)} g per 100 L), less than the ${told(most)} lb (${metric(least)} g)`
      } that the published equation gives as the minimum for this water.`,
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
      text: `pH ${pH}: do not let the mix stand; spray it out promptly. Published ranges: ${ranges}.`,
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

/** What is lost of a product before the tank is empty; none where there is no time to lose it in. */
export const hydrolysisFindings = (
  loss: AlkalineHydrolysis,
  name: string,
  time: Quantity<"time", "none">,
): readonly Finding[] => {
  const [least, most] = loss.atEnd.map((share) => digits(share.in("%"))) as [number, number];
  if (most === 0) return [];
  const printed = loss.rows.map(
    ({ pH, shortest, longest, temperature, source }) =>
      `pH ${pH}${temperature === "not printed" ? "" : `, ${temperature} °C`}: ${shortest.value === longest.value ? "" : `${shortest.value} to `}${longest.value} ${longest.unit}, ${source.publisher}`,
  );
  // Below the lowest pH that is printed there is no figure that more acid would help.
  const acidify = loss.rows.some(({ pH }) => pH < loss.pH || (pH === loss.pH && pH > 7));
  const source = loss.rows[0]?.source;
  const unknown =
    loss.rowsWithoutTemperature > 0 ? " They are printed without a temperature; warm water is faster." : "";
  return [
    {
      code: "water/hydrolysis",
      severity: "caution",
      params: { active: loss.active, pH: loss.pH, hours: time.in("h"), least, most },
      text: `${name}: water of pH ${loss.pH} breaks down ${least === most ? `${most} %` : `${least} to ${most} %`} of ${loss.active} before the tank is empty (${digits(time.in("h"))} h), by published half-lives (${printed.join("; ")}).${unknown} Mix less at a time${acidify ? ", or bring the pH down as the label says" : ""}.`,
      ...(source && { source }),
    },
  ];
};
