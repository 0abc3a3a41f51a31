import { fail } from "../errors/errors.js";
import { frozen } from "../errors/frozen.js";

/**
 * What a quantity is a quantity of. The set is closed, plus ids (`product:feed-a`) and what a caller
 * declares with `other:`.
 */
export const substanceTokens = [
  "none",
  // an area that a formula could confuse: these are neutral in products, like "none"
  "treated",
  "gross",
  "plan",
  // plant nutrients as elements, ions and oxides
  "N",
  "N:quick",
  "N:slow",
  "NO3",
  "NO3-N",
  "NH4-N",
  "P",
  "P2O5",
  "K",
  "K2O",
  "Ca",
  "CaO",
  "Mg",
  "MgO",
  "S",
  "SO3",
  "SO4",
  "Fe",
  "Mn",
  "Zn",
  "Cu",
  "B",
  "Mo",
  "Cl",
  "Na",
  "Ni",
  "Si",
  "SiO2",
  "Al",
  "HCO3",
  "CO3",
  // water hardness and liming material
  "hardness as CaCO3",
  "CaCO3 equivalent",
  // what goes into the tank and on to the ground
  "product",
  "ai",
  "ae",
  "water",
  "spray",
  "soil",
  "seed",
  "pure live seed",
] as const;

/**
 * What a quantity is a quantity of. The set is closed, plus ids (`product:feed-a`) and what a caller
 * declares with `other:`.
 */
export const substances: typeof substanceTokens = /* @__PURE__ */ frozen(substanceTokens);

/** The substances without an id. */
export type PlainSubstance = (typeof substanceTokens)[number];

/** One substance: a name of the closed set, or one that carries an id. */
export type AtomicSubstance =
  | PlainSubstance
  | `product:${string}`
  | `ai:${string}`
  | `ae:${string}`
  | `other:${string}`
  | `degree-days:${string}`;

/** Neutral in products: they say nothing about the stuff. */
export type NeutralSubstance = "none" | "treated" | "gross" | "plan";

/** The names, and texts that were found sound: a memory of the check, not of the caller. Most calls ask for the same few again. */
const known: Set<unknown> = /* @__PURE__ */ new Set<unknown>(substanceTokens);
const mostKnown = 1000;

/** What {@link isSubstance} knows of a text: one name of a substance, or two as `N/product`. */
export type Substance = AtomicSubstance | `${string}/${string}`;

/**
 * Whether a text is a substance: one name, or two as `N/product`. The neutral ones do not stand at the bottom. For a
 * substance that the user chooses: what it lets through is taken by `quantity` and `readQuantity` without a cast.
 *
 * @example
 * ```ts
 * import { isSubstance, quantity } from "ratewright";
 * isSubstance("N/product:feed-a"); // => true
 * isSubstance("nitrogen"); // => false
 * const chosen: string = "P2O5"; // the value of a select box
 * isSubstance(chosen) ? quantity(2, "lb", chosen).toString() : "choose a substance"; // => "2 lb of P2O5"
 * ```
 */
export const isSubstance = (text: unknown): text is Substance => {
  if (known.has(text)) return true;
  const sound =
    typeof text === "string" &&
    text.length <= longestSubstance &&
    text
      .split("/")
      .every(
        (name, place) => place < 2 && !(place && isNeutral(name)) && (known.has(name) || withId.test(name)),
      );
  if (sound && known.size < mostKnown) known.add(text);
  return sound;
};

/** A longer text is refused unread. */
const longestSubstance = 400;
/** An id; not what a template makes of a value that is not there. */
const withId = /^(product|ai|ae|other|degree-days):(?!(?:undefined|null|NaN|\[object Object\])$)[^:\s][^:]*$/;

/** The name of today for one that was written before: quick-release nitrogen was `N:soluble` in 0.1. It is still read. */
export const currentSubstance = (of: string): string =>
  // Most names are shorter than the one of then, and need no search.
  of.length >= "N:soluble".length ? of.replace("N:soluble", "N:quick") : of;

// Taken apart for the reason that unit-text.ts gives.
type NotSubstance<S extends string> = [S] extends [infer T extends string]
  ? `"${T}" is not a substance`
  : never;

