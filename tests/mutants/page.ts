import { type BehaviorResult, summary } from "./summary.js";

const percent = (part: number, of: number): string =>
  of === 0 ? "-" : `${((100 * part) / of).toFixed(1)} %`;

const total = (rows: readonly BehaviorResult[], of: (row: BehaviorResult) => number): number =>
  rows.reduce((sum, row) => sum + of(row), 0);

/** The share of all changes: each room weighs as much as it has changes, however many of them were tried. */
const weighted = (rows: readonly BehaviorResult[], of: (row: BehaviorResult) => number): string =>
  percent(
    total(rows, (row) => (row.mutants * of(row)) / row.tried),
    total(rows, (row) => row.mutants),
  );

/** The row of a room, or of all. */
const behaviorRow = (name: string, rows: readonly BehaviorResult[]): string => {
  const [tried, noticed] = [total(rows, (row) => row.tried), total(rows, (row) => row.noticed)];
  const listed = total(rows, (row) => row.listed ?? 0);
  const cells = [
    name,
    total(rows, (row) => row.mutants),
    tried,
    noticed,
    weighted(rows, (row) => row.noticed),
    listed,
    weighted(rows, (row) => row.noticed + (row.listed ?? 0)),
  ];
  return `| ${cells.join(" | ")} |`;
};

/** The page of mutants. */
export const mutantsPage = (): string => {
  const { behavior, constants } = summary();
  const sum = <T>(rows: readonly T[], of: (row: T) => number): number =>
    rows.reduce((all, row) => all + of(row), 0);
  const tried = Object.entries(behavior);
  const numbers = Object.entries(constants);
  const all = tried.map(([, row]) => row);
  const every = numbers.map(([, row]) => row);
  return `# Would a wrong number be noticed?

A test that passes says little until somebody has seen it fail. So the library is broken on purpose, one small change at a
time, and the tests are run again. A change that no test notices is a hole. This page says how many there are; \`npm run
mutants:page\` draws it from \`tests/mutants/summary.json\`.

Two kinds of change are made, because they tell two different things.

## Changes of the program

A \`<\` becomes \`<=\`, a condition is always true, a sum becomes a difference, a text is empty, a step is left out: the changes
of the mutators of Stryker. Each is tried against the tests of its own room, its published figures, its examples and a set of
spoilt calls of its functions. What the compiler refuses counts as noticed.

Where fewer were tried than there are, the figure is that of a sample: with 150 tried it is good to about 5 points either
way, with 40 to about 10. The sample is taken by a fixed rule from the text of the changes, so the next run takes the same.
Of soil five whole shelves were tried instead: reports, tests, lime, lime materials and water; of tank two samples, which ended before the shelves rate, rinse and water. For many of these rooms the tests were written after an earlier run had shown the holes.

*Listed* are changes that make no other program, such as a bound that no input meets; \`tests/mutants/equivalent-list.ts\` has each
with its reason. The share counts what is noticed; the last column counts the listed too. The last row weighs each room by
its changes, not by how many of them were tried.

| room | changes | tried | noticed | share | listed | share with the listed |
| --- | ---: | ---: | ---: | ---: | ---: | ---: |
${tried.map(([room, row]) => behaviorRow(room, [row])).join("\n")}
${behaviorRow("**all**", all)}

About half of what is left changes words (a message that is empty, the name of a source). A change that gives another rate or another date is what to look for; \`npm run mutants -- tank\` lists every one.

## Changes of the numbers

Each number of the source that a computation uses (a conversion factor, a cell of a table, a coefficient) is changed by one
part in ten thousand. Here the ordinary tests do not count, for they could repeat our own mistake. Only what comes from outside
does: a published figure, a derivation from exact figures, another library, or the same table typed a second time from its source.
A published figure that the library meets exactly is held to exactly (\`tests/published/exact.json\`); one that the source
rounded is held to its last printed place, and is then too blunt for most changes of this size.

- *Noticed*: some figure from outside no longer agrees.
- *Listed*: nothing outside can depend on it, and \`tests/mutants/listed.ts\` says why: a limit that this library chose, places
  that are shown, a number that is only held against whole numbers.
- *Open*: nothing notices it yet. The table or coefficient may be right, and its source stands beside it, but it was typed once.

| room | numbers | noticed | listed | open |
| --- | ---: | ---: | ---: | ---: |
${numbers.map(([room, row]) => `| ${room} | ${row.numbers} | ${row.noticed} | ${row.listed} | ${row.numbers - row.noticed - row.listed} |`).join("\n")}
| **all** | ${sum(every, (row) => row.numbers)} | ${sum(every, (row) => row.noticed)} | ${sum(every, (row) => row.listed)} | ${sum(every, (row) => row.numbers - row.noticed - row.listed)} |

\`npm run mutants:constants -- interval\` tries a room and prints what is open. Rooms that are not in a table have not been tried.
`;
};
