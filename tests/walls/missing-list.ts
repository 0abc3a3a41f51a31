// Where something that is absent is not told as `missing`: the functions, the place in their arguments with `*` for a
// number, and the code. The list may only shrink; a row that is no longer needed fails the test.
const half =
  "Only together with the other half: an amount over an area is told as the contradiction that it is.";
const another =
  "Without it the whole is not what the named function makes, and the words name that function.";

/** By reason, the rows. */
export const groups: readonly (readonly [why: string, rows: string])[] = [
  [
    half,
    `
ledger | 0.*.area | conflict
ledgerWith | 0.entries.*.area | conflict
workOrder | 0.ledger.entries.*.area | conflict
ledgerTotals | 0.ledger.entries.*.area | conflict
stockOnHand | 0.ledgers.*.entries.*.area | conflict
ledgerWith | 1.area | conflict
`,
  ],
  [
    another,
    `
percentOf | 0.percent | type
`,
  ],
];

/** One function, and a place of it that is told with another code. */
export const toldOtherwise: readonly string[] = groups.flatMap(([, rows]) =>
  rows
    .trim()
    .split("\n")
    .flatMap((row) => {
      const [names = "", place = "", code = ""] = row.split(" | ");
      return names.split(" ").map((name) => `${name} | ${place} | ${code}`);
    }),
);
