import { join } from "node:path";
import ts from "typescript";
import { root } from "./sources.js";

/** How the compiler reads files; doc comments are of no interest to it, as they are none to tsc. */
export const hostFor = (options: ts.CompilerOptions): ts.CompilerHost => {
  const host = ts.createCompilerHost(options);
  host.jsDocParsingMode = ts.JSDocParsingMode.ParseForTypeErrors;
  return host;
};

let made: ts.Program | undefined;

/** The sources of the library as the compiler sees them; read once for all tests of a worker, and not checked. */
export const libraryProgram = (): ts.Program => {
  if (made === undefined) {
    const source = join(root, "src");
    const { config } = ts.readConfigFile(join(source, "tsconfig.json"), ts.sys.readFile);
    const { fileNames, options } = ts.parseJsonConfigFileContent(config, ts.sys, source);
    const asked: ts.CompilerOptions = {
      ...options,
      noCheck: true,
      noEmit: false,
      declaration: true,
      emitDeclarationOnly: true,
    };
    made = ts.createProgram(fileNames, asked, hostFor(asked));
  }
  return made;
};
