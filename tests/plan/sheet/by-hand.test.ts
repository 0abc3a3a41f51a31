// A sheet made by hand, with every kind of block: its lines and its page as they have to be.
import { describe, expect, test } from "vitest";
import { intervalRule, nextDates } from "../../../src/interval/index.js";
import { nextText } from "../../../src/plan/sheet/next-text.js";
import { sheetHtml } from "../../../src/plan/sheet/sheet-html.js";
import { sheetText } from "../../../src/plan/sheet/sheet-text.js";
import { blank, penned, type WorkOrderSheet } from "../../../src/plan/sheet/sheet-types.js";
import { areaUnitOf } from "../../../src/plan/sheet/sheet-units.js";
import type { RepeatPlan } from "../../../src/plan/visit/repeat.js";
import { expectQuantity, quantity } from "../../../src/quantity/index.js";

const sheet: WorkOrderSheet = {
  type: "work-order-sheet",
  version: 1,
  copy: "shed",
  units: "US customary",
  title: "June <visit>",
  site: "Park & pond",
  date: "2026-06-08",
  day: "Mon Jun 8, 2026",
  head: [blank("Applicator", "Crew 1"), blank("Phone", undefined, 12)],
  front: [
    {
      id: "stop",
      title: "STOP if",
      blocks: [
        { kind: "list", mark: "-", items: ["the wind is up;", 'the label says "no".'] },
        { kind: "text", strong: true, text: "READ THE LABEL." },
        { kind: "list", mark: "!", items: ["wear gloves"] },
        { kind: "text", text: "It's wet." },
      ],
    },
    {
      id: "two words",
      title: "JOB 1",
      blocks: [
        {
          kind: "table",
          heads: ["DO", "LOAD 1", "BY"],
          rows: [
            { cells: ["1  Add iron", "44.0 fl oz", "JUG"], note: "slowly" },
            { cells: ["2  Stir", "[ ]", penned] },
          ],
        },
        { kind: "list", mark: "[ ]", items: ["rinse"] },
        { kind: "blanks", blanks: [blank("Signed", undefined, 60), blank("Wind", "3 mph")] },
      ],
    },
  ],
  back: [{ id: "back", title: "BACK", blocks: [{ kind: "text", text: "Keep it locked." }] }],
};

describe("a sheet as text", () => {
  test("line by line", () => {
    expect(sheetText(sheet, 60).split("\n")).toEqual([
      "JUNE <VISIT>",
      "Mon Jun 8, 2026 (2026-06-08), Park & pond: SHED COPY",
      "Applicator Crew 1   Phone ____________",
      "=".repeat(60),
      "STOP if",
      "  - the wind is up;",
      '  - the label says "no".',
      "  READ THE LABEL.",
      "  ! wear gloves",
      "  It's wet.",
      "-".repeat(60),
      "JOB 1",
      "  DO               LOAD 1    BY",
      "  1  Add iron  44.0 fl oz   JUG",
      "     ! slowly",
      "  2  Stir             [ ]  ____",
      "  [ ] rinse",
      // 60 places are more than a line has behind its indent.
      "  Signed",
      `    ${"_".repeat(56)}`,
      "    ____   Wind 3 mph",
      "=".repeat(60),
      "BACK",
      "  Keep it locked.",
      "",
    ]);
  });

  test("for the office, without a back, with a title that is too long", () => {
    const office = { ...sheet, copy: "office" as const, front: [], back: [], title: "a ".repeat(35).trim() };
    expect(sheetText(office, 60).split("\n")).toEqual([
      "A ".repeat(30).trim(),
      "  A A A A A",
      "Mon Jun 8, 2026 (2026-06-08), Park & pond: OFFICE COPY",
      "Applicator Crew 1   Phone ____________",
      "=".repeat(60),
      "",
    ]);
  });

  const table = (heads: readonly string[], cells: readonly string[], note?: string): readonly string[] =>
    sheetText(
      {
        ...sheet,
        back: [],
        front: [
          {
            id: "t",
            title: "T",
            blocks: [{ kind: "table", heads, rows: [{ cells, ...(note && { note }) }] }],
          },
        ],
      },
      60,
    )
      .split("\n")
      .slice(5, -1);

  test("a table whose first column is broken over lines", () => {
    expect(table(["", "a"], ["1  one two three four five six seven eight nine ten eleven", "12"])).toEqual([
      "                                                           a",
      "  1  one two three four five six seven eight nine ten     12",
      "     eleven",
    ]);
  });

  test("a table that is too wide: row by row with its heads, or as two where it has more than four columns", () => {
    const wide = "x".repeat(25);
    expect(table(["name of it", "first", "second"], ["a long product name", wide, wide], "careful")).toEqual([
      `  a long product name: first ${wide};`,
      `     second ${wide}`,
      "     ! careful",
    ]);
    // An empty cell is not told.
    expect(table(["name of it", "first", "second"], ["a long product name", "", wide + wide])).toEqual([
      `  a long product name: second`,
      `     ${wide}${wide}`,
    ]);
    const cell = "y".repeat(12);
    expect(table(["n", "a", "b", "c", "d"], ["a long product name", cell, cell, cell, cell])).toEqual([
      "  n                               a             b",
      `  a long product name  ${cell}  ${cell}`,
      "  n                               c             d",
      `  a long product name  ${cell}  ${cell}`,
    ]);
  });
});

