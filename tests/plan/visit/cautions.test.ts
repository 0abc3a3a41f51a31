// Which cautions a visit carries, and where on the sheet they stand: what a crew sprays, spreads, mixes or pours decides it.
import { describe, expect, test } from "vitest";
import type { Job, JobProduct, JobTreatment } from "../../../src/plan/index.js";
import { smallJob, soundOrder } from "../helpers.js";

const rate = (value: number, unit: string) => ({ value, unit, of: "product" });
const spread: JobTreatment = {
  id: "spread",
  method: "spread",
  product: "dry",
  rate: rate(3, "lb/1000 ft2"),
};
const sprayOf = (...products: readonly string[]): JobTreatment => ({
  id: "spray",
  method: "spray",
  mix: products.map((product) => ({
    product,
    rate: rate(product === "liq" ? 2 : 1, product === "liq" ? "fl oz/1000 ft2" : "oz/1000 ft2"),
  })),
});
const codesOf = (
  treatments: readonly JobTreatment[],
  products: readonly JobProduct[],
  tank = { value: 49.9, unit: "gal" },
) =>
  soundOrder(
    smallJob({
      treatments,
      products,
      sprayer: { tank, applicationVolume: { value: 1, unit: "gal/1000 ft2", of: "spray" } },
    } as Partial<Job>),
  ).cautions;

const granules: JobProduct = {
  id: "dry",
  form: "dry",
  analysis: "24-0-11",
  use: "fertilizer",
  wateringIn: { least: { value: 0.2, unit: "in" }, source: "label" },
};
const liquid: JobProduct = {
  id: "liq",
  form: "liquid",
  formulation: "EC",
  use: "other",
  wateringIn: { notBefore: { value: 1, unit: "h" }, source: "label" },
};
const powder: JobProduct = { ...liquid, id: "wp", form: "dry", formulation: "WP" };
const packet: JobProduct = {
  ...liquid,
  id: "wsp",
  form: "dry",
  formulation: "water-soluble packet",
  packetSize: { value: 1, unit: "oz" },
};

const always = [
  "stop/label",
  "stop/ground",
  "stop/stress",
  "caution/re-entry",
  "caution/storage",
  "caution/label-first",
  "caution/water-bodies",
  "caution/record",
  "caution/no-food-containers",
  "caution/emergency",
];
const whereSpread = ["caution/hard-surfaces", "caution/wet-leaf", "caution/spreader-check"];
const whereSprayed = [
  "stop/air",
  "stop/wind",
  "stop/last-product",
  "caution/left-over-spray",
  "caution/clean-out",
  "caution/drift",
  "caution/protective-equipment",
  "caution/backflow",
  "caution/stay-at-fill",
  "caution/empty-tank",
  "caution/container-rinse",
];

const listOf = (cautions: ReturnType<typeof codesOf>): readonly string[] =>
  cautions.map(({ code }) => code).sort();
const sorted = (...lists: readonly (readonly string[])[]): readonly string[] => lists.flat().sort();

