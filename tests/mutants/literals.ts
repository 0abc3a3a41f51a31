import ts from "typescript";

// The numbers that stand in the source, each with its place and with what kind of number it is.

/** Why a number is not put to the test: no published figure can depend on it to one part in ten thousand. */
export type Excluded =
  | "0 or 1"
  | "place in a list, a text or a round of a loop"
  | "count, code of a letter, or member of a set"
  | "digits or tolerance"
  | "bound of an input, a list or a text"
  | "year, version or page"
  | "figure that a problem draws, or its range: a choice of the lesson";

/** One number of the source. */
export interface Literal {
  readonly file: string;
  readonly line: number;
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** Whether it stands inside a text. */
  readonly inText?: boolean;
  readonly excluded?: Excluded;
}

const counting = new Set(
  "slice substring at charCodeAt padStart padEnd repeat toFixed toPrecision toString splice flat parseInt subarray fill".split(
    " ",
  ),
);
const bounds =
  /^(at ?least|at ?most|above|below|least|most|lowest|highest|min|max|from|to|range|limit|safe)$|longest|deepest|[mM]ost[A-Z]|^most|[lL]ength|[bB]ound|shortest/;
const digits = /[dD]igits|[tT]olerance|guard|epsilon|places|decimals|significant|steps|rounds|tries/;
const dates = /^(year|version|page|edition|pages|table|published|read)$/;

/** The names that a number stands under, from the nearest outwards, up to the statement. */
const namesOf = (node: ts.Node): readonly string[] => {
  const names: string[] = [];
  for (let at = node.parent; at !== undefined && !ts.isSourceFile(at); at = at.parent) {
    if (ts.isPropertyAssignment(at) || ts.isVariableDeclaration(at)) names.push(at.name.getText());
    if (ts.isFunctionLike(at) || ts.isBlock(at)) break;
  }
  return names;
};

const calledBy = (node: ts.Node): string => {
  for (let at = node.parent; at !== undefined && !ts.isFunctionLike(at); at = at.parent) {
    if (!ts.isCallExpression(at)) continue;
    const called = at.expression;
    return ts.isPropertyAccessExpression(called) ? called.name.text : called.getText();
  }
  return "";
};

const isPlace = (node: ts.Node): boolean => {
  const { parent } = node;
  return (
    (ts.isElementAccessExpression(parent) && parent.argumentExpression === node) ||
    counting.has(calledBy(node)) ||
    (ts.isBinaryExpression(parent) && /\.length$/.test(`${parent.left.getText()}`))
  );
};

const compared =
  /(code|length|size|count|depth|distance|away|tries|parts|row|column|level|index|dot|month|day|year)$/i;

/** Whether a whole number is held beside a count or a code, or is one of a set: one part in ten thousand off it is never met. */
const isCount = (node: ts.NumericLiteral): boolean => {
  const { parent } = node;
  if (!Number.isInteger(Number(node.text))) return false;
  if (ts.isArrayLiteralExpression(parent)) return ts.isNewExpression(parent.parent);
  if (!ts.isBinaryExpression(parent)) return false;
  const sign = parent.operatorToken.getText();
  if (sign === "===" || sign === "!==") return true;
  return (
    /^[<>]=?$/.test(sign) && compared.test((parent.left === node ? parent.right : parent.left).getText())
  );
};

/** Whether a number is the bound that a reader of inputs holds an input to. */
const isBound = (node: ts.Node, names: readonly string[]): boolean =>
  (/^(expect|read|allOf|number|within|between|clamped|checked|outOfRange|rangeProblem)/.test(
    calledBy(node),
  ) &&
    (names.length === 0 || bounds.test(names[0] ?? ""))) ||
  (names.length > 0 && /longest|deepest|[mM]ost[A-Z]|^most|[lL]ength|[bB]ounds?$/.test(names.at(-1) ?? ""));

/** Whether a list is the pair of a row that tells an input: name, symbol, words, substance, units, pair. */
const isRealisticPair = (node: ts.Node): boolean => {
  if (!ts.isArrayLiteralExpression(node) || node.elements.length !== 2) return false;
  if (ts.isParameter(node.parent)) return node.parent.name.getText() === "range";
  const row = ts.isAsExpression(node.parent) ? node.parent.parent : node.parent;
  return ts.isArrayLiteralExpression(row) && row.elements.length >= 6 && row.elements.indexOf(node) === 5;
};

/**
 * Whether a number is one that a problem draws (`draw.step(2, 6, 0.25)`), bounds what it may come to (`within`), or is one
 * of the pair between which a catalogue entry puts a realistic input. Any other would make as true a problem.
 */
