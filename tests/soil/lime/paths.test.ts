import { describe, expect, it } from "vitest";
import { potentialAcidityOfSource } from "../../../src/index.js";
import { quantity } from "../../../src/quantity/index.js";
import * as soil from "../../../src/soil/index.js";
import { said } from "../../tells.js";

type Plain = (...input: unknown[]) => unknown;
/** Each function as plain JavaScript calls it. */
const call = soil as unknown as Readonly<Record<keyof typeof soil, Plain>>;
const meq = (value: number) => quantity(value, "meq/100 g");
const percent = (value: number) => quantity(value, "%");
const layer = { assumed: "2,000,000 lb/acre" } as const;
const paths = (method: string, more: object) =>
  said(() => call.limeRequirement({ method, ...more })).map((one) => one.split(":")[0]);

describe("lime, told at its place", () => {
  it("each figure that a method takes", () => {
    const phs = { pH: 5, targetPH: 6 };
    expect(said(() => call.limeRequirement(3))[0]).toMatch(/^type input: /);
    expect(paths("Mehlich buffer, Pennsylvania fields", { pH: 5, targetPH: 7 })).toEqual(["missing acidity"]);
    expect(paths("exchangeable acidity", {})).toEqual(["missing acidity", "missing layer"]);
    expect(paths("base saturation", {})).toEqual([
      "missing capacity",
      "missing baseSaturation",
      "missing targetSaturation",
      "missing layer",
    ]);
    expect(paths("pH buffering", phs)).toEqual(["missing perUnitPH", "missing layer"]);
  });

  it("a base saturation that is at its target needs none", () => {
    const found = soil.limeRequirement({
      method: "base saturation",
      capacity: meq(10),
      baseSaturation: percent(80),
      targetSaturation: percent(80),
      layer,
    });
    expect(found.rate.value).toBe(0);
  });

  it("the unit of a rate is that of its method, also where none is needed", () => {
    const none = (input: object) =>
      soil.limeRequirement({ pH: 6.5, targetPH: 6.5, ...input } as Parameters<typeof soil.limeRequirement>[0])
        .rate;
    expect(none({ method: "Mehlich buffer, North Carolina", bufferPH: 6.5 }).unit).toBe("US ton/acre");
    expect(none({ method: "Mehlich buffer, Pennsylvania fields", acidity: meq(3) }).unit).toBe("lb/acre");
  });

  it("a doubtful figure is one of the column of Iowa alone", () => {
    const codes = soil
      .limeRequirement({ method: "Sikora buffer, Oregon", pH: 5, targetPH: 6.8, bufferPH: 5 })
      .findings.map(({ code }) => code);
    expect(codes).toEqual([]);
    const straight = soil.limeRequirement({
      method: "pH buffering",
      pH: 4.4,
      targetPH: 6,
      perUnitPH: meq(2),
      layer,
    });
    expect(straight.findings[0]?.source).toBe("from memory");
  });

  it("the nitrogen of a season that leaves base calls for no lime, and says how much it leaves", () => {
    const season = (source: "nitrate" | "ammonium sulfate") =>
      soil.limeForSeason([
        {
          nitrogen: quantity(3, "lb/1000 ft2", "N"),
          acidity: potentialAcidityOfSource({ source, convention: "half nitrogen credit" }),
        },
      ]);
    const basic = season("nitrate");
    const [finding] = basic.findings;
    expect(basic.rate.value).toBe(0);
    expect(finding).toMatchObject({ code: "lime/season-is-basic", path: "season" });
    const base = Number(finding?.params.base);
    // Half a mole of CaCO3 for each of two moles of nitrogen: 3 x 100.09 / (4 x 14.007)
    expect(base).toBeCloseTo((3 * 100.087) / (4 * 14.007), 2);
    expect(finding?.params.unit).toBe("lb/1000 ft2");
    expect(finding?.text).toBe(
      `The nitrogen of the season leaves base, as much as ${Number(base.toPrecision(3))} lb/1000 ft2 of CaCO3: it calls for no lime.`,
    );
    const sour = season("ammonium sulfate");
    expect([sour.findings, sour.rate.value > 0]).toEqual([[], true]);
    const none = soil.limeForSeason([
      {
        nitrogen: quantity(0, "lb/1000 ft2", "N"),
        acidity: potentialAcidityOfSource({ source: "nitrate", convention: "half nitrogen credit" }),
      },
    ]);
    expect(none.findings).toEqual([]);
  });
});
