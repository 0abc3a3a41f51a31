import { described, hasOwn } from "../../quantity/house.js";
import { fail, outOfRange } from "../../quantity/index.js";
import { type Expression, type FunctionName, functionTable } from "./expression.js";

/** An equation, read: the symbol that it gives, and what that is. */
export interface Equation {
  readonly symbol: string;
  readonly tree: Expression;
}

/** Longer than any equation of a handbook, and short enough to read whatever is in it. */
const longestEquation = 1000;

const token = /\s*([A-Za-z][A-Za-z0-9_]*|\d+(?:\.\d+)?(?:e[+-]?\d+)?|[-+*/^(),])/y;

/** The words, numbers and signs of a text, in order. */
const tokensOf = (text: string): string[] => {
  const found: string[] = [];
  token.lastIndex = 0;
  while (text.slice(token.lastIndex).trim() !== "") {
    const at = token.lastIndex;
    const match = token.exec(text);
    if (match === null)
      return fail(
        "text",
        "equation",
        text.slice(at, at + 20),
        "numbers, symbols, commas, brackets and + - * / ^",
      );
    found.push(match[1] as string);
  }
  return found;
};

class Reading {
  private at = 0;
  private readonly tokens: readonly string[];

  constructor(text: string) {
    this.tokens = tokensOf(text);
  }

  whole(): Expression {
    const tree = this.sum();
    return this.at < this.tokens.length ? this.refused() : tree;
  }

  private refused(): never {
    return fail("text", "equation", this.tokens.slice(this.at).join(" "), "an operation, or the end");
  }

  private takes(...signs: readonly string[]): string | undefined {
    const next = this.tokens[this.at];
    if (next === undefined || !signs.includes(next)) return undefined;
    this.at += 1;
    return next;
  }

  private sum(): Expression {
    let left = this.product();
    for (let sign = this.takes("+", "-"); sign !== undefined; sign = this.takes("+", "-"))
      left = { op: sign as "+" | "-", parts: [left, this.product()] };
    return left;
  }

  private product(): Expression {
    let left = this.signed();
    for (let sign = this.takes("*", "/"); sign !== undefined; sign = this.takes("*", "/"))
      left = { op: sign as "*" | "/", parts: [left, this.signed()] };
    return left;
  }

  private signed(): Expression {
    return this.takes("-") === undefined ? this.power() : { op: "neg", parts: [this.signed()] };
  }

  private power(): Expression {
    const base = this.plain();
    return this.takes("^") === undefined ? base : { op: "^", parts: [base, this.signed()] };
  }

  private plain(): Expression {
    if (this.takes("(") !== undefined) {
      const inside = this.sum();
      return this.takes(")") === undefined ? this.refused() : inside;
    }
    const word = this.tokens[this.at];
    if (word === undefined || !/^[A-Za-z\d]/.test(word)) return this.refused();
    this.at += 1;
    if (/^\d/.test(word)) return Number(word);
    if (this.takes("(") === undefined) return word;
    if (!hasOwn(functionTable, word)) return fail("text", "equation", word, "a function of equations");
    const parts = [this.sum()];
    while (this.takes(",") !== undefined) parts.push(this.sum());
    return this.takes(")") === undefined ? this.refused() : { op: word as FunctionName, parts };
  }
}

/** Reads `R = 100 * T / p`: `*` is written, `^` binds to the right, and a minus binds less than `^`. */
export const readEquation = (text: string): Equation => {
  if (typeof text !== "string") return fail("type", "equation", text, "a text, such as R = 100 * T / p");
  if (text.length > longestEquation)
    return outOfRange("equation", described(`${text.length} signs`), {
      max: longestEquation,
      count: "characters",
    });
  const [symbol = "", right = "", ...more] = text.split("=");
  if (right === "" || more.length > 0) return fail("text", "equation", text, "a symbol = an expression");
  return { symbol: symbol.trim(), tree: new Reading(right).whole() };
};
