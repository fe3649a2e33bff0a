/** A pair of wires in the rain: water on its surfaces. */
import { relativePermittivity } from "../dielectrics/complexPermittivity";
import { diluted } from "../dielectrics/diluted";
import { depolarisation } from "../dielectrics/mixture";
import { type DirtyWater, waterDielectric, waterResponse, withResponse } from "../dielectrics/wetDielectric";
import { complex } from "../numerics/complex";
import { barePairCapacitance } from "./crossSection/sleevedPair";
import { webbedField } from "./crossSection/webbedPair";
import { fieldRadius } from "./crowdedWire";
import { insulatedCapacitance } from "./insulatedPair";
import type { PairInsulation, ParallelWireLine } from "./lineModel";

/** Water on all surfaces, as much as a layer of `thickness` m would be. */
export interface WetSurface {
  readonly water: DirtyWater;
  readonly thickness: number;
}

/** The same water in separate drops, and as one film: measurements of wet lines disagree as widely as these two. */
export interface WetPair {
  readonly drops: ParallelWireLine;
  readonly film: ParallelWireLine;
}

/**
 * A pair with insulation, wet. The field of the dry line on the insulation's surface polarises the water: a film along the surface with
 * all of its permittivity and conductivity (an upper bound of the capacitance, by Dirichlet's principle), drops as spheres, weakened
 * within. First order in the water: good while the capacitance rises by less than about a third. Bare wires: a sleeve of
 * water, exactly; it changes next to nothing. Water on spreaders and insulators is not in it.
 */
export function wettedPair(line: ParallelWireLine, wet: WetSurface): WetPair {
  if (!(wet.thickness >= 0)) throw new RangeError(`wet pair: ${wet.thickness} m of water; expected 0 or more`);
  const { insulation } = line;
  if (insulation === undefined) {
    const bare = bareAndWet(line, wet);
    return { drops: bare, film: bare };
  }
  return { drops: around(line, insulation, wet, depolarisation.round), film: around(line, insulation, wet, 0) };
}

function bareAndWet(line: ParallelWireLine, { water, thickness }: WetSurface): ParallelWireLine {
  if (thickness === 0) return line;
  const outerRadius = fieldRadius(line.wire) + thickness;
  return { ...line, insulation: { form: "sleeves", outerRadius, dielectric: waterDielectric(water) } };
}

/** The line with all that lies round its wires, water too, in one effective dielectric. */
function around(
  line: ParallelWireLine,
  insulation: PairInsulation,
  { water, thickness }: WetSurface,
  weakening: number,
): ParallelWireLine {
  const vacuum = barePairCapacitance(fieldRadius(line.wire), line.spacing.value);
  const outside = line.dielectric.permittivity;
  const { along, across } = surfaceFields(line, insulation);
  const flat = waterResponse(water, outside, weakening);
  const upright = weakening === 0 ? waterResponse(water, outside, depolarisation.across) : flat;
  // 2 V lie between the wires: half of eps0 C (2 V)^2 is the energy, and water adds half of its contrast times E^2 a volume.
  const weight = thickness / (4 * vacuum);
  const base = diluted(insulation.dielectric, (own) => {
    const dry = insulatedCapacitance(line, insulation, own, complex(outside));
    const polarised = weight * (along * flat.above + across * upright.above);
    return complex(dry.re / vacuum + polarised, dry.im / vacuum);
  });
  const dielectric = { ...insulation.dielectric, ...base };
  const withFlat = withResponse(dielectric, flat, weight * along, insulation.dielectric.name);
  const { insulation: _, ...open } = line;
  return { ...open, dielectric: { ...withResponse(withFlat, upright, weight * across, ""), name: withFlat.name } };
}

/** Squared field for 1 V and -1 V, integrated round the insulation: windows as empty lengths. */
function surfaceFields(
  line: ParallelWireLine,
  insulation: PairInsulation,
): { readonly along: number; readonly across: number } {
  const omega = 2 * Math.PI * (insulation.dielectric.statedAt ?? 1e7);
  const ratio = relativePermittivity(insulation.dielectric, omega).re / relativePermittivity(line.dielectric, omega).re;
  const of = (thickness: number) =>
    webbedField(
      { radius: fieldRadius(line.wire), outerRadius: insulation.outerRadius, spacing: line.spacing.value, thickness },
      complex(ratio),
    );
  const [filled, thickness] = insulation.form === "web" ? [insulation.filled, insulation.thickness] : [0, 0];
  const parts = [
    { share: filled, field: filled > 0 ? of(thickness) : null },
    { share: 1 - filled, field: filled < 1 ? of(0) : null },
  ];
  const sum = (what: "alongSurface" | "acrossSurface") =>
    parts.reduce((total, { share, field }) => total + share * (field?.[what] ?? 0), 0);
  return { along: sum("alongSurface"), across: sum("acrossSurface") };
}