describe("the cautions of a visit", () => {
  test("granules alone carry none of spraying", () => {
    expect(listOf(codesOf([spread], [granules]))).toEqual(sorted(always, whereSpread));
  });

  test("a liquid alone carries none of spreading, of powders, packets, mixes or large tanks", () => {
    expect(listOf(codesOf([sprayOf("liq")], [liquid]))).toEqual(sorted(always, whereSprayed));
  });

  test.each<readonly [string, readonly JobTreatment[], readonly JobProduct[], readonly string[]]>([
    ["a powder in the tank", [sprayOf("wp")], [powder], ["caution/dry-powder"]],
    [
      "a dry product of a liquid's code",
      [sprayOf("dry")],
      [{ ...liquid, id: "dry", form: "dry" }],
      ["caution/dry-powder"],
    ],
    [
      "a powder that is sold as a slurry",
      [sprayOf("liq")],
      [{ ...liquid, formulation: "WP" }],
      ["caution/dry-powder"],
    ],
    ["packets: no dust", [sprayOf("wsp")], [packet], ["caution/water-soluble-packet"]],
    [
      "two products: a jar test",
      [sprayOf("liq", "wp")],
      [liquid, powder],
      ["caution/dry-powder", "stop/jar-test"],
    ],
    [
      "a rain-free time that is not stated",
      [sprayOf("liq")],
      [{ id: "liq", form: "liquid", formulation: "EC", use: "other" }],
      ["caution/rain-free"],
    ],
    [
      "a fungicide",
      [sprayOf("liq")],
      [{ ...liquid, use: "fungicide" }],
      ["caution/pollinators", "caution/restricted-use-record"],
    ],
    [
      "an insecticide",
      [sprayOf("liq")],
      [{ ...liquid, use: "insecticide" }],
      ["caution/pollinators", "caution/restricted-use-record", "stop/bloom"],
    ],
    [
      "a pre-emergent",
      [sprayOf("liq")],
      [{ ...liquid, use: "pre-emergent herbicide" }],
      ["caution/pollinators", "caution/restricted-use-record"],
    ],
    [
      "a post-emergent: it takes time to go in",
      [sprayOf("liq")],
      [{ ...liquid, use: "post-emergent herbicide" }],
      ["caution/mowing-after", "caution/pollinators", "caution/restricted-use-record"],
    ],
    [
      "a growth regulator",
      [sprayOf("liq")],
      [{ ...liquid, use: "growth regulator" }],
      ["caution/mowing-after", "caution/restricted-use-record"],
    ],
    [
      "a product of which nobody says what it is used as: whatever it may be, but for what is only done after some",
      [sprayOf("liq")],
      [
        {
          id: "liq",
          form: "liquid",
          formulation: "EC",
          wateringIn: { notBefore: { value: 1, unit: "h" }, source: "l" },
        },
      ],
      ["caution/pollinators", "caution/restricted-use-record", "stop/bloom"],
    ],
  ])("%s", (_, treatments, products, more) => {
    expect(listOf(codesOf(treatments, products))).toEqual(sorted(always, whereSprayed, more));
  });

  test("a tank of 50 gal may be climbed into, one of 49.9 is not", () => {
    expect(listOf(codesOf([sprayOf("liq")], [liquid], { value: 50, unit: "gal" }))).toEqual(
      sorted(always, whereSprayed, ["caution/closed-tank"]),
    );
  });

  test("water after granules is asked for where the job does not state the label's rule", () => {
    const { wateringIn, ...rest } = granules;
    expect(listOf(codesOf([spread], [rest]))).toEqual(sorted(always, whereSpread, ["caution/watering-in"]));
  });

  test("each stands where it is needed, with a line where it belongs to a step, and says who states it", () => {
    const all = codesOf(
      [spread, sprayOf("liq", "wp", "wsp")],
      [granules, { ...liquid, use: "insecticide" }, powder, packet],
      { value: 100, unit: "gal" },
    );
    expect(all.flatMap(({ code, place, line }) => (place === "step" ? [[code, line]] : []))).toEqual([
      ["caution/dry-powder", "Weigh it; pour low, out of the wind; no dust."],
      ["caution/backflow", "Air gap at the hose; stay with the fill."],
      ["caution/container-rinse", "Container empty? Triple-rinse it into the tank."],
      ["caution/water-soluble-packet", "Dry gloves, whole packets, never cut."],
    ]);
    const at = (place: string) => listOf(all.filter((one) => one.place === place));
    expect(at("stop")).toEqual(
      sorted(all.map(({ code }) => code).filter((code) => code.startsWith("stop/"))),
    );
    expect(at("after")).toEqual([
      "caution/hard-surfaces",
      "caution/left-over-spray",
      "caution/re-entry",
      "caution/storage",
    ]);
    for (const { text, source } of all) {
      expect(text).toMatch(/^[a-zA-Z].{20,}[.;]$/);
      if (typeof source === "string") expect(source).toBe("common practice, no source");
      else {
        const {
          title,
          publisher,
          url = "https://",
        } = source as { title: string; publisher: string; url?: string };
        expect(title.length * publisher.length).toBeGreaterThan(50);
        expect(url).toMatch(/^https?:\/\//);
      }
    }
    const found = new Map(all.map(({ code, source }) => [code, source]));
    for (const [code, of] of [
      ["stop/wind", "Pesticide Environmental Stewardship"],
      ["stop/air", "Pesticide Environmental Stewardship"],
      ["caution/drift", "Pesticide Environmental Stewardship"],
      ["stop/last-product", "Sports Field Management"],
      ["caution/clean-out", "Sports Field Management"],
      ["stop/jar-test", "Utah State University Extension"],
      ["stop/bloom", "University of Illinois Extension"],
      ["caution/hard-surfaces", "Delaware Livable Lawns"],
      ["caution/storage", "University of Georgia, Pesticide Safety Education Program"],
      ["caution/restricted-use-record", "U.S. Code of Federal Regulations"],
    ] as const)
      expect(found.get(code), code).toMatchObject({ publisher: of });
  });
});
