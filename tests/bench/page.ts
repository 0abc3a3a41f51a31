// docs/performance.md, drawn from results.json.
import { peers } from "./compare/peer-list.js";
import { firstOrderName, type Reading, type Results, warmCalls } from "./compare/rows.js";

const digits = (value: number): string =>
  value >= 100 ? Math.round(value).toLocaleString("en-US") : String(Number(value.toPrecision(2)));
const times = (ratio: number): string => (ratio >= 10 ? ratio.toFixed(0) : ratio.toFixed(ratio >= 2 ? 1 : 2));

const table = (head: readonly string[], rows: readonly (readonly string[])[]): string => {
  const [first, ...rest] = head;
  return [
    `| ${[first, ...rest].join(" | ")} |`,
    `| --- | ${rest.map(() => "---:").join(" | ")} |`,
    ...rows.map((row) => `| ${row.join(" | ")} |`),
  ].join("\n");
};

type TaskResult = Results["tasks"][number];
const ns = (task: TaskResult, library: string): number | undefined =>
  task.ways.find((way) => way.library === library)?.ns.median;
const own = (task: TaskResult): number => ns(task, "ratewright") as number;

const taskTable = ({ tasks }: Results): string => {
  const libraries = ["plain arithmetic", "ratewright", ...peers.map(({ name }) => name)];
  return table(
    ["library", ...tasks.map(({ name }) => name)],
    libraries.map((library) => {
      const name = library === "ratewright" ? "**ratewright**" : library;
      return [name, ...tasks.map((task) => digits(ns(task, library) ?? Number.NaN).replace("NaN", "-"))];
    }),
  );
};

const safetyTable = ({ versions }: Results): string =>
  table(
    [
      "library",
      "version",
      "the compiler refuses a mass for an area",
      "the running program does",
      "it refuses `5 lb acre` as a weight",
    ],
    peers.map(({ name, compileTime, runTime, text }) => [
      name,
      versions[name] ?? "",
      compileTime ? "yes" : "no",
      runTime,
      text,
    ]),
  );

/** The tasks that begin with a typed text: who drops what it cannot read of it does not check it. */
const ofText: readonly string[] = ["typed text", "form to form"];

const isSafe = (library: string, task: string): boolean =>
  peers.some(
    ({ name, runTime, text }) =>
      name === library && runTime === "yes" && (text === "yes" || !ofText.includes(task)),
  );

/** What is so of each task, in a sentence: told by the figures, whichever way they fall. */
const verdicts = ({ tasks }: Results): string =>
  tasks
    .map((task) => {
      const others = task.ways.filter(({ library }) => isSafe(library, task.name));
      const [best] = [...others].sort((a, b) => a.ns.median - b.ns.median);
      const faster = task.ways.filter(
        ({ library, ns: { median } }) =>
          library !== "ratewright" && !library.startsWith("plain") && median < own(task),
      );
      const beside =
        best === undefined
          ? "no other library that checks offers it"
          : best.ns.median >= own(task)
            ? `${times(best.ns.median / own(task))} times as fast as the fastest of the others that check (${best.library})`
            : `slower than ${best.library}, ${times(own(task) / best.ns.median)} times`;
      const quicker = faster.map(({ library }) => library);
      const rest = quicker.length === 0 ? "" : `; faster than it: ${quicker.join(", ")}`;
      const arithmetic = ns(task, "plain arithmetic");
      const plain =
        arithmetic === undefined ? "" : `, ${times(own(task) / arithmetic)} times plain arithmetic`;
      return `- ${task.name} (${task.what}): ${beside}${plain}${rest}.`;
    })
    .join("\n");

const kernelTable = ({ kernels }: Results): string =>
  table(
    ["kernel", "an item is", "loop by hand, ns", "kernel, ns", "ratio"],
    kernels.map(({ name, of, hand, own: kernel, ratio }) => [
      `\`${name.split(",")[0]}\`${name.includes(",") ? `,${name.split(",").slice(1).join(",")}` : ""}`,
      `a ${of}`.replace("a area", "an area"),
      digits(hand.median),
      digits(kernel.median),
      times(ratio.median),
    ]),
  );

const memoryTable = ({ memory }: Results): string =>
  table(
    ["kernel", ...(memory[0]?.days ?? []).map((days) => `${days.toLocaleString("en-US")} days`)],
    memory.map(({ name, bytes }) => [`\`${name}\``, ...bytes.map(digits)]),
  );

const jobTable = ({ jobs }: Results): string =>
  table(
    ["work", "ms", "aim, ms"],
    jobs.map(({ name, ms, aim }) => [
      name,
      digits(ms.median),
      aim === undefined ? "" : `${aim}: ${ms.median <= aim ? "met" : "missed"}`,
    ]),
  );

/** Said where the figures were measured so: the first order of a process has a row. */
const warming = ({ jobs }: Results): string =>
  jobs.some(({ name }) => name === firstOrderName)
    ? `The work order, its text and its sheet are measured after ${warmCalls.toLocaleString("en-US")} calls, as a program that stays open makes
them: the machine compiles code as it runs, and a work order goes through some thousand functions. The first one of a
process takes longer, and has its own row. The ledgers come out of JSON, as a store gives them; one that \`ledger\` made
in the same program was read once, and is known.

`
    : "";

