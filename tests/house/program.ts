import { join } from "node:path";
import ts from "typescript";
import { root } from "./sources.js";

let made: ts.Program | undefined;

/** The sources of the library as the compiler sees them; read once for all tests of a worker, and not checked. */
export const libraryProgram = (): ts.Program => {
  if (made === undefined) {
    const source = join(root, "src");
    const { config } = ts.readConfigFile(join(source, "tsconfig.json"), ts.sys.readFile);
    const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, source);
    made = ts.createProgram(fileNames, {
      ...options,
      noCheck: true,
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
    });
  }
  return made;
};
