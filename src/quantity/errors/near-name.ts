import { fail } from "./errors.js";
import { hasOwn } from "./has-own.js";

/**
 * The known name that a misspelt one most likely means: its letters but for one, in whatever order, with the same
 * first letter; `undefined` where none is so near. For a message; nothing is renamed without the user.
 *
 * @throws RatewrightError `type` for anything but a name and a list
 *
 * @example
 * ```ts
 * import { nearName } from "ratewright";
 * nearName("slowNitrgen", ["analysis", "slowNitrogen"]); // => "slowNitrogen"
 * nearName("price", ["analysis", "slowNitrogen"]); // => undefined
 * ```
 */
export const nearName = (name: string, known: readonly string[]): string | undefined => {
  if (typeof name !== "string") fail("type", "name", name, "a name");
  if (!Array.isArray(known) || known.length > 1000) fail("type", "known", known, "a list of names");
  return nearField(name, known);
};

/** {@link nearName} of what is known to be a name and a list. */
export const nearField = (name: string, known: readonly string[]): string | undefined => {
  if (name.length > 64) return undefined;
  const asked = name.toLowerCase();
  const other = Object.keys(otherNames).find(
    (field) => known.includes(field) && otherNames[field]?.split(" ").includes(asked),
  );
  return other ?? nearSpelling(name, known);
};

/** The known name that is spelled nearly so. */
export const nearSpelling = (name: string, known: readonly string[]): string | undefined =>
  known.find((other) => typeof other === "string" && isNear(other, name));

/** What people call a field by another good name. */
const otherNames: Readonly<Record<string, string>> = {
  package: "bag sack jug",
  width: "spacing swath",
  course: "distance length",
  distance: "length",
  length: "distance",
  capacity: "tank",
  applicationVolume: "volume carriervolume",
  max: "most",
  amount: "volume most",
  min: "least",
  product: "fertilizer",
  products: "partners",
  formulation: "kind",
  mean: "temperature",
  season: "grass",
  multiplier: "efficiency",
  rule: "method",
  widths: "offsets",
  Ca: "calcium",
  Mg: "magnesium",
  aim: "margin markup",
  perVolume: "nutrients",
  acidity: "bufferph",
  minimumDays: "days mindays",
  toWater: "water distancetowater",
  weather: "wind humidity sky",
  reEntryHours: "rei reentry reentryinterval",
  registrationNumber: "epa epanumber",
  tare: "empty",
};

/** What people say for a word of a list. */
const otherWords: Readonly<Record<string, string>> = {
  dry: "granular granule granules powder solid",
  liquid: "fluid",
  spread: "broadcast granular",
  "growth regulator": "pgr",
};

/** Shorter words are near to too many others. */
const long = 4;

/**
 * The known word that another most likely means: spelled nearly so, or another form of it, such as `"spreading"` for
 * `"spread"`. Where two would do, it is neither.
 */
export const nearWord = (written: string, known: readonly string[]): string | undefined => {
  if (written.length > 64) return undefined;
  const text = written.trim().toLowerCase();
  const forms = known.filter((word) => {
    const plain = word.toLowerCase();
    return (
      plain === text ||
      (plain.length >= long && text.startsWith(plain)) ||
      (text.length >= long && plain.startsWith(text)) ||
      plain.split(/[ -]/).includes(text) ||
      (hasOwn(otherWords, plain) && otherWords[plain]?.split(" ").includes(text))
    );
  });
  // N is n, not n-1
  if (forms.length > 0)
    return forms.length === 1 ? forms[0] : forms.find((word) => word.toLowerCase() === text);
  const far = (word: string): number => leftOf(word.toLowerCase(), text) + leftOf(text, word.toLowerCase());
  const near = known.filter((word) => Math.min(word.length, text.length) >= long && isNear(word, text));
  const least = Math.min(...near.map(far));
  const nearest = near.filter((word) => far(word) === least);
  return nearest.length === 1 ? nearest[0] : undefined;
};

/** How many letters of a word are left when those of another are taken away. */
const leftOf = (word: string, other: string): number => {
  let rest = word;
  for (const letter of other) rest = rest.replace(letter, "");
  return rest.length;
};

const isNear = (known: string, written: string): boolean => {
  if (Math.abs(known.length - written.length) > 2) return false;
  const [a, b] = [known.toLowerCase(), written.toLowerCase()];
  // letters that each has alone: bag is not basis
  const [here, there] = [leftOf(a, b), leftOf(b, a)];
  return Math.min(here, there) <= 1 && Math.max(here, there) <= 2 && a[0] === b[0];
};
