// Changes each number of the source by one part in ten thousand, and says which of them nothing notices that is not a
// copy of our own output: `npm run mutants:constants`, or `npm run mutants:constants -- quantity soil/lime` for some rooms.
// A number that nothing notices has no published figure sharp enough, and wants a second transcription of its source in
// tests/constants/.
import { fork } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { filesBelow } from "../house/sources.js";
import type { Given, Told } from "./alone/numbers.js";
import { whyListed } from "./listed.js";
import { type Literal, literalsOf, withReadNumbers } from "./literals.js";
import { record, today } from "./summary.js";

const root = fileURLToPath(new URL("../../", import.meta.url));
/** In ms: so long a process may be silent before it is ended. */
const longest = Number(process.env.MUTANTS_WAIT ?? 60) * 1000;
const runner = fileURLToPath(new URL("./alone/numbers.ts", import.meta.url));
const roomOf = ({ file }: Literal): string => file.split("/")[1] ?? "";

const files = filesBelow("src").filter((path) => path.endsWith(".ts"));
const literals: Literal[] = [];
const texts = new Map<string, string>();
for (const file of files) {
  const text = readFileSync(root + file, "utf8");
  const found = literalsOf(file, text);
  const read = withReadNumbers(text, found, literals.length);
  texts.set(root + file, read.replaceAll(/\bwhile \(/g, "while (__T(), "));
  literals.push(...found);
}
const numbers: readonly number[] = literals.map(({ text }) => Number(text.replaceAll("_", "")));

const bundle = async (): Promise<string> => {
  const { outputFiles } = await build({
    entryPoints: [`${root}tests/mutants/checks.ts`],
    bundle: true,
    write: false,
    format: "cjs",
    platform: "node",
    target: "es2022",
    logLevel: "error",
    external: ["highs", "geographiclib-geodesic"],
    alias: { ratewright: `${root}src/index.ts` },
    plugins: [
      {
        name: "numbers are read from a list",
        setup: ({ onLoad }) => {
          onLoad({ filter: /\.ts$/ }, ({ path }) => {
            const contents = texts.get(path);
            return contents === undefined ? undefined : { contents, loader: "ts" };
          });
        },
      },
    ],
  });
  return outputFiles[0]?.text ?? "";
};

interface Result {
  readonly n: number;
  readonly noticed: boolean;
  /** Whether a check comes to it. */
  readonly read: boolean;
}

/** Numbers whose process once fell silent or died: a busy machine does that too, so they are tried a second time. */
const silent = new Set<number>();

/** Tries some numbers in a process of its own, until the end or until one does not end. */
const round = (folder: string, given: Given): Promise<readonly Result[]> =>
  new Promise((resolve, reject) => {
    const path = join(folder, "program.json");
    writeFileSync(path, JSON.stringify(given));
    const child = fork(runner, [path], { execArgv: [...process.execArgv, "--max-old-space-size=1500"] });
    const results: Result[] = [];
    let at: number | undefined;
    let timer: NodeJS.Timeout;
    const beat = (): void => {
      clearTimeout(timer);
      timer = setTimeout(() => child.kill("SIGKILL"), longest);
    };
    beat();
    child.on("message", (told: Told) => {
      beat();
      if (told.type === "does not hold") reject(new Error(`${told.name} does not hold as it stands`));
      if (told.type === "start") at = told.n;
      if (told.type === "late") at = undefined;
      if (told.type === "done") {
        results.push(told);
        at = undefined;
        if (results.length % 100 === 0) console.error(`  ${results.length} of ${given.todo.length}`);
      }
    });
    child.on("exit", () => {
      clearTimeout(timer);
      if (at !== undefined) {
        const second = silent.has(at);
        const place = `${literals[at]?.file}:${literals[at]?.line} ${literals[at]?.text}`;
        console.error(`  ${place}: no end${second ? ", twice: counts as noticed" : ""}`);
        if (second) results.push({ n: at, noticed: true, read: true });
        silent.add(at);
      } else if (results.length === 0) reject(new Error("the checks cannot be loaded"));
      resolve(results);
    });
  });

const tryAll = async (program: string, all: Given["todo"]): Promise<ReadonlyMap<number, Result>> => {
  const folder = mkdtempSync(join(tmpdir(), "constants-"));
  const found = new Map<number, Result>();
  while (found.size < all.length) {
    const todo = all.filter(({ n }) => !found.has(n));
    for (const result of await round(folder, { program, numbers, todo })) found.set(result.n, result);
  }
  rmSync(folder, { recursive: true });
  return found;
};

const counted = (rows: readonly Literal[]): string => {
  const classes = new Map<string, number>();
  for (const { excluded } of rows) if (excluded) classes.set(excluded, (classes.get(excluded) ?? 0) + 1);
  return [...classes].map(([name, count]) => `${count} ${name}`).join(", ");
};

const lineOf = (file: string, line: number): string =>
  readFileSync(root + file, "utf8").split("\n")[line - 1] ?? "";
const rooms = [...new Set(literals.map(roomOf))].filter((room) => room !== "index.ts");
const asked = process.argv.slice(2).filter((room) => rooms.includes(room));
/** `soil/lime` tries the numbers of the files whose path has it. */
const parts = process.argv.slice(2).filter((part) => part.includes("/"));
const out = process.env.SURVIVORS_OUT;
if (out) mkdirSync(out, { recursive: true });
const wanted = [
  ...new Set(
    asked.length + parts.length > 0 ? [...asked, ...parts.map((part) => part.split("/")[0] ?? "")] : rooms,
  ),
];
const isAsked = (literal: Literal): boolean =>
  asked.length + parts.length === 0 ||
  asked.includes(roomOf(literal)) ||
  parts.some((part) => literal.file.includes(`src/${part}`));
const todo = literals.flatMap((literal, n) =>
  literal.excluded === undefined && isAsked(literal) ? [{ n, room: roomOf(literal) }] : [],
);
const found = await tryAll(await bundle(), todo);
for (const room of wanted) {
  const mine = literals.flatMap((literal, n) =>
    roomOf(literal) === room && isAsked(literal) ? [{ ...literal, n }] : [],
  );
  const tested = mine.filter(({ excluded }) => excluded === undefined);
  const survivors = tested.filter(({ n }) => found.get(n)?.noticed !== true);
  const open = survivors.filter(({ file, line }) => whyListed(file, lineOf(file, line)) === undefined);
  const lines = open.map(
    ({ file, line, text, n }) =>
      `${file}:${line} ${text}${found.get(n)?.read ? "" : " (no check comes here)"}`,
  );
  const noticed = tested.length - survivors.length;
  const listed = survivors.length - open.length;
  console.log(
    `${room}: ${tested.length} numbers, ${noticed} noticed, ${listed} listed, ${open.length} open; left out: ${counted(mine)}`,
  );
  if (process.argv.includes("--record") && parts.length === 0)
    record("constants", room, { numbers: tested.length, noticed, listed, made: today() });
  if (out) writeFileSync(`${out}/constants-${room}.txt`, `${lines.join("\n")}\n`);
  else for (const line of lines) console.log(`  ${line}`);
}
