/**
 * Memory that operations keep for themselves from call to call: behind the module's data, below 65,536, where the operands
 * start. The module has no heap.
 */

/** Coefficients of Bessel functions, 17,600 bytes. */
export const besselTable: usize = (__heap_base + 15) & ~15;
/** Two rows of 64 numbers of table look-up. */
export const lookUpRows: usize = besselTable + 17600;
