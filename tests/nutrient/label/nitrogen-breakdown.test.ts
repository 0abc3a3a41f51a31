import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  activityIndex,
  analysis,
  fertilizer,
  type NitrogenGuarantee,
  nitrogenBreakdown,
  productNitrogen,
  releaseClass,
  releaseSchemes,
} from "../../../src/nutrient/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { complaints } from "../../errors.js";

const tenths = fc.integer({ min: 0, max: 150 }).map((n) => n / 10);

describe("a breakdown of nitrogen", () => {
  test("splits the total into slow and soluble, whatever the lines", () => {
    fc.assert(
      fc.property(
        fc.record({
          urea: tenths,
          nitrate: tenths,
          ammoniacal: tenths,
          waterInsoluble: tenths,
          coated: tenths,
        }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (percent, claimed) => {
          const total = Object.values(percent).reduce((sum, part) => sum + part, 0);
          fc.pre(total > 0);
          const found = nitrogenBreakdown({ percent, slowWithin: { urea: percent.urea * claimed } }, total);
          const slow = percent.waterInsoluble + percent.coated + percent.urea * claimed;
          expect(found.slow.in("% w/w")).toBeCloseTo(slow, 9);
          expect(found.slow.in("% w/w") + found.quick.in("% w/w")).toBeCloseTo(total, 9);
          expect(found.slowShare.in("% w/w")).toBeCloseTo((slow * 100) / total, 9);
          expect(found.slowShare.in("% w/w")).toBeLessThanOrEqual(100);
        },
      ),
    );
  });

  test("a footnote to the urea line is slow, is part of the line and is not water-insoluble", () => {
    const found = nitrogenBreakdown({ percent: { urea: 20, nitrate: 4 }, slowWithin: { urea: 12 } }, 24);
    expect(found.slow.in("% w/w")).toBe(12);
    expect(found.slowShare.in("% w/w")).toBe(50);
    expect(found.waterInsolubleShare?.in("% w/w")).toBe(0);
  });

  test("0.1 % printed lines add up though their floating-point sum does not", () => {
    expect(complaints(() => nitrogenBreakdown({ percent: { urea: 0.1, nitrate: 0.2 } }, 0.3))).toEqual([]);
  });

  test("refuses what no label can say, with the line", () => {
    const at = (guarantee: unknown, total: number) =>
      complaints(() => nitrogenBreakdown(guarantee as NitrogenGuarantee, total));
    expect(at({ percent: { urea: 20 } }, 24)).toEqual(["conflict guarantee.percent"]);
    expect(at({ percent: { urea: -4, coated: 28 } }, 24)).toEqual(["range guarantee.percent.urea"]);
    expect(at({ percent: { urea: Number.NaN } }, 24)).toEqual(["not-finite guarantee.percent.urea"]);
    expect(at({ percent: { urea: "24" } }, 24)).toEqual(["not-finite guarantee.percent.urea"]);
    expect(at({ percent: { win: 24 } }, 24)).toEqual(["type guarantee.percent.win"]);
    expect(at({ percent: { urea: 24 }, slowWithin: { urea: 25 } }, 24)).toEqual([
      "conflict guarantee.slowWithin.urea",
    ]);
    expect(at({ percent: { coated: 24 }, slowWithin: { coated: 2 } }, 24)).toEqual([
      "type guarantee.slowWithin.coated",
    ]);
    expect(at({}, 24)).toEqual(["missing guarantee.percent"]);
    expect(at(undefined, 0)).toEqual(["range total"]);
    expect(at(undefined, 101)).toEqual(["range total"]);
  });

  test("figures that add up to 100 are taken for shares of the nitrogen, and the error says so", () => {
    expect(() => nitrogenBreakdown({ percent: { urea: 60, coated: 40 } }, 24)).toThrow(/percent of product/);
  });

  test("without one all nitrogen is quick, as a finding", () => {
    const found = productNitrogen(fertilizer({ id: "a", analysis: "46-0-0" }));
    expect([found.basis, found.slow.value, found.findings[0]?.code]).toEqual([
      "none stated",
      0,
      "nitrogen/no-breakdown",
    ]);
  });
});

describe("a fertilizer with a breakdown", () => {
  const nitrogen = { percent: { urea: 12, coated: 12 } };

  test("has its slow nitrogen from it, also after JSON", () => {
    const feed = fertilizer({ id: "a", analysis: "24-0-11", nitrogen });
    expect(feed.slowNitrogen?.in("% w/w")).toBe(12);
    const back = fertilizer(JSON.parse(JSON.stringify(feed)));
    expect(JSON.stringify(back)).toBe(JSON.stringify(feed));
    expect(productNitrogen(back).basis).toBe("breakdown");
  });

  test("may state the same slow nitrogen, and no other", () => {
    const stated = (percent: number) =>
      complaints(() =>
        fertilizer({
          id: "a",
          analysis: "24-0-11",
          nitrogen,
          slowNitrogen: quantity(percent, "% w/w", "N:slow/product"),
        }),
      );
    expect(stated(12)).toEqual([]);
    expect(stated(10)).toEqual(["conflict fertilizer.slowNitrogen"]);
    expect(stated(0)).toEqual(["conflict fertilizer.slowNitrogen"]);
  });

  test("does not add up: named in the record", () => {
    expect(complaints(() => fertilizer({ id: "a", analysis: "30-0-0", nitrogen }))).toEqual([
      "conflict fertilizer.nitrogen.percent",
    ]);
  });
});

describe("release class", () => {
  test("never gets quicker as more of the nitrogen is slow", () => {
    for (const scheme of ["suffolk with coated", "thirty percent", "Vermont 1266b"] as const) {
      const names = releaseSchemes[scheme].classes.map(({ name }) => name);
      const ranks = Array.from({ length: 101 }, (_, slow) => {
        const broken = nitrogenBreakdown({ percent: { urea: 100 - slow, coated: slow } }, 100);
        return names.indexOf(releaseClass(broken, scheme).class);
      });
      expect(ranks[0]).toBe(names.length - 1);
      expect(ranks.at(-1)).toBe(0);
      expect(ranks.every((rank, i) => i === 0 || rank <= (ranks[i - 1] as number))).toBe(true);
    }
  });

  test("0.295 is slow by one scheme and moderate by another", () => {
    const broken = nitrogenBreakdown({ percent: { urea: 70.5, coated: 29.5 } }, 100);
    expect(releaseClass(broken, "suffolk with coated").class).toBe("slow");
    expect(releaseClass(broken, "thirty percent").class).toBe("moderate");
  });

  test("a scheme of water-insoluble nitrogen says what it leaves out, and refuses a bare slow figure", () => {
    const coated = nitrogenBreakdown({ percent: { urea: 12, coated: 12 } }, 24);
    expect(releaseClass(coated, "suffolk water-insoluble").findings.map(({ code }) => code)).toEqual([
      "nitrogen/coated-not-counted",
    ]);
    const bare = productNitrogen(
      fertilizer({ id: "a", analysis: "24-0-0", slowNitrogen: quantity(12, "% w/w", "N:slow/product") }),
    );
    expect(complaints(() => releaseClass(bare, "suffolk water-insoluble"))).toEqual([
      "missing breakdown.waterInsolubleShare",
    ]);
    expect(complaints(() => releaseClass(coated, "toString" as never))).toEqual(["type scheme"]);
  });
});

describe("activity index", () => {
  const of = (cold: number, hot: number) =>
    activityIndex({
      coldInsoluble: quantity(cold, "% w/w", "N/product"),
      hotInsoluble: quantity(hot, "% w/w", "N/product"),
    });

  test("falls from 100 to 0 as hot water leaves more, and is a finding below 40 only", () => {
    expect(of(20, 0).index.in("%")).toBe(100);
    expect(of(20, 20).index.in("%")).toBe(0);
    expect(of(20, 12).findings).toEqual([]);
    expect(of(20, 12.1).findings[0]?.code).toBe("nitrogen/activity-index-low");
  });

  test("refuses what cannot be", () => {
    expect(complaints(() => of(12, 24))).toEqual(["conflict hotInsoluble"]);
    expect(complaints(() => of(0, 0))).toEqual(["range coldInsoluble"]);
    expect(complaints(() => of(120, 10))).toEqual(["range coldInsoluble"]);
    expect(
      complaints(() =>
        activityIndex({
          coldInsoluble: quantity(24, "% w/w", "N/product"),
          hotInsoluble: quantity(12, "% w/w", "N:slow/N") as never,
        }),
      ),
    ).toEqual(["substance/mismatch hotInsoluble"]);
  });
});

describe("the text of a grade", () => {
  test("takes secondary nutrients after a hyphen or a plus, and dashes", () => {
    expect(analysis("12-0-0-26S").percent).toEqual({ N: 12, P2O5: 0, K2O: 0, S: 26 });
    expect(analysis("21-4-15 + 7.5 SO3 + 0.5 Fe").percent).toEqual({
      N: 21,
      P2O5: 4,
      K2O: 15,
      SO3: 7.5,
      Fe: 0.5,
    });
    expect(analysis("24\u20130\u201311").percent).toEqual({ N: 24, P2O5: 0, K2O: 11 });
  });

  test("shows the place of what it cannot read", () => {
    expect(() => analysis("24-x-11")).toThrow(/character 4, "x"/);
    expect(() => analysis("24-0-11-5Qq")).toThrow(/character 10, "Qq"/);
    expect(() => analysis("24-0")).toThrow(/it ends before/);
    expect(() => analysis("24+0+11")).toThrow(/is not a hyphen/);
    expect(complaints(() => analysis("60-50-0"))).toEqual(["range analysis"]);
    expect(complaints(() => analysis("-4-0-0"))).toEqual(["text analysis"]);
  });
});

describe("at the very bounds", () => {
  test("lines that miss the total by a thousandth do not add up to it", () => {
    expect(complaints(() => nitrogenBreakdown({ percent: { urea: 23.999 } }, 24))).toEqual([
      "conflict guarantee.percent",
    ]);
    expect(complaints(() => nitrogenBreakdown({ percent: { urea: 24.001 } }, 24))).toEqual([
      "conflict guarantee.percent",
    ]);
    // 0.1 + 0.2 is not 0.3 in floating point, yet it is on the label.
    expect(nitrogenBreakdown({ percent: { urea: 0.1, coated: 0.2 } }, 0.3).quick.in("% w/w")).toBeCloseTo(
      0.1,
      12,
    );
  });

  test("a share of 0.29 is moderate and one of 0.15 quick, as printed; 30 % is slow where at least 30 % is asked", () => {
    const of = (slow: number) =>
      nitrogenBreakdown({ percent: { urea: 100 - slow, waterInsoluble: slow } }, 100);
    const classes = (scheme: "suffolk water-insoluble" | "suffolk with coated" | "thirty percent") =>
      [29.1, 29, 15.1, 15].map((slow) => releaseClass(of(slow), scheme).class);
    expect(classes("suffolk water-insoluble")).toEqual(["slow", "moderate", "moderate", "quick"]);
    expect(classes("suffolk with coated")).toEqual(["slow", "moderate", "moderate", "quick"]);
    expect([30, 29.9, 15, 14.9].map((slow) => releaseClass(of(slow), "thirty percent").class)).toEqual([
      "slow",
      "moderate",
      "moderate",
      "quick",
    ]);
    // Less than 15 % is nitrogen fertilizer by 10 V.S.A. 1266b: 15 % is not.
    expect([15, 14.9].map((slow) => releaseClass(of(slow), "Vermont 1266b").class)).toEqual([
      "not nitrogen fertilizer",
      "nitrogen fertilizer",
    ]);
  });
});
