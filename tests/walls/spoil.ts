// Where a call can be spoilt, and with what.

/** A quantity, of this or of another copy of the package. */
export interface Amount {
  readonly value: number;
  readonly unit: string;
  readonly of: string;
  readonly dimension: string;
  toJSON(): Readonly<Record<string, unknown>>;
}

/** A place in the arguments of a call: `[0, "rate", "value"]`. */
export type Place = readonly (string | number)[];

/** How a place is written in a list: `0.rate.value`. */
export const placeText = (place: Place): string => place.join(".");

type Fields = Readonly<Record<string, unknown>>;

/** Whether something is a quantity, of this or of another copy. */
export const isQuantity = (value: unknown): value is Amount =>
  typeof value === "object" && value !== null && "dimension" in value && "toJSON" in value && "unit" in value;

/** Whether something is a plain record. */
const isRecord = (value: unknown): value is Fields => {
  if (typeof value !== "object" || value === null) return false;
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === Object.prototype || prototype === null;
};

const longestList = 2;
const deepest = 6;

/** The places of a value: itself, its fields, the first and last entry of its lists, the parts of its quantities. */
export const placesIn = (value: unknown, at: Place): readonly Place[] => {
  const here = [at];
  if (at.length > deepest) return here;
  if (isQuantity(value)) return [...here, ...["value", "unit", "of"].map((part) => [...at, part])];
  if (Array.isArray(value)) {
    const ends = [...new Set([0, value.length - 1])].filter((n) => n >= 0 && n < value.length);
    return [...here, ...ends.slice(0, longestList).flatMap((n) => placesIn(value[n], [...at, n]))];
  }
  if (!isRecord(value)) return here;
  return [...here, ...Object.keys(value).flatMap((key) => placesIn(value[key], [...at, key]))];
};

/** What stands at a place. */
export const valueAt = (given: unknown, place: Place): unknown =>
  place.reduce<unknown>((value, key) => (Object(value) as Fields)[key], given);

/** A mark: this place is taken away. */
export const absent: unique symbol = Symbol("absent");

/** The same with another value at a place. Copies are made on the way to it and frozen; nothing else is touched. */
export const withAt = (value: unknown, place: Place, put: unknown): unknown => {
  const [key, ...rest] = place;
  if (key === undefined) return put;
  const inner = withAt((Object(value) as Fields)[key], rest, put);
  if (Array.isArray(value)) {
    const list: unknown[] = [...value];
    list[Number(key)] = inner === absent ? undefined : inner;
    return Object.freeze(list);
  }
  const plain: Fields = isQuantity(value) ? { ...value.toJSON() } : (value as Fields);
  // A field that is there keeps its turn among the others
  const made: Record<string, unknown> = { ...plain, [key]: inner };
  if (inner === absent) delete made[key];
  return Object.freeze(made);
};

/** A deep copy with every record and list frozen; functions, typed arrays and objects of a class are kept. */
export const frozenCopy = (value: unknown): unknown => {
  if (isQuantity(value))
    return Object.freeze(Object.assign(Object.create(Object.getPrototypeOf(value)), value));
  if (Array.isArray(value)) return Object.freeze(value.map(frozenCopy));
  if (!isRecord(value)) return value;
  return Object.freeze(
    Object.fromEntries(Object.entries(value).map(([key, field]) => [key, frozenCopy(field)])),
  );
};

/** Whether JSON keeps all of a value: no function, no typed array, no symbol in it. */
const survives = (value: unknown): boolean => {
  if (isQuantity(value)) return true;
  if (Array.isArray(value)) return value.every(survives);
  if (isRecord(value)) return Object.values(value).every(survives);
  return value === undefined || value === null || ["string", "number", "boolean"].includes(typeof value);
};

const oneMegabyte = "a".repeat(1_000_000);
const sparseLength = 100_000;

