// What people say and jot down around an amount, turned into one that is read: only ever offered, never read in silence.

const counts: readonly string[] = [
  "one",
  "two",
  "three",
  "four",
  "five",
  "six",
  "seven",
  "eight",
  "nine",
  "ten",
  "eleven",
  "twelve",
];
const parts: Readonly<Record<string, string>> = { hal: "1/2", thi: "1/3", qua: "1/4", fou: "1/4" };
const ahead =
  /^(?:(?:about|around|approx|ca|up to|at (?:least|most)|(?:no|not) (?:more|less) than|max|rate)\b|[~≈≤≥@=]|[<>]=?)[.:]? ?(?=[\d.a-z])/i;
const behind =
  /(?:[,;:!?]|(?: |\b)(?:max|total|each|rh|(?:per |\/ ?)app(?:lication)?|bags?|jugs?|tanks?)\.?)$/i;

type Step = readonly [from: RegExp, to: string | ((...found: string[]) => string)];
const rounded = (value: number): string => String(Number(value.toPrecision(12)));

/** One after the other, in any text. */
const steps: readonly Step[] = [
  // kg 26.8
  [/^([a-z]{1,3}\.?|#) ?([\d.,]+)$/i, (_, unit = "", number = "") => `${number} ${unit}`],
  [ahead, ""],
  [/^\(([^()]*)\)$/, "$1"],
  [behind, ""],
  [/ (?:bags?|jugs?)(?= ?\/| per )/i, ""],
  [/''$/, '"'],
  [/^(?:minus|negative|-) /i, "-"],
  // O.5 and 1O
  [/^[\d.,O]*\d[\d.,O]*(?= )/, (run) => run.replace(/O/g, "0")],
  [/(\d) ?\/ ?(\d)/, "$1/$2"],
  [/^(\d+)(?: \.|\. )(\d+)(?= )/, "$1.$2"],
  [/^(\d+)\.(?=\d+\/\d)/, "$1 "],
  [/\bsq[a-z]{0,5}\.?[ /-](?=[a-z])/gi, "sq "],
  [/ ?\((a\.?[ie]\.?|N)\)/, " $1"],
  [/\busd\b/i, "USD"],
  [/ for (?=\d)/i, " per "],
  // an acre and a half, three quarters of an acre, one and a half acres, half an acre
  [
    /^(an?|[a-z]{3,6})\b[ -]/i,
    (all, word = "") => {
      const at = word[1] === undefined || /^an$/i.test(word) ? 0 : counts.indexOf(word.toLowerCase());
      return at < 0 ? all : `${at + 1} `;
    },
  ],
  [/^(\d+) ([a-z]+) and a (half|quarter)\b/i, "$1 and a $3 $2"],
  [
    /^(?:(\d+) )?(?:(?:and|&) (?:an?|one)[ -])?(half|thirds?|quarters?|fourths?)[ -](?:of )?(?:an? )?/i,
    (all, before, name = "") => {
      const part = parts[name.slice(0, 3).toLowerCase()] as string;
      const whole = before ?? "";
      return `${/and|&/.test(all) ? `${whole} ${part}` : `${whole || 1}${part.slice(1)}`} `;
    },
  ],
  [/^(\d+) (?:and|&) (?=\d+\/\d)/i, "$1 "],
  [/^(\d+\/\d+|\d+ \d+\/\d+) (?:of )?an? /i, "$1 "],
  [/ an? (?=[a-z])/gi, " per "],
  [/^([\d.,]+) ?dollars?\b/i, "$$$1"],
  [/^([\d.]+) ?(?:¢|cents?\b)/i, (_, cents) => `$${rounded(Number(cents) / 100)}`],
];

/** `4 x 50 lb`, `4 bags of 50 lb`, `4 50-lb bags`, `50 lb x 4`; two lengths are sides. */
const several: readonly Step[] = [
  [
    /^(\d+) ?(?:x|@|\*|(?:bags?|jugs?) (?:of|@|x)|(?=[\d.]+[-#])) ?([\d.]+)[ -]?(?=[a-z #.]+$)/i,
    (_, one, each) => `${rounded(Number(one) * Number(each))} `,
  ],
  [
    /^([\d.]+) ?([a-z #.]+?) ?[x*] ?(\d+)$/i,
    (_, each, unit, times) => `${rounded(Number(each) * Number(times))} ${unit}`,
  ],
];

/** The same, where a field of this kind is filled in. */
const stepsOf: Readonly<Record<string, readonly Step[]>> = {
  mass: several,
  volume: several,
  time: [[/(\d) ?m$/i, "$1 min"]],
  area: [
    [/ (?:wide|long|deep)\b/gi, ""],
    [/ times /i, " x "],
  ],
  temperature: [[/(\d) ?o ?(?=[fc]$)/i, "$1 °"]],
  "volume/volume": [
    [/^(.*\d ?(?:ml|cc|cl|l|lit(?:er|re)s?) ?(?:\/|per ))100$/i, "$1100 L"],
    [/(\/|per )100$/, "$1100 gal"],
    [/ in (?=\d)/, " per "],
  ],
  "volume/time": [[/\/m$/i, "/min"]],
};
const perArea: readonly Step[] = [
  [/^([^a-z]*(?:g|ml|cc) ?(?:\/|per ))100$/i, "$1100 m2"],
  [/ (?:to|covers?|over) (?=\d)/i, " per "],
  [/^([^a-z]*(?:lb|#|oz|fl|gal|qt|pt|quart|pint).*(?:\/|per ) ?\d[\d,]*)$/i, "$1 ft2"],
];

/** A slope as `1:50`, which some write as rise to run and others as run to rise. */
const slope = /^(\d{1,6}(?:\.\d{1,4})?) ?(?::|in(?= )) ?(\d{1,6}(?:\.\d{1,4})?)$/;

/** Texts in figures and units that a cleaned text may stand for, in a field of a dimension; each still has to be read. */
export const inFigures = (text: string, dimension = ""): readonly string[] => {
  const [, one, other] = (dimension === "length/length" && slope.exec(text)) || [];
  if (one !== undefined) return [`${one} ft/${other} ft`, `${other} ft/${one} ft`];
  // thousands of square feet, or of square meters
  const thousands = dimension === "area" ? /^([\d.,]+) ?(?:k|thousand)$/i.exec(text)?.[1] : undefined;
  if (thousands !== undefined)
    return [`${thousands} x 1000 ft2`, `${thousands}000 m2`].slice(0, /\D/.test(thousands) ? 1 : 2);
  const degrees = /^temperature/.test(dimension)
    ? /^(-?[\d.]+) ?deg(?:rees?|\.)?$/i.exec(text)?.[1]
    : undefined;
  if (degrees !== undefined)
    return ["F", "C"].map((scale) => `${degrees} °${scale}${dimension.length > 11 ? " diff" : ""}`);
  const own = /\/area$/.test(dimension) ? perArea : (stepsOf[dimension] ?? []);
  const turned = [...steps, ...own].reduce((one, [from, to]) => one.replace(from, to as string), text).trim();
  const both = /^([^()]+) \((\d[^()]*)\)$/.exec(turned);
  return both === null ? [turned] : [both[1] as string, both[2] as string];
};
