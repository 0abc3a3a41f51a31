// Names and texts that were typed elsewhere: signs of XML, HTML and Markdown, letters of other scripts, and what no document
// can hold. XML 1.0 (W3C, fifth edition), section 2.2: a character is a tab, the end of a line, or U+0020 and above, without
// the surrogates, U+FFFE and U+FFFF.
import { describe, expect, it } from "vitest";
import {
  type QuizProblem,
  type Worksheet,
  worksheetCsv,
  worksheetHtml,
  worksheetMarkdown,
} from "../../../src/teach/index.js";
import { problem } from "../../../src/teach/problems/index.js";
import { problemQti, worksheetQti } from "../../../src/teach/qti/index.js";
import { problemsOf } from "../../errors.js";

const asked = problem({ topic: "spray/speed", level: 1, seed: 4, units: "US" });
const sheetOf = (problems: readonly QuizProblem[]): Worksheet => ({
  type: "worksheet",
  version: 1,
  seed: 7,
  units: "US",
  problems,
});
const namespaces = { q: "http://www.imsglobal.org/xsd/imsqti_v2p1" };
const inXml = async (xml: string, path: string): Promise<readonly string[]> => {
  const { XmlDocument } = await import("libxml2-wasm");
  const document = XmlDocument.fromString(xml);
  const found = document.find(path, namespaces).map((node) => node.content);
  document.dispose();
  return found;
};

describe("texts of any signs", () => {
  it.each([
    ["signs of XML", `5 < 6 & 7 > 4 "quoted" 'single' ]]> <!-- x --> &amp; <b>`],
    ["Chinese", "草坪需要多少肥料？"],
    ["Russian and German", "Газон, Rasenfläche, 12 m²"],
    ["Arabic", "كم يحتاج العشب"],
    ["signs of two halves", "\u{1F33F} \u{20BB7}"],
    ["a tab and lines", "one\ttwo\nthree"],
  ])("%s come out of QTI as they went in", async (_, text) => {
    const [choice, ...rest] = asked.choices;
    const given: QuizProblem = {
      ...asked,
      title: text.replace(/[\t\n]/g, " "),
      text,
      choices: [{ ...(choice as (typeof asked.choices)[number]), text }, ...rest],
      mistakes: asked.mistakes.map((each) => ({ ...each, says: text })),
      steps: [text],
    };
    const xml = problemQti(given);
    expect(await inXml(xml, "/q:assessmentItem/@title")).toEqual([given.title]);
    expect(await inXml(xml, "//q:itemBody/q:p")).toEqual([text]);
    expect((await inXml(xml, "//q:simpleChoice"))[0]).toBe(text);
    for (const { letter } of asked.choices)
      expect(await inXml(xml, `//q:modalFeedback[@identifier="${letter}"]/q:p`)).toEqual(
        letter === asked.letter ? ["Right.", text] : [text],
      );
  });

  it("stay as they are on a page, a sheet and in a table", () => {
    const sheet = sheetOf([{ ...asked, text: `<b>草坪</b> & "x" 'y'`, steps: ["1 < 2"] }]);
    const html = worksheetHtml(sheet, { title: `<i>Газон</i> & "x"` });
    expect(html).toContain("<h1>&lt;i&gt;Газон&lt;/i&gt; &amp; &quot;x&quot;</h1>");
    expect(html).toContain("<li>&lt;b&gt;草坪&lt;/b&gt; &amp; &quot;x&quot; 'y'<div");
    expect(html).toContain("<li>1 &lt; 2</li>");
    expect(worksheetMarkdown(sheet, { title: "*草坪*" })).toContain("# \\*草坪\\*\n");
    expect(worksheetMarkdown(sheet)).toContain(`1. \\<b\\>草坪\\</b\\> & "x" 'y'\n`);
    expect(worksheetCsv(sheet)).toContain(`,"<b>草坪</b> & ""x"" 'y'",`);
  });
});

