import { delimiters, functionNames, letters, operators, plainCharacter, spaces, structures } from "./symbols";

/** A formula as read: what the plain text is written from, and the proof that typesetting meets only known commands. */
export type FormulaNode =
  | {
      readonly kind: "symbol" | "operator" | "space" | "function" | "words" | "open" | "close" | "bar";
      readonly text: string;
    }
  | { readonly kind: "fraction"; readonly top: readonly FormulaNode[]; readonly bottom: readonly FormulaNode[] }
  | { readonly kind: "root" | "hat" | "group" | "raised" | "lowered"; readonly body: readonly FormulaNode[] };

/** A formula uses something outside the subset of symbols.ts. */
export class FormulaError extends Error {
  constructor(found: string, expected: string, latex: string) {
    super(`formula "${latex}": found ${found}, expected ${expected} (the commands allowed are in formula/symbols.ts)`);
    this.name = "FormulaError";
  }
}

const tokenPattern = /\\[A-Za-z]+|\\.|\d+(?:\.\d+)?|\s+|./gsu;
const opening = new Set(["(", "[", "{"]);
const closing = new Set([")", "]", "}"]);
const deepest = 40;

/** One pass over the tokens of one formula. */
class FormulaReader {
  private readonly tokens: readonly string[];
  private readonly latex: string;
  private at = 0;

  constructor(latex: string) {
    this.latex = latex;
    this.tokens = latex.match(tokenPattern) ?? [];
  }

  readRun(depth: number, inBraces: boolean): FormulaNode[] {
    if (depth > deepest) this.fail(`braces more than ${deepest} deep`, "a formula people can read");
    const nodes: FormulaNode[] = [];
    for (;;) {
      this.skipBlanks();
      const token = this.tokens[this.at];
      if (token === undefined) return inBraces ? this.fail("the end", "a closing brace") : nodes;
      if (token === "}") {
        if (!inBraces) this.fail("a closing brace", "an opening one before it");
        this.at++;
        return nodes;
      }
      nodes.push(this.readOne(depth));
    }
  }

  private readOne(depth: number): FormulaNode {
    const token = this.tokens[this.at++]!;
    if (token === "{") return { kind: "group", body: this.readRun(depth + 1, true) };
    if (token === "^") return { kind: "raised", body: this.readArgument(depth) };
    if (token === "_") return { kind: "lowered", body: this.readArgument(depth) };
    if (structures.has(token)) return this.readStructure(token, depth);
    return this.readSymbol(token);
  }

  private readSymbol(token: string): FormulaNode {
    if (functionNames.has(token)) return { kind: "function", text: token.slice(1) };
    const operator = operators.get(token);
    if (operator !== undefined) return { kind: "operator", text: operator };
    const space = spaces.get(token);
    if (space !== undefined) return { kind: "space", text: space };
    if (token !== "." && delimiters.has(token)) return this.readDelimiter(token);
    const plain = /^\d/.test(token) || plainCharacter.test(token) ? token : undefined;
    return { kind: "symbol", text: letters.get(token) ?? plain ?? this.fail(token, "a command of the subset") };
  }

  /** What a command or script acts on: a group in braces, or one thing. */
  private readArgument(depth: number): readonly FormulaNode[] {
    this.skipBlanks();
    const token = this.tokens[this.at] ?? this.fail("the end", "an argument");
    if (token === "}") this.fail("a closing brace", "an argument");
    if (token !== "{") return [this.readOne(depth + 1)];
    this.at++;
    return this.readRun(depth + 1, true);
  }

  private readStructure(command: string, depth: number): FormulaNode {
    const kind = structures.get(command);
    if (kind === "fraction") return { kind, top: this.readArgument(depth), bottom: this.readArgument(depth) };
    if (kind === "root" || kind === "hat") return { kind, body: this.readArgument(depth) };
    if (kind === "words") return this.readWords(command);
    this.skipBlanks();
    return this.readDelimiter(this.tokens[this.at++] ?? this.fail("the end", `a bracket after ${command}`));
  }

  private readDelimiter(token: string): FormulaNode {
    const text = delimiters.get(token) ?? this.fail(token, "a bracket or bar");
    if (opening.has(text)) return { kind: "open", text };
    if (closing.has(text)) return { kind: "close", text };
    return { kind: text === "|" || text === "‖" ? "bar" : "symbol", text };
  }

  /** Words may hold spaces, letters by name, and words again: "\mathrm{S\text{-}units}". */
  private readWords(command: string): { readonly kind: "words"; readonly text: string } {
    this.skipBlanks();
    if (this.tokens[this.at] !== "{") this.fail(this.tokens[this.at] ?? "the end", `an opening brace after ${command}`);
    this.at++;
    let text = "";
    while (this.tokens[this.at] !== "}") {
      const token = this.tokens[this.at++] ?? this.fail("the end", `a closing brace after ${command}`);
      text += structures.get(token) === "words" ? this.readWords(token).text : this.wordOf(token, command);
    }
    this.at++;
    return { kind: "words", text };
  }

  private wordOf(token: string, command: string): string {
    const plain = token.startsWith("\\") ? (letters.get(token) ?? spaces.get(token)) : token;
    return plain !== undefined && !/[{$\\#&~^]/.test(plain) ? plain : this.fail(token, `plain words in ${command}`);
  }

  private skipBlanks(): void {
    while (/^\s/.test(this.tokens[this.at] ?? "")) this.at++;
  }

  private fail(found: string, expected: string): never {
    throw new FormulaError(found, expected, this.latex);
  }
}

/** Reads the LaTeX subset. Throws FormulaError where something else is met. */
export function readFormula(latex: string): readonly FormulaNode[] {
  return new FormulaReader(latex).readRun(0, false);
}
