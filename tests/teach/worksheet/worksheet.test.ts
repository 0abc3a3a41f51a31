import { describe, expect, it } from "vitest";
import { worksheetCsv, worksheetHtml, worksheetMarkdown } from "../../../src/teach/index.js";
import { problem, problemTopics, worksheet } from "../../../src/teach/problems/index.js";

const sheetOf = () => worksheet({ count: 25, seed: 5, units: "US" });

/** Rows and cells by RFC 4180, read apart from the code that writes them. */
const readCsv = (text: string): string[][] =>
  [...text.matchAll(/(?:[^"\r\n]|"(?:[^"]|"")*")+/g)].map(([line]) =>
    [...`${line},`.matchAll(/(?:"((?:[^"]|"")*)"|([^",]*)),/g)].map(
      ([, quoted, plain = ""]) => quoted?.replaceAll('""', '"') ?? plain,
    ),
  );

describe("a worksheet", () => {
  it("is the same for its seed, and another for another", () => {
    const sheet = sheetOf();
    expect(worksheet({ count: 25, seed: 5, units: "US" })).toEqual(sheet);
    expect(worksheet({ count: 25, seed: 6, units: "US" })).not.toEqual(sheet);
  });

  it("has no problem twice, lets every topic take its turn, and says how to make each again", () => {
    const sheet = sheetOf();
    expect(new Set(sheet.problems.map(({ text }) => text)).size).toBe(25);
    const topics = sheet.problems.slice(0, problemTopics.length).map(({ topic }) => topic);
    expect(new Set(topics).size).toBe(Math.min(25, problemTopics.length));
    for (const { topic, level, seed, units, text } of sheet.problems) {
      expect(problem({ topic, level, seed, units }).text).toBe(text);
    }
  });

  it("has no problem twice with the same figures in another place", () => {
    const placeless = (text: string) =>
      text.replace(/the (?:north practice pitch|south practice pitch|bowling green|meadow)/gi, "it");
    for (const [topics, count] of [
      [["spray/speed"], 12],
      [["tank/dilution"], 20],
      [["spray/catch", "tank/coverage"], 20],
      [["quantity/rates-per-acre", "tank/rinsing"], 16],
      [undefined, 200],
    ] as const)
      for (const units of ["US", "metric"] as const)
        for (const seed of [0, 1, 2]) {
          const { problems } = worksheet({ ...(topics && { topics }), count, seed, units });
          expect(new Set(problems.map(({ text }) => placeless(text))).size).toBe(count);
        }
  });

  it("keeps to the level and the topics asked for", () => {
    const one = worksheet({
      topics: ["tank/dilution", "stand/seed"],
      level: 2,
      count: 9,
      seed: 1,
      units: "metric",
    });
    expect(new Set(one.problems.map(({ topic }) => topic))).toEqual(new Set(["tank/dilution", "stand/seed"]));
    expect(new Set(one.problems.map(({ level }) => level))).toEqual(new Set([2]));
    expect(
      worksheet({ level: 1, count: 30, seed: 1, units: "US" }).problems.every(({ level }) => level === 1),
    ).toBe(true);
  });

  it("asks a level of the topics that have it alone", () => {
    const levelsOf = new Map(problemTopics.map(({ topic, levels }) => [topic, levels]));
    const { problems } = worksheet({ level: 3, count: 120, seed: 2, units: "US" });
    expect(problems.filter(({ topic }) => levelsOf.get(topic)?.includes(3) !== true)).toEqual([]);
    const having = problemTopics.filter(({ levels }) => levels.includes(3)).map(({ topic }) => topic);
    expect([...new Set(problems.map(({ topic }) => topic))].sort()).toEqual(having.sort());
  });

  it("is refused with what is wrong", () => {
    const ask = { count: 5, seed: 1, units: "US" } as const;
    expect(() => worksheet({ ...ask, topics: ["tank/dilutoin"] })).toThrow(/tank\/dilution/);
    expect(() => worksheet({ ...ask, topics: ["tank/dilution", "tank/dilution"] })).toThrow(
      /each topic once/,
    );
    expect(() => worksheet({ ...ask, topics: ["spray/pressure"], level: 1 })).toThrow(/2 to 3/);
    expect(() => worksheet({ ...ask, count: 0 })).toThrow(/count/);
    expect(() => worksheet({ ...ask, count: 201 })).toThrow(/count/);
    expect(() => worksheet({ ...ask, count: 2.5, seed: -1 })).toThrow(/seed[\s\S]*count|count[\s\S]*seed/);
    expect(() => worksheet({ ...ask, topics: ["tank/coverage"], level: 1, count: 200 })).toThrow(
      /more topics/,
    );
  });
});

describe("a problem", () => {
  it("is refused with what is wrong", () => {
    const ask = { topic: "spray/speed", level: 1, seed: 1, units: "US" } as const;
    expect(() => problem({ ...ask, topic: "speed" })).toThrow(/did you mean spray\/speed/);
    expect(() => problem({ ...ask, topic: "spray/sped" })).toThrow(/did you mean spray\/speed/);
    expect(() => problem({ ...ask, level: 4 as never })).toThrow(/a level: a whole number, 1 to 3/);
    for (const seed of [1.5, -1, Number.NaN, 2 ** 32, "1" as never, undefined as never]) {
      expect(() => problem({ ...ask, seed })).toThrow(/seed/);
    }
    expect(() => problem({ ...ask, units: "SI" as never })).toThrow(/units/);
    expect(() => problem({ ...ask, sed: 1 } as never)).toThrow(/sed/);
  });
});

describe("Markdown", () => {
  it("holds each problem, and the key below", () => {
    const sheet = sheetOf();
    const text = worksheetMarkdown(sheet, { choices: true });
    const [above = "", below = ""] = text.split("\n## Key\n");
    expect(above.match(/^\d+\. /gm)).toHaveLength(25);
    expect(below.match(/^\d+\. \*\*/gm)).toHaveLength(25);
    expect(above.match(/^ {3}- [A-D]\. /gm)).toHaveLength(100);
    expect(worksheetMarkdown(sheet, { key: false })).not.toContain("Key");
  });
});

describe("HTML", () => {
  it("shows no answer on a sheet without its key", () => {
    const sheet = sheetOf();
    const html = worksheetHtml(sheet, { key: false });
    expect(html.match(/class="work"/g)).toHaveLength(25);
    for (const { steps } of sheet.problems) expect(html).not.toContain(steps[0]);
    expect(worksheetHtml(sheet).match(/<strong>/g)).toHaveLength(25);
  });

  it("keeps signs of HTML in texts as they are, and runs nothing", () => {
    const sheet = sheetOf();
    const html = worksheetHtml(sheet, { title: '<script>alert("1")</script> & more' });
    expect(html).not.toMatch(/<script/);
    expect(html).toContain("&lt;script&gt;");
    expect(html).not.toMatch(/https?:/);
  });
});

describe("CSV", () => {
  it("has a row for each problem that reads back as it was", () => {
    const sheet = sheetOf();
    const [head = [], ...rows] = readCsv(worksheetCsv(sheet));
    expect(rows).toHaveLength(25);
    rows.forEach((row, i) => {
      const each = sheet.problems[i];
      expect(row).toHaveLength(head.length);
      expect(row[head.indexOf("problem")]).toBe(each?.text);
      expect(row[head.indexOf(row[head.indexOf("letter")] ?? "")]).toBe(each?.answer.text);
    });
  });
});
