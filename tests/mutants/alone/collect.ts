import { isAsPrinted } from "../../constants/check.js";
import { constantChecks } from "../../constants/index.js";
import { blocksOfPage, blocksOfSource, runBlock } from "../../examples/blocks.js";
import { exists, filesBelow, read } from "../../house/sources.js";
import { agrees } from "../../published/check.js";
import { isExactly, metExactly } from "../../published/exact.js";
import { allChecks } from "../../published/index.js";
import { test } from "./vitest.js";

type Add = (name: string, body: () => unknown) => void;
const add = test as Add;
const holds = (yes: boolean): void => {
  if (!yes) throw new Error("another figure");
};

/** The published figures of a room, and those that are transcribed twice. */
export const addChecks = (room: string): void => {
  for (const { entry, given, answers, compute } of allChecks[room] ?? []) {
    add(`published > ${entry} ${given}`, () => {
      const computed = compute();
      holds(computed.length === answers.length);
      answers.forEach((answer, n) => {
        const printed = answer.wrong?.right ?? answer.printed;
        const here = computed[n] as number;
        holds(
          metExactly(room, entry).includes(printed)
            ? isExactly(here, printed)
            : agrees(here, printed, answer),
        );
      });
    });
  }
  for (const check of constantChecks) {
    if (check.room === room) add(`transcribed > ${check.what}`, () => holds(isAsPrinted(check)));
  }
};

/** The examples of a room's sources and of its page. */
export const addExamples = (room: string, modules: Readonly<Record<string, unknown>>): void => {
  const page = `docs/${room}.md`;
  const blocks = [
    ...filesBelow(`src/${room}`).flatMap((path) => blocksOfSource(path, read(path))),
    ...(exists(page) ? blocksOfPage(page, read(page)) : []),
  ];
  for (const block of blocks.filter(({ run }) => run)) {
    add(`example > ${block.file}:${block.line}`, () => runBlock(block, modules));
  }
};
