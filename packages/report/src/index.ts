/** Every public name of the report package, sorted by folder. */
export { answerSheet, sheetFigureSizes } from "./answerSheet";
export type { Block, Document, DocumentTable, Fact, Inline, Step } from "./document/document";
export { documentOf, type SheetInput } from "./document/documentOf";
export { formulaText } from "./formula/formulaText";
export { FormulaError } from "./formula/readFormula";
export { typesetFormula } from "./formula/typesetFormula";
export { toHtml } from "./html/toHtml";
export { toMarkdown } from "./markdown/toMarkdown";
export { answerJsonSchema } from "./schema/answerJsonSchema";
export { answerSchema, type ProblemsDocument, problemsSchema, refusalSchema } from "./schema/answerSchema";
export { AnswerFormatError, parseAnswer } from "./schema/parseAnswer";
export { answerText } from "./text/answerText";
export { problemsText } from "./text/problemsText";
export { refusalText } from "./text/refusalText";
export { visibleLine } from "./words/visible";
