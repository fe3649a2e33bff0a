/**
 * The part of LaTeX that formulas of the working may use (docs/conventions.md), with what each command reads as
 * in plain text. One table serves the reader, the plain text and the check before typesetting, so that a command
 * outside it is told as such instead of being shown half.
 */

/** Commands with one or two arguments in braces. */
export const structures: ReadonlyMap<string, "fraction" | "root" | "hat" | "words" | "sized"> = new Map([
  ["\\frac", "fraction"],
  ["\\dfrac", "fraction"],
  ["\\tfrac", "fraction"],
  ["\\sqrt", "root"],
  ["\\hat", "hat"],
  ["\\mathrm", "words"],
  ["\\text", "words"],
  ["\\operatorname", "words"],
  ["\\left", "sized"],
  ["\\right", "sized"],
]);

export const functionNames: ReadonlySet<string> = new Set(
  "\\ln \\log \\exp \\sin \\cos \\tan \\sinh \\cosh \\tanh \\coth \\arctan \\arccos \\arcsin \\arg \\min \\max \\Re \\Im".split(
    " ",
  ),
);

/** Signs between two things, set with a space on both sides. */
export const operators: ReadonlyMap<string, string> = new Map([
  ["+", "+"],
  ["-", "−"],
  ["−", "−"],
  ["=", "="],
  ["<", "<"],
  [">", ">"],
  ["×", "×"],
  ["·", "·"],
  ["\\times", "×"],
  ["\\cdot", "·"],
  ["\\pm", "±"],
  ["\\approx", "≈"],
  ["\\le", "≤"],
  ["\\leq", "≤"],
  ["\\ge", "≥"],
  ["\\geq", "≥"],
  ["\\ne", "≠"],
  ["\\ll", "≪"],
  ["\\gg", "≫"],
  ["\\to", "→"],
  ["\\propto", "∝"],
]);

/** Signs that may also stand before a single thing. */
export const signs: ReadonlySet<string> = new Set(["+", "−", "±"]);

export const spaces: ReadonlyMap<string, string> = new Map([
  ["\\,", " "],
  ["\\:", " "],
  ["\\;", " "],
  ["\\ ", " "],
  ["\\quad", " "],
  ["~", " "],
  ["\\!", ""],
]);

export const delimiters: ReadonlyMap<string, string> = new Map([
  ["(", "("],
  [")", ")"],
  ["[", "["],
  ["]", "]"],
  ["|", "|"],
  ["/", "/"],
  [".", ""],
  ["\\|", "‖"],
  ["\\lvert", "|"],
  ["\\rvert", "|"],
  ["\\{", "{"],
  ["\\}", "}"],
]);

const greek = "αβγδεζηθκλμνξπρστφχψω";
const greekNames =
  "alpha beta gamma delta varepsilon zeta eta theta kappa lambda mu nu xi pi rho sigma tau varphi chi psi omega".split(
    " ",
  );

/** Everything else that stands for one thing. */
export const letters: ReadonlyMap<string, string> = new Map([
  ...greekNames.map((name, index): [string, string] => [`\\${name}`, [...greek][index]!]),
  ["\\epsilon", "ε"],
  ["\\phi", "φ"],
  ["\\Gamma", "Γ"],
  ["\\Delta", "Δ"],
  ["\\Theta", "Θ"],
  ["\\Lambda", "Λ"],
  ["\\Sigma", "Σ"],
  ["\\Phi", "Φ"],
  ["\\Psi", "Ψ"],
  ["\\Omega", "Ω"],
  ["\\ell", "ℓ"],
  ["\\infty", "∞"],
  ["\\circ", "°"],
  ["\\degree", "°"],
  ["\\angle", "∠"],
  ["\\partial", "∂"],
  ["\\int", "∫"],
  ["\\sum", "∑"],
  ["\\ldots", "…"],
  ["\\dots", "…"],
  ["\\cdots", "…"],
  ["\\%", "%"],
]);

/** Characters that need no command. */
export const plainCharacter = /^[\p{L}\d,.:;!'*%°µ∞]$/u;
