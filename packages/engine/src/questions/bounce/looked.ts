/** A line of the path with what stands at its end. Types only. */
import type { ResolvedEdge } from "../../chain/resolve";
import type { WorkedPoint } from "../../chain/workedPoint";
import type { Complex } from "../../numerics/complex";
import type { ResonatorFit } from "../../pulses/resonator";
import type { Termination } from "../../pulses/termination";
import type { LinePart } from "../../station/path";

export interface LineLooked {
  readonly part: LinePart;
  readonly length: number;
  /** Impedance at the end of the line at the frequency; null: open. */
  readonly load: Complex | null;
  readonly termination: Termination;
  /** Where the load was taken from the antenna and fitted. */
  readonly fit: ResonatorFit | null;
  /** "the antenna", "the rest of the path", "25 Ω", "an open end". */
  readonly loadKind: "antenna" | "rest" | "tried" | "open" | "shorted";
  /** Net power that enters the line once all is settled, W; null where it takes none to speak of: the first wave then carries `ratedPower`. */
  readonly powerIn: number | null;
  readonly ratedPower: number;
  /** The whole station; null where another load was tried. */
  readonly point: WorkedPoint | null;
}

export type LineEdge = ResolvedEdge & { readonly part: LinePart };
