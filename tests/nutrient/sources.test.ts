import { describe, expect, test } from "vitest";
import * as nutrient from "../../src/nutrient/index.js";
import {
  activityIndex,
  controlledReleaseTest,
  isobutylideneDiurea,
  methyleneUrea,
  nitrogenBreakdown,
  type ReleaseModel,
  releaseClass,
  statedDuration,
  sulfurCoatedUrea,
  ureaform,
} from "../../src/nutrient/index.js";
import { quantity } from "../../src/quantity/index.js";

// Whoever reads a figure of this room reads where it is printed: no table, model, result or finding has a source that says
// nothing, and every model tells what it takes for granted.

/** Every place of a value, with its path. */
const places = (value: unknown, path: string): readonly (readonly [path: string, value: unknown])[] =>
  Object(value) === value && typeof value !== "function"
    ? [
        [path, value],
        ...Object.entries(value as object).flatMap(([key, part]) => places(part, `${path}.${key}`)),
      ]
    : [[path, value]];

const coated = () => nitrogenBreakdown({ percent: { urea: 12, waterInsoluble: 2, coated: 10 } }, 24);
const share = (percent: number) => quantity(percent, "% w/w", "other:WIN/N");
const scu = (sealed: boolean, lag?: { low: number; high: number }): ReleaseModel =>
  sulfurCoatedUrea({
    sevenDayDissolution: quantity(25, "%"),
    sealed,
    source: "the maker's sheet",
    ...(lag === undefined ? {} : { lagDays: lag }),
  });
const made = () => ({
  nutrient: Object.fromEntries(Object.entries(nutrient).filter(([, value]) => typeof value !== "function")),
  activityIndex: activityIndex({
    coldInsoluble: share(10),
    hotInsoluble: share(8),
  }),
  controlledReleaseTest: controlledReleaseTest({
    percentAt24Hours: 10,
    percentAt28Days: 50,
    percentAtStatedTime: 80,
    statedDays: 90,
    temperatureC: 25,
  }),
  releaseClasses: (
    ["suffolk water-insoluble", "suffolk with coated", "thirty percent", "Vermont 1266b"] as const
  ).map((scheme) => releaseClass(coated(), scheme)),
  breakdown: nitrogenBreakdown(undefined, 24),
  models: [
    isobutylideneDiurea({ particleSize: { low: quantity(0.7, "mm"), high: quantity(2.5, "mm") } }),
    methyleneUrea(),
    ureaform(),
    ureaform({ waterInsolubleShare: share(60), activityIndex: quantity(50, "%") }),
    scu(true),
    scu(false),
    statedDuration({ days: { low: 60, high: 90 }, source: "the label" }),
  ],
});
const all = () => places(made(), "made");

describe("sources", () => {
  test("each names a title and a publisher, or is a text that says something", () => {
    const sources = all().filter(([path]) => path.endsWith(".source"));
    expect(sources.length).toBeGreaterThan(60);
    for (const [path, source] of sources) {
      if (typeof source === "string") {
        expect(source.trim(), path).not.toBe("");
        continue;
      }
      const { title, publisher, year, where, url } = source as Readonly<Record<string, unknown>>;
      for (const text of [title, publisher, where ?? "none", url ?? "https://none"])
        expect(text, path).toEqual(expect.stringMatching(/\S/));
      expect(url ?? "https://none", path).toMatch(/^https?:\/\/\S+$/);
      expect((year as number | undefined) ?? 2000, path).toBeGreaterThan(1900);
    }
  });

  test("no name, note, assumption or text of a finding is empty", () => {
    const texts = all().filter(
      ([path, value]) =>
        /\.(name|note|text|kind|class|assumptions\.\d+)$/.test(path) && typeof value === "string",
    );
    expect(texts.length).toBeGreaterThan(50);
    for (const [path, text] of texts) expect(String(text).trim(), path).not.toBe("");
  });
});

describe("models of release", () => {
  const models = () =>
    all().flatMap(([path, value]) =>
      (value as { readonly type?: unknown } | undefined)?.type === "release-model"
        ? [[path, value as ReleaseModel] as const]
        : [],
    );
  test("each tells what it takes for granted", () => {
    expect(models().length).toBeGreaterThan(12);
    for (const [path, { assumptions }] of models()) expect(assumptions, path).not.toEqual([]);
  });

  test("in the soil they take moisture for granted, and say where a response to warmth has no source", () => {
    const told = (model: ReleaseModel): string => model.assumptions.join("; ");
    const { polymerCoatedInSoil, slowPolymerCoatedInSoil, sulfurCoatedOnSurface, polymerCoatedOnSurface } =
      nutrient;
    for (const model of [
      polymerCoatedInSoil,
      slowPolymerCoatedInSoil,
      scu(true),
      ...made().models.slice(0, 1),
    ])
      expect(told(model)).toContain("the granule stays moist enough to release");
    for (const model of [slowPolymerCoatedInSoil, sulfurCoatedOnSurface, polymerCoatedOnSurface])
      expect(told(model)).toContain("the source gives no response to temperature");
    expect(polymerCoatedOnSurface.observed).toEqual({ days: 150 });
  });

  test("a seal of wax waits, unless the maker states how long", () => {
    const wait = "a lag of 0 to 25 days until microbes open the seal";
    const lags = { low: 5, high: 10 };
    expect(
      [scu(true), scu(false), scu(true, lags), scu(false, lags)].map((m) => m.assumptions.includes(wait)),
    ).toEqual([true, false, false, false]);
    expect([scu(true), scu(false), scu(true, lags)].map((m) => m.assumptions.length)).toEqual([5, 4, 4]);
    const range = (m: ReleaseModel) => (m.curve.kind === "first order" ? m.curve.lagDays : undefined);
    expect([scu(true), scu(false), scu(true, lags)].map(range)).toMatchObject([
      { high: 25 },
      { high: 0 },
      lags,
    ]);
  });
});

describe("classes of release", () => {
  test("tell what a scheme leaves out, in figures and words, beside what the breakdown told already", () => {
    // 2 of 24 are 8.3 %, 12 of 24 are half.
    const of = (scheme: Parameters<typeof releaseClass>[1], breakdown = coated()) =>
      releaseClass(breakdown, scheme);
    const [finding, ...more] = of("suffolk water-insoluble").findings;
    expect(more).toEqual([]);
    expect(finding).toMatchObject({
      code: "nitrogen/coated-not-counted",
      severity: "note",
      params: { scheme: "suffolk water-insoluble", share: expect.closeTo(25 / 3, 9), slowShare: 50 },
      text: "The scheme looks at water-insoluble nitrogen alone (8.3 % of the nitrogen); with coated and other slow nitrogen it is 50 %.",
    });
    expect(of("suffolk with coated").findings).toEqual([]);
    const organic = nitrogenBreakdown({ percent: { urea: 14, waterInsoluble: 6 } }, 20);
    expect(of("suffolk water-insoluble", organic).findings).toEqual([]);
    expect(of("thirty percent", made().breakdown).findings.map(({ code }) => code)).toEqual([
      "nitrogen/no-breakdown",
    ]);
  });

  test("an index below 40 says so", () => {
    // 2 of 10 dissolve in hot water: 20 %.
    expect(made().activityIndex.findings[0]?.text).toBe(
      "The activity index of 20 lies below 40: much of this nitrogen may not become available within a season.",
    );
    expect(made().activityIndex.findings[0]?.params).toEqual({ index: 20, minimum: 40 });
  });
});
