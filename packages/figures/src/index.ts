/** Every public name of the figures, sorted by folder, one line each. */
export type { ChartOptions } from "./curves/chartTypes";
export { heightPanels } from "./curves/heightPanels";
export { impedanceCompromise } from "./curves/impedanceCompromise";
export { swrAcrossBand } from "./curves/swrAcrossBand";
export { figuresOf, questionsWithFigures, withFigures } from "./figuresOf";
export type { Theme } from "./kit/colours";
export { colourDeclarations, colourOf, colourProperty } from "./kit/colours";
export { escapeText } from "./kit/escape";
export type * from "./kit/figure";
export { mark } from "./kit/mark";
export type { TextTable } from "./kit/table";
export { toCsv, toTable } from "./kit/table";
export type { SvgOptions } from "./kit/toSvg";
export { toSvg } from "./kit/toSvg";
export { typefaces } from "./kit/typefaces";
export { strengthOf } from "./stage/lobe";
export { ribbon, section, stage } from "./stage/stage";
export type { StageOptions } from "./stage/stageOptions";
