// Equations as a person reads them, as a line of text, as TeX and as MathML: each line was written by hand from the equation.
import { describe, expect, it } from "vitest";
import { equationMathML, equationTex, equationText } from "../../../src/teach/index.js";
import { errorOf } from "../../errors.js";

/** What is between the ends of the MathML. */
const math = (equation: string): string =>
  equationMathML(equation)
    .replace('<math xmlns="http://www.w3.org/1998/Math/MathML" display="block"><mrow>', "")
    .replace(/<\/mrow><\/math>$/, "");

describe("a line of text", () => {
  it.each([
    ["R = 100 * T / p", "R = 100 × T ÷ p"],
    ["a = b + c - d", "a = b + c − d"],
    ["a = b - (c - d)", "a = b − (c − d)"],
    ["a = b - (c + d)", "a = b − (c + d)"],
    ["a = (b - c) + d", "a = b − c + d"],
    ["a = b + (c - d)", "a = b + (c − d)"],
    ["a = (b + c) * d", "a = (b + c) × d"],
    ["a = b * (c * d)", "a = b × c × d"],
    ["a = b * (c / d)", "a = b × (c ÷ d)"],
    ["a = b / (c * d)", "a = b ÷ (c × d)"],
    ["a = b / c / d", "a = b ÷ c ÷ d"],
    ["a = b ^ c ^ d", "a = b^(c^d)"],
    ["a = (b ^ c) ^ d", "a = (b^c)^d"],
    ["a = (b + c) ^ 2", "a = (b + c)^2"],
    ["a = b ^ (c + d)", "a = b^(c + d)"],
    ["a = b ^ -c", "a = b^(−c)"],
    ["a = -b * c", "a = −b × c"],
    ["a = -(b + c)", "a = −(b + c)"],
    ["a = b * -c", "a = b × (−c)"],
    ["a = b - -c", "a = b − (−c)"],
    ["a = sqrt(b / c)", "a = √(b ÷ c)"],
    ["a = min(b, c + d)", "a = min(b, c + d)"],
    ["a = max(0, b)", "a = max(0, b)"],
    ["a = exp(-k * t)", "a = exp(−k × t)"],
    ["n = ceil(M / B)", "n = M ÷ B, rounded up"],
    ["n = 2 * ceil(M / B)", "n = 2 × ceil(M ÷ B)"],
    ["theta_fc = rho * pi", "θ_fc = ρ × π"],
    ["x_a_b = y", "x_a,b = y"],
    ["a = 1.5e-7 * b", "a = 1.5 × 10^-7 × b"],
    ["a = 2e+21 * b", "a = 2 × 10^21 × b"],
    ["  a   =b*2 ", "a = b × 2"],
  ])("%s", (equation, text) => expect(equationText(equation)).toBe(text));
});

describe("TeX", () => {
  it.each([
    ["R = 100 * T / p", String.raw`R = \frac{100 \times T}{p}`],
    ["a = b / c / d", String.raw`a = \frac{b}{c \times d}`],
    ["a = b / (c / d)", String.raw`a = \frac{b}{c / d}`],
    ["a = b * (c / d) / e", String.raw`a = \frac{b \times \left(c / d\right)}{e}`],
    [
      "q_2 = q_1 * sqrt(P_2 / P_1)",
      String.raw`q_{\mathrm{2}} = q_{\mathrm{1}} \times \sqrt{\frac{P_{\mathrm{2}}}{P_{\mathrm{1}}}}`,
    ],
    ["EC = x", String.raw`\mathrm{EC} = x`],
    ["theta_fc = alpha", String.raw`\theta_{\mathrm{fc}} = \alpha`],
    ["a = b ^ (c + d)", "a = b^{c + d}"],
    ["a = (b + c) ^ 2", String.raw`a = \left(b + c\right)^{2}`],
    ["a = -b", "a = -b"],
    ["a = 1.5e-7 * b", String.raw`a = 1.5 \times 10^{-7} \times b`],
    ["a = ceil(b)", String.raw`a = \left\lceil b \right\rceil`],
    ["a = floor(b)", String.raw`a = \left\lfloor b \right\rfloor`],
    ["a = abs(b)", String.raw`a = \left| b \right|`],
    ["a = ln(b)", String.raw`a = \ln\left(b\right)`],
    ["a = log10(b)", String.raw`a = \log_{10}\left(b\right)`],
    ["a = asin(b)", String.raw`a = \arcsin\left(b\right)`],
    ["a = acos(b) + atan(c)", String.raw`a = \arccos\left(b\right) + \arctan\left(c\right)`],
    [
      "a = sin(b) * cos(c) * tan(d)",
      String.raw`a = \sin\left(b\right) \times \cos\left(c\right) \times \tan\left(d\right)`,
    ],
    [
      "a = min(b, c) + max(d, e) + exp(f)",
      String.raw`a = \min\left(b, c\right) + \max\left(d, e\right) + \exp\left(f\right)`,
    ],
  ])("%s", (equation, tex) => expect(equationTex(equation)).toBe(tex));
});

const mi = (name: string): string => `<mi>${name}</mi>`;
const mo = (sign: string): string => `<mo>${sign}</mo>`;

