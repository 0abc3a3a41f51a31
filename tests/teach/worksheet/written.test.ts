// One sheet that was typed by hand, and every way in which it is written: each line as it has to read.
import { describe, expect, it } from "vitest";
import {
  type QuizProblem,
  type Worksheet,
  worksheetCsv,
  worksheetHtml,
  worksheetMarkdown,
} from "../../../src/teach/index.js";
import { problemQti, worksheetQti } from "../../../src/teach/qti/index.js";
import { problemsOf } from "../../errors.js";

const bags: QuizProblem = {
  type: "quiz-problem",
  version: 1,
  topic: "nutrient/bags",
  title: "Bags for a lawn",
  level: 2,
  seed: 11,
  units: "US",
  text: 'The lawn takes 120 lb of "24-0-11" at $5 a bag, < 50 lb each. How many bags? Answer in whole bags.',
  answer: {
    value: 3,
    unit: "count",
    of: "none",
    decimals: 0,
    tolerance: 0,
    text: "3 bags",
    noun: ["bag", "bags"],
  },
  steps: ["Step 1. Bags", "n = M ÷ B, rounded up", "n = 2.4, rounded up to whole bags: 3"],
  choices: [
    { letter: "A", text: "2 bags", mistake: "rounded packages down" },
    { letter: "B", text: "3 bags" },
    { letter: "C", text: "4 bags", mistake: "one package too many" },
    { letter: "D", text: "120 bags", mistake: "counted without the package size" },
  ],
  letter: "B",
  mistakes: [
    { mistake: "rounded packages down", value: 2, text: "2 bags", says: "You rounded down." },
    { mistake: "one package too many", value: 4, text: "4 bags", says: "One too many." },
  ],
};
const sheet: Worksheet = { type: "worksheet", version: 1, seed: 7, units: "US", problems: [bags] };

describe("Markdown", () => {
  it("without choices", () => {
    expect(worksheetMarkdown(sheet).split("\n")).toEqual([
      "# Turf math, sheet 7",
      "",
      '1. The lawn takes 120 lb of "24-0-11" at $5 a bag, \\< 50 lb each. How many bags? Answer in whole bags.',
      "",
      "---",
      "",
      "## Key",
      "",
      "1. **3 bags**",
      "",
      "   - Step 1. Bags",
      "   - n = M ÷ B, rounded up",
      "   - n = 2.4, rounded up to whole bags: 3",
      "",
    ]);
  });
  it("with choices, a title of its own, and no key", () => {
    expect(worksheetMarkdown(sheet, { choices: true, title: "Winter #1 *", key: false }).split("\n")).toEqual(
      [
        "# Winter \\#1 \\*",
        "",
        '1. The lawn takes 120 lb of "24-0-11" at $5 a bag, \\< 50 lb each. How many bags? Answer in whole bags.',
        "",
        "   - A. 2 bags",
        "   - B. 3 bags",
        "   - C. 4 bags",
        "   - D. 120 bags",
        "",
      ],
    );
    expect(worksheetMarkdown(sheet, { choices: true })).toContain("1. **3 bags** (B)");
  });
});

describe("CSV", () => {
  it("a head and a row, with quotes where they are needed", () => {
    expect(worksheetCsv(sheet).split("\r\n")).toEqual([
      "number,topic,level,seed,units,problem,answer,value,unit,tolerance,A,B,C,D,letter,working",
      '1,nutrient/bags,2,11,US,"The lawn takes 120 lb of ""24-0-11"" at $5 a bag, < 50 lb each. How many bags? Answer in whole bags.",3 bags,3,count,0,2 bags,3 bags,4 bags,120 bags,B,"Step 1. Bags; n = M ÷ B, rounded up; n = 2.4, rounded up to whole bags: 3"',
      "",
    ]);
  });
  it("a text that a table would run has an apostrophe before it; a choice that is not there is an empty cell", () => {
    for (const sign of ["=", "+", "-", "@", "\t"]) {
      const run = { ...sheet, problems: [{ ...bags, text: `${sign}1`, choices: bags.choices.slice(0, 2) }] };
      expect(worksheetCsv(run)).toContain(`,'${sign}1,3 bags,3,count,0,2 bags,3 bags,,,B,`);
    }
    const broken = { ...sheet, problems: [{ ...bags, text: "a\nb" }] };
    expect(worksheetCsv(broken)).toContain(',"a\nb",');
  });
});

