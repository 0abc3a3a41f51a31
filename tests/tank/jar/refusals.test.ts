import { describe, expect, test } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import {
  fixedJarAmount,
  type JarProduct,
  jarReadings,
  jarTest,
  twoJarReading,
} from "../../../src/tank/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of a jar test, and what a person reads who makes one.

const jar = quantity(1000, "mL", "spray");
const applicationVolume = quantity(400, "L/ha", "spray");
const liquid = { id: "a", formulation: "SL", rate: quantity(2, "L/ha", "product:a") } as const;
const test0 = (change: object) => () =>
  jarTest({ jar, applicationVolume, products: [liquid], ...change } as never);
const one = (change: object) => test0({ products: [{ ...liquid, ...change }] });

const rows: readonly Refused[] = [
  [test0({ jar: undefined }), "missing", "jar", "a volume"],
  [test0({ jar: quantity(1, "L", "water") }), "substance/mismatch", "jar", "spray"],
  [test0({ stand: "Ohio" }), "type", "stand", '"Utah State"'],
  [test0({ mixingOrder: "ohio" }), "type", "mixingOrder", '"consensus" or the id of a published mixingOrder'],
  [test0({ applicationVolume: undefined }), "missing", "applicationVolume", "because the rate is per area"],
  [test0({ products: 7 }), "type", "products", "list"],
  [test0({ products: [7] }), "type", "products[0]", "a product"],
  [one({ rate: undefined }), "missing", "products[0].rate", "a rate of product"],
  [one({ rate: quantity(2, "L/ha", "product:b") }), "substance/mismatch", "products[0].rate", "product:a"],
  [one({ form: "solid" }), "type", "products[0].form", '"dry"'],
  [one({ form: "dry" }), "missing", "products[0].density", "a density"],
  [one({ shade: "dark" }), "type", "products[0].shade", "rate"],
  [
    one({ rate: quantity(401, "L/ha", "product:a") }),
    "infeasible",
    "products[0].rate",
    "less product than the jar holds (1000 mL of spray)",
  ],
  [
    () => fixedJarAmount("QQ" as never, quantity(1, "pt", "water")),
    "type",
    "formulation",
    "a kind of formulation",
  ],
  [() => fixedJarAmount("WP", quantity(1, "pt", "spray") as never), "substance/mismatch", "water", "water"],
  [() => fixedJarAmount("WP", quantity(0, "pt", "water")), "range", "water", "more than zero"],
  [() => twoJarReading(7 as never), "type", "jars", "record"],
  [() => twoJarReading({ failedWithAgent: true } as never), "missing", "failedWithoutAgent", "true or false"],
  [() => twoJarReading({ failedWithoutAgent: true } as never), "missing", "failedWithAgent", "true or false"],
  [
    () => twoJarReading({ failedWithoutAgent: true, failedWithAgent: 1 } as never),
    "type",
    "failedWithAgent",
    "true or false",
  ],
  [
    () => twoJarReading({ failedWithoutAgent: false, failedWithAgent: true }),
    "conflict",
    "failedWithAgent",
    "false where the jar without agent did not fail: repeat the test",
  ],
  [
    () => twoJarReading({ failedWithoutAgent: true, failedWithAgent: true, agent: 1 } as never),
    "type",
    "jars.agent",
    "failedWithAgent",
  ],
];

describeRefused("what is refused of a jar test", rows);

