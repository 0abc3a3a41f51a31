import { type CivilDate, civilDate } from "../../calendar/index.js";
import {
  allOf,
  expectFields,
  expectFlag,
  expectNumber,
  expectOneOf,
  expectQuantity,
  expectRecord,
  expectText,
  fail,
  numberIn,
  outOfRange,
  type Quantity,
  quantityOf,
} from "../../quantity/index.js";
import { readWaterAnalysis, type WaterAnalysis } from "../irrigation-water/water-analysis.js";
import { type AcidityBuffer, acidityBuffers } from "../report/buffer-acidity.js";
import { expectBufferPH, expectSoilPH } from "../report/expect-ph.js";
import { expectLayer, type ReadLayer, type SoilLayer } from "../report/soil-layer.js";
import { type Extractant, extractants } from "../soil-test/guideline-types.js";
import type { LeafRatioGrass } from "../soil-test/nutrient-use.js";
import { leafRatios } from "../soil-test/nutrient-use.js";

/** An element of the report, as it may stand there. */
export type ElementName = "P" | "K" | "Ca" | "Mg" | "S" | "Na";
const elementNames = ["P", "K", "Ca", "Mg", "S", "Na"] as const;

/** A report, read. */
export interface ReadReport {
  readonly laboratory: string;
  readonly date: CivilDate;
  readonly extractant: Extractant;
  readonly layer: SoilLayer;
  readonly readLayer: ReadLayer;
  readonly pH: number;
  readonly bufferPH: number | undefined;
  readonly buffer: AcidityBuffer | undefined;
  readonly acidity: Quantity<"exchange capacity", "none"> | undefined;
  readonly acidityPerVolume: number | undefined;
  /** Parts per million of the dry soil. */
  readonly elements: ReadonlyMap<ElementName, number>;
  readonly freeLime: boolean | undefined;
  readonly water: WaterAnalysis | undefined;
}

const reportFields = [
  "laboratory",
  "date",
  "extractant",
  "layer",
  "pH",
  "bufferPH",
  "buffer",
  "acidity",
  "acidityPerVolume",
  "elements",
  "freeLime",
  "water",
] as const;

/** What is left out stays left out. */
const optional = <T>(input: unknown, read: () => T): T | undefined =>
  input === undefined ? undefined : read();

/** Takes a soil report, or throws with all that is wrong with it. */
export const readReport = (input: unknown): ReadReport => {
  const record = expectFields(input, reportFields, "report", "what the laboratory wrote");
  const charge = { dimension: "exchange capacity", of: "none", bound: "non-negative" } as const;
  const buffers = Object.keys(acidityBuffers) as readonly AcidityBuffer[];
  const read = allOf({
    laboratory: () => expectText(record.laboratory, "report.laboratory", "the laboratory"),
    date: () => civilDate(record.date as CivilDate, "report.date"),
    extractant: () => expectOneOf(record.extractant, extractants, "report.extractant"),
    readLayer: () => expectLayer(record.layer, "report.layer"),
    pH: () => expectSoilPH(record.pH, "report.pH"),
    bufferPH: () => optional(record.bufferPH, () => expectBufferPH(record.bufferPH, "report.bufferPH")),
    buffer: () => optional(record.buffer, () => expectOneOf(record.buffer, buffers, "report.buffer")),
    acidity: () => optional(record.acidity, () => expectQuantity(record.acidity, charge, "report.acidity")),
    acidityPerVolume: () =>
      optional(record.acidityPerVolume, () =>
        expectNumber(record.acidityPerVolume, "report.acidityPerVolume", { min: 0, max: 100 }),
      ),
    freeLime: () => optional(record.freeLime, () => expectFlag(record.freeLime, "report.freeLime")),
    water: () =>
      optional(record.water, () => {
        readWaterAnalysis(record.water, "report.water");
        return record.water as WaterAnalysis;
      }),
    given: () => expectFields(record.elements, elementNames, "report.elements"),
  });
  const { given, ...rest } = read;
  return { ...rest, layer: record.layer as SoilLayer, elements: readElements(given, read.readLayer) };
};

const readElements = (
  given: { readonly [E in ElementName]?: unknown },
  { mass }: ReadLayer,
): ReadonlyMap<ElementName, number> => {
  const readers = Object.fromEntries(
    elementNames
      .filter((name) => given[name] !== undefined)
      .map((name) => [name, () => partsPerMillion(given[name], name, mass)]),
  );
  return new Map(Object.entries(allOf(readers)) as [ElementName, number][]);
};

const partsPerMillion = (input: unknown, name: ElementName, mass: ReadLayer["mass"]): number => {
  const path = `report.elements.${name}`;
  const {
    value,
    unit,
    of = "none",
  } = expectRecord(input, path, `a quantity of ${name}`) as {
    readonly value: number;
    readonly unit: string;
    readonly of?: string;
  };
  const q = quantityOf(value, unit, of, path);
  if (q.value < 0) outOfRange(path, q, { min: 0 });
  if (q.dimension === "mass/mass" && q.of === `${name}/soil`) return numberIn(q, "ppm w/w");
  if (q.dimension === "mass/area" && q.of === name) return (numberIn(q, mass.unit) * 1e6) / mass.value;
  return fail("substance/mismatch", path, q, `mg/kg of ${name}/soil, or lb/acre or kg/ha of ${name}`);
};

/** A site, read. */
export interface ReadAmendmentSite {
  readonly name: string;
  readonly area: Quantity<"area", "none">;
  readonly standing: boolean;
  readonly nitrogen: Quantity<"mass/area", "N">;
  readonly grass: LeafRatioGrass | undefined;
  readonly soil: string | undefined;
  readonly irrigation: Quantity<"length", "none"> | undefined;
}

/** Takes the site, or throws with all that is wrong with it. */
export const readAmendmentSite = (input: unknown): ReadAmendmentSite => {
  const fields = ["name", "area", "standing", "nitrogen", "grass", "soil", "irrigation"] as const;
  const record = expectFields(input, fields, "site", "where the amendments go");
  const grasses = Object.keys(leafRatios) as readonly LeafRatioGrass[];
  return allOf({
    name: () => expectText(record.name, "site.name", "the name of the site"),
    area: () =>
      expectQuantity(record.area, { dimension: "area", of: "none", bound: "positive" }, "site.area"),
    standing: () => expectFlag(record.standing, "site.standing"),
    nitrogen: () =>
      expectQuantity(
        record.nitrogen,
        { dimension: "mass/area", of: "N", bound: "non-negative" },
        "site.nitrogen",
      ),
    grass: () => optional(record.grass, () => expectOneOf(record.grass, grasses, "site.grass")),
    soil: () => optional(record.soil, () => expectText(record.soil, "site.soil", "the soil or turf")),
    irrigation: () =>
      optional(record.irrigation, () =>
        expectQuantity(
          record.irrigation,
          { dimension: "length", of: "none", bound: "non-negative" },
          "site.irrigation",
        ),
      ),
  });
};
