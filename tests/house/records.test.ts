import { join } from "node:path";
import ts from "typescript";
import { describe, expect, it } from "vitest";
import { libraryProgram } from "./program.js";
import { root } from "./sources.js";

/** What a function may give without `type` and `version`: parts of other records, and what a caller states. */
const parts: ReadonlySet<string> = new Set([
  // a value or the problems
  "allOf",
  "checks",
  "expectFields",
  "expectRecord",
  "quantitySchema",
  "readExact",
  "readQuantity",
  "rangeProblem",
  "tryWorkOrder",
  "tryRouteOrder",
  // two bounds, a value with its error, a span of days
  "ammoniumSulfateFromHardness",
  "errorOfProduct",
  "parseRange",
  "swathFromThrow",
  "thrownWidth",
  "windowAround",
  // one day of a series
  "normalDay",
  "seriesDay",
  // what a label, a rule or a test states, read
  "analysis",
  "analysisByWeight",
  "analysisOfMix",
  "expectWaterTest",
  "limit",
  "regulatorInterval",
  "releaseClass",
  "signalWord",
  "uniformityLimit",
  // an amount that is no quantity
  "fixedJarAmount",
]);

describe("the records that functions give", () => {
  const program = libraryProgram();
  const checker = program.getTypeChecker();
  const index = program.getSourceFile(join(root, "src/index.ts")) as ts.SourceFile;
  const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(index) as ts.Symbol);

  const isRecord = (type: ts.Type): boolean =>
    (type.flags & ts.TypeFlags.Object) !== 0 &&
    !checker.isArrayType(type) &&
    !checker.isTupleType(type) &&
    type.getCallSignatures().length === 0 &&
    !/^(Quantity|Map|ReadonlyMap|Set|ReadonlySet|Float64Array)$/.test(type.symbol?.name ?? "");

  const untyped = exported
    .filter((symbol) => {
      const meant = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      if (!(meant.flags & ts.SymbolFlags.Value)) return false;
      return checker
        .getTypeOfSymbol(meant)
        .getCallSignatures()
        .flatMap((signature) => {
          const result = signature.getReturnType();
          return result.isUnion() ? result.types : [result];
        })
        .some((type) => isRecord(type) && !(type.getProperty("type") && type.getProperty("version")));
    })
    .map(({ name }) => name);

  it("say their type and version", () => {
    expect(exported.length).toBeGreaterThan(400);
    expect(untyped.filter((name) => !parts.has(name))).toEqual([]);
  });

  it("need every exception that is listed", () => {
    expect([...parts].filter((name) => !untyped.includes(name))).toEqual([]);
  });
});
