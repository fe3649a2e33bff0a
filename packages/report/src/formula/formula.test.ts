import { describe, expect, it } from "vitest";
import { formulaPieces } from "./formulaPieces";
import { formulaText } from "./formulaText";
import { FormulaError } from "./readFormula";
import { typesetFormula } from "./typesetFormula";

const formulas: readonly (readonly [string, string])[] = [
  [
    "P_2 = P_1 \\frac{a\\left(1 - \\left|\\Gamma\\right|^2\\right)}{a^2 - \\left|\\Gamma\\right|^2}",
    "P₂ = P₁ · a(1 − |Γ|²)/(a² − |Γ|²)",
  ],
  ["100\\,\\mathrm{W} \\times \\frac{1.116}{1.245 - 0.094}", "100 W × 1.116/(1.245 − 0.094)"],
  ["\\Gamma = \\frac{Z - Z_0^*}{Z + Z_0}", "Γ = (Z − Z₀*)/(Z + Z₀)"],
  ["\\left|\\frac{33.1 - \\mathrm{j}25.1}{133.1 - j25.1}\\right|", "|(33.1 − j25.1)/(133.1 − j25.1)|"],
  ["a = 10^{A/10}", "a = 10^(A/10)"],
  ["10^{-3}", "10⁻³"],
  ["L = -10\\log_{10}\\frac{P_2}{P_1}", "L = −10 log₁₀(P₂/P₁)"],
  ["Z_0 = \\frac{60}{\\sqrt{\\varepsilon_\\mathrm{r}}}\\ln\\frac{D}{d}", "Z₀ = 60/√(ε_r) · ln(D/d)"],
  ["X_\\mathrm{C} = -\\frac{1}{2\\pi f C}", "X_C = −1/(2πfC)"],
  ["Z_\\mathrm{in} I \\cosh(\\gamma l)", "Z_in I cosh(γl)"],
  ["P = \\tfrac{1}{2}\\left|I\\right|^2 R", "P = 1/2 · |I|²R"],
  ["2 \\cdot -3 \\approx |-6| \\,\\Omega", "2 · −3 ≈ |−6| Ω"],
  ["90^\\circ", "90°"],
  ["\\frac{\\ln x}{x^2}", "(ln x)/x²"],
  ["\\hat V = \\sqrt{2} V", "V\u0302 = √(2)V"],
  ["V_1 = V_2 \\cosh \\gamma\\ell + I_2 Z_0 \\sinh \\gamma\\ell", "V₁ = V₂ cosh γℓ + I₂ Z₀ sinh γℓ"],
  ["1.7 \\; \\mathrm{dB/100\\,m} \\times 28 \\; \\mathrm{m}", "1.7 dB/100 m × 28 m"],
  ["0.27 \\; \\mathrm{S\\text{-}units}", "0.27 S-units"],
];

describe("formulas", () => {
  it.each(formulas)("%s reads as %s", (latex, text) => {
    expect(formulaText(latex)).toBe(text);
  });

  it.each(formulas)("%s is typeset as one MathML element without a reference outside", (latex) => {
    const mathml = typesetFormula(latex);
    expect(mathml).toMatch(/^<math [\s\S]*<\/math>$/);
    expect(mathml).not.toMatch(/href|src=|url\(|<script/i);
  });

  it.each([
    ["\\href{javascript:alert(1)}{x}", "\\href"],
    ["\\def\\a{b}", "\\def"],
    ["\\includegraphics{x}", "\\includegraphics"],
    ["{", "a closing brace"],
    ["}", "an opening one"],
    ["\\frac{a}", "an argument"],
    ["{x^}", "an argument"],
    ["\\sqrt", "an argument"],
    ["\\left", "a bracket after \\left"],
    ["\\text{$x$}", "plain words"],
    ["\\mathrm x", "an opening brace"],
    ["{".repeat(60), "deep"],
  ])("%s is refused by both, with the place told", (latex, told) => {
    expect(() => typesetFormula(latex)).toThrow(FormulaError);
    expect(() => formulaText(latex)).toThrow(told);
  });

  it("breaks a long line before equals signs and after commas, never inside brackets", () => {
    expect(
      formulaPieces("f(a, b) = \\frac{x = 1}{y}, \\; P_1 = \\left(c = d\\right) = 3 \\; \\mathrm{W}, P_2 = 4"),
    ).toEqual(["f(a, b) = \\frac{x = 1}{y},", "P_1 = \\left(c = d\\right)", "= 3 \\; \\mathrm{W},", "P_2 = 4"]);
  });

  it("sets a space before a function's name", () => {
    expect(typesetFormula("V_2 \\cosh x")).toMatch(/<\/msub>(<mrow>)?<mspace width="0\.1667em">.*<mi>cosh</);
    expect(typesetFormula("= \\cosh x")).not.toMatch(/<mo>=<\/mo>(<mrow>)?<mspace/);
  });

  it("escapes what stands in words", () => {
    expect(typesetFormula("\\text{a <b> c}")).toMatch(/a.&lt;b&gt;.c/);
  });
});
