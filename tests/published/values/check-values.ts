// docs/check-values.json: the published figures as data, for a port to another language. A figure stands with the call of
// an exported function that gives it, its arguments as JSON, and the place in the result.
import * as library from "../../../src/index.js";
import { type Quantity, quantity, quantityReviver, unitsOf, unitTable } from "../../../src/index.js";
import { type Answer, agrees, type PublishedCheck, type Source } from "../check.js";
import { exportedFunctions } from "../evidence.js";
import { type RecordedCall, type RecordedCheck, recordedChecks } from "./record-calls.js";

/** One printed figure, and the call whose result it is. */
export interface CheckFigure {
  readonly function: string;
  readonly arguments: readonly unknown[];
  /** The way to the figure in the result: `[]` where the result is the figure. */
  readonly at: readonly (string | number)[];
  /** The unit of the figure; absent where a bare number stands there. */
  readonly unit?: string;
  readonly asked: string;
  readonly printed: number;
  /** How far a computed figure may lie off: half of the last printed place, or a whole one where the source cuts. */
  readonly tolerance: number;
  /** Where the source cuts instead of rounding. */
  readonly rounding?: "cut";
  /**
   * How many calls of the check gave this very number, where more than one did: the order of the questions decided which
   * of them is named, and it may have been another.
   */
  readonly alike?: number;
  /** Where the printed figure is wrong in its source: the right one, to the same place. */
  readonly right?: number;
}

/** The figures of one published example. */
export interface CheckGroup {
  /** Entry and number: stable while the check stands. */
  readonly id: string;
  readonly given: string;
  readonly kind: NonNullable<PublishedCheck["kind"]>;
  readonly reached: PublishedCheck["reached"];
  readonly source: string;
  readonly figures: readonly CheckFigure[];
}

/** What a unit is a number of: `value * size + zero`. */
interface UnitSize {
  readonly dimension: string;
  readonly size: number;
  readonly zero?: number;
}

/** The file. */
export interface CheckValues {
  readonly type: "checkValues";
  readonly version: 1;
  readonly about: string;
  readonly published: number;
  readonly figures: number;
  /** The simple units, by their size in the base unit of the dimension, as docs/units.md has it; `lb/1000 ft2` divides two. */
  readonly units: Readonly<Record<string, UnitSize>>;
  readonly sources: Readonly<Record<string, Source>>;
  readonly checks: readonly CheckGroup[];
}

interface Leaf {
  readonly at: readonly (string | number)[];
  readonly value: Quantity<string, string> | number;
}

interface Place {
  /** Which call of the check. */
  readonly nth: number;
  readonly call: RecordedCall;
  readonly at: Leaf["at"];
  readonly unit?: string;
  /** How many different calls gave the number. */
  readonly alike?: number;
}

/** A call whose arguments are longer than this is left out: a port checks what it is made of. */
const longest = 2000;

/** A quantity of any copy of the library: the calls were made in one of their own. */
const isQuantity = (value: unknown): value is Quantity<string, string> =>
  typeof value === "object" && value !== null && "in" in value && "dimension" in value;

const leavesOf = (value: unknown, at: Leaf["at"] = []): readonly Leaf[] => {
  if (typeof value === "number" || isQuantity(value)) return [{ at, value }];
  if (typeof value !== "object" || value === null || at.length > 4) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    key === "version" ? [] : leavesOf(part, [...at, Array.isArray(value) ? Number(key) : key]),
  );
};

const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-12 * Math.max(Math.abs(a), Math.abs(b));

/** What a function of an object gives, found once for each object. */
const once = <K extends object, V>(find: (key: K) => V): ((key: K) => V) => {
  const known = new WeakMap<K, V>();
  return (key) => {
    const value = known.has(key) ? (known.get(key) as V) : find(key);
    known.set(key, value);
    return value;
  };
};

/** The leaves of a result: every figure of a check looks through the same calls. */
const leavesOfCall = once(({ result }: RecordedCall) => leavesOf(result));

const unitsByDimension = new Map<string, readonly string[]>();
const unitNamesOf = (dimension: string): readonly string[] => {
  const names = unitsByDimension.get(dimension) ?? unitsOf(dimension as "mass").map(({ unit }) => unit);
  unitsByDimension.set(dimension, names);
  return names;
};

