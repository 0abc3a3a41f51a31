import { execFileSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import process from "node:process";
import { fileURLToPath, pathToFileURL } from "node:url";

/** The folder of the repository, without a slash at the end. */
export const root: string = fileURLToPath(new URL("../..", import.meta.url)).replace(/[\\/]$/, "");

/** The text of a file, named from the root of the repository. */
export const read = (path: string): string => readFileSync(join(root, path), "utf8");

/** Where to load a source from whose path is put together, named from the root: its compiled form where there is one. */
export const urlOf = (path: string): string => {
  const compiled = process.env.COMPILED_SOURCES;
  return pathToFileURL(
    compiled === undefined ? join(root, path) : join(compiled, path.replace(/\.ts$/, ".js")),
  ).href;
};

/** Whether a file or folder is there, named from the root of the repository. */
export const exists = (path: string): boolean => existsSync(join(root, path));

const notOurs = new Set(["node_modules", ".git", "dist", "coverage"]);
/** What `npm run docs` writes: not ours either, and it has a copy of the changelog with every old name. */
const generated = join(root, "docs/api");

/** All files below a folder, sorted, named from the root of the repository with `/` between folders. */
export const filesBelow = (folder: string): string[] => {
  const found: string[] = [];
  const visit = (path: string): void => {
    for (const entry of readdirSync(path, { withFileTypes: true })) {
      if (notOurs.has(entry.name)) continue;
      const below = join(path, entry.name);
      if (below === generated) continue;
      if (entry.isDirectory()) visit(below);
      else found.push(relative(root, below).split(sep).join("/"));
    }
  };
  if (exists(folder)) visit(join(root, folder));
  return found.sort();
};

/** The source files of the library. */
export const sourceFiles = (): string[] => filesBelow("src").filter((path) => path.endsWith(".ts"));

/** The rooms: the folders of `src/` that have an `index.ts`. */
export const rooms = (): string[] =>
  readdirSync(join(root, "src"), { withFileTypes: true })
    .filter((entry) => entry.isDirectory() && exists(`src/${entry.name}/index.ts`))
    .map((entry) => entry.name)
    .sort();

/** The parts of a room with an entry of their own, `nutrient/blend`: what needs a package that the room does not load. */
export const subpaths = (): string[] =>
  rooms().flatMap((room) =>
    readdirSync(join(root, "src", room), { withFileTypes: true })
      .filter((entry) => entry.isDirectory() && exists(`src/${room}/${entry.name}/index.ts`))
      .map((entry) => `${room}/${entry.name}`)
      .sort(),
  );

/** The files under version control; in a copy without a history, the files that are there. */
export const trackedFiles = (): string[] => {
  try {
    return execFileSync("git", ["ls-files", "-z"], { cwd: root, encoding: "utf8", stdio: "pipe" })
      .split("\0")
      .filter((path) => path !== "" && exists(path));
  } catch {
    return filesBelow(".").filter((path) => !/^(docs\/api|site)\//.test(path) && !path.endsWith(".tgz"));
  }
};