describe("MathML", () => {
  it.each([
    ["t = L / v", `${mi("t")}${mo("=")}<mfrac>${mi("L")}${mi("v")}</mfrac>`],
    ["a = b * c", `${mi("a")}${mo("=")}<mrow>${mi("b")}${mo("×")}${mi("c")}</mrow>`],
    ["a = b - c", `${mi("a")}${mo("=")}<mrow>${mi("b")}${mo("−")}${mi("c")}</mrow>`],
    ["a = b + 2", `${mi("a")}${mo("=")}<mrow>${mi("b")}${mo("+")}<mn>2</mn></mrow>`],
    ["a = -b", `${mi("a")}${mo("=")}<mrow>${mo("−")}${mi("b")}</mrow>`],
    [
      "a = (b + c) ^ 2",
      `${mi("a")}${mo("=")}<msup><mrow>${mo("(")}<mrow>${mi("b")}${mo("+")}${mi("c")}</mrow>${mo(")")}</mrow><mn>2</mn></msup>`,
    ],
    ["theta_fc = sqrt(b)", `<msub>${mi("θ")}<mtext>fc</mtext></msub>${mo("=")}<msqrt>${mi("b")}</msqrt>`],
    [
      "a = b / (c / d)",
      `${mi("a")}${mo("=")}<mfrac>${mi("b")}<mrow>${mi("c")}${mo("/")}${mi("d")}</mrow></mfrac>`,
    ],
    ["a = ceil(b)", `${mi("a")}${mo("=")}<mrow>${mo("⌈")}${mi("b")}${mo("⌉")}</mrow>`],
    ["a = floor(b)", `${mi("a")}${mo("=")}<mrow>${mo("⌊")}${mi("b")}${mo("⌋")}</mrow>`],
    ["a = abs(b)", `${mi("a")}${mo("=")}<mrow>${mo("|")}${mi("b")}${mo("|")}</mrow>`],
    [
      "a = log10(b)",
      `${mi("a")}${mo("=")}<mrow><msub><mi>log</mi><mn>10</mn></msub>${mo("\u2061")}<mrow>${mo("(")}${mi("b")}${mo(")")}</mrow></mrow>`,
    ],
    [
      "a = min(b, c)",
      `${mi("a")}${mo("=")}<mrow>${mi("min")}${mo("\u2061")}<mrow>${mo("(")}${mi("b")}${mo(",")}${mi("c")}${mo(")")}</mrow></mrow>`,
    ],
    [
      "a = 1.5e-7",
      `${mi("a")}${mo("=")}<mrow><mn>1.5</mn>${mo("×")}<msup><mn>10</mn><mn>-7</mn></msup></mrow>`,
    ],
  ])("%s", (equation, inside) => expect(math(equation)).toBe(inside));

  it("every letter of Greek that equations use", () => {
    const names = "alpha beta gamma delta Delta epsilon eta theta lambda mu pi rho sigma tau phi omega".split(
      " ",
    );
    expect(names.map((name) => equationText(`${name} = 1`)[0]).join("")).toBe("αβγδΔεηθλµπρστφω");
  });
});

describe("an equation too long for a line", () => {
  const term = (letter: string): string => `${letter}_one * ${letter}_two * ${letter}_three`;
  const long = `s = ${["a", "b", "c", "d"].map(term).join(" + ")} - ${term("e")}`;
  it("stands term below term, each with its sign before it", () => {
    const rows = math(long).match(/<mtr><mtd>.*?<\/mtd><\/mtr>/g) ?? [];
    expect(rows.length).toBe(5);
    expect(rows[0]).toMatch(/^<mtr><mtd><mrow><mrow><msub><mi>a<\/mi>/);
    expect(rows[1]).toMatch(/^<mtr><mtd><mrow><mo>\+<\/mo><mrow><mrow><msub><mi>b<\/mi>/);
    expect(rows[4]).toMatch(/^<mtr><mtd><mrow><mo>−<\/mo><mrow><mrow><msub><mi>e<\/mi>/);
    expect(math(long)).toContain('<mtable columnalign="left">');
    expect(equationTex(long).match(/ & /g)?.length).toBe(5);
    expect(equationTex(long)).toMatch(/^s = \\begin\{aligned\} & a_.* \\\\ & - e_.* \\end\{aligned\}$/);
    expect(equationText(long)).not.toContain("\n");
  });
  it("a short one stands on one line", () => {
    const short = `s = ${term("a")} + ${term("b")}`;
    expect(math(short)).not.toContain("mtable");
    expect(equationTex(short)).not.toContain("aligned");
  });
  it("a product goes on below with its sign", () => {
    const factors = ["a", "b", "c", "d", "e", "f"].map((letter) => `(${letter}_first + ${letter}_second)`);
    const rows = math(`p = ${factors.join(" * ")}`).match(/<mtr>/g);
    expect(rows?.length).toBeGreaterThan(1);
    expect(math(`p = ${factors.join(" * ")}`)).toContain("<mtr><mtd><mrow><mo>×</mo>");
  });
});

describe("what is no equation", () => {
  it.each<readonly [unknown, string, string]>([
    [5, "type equation", "a text, such as R = 100 * T / p"],
    ["R", "text equation", "a symbol = an expression"],
    ["R = a = b", "text equation", "a symbol = an expression"],
    ["R = a $ b", "text equation", "numbers, symbols, commas, brackets and + - * / ^"],
    ["R = a b", "text equation", "an operation, or the end"],
    ["R = (a + b", "text equation", "an operation, or the end"],
    ["R = a +", "text equation", "an operation, or the end"],
    ["R = * a", "text equation", "an operation, or the end"],
    ["R = min(a, b", "text equation", "an operation, or the end"],
    ["R = area(a)", "text equation", "a function of equations"],
    [`R = ${"a+".repeat(600)}a`, "range equation", "1000 characters or fewer"],
  ])("%s", (equation, told, expected) => {
    const { problems } = errorOf(() => equationText(equation as string));
    expect(problems.map(({ code, path }) => `${code} ${path}`)).toEqual([told]);
    expect(problems[0]?.expected).toBe(expected);
  });
});
