import { describe, expect, it } from "vitest";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { tellsEach } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const cce = (value: number) => quantity(value, "lb/1000 ft2", "CaCO3 equivalent");
const standard = (value: number) => quantity(value, "US ton/acre", "product:standard-lime");
const both = "conflict rate: expected a requirement, or a rate with its measure, not both, got both";
const equal = "the weight that the label sets equal to a ton of standard lime";

describe("the lime at hand, told at its place", () => {
  const quality = { CCE: 90 };
  const product = (more: object) => () => call.limeProductRate({ id: "lime-a", quality, ...more });
  tellsEach([
    [product({ requirement: {}, rate: cce(3) }), both],
    [product({ requirement: {}, measure: "CCE" }), both],
    [product({ requirement: 3 }), "type requirement: expected a lime requirement, got 3"],
    [
      product({ requirement: { rate: cce(-1), measure: "CCE" } }),
      "range requirement.rate: expected zero or more, got -1 lb/1000 ft2 of CaCO3 equivalent",
    ],
    [
      product({ rate: cce(-1), measure: "CCE" }),
      "range rate: expected zero or more, got -1 lb/1000 ft2 of CaCO3 equivalent",
    ],
    [
      product({ rate: standard(1), measure: "standard lime", quality: { equalToTon: null } }),
      `missing quality.equalToTon: expected ${equal}, got undefined`,
    ],
    [
      product({
        rate: standard(1),
        measure: "standard lime",
        quality: { equalToTon: quantity(0, "lb", "product") },
      }),
      "range quality.equalToTon: expected more than zero, got 0 lb of product",
    ],
    [
      () => call.limeQuality({ CCE: 90, scheme: "Ohio", equalToTon: quantity(0, "lb", "product") }),
      'type scheme: expected one of "British Columbia", "Iowa ECCE", "Mississippi RNV", "Missouri ENM", "New York ENV", got "Ohio"',
      "range equalToTon: expected more than zero, got 0 lb of product",
    ],
    [
      () => call.limeQuality({ CCE: 90, scheme: "Iowa ECCE", sieves: { passing: 3 } }),
      "type sieves.passing: expected percent passing by mesh number, got 3",
    ],
  ]);

  it("a rating is of what its state counts", () => {
    const rated = (scheme: soil.FinenessSchemeName) => soil.limeQuality({ effective: 60, scheme }).perTon?.of;
    expect(rated("Missouri ENM")).toBe("other:ENM/product");
    for (const scheme of ["British Columbia", "Iowa ECCE", "Mississippi RNV", "New York ENV"] as const)
      expect(rated(scheme)).toBe("CaCO3 equivalent/product");
  });

  it("a lime that is counted by its CCE is of no state", () => {
    const requirement = {
      ...soil.limeRequirement({ method: "buffer pH, Iowa", pH: 5, targetPH: 6.5, bufferPH: 6 }),
      measure: "CCE",
    } as const;
    const given = soil.limeQuality({
      CCE: 90,
      scheme: "Missouri ENM",
      sieves: { fractions: [0, 0, 0, 100] },
    });
    expect(soil.limeProductRate({ requirement, quality: given, id: "lime-a" }).findings).toEqual([]);
  });
});
