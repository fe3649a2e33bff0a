/**
 * Straight elements as the host puts them, in one block of numbers: starts and directions (three each), lengths, radii, one
 * kind after another.
 */

export function startOf(block: usize, e: i32): usize {
  return block + usize(24 * e);
}

export function directionOf(block: usize, count: i32, e: i32): usize {
  return block + usize(24 * (count + e));
}

export function lengthOf(block: usize, count: i32, e: i32): f64 {
  return load<f64>(block + usize(8 * (6 * count + e)));
}

export function radiusOf(block: usize, count: i32, e: i32): f64 {
  return load<f64>(block + usize(8 * (7 * count + e)));
}
