// Draws docs/evidence.md from the published checks: what was published beside what is computed.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import * as library from "../../src/index.js";
import { type Answer, figuresOf, type PublishedCheck, type Source } from "./check.js";
import { allChecks, allLeftOut } from "./index.js";

const src = fileURLToPath(new URL("../../src", import.meta.url));

/** The rooms from the ground up; one that is new and not named here stands last. */
const floors =
  "quantity numeric calendar nutrient spray spread tank interval site stand water soil weather price ledger limits plan teach";
const place = (room: string): number => `${floors} ${room}`.split(" ").indexOf(room);

/** The exported functions of every room, by name; classes and tables are no formulas. */
export const exportedFunctions = (): ReadonlyMap<string, readonly string[]> => {
  const rooms = readdirSync(src).filter((name) => existsSync(`${src}/${name}/index.ts`));
  const exported = library as Readonly<Record<string, unknown>>;
  const isFormula = (name: string): boolean =>
    typeof exported[name] === "function" && !/^class\b/.test(String(exported[name]));
  return new Map(
    rooms
      .sort((a, b) => place(a) - place(b))
      .map((room) => {
        const index = readFileSync(`${src}/${room}/index.ts`, "utf8");
        const lists = [...index.matchAll(/export \{([^}]*)\}/g)].flatMap(([, list = ""]) => list.split(","));
        return [
          room,
          lists
            .map((name) => name.trim())
            .filter(isFormula)
            .sort(),
        ];
      }),
  );
};

const cell = (text: string): string => text.replace(/\|/g, "\\|").replace(/\s+/g, " ").trim();

/** A number with the decimals of the printed place. */
const shownTo = (value: number, to: number): string => {
  let decimals = 0;
  while (decimals < 12 && Math.abs(Math.round(to * 10 ** decimals) / 10 ** decimals - to) > to * 1e-6) {
    decimals++;
  }
  return (value + 0).toFixed(decimals);
};

/** A computed figure, brought to the printed place in the way of the source. */
const computedTo = (value: number, { to, printing }: Answer): string => {
  const steps = value / to;
  const guard = 1e-9 * Math.max(1, Math.abs(steps));
  const whole = printing === "cut" ? Math.floor(steps + guard) : Math.round(steps);
  return shownTo(whole * to, to);
};

const cited = ({ title, publisher, year, where, url }: Source): string => {
  const name = url === undefined ? title : `[${title.replace(/[[\]]/g, "")}](${url})`;
  return cell(
    [`${publisher}${year === undefined ? "" : ` ${year}`}: ${name}`, where].filter(Boolean).join(", "),
  );
};

const table = (heads: readonly string[], rows: readonly (readonly string[])[]): readonly string[] => [
  `| ${heads.join(" | ")} |`,
  `|${heads.map(() => " --- |").join("")}`,
  ...rows.map((row) => `| ${row.join(" | ")} |`),
  "",
];

/** The kinds of evidence; only the first two are independent of what is checked. */
const kinds = ["worked example", "measurement", "transcription", "fit", "round trip"] as const;
const kindOf = ({ kind = "worked example" }: PublishedCheck): (typeof kinds)[number] => kind;

const rowsOf = (check: PublishedCheck): readonly (readonly string[])[] => {
  const computed = figuresOf(check);
  return check.answers.map((answer, i) => [
    i === 0 ? cell(check.given) : "",
    cell(answer.of),
    shownTo(answer.printed, answer.to) + (answer.wrong === undefined ? "" : " (wrong)"),
    computedTo(computed[i] as number, answer),
    i === 0 ? [check.reached, ...(kindOf(check) === "worked example" ? [] : [kindOf(check)])].join(", ") : "",
    i === 0 ? `${cited(check.source)} (${check.entry})` : "",
  ]);
};

/** `3 checks`, `1 check`. */
const count = (n: number, what: string): string => `${n} ${what}${n === 1 ? "" : "s"}`;

