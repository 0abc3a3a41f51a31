/** The functions that an equation may use. Angles are in radians. */
export type FunctionName =
  | "sqrt"
  | "exp"
  | "ln"
  | "log10"
  | "sin"
  | "cos"
  | "tan"
  | "asin"
  | "acos"
  | "atan"
  | "abs"
  | "ceil"
  | "floor"
  | "min"
  | "max";

/**
 * An expression as a tree of plain data: a number, a symbol, or an operation with its parts. `"-"` and `"/"` and `"^"`
 * have two parts, `"neg"` one, `"+"` and `"*"` two, a function as many as it takes.
 */
export type Expression = number | string | ExpressionNode;

/** An operation of an {@link Expression}. */
export interface ExpressionNode {
  readonly op: "+" | "-" | "*" | "/" | "^" | "neg" | FunctionName;
  readonly parts: readonly Expression[];
}

/** A number that misses a whole one by less than 1e-12 of it is that one: what is left of 0.1 + 0.2. */
const nearWhole = (x: number): number | undefined => {
  const whole = Math.round(x);
  return Math.abs(x - whole) <= 1e-12 * Math.abs(whole) ? whole : undefined;
};

/** Rounded up to a whole number: 6.45 bags are 7, and 5.000000000000001 are 5. */
export const countUp = (x: number): number => nearWhole(x) ?? Math.ceil(x);

/** Rounded down to a whole number. */
export const countDown = (x: number): number => nearWhole(x) ?? Math.floor(x);

/** What a function does to its numbers. */
export const functionTable: Readonly<Record<FunctionName, (...numbers: readonly number[]) => number>> = {
  sqrt: (x = 0) => Math.sqrt(x),
  exp: (x = 0) => Math.exp(x),
  ln: (x = 0) => Math.log(x),
  log10: (x = 0) => Math.log10(x),
  sin: (x = 0) => Math.sin(x),
  cos: (x = 0) => Math.cos(x),
  tan: (x = 0) => Math.tan(x),
  asin: (x = 0) => Math.asin(x),
  acos: (x = 0) => Math.acos(x),
  atan: (x = 0) => Math.atan(x),
  abs: (x = 0) => Math.abs(x),
  ceil: (x = 0) => countUp(x),
  floor: (x = 0) => countDown(x),
  min: (...numbers) => Math.min(...numbers),
  max: (...numbers) => Math.max(...numbers),
};

/** The parts of an operation by place; a tree that was read always has them. */
export const partOf = (node: ExpressionNode, place: number): Expression => node.parts[place] ?? 0;

/** What an expression comes to for numbers by symbol; `pi` is known. */
export const numberOf = (tree: Expression, numbers: ReadonlyMap<string, number>): number => {
  if (typeof tree === "number") return tree;
  if (typeof tree === "string") return tree === "pi" ? Math.PI : (numbers.get(tree) ?? Number.NaN);
  const values = tree.parts.map((part) => numberOf(part, numbers));
  const [a = 0, b = 0] = values;
  switch (tree.op) {
    case "+":
      return a + b;
    case "-":
      return a - b;
    case "*":
      return a * b;
    case "/":
      return a / b;
    case "^":
      return a ** b;
    case "neg":
      return -a;
    default:
      return functionTable[tree.op](...values);
  }
};

/** How tightly an operation binds: parts that bind less stand in parentheses. */
export const bindingOf = (tree: Expression): number => {
  if (typeof tree !== "object") return typeof tree === "number" && tree < 0 ? 2 : 9;
  return { "+": 1, "-": 1, "*": 3, "/": 3, neg: 2, "^": 5 }[tree.op as "+"] ?? 9;
};
