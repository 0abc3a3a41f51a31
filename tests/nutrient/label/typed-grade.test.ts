// Grades as people type them: with the dashes of a word processor, the names of the elements, and slips.
import { describe, expect, test } from "vitest";
import { analysis, fertilizer } from "../../../src/nutrient/index.js";
import { problemsOf } from "../../errors.js";

const told = (text: string) => {
  const [problem] = problemsOf(() => analysis(text));
  return { code: problem?.code, offered: problem?.suggestion, expected: problem?.expected ?? "" };
};
const feed = { N: 24, P2O5: 0, K2O: 11 };

describe("a typed grade", () => {
  test.each([
    ["24—0—11", feed],
    ["24-0-11 w/ 1% Fe", { ...feed, Fe: 1 }],
    ["24-0-11 w/1% Fe & 2% Mn", { ...feed, Fe: 1, Mn: 2 }],
    ["24-0-11 (with 1 % Fe)", { ...feed, Fe: 1 }],
    ["24-0-11 .5% Fe", { ...feed, Fe: 0.5 }],
    ["24-0-11 1% iron", { ...feed, Fe: 1 }],
    ["24-0-11 1 % Iron, 2% Manganese", { ...feed, Fe: 1, Mn: 2 }],
    ["24-0-11 1% fe", { ...feed, Fe: 1 }],
    ["21-0-0 24% sulphur", { N: 21, P2O5: 0, K2O: 0, S: 24 }],
    ["21-0-0 24s", { N: 21, P2O5: 0, K2O: 0, S: 24 }],
    ["15-5-8 + 2 mgo", { N: 15, P2O5: 5, K2O: 8, MgO: 2 }],
    ["24-0-11 Iron 1%", { ...feed, Fe: 1 }],
  ])("%s is read", (text, percent) => expect(analysis(text).percent).toEqual(percent));

  test.each([
    ["24/0/11", "24-0-11"],
    ["24 / 0 / 11", "24-0-11"],
    ["24.0.11", "24-0-11"],
    ["24 0 11", "24-0-11"],
    ["24,0,11", "24-0-11"],
    ["15+5+8", "15-5-8"],
    ["15+5+8 + 2 MgO", "15-5-8 + 2 MgO"],
    ["24/0/11 with 1% Fe", "24-0-11 with 1% Fe"],
    ["NPK 24-0-11", "24-0-11"],
    ["N-P-K: 24-0-11", "24-0-11"],
    ["24-0-11 NPK", "24-0-11"],
    ["24-O-11", "24-0-11"],
    // no one grade, or none
    ["24-0", undefined],
    ["2-4-0-11", undefined],
    ["12-12-17-2", undefined],
    ["15+5+8(+2)", undefined],
    ["60/30/30", undefined],
    ["3/15/2026", undefined],
    ["urea", undefined],
  ])("%s is refused, and %s offered", (text, offered) => {
    expect(told(text)).toMatchObject({ code: "text", offered });
    if (offered !== undefined) expect(analysis(offered).percent.N).toBeGreaterThan(0);
  });

  test.each([
    "24-0-11 50% slow",
    "24-0-11 (50% slow release)",
    "24-0-11, 50% SRN",
    "24-0-11 50% PCU",
    "24-0-11 50% SCU",
  ])("%s: the slow nitrogen has a field of its own", (text) =>
    expect(told(text).expected).toContain(
      "; slow nitrogen goes into slowNitrogen, in percent of the product",
    ),
  );

  test.each(["", "  "])("an empty field, %j, is missing", (text) => {
    expect(told(text).code).toBe("missing");
    expect(
      problemsOf(() => fertilizer({ id: "a", analysis: text }, "")).map(({ code, path }) => [code, path]),
    ).toEqual([["missing", "analysis"]]);
  });
});