/** The numbers of a quantity, by the units it has; its own comes first. */
const numbersOf = once((q: Quantity<string, string>): readonly (readonly [string, number])[] =>
  [q.unit, ...unitNamesOf(q.dimension)].map((unit) => [unit, q.in(unit as never)]),
);

/** The unit in which a quantity has this number; one that the question names comes first. */
const unitOf = (q: Quantity<string, string>, number: number, asked: string): string | undefined => {
  const fits = numbersOf(q).flatMap(([unit, own]) => (near(own, number) ? [unit] : []));
  const named = fits.filter((unit) => asked.includes(unit)).sort((a, b) => b.length - a.length);
  return named[0] ?? fits[0];
};

/**
 * Where a computed figure stands among the results. A table has the same number in many cells, and its cells are
 * computed in the order in which they are asked: so the next call after that of the figure before it counts. A figure that
 * stands at several places is nobody's.
 */
const placeOf = (
  { check, calls }: RecordedCheck,
  number: number,
  { of }: Answer,
  after: number,
): Place | undefined => {
  const places = calls.flatMap((call, nth) =>
    check.formulas.includes(call.name)
      ? leavesOfCall(call).flatMap(({ at, value }): readonly Place[] => {
          if (typeof value === "number") return near(value, number) ? [{ nth, call, at }] : [];
          const unit = unitOf(value, number, of);
          return unit === undefined ? [] : [{ nth, call, at, unit }];
        })
      : [],
  );
  const one = (list: readonly Place[]): Place | undefined =>
    new Set(list.map(({ call, at }) => JSON.stringify([call.name, call.args, at]))).size === 1
      ? list[0]
      : undefined;
  const whole = places.filter(({ at }) => at.length === 0);
  const next = whole.find(({ nth }) => nth > after);
  return (
    one(whole) ??
    (next && {
      ...next,
      alike: new Set(whole.map(({ call }) => JSON.stringify([call.name, call.args]))).size,
    }) ??
    (whole.length > 0 ? undefined : one(places))
  );
};

/** What stands at a place of a result, in a unit. */
const figureAt = (result: unknown, at: CheckFigure["at"], unit: string | undefined): number => {
  const value = at.reduce<unknown>(
    (whole, key) => (whole as Readonly<Record<string | number, unknown>> | undefined)?.[key],
    result,
  );
  return isQuantity(value) ? value.in(unit as never) : (value as number);
};

/** The figure by the function that the file names, from nothing but the file. */
export const figureOf = (figure: Pick<CheckFigure, "function" | "arguments" | "at" | "unit">): number => {
  const run = (library as Readonly<Record<string, unknown>>)[figure.function] as (
    ...args: never[]
  ) => unknown;
  const args = JSON.parse(JSON.stringify(figure.arguments), quantityReviver) as never[];
  return figureAt(run(...args), figure.at, figure.unit);
};

/** Whether a computed figure agrees with the printed one, by what the file says alone. */
export const agreesWithFigure = (
  computed: number,
  { printed, right, tolerance, rounding }: CheckFigure,
): boolean =>
  agrees(computed, right ?? printed, {
    of: "",
    printed,
    to: rounding === "cut" ? tolerance : 2 * tolerance,
    ...(rounding === "cut" ? { printing: rounding } : {}),
  });

const cannot = Symbol("cannot be made again");

/** The figure of a call as data, if the call can be made again from its JSON alone and gives the same. */
const dataOf = (
  answer: Answer,
  computed: number,
  { call, at, unit, alike }: Place,
): CheckFigure | typeof cannot => {
  const text = JSON.stringify(call.args);
  if (text.length > longest) return cannot;
  const figure: CheckFigure = {
    function: call.name,
    arguments: JSON.parse(text) as readonly unknown[],
    at,
    ...(unit === undefined ? {} : { unit }),
    asked: answer.of,
    printed: answer.printed,
    tolerance: Number((answer.printing === "cut" ? answer.to : answer.to / 2).toPrecision(12)),
    ...(answer.printing === "cut" ? { rounding: "cut" } : {}),
    ...(alike === undefined ? {} : { alike }),
    ...(answer.wrong === undefined ? {} : { right: answer.wrong.right }),
  };
  try {
    return near(figureOf(figure), computed) ? figure : cannot;
  } catch {
    return cannot;
  }
};

