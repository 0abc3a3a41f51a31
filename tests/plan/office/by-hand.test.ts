// The copy for the office from an order that is made by hand: what stands on it, line by line.
import { describe, expect, test } from "vitest";
import type { LimitTest, LimitUse } from "../../../src/limits/index.js";
import { accountSections, alike, limitTexts, sourceText } from "../../../src/plan/office/account-section.js";
import { officeSheet } from "../../../src/plan/office/office-sheet.js";
import type { NutrientAccount } from "../../../src/plan/visit/nutrient-account.js";
import { expectQuantity, quantity, quantityOf } from "../../../src/quantity/index.js";
import { smallJob, soundOrder } from "../helpers.js";

const unit = "lb/1000 ft2";
const rate = (value: number, of: string) =>
  expectQuantity({ value, unit, of }, { dimension: "mass/area" }, "rate");
/** The same where any kind may stand. */
const used = (value: number, of: string) => quantityOf(value, unit, of, "rate");
const account = (more: Partial<NutrientAccount> = {}): NutrientAccount => ({
  part: "lawn",
  yearSoFar: {},
  visit: [],
  visitTotal: {},
  yearAfter: {},
  unweighed: [],
  limits: [],
  tests: [],
  ...more,
});
const use = (more: Partial<LimitUse> = {}, limit: Partial<LimitUse["limit"]> = {}): LimitUse => ({
  part: "lawn",
  limit: { kind: "amount", of: "N", amount: used(3, "N"), per: "calendar year", source: "plan", ...limit },
  path: "limits[0]",
  from: "2026-01-01",
  to: "2026-12-31",
  before: used(0.5, "N"),
  adds: used(0.9, "N"),
  after: used(1.4, "N"),
  remainingUnderStatedLimits: used(1.6, "N"),
  violated: false,
  earliestByStatedLimit: "2026-06-08",
  moreCanBeAppliedFrom: "2027-01-01",
  appliesIf: [],
  ...more,
});
const told = (...uses: readonly LimitUse[]) => limitTexts(uses, [], "US");

describe("a limit in a sentence", () => {
  test("what is used and what is left", () => {
    expect(told(use())).toEqual([
      "N in a calendar year: 1.4 of 3 lb per 1,000 sq ft, 1.6 left. Stated in: plan",
    ]);
    expect(told(use({}, { of: "N:quick" }))[0]).toMatch(/^quick-release N in a calendar year/);
    expect(told(use({}, { of: "N:slow" }))[0]).toMatch(/^slow-release N in a calendar year/);
    expect(told(use({ after: used(0.012345, "N") }))[0]).toContain(": 0.0123 of 3 lb");
    expect(told(use({ after: used(1.23456, "N") }))[0]).toContain(": 1.235 of 3 lb");
  });

  test("over it, exactly at it with the day from which there is more, and not known", () => {
    const over = { after: used(3.5, "N"), remainingUnderStatedLimits: used(-0.5, "N"), violated: true };
    expect(told(use(over))).toEqual([
      "N in a calendar year: 3.5 of 3 lb per 1,000 sq ft, OVER THE LIMIT by 0.5, more can be applied from 2027-01-01. Stated in: plan",
    ]);
    expect(told(use({ ...over, moreCanBeAppliedFrom: null }))[0]).toContain("OVER THE LIMIT by 0.5. Stated");
    const at = { after: used(3, "N"), remainingUnderStatedLimits: used(0, "N") };
    expect(told(use(at))[0]).toContain("0 left, more can be applied from 2027-01-01. Stated");
    expect(told(use({ violated: null }))[0]).toContain(
      "plus some that could not be counted: NOT KNOWN whether the limit is exceeded. Stated",
    );
  });

  test("a number of applications, and what it applies to", () => {
    const one = (value: number) => quantityOf(value, "1", "none", "count");
    const count = use(
      {
        after: one(2),
        remainingUnderStatedLimits: one(1),
        appliesIf: ["the turf is young", "the site is level"],
      },
      { kind: "count", of: "ai:x", amount: one(3), per: { days: 30 } },
    );
    expect(told(count)).toEqual([
      "applications of ai:x in 30 days: 2 of 3, 1 left. Applies where the turf is young, and the site is level. Stated in: plan",
    ]);
  });

  test("another limit: within it, not within it, not known", () => {
    const one = (more: Partial<LimitTest>): LimitTest => ({
      part: "lawn",
      limit: { kind: "setback", of: "any product", states: "at least 15 ft from water", source: "county" },
      path: "limits[1]",
      found: "20 ft",
      violated: false,
      earliestByStatedLimit: null,
      appliesIf: [],
      ...more,
    });
    const all = limitTexts(
      [],
      [
        one({}),
        one({ found: "3 ft", violated: true }),
        one({ found: null, violated: null, appliesIf: ["it rains"] }),
      ],
      "US",
    );
    expect(all).toEqual([
      "any product, at least 15 ft from water: 20 ft. Stated in: county",
      "any product, at least 15 ft from water: 3 ft, NOT WITHIN THE LIMIT. Stated in: county",
      "any product, at least 15 ft from water: not known. Applies where it rains. Stated in: county",
    ]);
  });

  test("a source in words", () => {
    expect(sourceText("plan")).toBe("plan");
    expect(
      sourceText({ title: "Rule", publisher: "County", year: 2020, where: "p. 3", url: "https://x.org" }),
    ).toBe("Rule, County, 2020, p. 3");
    expect(sourceText({ title: "Rule", publisher: "County" })).toBe("Rule, County");
  });
});

