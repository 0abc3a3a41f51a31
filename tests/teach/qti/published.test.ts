// The published XML schema of QTI 2.1 may not be put into this repository. Who has it sets QTI_XSD to its path:
// `QTI_XSD=/path/imsqti_v2p1.xsd npm run qti:check`. What it imports is read from the folder that it lies in, by file name.
import { closeSync, existsSync, openSync, readFileSync, readSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import { expect, test } from "vitest";
import { problem, problemTopics, worksheet } from "../../../src/teach/problems/index.js";
import { problemQti, worksheetQti } from "../../../src/teach/qti/index.js";

const path = process.env.QTI_XSD;

/** What checks a document against a schema, with what lies beside it. */
const checkOf = async (schema: string): Promise<(xml: string) => void> => {
  const { XmlDocument, XsdValidator, xmlCleanupInputProvider, xmlRegisterInputProvider } = await import(
    "libxml2-wasm"
  );
  const beside = (name: string): string => join(dirname(schema), basename(name));
  xmlRegisterInputProvider({
    match: (name) => existsSync(beside(name)),
    open: (name) => openSync(beside(name), "r"),
    read: (file, buffer) => readSync(file, buffer, 0, buffer.byteLength, null),
    close: (file) => {
      closeSync(file);
      return true;
    },
  });
  const validator = XsdValidator.fromDoc(
    XmlDocument.fromString(readFileSync(schema, "utf8"), { url: basename(schema) }),
  );
  xmlCleanupInputProvider();
  return (xml) => {
    const document = XmlDocument.fromString(xml);
    validator.validate(document);
    document.dispose();
  };
};

test.runIf(path !== undefined)("the published schema takes every problem and every sheet", async () => {
  const check = await checkOf(path as string);
  const good = problemQti(problem({ topic: "spray/speed", level: 1, seed: 1, units: "US" }));
  // A validator that takes anything would prove nothing.
  expect(() => check(good.replace('cardinality="single"', 'cardinality="one"'))).toThrow();
  expect(() => check(good.replace("<responseProcessing>", "<responseProcess>"))).toThrow();
  for (const units of ["US", "metric"] as const) {
    for (const { topic, levels } of problemTopics)
      for (const level of levels)
        for (const seed of [1, 2, 3]) check(problemQti(problem({ topic, level, seed, units })));
    const { items, test: sheet } = worksheetQti(worksheet({ count: 100, seed: 1, units }));
    for (const { xml } of [...items, sheet]) check(xml);
  }
});
