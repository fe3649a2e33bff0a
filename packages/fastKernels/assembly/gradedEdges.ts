/** Edges of panels on an element, closing in on places of it. Definition: gradedEdges of the readable twin's skewMoments. */
import { mostPanels, pairRoom, panelEdges } from "./kept";

const growth: f64 = 3;

/** Ends the call where there are more panels than room for them: nothing of a neighbour may be overwritten. */
function put(count: i32, edge: f64): i32 {
  if (count > mostPanels) unreachable();
  store<f64>(panelEdges + usize(8 * count), edge);
  return count + 1;
}

/** Steps from `from` towards the middle, which is put last. */
function closingIn(count: i32, from: f64, middle: f64, finest: f64): i32 {
  let step = finest;
  for (let at = step; at < middle - from; at += step) {
    count = put(count, from + at);
    step *= growth;
  }
  return put(count, middle);
}

/** The same from the middle, which is there already, to `to`, put last: the steps are those towards the middle, backwards. */
function openingUp(count: i32, middle: f64, to: f64, finest: f64): i32 {
  let steps = 0;
  let step = finest;
  for (let at = step; at < to - middle; at += step) {
    steps++;
    step *= growth;
  }
  step = finest;
  let at = step;
  for (let k = 0; k < steps; k++) {
    store<f64>(panelEdges + usize(8 * (count + steps - 1 - k)), to - at);
    step *= growth;
    at += step;
  }
  return put(count + steps, to);
}

/** Writes the edges at `panelEdges` and returns their number. The two places may lie outside of [0, length]. */
export function gradedEdges(length: f64, one: f64, other: f64, finest: f64): i32 {
  const low = min(one, other);
  const high = max(one, other);
  let inside = 0;
  const places = pairRoom;
  store<f64>(places, 0);
  inside++;
  if (low >= 0 && low <= length) store<f64>(places + usize(8 * inside++), low);
  if (high >= 0 && high <= length) store<f64>(places + usize(8 * inside++), high);
  store<f64>(places + usize(8 * inside++), length);
  let count = put(0, 0);
  for (let i = 1; i < inside; i++) {
    const from = load<f64>(places + usize(8 * (i - 1)));
    const to = load<f64>(places + usize(8 * i));
    if (to - from < 1e-9 * length) continue;
    const middle = (from + to) / 2;
    count = closingIn(count, from, middle, finest);
    count = openingUp(count, middle, to, finest);
  }
  return count;
}