/** The text itself where it is a substance, and a sentence where it is not. */
export type CheckedSubstance<S extends string> = [S] extends [AtomicSubstance]
  ? S
  : [S] extends [`${infer T}/${infer B}`]
    ? [T, B] extends [AtomicSubstance, Exclude<AtomicSubstance, NeutralSubstance>]
      ? S
      : string extends T
        ? S
        : NotSubstance<S>
    : string extends S
      ? // What an editor is offered before anything is typed has the plain names in it; a plain string has not.
        [Extract<S, PlainSubstance>] extends [never]
        ? "a plain string may be no substance: give a literal, or ask isSubstance(text) first"
        : PlainSubstance
      : `${string}/${string}` extends S
        ? S
        : NotSubstance<S>;

/** What an editor offers where a substance may stand; those with an id and pairs are taken too. */
export type SubstanceHint = PlainSubstance | (string & {});

type Join<T extends string, B extends string> = T extends B ? "none" : B extends "none" ? T : `${T}/${B}`;
type Same<A, B> = [A, B] extends [B, A] ? true : false;

/** The substance of a product, or `never` where the algebra has none. */
export type TimesSubstance<A extends string, B extends string> = A extends NeutralSubstance
  ? B extends NeutralSubstance
    ? "none"
    : B
  : B extends NeutralSubstance
    ? A
    : A extends `${infer T}/${infer U}`
      ? B extends `${infer V}/${infer W}`
        ? Same<U, V> extends true
          ? Join<T, W>
          : Same<T, W> extends true
            ? Join<V, U>
            : never
        : Same<U, B> extends true
          ? T
          : never
      : B extends `${infer V}/${infer W}`
        ? Same<A, W> extends true
          ? V
          : never
        : never;

/** The substance of a quotient, or `never` where the algebra has none. */
export type PerSubstance<A extends string, B extends string> = B extends NeutralSubstance
  ? A extends NeutralSubstance
    ? "none"
    : A
  : B extends `${infer V}/${infer W}`
    ? A extends NeutralSubstance
      ? Join<W, V>
      : TimesSubstance<A, Join<W, V>>
    : A extends NeutralSubstance
      ? `none/${B}`
      : Same<A, B> extends true
        ? "none"
        : A extends `${infer T}/${infer U}`
          ? Same<T, B> extends true
            ? `none/${U}`
            : never
          : `${A}/${B}`;

const neutral: readonly string[] = /* @__PURE__ */ substanceTokens.slice(0, 4);
const isNeutral = (s: string): boolean => neutral.includes(s);
const join = (top: string, bottom = "none"): string =>
  top === bottom ? "none" : bottom === "none" ? top : `${top}/${bottom}`;

/** What stands above the slash and what below it, where there is one. */
const sides = (substance: string): readonly [top: string, bottom?: string] => {
  const slash = substance.indexOf("/");
  return slash === -1 ? [substance] : [substance.slice(0, slash), substance.slice(slash + 1)];
};

const expectTexts = (a: unknown, b: unknown): void => {
  for (const one of [a, b])
    if (typeof one !== "string") fail("type", "substance", one, "a substance as text");
};

/** The substance of a product of two that are known to be texts. */
export const substanceTimes = (a: string, b: string): string | undefined => {
  if (isNeutral(a)) return isNeutral(b) ? "none" : b;
  if (isNeutral(b)) return a;
  const [t, u] = sides(a);
  const [v, w] = sides(b);
  return u === v ? join(t, w) : w === t ? join(v, u) : undefined;
};

/** The substance of a quotient of two that are known to be texts. */
export const substancePer = (a: string, b: string): string | undefined => {
  if (isNeutral(b)) return substanceTimes(a, b);
  const [top, bottom = "none"] = sides(b);
  return substanceTimes(a, join(bottom, top)) ?? (`${a}${b}`.includes("/") ? undefined : `${a}/${b}`);
};

/**
 * The substance of a product; `undefined` where the algebra has none.
 *
 * @param b - the other substance
 * @throws RatewrightError `type` for anything but a text
 *
 * @example
 * ```ts
 * import { timesSubstance } from "ratewright";
 * timesSubstance("N/product", "product"); // => "N"
 * timesSubstance("ai/product", "spray"); // => undefined
 * ```
 */
export const timesSubstance = (a: string, b: string): string | undefined => {
  expectTexts(a, b);
  return substanceTimes(a, b);
};

/**
 * The substance of a quotient; `undefined` where the algebra has none.
 *
 * @param b - the substance that is divided by
 * @throws RatewrightError `type` for anything but a text
 *
 * @example
 * ```ts
 * import { perSubstance } from "ratewright";
 * perSubstance("N", "product"); // => "N/product"
 * perSubstance("N", "N/product"); // => "product"
 * ```
 */
export const perSubstance = (a: string, b: string): string | undefined => {
  expectTexts(a, b);
  return substancePer(a, b);
};