describe("the nutrients of parts", () => {
  test("those that are there, in pounds per 1,000 sq ft: so far, now, and after", () => {
    const full = account({
      yearSoFar: { N: rate(0.5, "N") },
      visitTotal: { N: rate(0.9, "N"), P2O5: rate(0.1, "P2O5") },
      yearAfter: { N: rate(1.4, "N"), P2O5: rate(0.1, "P2O5"), K2O: rate(0, "K2O"), "ai:x": rate(1, "ai:x") },
      unweighed: ["ai:y", "N:quick"],
      limits: [use()],
    });
    expect(accountSections([full], "US")).toEqual([
      {
        id: "nutrients",
        title: "NUTRIENTS THIS CALENDAR YEAR: lawn",
        blocks: [
          {
            kind: "table",
            heads: ["lb per 1,000 sq ft", "so far", "visit", "after"],
            rows: [{ cells: ["N", "0.5", "0.9", "1.4"] }, { cells: ["P2O5", "0", "0.1", "0.1"] }],
          },
          {
            kind: "text",
            text: "The true total of ai:y, quick-release N is higher: some could not be counted, see NOT CHECKED.",
          },
          {
            kind: "list",
            mark: "-",
            items: ["N in a calendar year: 1.4 of 3 lb per 1,000 sq ft, 1.6 left. Stated in: plan"],
          },
        ],
      },
    ]);
  });

  test("nothing where nothing is there, and each of the nutrients of a sheet", () => {
    expect(accountSections([account()], "US")).toEqual([]);
    expect(accountSections([account({ limits: [use()] })], "US")[0]?.blocks.map(({ kind }) => kind)).toEqual([
      "list",
    ]);
    expect(accountSections([account({ unweighed: ["N"] })], "US")[0]?.blocks.map(({ kind }) => kind)).toEqual(
      ["text"],
    );
    const all = ["N", "N:quick", "N:slow", "P2O5", "K2O", "Fe", "Ca", "Mg", "S", "Mn"];
    const [section] = accountSections(
      [account({ yearAfter: Object.fromEntries(all.map((of) => [of, rate(1, of)])) })],
      "US",
    );
    const [table] = section?.blocks ?? [];
    expect(table?.kind === "table" && table.rows.map(({ cells }) => cells[0])).toEqual([
      "N",
      "quick-release N",
      "slow-release N",
      ...all.slice(3),
    ]);
  });

  test("parts with the same account share it, whoever of the visit it is from", () => {
    const one = account({ yearAfter: { N: rate(1, "N") } });
    const groups = (...accounts: readonly NutrientAccount[]) => alike(accounts).map(({ parts }) => parts);
    expect(groups(one, { ...one, part: "pitch" })).toEqual(["lawn, pitch"]);
    const visit = [{ date: "2026-06-08", from: "a", supplies: {} }] as const;
    expect(groups(one, { ...one, part: "pitch", visit })).toEqual(["lawn, pitch"]);
    expect(groups(one, { ...one, part: "pitch", yearAfter: { N: rate(1.1, "N") } })).toEqual([
      "lawn",
      "pitch",
    ]);
  });
});

