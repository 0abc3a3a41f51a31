// The tables of docs/disagreements.md, out of what the library itself holds: the published mixing orders, the pairs on
// which they part, every named option that stands for a disagreement, and what the comments of functions say of others.
import * as library from "../../src/index.js";
import { type Citation, mixingOrders, mixingOrderTable, pairOrder } from "../../src/index.js";
import { keysOf } from "../published/bibliography.js";
import { exportedDocs } from "./doc-comments.js";
import { type NamedOption, namedOptions } from "./named-options.js";

const code = (text: string): string => `\`${text}\``;
const cell = (text: string): string => text.replaceAll("|", "\\|").replace(/\s+/g, " ").trim();
const linked = (keys: readonly string[]): string =>
  keys.map((key) => `[${key}](bibliography.md#${key})`).join(", ");

/** The twelve orders, each as its source has it. */
export const publishedOrders = (): readonly string[] => [
  "| id | order | reached | source |",
  "| --- | --- | --- | --- |",
  ...mixingOrders.map(
    ({ id, steps, reached, source }) =>
      `| ${code(id)} | ${cell(steps.map((kinds) => kinds.join(", ")).join(" > "))} | ${reached} | ${linked(keysOf(source))} |`,
  ),
];

/** The pairs of the consensus against which a source stands, the closest first. */
export const contestedPairs = (): readonly string[] => [
  "| the consensus adds | before | printed so | printed the other way |",
  "| --- | --- | --- | --- |",
  ...mixingOrderTable().contested.map(({ first, second }) => {
    const { for: those, against } = pairOrder(first, second);
    const by = (ids: readonly string[]): string => `${ids.length}: ${ids.map(code).join(", ")}`;
    return `| ${first} | ${second} | ${by(those)} | ${by(against)} |`;
  }),
];

interface Row {
  readonly id?: string;
  readonly name?: string;
  readonly source?: Citation | string;
}

const rowsOf = (choices: NamedOption["choices"]): readonly Row[] => {
  if (typeof choices !== "string") return choices.map((id) => ({ id }));
  const table: unknown = new Map(Object.entries(library)).get(choices);
  return Array.isArray(table)
    ? (table as readonly Row[])
    : Object.entries(table as Readonly<Record<string, Row>>).map(([id, row]) => ({ ...row, id }));
};

/** Every named option that stands for a disagreement: what is asked, the choices, and which is taken unasked. */
export const options = (): readonly string[] => [
  "| what is asked | function, option | where left out | choices, and who prints them |",
  "| --- | --- | --- | --- |",
  ...namedOptions.map(({ asks, call, option, standard, choices }) => {
    const rows = rowsOf(choices).map(({ id, name, source }) => {
      const keys = typeof source === "object" ? keysOf(source) : [];
      return `${code(id ?? name ?? "?")}${keys.length === 0 ? "" : ` ${linked(keys)}`}`;
    });
    // The mixing orders stand in a table of their own.
    const list = choices === "mixingOrders" ? "the twelve above" : rows.join("; ");
    return `| ${asks} | ${code(call)}, ${code(option)} | ${standard} | ${cell(list)} |`;
  }),
];

/** What the comments of functions say of sources that part, where the function takes a side or names both. */
export const inComments = (): readonly string[] => [
  "| function | what its reference says |",
  "| --- | --- |",
  ...exportedDocs().flatMap(({ name, room, text, tags }) => {
    const whole = [text, ...tags.map((tag) => tag.text)].join("\n\n");
    const said = /\bSources (?:disagree|differ)[\s\S]*?(?=\n\n|\n- |\n\||$)/.exec(whole)?.[0];
    return said === undefined
      ? []
      : [`| ${code(name)} of ${code(room)} | ${cell(said.replace(/\{@link ([^}]+?) ?\}/g, "`$1`"))} |`];
  }),
];
