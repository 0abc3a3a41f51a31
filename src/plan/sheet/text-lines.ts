import { inUnit } from "../../ledger/house.js";
import { format, type Quantity, quantity, quantityOf, unitSymbol } from "../../quantity/index.js";

/** A quantity of any kind. */
export type Any = Quantity<string, string>;

/** Digits for reading: 0.125, 3.75, 46.5, 120,825. */
export const digits = (value: number): string => {
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
export const told = (q: unknown): string => `${digits((q as Any).value)} ${unitSymbol((q as Any).unit)}`;

/** An amount to measure out, in a unit that fits its size. */
export const measured = (q: unknown): string => told(handy(q as Any));

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
export const both = (q: unknown): string => {
  const other = otherUnit(q);
  if (other === undefined) return told(q);
  return `${told(q)} (${digits(Number(inUnit(q as Any, other).toPrecision(3)))} ${unitSymbol(other)})`;
};

/** Breaks a text into lines; what follows the first is indented by `hang`. */
export const wrapped = (text: string, width: number, first: string, hang: string): string[] => {
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
export const folded = (line: string, width: number): string[] => {
  const [, name = "", text = line] = /^(\s*\S+ {2,})(.*)$/.exec(line) ?? [];
  return line.length <= width ? [line] : wrapped(text, width, name, " ".repeat(name.length));
};

/** Columns side by side: the first to the left, the rest to the right. */
export const table = (rows: readonly (readonly string[])[]): string[] => {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((row) => (row[column] ?? "").length)),
  );
  return rows.map((row) =>
    `  ${row.map((cell, column) => (column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0))).join("  ")}`.trimEnd(),
  );
};
