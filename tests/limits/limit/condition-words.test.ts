import { describe, expect, test } from "vitest";
import {
  type ApplicationFacts,
  checkLimits,
  type Limit,
  type LimitCondition,
} from "../../../src/limits/index.js";

const amount = (more: object): Limit => ({
  id: "plan/n",
  amount: { value: 1, unit: "lb/1000 ft2", of: "N" },
  per: "application",
  source: "plan of the park (invented)",
  ...more,
});
const put = (rule: Limit, facts: ApplicationFacts = {}, of = "N") =>
  checkLimits({
    proposal: { date: "2026-06-08", facts, supplies: [{ value: 2, unit: "lb/1000 ft2", of }] },
    limits: [rule],
  });

/** Each condition, how it reads, facts that show it, and facts that show that it does not hold. */
const rows: readonly (readonly [LimitCondition, string, ApplicationFacts, ApplicationFacts])[] = [
  [
    { grass: ["bermudagrass", "zoysiagrass"] },
    "the grass is bermudagrass or zoysiagrass",
    { grass: " Zoysiagrass " },
    { grass: "fescue" },
  ],
  [
    { applicator: ["professional"] },
    "the applicator is professional",
    { applicator: "Professional" },
    { applicator: "homeowner" },
  ],
  [
    { place: ["golf course", "farm"] },
    "the place is a golf course or farm",
    { place: "farm" },
    { place: "park" },
  ],
  [{ turf: ["repair"] }, "the turf is repair", { turf: "repair" }, { turf: "established" }],
  [
    { productKind: ["organic"] },
    "the product is organic",
    { productKind: ["conventional", "organic"] },
    { productKind: ["conventional"] },
  ],
  [
    { productKind: ["organic"] },
    "the product is organic",
    { productKind: "organic" },
    { productKind: "conventional" },
  ],
  [
    { equipment: ["drop spreader"] },
    "the equipment is a drop spreader",
    { equipment: "drop spreader" },
    { equipment: "rotary spreader" },
  ],
  [
    { growingSeasonAtMost: 2 },
    "the turf is in growing season 2 at most",
    { growingSeason: 2 },
    { growingSeason: 3 },
  ],
  [
    { soilTest: { months: 24, shortOf: "P" } },
    "a soil test from the last 24 months shows a deficiency of P",
    // A lack of phosphate is one of phosphorus; 8 June 2024 is 24 months back to the day, today is a test of today.
    { soilTest: { date: "2024-06-08", shortOf: ["K", "P2O5"] } },
    { soilTest: { date: "2024-06-07", shortOf: ["P"] } },
  ],
  [
    { soilTest: { months: 24, shortOf: "P" } },
    "a soil test from the last 24 months shows a deficiency of P",
    { soilTest: { date: "2026-06-08", shortOf: ["P"] } },
    { soilTest: { date: "2026-06-09", shortOf: ["P"] } },
  ],
  [
    { bufferAtLeast: { value: 10, unit: "ft" } },
    "a vegetated strip of 10 ft or more runs along the water",
    { buffer: { value: 3.048, unit: "m" } },
    { buffer: { value: 9.99, unit: "ft" } },
  ],
  [
    { turf: ["repair"], place: ["park"] },
    "the place is a park, and the turf is repair",
    { turf: "repair", place: "park" },
    { turf: "repair", place: "farm" },
  ],
];

describe.each(rows)("%o", (condition, words, yes, no) => {
  const binds = "plan/n, because it applies only where";
  const lifted = "plan/n, because it is lifted where";

  test("as the scope of a limit", () => {
    const scoped = amount({ scope: condition });
    expect(put(scoped, yes).uses[0]).toMatchObject({ violated: true, appliesIf: [] });
    expect(put(scoped, yes).findings[0]?.text).not.toMatch(/It applies where/);
    const outside = put(scoped, no);
    expect([outside.uses, outside.notChecked[0]]).toEqual([[], `whole site: ${binds} ${words}.`]);
    const open = put(scoped);
    expect(open.uses[0]?.appliesIf).toEqual([words]);
    expect(open.findings[0]).toMatchObject({ severity: "caution", params: { appliesIf: [words] } });
    expect(open.findings[0]?.text).toContain(` It applies where ${words}; that was not stated.`);
  });

  test("as what lifts it", () => {
    const rule = amount({ exemptIf: [condition] });
    const free = put(rule, yes);
    expect([free.uses, free.notChecked[0]]).toEqual([[], `whole site: ${lifted} ${words}.`]);
    for (const facts of [no, {}]) {
      const bound = put(rule, facts);
      expect(bound.uses[0]).toMatchObject({ violated: true, appliesIf: [] });
      expect(bound.findings[0]).toMatchObject({ severity: "warning" });
      expect(bound.findings[0]?.params).not.toHaveProperty("appliesIf");
      expect(bound.findings[0]?.text).toContain(
        ` Lifted only where ${words}: the stated facts do not show it.`,
      );
    }
  });
});

test("a share of slow nitrogen and a part of the year, in words", () => {
  const slow = amount({ scope: { slowShareAtLeast: 65 } });
  const untold = checkLimits({ proposal: { date: "2026-06-08", productName: "unknown" }, limits: [slow] });
  expect(untold.uses[0]?.appliesIf).toEqual(["at least 65 % of the N is slow"]);
  const winter = amount({ scope: { season: { from: "11-01", to: "02-15" } } });
  expect(put(winter).notChecked[0]).toBe(
    "whole site: plan/n, because it applies only where the date is from 11-01 to 02-15.",
  );
});

test("what lifts a limit is told in a row, and nothing where nothing does", () => {
  const rule = amount({ exemptIf: [{ turf: ["repair"] }, { place: ["farm"] }] });
  expect(put(rule).findings[0]?.text).toBe(
    "whole site: 2 lb/1000 ft2 of N in one application is over the stated limit of 1 (0 before, 2 now). Lifted only where the turf is repair; or where the place is a farm: the stated facts do not show it.",
  );
  expect(put(amount({})).findings[0]?.text).toBe(
    "whole site: 2 lb/1000 ft2 of N in one application is over the stated limit of 1 (0 before, 2 now).",
  );
});

test("one part that does not hold decides, whatever is not known beside it", () => {
  const rule = amount({ scope: { grass: ["fescue"], place: ["park"], turf: ["established"] } });
  expect(put(rule, { place: "farm" }).uses).toEqual([]);
  expect(put(rule, { grass: "fescue", turf: "repair" }).uses).toEqual([]);
  expect(put(rule, { place: "park", turf: "established" }).uses[0]?.appliesIf).toHaveLength(1);
});
