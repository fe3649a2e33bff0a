import { type FormulaNode, readFormula } from "./readFormula";
import { signs } from "./symbols";

const raisedDigits: Readonly<Record<string, string>> = Object.fromEntries(
  [..."0123456789+−()"].map((c, index) => [c, [..."⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁽⁾"][index]!]),
);
const loweredDigits: Readonly<Record<string, string>> = Object.fromEntries(
  [..."0123456789"].map((c, index) => [c, [..."₀₁₂₃₄₅₆₇₈₉"][index]!]),
);

/** "10^{0.0476}" has a point, for which no raised character exists: then the power is written with ^. */
function scriptText(text: string, digits: Readonly<Record<string, string>>, mark: string): string {
  const characters = [...text];
  if (characters.every((c) => digits[c] !== undefined)) return characters.map((c) => digits[c]).join("");
  if (text === "°" || text === "*" || text === "'") return text;
  return mark + (/^[\p{L}\d.,]+$/u.test(text) ? text : `(${text})`);
}

const bracketed = (text: string, when: boolean): string => (when ? `(${text})` : text);

/** One number, one symbol with its scripts, or something already in brackets needs none of its own. */
const needsNone = /^([\p{L}\d.₀-₉²³⁰-⁹_]+|√?\([^()]*\)|\|[^|]*\|)$/u;

/** What stands outside all brackets and bars. */
export function withoutBracketed(text: string): string {
  const less = text.replaceAll(/\([^()]*\)|\|[^|]*\|/gu, "");
  return less === text ? text : withoutBracketed(less);
}

function fractionText(top: readonly FormulaNode[], bottom: readonly FormulaNode[]): string {
  const over = write(top);
  const under = write(bottom);
  const topBrackets = /[ /]/.test(withoutBracketed(over));
  return `${bracketed(over, topBrackets)}/${bracketed(under, !needsNone.test(under) || bottom.length > 2)}`;
}

const endsInThing = /[\p{L}\p{M}\p{N})\]|°%′'∞*]$/u;
const startsThing = /^[\p{L}\d]/u;

/** What came last decides how the next thing is joined: a word or a lettered index keeps off, a fraction needs a dot. */
interface Writing {
  text: string;
  last: "nothing" | "function" | "index" | "fraction" | "thing";
  barOpen: boolean;
}

function joint(state: Writing, thing: string, asFactor: boolean): string {
  if (state.last === "function") return startsThing.test(thing) ? " " : "";
  if (state.last === "fraction" && /^[\p{L}\d(|√]/u.test(thing)) return " · ";
  const openBar = state.barOpen && state.text.endsWith("|");
  if (asFactor && endsInThing.test(state.text) && !openBar) return " · ";
  return state.last === "index" && startsThing.test(thing) ? " " : "";
}

function writeThing(state: Writing, thing: string, last: Writing["last"] = "thing"): void {
  const whole = state.last === "function" && last === "fraction" ? `(${thing})` : thing;
  state.text += joint(state, whole, last === "fraction") + whole;
  state.last = last;
}

function writeOperator(state: Writing, sign: string): void {
  const before = state.text.trimEnd();
  const single =
    signs.has(sign) && (before === "" || /[([=×·≈<>≤≥/]$/u.test(before) || (state.barOpen && before.endsWith("|")));
  const keepGap = /[([]$/u.test(before) || before === "" || before.endsWith("|") ? "" : " ";
  state.text = single ? before + keepGap + sign : `${before}${before === "" ? "" : " "}${sign} `;
  state.last = "nothing";
}

function writeBar(state: Writing, text: string): void {
  if (state.barOpen) {
    state.text += text;
    state.last = "thing";
  } else writeThing(state, text, "nothing");
  state.barOpen = !state.barOpen;
}

function writeLowered(state: Writing, text: string): void {
  state.text += scriptText(text, loweredDigits, "_");
  if (state.last !== "function") state.last = "index";
}

function writeSpace(state: Writing, text: string): void {
  if (!state.text.endsWith(" ")) state.text += text;
}

function writeClose(state: Writing, text: string): void {
  state.text += text;
  state.last = "thing";
}

function writeFunction(state: Writing, name: string): void {
  writeThing(state, (state.last === "thing" || state.last === "index" ? " " : "") + name, "function");
}

function writeSymbol(state: Writing, kind: string, text: string): void {
  if (kind === "operator") writeOperator(state, text);
  else if (kind === "function") writeFunction(state, text);
  else if (kind === "space") writeSpace(state, text);
  else if (kind === "bar") writeBar(state, text);
  else if (kind === "close") writeClose(state, text);
  else writeThing(state, text);
}

function writeNode(state: Writing, node: FormulaNode): void {
  if ("text" in node) writeSymbol(state, node.kind, node.text);
  else if ("top" in node) writeThing(state, fractionText(node.top, node.bottom), "fraction");
  else if (node.kind === "root") writeThing(state, `√(${write(node.body)})`);
  else if (node.kind === "hat") writeThing(state, `${write(node.body)}\u0302`);
  else if (node.kind === "raised") state.text += scriptText(write(node.body), raisedDigits, "^");
  else if (node.kind === "lowered") writeLowered(state, write(node.body));
  else writeThing(state, write(node.body));
}

function write(nodes: readonly FormulaNode[]): string {
  const state: Writing = { text: "", last: "nothing", barOpen: false };
  for (const node of nodes) writeNode(state, node);
  return state.text.trim();
}

/**
 * A formula as readable text for a terminal: "P₂ = P₁ · a(1 − |Γ|²)/(a² − |Γ|²)".
 * Throws FormulaError where the formula leaves the subset of symbols.ts.
 */
export function formulaText(latex: string): string {
  return write(readFormula(latex));
}
