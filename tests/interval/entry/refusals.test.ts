import { describe, expect, test } from "vitest";
import {
  earlyEntryObjections,
  interimRestrictedEntryHours,
  restrictedEntryInterval,
  signalWord,
} from "../../../src/interval/index.js";
import { quantity } from "../../../src/quantity/index.js";
import { describeRefused, type Refused } from "../../refused.js";

// What is refused of entry after an application, and what happens exactly at a limit.

const end = "2026-06-03T15:30-05:00";
const mild = { dermal: 3, eye: 3, skin: 3 };
const interim = (change: object) => () => interimRestrictedEntryHours({ ...mild, ...change } as never);
const entry = (change: object) => () =>
  restrictedEntryInterval({
    end,
    products: [{ product: "a", label: quantity(12, "h") }],
    ...change,
  } as never);
const product = (change: object) => entry({ products: [{ product: "a", ...change }] });
const word = (change: object) => () =>
  signalWord({ oral: 3, dermal: 3, inhalation: 3, eye: 3, skin: 3, ...change } as never);
const early = (change: object) => () =>
  earlyEntryObjections({ hoursSinceEnd: 5, minutesInDay: 30, handLabor: false, ...change } as never);

const rows: readonly Refused[] = [
  ...(["dermal", "eye", "skin"] as const).flatMap((route): readonly Refused[] => [
    [interim({ [route]: 0 }), "range", route, "1 or more"],
    [interim({ [route]: 5 }), "range", route, "4 or less"],
    [interim({ [route]: 1.5 }), "range", route, "a category, "],
  ]),
  [interim({ lowRisk: "yes" }), "type", "lowRisk", "true"],
  [
    interim({ lowRisk: true, eye: 2 }),
    "conflict",
    "lowRisk",
    "no category I or II: the list holds only III and IV",
  ],
  [() => interimRestrictedEntryHours(7 as never), "type", "categories", "a record of categories"],
  [interim({ oral: 1 }), "type", "categories.oral", "dermal"],
  [entry({ end: "today" }), "date", "end", "-"],
  [entry({ products: [] }), "missing", "products", "product"],
  [entry({ products: [7] }), "type", "products[0]", "a product with what is stated"],
  [product({ product: 7 }), "type", "products[0].product", "the name of the product"],
  [product({ label: quantity(-1, "h") }), "range", "products[0].label", "zero or more"],
  [product({ label: quantity(1, "lb") }), "unit/mismatch", "products[0].label", "a time"],
  [product({ until: 7 }), "type", "products[0].until", "a text that is not empty"],
  [product({ actives: 7 }), "type", "products[0].actives", "list"],
  [product({ actives: [{ ...mild, eye: 5 }] }), "range", "products[0].actives[0].eye", "4 or less"],
  [product({ hours: 12 }), "type", "products[0].hours", "label"],
  [entry({ posting: 7 }), "type", "posting", "record"],
  [entry({ posting: { hours: -1, source: "s" } }), "range", "posting.hours", "0 or more"],
  [entry({ posting: { hours: 24 } }), "missing", "posting.source", "where it is stated"],
  [entry({ sign: 1 }), "type", "input.sign", "posting"],
  ...(["oral", "dermal", "inhalation", "eye", "skin"] as const).flatMap((route): readonly Refused[] => [
    [word({ [route]: 0 }), "range", route, "1 or more"],
    [word({ [route]: 5 }), "range", route, "4 or less"],
    [word({ [route]: 2.5 }), "range", route, "a category, "],
  ]),
  [() => signalWord(7 as never), "type", "categories", "a record of five categories"],
  [word({ nose: 1 }), "type", "categories.nose", "oral"],
  [early({ hoursSinceEnd: -1 }), "range", "hoursSinceEnd", "0 or more"],
  [early({ minutesInDay: -1 }), "range", "minutesInDay", "0 or more"],
  [early({ minutesInDay: 1441 }), "range", "minutesInDay", "1440 or less"],
  [early({ handLabor: "no" }), "type", "handLabor", "true"],
  [early({ hours: 1 }), "type", "input.hours", "hoursSinceEnd"],
];

describeRefused("what is refused of entry", rows);

