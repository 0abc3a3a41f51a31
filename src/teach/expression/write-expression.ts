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
  /** Whether an exponent stands above the line, so that it needs no parentheses. */
  readonly superscript: boolean;
  /** How the two parts of a fraction are written; there where a fraction stands one above the other. */
  readonly inFraction?: Script;
  /** The terms of a sum too long for a line, one below the other; the sign of each stands before it. */
  readonly lines?: (terms: readonly string[]) => string;
}

/** Signs that fit beside one another on a sheet of paper. */
const longestLine = 80;
/** Signs of a line of a product that takes several. */
const fullLine = 55;

const isNode = (tree: Expression): tree is ExpressionNode => typeof tree === "object";

/** A minus before the first factor stands before the product: -a × b, and not (-a) × b. */
const lifted = (tree: Expression): Expression => {
  if (!isNode(tree)) return tree;
  const parts = tree.parts.map(lifted);
  const [first, second] = parts;
  return (tree.op === "*" || tree.op === "/") && first !== undefined && isNode(first) && first.op === "neg"
    ? { op: "neg", parts: [{ op: tree.op, parts: [partOf(first, 0), second ?? 1] }] }
    : { op: tree.op, parts };
};

/** What stands above and what below the line of a chain of products and quotients: a / b / c is a over b × c. */
const fractionOf = (tree: Expression): { readonly above: Expression[]; readonly below: Expression[] } => {
  if (!isNode(tree) || (tree.op !== "*" && tree.op !== "/")) return { above: [tree], below: [] };
  const { above, below } = fractionOf(partOf(tree, 0));
  const last = partOf(tree, 1);
  return tree.op === "*" ? { above: [...above, last], below } : { above, below: [...below, last] };
};

const product = (factors: readonly Expression[]): Expression =>
  factors.reduce((left, right) => ({ op: "*", parts: [left, right] }));

/** The factors of a product in rows, as many in each as a line takes. */
const rowsOf = (factors: readonly Expression[]): readonly Expression[] => {
  const rows: Expression[][] = [];
  for (const factor of factors) {
    const last = rows[rows.length - 1];
    if (last !== undefined && plainLength(product([...last, factor])) <= fullLine) last.push(factor);
    else rows.push([factor]);
  }
  return rows.map(product);
};

/** A product or a quotient. */
const chain = (tree: ExpressionNode, script: Script): string => {
  const { inFraction } = script;
  const { above, below } = fractionOf(tree);
  if (inFraction !== undefined && below.length > 0)
    return script.over(put(product(above), inFraction), put(product(below), inFraction));
  if (script.lines !== undefined && below.length === 0 && plainLength(tree) > longestLine) {
    const rows = rowsOf(above);
    if (rows.length > 1 && Math.max(...rows.map(plainLength)) < 0.75 * plainLength(tree))
      return script.lines(
        rows.map((row, n) => (n === 0 ? put(row, script) : script.infix("", "*", within(row, 3, script)))),
      );
  }
  const [a, b] = [partOf(tree, 0), partOf(tree, 1)];
  return tree.op === "*"
    ? script.infix(within(a, 3, script), "*", within(b, isQuotient(b) ? 4 : 3, script))
    : script.over(within(a, 3, script), within(b, 4, script));
};

/** a × (b ÷ c) keeps its parentheses on a line: some read a × b ÷ c otherwise. */
const isQuotient = (tree: Expression): boolean => isNode(tree) && tree.op === "/";

const plainLength = (tree: Expression): number =>
  isNode(tree)
    ? tree.parts.reduce<number>((sum, part) => sum + plainLength(part), tree.op.length + 2)
    : String(tree).length;

/** The terms of a sum with their signs. */
const termsOf = (tree: Expression, script: Script): readonly string[] => {
  if (!isNode(tree) || (tree.op !== "+" && tree.op !== "-")) return [within(tree, 1, script)];
  const last = within(partOf(tree, 1), tree.op === "+" ? 2 : 3, script);
  return [...termsOf(partOf(tree, 0), script), script.infix("", tree.op, last)];
};

/** The longest term of a sum. */
const longestTerm = (tree: Expression): number =>
  isNode(tree) && (tree.op === "+" || tree.op === "-")
    ? Math.max(longestTerm(partOf(tree, 0)), plainLength(partOf(tree, 1)))
    : plainLength(tree);

/** Whether a sum is too long for a line, and shorter on several: not where one term is nearly all of it. */
const isLong = (tree: Expression): boolean =>
  plainLength(tree) > longestLine && longestTerm(tree) < 0.75 * plainLength(tree);

const sum = (tree: ExpressionNode, script: Script): string => {
  if (script.lines !== undefined && isLong(tree)) return script.lines(termsOf(tree, script));
  return script.infix(
    within(partOf(tree, 0), 1, script),
    tree.op as "+" | "-",
    within(partOf(tree, 1), tree.op === "+" ? 2 : 3, script),
  );
};

/** A part, in parentheses where it binds less than what is around it. */
const within = (tree: Expression, least: number, script: Script): string =>
  bindingOf(tree) < least ? script.inParentheses(put(tree, script)) : put(tree, script);

const put = (tree: Expression, script: Script): string => {
  if (typeof tree === "number") return script.number(tree);
  if (typeof tree === "string") return script.symbol(tree);
  const [a, b] = [partOf(tree, 0), partOf(tree, 1)];
  switch (tree.op) {
    case "+":
    case "-":
      return sum(tree, script);
    case "*":
    case "/":
      return chain(tree, script);
    case "^":
      return script.raised(within(a, 6, script), script.superscript ? put(b, script) : within(b, 6, script));
    case "neg":
      return script.negated(within(a, 3, script));
    case "sqrt":
      return script.root(put(a, script));
    default:
      return script.called(
        tree.op,
        tree.parts.map((part) => put(part, script)),
      );
  }
};

/** An expression, written in a script. */
export const written = (tree: Expression, script: Script): string => put(lifted(tree), script);
