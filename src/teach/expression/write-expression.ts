import { bindingOf, type Expression, type ExpressionNode, partOf } from "./expression.js";

/** How the parts of an expression are written. */
export interface Script {
  readonly number: (value: number) => string;
  readonly symbol: (name: string) => string;
  readonly inParentheses: (text: string) => string;
  readonly infix: (left: string, op: "+" | "-" | "*", right: string) => string;
  readonly over: (top: string, bottom: string) => string;
  readonly raised: (base: string, exponent: string) => string;
  readonly negated: (text: string) => string;
  readonly root: (text: string) => string;
  readonly called: (name: string, parts: readonly string[]) => string;
  /** Whether a fraction holds its parts together, so that they need no parentheses. */
  readonly stacked: boolean;
}

const quotient = (node: ExpressionNode, script: Script): string => {
  const [top, bottom] = [partOf(node, 0), partOf(node, 1)];
  if (script.stacked) return script.over(written(top, script), written(bottom, script));
  return script.over(within(top, 3, script), within(bottom, 4, script));
};

/** A part, in parentheses where it binds less than what is around it. */
const within = (tree: Expression, least: number, script: Script): string =>
  bindingOf(tree) < least ? script.inParentheses(written(tree, script)) : written(tree, script);

/** An expression, written in a script. */
export const written = (tree: Expression, script: Script): string => {
  if (typeof tree === "number") return script.number(tree);
  if (typeof tree === "string") return script.symbol(tree);
  const [a, b] = [partOf(tree, 0), partOf(tree, 1)];
  switch (tree.op) {
    case "+":
      return script.infix(within(a, 1, script), "+", within(b, 2, script));
    case "-":
      return script.infix(within(a, 1, script), "-", within(b, 3, script));
    case "*":
      return script.infix(within(a, 3, script), "*", within(b, 3, script));
    case "/":
      return quotient(tree, script);
    case "^":
      return script.raised(within(a, 6, script), script.stacked ? written(b, script) : within(b, 6, script));
    case "neg":
      return script.negated(within(a, 3, script));
    case "sqrt":
      return script.root(written(a, script));
    default:
      return script.called(
        tree.op,
        tree.parts.map((part) => written(part, script)),
      );
  }
};
