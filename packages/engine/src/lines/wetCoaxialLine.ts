/** A coaxial line that took water: in its dielectric, under its braid, and between the wires of the braid, where it corrodes. */
import { knownBraid } from "../conductors/braidGeometry";
import type { OuterConductor } from "../conductors/conductor";
import type { Dielectric } from "../dielectrics/dielectric";
import { depolarisation } from "../dielectrics/mixture";
import { type DirtyWater, soaked } from "../dielectrics/wetDielectric";
import { radiusRatio } from "./coaxialLine";
import type { CoaxialLine } from "./lineModel";

export interface WetCable {
  readonly water: DirtyWater;
  /** Share of the dielectric's volume, 0 to 1: drops that stay in closed cells, or channels from conductor to conductor. */
  readonly inDielectric?: { readonly share: number; readonly lies: "drops" | "channels" };
  /** m of water between dielectric and outer conductor; it takes the place of so much dielectric. */
  readonly underBraid?: number;
  /** Ohm of one corroded contact between two wires of the braid. */
  readonly contact?: number;
}

/**
 * The line as the water leaves it. Drops against channels, and all of one against all of the other place, are the ends between which
 * a real cable lies: where the water sits is seldom known. Uniform along the line; a wet stretch is a line of its own.
 */
export function wetted(line: CoaxialLine, state: WetCable): CoaxialLine {
  const within = inDielectric(line.dielectric, state);
  const dielectric = underBraid(line, within, state);
  const outer = state.contact === undefined ? line.outer : corroded(line.outer, state.contact);
  return { ...line, outer, dielectric };
}

function inDielectric(dry: Dielectric, { water, inDielectric: found }: WetCable): Dielectric {
  if (found === undefined || found.share === 0) return dry;
  return soaked(dry, water, found.share, found.lies === "drops" ? depolarisation.round : depolarisation.along);
}

/** Two layers across the field add their inverse permittivities by their shares of ln(D/d). */
function underBraid(line: CoaxialLine, within: Dielectric, { water, underBraid: film = 0 }: WetCable): Dielectric {
  if (film === 0) return within;
  const outside = line.outer.innerRadius;
  const all = Math.log(radiusRatio(line));
  const share = -Math.log(1 - film / outside) / all;
  if (!(film > 0 && share < 1)) {
    throw new RangeError(
      `wet cable: ${film} m of water under a braid of ${outside} m inner radius; expected a film thinner than the dielectric`,
    );
  }
  return soaked(within, water, share, depolarisation.across);
}

/**
 * The outer conductor with `contact` ohm between the wires at each touch: every lay of the braid, each of C carriers changes between
 * its inner and outer side C/4 times (two over, two under), and its 2/C of the current leaves it through ends^2 touches:
 * contact/(lay ends^2) ohm/m, in the upper limit in which all current stays inside. Our own model, an order of magnitude:
 * what one contact has is not known for any cable in use.
 */
function corroded(outer: OuterConductor, contact: number): OuterConductor {
  const braid = outer.shield?.form === "braid" ? knownBraid(outer.innerRadius, outer.shield.braid) : null;
  if (braid === null || !(contact >= 0)) {
    throw new RangeError(
      `wet cable: contacts of ${contact} ohm in this shield; expected 0 or more, in a braid whose carriers, ends, wire and angle are known`,
    );
  }
  const lay = (Math.PI * braid.meanDiameter) / Math.tan(braid.angle);
  return { ...outer, addedResistance: (outer.addedResistance ?? 0) + contact / (lay * braid.ends ** 2 * braid.layers) };
}