describe("the steps of a jar test", () => {
  const textsOf = (products: readonly JarProduct[], more: object = {}) =>
    jarTest({ jar, applicationVolume, products, ...more }).steps.map(({ text }) => text);

  test("from the water to the tank, in the order of the products", () => {
    // The jar stands for 25 m2: 5 mL of 2 L/ha, 2.5 g of 1 kg/ha.
    const powder: JarProduct = {
      id: "p",
      name: "Powder P",
      formulation: "WP",
      rate: quantity(1, "kg/ha", "product:p"),
      labelNote: "keep stirring",
    };
    expect(textsOf([liquid, powder])).toEqual([
      "Wear what the labels require for mixers and loaders, and work outdoors or under a hood.",
      "Half-fill a clear jar (500 mL) with water from the spray source, at its temperature.",
      "Add 2.5 g of Powder P. Cap the jar and shake well. Label: keep stirring",
      "Add 5 mL of a. Cap the jar and shake well.",
      "Fill to 1000 mL with the same water, cap, invert ten times. Feel the jar for heat.",
      "Let it stand 15 minutes, look, shake, look again.",
      "Pour the jar into the tank when that mix is loaded, and put in that much less of each product, or apply it to a labeled site at or below the label rate.",
    ]);
    const { steps } = jarTest({ jar, applicationVolume, products: [liquid, powder] });
    expect(steps.map(({ number }) => number)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(steps.map(({ minutes }) => minutes).filter((minutes) => minutes !== undefined)).toEqual([15]);
  });

  test("it stands five minutes by the other of the two sources", () => {
    const found = jarTest({ jar, applicationVolume, products: [liquid], stand: "University of Arizona" });
    expect([found.source, found.steps[4]?.minutes]).toEqual(["University of Arizona", 5]);
    expect(jarTest({ jar, applicationVolume, products: [liquid] }).source).toBe("Utah State");
  });

  const share = (percent: number): JarProduct => ({
    id: "a",
    formulation: "SL",
    rate: quantity(percent, "% v/v", "product:a/spray"),
  });

  test("half of the jar is water, or what the liquids leave of it", () => {
    expect(textsOf([share(50)])[1]).toBe(
      "Half-fill a clear jar (500 mL) with water from the spray source, at its temperature.",
    );
    expect(textsOf([share(60)])[1]).toBe(
      "Put into a clear jar (400 mL) with water from the spray source, at its temperature.",
    );
    expect(textsOf([share(100)])[1]).toBe("Take a clear jar: the liquids fill it, and no water goes in.");
  });

  test("a liquid of which the rate is by weight is poured by its density, and a liquid can be weighed", () => {
    // 2 kg/ha at 1.25 kg/L are 1.6 L/ha, 4 mL in the jar.
    const byWeight: JarProduct = {
      ...liquid,
      rate: quantity(2, "kg/ha", "product:a"),
      density: quantity(1.25, "kg/L"),
    };
    const poured = jarTest({ jar, applicationVolume, products: [byWeight] }).amounts[0]?.amount;
    expect([poured?.unit, poured?.value]).toEqual(["mL", 4]);
    const weighed = jarTest({ jar, applicationVolume, products: [{ ...byWeight, form: "dry" }] });
    expect(weighed.amounts[0]?.amount.toString()).toBe("5 g of product:a");
    expect(weighed.cautions.map(({ code }) => code)).toContain("caution/dry-powder");
  });

  test("a packet is left out, and the maker is to be asked", () => {
    const { findings } = jarTest({
      jar,
      applicationVolume,
      products: [
        liquid,
        {
          id: "b",
          name: "Bag B",
          formulation: "water-soluble packet",
          rate: quantity(1, "kg/ha", "product:b"),
        },
      ],
    });
    const found = findings.find(({ code }) => code === "jar/packet-left-out");
    expect(found?.params).toEqual({ product: "b" });
    expect(found?.text).toBe(
      "Bag B is left out of the jar: its packets are never cut or opened, and a whole one is too much for a jar. The jar shows the rest of the mix only. Ask the maker of Bag B about the mix.",
    );
    expect(found?.source).toBe("common practice, no source");
  });

  test("cautions are those of handling products", () => {
    const codes = jarTest({ jar, applicationVolume, products: [liquid] }).cautions.map(({ code }) => code);
    expect([...codes].sort()).toEqual([
      "caution/emergency",
      "caution/label-first",
      "caution/no-food-containers",
      "caution/protective-equipment",
    ]);
  });
});

describe("what the jar says beyond its amounts", () => {
  test("cautions of something that is weighed are those of a liquid and that of dust, and no more", () => {
    const powder: JarProduct = { id: "p", formulation: "WP", rate: quantity(1, "kg/ha", "product:p") };
    const codes = jarTest({ jar, applicationVolume, products: [powder] }).cautions.map(({ code }) => code);
    expect([...codes].sort()).toEqual([
      "caution/dry-powder",
      "caution/emergency",
      "caution/label-first",
      "caution/no-food-containers",
      "caution/protective-equipment",
    ]);
  });

  test("a jar that is mostly product asks for the slip that its rate can have", () => {
    const text = (rate: JarProduct["rate"]) =>
      jarTest({ jar, applicationVolume, products: [{ id: "a", formulation: "SL", rate }] }).findings[0]?.text;
    expect(text(quantity(60, "% v/v", "product:a/spray"))).toMatch(
      /^The jar takes 600 mL of a .*per 100 L, and not per L\?$/,
    );
    expect(text(quantity(240, "L/ha", "product:a"))).toMatch(
      /^The jar takes 600 mL of a .*per hectare, and not per 100 m2, /,
    );
  });

  test("the readings of two jars and the order that was asked for come with it", () => {
    const found = jarTest({ jar, applicationVolume, products: [liquid], mixingOrder: "missouri-dot" });
    expect(found.readings).toHaveLength(3);
    const named = jarTest({
      jar,
      applicationVolume,
      products: [{ id: "c", formulation: "CS", rate: quantity(1, "L/ha", "product:c") }],
      mixingOrder: "missouri-dot",
    });
    expect(named.findings.map(({ code }) => code)).toContain("order/not-in-mixing-order");
  });
});

describe("what is printed of jars", () => {
  test("amounts to a pint of water, whatever the rate", () => {
    const pint = quantity(1, "pt", "water");
    for (const kind of ["water-soluble packet", "WP", "WG"] as const)
      expect(fixedJarAmount(kind, pint)).toEqual({ value: 1, unit: "tbsp" });
    for (const kind of ["CS", "EC", "SL", "SP", "surfactant"] as const)
      expect(fixedJarAmount(kind, pint)).toEqual({ value: 1, unit: "tsp" });
    for (const kind of ["liquid fertilizer", "dry fertilizer"] as const)
      expect(fixedJarAmount(kind, pint)).toEqual({ value: 1.1, unit: "g" });
  });

  test("the table of readings says what the reading of two jars says", () => {
    expect(jarReadings).toHaveLength(3);
    for (const { withoutAgent, withAgent, decision, source } of jarReadings) {
      expect(
        twoJarReading({
          failedWithoutAgent: withoutAgent === "failed",
          failedWithAgent: withAgent === "failed",
        }),
      ).toBe(decision);
      expect(source.publisher).toContain("Arizona");
    }
  });

  test("failures, each once and with its source", () => {
    const { failures, cannotShow } = jarTest({ jar, applicationVolume, products: [liquid] });
    const signs = failures.map(({ sign }) => sign);
    expect(new Set(signs).size).toBe(signs.length);
    for (const word of ["warm", "layers", "clumps", "foam", "flakes", "gel", "oil"])
      expect(signs.join(", ")).toContain(word);
    for (const { sign, source } of failures)
      expect(source.publisher).toContain(/flakes|gel|oil/.test(sign) ? "Arizona" : "Utah");
    for (const word of ["weakens", "turf", "stands longer", "law"])
      expect(cannotShow.join("; ")).toContain(word);
  });
});
