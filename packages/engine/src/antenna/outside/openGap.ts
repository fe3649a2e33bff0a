/** Opens the outside of a line at one place by all that chokes it there. */
import { add, type Complex, complex } from "../../numerics/complex";
import type { Growing } from "../growing";
import type { Opening } from "./openings";
import type { OutsideChoke } from "./outsideLine";

/** `along` is the distance on the wire, `distance` that from the start of the run, m. */
export function openGap(
  growing: Growing,
  openings: readonly Opening[],
  wire: number,
  along: number,
  distance: number,
): OutsideChoke {
  const names = openings.map((o) => o.name);
  const name = names.join(" and ");
  const impedances = openings.map((o) => o.impedance);
  const impedance = (w: number): Complex | "open" =>
    impedances.reduce<Complex | "open">(
      (sum, z) => (sum === "open" || z === "open" ? "open" : add(sum, z(w))),
      complex(0),
    );
  growing.gaps.push({ name, wire, distance: along, closing: { name, kind: "choke", impedance } });
  return {
    names,
    gap: growing.gaps.length - 1,
    distance,
    impedances: impedances.map((z) => (z === "open" ? null : z)),
    heatLimits: openings.map((o) => o.heatLimit),
  };
}
