import { describe, expect, it } from "vitest";
import { quantity } from "../../src/quantity/index.js";
import * as soil from "../../src/soil/index.js";
import { said } from "../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const layer = { assumed: "2,000,000 lb/acre" };

describe("a field that no function knows is told at its place", () => {
  it.each([
    "acidForAlkalinity",
    "acidityFromBuffer",
    "adjustedSodiumRatio",
    "availableNitrogen",
    "blendShare",
    "compostAmount",
    "dissolvedSalts",
    "exchangeCapacity",
    "foliarMicronutrient",
    "gypsumRequirement",
    "irrigationLoad",
    "irrigationWithLeaching",
    "leachingRequirement",
    "limeForDepth",
    "limeForRating",
    "limeProductRate",
    "limeQuality",
    "nutrientNeed",
    "nutrientUse",
    "onDryBasis",
    "onWetBasis",
    "residualLimeCredit",
    "soilTestReading",
    "splitAmendment",
    "sulfurApplications",
    "sulfurForCarbonate",
    "sulfurToIncorporate",
    "tissueReading",
  ] as const)("%s", (name) => {
    const [problem] = said(() => call[name]({ nonsense: 1 }));
    expect(problem).toMatch(/^type input\.nonsense: expected one of the fields \w.*, got a field "nonsense"/);
  });

  it.each([
    "Mehlich buffer, North Carolina",
    "Mehlich buffer, Pennsylvania fields",
    "Mehlich buffer, Pennsylvania turf",
    "exchangeable acidity",
    "base saturation",
    "pH buffering",
  ])("limeRequirement by %s", (method) => {
    const [problem] = said(() => call.limeRequirement({ method, nonsense: 1 }));
    expect(problem).toMatch(/^type input\.nonsense: expected one of the fields method, /);
  });

  it("within a layer, a water, a guideline, a sieve test and a source", () => {
    const water = { nonsense: 1 };
    const first = (run: () => unknown) => said(run)[0]?.split(":")[0];
    expect([
      first(() => call.soilMass({ ...layer, nonsense: 1 })),
      first(() => call.ionBalance(water)),
      first(() => call.sodiumAdsorptionRatio(water)),
      first(() => call.residualSodiumCarbonate(water)),
      first(() => call.irrigationLoad({ water, depth: quantity(1, "in") })),
      first(() => call.blendWaters([{ nonsense: 1 }])),
      first(() => call.limeQuality({ CCE: 90, scheme: "Iowa ECCE", sieves: { nonsense: 1 } })),
      first(() => call.exchangeCapacity({ cations: { Fe: 1 }, acidity: quantity(1, "meq/100 g") })),
    ]).toEqual([
      "type layer.nonsense",
      "type water.nonsense",
      "type water.nonsense",
      "type water.nonsense",
      "type water.nonsense",
      "type parts[0].nonsense",
      "type sieves.nonsense",
      "type cations.Fe",
    ]);
  });

  it("a figure that is missing is told by its name", () => {
    const paths = (run: () => unknown) => said(run).map((one) => one.split(":")[0]);
    expect(paths(() => call.dissolvedSalts({}))).toEqual(["missing conductivity"]);
    expect(paths(() => call.waterSaltClass(3))).toEqual(["type conductivity"]);
    expect(paths(() => call.irrigationLoad({}))).toEqual(["missing water", "missing depth"]);
    expect(paths(() => call.residualSodiumCarbonate({}))).toEqual([
      "missing water.HCO3",
      "missing water.Ca",
      "missing water.Mg",
    ]);
    expect(paths(() => call.irrigationWithLeaching({}))).toEqual(["missing use", "missing share"]);
    expect(paths(() => call.compostAmount({}))).toEqual([
      "missing area",
      "missing depth",
      "missing bulkDensity",
      expect.stringMatching(/ moisture$/),
    ]);
    expect(paths(() => call.sulfurForCarbonate({}))).toEqual(["missing carbonate", "missing layer"]);
    expect(paths(() => call.amountInSoil(3, layer))).toEqual(["type content"]);
    expect(paths(() => call.contentInSoil(3, 4))).toEqual(["type amount", "type layer"]);
    expect(paths(() => call.exchangeableCharge(3))).toEqual(["type content"]);
    expect(paths(() => call.contentOfCharge(3))).toEqual(["type charge"]);
    expect(paths(() => call.limeForDepth({}))).toEqual(["missing rate", "missing from", "missing to"]);
    expect(paths(() => call.limeForRating({}))).toEqual(["missing recommended", "missing rating"]);
    expect(paths(() => call.residualLimeCredit({}))).toEqual([
      "missing applied",
      expect.stringMatching(/ months$/),
      "missing soil",
    ]);
  });
});