describe("HTML", () => {
  const body = (html: string): string => html.slice(html.indexOf("<body>"), html.indexOf("</body>"));
  const text =
    "The lawn takes 120\u00a0lb of &quot;24-0-11&quot; at $5\u00a0a bag, &lt; 50\u00a0lb each. How many bags? Answer in whole bags.";
  it("with the key on pages of its own", () => {
    expect(body(worksheetHtml(sheet)).split("\n")).toEqual([
      "<body>",
      "<h1>Turf math, sheet 7</h1>",
      '<div class="who"><span>Name:</span><span>Date:</span></div>',
      '<ol class="problems">',
      `<li>${text}<div class="work"></div><div class="answer">Answer: <span></span></div></li>`,
      "</ol>",
      '<section class="sheet-key">',
      "<h2>Turf math, sheet 7: key</h2>",
      '<ol class="key">',
      '<li><strong>3 bags</strong><ul class="steps"><li class="part">Step 1. Bags</li><li>n = M ÷ B, rounded up</li><li>n = 2.4, rounded up to whole bags: 3</li></ul></li>',
      "</ol>",
      "</section>",
      "",
    ]);
  });
  it("with choices and no key; the head says what it is, and how it is printed", () => {
    const html = worksheetHtml(sheet, { choices: true, key: false, title: "A & B" });
    expect(body(html)).toContain(
      '<ul class="choices"><li>A. 2\u00a0bags</li><li>B. 3\u00a0bags</li><li>C. 4\u00a0bags</li><li>D. 120\u00a0bags</li></ul><div class="work">',
    );
    expect(html).not.toContain("key</h2>");
    expect(html.split("\n").slice(0, 6)).toEqual([
      "<!doctype html>",
      '<html lang="en">',
      "<head>",
      '<meta charset="utf-8">',
      '<meta name="viewport" content="width=device-width, initial-scale=1">',
      "<title>A &amp; B</title>",
    ]);
    expect(html).toMatch(/break-inside: avoid[\s\S]*section\.sheet-key \{ break-before: page; \}/);
    expect(worksheetHtml(sheet, { choices: true })).toContain("<strong>3 bags</strong> (B)<ul");
  });
});

describe("QTI", () => {
  const xml = problemQti(bags);
  const flat = (text: string): string => text.replace(/>\s+</g, "><");
  it("an item, part by part", () => {
    const item = flat(xml);
    for (const part of [
      '<?xml version="1.0" encoding="UTF-8"?>',
      '<assessmentItem xmlns="http://www.imsglobal.org/xsd/imsqti_v2p1" identifier="rw-nutrient-bags-2-US-11" title="Bags for a lawn" adaptive="false" timeDependent="false">',
      '<responseDeclaration identifier="RESPONSE" cardinality="single" baseType="identifier"><correctResponse><value>B</value></correctResponse></responseDeclaration>',
      '<outcomeDeclaration identifier="SCORE" cardinality="single" baseType="float"><defaultValue><value>0</value></defaultValue></outcomeDeclaration>',
      '<outcomeDeclaration identifier="FEEDBACK" cardinality="single" baseType="identifier"/>',
      '<choiceInteraction responseIdentifier="RESPONSE" shuffle="false" maxChoices="1"><simpleChoice identifier="A">2 bags</simpleChoice><simpleChoice identifier="B">3 bags</simpleChoice>',
      '<match><variable identifier="RESPONSE"/><correct identifier="RESPONSE"/></match><setOutcomeValue identifier="SCORE"><baseValue baseType="float">1</baseValue></setOutcomeValue>',
      '<setOutcomeValue identifier="FEEDBACK"><variable identifier="RESPONSE"/></setOutcomeValue>',
      '<modalFeedback outcomeIdentifier="FEEDBACK" identifier="A" showHide="show"><p>You rounded down.</p></modalFeedback>',
      '<modalFeedback outcomeIdentifier="FEEDBACK" identifier="B" showHide="show"><p>Right.</p><p>Step 1. Bags</p><p>n = M ÷ B, rounded up</p><p>n = 2.4, rounded up to whole bags: 3</p></modalFeedback>',
      '<modalFeedback outcomeIdentifier="FEEDBACK" identifier="D" showHide="show"><p>Not yet.</p></modalFeedback>',
    ])
      expect(item).toContain(part);
  });
  it("a test that names its items", () => {
    const { type, version, items, test } = worksheetQti(sheet);
    expect([type, version, items, test.name]).toEqual([
      "qti-worksheet",
      1,
      [{ name: "rw-nutrient-bags-2-US-11.xml", xml }],
      "assessment.xml",
    ]);
    expect(flat(test.xml)).toBe(
      '<?xml version="1.0" encoding="UTF-8"?><assessmentTest xmlns="http://www.imsglobal.org/xsd/imsqti_v2p1" identifier="rw-sheet-7-US" title="Turf math, sheet 7"><testPart identifier="part" navigationMode="nonlinear" submissionMode="individual"><assessmentSection identifier="section" title="Problems" visible="true"><assessmentItemRef identifier="rw-nutrient-bags-2-US-11" href="rw-nutrient-bags-2-US-11.xml"/></assessmentSection></testPart></assessmentTest>\n',
    );
  });
});

