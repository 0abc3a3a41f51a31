import { type LedgerEntry, ledger } from "../../../src/ledger/index.js";
import { checkLimits, type Limit, type Proposal } from "../../../src/limits/index.js";

export const lb = (value: number, of: string) => ({ value, unit: "lb/1000 ft2", of });
export const n = (value: number, slow?: number) => ({
  supplies: slow === undefined ? [lb(value, "N")] : [lb(value, "N"), lb(slow, "N:slow")],
});
export const source = "plan of the park (invented)";
export type On = LedgerEntry["date"];
export type Before = readonly (readonly [date: On, more?: Partial<LedgerEntry>])[];
export const put = (
  rules: Limit | readonly Limit[],
  date: On,
  more: Partial<Proposal>,
  before: Before = [],
) =>
  checkLimits({
    ledger: ledger(
      before.map(([on, rest], i) => ({ id: `e${i}`, date: on, ...(rest ?? more) }) as LedgerEntry),
    ),
    limits: "source" in rules ? [rules] : rules,
    proposal: { ...more, date },
  });
