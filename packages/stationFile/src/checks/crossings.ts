/** Wires given one by one that run through each other, or lie on each other, without a joint. */
import type { Shape } from "@feedpath/engine";
import { fault } from "../building/build";
import { samePlace } from "../building/wires";
import type { KeyPath } from "../reading/sourceText";
import { formatAmount } from "../units/formatQuantity";
import { shown } from "../units/nearest";
import type { Checked } from "./checked";

type GivenWire = Extract<Shape, { kind: "wires" }>["wires"][number];
type Point = readonly [number, number, number];

const vector = (from: GivenWire["from"], to: GivenWire["to"]): Point => [
  to[0].value - from[0].value,
  to[1].value - from[1].value,
  to[2].value - from[2].value,
];
const dot = (a: Point, b: Point): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** How far along each of two straight wires (0 to 1) they cross, closer than they are thick; null when they do not. */
function crossing(a: GivenWire, b: GivenWire): { readonly onA: number; readonly onB: number } | null {
  const [u, v, w] = [vector(a.from, a.to), vector(b.from, b.to), vector(b.from, a.from)];
  const [uu, uv, vv, uw, vw] = [dot(u, u), dot(u, v), dot(v, v), dot(u, w), dot(v, w)];
  const determinant = uu * vv - uv * uv;
  if (determinant <= 1e-12 * uu * vv) return null;
  const onA = (uv * vw - vv * uw) / determinant;
  const onB = (uu * vw - uv * uw) / determinant;
  const inside = [onA, onB].every((x) => x > 1e-6 && x < 1 - 1e-6);
  const apart = Math.hypot(...w.map((x, i) => x + onA * u[i]! - onB * v[i]!));
  return inside && apart < (a.wire.diameter.value + b.wire.diameter.value) / 2 ? { onA, onB } : null;
}

const twins = (a: GivenWire, b: GivenWire): boolean =>
  (samePlace(a.from, b.from) && samePlace(a.to, b.to)) || (samePlace(a.from, b.to) && samePlace(a.to, b.from));

const metres = (value: number): string => formatAmount(Number(value.toFixed(3)), "length");

/** Reports each pair at the later of the two wires. Hanging wires are left to the model, which knows their curve. */
export function checkCrossings(checked: Checked, wires: readonly GivenWire[], path: KeyPath): void {
  wires.forEach((later, index) => {
    for (const earlier of wires.slice(0, index)) {
      if (later.hangs || earlier.hangs) continue;
      const names = `"${shown(earlier.name)}" and "${shown(later.name)}"`;
      if (twins(earlier, later)) {
        const message = `The wires ${names} have the same two ends: they lie on each other. Leave one out, or move it aside.`;
        checked.build.report([...path, index], "value", fault(message, "wires that are apart"));
        continue;
      }
      const met = crossing(earlier, later);
      if (!met) continue;
      const spot = `${metres(met.onA * Math.hypot(...vector(earlier.from, earlier.to)))} along the first`;
      const message = `The wires ${names} cross without a joint, ${spot}. Split both there, or move one aside.`;
      checked.build.report([...path, index], "value", fault(message, "wires that meet at their ends, or stay apart"));
    }
  });
}