describe("the interim rule", () => {
  test("is decided by the worst of the three routes: 48, 24 or 12 hours, 4 for low risk", () => {
    for (const route of ["dermal", "eye", "skin"] as const) {
      expect(interim({ [route]: 1 })()).toBe(48);
      expect(interim({ [route]: 2 })()).toBe(24);
      expect(interim({ [route]: 4 })()).toBe(12);
    }
    expect(interim({ lowRisk: true })()).toBe(4);
    expect(interim({ lowRisk: false })()).toBe(12);
    expect(interim({ dermal: 4, eye: 4, skin: 4, lowRisk: true })()).toBe(4);
  });
});

describe("signal words", () => {
  test("by the worst category of any route, the skull by the three inner ones alone", () => {
    for (const route of ["oral", "dermal", "inhalation", "eye", "skin"] as const) {
      const inner = route !== "eye" && route !== "skin";
      expect(word({ [route]: 1 })()).toEqual({ word: "DANGER", poison: inner });
      expect(word({ [route]: 2 })()).toEqual({ word: "WARNING", poison: false });
    }
    expect(word({})()).toEqual({ word: "CAUTION", poison: false });
    expect(word({ oral: 4, dermal: 4, inhalation: 4, eye: 4, skin: 4 })()).toEqual({
      word: null,
      poison: false,
    });
  });
});

describe("early entry", () => {
  test("at 4 hours and at 1 hour in 24 nothing objects", () => {
    expect(early({ hoursSinceEnd: 4, minutesInDay: 60 })()).toEqual([]);
    expect(early({ hoursSinceEnd: 3.9 })()).toEqual(["within 4 hours of the end of the application"]);
    expect(early({ minutesInDay: 61 })()).toEqual(["more than 1 hour in 24"]);
    expect(early({ handLabor: true })()).toEqual(["hand labor"]);
    expect(early({ minutesInDay: 1440 })()).toHaveLength(1);
    expect(early({ hoursSinceEnd: 0, minutesInDay: 0 })()).toHaveLength(1);
  });
});

describe("until when entry is restricted", () => {
  test("by the longest figure, with every one that was given and what it rests on", () => {
    const found = entry({
      products: [
        { product: "a", label: quantity(12, "h"), until: "the spray has dried" },
        { product: "b", actives: [{ ...mild, eye: 2 }] },
        { product: "c" },
      ],
      posting: { hours: 24, source: "a town code" },
    })();
    expect([found.hours, found.decidedBy]).toEqual([24, ["b", "posting"]]);
    expect(found.until).toBe("2026-06-04T15:30-05:00");
    expect(found.reasons.map(({ product: name, hours, basis }) => [name, hours, basis])).toEqual([
      ["a", 12, "label"],
      ["b", 24, "active ingredient category"],
      ["posting", 24, "posting rule"],
    ]);
    expect(found.reasons[0]?.source).toBe("the label");
    expect(found.conditions).toEqual([{ product: "a", until: "the spray has dried" }]);
    expect(found.notChecked).toContain("b: its label. A figure on the label overrides the interim rule.");
    expect(found.notChecked).toContain(
      "c: neither a figure of the label nor the categories of its actives are given.",
    );
    expect(found.notChecked.join(" ")).not.toContain("Posting");
    expect(found.notChecked.join(" ")).toContain("40 CFR 170.303 (b)(2)");
    expect(found.notChecked.join(" ")).toContain("72 hours instead of 48");
    expect(found.notChecked.at(-1)).toContain("local codes");
  });

  test("by labels alone the interim rule is not spoken of, and posting is told as not given", () => {
    const found = entry({})();
    expect(found.notChecked).toEqual([
      "Posting: no local rule is given.",
      "Conditions of the label without a number, ventilation, protective equipment, local codes.",
    ]);
    expect(
      entry({ products: [{ product: "a", label: quantity(12, "h"), actives: [{ ...mild, eye: 1 }] }] })()
        .hours,
    ).toBe(12);
    const none = product({ actives: [] })();
    expect([none.hours, none.until, none.decidedBy]).toEqual([null, null, []]);
  });

  test("four hours rest on the notice for low risk, the others on the rule", () => {
    const source = (lowRisk: boolean) => product({ actives: [{ ...mild, lowRisk }] })().reasons[0]?.source;
    expect(source(true)).toMatchObject({ title: expect.stringContaining("PR Notice 95-3"), year: 1995 });
    expect(source(false)).toMatchObject({ title: expect.stringContaining("40 CFR 156.208(c)") });
  });
});
