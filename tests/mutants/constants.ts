// Changes each number of the source by one part in ten thousand, and says which of them nothing notices that is not a
// copy of our own output: `npm run mutants:constants`, or `npm run mutants:constants -- quantity numeric` for some rooms.
// A number that nothing notices has no published figure sharp enough, and wants a second transcription of its source in
// tests/constants/.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { filesBelow } from "../house/sources.js";
import type { Check } from "./checks.js";
import { whyListed } from "./listed.js";
import { type Literal, literalsOf, withReadNumbers } from "./literals.js";
import { record, today } from "./summary.js";

const factor = 1 + 1e-4;
const root = fileURLToPath(new URL("../../", import.meta.url));
/** The rooms whose numbers the checks of other rooms come to. */
const below: ReadonlySet<string> = new Set(["quantity", "numeric", "calendar"]);
const roomOf = ({ file }: Literal): string => file.split("/")[1] ?? "";

const files = filesBelow("src").filter((path) => path.endsWith(".ts"));
const literals: Literal[] = [];
const texts = new Map<string, string>();
for (const file of files) {
  const text = readFileSync(root + file, "utf8");
  const found = literalsOf(file, text);
  texts.set(root + file, withReadNumbers(text, found, literals.length));
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

type Load = (list: readonly number[]) => readonly Check[];

const loader = (program: string): Load => {
  const run = new Function("module", "exports", "require", "__K", program);
  const require = createRequire(import.meta.url);
  return (list) => {
    const module: { exports: { checks?: readonly Check[] } } = { exports: {} };
    run(module, module.exports, require, list);
    return module.exports.checks ?? [];
  };
};

const holds = (check: Check): boolean => {
  try {
    return check.holds();
  } catch {
    return false;
  }
};

/** A list of numbers that notes which of them are read. */
const noting = (seen: () => Set<number>): readonly number[] =>
  new Proxy(numbers, {
    get: (list, key) => {
      seen().add(Number(key));
      return Reflect.get(list, key);
    },
  });

/** The copy in which a number is changed while it is there; a fresh one keeps nothing that it has made before. */
const now = [...numbers];
let copy: readonly Check[] = [];

/** The numbers that each check reads, by its place; what is made once and kept is read by the first that wants it. */
const readBy: Set<number>[] = [];

/** The checks that may notice a number: those of its room first, and all that read it. */
const near = (checks: readonly Check[], room: string, literal: number): readonly Check[] => [
  ...checks.filter((check) => check.room === room),
  ...checks.filter(
    (check, n) => check.room !== room && (below.has(room) || readBy[n]?.has(literal) === true),
  ),
];

const isCaughtBy = (checks: readonly Check[], room: string, literal: number): boolean =>
  !near(checks, room, literal).every(holds);

/** Whether something notices that a number is another. */
const isCaught = (load: Load, literal: number, early: boolean, room: string): boolean => {
  const changed = (numbers[literal] ?? 0) * factor;
  if (!early) {
    now[literal] = changed;
    const caught = isCaughtBy(copy, room, literal);
    now[literal] = numbers[literal] ?? 0;
    // What is made once and kept was made before
    if (caught) return true;
  }
  const list = [...numbers];
  list[literal] = changed;
  try {
    return isCaughtBy(load(list), room, literal);
  } catch {
    return true;
  }
};

const counted = (rows: readonly Literal[]): string => {
  const classes = new Map<string, number>();
  for (const { excluded } of rows) if (excluded) classes.set(excluded, (classes.get(excluded) ?? 0) + 1);
  return [...classes].map(([name, count]) => `${count} ${name}`).join(", ");
};

const load = loader(await bundle());
copy = load(now);
for (const check of copy) if (!holds(check)) throw new Error(`${check.name} does not hold as it stands`);
const atLoad = new Set<number>();
load(noting(() => atLoad));
let reading = new Set<number>();
for (const check of load(noting(() => reading))) {
  reading = new Set();
  holds(check);
  readBy.push(reading);
}
const everRead = new Set([...atLoad, ...readBy.flatMap((read) => [...read])]);
const lineOf = (file: string, line: number): string =>
  readFileSync(root + file, "utf8").split("\n")[line - 1] ?? "";
const rooms = [...new Set(literals.map(roomOf))].filter((room) => room !== "index.ts");
const asked = process.argv.slice(2).filter((room) => rooms.includes(room));
const out = process.env.SURVIVORS_OUT;
if (out) mkdirSync(out, { recursive: true });
for (const room of asked.length > 0 ? asked : rooms) {
  const mine = literals.flatMap((literal, n) => (roomOf(literal) === room ? [{ ...literal, n }] : []));
  const tested = mine.filter(({ excluded }) => excluded === undefined);
  const survivors = tested.filter(({ n }) => !(everRead.has(n) && isCaught(load, n, atLoad.has(n), room)));
  const open = survivors.filter(({ file, line }) => whyListed(file, lineOf(file, line)) === undefined);
  const lines = open.map(
    ({ file, line, text, n }) => `${file}:${line} ${text}${everRead.has(n) ? "" : " (no check comes here)"}`,
  );
  const noticed = tested.length - survivors.length;
  const listed = survivors.length - open.length;
  console.log(
    `${room}: ${tested.length} numbers, ${noticed} noticed, ${listed} listed, ${open.length} open; left out: ${counted(mine)}`,
  );
  if (process.argv.includes("--record"))
    record("constants", room, { numbers: tested.length, noticed, listed, made: today() });
  if (out) writeFileSync(`${out}/constants-${room}.txt`, `${lines.join("\n")}\n`);
  else for (const line of lines) console.log(`  ${line}`);
}
