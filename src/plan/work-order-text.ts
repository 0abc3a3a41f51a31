import {
  expectNumber,
  expectRecord,
  type Finding,
  format,
  type Quantity,
  quantity,
  quantityOf,
  unitSymbol,
} from "../quantity/index.js";
import { periodText } from "./limit-findings.js";
import type { LimitTest } from "./limit-test.js";
import type { LimitUse } from "./limit-use.js";
import type { NutrientAccount } from "./nutrient-account.js";
import { heatText } from "./repeat.js";
import type { SprayOrder } from "./spray-order.js";
import type { SpreadOrder } from "./spread-order.js";
import type { WorkOrder } from "./work-order.js";

/** How the sheet is written. */
export interface WorkOrderTextOptions {
  /** Columns of a line; 78 where it is left out. */
  readonly width?: number;
}

type Any = Quantity<string, string>;

const inUnit = (q: Any, unit: string): number => (q.in as (unit: string) => number).call(q, unit);

/** Digits for reading: 0.125, 3.75, 46.5, 120,825. */
const digits = (value: number): string => {
  const size = Math.abs(value);
  const most = size >= 1000 ? 0 : size >= 100 ? 1 : size >= 1 ? 2 : 4;
  const rounded = size >= 1 || size === 0 ? value : Number(value.toPrecision(3));
  return format(quantity(rounded, "count"), { maximumFractionDigits: most, unitDisplay: "unit" }).replace(
    / .*/,
    "",
  );
};

/** Small amounts in a smaller unit: 0.036 gal reads 4.61 fl oz. */
const handy = (q: Any): Any => {
  const smaller: Readonly<Record<string, string>> = { gal: "fl oz", lb: "oz", L: "mL", kg: "g" };
  const unit = smaller[q.unit];
  return unit !== undefined && q.value !== 0 && Math.abs(q.value) < 0.5
    ? quantityOf(inUnit(q, unit), unit, q.of, "amount")
    : q;
};

/** A figure with its unit. */
const told = (q: unknown): string => `${digits((q as Any).value)} ${unitSymbol((q as Any).unit)}`;

/** An amount to measure out, in a unit that fits its size. */
const measured = (q: unknown): string => told(handy(q as Any));

/** The unit of the other system in which a figure is shown beside its own. */
const otherUnit = (q: unknown): string | undefined => {
  const { unit, dimension } = q as Any;
  const metric = /\b(kg|g|mg|t|ha|m2|m|cm|mm|L|mL)\b/.test(unit);
  const others: Readonly<Record<string, readonly [string, string]>> = {
    area: ["m2", "ft2"],
    mass: ["kg", "lb"],
    volume: ["L", "gal"],
    "mass/area": ["kg/ha", "lb/1000 ft2"],
    "volume/area": ["L/ha", "gal/acre"],
  };
  return others[dimension]?.[metric ? 1 : 0];
};

/** A figure with its unit, and beside it in the other system: 3.75 lb/1,000 ft² (183 kg/ha). */
const both = (q: unknown): string => {
  const other = otherUnit(q);
  if (other === undefined) return told(q);
  return `${told(q)} (${digits(Number(inUnit(q as Any, other).toPrecision(3)))} ${unitSymbol(other)})`;
};

/** Breaks a text into lines; what follows the first is indented by `hang`. */
const wrapped = (text: string, width: number, first: string, hang: string): string[] => {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(" ")) {
    if (!empty && line.length + 1 + word.length > width) {
      lines.push(line);
      line = hang;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line];
};

/** A line "  name    text" over as many lines as it needs, the text under itself. */
const folded = (line: string, width: number): string[] => {
  const [, name = "", text = line] = /^(\s*\S+ {2,})(.*)$/.exec(line) ?? [];
  return line.length <= width ? [line] : wrapped(text, width, name, " ".repeat(name.length));
};

const where = (order: SpreadOrder | SprayOrder, site: string): string =>
  order.parts.length === 0 ? site : order.parts.join(", ");

const spreadLines = (order: SpreadOrder, site: string): string[] => {
  const lines = [
    `Spread  ${order.productName}`,
    `  where       ${where(order, site)}, ${both(order.area)}`,
    ...(order.target ? [`  target      ${both(order.target)} of ${order.target.of}`] : []),
    `  rate        ${both(order.rate)} of product`,
    ...(order.passes > 1 ? [`  per pass    ${both(order.ratePerPass)}, in ${order.passes} passes`] : []),
    `  in all      ${both(order.amount)}`,
  ];
  if (order.packages !== undefined) {
    const { count, leftOver } = order.packages;
    lines.push(`  open        ${count} ${count === 1 ? "package" : "packages"}, ${told(leftOver)} left over`);
  }
  return lines;
};

