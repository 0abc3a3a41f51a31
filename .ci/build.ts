// What `npm run build` does: the types by tsc, the program and the rolled-up types by tsup, into an empty dist/, and the
// CommonJS half from the ES modules. The types lie there once, in the CommonJS half: an ES module may take what it exports
// from there, and not the other way round.
import { execFileSync } from "node:child_process";
import { readdirSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";
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
for (const path of readdirSync("dist/cjs", { recursive: true, encoding: "utf8" })) {
  if (!/(^|[\\/])index\.d\.ts$/.test(path)) continue;
  const to = join("dist/esm", path);
  const from = relative(dirname(to), join("dist/cjs", path)).replaceAll("\\", "/");
  writeFileSync(to, `export * from "${from.replace(/\.d\.ts$/, ".js")}";\n`);
}
// The package is an ES module package; this half of it is CommonJS.
writeFileSync("dist/cjs/package.json", `${JSON.stringify({ type: "commonjs" })}\n`);
