/** Every public name of the engine, sorted by folder, one line each. */
export type * from "./answer/answer";
export type * from "./lines/lineModel";
export type { Complex } from "./numerics/complex";
export type * from "./quantity/quantity";
export { between, exactly, isQuantity, isUncertain, within } from "./quantity/quantity";
export type * from "./questions/common/question";
export type * from "./station/antennaDescription";
export type * from "./station/path";
export type * from "./station/place";
export type * from "./station/problem";
export type * from "./station/station";
export type * from "./wires/structure";
