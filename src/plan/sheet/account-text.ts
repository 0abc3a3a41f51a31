import { inUnit } from "../../ledger/house.js";
import { periodText } from "../../limits/house.js";
import type { LimitTest, LimitUse } from "../../limits/index.js";
import { unitSymbol } from "../../quantity/index.js";
import type { NutrientAccount } from "../visit/nutrient-account.js";
import { type Any, digits, table, wrapped } from "./text-lines.js";

const listed = ["N", "N:soluble", "N:slow", "P2O5", "K2O", "Fe", "Ca", "Mg", "S", "Mn"];

/** The nutrients of a part of the site, and its limits. */
export const accountLines = (account: NutrientAccount, parts: string, width: number): string[] => {
  const names = listed.filter((of) => (account.yearAfter[of]?.value ?? 0) > 0);
  if (
    names.length + account.unweighed.length === 0 &&
    account.limits.length === 0 &&
    account.tests.length === 0
  )
    return [];
  const unit = account.yearAfter.N?.unit ?? "lb/1000 ft2";
  const cell = (rates: NutrientAccount["yearSoFar"], of: string): string => {
    const q = rates[of];
    if (q === undefined) return "0";
    const value = inUnit(q, unit);
    return String(Number(value >= 1 ? value.toFixed(3) : value.toPrecision(3)));
  };
  const rows = [
    [unit, "so far", "visit", "after"],
    ...names.map((of) => [
      of.replace("N:soluble", "N, soluble").replace("N:slow", "N, slow"),
      cell(account.yearSoFar, of),
      cell(account.visitTotal, of),
      cell(account.yearAfter, of),
    ]),
  ];
  return [
    `Nutrients this calendar year: ${parts}`,
    ...(names.length > 0 ? table(rows) : []),
    ...(account.unweighed.length === 0
      ? []
      : wrapped(
          `More than this of ${account.unweighed.join(", ")}: not all of it could be weighed, see "Not checked".`,
          width,
          "  ",
          "  ",
        )),
    ...account.limits.flatMap((use) => wrapped(limitText(use), width, "  - ", "    ")),
    ...account.tests.flatMap((test) => wrapped(testText(test), width, "  - ", "    ")),
  ];
};

/** Accounts that read the same, under the names of all their parts. */
export const alike = (
  accounts: readonly NutrientAccount[],
): readonly { account: NutrientAccount; parts: string }[] => {
  const groups = new Map<string, NutrientAccount[]>();
  for (const account of accounts) {
    const key = JSON.stringify({ ...account, visit: "" }, (name, value) => (name === "part" ? "" : value));
    groups.set(key, [...(groups.get(key) ?? []), account]);
  }
  return [...groups.values()].map((group) => ({
    account: group[0] as NutrientAccount,
    parts: group.map(({ part }) => part).join(", "),
  }));
};

const sourceText = (source: LimitUse["limit"]["source"]): string =>
  typeof source === "string"
    ? source
    : [source.title, source.publisher, source.year].filter((part) => part !== undefined).join(", ");

const ifMeant = (conditions: readonly string[]): string =>
  conditions.length === 0 ? "" : ` Meant where ${conditions.join(", and ")}.`;

const limitText = (use: LimitUse): string => {
  const { limit, after, remainingUnderStatedLimits: left, broken } = use;
  const count = limit.kind === "count";
  const { unit } = limit.amount;
  const figure = (q: unknown): string => digits(inUnit(q as Any, unit));
  const of = limit.of.replace("N:soluble", "soluble N").replace("N:slow", "slow N");
  const what = count ? `applications of ${of}` : of;
  const rest =
    broken === null
      ? "and more that could not be weighed: NOT KNOWN whether the limit is kept"
      : broken
        ? `OVER THE LIMIT by ${figure(left.times(-1 as never))}`
        : `${figure(left)} left`;
  const frees = use.freesUpOn === null || left.value > 0 ? "" : `, something frees up on ${use.freesUpOn}`;
  const line = `${what} ${periodText(limit.per)}: ${figure(after)} of ${figure(limit.amount)}${count ? "" : ` ${unitSymbol(unit)}`}`;
  return `${line}, ${rest}${frees}.${ifMeant(use.meantIf)} Stated in: ${sourceText(limit.source)}`;
};

const testText = ({ limit, found, broken, meantIf }: LimitTest): string => {
  const verdict = broken === null ? "not known" : `${found}${broken ? ", NOT WITHIN THE LIMIT" : ""}`;
  return `${limit.of}, ${limit.states}: ${verdict}.${ifMeant(meantIf)} Stated in: ${sourceText(limit.source)}`;
};
