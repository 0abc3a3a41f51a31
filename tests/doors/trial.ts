import * as root from "../../src/index.js";

/** As a plain-JavaScript caller sees the library: nothing stops a wrong call before it runs. */
interface Loose {
  (...args: readonly unknown[]): Loose;
  readonly [name: string]: Loose;
}

export const all = root as unknown as Loose;

/**
 * What people write or do first. It gives the right figure, worked out by hand, or it is refused with words that name
 * what works; that way is then gone, and gives the figure.
 */
export interface FirstThing {
  readonly title: string;
  readonly run: () => unknown;
  /** What comes out: a figure, in its unit, or a text. */
  readonly gives?: Figure;
  /** What the refusal says, besides the code: each word stands in message, choices or suggestion. */
  readonly refused?: readonly string[];
  readonly way?: () => unknown;
  readonly wayGives?: Figure;
}

export type Figure = number | string | boolean | readonly [value: number, unit: string, of?: string];

export const {
  quantity: q,
  money,
  parseQuantity: parse,
  fertilizer,
} = all as unknown as Readonly<Record<"quantity" | "money" | "parseQuantity" | "fertilizer", Loose>>;
export const feed = root.fertilizer({
  id: "feed-a",
  analysis: "24-0-11",
  slowNitrogen: root.quantity(12, "% w/w", "N:slow/product"),
  package: root.quantity(50, "lb"),
});
export const nitrogen = { dimension: "mass/area", of: "N" };
export const product = { dimension: "mass/area", of: "product" };
export const bare = (dimension: string) => ({ dimension, of: "none" });
export const works = (title: string, run: () => unknown, gives: Figure): FirstThing => ({
  title,
  run,
  gives,
});
export const refused = (
  title: string,
  run: () => unknown,
  says: readonly string[],
  way: () => unknown,
  wayGives: Figure,
): FirstThing => ({ title, run, refused: says, way, wayGives });
/** A reader returns its problems: they are thrown here, to be looked at like any other. */
export const value = (text: unknown, expected: unknown) => {
  const reading = root.readQuantity(text, expected as never) as unknown as {
    readonly value: unknown;
    readonly problems: readonly root.Problem[];
  };
  if (reading.value === null) throw new root.RatewrightError(reading.problems);
  return reading.value;
};
export const typed = (text: unknown, expected: unknown, gives: Figure): FirstThing =>
  works(`types ${JSON.stringify(text)}`, () => value(text, expected), gives);
export const typedRefused = (
  text: unknown,
  expected: unknown,
  says: readonly string[],
  better: unknown,
  gives: Figure,
) =>
  refused(
    `types ${JSON.stringify(text)}`,
    () => value(text, expected),
    says,
    () => value(better, expected),
    gives,
  );
