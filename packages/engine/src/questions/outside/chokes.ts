/** The same station with other chokes: pure changes of its parts, none of which needs a new solution of the wires. */
import type { Complex } from "../../numerics/complex";
import { exactly, type Spectrum } from "../../quantity/quantity";
import { mapParts } from "../../station/mapParts";
import type { ChokePart, Part } from "../../station/path";
import type { Station } from "../../station/station";

const constant = (value: number): Spectrum => ({ kind: "constant", quantity: exactly(value) });

/** A choke of one impedance (ohm) at all frequencies. */
export const chokeOf = (name: string, impedance: Complex): ChokePart => ({
  kind: "choke",
  name,
  note: "",
  state: "in line",
  resistance: constant(impedance.re),
  reactance: constant(impedance.im),
  heatLimit: null,
  length: null,
});

/** What takes the place of a choking part: its new common-mode impedance, or nothing for "as it is". */
export type NewImpedance = (name: string) => Complex | null;

/** Chokes, and baluns that choke, with other common-mode impedances; a balun keeps its resistance only. */
export function withImpedances(station: Station, impedanceOf: NewImpedance): Station {
  const change = (part: Part): readonly Part[] => {
    const impedance = impedanceOf(part.name);
    if (impedance === null) return [part];
    if (part.kind === "choke") return [{ ...chokeOf(part.name, impedance), state: part.state, length: part.length }];
    if (part.kind === "balun" && part.choking) return [{ ...part, choking: constant(impedance.re) }];
    return [part];
  };
  return { ...station, path: mapParts(station.path, change) };
}
