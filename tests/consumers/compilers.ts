import { spawnSync } from "node:child_process";
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** A TypeScript that a user may have: its version and how it is called. */
export interface Compiler {
  readonly version: string;
  readonly program: string;
}

/** The compiler that a folder has installed. */
export const installed = (folder: string): Compiler => {
  const at = join(folder, "node_modules/typescript");
  const { version } = JSON.parse(readFileSync(join(at, "package.json"), "utf8")) as { version: string };
  return { version, program: join(at, "bin/tsc") };
};

/** The other versions that a user may have: the last of the fifth line, and the native one. */
const others = ["5.9.3", "7.0.2"];

/**
 * The compiler of this repository and the others, which are installed below `parent`: as dev dependencies
 * two compilers would quarrel about the name `tsc`.
 */
export const compilers = (root: string, parent: string): readonly Compiler[] => [
  installed(root),
  ...others.map((version) => {
    const folder = join(parent, `typescript-${version}`);
    mkdirSync(folder);
    writeFileSync(join(folder, "package.json"), JSON.stringify({ private: true }));
    const options = ["--prefer-offline", "--no-audit", "--no-fund"];
    const { status, stderr } = spawnSync("npm", ["install", ...options, `typescript@${version}`], {
      cwd: folder,
      encoding: "utf8",
      shell: process.platform === "win32",
    });
    if (status !== 0) throw new Error(`TypeScript ${version} could not be installed\n${stderr}`);
    return installed(folder);
  }),
];
