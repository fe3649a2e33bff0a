/**
 * Memory that operations keep for themselves from call to call: behind the module's data, below 65,536, where the operands
 * start. The module has no heap.
 */

/** Coefficients of Bessel functions, 17,600 bytes. */
export const besselTable: usize = (__heap_base + 15) & ~15;
/** Two rows of 64 numbers of table look-up. */
export const lookUpRows: usize = besselTable + 17600;
/** Most panels on one element of a pair, and the edges of them. */
export const mostPanels: i32 = 120;
export const panelEdges: usize = lookUpRows + 1024;
/** Places on an element where panels close in, and a few numbers more. */
export const pairRoom: usize = panelEdges + 8 * (mostPanels + 1) + 8;
/** Gauss points on the panels of the test, then of the source: places, then weights, four a panel. */
export const panelPoints: usize = pairRoom + 192;
export const panelPointBytes: usize = 32 * mostPanels;

/** Where all this ends: below the operands, which the host's tests see to. */
export function endOfKept(): usize {
  return panelPoints + 4 * panelPointBytes;
}
