/** A number in a text: what it may mean, where it ends, and the size of half of its last place. */
export interface NumberInText {
  /** The reading that is likeliest first; two where a comma may stand for decimals or thousands. */
  readonly values: readonly number[];
  readonly start: number;
  readonly end: number;
  readonly halfPlace: number;
  /** Whether the second reading takes for decimals what may be thousands: `1,250` as 1.25. */
  readonly commaMayBeDecimal?: true;
}

const fractions: Readonly<Record<string, number>> = {
  "½": 0.5,
  "¼": 0.25,
  "¾": 0.75,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "⅛": 0.125,
};

const pattern =
  /(\d+)[ -](\d+)\/(\d+)|(\d+)\/(\d+)|(\d*)([½¼¾⅓⅔⅛])|\d+(?:[ '’]\d{3})+(?:[.,]\d+)?(?!\d)|\d[\d.,]*\d|\d|\.\d+/g;

/** What the digits of a number may mean, by whether a comma may stand before decimals. */
const readings = (digits: string, decimalComma: boolean): readonly number[] => {
  const text = digits.replace(/[ '’]/g, "");
  const point = Number(text.replace(/,/g, ""));
  // no number of thousands begins with a zero: 0,125 has decimals
  const grouped = /^[1-9]\d{0,2}(,\d{3})+(\.\d+)?$/.test(text);
  const commas = text.split(",").length - 1;
  const comma = commas === 1 ? Number(text.replace(/\./g, "").replace(",", ".")) : Number.NaN;
  // 1.250 is 1,250 to those who write a comma before decimals
  if (commas === 0 && decimalComma && /^[1-9]\d{0,2}\.\d{3}$/.test(text))
    return [Number(text), Number(text.replace(".", ""))];
  if (commas === 0) return [Number(text)];
  // 1,234.5: where both stand, the last is before the decimals
  if (!decimalComma || /,.*\./.test(text)) return grouped ? [point] : [];
  return [...(grouped ? [point] : []), ...(Number.isNaN(comma) ? [] : [comma])];
};

const halfPlaceOf = (digits: string): number => {
  const [, decimals = ""] = /[.,](\d+)$/.exec(digits) ?? [];
  return 0.5 * 10 ** -decimals.length;
};

/** The next number of a text from a place on. */
export const numberIn = (text: string, from: number, decimalComma: boolean): NumberInText | undefined => {
  pattern.lastIndex = from;
  const found = pattern.exec(text);
  if (found === null) return undefined;
  const [all, whole, top, bottom, plainTop, plainBottom, before, sign] = found;
  const start = found.index;
  const end = start + all.length;
  const exact = (value: number): NumberInText => ({ values: [value], start, end, halfPlace: 0 });
  if (top !== undefined) return exact(Number(whole) + Number(top) / Number(bottom));
  // a fraction over nothing is no number
  if (plainTop !== undefined)
    return Number(plainBottom) === 0 ? undefined : exact(Number(plainTop) / Number(plainBottom));
  if (sign !== undefined) return exact(Number(before || 0) + (fractions[sign] ?? 0));
  const values = readings(all, decimalComma).filter(Number.isFinite);
  const doubtful = values.length > 1 && all.includes(",");
  return { values, start, end, halfPlace: halfPlaceOf(all), ...(doubtful && { commaMayBeDecimal: true }) };
};
