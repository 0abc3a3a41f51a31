import type { Script } from "./write-expression.js";

const greek: Readonly<Record<string, string>> = {
  alpha: "α",
  beta: "β",
  gamma: "γ",
  delta: "δ",
  Delta: "Δ",
  epsilon: "ε",
  eta: "η",
  theta: "θ",
  lambda: "λ",
  mu: "µ",
  pi: "π",
  rho: "ρ",
  sigma: "σ",
  tau: "τ",
  phi: "φ",
  omega: "ω",
};

/** The letter of a symbol and what stands below it: `theta_fc` is θ and fc. */
const parted = (name: string): readonly [letter: string, below: string | undefined] => {
  const at = name.indexOf("_");
  return at < 0 ? [name, undefined] : [name.slice(0, at), name.slice(at + 1).replace(/_/g, ",")];
};

/** A symbol as a line of text has it: `theta_fc` as `θ_fc`. */
export const symbolText = (name: string): string => {
  const [letter, below] = parted(name);
  return (greek[letter] ?? letter) + (below === undefined ? "" : `_${below}`);
};

const plainNumber = (value: number): string => {
  const text = String(value);
  return text.includes("e") ? text.replace(/e\+?(-?\d+)/, " × 10^$1") : text;
};

/** Plain text for a line that is read: `R = 100 × T ÷ p`. */
export const plainScript: Script = {
  number: plainNumber,
  symbol: symbolText,
  inParentheses: (text) => `(${text})`,
  infix: (left, op, right) => `${left} ${op === "*" ? "×" : op === "-" ? "−" : op} ${right}`,
  over: (top, bottom) => `${top} ÷ ${bottom}`,
  raised: (base, exponent) => `${base}^${exponent}`,
  negated: (text) => `−${text}`,
  root: (text) => `√(${text})`,
  called: (name, parts) => `${name}(${parts.join(", ")})`,
  superscript: false,
};

const texSymbol = (name: string): string => {
  const [letter, below] = parted(name);
  const main =
    greek[letter] !== undefined ? `\\${letter}` : letter.length > 1 ? `\\mathrm{${letter}}` : letter;
  return below === undefined ? main : `${main}_{\\mathrm{${below}}}`;
};

const texNames = new Set(["exp", "ln", "sin", "cos", "tan", "min", "max"]);
const texName = (name: string): string => {
  if (name === "log10") return "\\log_{10}";
  if (/^a(sin|cos|tan)$/.test(name)) return `\\arc${name.slice(1)}`;
  return texNames.has(name) ? `\\${name}` : `\\operatorname{${name}}`;
};
const texCalled = (name: string, parts: readonly string[]): string => {
  const inside = parts.join(", ");
  if (name === "ceil") return `\\left\\lceil ${inside} \\right\\rceil`;
  if (name === "floor") return `\\left\\lfloor ${inside} \\right\\rfloor`;
  if (name === "abs") return `\\left| ${inside} \\right|`;
  return `${texName(name)}\\left(${inside}\\right)`;
};

const texLine: Script = {
  number: (value) => plainNumber(value).replace(/ × 10\^(-?\d+)/, " \\times 10^{$1}"),
  symbol: texSymbol,
  inParentheses: (text) => `\\left(${text}\\right)`,
  infix: (left, op, right) => `${left} ${op === "*" ? "\\times" : op} ${right}`,
  over: (top, bottom) => `${top} / ${bottom}`,
  raised: (base, exponent) => `${base}^{${exponent}}`,
  negated: (text) => `-${text}`,
  root: (text) => `\\sqrt{${text}}`,
  called: texCalled,
  superscript: true,
  lines: (terms) =>
    `\\begin{aligned} ${terms.map((term) => `& ${term.trimStart()}`).join(" \\\\ ")} \\end{aligned}`,
};

/** TeX, for what sets mathematics. A fraction within a fraction stands on the line. */
export const texScript: Script = {
  ...texLine,
  over: (top, bottom) => `\\frac{${top}}{${bottom}}`,
  inFraction: texLine,
};

const row = (...parts: readonly string[]): string => `<mrow>${parts.join("")}</mrow>`;
const sign = (text: string): string => `<mo>${text}</mo>`;
const mathSymbol = (name: string): string => {
  const [letter, below] = parted(name);
  const main = `<mi>${greek[letter] ?? letter}</mi>`;
  return below === undefined ? main : `<msub>${main}<mtext>${below}</mtext></msub>`;
};
const fences: Readonly<Record<string, readonly [string, string]>> = {
  ceil: ["⌈", "⌉"],
  floor: ["⌊", "⌋"],
  abs: ["|", "|"],
};
const mathCalled = (name: string, parts: readonly string[]): string => {
  const inside = parts.flatMap((part, n) => (n === 0 ? [part] : [sign(","), part]));
  const [open, close] = fences[name] ?? ["(", ")"];
  const inner = row(sign(open), ...inside, sign(close));
  if (fences[name] !== undefined) return inner;
  const called = name === "log10" ? "<msub><mi>log</mi><mn>10</mn></msub>" : `<mi>${name}</mi>`;
  return row(called, sign("\u2061"), inner);
};
const mathNumber = (value: number): string => {
  const [digits = "", exponent] = plainNumber(value).split(" × 10^");
  if (exponent === undefined) return `<mn>${digits}</mn>`;
  return row(`<mn>${digits}</mn>`, sign("×"), `<msup><mn>10</mn><mn>${exponent}</mn></msup>`);
};

const mathLine: Script = {
  number: mathNumber,
  symbol: mathSymbol,
  inParentheses: (text) => row(sign("("), text, sign(")")),
  infix: (left, op, right) => row(left, sign(op === "*" ? "×" : op === "-" ? "−" : op), right),
  over: (top, bottom) => row(top, sign("/"), bottom),
  raised: (base, exponent) => `<msup>${base}${exponent}</msup>`,
  negated: (text) => row(sign("−"), text),
  root: (text) => `<msqrt>${text}</msqrt>`,
  called: mathCalled,
  superscript: true,
  lines: (terms) =>
    `<mtable columnalign="left">${terms.map((term) => `<mtr><mtd>${term}</mtd></mtr>`).join("")}</mtable>`,
};

/** MathML for presentation, which browsers show as they are. A fraction within a fraction stands on the line. */
export const mathScript: Script = {
  ...mathLine,
  over: (top, bottom) => `<mfrac>${top}${bottom}</mfrac>`,
  inFraction: mathLine,
};