describe("a sheet as a page", () => {
  const page = sheetHtml(sheet, "en-US");
  const body = page.slice(page.indexOf("<body"));

  test("holds a short cell on one line, and lets a long one break", () => {
    const cells = ["", "sixteen and no m", "seventeen of them"];
    const front = [
      { id: "t", title: "T", blocks: [{ kind: "table" as const, heads: ["", "", ""], rows: [{ cells }] }] },
    ];
    expect(sheetHtml({ ...sheet, front }, "en-US")).toContain(
      "<td>sixteen&nbsp;and&nbsp;no&nbsp;m</td><td>seventeen of them</td>",
    );
  });

  test("is all that the text has, with nothing in it taken for markup", () => {
    expect(body.split("\n")).toEqual([
      '<body class="shed">',
      '<main class="front">',
      '<header><h1>June &lt;visit&gt;</h1><p>Mon Jun 8, 2026 (2026-06-08) &middot; Park &amp; pond &middot; SHED COPY</p><div class="blanks"><span class="blank">Applicator <b>Crew 1</b></span><span class="blank">Phone <i style="min-width:19.2mm"></i></span></div></header>',
      '<section class="stop"><h2>STOP if</h2><ul class="dash"><li>the wind is up;</li><li>the label says &quot;no&quot;.</li></ul><p><strong>READ THE LABEL.</strong></p><ul class="mark"><li>wear gloves</li></ul><p>It&#39;s wet.</p></section>',
      '<section class="two-words"><h2>JOB 1</h2><table><thead><tr><th scope="col">DO</th><th scope="col">LOAD&nbsp;1</th><th scope="col">BY</th></tr></thead><tbody><tr><td>1  Add iron <b class="note">! slowly</b></td><td>44.0&nbsp;fl&nbsp;oz</td><td>JUG</td></tr><tr><td>2  Stir</td><td>&#9744;</td><td class="pen"></td></tr></tbody></table><ul class="box"><li>rinse</li></ul><div class="blanks"><span class="blank">Signed <i style="min-width:80mm"></i></span><span class="blank">Wind <b>3 mph</b></span></div></section>',
      "</main>",
      '<div class="reverse">',
      "<header><p>June &lt;visit&gt;, Mon Jun 8, 2026: back</p></header>",
      '<section class="back"><h2>BACK</h2><p>Keep it locked.</p></section>',
      "</div>",
      "</body>",
      "</html>",
      "",
    ]);
    expect(page.slice(0, page.indexOf("<style>")).split("\n")).toEqual([
      "<!doctype html>",
      '<html lang="en-US">',
      "<head>",
      '<meta charset="utf-8">',
      '<meta name="viewport" content="width=device-width,initial-scale=1">',
      "<title>June &lt;visit&gt;</title>",
      "",
    ]);
  });

  test("the office has no head on its back, and no back where there is none", () => {
    const office = sheetHtml({ ...sheet, copy: "office" }, "en");
    expect(office).toContain('<html lang="en">');
    expect(office).toContain("OFFICE COPY</p>");
    expect(office).toContain('<div class="reverse">\n<section class="back">');
    expect(sheetHtml({ ...sheet, back: [] }, "en")).not.toContain('reverse">');
  });
});