/** One for all calls: to make it takes longer than most calls. The matrix looks at the end whether it is as it was. */
const sparse: unknown[] = Object.assign([], { length: sparseLength });

/** Whether no call wrote into a list that all of them were given. */
export const isSparseStill = (): boolean =>
  sparse.length === sparseLength && Object.keys(sparse).length === 0 && !Object.isFrozen(sparse);

const cyclic = (value: unknown): unknown => {
  if (Array.isArray(value)) {
    const list: unknown[] = [...value];
    list.push(list);
    return list;
  }
  const fields: Record<string, unknown> = { ...(isRecord(value) || isQuantity(value) ? value : {}) };
  fields.self = fields;
  return fields;
};

const withoutPrototype = (value: unknown): unknown =>
  Object.assign(Object.create(null) as object, isQuantity(value) ? value.toJSON() : value);

/** A record as a hostile text of JSON makes it: `__proto__` is a field of its own. */
const hostile = (value: unknown): unknown => {
  const made = JSON.parse(
    '{"__proto__":{"polluted":1},"constructor":{"prototype":{"polluted":1}},"toString":1}',
  );
  return isRecord(value) || isQuantity(value) ? Object.assign(made, { ...value }) : made;
};

/** What a getter gives at its second reading, another at each one after it. */
const turned = (field: unknown, times: number): unknown => {
  const others = [typeof field === "number" ? Number.NaN : undefined, null, 7, "other", {}, [undefined]];
  return others[(times - 2) % others.length];
};

/** The same record, whose fields give what they hold so many times, and then something else. */
const fickle =
  (sound: number) =>
  (value: unknown): unknown => {
    if (!isQuantity(value) && !isRecord(value) && !Array.isArray(value)) return unfit;
    const made: object = Array.isArray(value) ? [] : {};
    for (const [name, field] of Object.entries(isQuantity(value) ? value.toJSON() : value)) {
      let times = 0;
      Object.defineProperty(made, name, {
        enumerable: true,
        get: () => {
          times += 1;
          return times <= sound ? field : turned(field, times - sound + 1);
        },
      });
    }
    return made;
  };

/** A zero with a sign, and getters that give something else the second time, or the third. */
const quietFaults: Readonly<Record<string, (valid: unknown) => unknown>> = {
  minusZeroQuantity: (valid) => (isQuantity(valid) ? { ...valid.toJSON(), value: -0 } : unfit),
  fickle: fickle(1),
  fickleLater: fickle(2),
};

/** Deeper than a program can walk by calling itself. */
const deepest20k = JSON.parse(`${'{"a":'.repeat(20_000)}1${"}".repeat(20_000)}`) as unknown;

/** A view through which everything is read as it is. */
const viewOf = (value: unknown): unknown =>
  isRecord(value) || Array.isArray(value) ? new Proxy(value as object, {}) : unfit;

const isDay = (value: unknown): boolean => typeof value === "string" && /^\d{4}-\d{2}-\d{2}$/.test(value);

const likeButValue = (value: unknown, number: number): unknown =>
  isQuantity(value) ? { ...value.toJSON(), value: number } : absent;

/** A mark: this fault does not fit this place. */
export const unfit: unique symbol = Symbol("unfit");

const orUnfit = (value: unknown): unknown => (value === absent ? unfit : value);

/** What another copy of the package makes of a quantity. */
export type Copied = (amount: Amount) => unknown;

const copiedAll = (value: unknown, copied: Copied): unknown => {
  if (isQuantity(value)) return copied(value);
  if (Array.isArray(value)) return value.map((entry) => copiedAll(entry, copied));
  if (!isRecord(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, field]) => [key, copiedAll(field, copied)]));
};

/** Faults that change nothing about what is meant: the answer has to be the same, or it is refused. */
export const harmless: ReadonlySet<string> = new Set([
  "frozen",
  "stored",
  "otherCopy",
  "withoutPrototype",
  "view",
]);

/** Faults that no function can take for something that is meant. */
export const neverMeant: ReadonlySet<string> = new Set(["noSuchDay"]);

