// Collects the tests of a room instead of running them, so that they can be run many times in one process without being
// loaded again. Only what the tests of the rooms use of the test runner is here.
import { chai, JestAsymmetricMatchers, JestChaiExpect, JestExtend } from "@vitest/expect";

/** One test, to be run as often as wanted. */
export interface Collected {
  readonly name: string;
  /** Where it stands. */
  readonly file: string;
  readonly run: () => unknown;
}

type Body = (...given: readonly never[]) => unknown;

chai.use(JestExtend);
chai.use(JestChaiExpect);
chai.use(JestAsymmetricMatchers);
/** The same `expect` as in the test runner. */
export const expect: unknown = Object.assign(
  (value: unknown, message?: string) => chai.expect(value, message),
  chai.expect,
);

/** What is collected, for the one who loads the tests, and the file that is loaded. */
export interface Suite {
  readonly collected: Collected[];
  file: string;
  /** Called once what the tests import is loaded, before the first of them. */
  readonly sourcesLoaded?: () => void;
}

const suite = (globalThis as unknown as { readonly __suite: Suite }).__suite;

let within: readonly string[] = [];

const bodyOf = (given: readonly unknown[]): Body => given.find((one) => typeof one === "function") as Body;

const add = (name: string, ...given: readonly unknown[]): void => {
  const body = bodyOf(given);
  suite.collected.push({ name: [...within, name].join(" > "), file: suite.file, run: () => body() });
};

const group = (name: string, ...given: readonly unknown[]): void => {
  const outer = within;
  within = [...outer, name];
  try {
    bodyOf(given)();
  } finally {
    within = outer;
  }
};

const each =
  (one: (name: string, body: Body) => void) =>
  (rows: readonly unknown[]) =>
  (name: string, ...given: readonly unknown[]): void => {
    const body = bodyOf(given) as (...row: readonly unknown[]) => unknown;
    rows.forEach((row, n) => {
      one(`${name} [${n}]`, () => (Array.isArray(row) ? body(...row) : body(row)));
    });
  };

/** As in the test runner. */
export const test: unknown = Object.assign(add, {
  each: each(add),
  runIf: (holds: boolean) => (holds ? add : () => {}),
});
/** As in the test runner. */
export const it: unknown = Object.assign((...given: Parameters<typeof add>) => add(...given), {
  each: each(add),
});
/** As in the test runner. */
export const describe: unknown = Object.assign(group, { each: each(group) });
/** What is set before the tests of a room, such as how much of an error is written down, holds for all of them. */
export const beforeAll = (body: () => void): void => body();
/** Here tests run again and again, and nothing comes after all of them. */
export const afterAll = (_: () => void): void => {};
/** The matrix of spoilt calls asks for a second copy of the package elsewhere; here there is one. */
export const vi = { resetModules: (): void => {} } as const;
