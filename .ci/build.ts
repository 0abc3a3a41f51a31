// What `npm run build` does: the types by tsc, the program and the rolled-up types by tsup, into an empty dist/, and the
// CommonJS half from the ES modules.
import { execFileSync } from "node:child_process";
import { rmSync, writeFileSync } from "node:fs";
import { execPath } from "node:process";
import { writeCommonJs } from "./commonjs.js";

const run = (tool: string, ...args: readonly string[]): void => {
  execFileSync(execPath, [tool, ...args], { stdio: "inherit" });
};

rmSync("dist", { recursive: true, force: true });
run("node_modules/typescript/bin/tsc", "-p", "src", "--outDir", "dist/types");
run("node_modules/tsup/dist/cli-default.js");
rmSync("dist/types", { recursive: true });
writeCommonJs("dist/esm", "dist/cjs");
// The package is an ES module package; this half of it is CommonJS.
writeFileSync("dist/cjs/package.json", `${JSON.stringify({ type: "commonjs" })}\n`);
