import { describe, expect, test } from "vitest";
import {
  type Formulation,
  formulations,
  loadingOrder,
  type MixingOrderId,
  type MixProduct,
  mixingOrders,
} from "../../../src/tank/index.js";

/**
 * The printed orders, transcribed a second time and apart from the code: kinds as this library names
 * them, one line per printed step; what stands between steps is written as the action that it is.
 */
const printed: Readonly<Record<MixingOrderId, readonly string[]>> = {
  // list 1-10: water 1/4-3/4; agitate; (packets); fertilizer, pH; WP DF DG WDG FL; agitate; shake; SN; EC; oils
  "manitoba-2013": [
    "water-soluble packet",
    "conditioner, liquid fertilizer",
    "SC, WG, WP",
    "[wait]",
    "[shake]",
    "SL",
    "EC",
    "oil adjuvant, surfactant",
  ],
  "south-dakota-state": [
    "conditioner",
    "compatibility agent",
    "defoamer",
    "WG, WP, water-soluble packet",
    "[fill]",
    "SC, SL",
    "EC",
    "CS",
    "drift agent, oil adjuvant, surfactant",
  ],
  "oklahoma-state": [
    "compatibility agent, defoamer",
    "conditioner",
    "WG, WP",
    "[wait]",
    "CS, SC",
    "SL",
    "EC",
    "oil adjuvant, surfactant",
    "conditioner with surfactant",
  ],
  "missouri-dot": ["conditioner", "WP", "SC", "WG", "EC", "SL", "oil adjuvant, surfactant"],
  "iowa-state-2021": [
    "water-soluble packet",
    "SG, WG, WP",
    "compatibility agent, conditioner, dry drift agent",
    "CS, EW, SC, SE",
    "drift agent",
    "EC, OD, SL",
    "oil adjuvant, surfactant",
    "liquid fertilizer, micronutrient",
    "defoamer",
  ],
  "utah-state-2012": [
    "conditioner",
    "water-soluble packet",
    "WP",
    "WG",
    "CS",
    "EC",
    "SL",
    "SP",
    "surfactant",
    "dry fertilizer, liquid fertilizer",
  ],
  "grain-sa-2018": [
    "conditioner",
    "water-soluble packet",
    "SG",
    "WP",
    "SC",
    "CS",
    "SE",
    "EW",
    "EC",
    "liquid fertilizer",
    "SL",
    "surfactant",
  ],
  "north-dakota-state-2021": [
    "SG, SP, conditioner, dry fertilizer",
    "WG, WP",
    "CS, SC, SE",
    "EC, EW, OD, oil adjuvant",
    "SL, surfactant",
  ],
  "ontario-wales": ["WG, WP", "[wait]", "SC", "EC", "SL, surfactant"],
  "portugal-handout": ["WG", "SP", "WP", "SC", "EW", "EO", "EC", "SL", "oil adjuvant, surfactant"],
  "us-core-manual": ["compatibility agent", "WG, WP", "SC", "SL", "oil adjuvant, surfactant", "EC"],
  "croplife-latin-america-2024": ["conditioner", "SG, SL, SP", "EC, SC, WG, WP"],
};

const kindsOf = (line: string): Formulation[] => line.split(", ") as Formulation[];

describe.each(Object.entries(printed))("%s, as printed", (mixingOrder, lines) => {
  const products: MixProduct[] = lines
    .filter((line) => !line.startsWith("["))
    .flatMap(kindsOf)
    .map((formulation) => ({ id: formulation, formulation }));
  const result = loadingOrder({
    products: [...products].reverse(),
    mixingOrder: mixingOrder as MixingOrderId,
  });

  test("is reproduced step by step", () => {
    let at = 0;
    const found = lines
      .filter((line) => !line.startsWith("["))
      .map((line) => {
        const size = kindsOf(line).length;
        at += size;
        return result.order.slice(at - size, at);
      });
    expect(found.map((step) => [...step].sort().join(", "))).toEqual(
      lines.filter((line) => !line.startsWith("[")),
    );
    expect(result.findings.filter(({ code }) => code === "order/not-in-mixing-order")).toEqual([]);
  });

  test("with what it prints between its steps", () => {
    lines.forEach((line, i) => {
      if (!line.startsWith("[")) return;
      const action = line.slice(1, -1);
      const kinds = (from: number, step: -1 | 1): readonly string[] => {
        const near = lines[from + step] as string;
        return near.startsWith("[") ? kinds(from + step, step) : kindsOf(near);
      };
      const before = kinds(i, -1);
      const after = kinds(i, 1);
      const place = result.steps.findIndex(
        (step) => step.action === action && step.reason.endsWith("prints it.") && step.number > 1,
      );
      const added = (ids: readonly string[]): number[] =>
        ids.map((id) => result.steps.findIndex((step) => step.action === "add" && step.productId === id));
      expect(Math.max(...added(before))).toBeLessThan(place);
      expect(Math.min(...added(after))).toBeGreaterThan(place);
    });
  });
});

test("every mixing order of the library is one of these", () => {
  expect(Object.keys(printed)).toHaveLength(12);
});

test("words of a source that were read as a kind lead to kinds that stand in its order", () => {
  const names = Object.keys(formulations);
  const kindsIn = (reading: string) =>
    (/ read as ([^:;]*)/.exec(reading)?.[1] ?? "").split(/, | and /).filter((word) => names.includes(word));
  expect(kindsIn("'all dry' read as WP and WG, its kinds; it names none")).toEqual(["WP", "WG"]);
  for (const { id, steps, readings } of mixingOrders) {
    for (const kind of (readings ?? []).flatMap(kindsIn)) expect(steps.flat(), id).toContain(kind);
    // One that needed no reading has no list of them.
    expect(readings, id).not.toEqual([]);
  }
});
