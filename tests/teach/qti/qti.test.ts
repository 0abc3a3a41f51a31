import { readFileSync } from "node:fs";
import type { XmlDocument } from "libxml2-wasm";
import { describe, expect, it } from "vitest";
import { problem, problemTopics, worksheet } from "../../../src/teach/problems/index.js";
import { problemQti, worksheetQti } from "../../../src/teach/qti/index.js";

const namespaces = { q: "http://www.imsglobal.org/xsd/imsqti_v2p1" };

/** Reads a document, and takes it only where it keeps to the schema. */
const reader = async (): Promise<(xml: string) => XmlDocument> => {
  const xml = await import("libxml2-wasm");
  const schema = readFileSync(new URL("./qti-2.1-subset.xsd", import.meta.url), "utf8");
  const validator = xml.XsdValidator.fromDoc(xml.XmlDocument.fromString(schema));
  return (text) => {
    const document = xml.XmlDocument.fromString(text);
    validator.validate(document);
    return document;
  };
};
const texts = (document: XmlDocument, path: string): string[] =>
  document.find(path, namespaces).map((node) => node.content);

describe("a problem as QTI", () => {
  it("keeps to the schema, and says what the problem says, for every topic", async () => {
    const valid = await reader();
    for (const { topic, levels } of problemTopics) {
      for (const level of levels) {
        for (const units of ["US", "metric"] as const) {
          const asked = problem({ topic, level, seed: 11, units });
          const item = valid(problemQti(asked));
          expect(texts(item, "//q:itemBody/q:p")).toEqual([asked.text]);
          expect(texts(item, "//q:simpleChoice")).toEqual(asked.choices.map(({ text }) => text));
          expect(texts(item, "//q:correctResponse/q:value")).toEqual([asked.letter]);
          const told = asked.mistakes.map(({ says }) => says);
          for (const { letter } of asked.choices) {
            const feedback = texts(item, `//q:modalFeedback[@identifier="${letter}"]/q:p`);
            // the working is told line by line, as on a sheet
            if (letter === asked.letter) expect(feedback).toEqual(["Right.", ...asked.steps]);
            else {
              expect(feedback).toHaveLength(1);
              expect(told).toContain(feedback[0]);
            }
          }
          item.dispose();
        }
      }
    }
  });

  it("keeps signs of XML in texts as they are", async () => {
    const valid = await reader();
    const asked = {
      ...problem({ topic: "spray/speed", level: 1, seed: 1, units: "US" }),
      text: 'a < b & "c" > d',
    };
    expect(texts(valid(problemQti(asked)), "//q:itemBody/q:p")).toEqual(['a < b & "c" > d']);
  });
});

describe("a worksheet as QTI", () => {
  it("names every item once, in order", async () => {
    const valid = await reader();
    const sheet = worksheetQti(worksheet({ count: 60, seed: 3, units: "US" }));
    const test = valid(sheet.test.xml);
    const refs = test.find("//q:assessmentItemRef/@href", namespaces).map((node) => node.content);
    expect(refs).toEqual(sheet.items.map(({ name }) => name));
    expect(new Set(refs).size).toBe(60);
    for (const { xml } of sheet.items) valid(xml).dispose();
  });

  it("is refused where it is none", () => {
    expect(() => worksheetQti({} as never)).toThrow(/sheet/);
  });
});

describe("the schema of the tests", () => {
  it("refuses what it should", async () => {
    const valid = await reader();
    const xml = problemQti(problem({ topic: "spray/speed", level: 1, seed: 1, units: "US" }));
    const broken = [
      xml.replace('cardinality="single"', 'cardinality="one"'),
      xml.replace(/<itemBody>[\s\S]*<\/itemBody>/, ""),
      xml.replace('identifier="B"', 'identifier="A"'),
      xml.replace(' showHide="show"', ""),
    ];
    for (const each of broken) {
      expect(each).not.toBe(xml);
      expect(() => valid(each)).toThrow();
    }
  });
});
