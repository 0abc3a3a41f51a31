// A refusal with the code `range` carries its bounds, so that an app can say them in another language.
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { isUnit } from "../../src/quantity/index.js";
import { withoutBounds } from "./range-bounds-exceptions.js";
import { read, sourceFiles } from "./sources.js";

/** The files in which problems with the code `range` are made by hand, with `params`: the floor of the others. */
const byHand: readonly string[] = [
  "src/quantity/errors/errors.ts",
  "src/quantity/errors/out-of-range.ts",
  "src/quantity/errors/read-fields.ts",
  "src/quantity/border/record.ts",
];

/** The texts that a call expects, where it fails with `range` and carries neither bounds nor choices. */
const bareIn = (file: string): readonly string[] => {
  const text = read(file);
  if (!text.includes('"range"')) return [];
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const look = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText() === "fail") {
      const [code, , , expected, more] = node.arguments.map((each) => each.getText());
      if (code?.includes('"range"') && !/\b(params|choices)\b/.test(more ?? "")) found.push(expected ?? "");
    }
    if (
      ts.isObjectLiteralExpression(node) &&
      text.includes('code: "range"') &&
      /\bcode: "range"/.test(node.getText()) &&
      !/\bparams\b/.test(node.getText())
    )
      found.push(node.getText());
    ts.forEachChild(node, look);
  };
  look(source);
  return found;
};

/** The units of bounds that are written out in a file. */
const unitsIn = (file: string): readonly string[] => {
  const source = ts.createSourceFile(file, read(file), ts.ScriptTarget.Latest, true);
  const found: string[] = [];
  const look = (node: ts.Node, inside: boolean): void => {
    const within =
      inside ||
      (ts.isCallExpression(node) &&
        /^(outOfRange|rangeProblem|expectWithin)$/.test(node.expression.getText()));
    if (
      within &&
      ts.isPropertyAssignment(node) &&
      node.name.getText() === "unit" &&
      ts.isStringLiteral(node.initializer)
    )
      found.push(node.initializer.text);
    ts.forEachChild(node, (child) => look(child, within));
  };
  look(source, false);
  return found;
};

const isListed = (expected: string): boolean =>
  withoutBounds.some(([words]) => words.test(expected.replace(/^["'`]|["'`]$/g, "")));

describe("a value out of range is told with its bounds", () => {
  const bare = sourceFiles()
    .filter((file) => !byHand.includes(file))
    .flatMap((file) => bareIn(file).map((expected) => ({ file, expected })));

  it("by outOfRange or rangeProblem, or there is a reason why not", () => {
    // finiteFigure of the indicators is handed its words.
    const left = bare.filter(
      ({ file, expected }) =>
        !isListed(expected) && !(file === "src/indicator/read.ts" && expected === "expected"),
    );
    expect(left).toEqual([]);
  });

  it("in units that the library has", () => {
    const units = sourceFiles().flatMap((file) => unitsIn(file).map((unit) => ({ file, unit })));
    expect(units.length).toBeGreaterThan(90);
    expect(units.filter(({ unit }) => !isUnit(unit))).toEqual([]);
  });

  it("and no reason is there for nothing", () => {
    const idle = withoutBounds.filter(
      ([words]) => !bare.some(({ expected }) => words.test(expected.replace(/^["'`]|["'`]$/g, ""))),
    );
    expect(idle.map(([words]) => String(words))).toEqual([]);
  });
});