const sprayLines = (order: SprayOrder, site: string, width: number): string[] => {
  const { tank } = order;
  const lines = [
    `Spray  ${order.products.map(({ productName }) => productName).join(" + ")}`,
    `  where       ${where(order, site)}, ${both(order.area)}`,
    `  spray       ${both(order.volume)} in all, at ${both(tank.sprayRate)}`,
    `  loads       ${tank.count}: ${tank.loads.map((load) => told(load.volume)).join(", ")}`,
    "",
  ];
  const folds = lines.flatMap((line) => folded(line, width));
  lines.splice(0, lines.length, ...folds);
  const heads = ["", "rate", "in all", ...tank.loads.map((load) => `load ${load.number}`)];
  const rows = order.products.map((product) => [
    product.productName,
    told(product.rate),
    measured(product.amount),
    ...product.loads.map((share) => measured(share.amount)),
  ]);
  const fits = table([heads, ...rows]).every((row) => row.length <= width);
  const shownColumns = fits ? heads.length : 3;
  const narrow = table([heads, ...rows].map((row) => row.slice(0, shownColumns)));
  if (narrow.every((row) => row.length <= width)) lines.push(...narrow);
  else
    for (const [name = "", rate = "", amount = ""] of rows)
      lines.push(...wrapped(`${name}: ${rate}, ${amount} in all`, width, "  ", "    "));
  if (shownColumns < heads.length) {
    lines.push("  Loads, one line each:");
    tank.loads.forEach((load, i) => {
      const parts = order.products.map((p) => `${p.productName} ${measured(p.loads[i]?.amount)}`);
      lines.push(
        ...wrapped(parts.join("; "), width, `    ${load.number}  ${told(load.volume)}: `, "       "),
      );
    });
  }
  for (const product of order.products) {
    if (product.packages === undefined) continue;
    const { count, leftOver } = product.packages;
    const open = `open ${count} of ${product.productName}, ${told(leftOver)} left over`;
    lines.push(...wrapped(open, width, "  ", "    "));
  }
  lines.push("", "  Filling the tank (amounts of load 1)");
  for (const step of order.order.steps) {
    const number = String(step.number).padStart(4);
    lines.push(...wrapped(step.text, width, `${number}  `, "      "));
    if (step.action === "add" && step.reason !== "")
      lines.push(...wrapped(step.reason, width, "      - ", "        "));
  }
  return lines;
};

/** Columns side by side: the first to the left, the rest to the right. */
const table = (rows: readonly (readonly string[])[]): string[] => {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? "").length)),
  );
  return rows.map((row) =>
    `  ${row.map((cell, column) => (column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0))).join("  ")}`.trimEnd(),
  );
};

const listed = ["N", "N:soluble", "N:slow", "P2O5", "K2O", "Fe", "Ca", "Mg", "S", "Mn"];

const accountLines = (account: NutrientAccount, parts: string, width: number): string[] => {
  const names = listed.filter((of) => (account.yearAfter[of]?.value ?? 0) > 0);
  if (names.length === 0 && account.limits.length === 0 && account.tests.length === 0) return [];
  const unit = account.yearAfter.N?.unit ?? "lb/1000 ft2";
  const cell = (rates: NutrientAccount["yearSoFar"], of: string): string => {
    const q = rates[of];
    return q === undefined ? "0" : String(Number((q.in as (u: string) => number).call(q, unit).toFixed(3)));
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
    ...account.limits.flatMap((use) => wrapped(limitText(use), width, "  - ", "    ")),
    ...account.tests.flatMap((test) => wrapped(testText(test), width, "  - ", "    ")),
  ];
};

/** Accounts that read the same, under the names of all their parts. */
const alike = (
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
  const { limit, after, remainingUnderStatedLimits: left, passed } = use;
  const count = limit.kind === "count";
  const { unit } = limit.amount;
  const figure = (q: unknown): string => digits(inUnit(q as Any, unit));
  const of = limit.of.replace("N:soluble", "soluble N").replace("N:slow", "slow N");
  const what = count ? `applications of ${of}` : of;
  const rest = passed ? `PASSED by ${figure(left.times(-1 as never))}` : `${figure(left)} left`;
  const frees = use.freesUpOn === null || left.value > 0 ? "" : `, something frees up on ${use.freesUpOn}`;
  const line = `${what} ${periodText(limit.per)}: ${figure(after)} of ${figure(limit.amount)}${count ? "" : ` ${unitSymbol(unit)}`}`;
  return `${line}, ${rest}${frees}.${ifMeant(use.meantIf)} Stated in: ${sourceText(limit.source)}`;
};