describe("when a treatment comes round again", () => {
  const repeat = (more: Partial<RepeatPlan>): RepeatPlan => ({
    treatment: "feed",
    applied: [],
    calendar: null,
    degreeDaysBefore: null,
    degreeDaysAfter: null,
    reasons: [],
    ...more,
  });
  const heat = (value: number) =>
    expectQuantity(quantity(value, "°C d"), { dimension: "degree-days" }, "heat");
  const degreeDaysAfter = {
    from: "2026-06-08",
    interval: heat(200),
    total: heat(203.4),
    runsOut: "2026-06-18",
    countedTo: "2026-06-18",
    source: "s",
  } as const;
  const calendar = nextDates({
    applied: ["2026-06-08"],
    rule: intervalRule({ minimumDays: 14, maximumDays: 28, source: "plan" }),
    from: "2026-06-08",
  });

  test("by days, by growing degree days, by both, by none", () => {
    const told = (more: Partial<RepeatPlan>) => nextText(repeat(more), false);
    const byHeat = "200 growing degree days (°C) expected Thu Jun 18, 2026, 10 days after Mon Jun 8, 2026.";
    const byDays = "not before Mon Jun 22, 2026 by the stated rule, reapply by Mon Jul 6, 2026";
    expect(told({})).toBe("feed: no interval is stated");
    expect(told({ calendar })).toBe(`feed: ${byDays}`);
    expect(told({ degreeDaysAfter })).toBe(`feed: ${byHeat}`);
    expect(told({ calendar, degreeDaysAfter })).toBe(`feed: ${byDays}. ${byHeat}`);
    expect(nextText(repeat({ calendar: { ...calendar, reapplyBy: null } }), true)).toBe(
      "feed: not before Mon 22 Jun 2026 by the stated rule",
    );
  });

  test("where the temperatures end before: how far they go", () => {
    const cut = { ...degreeDaysAfter, total: heat(120.6), runsOut: null, countedTo: "2026-06-14" } as const;
    expect(nextText(repeat({ degreeDaysAfter: cut }), false)).toBe(
      "feed: 121 of 200 growing degree days (°C) since Mon Jun 8, 2026, as far as the temperatures go (Sun Jun 14, 2026).",
    );
    expect(nextText(repeat({ degreeDaysAfter: { ...cut, total: heat(0), countedTo: null } }), false)).toBe(
      "feed: 0 of 200 growing degree days (°C) since Mon Jun 8, 2026, as far as the temperatures go.",
    );
    const next = { ...degreeDaysAfter, runsOut: "2026-06-09" } as const;
    expect(nextText(repeat({ degreeDaysAfter: next }), true)).toBe(
      "feed: 200 growing degree days (°C) expected Tue 9 Jun 2026, 1 day after Mon 8 Jun 2026.",
    );
  });
});

test("an area is told in acres or hectares only where its rate is, and on a sheet of that system", () => {
  const whole = { value: 5, unit: "ha", of: "none", dimension: "area" };
  expect(areaUnitOf("kg/ha", whole, "metric")).toBe("ha");
  expect(areaUnitOf("kg/ha", whole, "US")).toBe("ft2");
  expect(areaUnitOf("lb/acre", whole, "metric")).toBe("m2");
  expect(areaUnitOf("lb/acre", whole, "US")).toBe("acre");
  expect(areaUnitOf("lb/1000 ft2", whole, "US")).toBe("ft2");
  expect(areaUnitOf("", whole, "metric")).toBe("m2");
});
