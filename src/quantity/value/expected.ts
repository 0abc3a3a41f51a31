import { fail } from "../errors/errors.js";
import { isSubstance } from "../substance/substances.js";
import { dimensionDue } from "../unit/dimension-words.js";

/** What JSON and structuredClone leave of a quantity. */
export interface QuantityJson {
  readonly value: number;
  readonly unit: string;
  readonly of: string;
}

/** How a quantity must lie: above zero, at or above zero, or anywhere. */
export type Bound = "positive" | "non-negative" | "any";

/** An element and its oxide, or the oxide and its element: there is a function that goes from one to the other. */
const elementAndOxide = /^(P|K|Ca|Mg)(2?O5?)?,\1(2?O5?)?$/;

/** What a quantity should be of, and how the one at hand gets there. */
export const expectedSubstance = (
  got: { readonly value: number; readonly unit: string; readonly of: string },
  of: string,
): string => {
  if (of === "none") return "a quantity of no substance";
  if (got.of === "none") return `a quantity of ${of}, such as quantity(${got.value}, "${got.unit}", "${of}")`;
  // Nitrate, ammonium and the parts of nitrogen have a function that counts them as nitrogen.
  if (of === "N" && /^N[:HO]/.test(got.of)) return "a quantity of N; nitrogenOf(amount) counts it as N";
  return `a quantity of ${of}${elementAndOxide.test([of, got.of].join()) ? `; inForm(amount, "${of}") gives it` : ""}`;
};

/** Who reads a text, where a number or a quantity is due. */
export const textIsRead = (input: unknown): string =>
  typeof input === "string" ? "; parseQuantity and readQuantity read text" : "";

/** What is expected, or nothing at all where it is no record: a text is walked letter by letter. */
export const recordOr = <R extends object>(expected: R): R =>
  typeof expected === "object" && expected !== null ? expected : ({} as R);

/** Throws that a quantity is due where something else came in, with what to write. */
export const quantityDue = (path: string, input: unknown, wanted: unknown): never => {
  const names: readonly unknown[] = [wanted].flat();
  if (names.length === 0 || names.some((name) => typeof name !== "string"))
    return fail("type", path, input, `a quantity, as quantity(3, "lb") makes${textIsRead(input)}`);
  // a form sends "60000" for the number of a record
  const { value } = (typeof input === "object" && input !== null ? input : {}) as {
    readonly value?: unknown;
  };
  if (typeof value === "string") return finite(value as never, `${path}.value`) as never;
  const number = Number.isFinite(input) ? input : "number";
  const call = wanted === "1" ? 'quantity(40, "%") or quantity(0.4, "1")' : `quantity(${number}, unit)`;
  const how = textIsRead(input) || `, made by ${call}`;
  return dimensionDue(
    "type",
    path,
    input,
    wanted as string | readonly string[],
    input === undefined ? "" : how,
  );
};

/** Takes a number that is finite, or throws with its path. */
export const finite = (value: number, path: string): number =>
  Number.isFinite(value) ? value : fail("not-finite", path, value, `a finite number${textIsRead(value)}`);

/** Throws for a divisor of 0. */
export const notZero = (value: number, path: string, got: unknown): void => {
  if (value === 0) fail("range", path, got, "anything but 0");
};

/** A record with no field beside the known ones: with a misspelt `of` its substance would be lost. */
export const alone = <R extends object>(record: R, known: object, path: string): R => {
  for (const name of Object.keys(record))
    if (!(name in known)) fail("type", `${path}.${name}`, name, `${Object.keys(known).join(", ")} alone`);
  return record;
};

/** What a quantity that is plain data has. */
export const parts: Readonly<Record<string, number>> = { value: 0, unit: 0, of: 0, dimension: 0 };
/** What is expected may be said by a quantity of that kind, whose number and unit do not count. */
export const kind: Readonly<Record<string, number>> = { dimension: 0, of: 0, bound: 0, value: 0, unit: 0 };

/** Takes a substance, or throws with its path. */
export const knownSubstance = (of: string, path: string): string =>
  isSubstance(of)
    ? of
    : fail(
        "substance/unknown",
        path,
        of,
        "a substance, such as N or product, or other:sand for one of your own (suggestSubstance names the nearest)",
      );
