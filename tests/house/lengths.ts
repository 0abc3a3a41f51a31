import ts from "typescript";

/** A function of a file: what it is called, the line it starts on, and how many lines it takes. */
export interface FunctionLength {
  readonly name: string;
  readonly line: number;
  readonly lines: number;
}

/** The number of lines of a text; the line break at its end begins no further line. */
export const lineCount = (text: string): number => text.replace(/\n$/, "").split("\n").length;

const nameOf = (node: ts.Node): string => {
  for (let at: ts.Node | undefined = node; at !== undefined; at = at.parent) {
    const named = (at as { readonly name?: ts.Node }).name;
    if (named !== undefined && ts.isIdentifier(named)) return named.text;
  }
  return "(no name)";
};

/** A `describe` groups tests; it is a chapter of a file rather than a function with a length. */
const isGroupOfTests = (node: ts.Node): boolean =>
  node.parent !== undefined &&
  ts.isCallExpression(node.parent) &&
  /^describe\b/.test(node.parent.expression.getText());

/** A line on which a declaration begins or ends: within a function all lines are indented, or stand in a text. */
const atTheEdge = /^(?:[}\])/]|(?:export|import|const|let|async|function|class|describe|it|test|await)\b)/;

/** Whether a file may hold a function of more than so many lines: a look at its lines takes a tenth of reading it as code. */
export const mayHoldLonger = (text: string, lines: number): boolean => {
  let run = 0;
  for (const line of text.split("\n")) {
    run = atTheEdge.test(line) ? 0 : run + 1;
    if (run > lines - 2) return true;
  }
  return false;
};

/** Every function with a body in a file, from its first line to its last, the groups of tests left out. */
export const functionLengths = (path: string, text: string): FunctionLength[] => {
  const languageVersion = ts.ScriptTarget.Latest;
  const jsDocParsingMode = ts.JSDocParsingMode.ParseNone;
  const source = ts.createSourceFile(path, text, { languageVersion, jsDocParsingMode }, true);
  const lineOf = (position: number): number => source.getLineAndCharacterOfPosition(position).line + 1;
  const found: FunctionLength[] = [];
  const visit = (node: ts.Node): void => {
    const body = ts.isFunctionLike(node) ? (node as { readonly body?: ts.Node }).body : undefined;
    if (body !== undefined && !isGroupOfTests(node)) {
      const line = lineOf(node.getStart());
      found.push({ name: nameOf(node), line, lines: lineOf(node.end) - line + 1 });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
};