const testText = ({ limit, found, passed, meantIf }: LimitTest): string => {
  const verdict = passed === null ? "not known" : `${found}${passed ? ", PASSED" : ""}`;
  return `${limit.of}, ${limit.states}: ${verdict}.${ifMeant(meantIf)} Stated in: ${sourceText(limit.source)}`;
};

const findingLines = (findings: readonly Finding[], width: number): string[] => {
  const order = { warning: 0, caution: 1, note: 2 };
  const marks = { warning: "!! ", caution: "!  ", note: "-  " };
  return [...findings]
    .sort((a, b) => order[a.severity] - order[b.severity])
    .flatMap((finding) => wrapped(finding.text, width, `  ${marks[finding.severity]}`, "     "));
};

const underlined = (title: string): string[] => [title, "-".repeat(title.length)];

/**
 * The work order as plain text, for a sheet that a person can take to the shed. It says nothing that the
 * record does not; figures are rounded for reading only, and shown in the units of the job with the other
 * system beside the ones that matter.
 *
 * @param order - what `workOrder` returned
 * @param options - `width`, the columns of a line: 60 or more; 78 where it is left out
 * @throws RatewrightError `range`, `not-finite` for a width under 60
 *
 * @example
 * ```ts
 * import { workOrder, workOrderText } from "ratewright";
 * const order = workOrder({
 *   type: "job",
 *   version: 1,
 *   title: "First feed",
 *   date: "2026-05-04",
 *   site: { name: "Practice pitch", parts: [{ shape: "measured", area: { value: 12400, unit: "ft2" } }] },
 *   products: [{ id: "feed-a", name: "24-0-11", form: "dry", analysis: "24-0-11" }],
 *   treatments: [
 *     { id: "feed", method: "spread", product: "feed-a", target: { value: 0.9, unit: "lb/1000 ft2", of: "N" } },
 *   ],
 * });
 * workOrderText(order).split("\n").filter((line) => line.startsWith("  rate"));
 * // => ["  rate        3.75 lb/1,000 ft² (183 kg/ha) of product"]
 * ```
 */
export const workOrderText = (order: WorkOrder, options: WorkOrderTextOptions = {}): string => {
  expectRecord(order, "order");
  const width = expectNumber(options.width ?? 78, "options.width", { min: 60 });
  const { name, area } = order.site;
  const lines: string[] = [
    order.title,
    "=".repeat(Math.min(width, order.title.length)),
    ...wrapped(`${order.date}   ${name}   ${both(area.net)}`, width, "", "  "),
  ];
  const section = (title: string, body: readonly string[]): void => {
    if (body.length > 0) lines.push("", ...underlined(title), ...body);
  };
  section("Look first", findingLines(order.findings, width));
  for (const spread of order.spreads)
    lines.push("", ...spreadLines(spread, name).flatMap((line) => folded(line, width)));
  for (const spray of order.sprays) lines.push("", ...sprayLines(spray, name, width));
  for (const { account, parts } of alike(order.nutrients)) {
    const body = accountLines(account, parts, width);
    if (body.length > 0) lines.push("", ...body);
  }
  section(
    "When again",
    order.repeats.flatMap((repeat) => {
      const { calendar, heatAfter } = repeat;
      const dates =
        calendar === null
          ? []
          : [
              `earliest ${calendar.earliestByStatedRules} by the stated rule`,
              ...(calendar.latestUseful === null ? [] : [`useful until ${calendar.latestUseful}`]),
            ];
      const heat = heatAfter === null ? [] : [heatText(heatAfter)];
      const text = [dates.join(", "), ...heat].filter((part) => part !== "").join(". ");
      return wrapped(text === "" ? "no interval is stated" : text, width, `  ${repeat.treatment}: `, "    ");
    }),
  );
  section(
    "Cautions",
    order.cautions.flatMap(({ text }) => wrapped(text, width, "  - ", "    ")),
  );
  section(
    "Checked",
    order.checked.flatMap((text) => wrapped(text, width, "  - ", "    ")),
  );
  section(
    "Not checked",
    order.notChecked.flatMap((text) => wrapped(text, width, "  - ", "    ")),
  );
  return `${lines.join("\n")}\n`;
};
