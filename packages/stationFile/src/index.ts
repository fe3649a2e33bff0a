/** Every public name of the package. */
export { catalogueVersion } from "./catalogue/catalogueVersion";
export type { CatalogueLine } from "./catalogue/lines";
export { findLine, lineCatalogue } from "./catalogue/lines";
export type { ReadOptions, ReadResult } from "./readStation";
export { readStation } from "./readStation";
export { stationSchema } from "./schema/jsonSchema";
export type { TouchstoneResult } from "./touchstone/readTouchstone";
export { readTouchstone } from "./touchstone/readTouchstone";
export type { Dimension, DimensionName } from "./units/dimensions";
export { dimensions } from "./units/dimensions";
export type { Fault, Parsed } from "./units/fault";
export { formatQuantity } from "./units/formatQuantity";
export { nearestWord } from "./units/nearest";
export type { QuantityRule, Span } from "./units/parseQuantity";
export { parseQuantity, parseSpan } from "./units/parseQuantity";
export { parseDirection, parsePlace } from "./units/place";
export { writeStation } from "./writing/writeStation";
