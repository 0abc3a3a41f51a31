import { type Expression, partOf } from "./expression.js";
import { readEquation } from "./read-expression.js";
import { mathScript, plainScript, texScript } from "./scripts.js";
import { written } from "./write-expression.js";

/** What is rounded up, where all of an expression is. */
export const roundedUp = (tree: Expression): Expression | undefined =>
  typeof tree === "object" && tree.op === "ceil" ? partOf(tree, 0) : undefined;

/**
 * An equation as a line of text: `R = 100 * T / p` as `R = 100 × T ÷ p`, `n = ceil(M / B)` as `n = M ÷ B, rounded up`.
 *
 * @param equation - a symbol, `=`, and an expression with `+ - * / ^ ( )` and functions such as `sqrt`
 * @throws RatewrightError `text` for anything but such an equation
 *
 * @example
 * ```ts
 * import { equationText } from "ratewright/teach";
 * equationText("R = 100 * T / p"); // => "R = 100 × T ÷ p"
 * equationText("q_2 = q_1 * sqrt(P_2 / P_1)"); // => "q_2 = q_1 × √(P_2 ÷ P_1)"
 * equationText("n = ceil(M / B)"); // => "n = M ÷ B, rounded up"
 * ```
 */
export const equationText = (equation: string): string => {
  const { symbol, tree } = readEquation(equation);
  const inside = roundedUp(tree);
  const line = `${plainScript.symbol(symbol)} = ${written(inside ?? tree, plainScript)}`;
  return inside === undefined ? line : `${line}, rounded up`;
};

/**
 * An equation as TeX.
 *
 * @throws RatewrightError `text` for anything but an equation, see {@link equationText}
 *
 * @example
 * ```ts
 * import { equationTex } from "ratewright/teach";
 * equationTex("R = 100 * T / p"); // => "R = \\frac{100 \\times T}{p}"
 * ```
 */
export const equationTex = (equation: string): string => {
  const { symbol, tree } = readEquation(equation);
  return `${texScript.symbol(symbol)} = ${written(tree, texScript)}`;
};

/**
 * An equation as MathML, which a browser shows as it is.
 *
 * @throws RatewrightError `text` for anything but an equation, see {@link equationText}
 *
 * @example
 * ```ts
 * import { equationMathML } from "ratewright/teach";
 * equationMathML("t = L / v").startsWith("<math"); // => true
 * equationMathML("t = L / v").includes("<mfrac><mi>L</mi><mi>v</mi></mfrac>"); // => true
 * ```
 */
export const equationMathML = (equation: string): string => {
  const { symbol, tree } = readEquation(equation);
  const line = `<mrow>${mathScript.symbol(symbol)}<mo>=</mo>${written(tree, mathScript)}</mrow>`;
  return `<math xmlns="http://www.w3.org/1998/Math/MathML" display="block">${line}</math>`;
};