describe("the sections of the office", () => {
  const order = soundOrder(smallJob());
  const items = (id: string, more: object): readonly string[] | undefined =>
    officeSheet({ ...order, ...more })
      .front.find((section) => section.id === id)
      ?.blocks.flatMap((block) => (block.kind === "list" ? block.items : []));

  test("findings by how much they weigh, with their sources", () => {
    const finding = (severity: string, text: string, source?: string) => ({
      code: "x/y",
      severity,
      params: {},
      text,
      ...(source && { source }),
    });
    const findings = [
      finding("note", "C on 2026-06-08."),
      finding("caution", "B.", "label"),
      finding("warning", "A."),
    ];
    expect(items("findings", { findings })).toEqual([
      "WARNING: A.",
      "CAUTION: B. [label]",
      "Note: C on Mon Jun 8, 2026.",
    ]);
    expect(items("findings", { findings: [] })).toBeUndefined();
  });

  test("each rate with what its label says, in metric units beside where both are asked for", () => {
    const [spread] = order.spreads;
    const words = (labelRate: string, more: object = {}) =>
      items("rates", { spreads: [{ ...spread, labelRate }], ...more })?.[0];
    expect(words("within")).toBe(
      "feed-a: 3.75 lb per 1,000 sq ft, within the label rate that the job states",
    );
    expect(words("outside")).toMatch(/, OUTSIDE the label rate that the job states$/);
    expect(words("not stated")).toMatch(/, label rate not given: not checked$/);
    expect(words("other measure")).toMatch(/, label rate in units of another kind: not checked$/);
    // 3.75 lb per 1,000 sq ft are 3.75 x 4.8824 g per m2.
    expect(words("within", { units: "both" })).toContain("3.75 lb per 1,000 sq ft (18.3 g per m²), within");
  });

  test("when again, with the last time; what was checked and what was not", () => {
    const repeat = {
      treatment: "feed",
      applied: ["2026-04-01", "2026-05-01"],
      calendar: null,
      degreeDaysAfter: null,
    };
    expect(items("next", { repeats: [repeat] })).toEqual([
      "feed: no interval is stated (last time: Fri May 1, 2026)",
    ]);
    expect(items("next", { repeats: [{ ...repeat, applied: [] }] })).toEqual(["feed: no interval is stated"]);
    expect(items("checked", { checked: ["this"] })).toEqual(["this"]);
    expect(items("not checked", { notChecked: ["that on 2026-06-08"] })).toEqual(["that on Mon Jun 8, 2026"]);
    const titles = officeSheet({ ...order, repeats: [repeat as never] }).front.map(({ id, title }) => [
      id,
      title,
    ]);
    expect(titles).toContainEqual(["next", "NEXT APPLICATION"]);
    expect(titles).toContainEqual(["checked", "CHECKED"]);
    expect(titles).toContainEqual(["not checked", "NOT CHECKED"]);
    expect(titles).toContainEqual(["rates", "RATES AND LABELS"]);
    const { back, head } = officeSheet({
      ...order,
      cautions: [{ code: "c", text: "Wear gloves.", source: "label", place: "back" }],
    });
    expect(back).toEqual([
      {
        id: "cautions",
        title: "CAUTIONS AND THEIR SOURCES",
        blocks: [{ kind: "list", mark: "-", items: ["Wear gloves. [label]"] }],
      },
    ]);
    expect(head.map(({ label, room }) => [label, room])).toEqual([
      ["Applicator", 20],
      ["Certificate no.", 12],
    ]);
  });

  test("water by each label", () => {
    const [spread] = order.spreads;
    const rule = {
      least: quantity(0.25, "in"),
      most: quantity(0.5, "in"),
      within: quantity(24, "h"),
      notBefore: quantity(1, "h"),
      source: "label",
    };
    const watered = (one: object) =>
      items("water", {
        spreads: [
          {
            ...spread,
            watering: {
              ...spread?.watering,
              rules: [{ product: "feed-a", productName: "feed-a", rule: one }],
            },
          },
        ],
      });
    expect(watered(rule)).toEqual([
      "feed, feed-a: at least 0.25 in, at most 0.5 in, within 24 h, no water for 1 h [label]",
    ]);
    expect(watered({ notBefore: rule.notBefore, source: "s" })).toEqual([
      "feed, feed-a: no water for 1 h [s]",
    ]);
  });
});
