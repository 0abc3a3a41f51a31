// Classes, their methods, and functions that hang in results: what a caller calls beside the exported functions.
import type { AnyFunction, Modules } from "./calls.js";

/** Something that a caller calls: how, and calls that work. */
export interface Called {
  readonly call: AnyFunction;
  readonly given: readonly (readonly unknown[])[];
}

/** The calls of a method by its name, for each object on which it is called. */
type MethodCalls = Readonly<Record<string, readonly (readonly unknown[])[]>>;

interface Instance {
  readonly methods: MethodCalls;
  readonly self: unknown;
}

/** The names of the methods of a class, getters too. */
export const methodNames = (made: AnyFunction): readonly string[] =>
  Object.getOwnPropertyNames(made.prototype as object)
    .filter((name) => name !== "constructor")
    .sort();

/** The classes that the package exports, by name. */
export const classesOf = (modules: Modules): ReadonlyMap<string, AnyFunction> =>
  new Map(
    Object.values(modules)
      .flatMap((module) => Object.entries(module))
      .filter(
        (entry): entry is [string, AnyFunction] =>
          typeof entry[1] === "function" && /^class[\s{]/.test(Function.prototype.toString.call(entry[1])),
      ),
  );

/** Constructors and methods with calls that work. */
export const methodsOf = (modules: Modules): ReadonlyMap<string, Called> => {
  const { quantity } = modules.ratewright as { readonly quantity: AnyFunction };
  const classes = classesOf(modules);
  const [feed, area, warm] = [quantity(3, "lb", "product"), quantity(2, "acre"), quantity(20, "°C")];
  const instances: readonly Instance[] = [
    {
      self: feed,
      methods: {
        in: [["kg"]],
        plus: [[feed]],
        minus: [[feed]],
        times: [[2]],
        per: [[area], [feed]],
        dividedBy: [[2]],
        compare: [[feed]],
        toJSON: [[]],
        toString: [[]],
        valueOf: [[]],
      },
    },
    { self: quantity(3, "lb/acre", "N"), methods: { times: [[area]] } },
    {
      self: warm,
      methods: {
        in: [["°F"]],
        plus: [[quantity(3, "°C diff")]],
        minus: [[quantity(3, "°F diff")]],
        compare: [[warm]],
      },
    },
  ];
  const called = new Map<string, Called>();
  for (const { self, methods } of instances) {
    for (const [name, given] of Object.entries(methods)) {
      const method = (self as Readonly<Record<string, AnyFunction>>)[name];
      const known = `Quantity#${name}`;
      const place = called.has(known) ? `${known}(${(self as { unit: string }).unit})` : known;
      called.set(place, { call: (...args) => method?.call(self, ...args), given });
    }
  }
  const constructors: Readonly<Record<string, readonly (readonly unknown[])[]>> = {
    Quantity: [[3, "lb", "N", "mass"]],
    RatewrightError: [[{ code: "range", path: "width", got: "0", expected: "more than 0" }]],
  };
  for (const [name, made] of classes)
    called.set(`new ${name}`, {
      call: (...args) => Reflect.construct(made, args) as unknown,
      given: constructors[name] ?? [],
    });
  return called;
};

/** Every function that hangs in a result, by its place, at most so deep. */
export const functionsIn = (
  value: unknown,
  at: string,
  deepest = 6,
): readonly (readonly [string, AnyFunction])[] => {
  if (typeof value === "function") return [[at, value as AnyFunction]];
  if (typeof value !== "object" || value === null || ArrayBuffer.isView(value) || deepest === 0) return [];
  if (Array.isArray(value))
    return value.slice(0, 2).flatMap((item) => functionsIn(item, `${at}[]`, deepest - 1));
  return Object.entries(value).flatMap(([name, inner]) => functionsIn(inner, `${at}.${name}`, deepest - 1));
};
