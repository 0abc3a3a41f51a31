import {
  allOf,
  expectFields,
  expectQuantity,
  type Finding,
  fail,
  outOfRange,
  type Quantity,
} from "../../quantity/index.js";
import { equivalentWeight } from "../report/equivalent-weight.js";
import { expectPercent } from "../report/expect-ph.js";
import { expectLayer, type ReadLayer } from "../report/soil-layer.js";
import { expectTarget, noneNeeded } from "./expect-target.js";
import type { FoundRequirement } from "./found-requirement.js";

const charge = { dimension: "exchange capacity", of: "none", bound: "non-negative" } as const;
const meq = (input: unknown, path: string): number => expectQuantity(input, charge, path).in("meq/100 g");
const percent = (input: unknown, path: string): number =>
  expectPercent(expectQuantity(input, { dimension: "1", of: "none" }, path).in("%"), path);

/** Calcium carbonate for a charge in a layer: 10 meq/kg for each meq/100 g, 50.04 mg for each meq. */
const carbonate = (milliequivalents: number, layer: ReadLayer) => ({
  value: (milliequivalents * 10 * equivalentWeight("CaCO3 equivalent") * layer.mass.value) / 1e6,
  unit: layer.mass.unit,
  of: "CaCO3 equivalent" as const,
  depth: layer.depth as Quantity<"length", "none">,
});

/** Lime by charge and weight of soil alone. */
export const chemicalRequirement = (
  method: "exchangeable acidity" | "base saturation" | "pH buffering",
  input: unknown,
): FoundRequirement => {
  switch (method) {
    case "exchangeable acidity":
      return byAcidity(input);
    case "base saturation":
      return bySaturation(input);
    default:
      return byBuffering(input);
  }
};

const byAcidity = (input: unknown): FoundRequirement => {
  const record = expectFields(input, ["method", "acidity", "layer", "neutralize"], "input");
  const read = allOf({
    acidity: () => meq(record.acidity, "acidity"),
    layer: () => expectLayer(record.layer, "layer"),
    share: () => (record.neutralize === undefined ? 100 : expectPercent(record.neutralize, "neutralize")),
  });
  return { ...carbonate((read.acidity * read.share) / 100, read.layer), findings: [] };
};

const bySaturation = (input: unknown): FoundRequirement => {
  const fields = ["method", "capacity", "baseSaturation", "targetSaturation", "layer"] as const;
  const record = expectFields(input, fields, "input");
  const read = allOf({
    capacity: () => meq(record.capacity, "capacity"),
    now: () => percent(record.baseSaturation, "baseSaturation"),
    target: () => percent(record.targetSaturation, "targetSaturation"),
    layer: () => expectLayer(record.layer, "layer"),
  });
  if (read.target < read.now) {
    const expected = `not below the present base saturation, which is ${Number(read.now.toPrecision(6))} %: lime does not lower it`;
    fail("conflict", "targetSaturation", read.target, expected);
  }
  return { ...carbonate((read.capacity * (read.target - read.now)) / 100, read.layer), findings: [] };
};

const byBuffering = (input: unknown): FoundRequirement => {
  const record = expectFields(input, ["method", "pH", "targetPH", "perUnitPH", "layer"], "input");
  const read = allOf({
    phs: () => {
      const phs = expectTarget(record);
      return phs.targetPH > 7
        ? outOfRange("targetPH", phs.targetPH, { max: 7 }, "{}: beyond it carbonates hold the pH")
        : phs;
    },
    perUnit: () => meq(record.perUnitPH, "perUnitPH"),
    layer: () => expectLayer(record.layer, "layer"),
  });
  const { pH, targetPH } = read.phs;
  const findings: Finding[] = pH === targetPH ? [noneNeeded(read.phs)] : [];
  if (pH < 4.5) {
    findings.push({
      code: "lime/buffering-not-straight",
      severity: "caution",
      path: "pH",
      params: { pH },
      text: `Below pH 4.5 a soil takes more lime for a unit of pH than above: at ${pH} a straight line is too low.`,
      source: "from memory",
    });
  }
  return { ...carbonate(read.perUnit * (targetPH - pH), read.layer), targetPH, findings };
};