const openingTable = ({ opening }: Results): string =>
  table(
    ["what is loaded", "ms"],
    opening.map(({ name, ms }) => [name, digits(ms.median)]),
  );

/** What a growth figure is called: `cost-by-areas`. */
export const growthName = (of: string): string => `cost-by-${of.split(" ")[0]}`;

/** How much the time grows as the work doubles, from the last half of the points: 2 is in step with the work. */
export const doubling = (points: Results["growth"][number]["points"]): number => {
  const last = points[points.length - 1];
  const middle = points[points.length >> 1];
  if (last === undefined || middle === undefined || last === middle) return Number.NaN;
  return 2 ** (Math.log(last.ms / middle.ms) / Math.log(last.size / middle.size));
};

const growth = ({ growth: series }: Results): string =>
  series
    .map(({ name, of, points }) => {
      const [first, last] = [points[0], points[points.length - 1]];
      if (first === undefined || last === undefined) return "";
      const text = `Milliseconds for ${name} against the ${of}, on two logarithmic axes`;
      return `![${text}](figures/${growthName(of)}.svg)

${name[0]?.toUpperCase()}${name.slice(1)}: ${digits(first.ms)} ms for ${first.size.toLocaleString("en-US")} ${first.size === 1 ? of.replace(/s\b/, "") : of}, ${digits(last.ms)} ms for ${last.size.toLocaleString("en-US")}. Twice the work takes ${times(doubling(points))} times as long at the far end.`;
    })
    .join("\n\n");

const spread = ({ tasks, kernels }: Results): string => {
  const all: readonly Reading[] = [
    ...tasks.flatMap(({ ways }) => ways.map((way) => way.ns)),
    ...kernels.flatMap(({ hand, own: kernel }) => [hand, kernel]),
  ];
  const shares = all.map(({ low, median, high }) => (high - low) / median).sort((a, b) => a - b);
  return `${Math.round(100 * (shares[shares.length >> 1] ?? 0))} %`;
};

const openings = `A typed quantity costs more than a bare number: it carries its unit and its substance, and both are checked each time it
is used. This page says what that costs beside plain arithmetic and beside general-purpose unit libraries, also where
those are faster.`;

const questions = `| question | answer below |
| --- | --- |
| What does a unit cost me, beside plain numbers and other libraries? | [amounts](#amounts-beside-other-libraries) |
| Are the array forms as fast as a loop of my own? | [arrays](#arrays-beside-a-loop-by-hand) |
| How long does a work order, a season, a ledger take? | [whole pieces of work](#whole-pieces-of-work) |
| What happens with ten times the work? | [more work](#more-work) |
| What does the import cost? | [loading](#loading) |`;

const notes = `What a row asks, and where it is kinder to some:

- "Plain arithmetic" is the factor written into the line, and for "construct" a plain record of the number and a text. It checks nothing.
- Not all do the same work. This library checks the number, the unit and the substance each time. \`convert\` makes an object and
  looks at nothing until \`to\`; \`uom\` takes any unit at any place; \`js-quantities\` keeps the conversions of an amount that was
  made before.
- Form to form: libraries that read no text (the first three) get the number and the unit by hand from a split text and a table of
  two units, and write the number with all its digits, as \`convert\` does. This library, \`mathjs\`, \`unitmath\` and
  \`js-quantities\` read the text themselves; this one rounds to three decimals and knows the trade's spellings.
- \`convert\` looks for a number and a unit in a text and passes over the rest: it reads \`5 lb acre\` and \`about 5 lb\` as five
  pounds. In the two rows of typed text it does not count as one that checks.`;

/** The page. */
export const performancePage = (results: Results): string => `# What it costs: time, memory, loading

${openings}

${questions}

Measured on ${results.machine.cores} cores (${results.machine.cpu}), ${results.machine.memoryGiB} GiB, ${results.system}, Node ${results.node.slice(1)} (V8 ${results.v8}), on the built package. All ways of
a task run in one process, in turn, round by round; a figure is the median of the rounds, in processor time. The middle half
of the rounds lies within some ${spread(results)} of a median, so a difference of that size says nothing. \`npm run bench\` measures
again; \`npm run bench:page\` draws this page from \`tests/bench/results.json\`.

## Amounts beside other libraries

Nanoseconds a call; a dash where the library does not offer it. Numbers vary from call to call.

${taskTable(results)}

${verdicts(results)}

${notes}

What the others refuse (the bench tries it before it measures):

${safetyTable(results)}

## Arrays beside a loop by hand

The loop by hand does the same arithmetic and looks at each input once. The ratio is the kernel's time over the loop's,
the median over the rounds; below 1 the kernel is faster.

${kernelTable(results)}

The kernels write into an array that is handed in. Bytes on the heap after one call, before anything is collected. Compiled, a
kernel takes no memory by the day, so the last columns do not grow; where the first ones do, the call left some short-lived
objects before it was compiled:

${memoryTable(results)}

## Whole pieces of work

${warming(results)}${jobTable(results)}

## More work

The dashed line is in step with the work: twice as much, twice as long.

${growth(results)}

## Loading

A fresh process for each reading, in turn; processor time from before the import to after it.

${openingTable(results)}

A room by its own path (\`ratewright/nutrient\`) loads a part of the whole. In a page that is bundled only what is used counts:
\`npm run size\` bounds it.
`;
