import type { NameOfMistake } from "./mistakes.js";
import type { PosedMistake } from "./topic.js";

/** The digits of a number with commas between thousands, without a locale: `12,400`, `0.75`. */
const grouped = (digits: string): string => {
  const [whole = "", decimals] = digits.split(".");
  const commas = whole.replace(/\B(?=(\d{3})+$)/g, ",");
  return decimals === undefined ? commas : `${commas}.${decimals}`;
};

/** A number as a problem prints it: at most six digits that say something, or as many as are asked, and no zeros at the end. */
export const num = (value: number, digits = 6): string => {
  const plain = Number(value.toPrecision(digits));
  const decimals = Math.max(0, Math.min(8, 5 - Math.floor(Math.log10(Math.abs(plain) || 1))));
  return grouped(
    plain
      .toFixed(decimals)
      .replace(/(\.\d*?)0+$/, "$1")
      .replace(/\.$/, ""),
  );
};

/** A number to so many decimals, zeros at the end included: `3.80`. Half goes up. */
export const fixed = (value: number, decimals: number): string => {
  const scale = 10 ** decimals;
  return grouped((Math.round(value * scale * (1 + 1e-12)) / scale).toFixed(decimals));
};

interface UnitWords {
  readonly one: string;
  readonly many: string;
}

const same = (word: string): UnitWords => ({ one: word, many: word });

const words: Readonly<Record<string, UnitWords>> = {
  ft2: same("sq ft"),
  "1000 ft2": same("1,000 sq ft"),
  m2: same("m²"),
  "100 m2": same("100 m²"),
  yd3: same("cu yd"),
  m3: same("m³"),
  in: { one: "inch", many: "inches" },
  acre: { one: "acre", many: "acres" },
  min: { one: "minute", many: "minutes" },
  s: { one: "second", many: "seconds" },
  h: { one: "hour", many: "hours" },
  d: { one: "day", many: "days" },
  count: same(""),
  "1": same(""),
  week: { one: "week", many: "weeks" },
  "US ton": { one: "ton", many: "tons" },
  "°F d": same("°F degree-days"),
  "°C d": same("°C degree-days"),
  "money:USD": same("dollars"),
  "money:EUR": same("euros"),
};

const symbols: Readonly<Record<string, string>> = { USD: "$", EUR: "€" };

/** The word of a unit as a learner reads it: `lb per 1,000 sq ft`, `mph`, `2 inches`, `0.5 inch`. */
export const unitWords = (unit: string, value = 2): string => {
  if (unit === "mi/h" || unit === "km/h") return unit === "mi/h" ? "mph" : "km/h";
  const [top = "", bottom] = unit.split("/");
  const { one, many } = words[top] ?? same(top);
  const first = value > 0 && value <= 1 ? one : many;
  return bottom === undefined ? first : `${first} per ${words[bottom]?.one ?? bottom}`;
};

/** An amount as a problem prints it: `3,000 sq ft`, `1 inch`, `$18.50`. */
export const amount = (value: number, unit: string): string => {
  const [, currency, below] = /^money:([A-Z]{3})(?:\/(.+))?$/.exec(unit) ?? [];
  if (currency !== undefined) {
    const price = `${symbols[currency]}${fixed(value, 2)}`;
    return below === undefined ? price : `${price} per ${words[below]?.one ?? below}`;
  }
  if (unit === "%") return `${num(value)} %`;
  return `${num(value)} ${unitWords(unit, value)}`.trim();
};

/** An amount with what it is of, before a rate's area: `0.6 lb of nitrogen per 1,000 sq ft`. */
export const amountOf = (value: number, unit: string, of: string): string => {
  const [top = "", below] = amount(value, unit).split(" per ");
  return `${top} of ${of}${below === undefined ? "" : ` per ${below}`}`;
};

/** What a mistake comes to. */
export const slip = (mistake: NameOfMistake, value: number): PosedMistake => ({ mistake, value });

/** A list in words: `8, 9 and 12`. */
export const listed = (parts: readonly string[]): string =>
  parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts[parts.length - 1]}`;
