// Whether the compiler notices a change. What it notices never gets as far as a test.
import { join } from "node:path";
import ts from "typescript";
import { root } from "../../house/sources.js";
import type { Mutant } from "./program.js";

/** Says of a mutant whether the compiler refuses the file that it stands in. */
export const compilerOf = (): ((mutant: Mutant) => boolean) => {
  const config = ts.readConfigFile(join(root, "src/tsconfig.json"), ts.sys.readFile);
  const { options, fileNames } = ts.parseJsonConfigFileContent(config.config, ts.sys, join(root, "src"));
  const changed = new Map<string, { readonly version: number; readonly text: string | undefined }>();
  const textOf = (path: string): string | undefined => changed.get(path)?.text ?? ts.sys.readFile(path);
  const service = ts.createLanguageService({
    getCompilationSettings: () => ({ ...options, noEmit: true }),
    getScriptFileNames: () => fileNames,
    getScriptVersion: (path) => String(changed.get(path)?.version ?? 0),
    getScriptSnapshot: (path) => {
      const text = textOf(path);
      return text === undefined ? undefined : ts.ScriptSnapshot.fromString(text);
    },
    getCurrentDirectory: () => root,
    getDefaultLibFileName: ts.getDefaultLibFilePath,
    fileExists: ts.sys.fileExists,
    readFile: ts.sys.readFile,
  });
  return ({ file, at, was, is }) => {
    const path = join(root, file);
    const text = ts.sys.readFile(path) ?? "";
    const version = (changed.get(path)?.version ?? 0) + 1;
    changed.set(path, { version, text: `${text.slice(0, at)}${is}${text.slice(at + was.length)}` });
    const refused =
      service.getSyntacticDiagnostics(path).length > 0 || service.getSemanticDiagnostics(path).length > 0;
    changed.set(path, { version: version + 1, text: undefined });
    return refused;
  };
};
