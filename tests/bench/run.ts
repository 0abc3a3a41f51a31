// Runs the measurements of this folder, or only those whose file name contains the given word.
import { readdirSync } from "node:fs";

const here = new URL("./", import.meta.url);
const word = process.argv[2] ?? "";
const files = readdirSync(here).filter(
  (name) => /\.ts$/.test(name) && name !== "run.ts" && name.includes(word),
);

console.log(`node ${process.version}, ${process.platform} ${process.arch}`);
for (const name of files.sort()) {
  console.log(`\n${name}`);
  await import(new URL(name, here).href);
}
