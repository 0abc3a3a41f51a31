import { format, type Quantity, unitSymbol } from "../../quantity/index.js";

/** The digits of a number inside the working; the last line has fewer significant ones. */
export const workingDigits = 6;

/** Units whose symbol begins with a number: 3 of them would read as one number, or as a product. */
const blocks = /^(1000 ft2|100 m2)/;

/** Shares say in the equation what they are of; their unit alone is enough in a line. */
const isShare = (unit: string): boolean => /^(%|ppm)/.test(unit);

/** A number as a line of the working has it: at most six significant digits. */
export const numberText = (value: number, digits: number = workingDigits): string =>
  format({ value, unit: "1", of: "none" } as Quantity<"1", "none">, { significantDigits: digits });

/** An amount of money with both digits of its cents: `$75.60`. */
const inCents = (text: string): string => text.replace(/\.\d(?!\d)/, (tenths) => `${tenths}0`);

/** What an amount is of, as a reader says it: `quick N` for `N:quick`, `ENM` for `other:ENM`. */
const spoken = (of: string): string => of.replace(/^other:/, "").replace(/^(\w+):(\w+)$/, "$2 $1");

/** A substance with a colon in its name, before what the amount is per: `0.26 lb quick N/1,000 ft²`. */
const inPlace = (text: string): string => {
  const [, top, below, of = ""] = /^([^/]+)\/(.+) of (\S+:\S+)$/.exec(text) ?? [];
  if (top === undefined) return text;
  const [first = "", second] = of.split("/");
  return `${top} ${spoken(first)}/${below}${second === undefined ? "" : ` ${spoken(second)}`}`;
};

/** An amount as a line of the working has it: `0.9 lb N/1,000 ft²`; a count is its number alone. */
export const amountText = (q: Quantity<string, string>, digits: number = workingDigits): string => {
  if (q.unit === "count" || (q.unit === "1" && q.of === "none")) return numberText(q.value, digits);
  if (blocks.test(q.unit)) return `${numberText(q.value, digits)} blocks of ${unitSymbol(q.unit)}`;
  const text = format(q, { significantDigits: digits, substance: !isShare(q.unit) });
  return q.unit.startsWith("money:") ? inCents(text) : inPlace(text);
};

/** An amount, and what it is for each of where its unit does not say it: `6 %/min`. */
export const amountPerText = (q: Quantity<string, string>, per: string | undefined): string =>
  per === undefined ? amountText(q) : `${amountText(q)}/${per}`;
