import {
  allOf,
  expectFields,
  expectNumber,
  expectQuantity,
  type Finding,
  fail,
  outOfRange,
} from "../../quantity/index.js";
import { milliequivalents } from "../report/buffer-acidity.js";
import { expectBufferPH } from "../report/expect-ph.js";
import { expectTarget, noneNeeded } from "./expect-target.js";
import type { FoundRequirement } from "./found-requirement.js";

/** The pH at which Mehlich's buffer starts, and where the factor of North Carolina has no value. */
const start = 6.6;

/** Lime by the rule of North Carolina. */
export const northCarolinaRequirement = (input: unknown): FoundRequirement => {
  const record = expectFields(
    input,
    ["method", "pH", "targetPH", "bufferPH", "acidityPerVolume", "residualCredit"],
    "input",
  );
  const credit = { dimension: "mass/area", of: "product:standard-lime", bound: "non-negative" } as const;
  const read = allOf({
    phs: () => {
      const phs = expectTarget(record);
      if (phs.targetPH > start) {
        outOfRange("targetPH", phs.targetPH, { max: start }, "{}: the factor has no value beyond it");
      }
      return phs;
    },
    acidity: () => acidityOf(record),
    credit: () =>
      record.residualCredit === undefined
        ? 0
        : expectQuantity(record.residualCredit, credit, "residualCredit").in("US ton/acre"),
  });
  const { pH, targetPH } = read.phs;
  const of = "product:standard-lime" as const;
  if (pH === targetPH) {
    return { value: 0, unit: "US ton/acre", of, targetPH, findings: [noneNeeded(read.phs)] };
  }
  const needed = (read.acidity * (targetPH - pH)) / (start - pH);
  const findings: Finding[] =
    read.credit > needed
      ? [
          {
            code: "lime/credit-covers",
            severity: "note",
            path: "residualCredit",
            params: { needed, credit: read.credit, unit: "US ton/acre" },
            text: "The lime of the last months, not yet used up, covers the need: no lime is called for now.",
          },
        ]
      : [];
  return { value: Math.max(0, needed - read.credit), unit: "US ton/acre", of, targetPH, findings };
};

/** Acidity in meq/100 cm3, as the report prints it or from the buffer pH. */
const acidityOf = (record: { readonly bufferPH?: unknown; readonly acidityPerVolume?: unknown }): number => {
  const { bufferPH, acidityPerVolume } = record;
  if (bufferPH !== undefined && acidityPerVolume !== undefined) {
    fail("conflict", "acidityPerVolume", acidityPerVolume, "a buffer pH or an acidity, not both");
  }
  if (acidityPerVolume !== undefined) {
    return expectNumber(acidityPerVolume, "acidityPerVolume", { min: 0, max: 100 });
  }
  if (bufferPH === undefined) {
    fail(
      "missing",
      "bufferPH",
      undefined,
      "the pH in Mehlich's buffer, or acidityPerVolume, the Ac of the report",
    );
  }
  return milliequivalents("Mehlich, North Carolina", expectBufferPH(bufferPH, "bufferPH"), "bufferPH");
};

/** Pounds of CaCO3 an acre for a meq, by target. */
const perMeq = [
  { target: 7, factor: 1000 },
  { target: 6.5, factor: 840 },
] as const;

/** Lime by the estimate of the Pennsylvania guide for field crops. */
export const pennsylvaniaFieldRequirement = (input: unknown): FoundRequirement => {
  const record = expectFields(input, ["method", "pH", "targetPH", "acidity"], "input");
  const wanted = { dimension: "exchange capacity", of: "none", bound: "non-negative" } as const;
  const read = allOf({
    phs: () => {
      const phs = expectTarget(record);
      const row = perMeq.find(({ target }) => target === phs.targetPH);
      const choices = perMeq.map(({ target }) => String(target));
      return row === undefined
        ? fail("range", "targetPH", phs.targetPH, "a target that the guide has", { choices })
        : { ...phs, factor: row.factor };
    },
    acidity: () => expectQuantity(record.acidity, wanted, "acidity").in("meq/100 g"),
  });
  const { pH, targetPH, factor } = read.phs;
  const of = "CaCO3 equivalent" as const;
  if (pH === targetPH) return { value: 0, unit: "lb/acre", of, targetPH, findings: [noneNeeded(read.phs)] };
  const little = targetPH === 6.5 && read.acidity <= 4;
  return {
    value: little ? 2000 : factor * read.acidity,
    unit: "lb/acre",
    of,
    targetPH,
    findings: little
      ? [
          {
            code: "lime/least-rate",
            severity: "note",
            path: "acidity",
            params: { acidity: read.acidity, rate: 2000, unit: "lb/acre" },
            text: "Up to 4.0 meq/100 g of acidity the guide gives 2,000 lb an acre for pH 6.5, whatever the acidity.",
          },
        ]
      : [],
  };
};