describe("what is no sheet, or no problem of one", () => {
  const told = (problem: object, more: object = {}): readonly string[] =>
    problemsOf(() => worksheetCsv({ ...sheet, problems: [{ ...bags, ...problem }], ...more } as never)).map(
      ({ code, path, expected }) => `${code} ${path}: ${expected}`,
    );
  it.each<readonly [object, string]>([
    [{ type: "quiz" }, 'type sheet.problems[0].type: type "quiz-problem"'],
    [{ title: 5 }, "type sheet.problems[0].title: a text"],
    [{ text: "x".repeat(4001) }, "range sheet.problems[0].text: 4000 characters or fewer"],
    [{ topic: undefined }, "missing sheet.problems[0].topic: a text"],
    [{ level: 4 }, "range sheet.problems[0].level: 3 or less"],
    [{ level: 0 }, "range sheet.problems[0].level: 1 or more"],
    [{ seed: -1 }, "range sheet.problems[0].seed: 0 or more"],
    [{ units: 5 }, 'type sheet.problems[0].units: one of "US", "metric"'],
    [{ letter: 5 }, 'type sheet.problems[0].letter: one of "A", "B", "C", "D", "E", "F", "G", "H"'],
    [{ steps: [5] }, "type sheet.problems[0].steps[0]: a text"],
    [{ steps: Array.from({ length: 81 }, () => "x") }, "range sheet.problems[0].steps: 80 or less"],
    [
      { choices: Array.from({ length: 9 }, () => bags.choices[0]) },
      "range sheet.problems[0].choices: 8 or less",
    ],
    [{ choices: [5] }, "type sheet.problems[0].choices[0]: a choice"],
    [
      { choices: [{ letter: 5, text: "x" }] },
      'type sheet.problems[0].choices[0].letter: one of "A", "B", "C", "D", "E", "F", "G", "H"',
    ],
    [{ choices: [{ letter: "A", text: 5 }] }, "type sheet.problems[0].choices[0].text: a text"],
    [
      { mistakes: Array.from({ length: 21 }, () => bags.mistakes[0]) },
      "range sheet.problems[0].mistakes: 20 or less",
    ],
    [{ mistakes: [5] }, "type sheet.problems[0].mistakes[0]: a mistake"],
    [
      { mistakes: [{ ...bags.mistakes[0], mistake: 5 }] },
      "type sheet.problems[0].mistakes[0].mistake: a text",
    ],
    [{ mistakes: [{ ...bags.mistakes[0], text: 5 }] }, "type sheet.problems[0].mistakes[0].text: a text"],
    [{ mistakes: [{ ...bags.mistakes[0], says: 5 }] }, "type sheet.problems[0].mistakes[0].says: a text"],
    [{ answer: 5 }, "type sheet.problems[0].answer: the answer of a problem"],
    [{ answer: { ...bags.answer, unit: 5 } }, "type sheet.problems[0].answer.unit: a text"],
    [{ answer: { ...bags.answer, of: 5 } }, "type sheet.problems[0].answer.of: a text"],
    [{ answer: { ...bags.answer, text: 5 } }, "type sheet.problems[0].answer.text: a text"],
    [{ answer: { ...bags.answer, decimals: 7 } }, "range sheet.problems[0].answer.decimals: 6 or less"],
    [{ answer: { ...bags.answer, decimals: -1 } }, "range sheet.problems[0].answer.decimals: 0 or more"],
    [{ answer: { ...bags.answer, tolerance: -1 } }, "range sheet.problems[0].answer.tolerance: 0 or more"],
    [{ answer: { ...bags.answer, noun: [5] } }, "type sheet.problems[0].answer.noun[0]: a text"],
  ])("%#", (problem, expected) => expect(told(problem)).toContain(expected));

  it("at the limits a problem is read, and the sheet itself is too", () => {
    expect(
      told({ text: "x".repeat(4000), level: 3, seed: 0, answer: { ...bags.answer, decimals: 6 } }),
    ).toEqual([]);
    expect(told({ level: 1, steps: [], mistakes: [], answer: { ...bags.answer, noun: undefined } })).toEqual(
      [],
    );
    expect(told({}, { type: "sheet" })).toEqual(['type sheet.type: type "worksheet"']);
    expect(told({}, { seed: -1 })).toEqual(["range sheet.seed: 0 or more"]);
    expect(told({}, { units: 5 })).toEqual(['type sheet.units: one of "US", "metric"']);
    expect(told({}, { problems: Array.from({ length: 201 }, () => bags) })).toEqual([
      "range sheet.problems: 200 or less",
    ]);
    expect(problemsOf(() => worksheetCsv(5 as never))[0]?.expected).toBe(
      "a worksheet, as worksheet of ratewright/teach/problems makes it",
    );
    expect(problemsOf(() => problemQti(5 as never))[0]?.expected).toBe(
      "a problem, as problem of ratewright/teach/problems makes it",
    );
  });

  it("options say what they are for", () => {
    const asked = (options: object): readonly string[] =>
      problemsOf(() => worksheetMarkdown(sheet, options as never)).map(
        ({ code, path, expected }) => `${code} ${path}: ${expected}`,
      );
    expect(asked({ title: 5 })).toEqual(["type options.title: a heading"]);
    expect(asked({ title: "x".repeat(121) })).toEqual(["range options.title: 120 characters or fewer"]);
    expect(asked({ title: "x".repeat(120), choices: false, key: true })).toEqual([]);
    expect(asked({ choices: 1 })[0]).toMatch(/^type options\.choices: /);
    expect(asked({ key: "no" })[0]).toMatch(/^type options\.key: /);
    expect(asked({ keys: true })[0]).toMatch(/^type options\.keys: /);
  });
});