describe("what no document can hold is refused, with its place", () => {
  const told = (more: object): readonly string[] =>
    problemsOf(() => problemQti({ ...asked, ...more } as never)).map(
      ({ code, path, got, expected }) => `${code} ${path}: ${got}; ${expected}`,
    );
  const signs = "a text without control characters or half signs";

  it.each<readonly [string, string]>([
    ["\u0000", "U+0000"],
    ["\u0008", "U+0008"],
    ["\u000b", "U+000B"],
    ["\u000c", "U+000C"],
    ["\u000e", "U+000E"],
    ["\u001f", "U+001F"],
    ["\u007f", "U+007F"],
    ["\u009f", "U+009F"],
    ["\ud83c", "U+D83C"],
    ["\udfff", "U+DFFF"],
    ["\ufffe", "U+FFFE"],
    ["\uffff", "U+FFFF"],
  ])("%#: a sign", (sign, name) => {
    expect(told({ text: `a${sign}b` })).toEqual([`text problem.text: "${name}"; ${signs}`]);
  });

  it("signs beside them are taken", () => {
    for (const sign of ["\t", "\n", "\r", " ", "~", "\u00a0", "\ud7ff", "\ue000", "\ufffd", "\u{10000}"])
      expect(told({ text: `a${sign}b` }), sign).toEqual([]);
  });

  it("in each text of a problem", () => {
    const bad = "a\u0007b";
    const refused = (path: string): string => `text problem.${path}: "U+0007"; ${signs}`;
    expect(told({ title: bad })).toEqual([refused("title")]);
    expect(told({ steps: ["a", bad] })).toEqual([refused("steps[1]")]);
    expect(told({ choices: [{ letter: "A", text: bad }] })).toEqual([refused("choices[0].text")]);
    const [mistake] = asked.mistakes;
    expect(told({ mistakes: [{ ...mistake, says: bad }] })).toEqual([refused("mistakes[0].says")]);
    expect(told({ mistakes: [{ ...mistake, also: [bad] }] })).toEqual([refused("mistakes[0].also[0]")]);
    expect(told({ mistakes: [{ ...mistake, also: "x" }] })[0]).toMatch(
      /^type problem\.mistakes\[0\]\.also: /,
    );
    expect(told({ mistakes: [{ ...mistake, also: ["forgot the width"] }] })).toEqual([]);
    expect(told({ answer: { ...asked.answer, text: bad } })).toEqual([refused("answer.text")]);
  });

  it("in the heading of a sheet", () => {
    expect(
      problemsOf(() => worksheetHtml(sheetOf([asked]), { title: "a\u0007b" })).map(({ path }) => path),
    ).toEqual(["options.title"]);
  });

  it("a topic, a letter, units or a seed that is no name of a file", () => {
    expect(told({ topic: "草坪/速度" })).toEqual([
      'text problem.topic: "草坪/速度"; a topic of problemTopics, such as spray/speed',
    ]);
    for (const topic of ["../x", "a b", "a//b", "/a", "a/", 'a"b'])
      expect(told({ topic })[0]).toMatch(/^text problem\.topic: /);
    for (const letter of ['A"<', "a", "AB", "I", "Ä"])
      expect(told({ letter })[0]).toMatch(/problem\.letter: /);
    expect(told({ choices: [{ letter: "<", text: "x" }] })[0]).toMatch(/problem\.choices\[0\]\.letter: /);
    expect(told({ units: "SI" })[0]).toMatch(/problem\.units: /);
    expect(told({ seed: 4_294_967_296 })[0]).toMatch(/^range problem\.seed: /);
    expect(told({ seed: 4_294_967_295 })).toEqual([]);
  });

  it("a problem that is in the sheet twice: two files would have one name", () => {
    expect(
      problemsOf(() => worksheetQti(sheetOf([asked, { ...asked, seed: 5 }, asked]))).map(
        ({ code, path, got, expected }) => `${code} ${path}: ${got}; ${expected}`,
      ),
    ).toEqual([
      'duplicate sheet.problems[2]: "rw-spray-speed-1-US-4"; another topic or seed than sheet.problems[0] has',
    ]);
    expect(
      worksheetQti(sheetOf([asked, { ...asked, units: "metric" }])).items.map(({ name }) => name),
    ).toEqual(["rw-spray-speed-1-US-4.xml", "rw-spray-speed-1-metric-4.xml"]);
  });
});