const figuresOf = (recorded: RecordedCheck, known: ReadonlySet<string>): readonly CheckFigure[] => {
  let after = -1;
  return recorded.check.answers.flatMap((answer, i) => {
    const computed = recorded.computed[i] as number;
    const place = placeOf(recorded, computed, answer, after);
    if (place === undefined || !known.has(place.call.name)) return [];
    after = place.nth;
    const figure = dataOf(answer, computed, place);
    return figure === cannot ? [] : [figure];
  });
};

/** A name for each: the entry, with a number where the entry has several. */
const numbered = <T>(things: readonly T[], entryOf: (thing: T) => string): readonly string[] => {
  const counts = new Map<string, number>();
  return things.map((thing) => {
    const entry = entryOf(thing);
    const n = (counts.get(entry) ?? 0) + 1;
    counts.set(entry, n);
    return n === 1 ? entry : `${entry}/${n}`;
  });
};

/** The number of a size such as `1/16 lb` or `0.0254*0.0254`, in the base unit of its dimension. */
const numberOf = (size: string, sizes: Readonly<Record<string, string>>): number => {
  const [, sum = "", unit = ""] = /^([\d.*/]+)\s*(.*)$/.exec(size) ?? [];
  const number = (sum.match(/[*/]?[\d.]+/g) ?? []).reduce(
    (product, factor) =>
      factor.startsWith("/") ? product / Number(factor.slice(1)) : product * Number(factor.replace("*", "")),
    1,
  );
  return unit === "" ? number : number * numberOf(sizes[unit] as string, sizes);
};

const unitSizes = (): CheckValues["units"] =>
  Object.fromEntries(
    Object.entries(unitTable).flatMap(([dimension, sizes]: [string, Readonly<Record<string, string>>]) =>
      Object.entries(sizes).map(([unit, size]): readonly [string, UnitSize] => {
        const zero = dimension === "temperature" ? quantity(0, unit as "K").in("K") : 0;
        return [unit, { dimension, size: numberOf(size, sizes), ...(zero === 0 ? {} : { zero }) }];
      }),
    ),
  );

/** The file, drawn from the published checks. */
export const checkValues = async (): Promise<CheckValues> => {
  const known = new Set([...exportedFunctions().values()].flat());
  const recorded = await recordedChecks();
  const ids = numbered(recorded, ({ check }) => check.entry);
  const found = recorded.flatMap(({ check, ...calls }, i) => {
    const figures = figuresOf({ check, ...calls }, known);
    return figures.length === 0 ? [] : [{ check, id: ids[i] as string, figures }];
  });
  const texts = [...new Map(found.map(({ check }) => [JSON.stringify(check.source), check])).entries()];
  const keys = numbered(texts, ([, { entry }]) => entry);
  const keyOf = new Map(texts.map(([text], i) => [text, keys[i] as string]));
  return {
    type: "checkValues",
    version: 1,
    about:
      "Figures that sources printed, each with the call of ratewright that gives it. A computed figure passes within `tolerance` of `printed`, or of `right` where the printed one is wrong; where `rounding` is `cut`, from there up to `tolerance` above.",
    published: recorded.reduce((sum, { check }) => sum + check.answers.length, 0),
    figures: found.reduce((sum, { figures }) => sum + figures.length, 0),
    units: unitSizes(),
    sources: Object.fromEntries(texts.map(([text, { source }]) => [keyOf.get(text) as string, source])),
    checks: found.map(({ check, id, figures }) => ({
      id,
      given: check.given,
      kind: check.kind ?? "worked example",
      reached: check.reached,
      source: keyOf.get(JSON.stringify(check.source)) as string,
      figures,
    })),
  };
};

/** The file as text: a figure a line, so that a change shows in review. */
export const checkValuesText = ({ units, sources, checks, ...head }: CheckValues): string => {
  const top = JSON.stringify(head, null, 1).replace(/\n\}$/, "");
  const linesOf = (record: object): string =>
    Object.entries(record)
      .map(([key, value]) => `${JSON.stringify(key)}: ${JSON.stringify(value)}`)
      .join(",\n");
  const groups = checks.map(({ figures, ...check }) => {
    const lines = figures.map((figure) => JSON.stringify(figure)).join(",\n");
    return `${JSON.stringify(check).replace(/\}$/, "")},"figures":[\n${lines}\n]}`;
  });
  return `${top},\n "units": {\n${linesOf(units)}\n},\n "sources": {\n${linesOf(sources)}\n},\n "checks": [\n${groups.join(",\n")}\n]\n}\n`;
};
