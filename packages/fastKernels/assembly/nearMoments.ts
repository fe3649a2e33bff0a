/** Close pairs of elements and their static moments. Definition: the readable twin's nearMoments. */
import { coaxialMoments } from "./coaxialMoments";
import { directionOf, lengthOf, radiusOf, startOf } from "./elements";
import { skewMoments } from "./skewMoments";

const nearInLengths: f64 = 2.6;
const nearInRadii: f64 = 12;

/** Writes the centres of all elements, three numbers each. */
function centres(block: usize, count: i32, out: usize): void {
  for (let e = 0; e < count; e++) {
    const length = lengthOf(block, count, e);
    for (let c: usize = 0; c < 24; c += 8) {
      const along = (load<f64>(directionOf(block, count, e) + c) * length) / 2;
      store<f64>(out + usize(24 * e) + c, load<f64>(startOf(block, e) + c) + along);
    }
  }
}

/**
 * Counts the close pairs f >= e and writes where each row begins (`rowStart`); with `column` not 0 also the sources. `work`:
 * room for three numbers an element of both.
 */
export function findNear(
  tests: usize,
  testCount: i32,
  sources: usize,
  sourceCount: i32,
  rowStart: usize,
  column: usize,
  work: usize,
): i32 {
  const sourceCentres = work + usize(24 * testCount);
  centres(tests, testCount, work);
  centres(sources, sourceCount, sourceCentres);
  let count = 0;
  store<i32>(rowStart, 0);
  for (let e = 0; e < testCount; e++) {
    const at = work + usize(24 * e);
    const x = load<f64>(at);
    const y = load<f64>(at, 8);
    const z = load<f64>(at, 16);
    const l = lengthOf(tests, testCount, e);
    const radius = radiusOf(tests, testCount, e);
    for (let f = e; f < sourceCount; f++) {
      const other = sourceCentres + usize(24 * f);
      const dx = x - load<f64>(other);
      const dy = y - load<f64>(other, 8);
      const dz = z - load<f64>(other, 16);
      const distance = sqrt(dx * dx + dy * dy + dz * dz);
      const m = lengthOf(sources, sourceCount, f);
      const thick = max(radius, radiusOf(sources, sourceCount, f));
      if (distance >= nearInLengths * max(l, m) && distance >= nearInRadii * thick + (l + m) / 2) continue;
      if (column) store<i32>(column + usize(4 * count), f);
      count++;
    }
    store<i32>(rowStart + usize(4 * (e + 1)), count);
  }
  return count;
}

/** Positions of the source's ends along the test's axis, from the last call that found both on one axis. */
let axisFrom: f64 = 0;
let axisTo: f64 = 0;

function onOneAxis(tests: usize, testCount: i32, e: i32, sources: usize, sourceCount: i32, f: i32): bool {
  let cosine: f64 = 0;
  let along: f64 = 0;
  let squared: f64 = 0;
  for (let c: usize = 0; c < 24; c += 8) {
    const t = load<f64>(directionOf(tests, testCount, e) + c);
    const offset = load<f64>(startOf(sources, f) + c) - load<f64>(startOf(tests, e) + c);
    cosine += t * load<f64>(directionOf(sources, sourceCount, f) + c);
    along += t * offset;
    squared += offset * offset;
  }
  const aside = squared - along * along;
  const radius = 1e-3 * min(radiusOf(tests, testCount, e), radiusOf(sources, sourceCount, f));
  if (1 - abs(cosine) > 1e-12 || aside > radius * radius + 1e-14 * squared) return false;
  axisFrom = along;
  axisTo = along + (cosine < 0 ? -1 : 1) * lengthOf(sources, sourceCount, f);
  return true;
}

/** Writes four moments a pair that findNear has found. */
export function nearMoments(
  tests: usize,
  testCount: i32,
  sources: usize,
  sourceCount: i32,
  rowStart: usize,
  column: usize,
  out: usize,
): void {
  for (let e = 0; e < testCount; e++) {
    const end = load<i32>(rowStart + usize(4 * (e + 1)));
    for (let pair = load<i32>(rowStart + usize(4 * e)); pair < end; pair++) {
      const f = load<i32>(column + usize(4 * pair));
      const to = out + usize(32 * pair);
      if (onOneAxis(tests, testCount, e, sources, sourceCount, f)) {
        const length = lengthOf(tests, testCount, e);
        const radius = radiusOf(tests, testCount, e);
        coaxialMoments(length, axisFrom, axisTo, radius, radiusOf(sources, sourceCount, f), to);
      } else {
        skewMoments(tests, testCount, e, sources, sourceCount, f, to);
      }
    }
  }
}