const isOfLesson = (node: ts.Node, file: string): boolean => {
  if (!file.startsWith("src/teach/")) return false;
  if (isRealisticPair(ts.isPrefixUnaryExpression(node.parent) ? node.parent.parent : node.parent))
    return true;
  for (let at = node.parent; at !== undefined && !ts.isBlock(at); at = at.parent) {
    if (ts.isCallExpression(at) && /^draw\.(?:int|step|pick)$/.test(at.expression.getText())) return true;
    if (!ts.isPropertyAssignment(at)) continue;
    if (at.name.getText() === "within") return true;
    if (at.name.getText() === "inputs") return ts.isArrayLiteralExpression(node.parent);
  }
  return false;
};

const excludedOf = (node: ts.NumericLiteral, file: string): Excluded | undefined => {
  const value = Number(node.text);
  const names = namesOf(node);
  if (value === 0 || value === 1) return "0 or 1";
  if (isOfLesson(node, file)) return "figure that a problem draws, or its range: a choice of the lesson";
  if (isPlace(node)) return "place in a list, a text or a round of a loop";
  if (
    names.some((name) => dates.test(name)) ||
    (value > 1800 && value < 2100 && Number.isInteger(value) && names.includes("source"))
  ) {
    return "year, version or page";
  }
  if (isCount(node)) return "count, code of a letter, or member of a set";
  if (value <= 1e-6 || names.some((name) => digits.test(name))) return "digits or tolerance";
  if (isBound(node, names)) return "bound of an input, a list or a text";
  return undefined;
};

/** Whether a number is a value that a running program computes with, not a type, a key or an example. */
const computesWith = (node: ts.Node): node is ts.NumericLiteral =>
  ts.isNumericLiteral(node) &&
  !ts.isLiteralTypeNode(node.parent) &&
  !ts.isEnumMember(node.parent) &&
  !(ts.isPropertyAssignment(node.parent) && node.parent.name === node) &&
  !(ts.isPrefixUnaryExpression(node.parent) && ts.isLiteralTypeNode(node.parent.parent));

/** A text that is a row of numbers, and the sizes of the units, `"1/16 lb"`. */
const isRowOfNumbers = (node: ts.Node, file: string): node is ts.StringLiteral =>
  ts.isStringLiteral(node) &&
  !ts.isLiteralTypeNode(node.parent) &&
  !(ts.isPropertyAssignment(node.parent) && node.parent.name === node) &&
  (/^[\d.]+([\s,;]+[\d.]+)+$/.test(node.text) ||
    (file.endsWith("unit/base-units.ts") &&
      ts.isPropertyAssignment(node.parent) &&
      /^[\d./ ]*\d/.test(node.text)));

/** The numbers inside a text, each a literal of its own. */
const numbersInText = (node: ts.StringLiteral, file: string, line: number): readonly Literal[] =>
  [...node.text.matchAll(/\d+(\.\d+)?(?![\d.]*[a-z]+\d)/g)]
    // `cm2` and `1000 ft2` are names of units
    .filter(({ index }) => !/[a-z]$/.test(node.text.slice(0, index)))
    .map(({ 0: text, index }) => ({
      file,
      line,
      start: node.getStart() + 1 + index,
      end: node.getStart() + 1 + index + text.length,
      text,
      inText: true,
      ...(Number(text) === 1 || Number(text) === 0 ? { excluded: "0 or 1" as const } : {}),
    }));

/** Every number of a file, in the order in which they stand. */
export const literalsOf = (file: string, text: string): readonly Literal[] => {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Literal[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isTypeNode(node) && !ts.isExpressionWithTypeArguments(node)) return;
    if (computesWith(node)) {
      const start = node.getStart();
      const line = source.getLineAndCharacterOfPosition(start).line + 1;
      const excluded = excludedOf(node, file);
      found.push({
        file,
        line,
        start,
        end: node.end,
        text: node.getText(),
        ...(excluded ? { excluded } : {}),
      });
    }
    if (isRowOfNumbers(node, file)) {
      const line = source.getLineAndCharacterOfPosition(node.getStart()).line + 1;
      found.push(...numbersInText(node, file, line));
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};

/** The text of a file with every number that is put to the test read from a list, by its index there. */
export const withReadNumbers = (text: string, literals: readonly Literal[], first: number): string => {
  let out = "";
  let done = 0;
  literals.forEach(({ start, end, excluded, inText }, n) => {
    if (excluded !== undefined) return;
    const read = inText ? `"+__K[${first + n}]+"` : `(__K[${first + n}])`;
    out += `${text.slice(done, start)}${read}`;
    done = end;
  });
  return out + text.slice(done);
};