/** The whole page. */
export const evidencePage = (): string => {
  const functions = exportedFunctions();
  const checks = Object.values(allChecks).flat();
  const answers = checks.flatMap((check) => check.answers.map((answer, i) => ({ check, answer, i })));
  const wrong = answers.filter(({ answer }) => answer.wrong !== undefined);
  const reached = (how: PublishedCheck["reached"]): number =>
    answers.filter(({ check }) => check.reached === how).length;
  const ofKind = (kind: string): number => answers.filter(({ check }) => kindOf(check) === kind).length;
  // An example that stands under several entries is one.
  const independent = new Set(
    answers
      .filter(
        ({ check }) => check.reached === "read" && ["worked example", "measurement"].includes(kindOf(check)),
      )
      .map(({ check: { source, given }, answer }) =>
        JSON.stringify([source.title, source.where, given, answer.of, answer.printed]),
      ),
  ).size;
  const checked = new Set(checks.flatMap((check) => check.formulas));
  const all = [...functions.values()].flat();
  const leftOut = Object.values(allLeftOut).flat().length;
  const lines = [
    "# Evidence",
    "",
    "What sources printed, beside what this library computes. `npm run evidence` draws this page from the checks",
    "in `tests/published/`, which every test run repeats; a test fails where the page is out of date.",
    "",
    "- *Published* is the figure as printed, *computed* is ours, brought to the same place: a source that cuts",
    "  instead of rounding is followed. A check passes where the two agree within half of the printed place.",
    "- *Reached* says how the published figure came here: `read` in the source, `from memory`, or `derived` by",
    "  hand from what the source prints.",
    "- The kind of a check stands behind it where it is no worked example: a `measurement`; a `transcription` copies a",
    "  table or a statute; a `fit` has the figure as its own constant; a `round trip` gets its input back. Only worked",
    "  examples and measurements that were read count as independent evidence.",
    "- *(wrong)* marks a figure that is wrong in its source; it stands again under [Disagreements](#disagreements).",
    "- The works themselves stand in the [bibliography](bibliography.md).",
    "",
    "## Counts",
    "",
    `- **${independent} figures of independent evidence**: worked examples and measurements, read in their source, each counted once.`,
    ...kinds.map((kind) => `- ${kind}: ${count(ofKind(kind), "figure")}.`),
    `- ${count(checks.length, "check")} with ${count(answers.length, "published figure")}: ${reached("read")} read, ${reached("from memory")} from memory, ${reached("derived")} derived.`,
    `- ${count(wrong.length, "figure")} wrong in the source, each with the reason.`,
    `- ${count(leftOut, "example")} left out, each with the reason.`,
    `- ${all.filter((name) => checked.has(name)).length} of ${count(all.length, "exported function")} with a published check; the others are [listed](#functions-without-a-published-check).`,
    "",
  ];
  for (const [room, names] of functions) {
    const shown = names.filter((name) => checked.has(name));
    if (shown.length === 0) continue;
    lines.push(`## ${room}`, "");
    for (const name of shown) {
      const mine = checks.filter((check) => check.formulas[0] === name);
      const also = checks.filter((check) => check.formulas.indexOf(name) > 0);
      lines.push(`### ${name}`, "");
      if (mine.length > 0) {
        lines.push(
          ...table(["given", "asked", "published", "computed", "reached", "source"], mine.flatMap(rowsOf)),
        );
        for (const check of mine) if (check.note) lines.push(`- ${check.entry}: ${cell(check.note)}`);
        if (mine.some((check) => check.note)) lines.push("");
      }
      if (also.length > 0) {
        const where = [...new Set(also.map((check) => `${check.entry} (under ${check.formulas[0]})`))];
        lines.push(`${mine.length > 0 ? "Also used" : "Used"} in ${where.join(", ")}.`, "");
      }
    }
  }
  lines.push(
    "## Disagreements",
    "",
    "Figures that are wrong in their source. The check asserts that we do not agree with them.",
    "",
  );
  lines.push(
    ...table(
      ["given", "asked", "published", "right", "why", "source"],
      wrong.map(({ check, answer }) => [
        cell(check.given),
        cell(answer.of),
        shownTo(answer.printed, answer.to),
        shownTo(answer.wrong?.right ?? Number.NaN, answer.to),
        cell(answer.wrong?.why ?? ""),
        `${cited(check.source)} (${check.entry})`,
      ]),
    ),
  );
  lines.push("## Left out", "", "Published examples that no check was made of, and why.", "");
  for (const [room, list] of Object.entries(allLeftOut)) {
    if (list.length === 0) continue;
    lines.push(
      `### Left out of ${room}`,
      "",
      ...list.map(({ entry, reason }) => `- ${entry}: ${cell(reason)}`),
      "",
    );
  }
  lines.push(
    "## Functions without a published check",
    "",
    "Nothing published stands behind these. Reading, writing and comparing need none; the rest is held by tests",
    "of its own (laws, other libraries, hand calculation) and not by an independent source.",
    "",
  );
  for (const [room, names] of functions) {
    const bare = names.filter((name) => !checked.has(name));
    if (bare.length > 0) lines.push(`- **${room}**: ${bare.map((name) => `\`${name}\``).join(", ")}`);
  }
  return `${lines.join("\n").trimEnd()}\n`;
};