/** Slips that people make, and not numbers at the ends of what a number holds: each has a place that is wrong. */
export const plainFaults: ReadonlySet<string> = new Set(
  "missing null NaN infinite negative zero text emptyText flag record emptyList list wrongDimension wrongSubstance".split(
    " ",
  ),
);

/** Days in the place of a day: one that does not exist, and the ends of the calendar. */
const dayFaults: Readonly<Record<string, (valid: unknown) => unknown>> = {
  noSuchDay: (valid) => (isDay(valid) ? "2026-02-30" : unfit),
  firstDay: (valid) => (isDay(valid) ? "0001-01-01" : unfit),
  lastDay: (valid) => (isDay(valid) ? "9999-12-31" : unfit),
};

/** The faults by name. Each gives what is put in the place of a valid value, or {@link unfit}. */
export const faults = (copied: Copied): Readonly<Record<string, (valid: unknown) => unknown>> => ({
  missing: () => absent,
  null: () => null,
  NaN: () => Number.NaN,
  infinite: () => Number.POSITIVE_INFINITY,
  minusInfinite: () => Number.NEGATIVE_INFINITY,
  negative: (valid) => (typeof valid === "number" ? -valid - 1 : -1),
  zero: () => 0,
  minusZero: () => -0,
  tiny: () => 5e-324,
  huge: () => 1e308,
  minusHuge: () => -1e308,
  text: () => "abc",
  emptyText: () => "",
  protoText: () => "__proto__",
  constructorText: () => "constructor",
  numberText: (valid) => (typeof valid === "number" ? String(valid) : unfit),
  flag: () => true,
  symbol: () => Symbol("s"),
  bigint: () => 1n,
  function: () => () => 1,
  date: () => new Date(0),
  record: () => ({}),
  hostile,
  withoutPrototype: (valid) => (isRecord(valid) || isQuantity(valid) ? withoutPrototype(valid) : unfit),
  bareRecord: () => Object.create(null),
  emptyList: () => [],
  list: (valid) => [valid],
  hole: (valid) =>
    Array.isArray(valid) ? Object.assign([...valid, undefined], { length: valid.length + 2 }) : unfit,
  sparse: () => sparse,
  cyclic,
  megabyte: () => oneMegabyte,
  wrongDimension: (valid) =>
    isQuantity(valid)
      ? { value: valid.value, unit: valid.unit === "min" ? "ft" : "min" }
      : { value: 1, unit: "min" },
  wrongSubstance: (valid) =>
    isQuantity(valid)
      ? { ...valid.toJSON(), of: valid.of === "Zn" ? "Fe" : "Zn" }
      : { value: 1, unit: "lb", of: "Zn" },
  ...dayFaults,
  otherDigits: (valid) => (typeof valid === "string" && /\d/.test(valid) ? valid.replace(/\d/g, "٣") : unfit),
  ...quietFaults,
  deep: () => deepest20k,
  view: viewOf,
  poisonedOf: () => ({ value: 1, unit: "lb", of: { toString: 1 } }),
  hugeQuantity: (valid) => orUnfit(likeButValue(valid, 1e308)),
  tinyQuantity: (valid) => orUnfit(likeButValue(valid, 5e-324)),
  zeroQuantity: (valid) => orUnfit(likeButValue(valid, 0)),
  negativeQuantity: (valid) => orUnfit(likeButValue(valid, -1)),
  frozen: (valid) =>
    isRecord(valid) || Array.isArray(valid) || isQuantity(valid) ? frozenCopy(valid) : unfit,
  stored: (valid) =>
    typeof valid === "object" && valid !== null && survives(valid)
      ? JSON.parse(JSON.stringify(valid))
      : unfit,
  otherCopy: (valid) =>
    isRecord(valid) || Array.isArray(valid) || isQuantity(valid) ? copiedAll(valid, copied) : unfit,
});
