import { hasOwn } from "./has-own.js";

/** No record that anybody writes is so deep, and no list so long: what is beyond stays as it is, for a reader to refuse. */
const deepest = 64;
const longest = 1_000_000;

/**
 * A copy of plain data, in which each value was read once: what a getter gives the second time, or what a caller changes
 * afterwards, changes no copy. Records, lists and what stands in them are copied; a quantity, a date, a typed array, a
 * function and whatever else has a class stay as they are, and so does what throws when it is read. -0 becomes 0.
 *
 * For a door behind which a record is checked first and used afterwards.
 *
 * @example
 * ```ts
 * import { plainCopy } from "ratewright";
 * const given = { rates: [3, 4] };
 * const own = plainCopy(given);
 * given.rates[0] = 300;
 * own; // => { rates: [3, 4] }
 * ```
 */
export const plainCopy = <const T>(input: T): T => copyOf(input, 0, { given: [], made: [] }) as T;

/** What was copied so far. Most records hold few others, and a look through a short list costs less than a map. */
interface Copies {
  readonly given: object[];
  readonly made: unknown[];
  more?: Map<object, unknown>;
}
const few = 8;

const copyFor = ({ given, made, more }: Copies, input: object): unknown => {
  const at = given.indexOf(input);
  return at < 0 ? more?.get(input) : made[at];
};

const keepCopy = (copies: Copies, input: object, copy: unknown): void => {
  if (copies.given.length < few) {
    copies.given.push(input);
    copies.made.push(copy);
  } else {
    copies.more ??= new Map();
    copies.more.set(input, copy);
  }
};

const copyOf = (input: unknown, depth: number, copies: Copies): unknown => {
  if (typeof input === "number") return input + 0;
  if (typeof input !== "object" || input === null || depth > deepest) return input;
  // What stands in two places, or in itself, does so in the copy.
  const known = copyFor(copies, input);
  if (known !== undefined) return known;
  try {
    if (Array.isArray(input)) {
      if (input.length > longest) return input;
      const list: unknown[] = [];
      keepCopy(copies, input, list);
      for (let i = 0; i < input.length; i++) list.push(copyOf(input[i], depth + 1, copies));
      return list;
    }
    const prototype: unknown = Object.getPrototypeOf(input);
    if (prototype !== Object.prototype && prototype !== null) return input;
    const record = (prototype === null ? Object.create(null) : {}) as Record<string, unknown>;
    keepCopy(copies, input, record);
    for (const name in input) {
      if (!hasOwn(input, name)) continue;
      // It would be taken for the prototype.
      if (name === "__proto__") return input;
      record[name] = copyOf((input as Record<string, unknown>)[name], depth + 1, copies);
    }
    return record;
  } catch {
    return input;
  }
};
