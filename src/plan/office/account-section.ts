import { periodText } from "../../limits/house.js";
import type { LimitTest, LimitUse } from "../../limits/index.js";
import { type FactSource, numberIn } from "../../quantity/index.js";
import type { SheetSection } from "../sheet/sheet-types.js";
import { type FirstUnits, plainNumber, unitFor, unitWords } from "../sheet/sheet-units.js";
import type { NutrientAccount } from "../visit/nutrient-account.js";

const listed = ["N", "N:quick", "N:slow", "P2O5", "K2O", "Fe", "Ca", "Mg", "S", "Mn"];

const nutrientWords = (of: string): string =>
  of === "N:quick" ? "quick-release N" : of === "N:slow" ? "slow-release N" : of;

/** A rate to three figures. */
const rateFigure = (value: number): string =>
  plainNumber(Number(value >= 1 ? value.toFixed(3) : value.toPrecision(3)), 9);

/** The nutrients of parts of the site this year, and its limits with their sources. */
export const accountSections = (
  accounts: readonly NutrientAccount[],
  first: FirstUnits,
): readonly SheetSection[] =>
  alike(accounts).flatMap(({ account, parts }) => {
    const section = accountSection(account, parts, first);
    return section === undefined ? [] : [section];
  });

const accountSection = (
  account: NutrientAccount,
  parts: string,
  first: FirstUnits,
): SheetSection | undefined => {
  const { yearSoFar, visitTotal, yearAfter, unweighed, limits, tests } = account;
  const names = listed.filter((of) => (yearAfter[of]?.value ?? 0) > 0);
  if (names.length + unweighed.length + limits.length + tests.length === 0) return undefined;
  const own = yearAfter.N?.unit ?? "lb/1000 ft2";
  const unit = unitFor({ value: 0, unit: own, of: "N", dimension: "mass/area" }, first);
  const cell = (rates: NutrientAccount["yearSoFar"], of: string): string => {
    const rate = rates[of];
    return rate === undefined ? "0" : rateFigure(numberIn(rate, unit));
  };
  const lines = limitTexts(limits, tests, first);
  return {
    id: "nutrients",
    title: `NUTRIENTS THIS CALENDAR YEAR: ${parts}`,
    blocks: [
      ...(names.length === 0
        ? []
        : [
            {
              kind: "table" as const,
              heads: [unitWords(unit), "so far", "visit", "after"],
              rows: names.map((of) => ({
                cells: [nutrientWords(of), cell(yearSoFar, of), cell(visitTotal, of), cell(yearAfter, of)],
              })),
            },
          ]),
      ...(unweighed.length === 0
        ? []
        : [
            {
              kind: "text" as const,
              text: `The true total of ${unweighed.map(nutrientWords).join(", ")} is higher: some could not be counted, see NOT CHECKED.`,
            },
          ]),
      ...(lines.length === 0 ? [] : [{ kind: "list" as const, mark: "-" as const, items: lines }]),
    ],
  };
};

/** Accounts that read the same, under the names of all their parts. */
export const alike = (
  accounts: readonly NutrientAccount[],
): readonly { account: NutrientAccount; parts: string }[] => {
  const groups = new Map<string, NutrientAccount[]>();
  for (const account of accounts) {
    const key = JSON.stringify({ ...account, visit: "" }, (name, value) => (name === "part" ? "" : value));
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [account]);
    else group.push(account);
  }
  return [...groups.values()].flatMap((group) => {
    const [account] = group;
    return account === undefined ? [] : [{ account, parts: group.map(({ part }) => part).join(", ") }];
  });
};

/** A source in words. */
export const sourceText = (source: FactSource): string =>
  typeof source === "string"
    ? source
    : [source.title, source.publisher, source.year, source.where]
        .filter((part) => part !== undefined)
        .join(", ");

const ifMeant = (conditions: readonly string[]): string =>
  conditions.length === 0 ? "" : ` Applies where ${conditions.join(", and ")}.`;

/** What limits say of an application, a sentence each, with who states them; amounts in the units of the sheet. */
export const limitTexts = (
  uses: readonly LimitUse[],
  tests: readonly LimitTest[],
  first: FirstUnits,
): readonly string[] => [...uses.map((use) => limitText(use, first)), ...tests.map(testText)];

const limitText = (use: LimitUse, first: FirstUnits): string => {
  const { limit, after, remainingUnderStatedLimits: left, violated } = use;
  const count = limit.kind === "count";
  const own = limit.amount.unit;
  const unit = count ? own : unitFor(limit.amount, first);
  const amount = (value: number): string => rateFigure(value);
  const of = nutrientWords(limit.of);
  const what = count ? `applications of ${of}` : of;
  const over = numberIn(left, unit);
  const rest =
    violated === null
      ? "plus some that could not be counted: NOT KNOWN whether the limit is exceeded"
      : violated
        ? `OVER THE LIMIT by ${amount(-over)}`
        : over < 0 && use.adds.value === 0
          ? `over the limit by ${amount(-over)} before this visit, which adds none`
          : `${amount(over)} left`;
  const frees =
    use.moreCanBeAppliedFrom === null || left.value > 0
      ? ""
      : `, more can be applied from ${use.moreCanBeAppliedFrom}`;
  const line = `${what} ${periodText(limit.per)}: ${amount(numberIn(after, unit))} of ${amount(numberIn(limit.amount, unit))}${count ? "" : ` ${unitWords(unit)}`}`;
  const asStated = unit === own ? "" : `, as ${rateFigure(limit.amount.value)} ${unitWords(own)}`;
  return `${line}, ${rest}${frees}.${ifMeant(use.appliesIf)} Stated in: ${sourceText(limit.source)}${asStated}`;
};

const testText = ({ limit, found, violated, appliesIf }: LimitTest): string => {
  const verdict = violated === null ? "not known" : `${found}${violated ? ", NOT WITHIN THE LIMIT" : ""}`;
  return `${limit.of}, ${limit.states}: ${verdict}.${ifMeant(appliesIf)} Stated in: ${sourceText(limit.source)}`;
};
