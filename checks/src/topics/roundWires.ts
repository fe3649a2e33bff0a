/** Round wires: solid, tubular and clad, against the exact cylindrical solution. */
import { roundConductorImpedance, skinDepth, solidWireImpedance, surfaceResistance } from "@feedpath/engine";
import { input, type PublishedRow } from "../ledger/publishedRow";

export const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
export const omegaOf = (row: PublishedRow): number => 2e6 * Math.PI * input(row, "f_MHz");

/** A wire whose radius is `radii` skin depths, at a frequency that is of no consequence. */
const omega = 2e6 * Math.PI;
const depth = skinDepth(copper.conductivity, 1, omega);

export function solidWire(row: PublishedRow) {
  const radius = input(row, "radius/delta") * depth;
  const z = solidWireImpedance(radius, copper.conductivity, 1, omega);
  const direct = solidWireImpedance(radius, copper.conductivity, 1, 0).re;
  const ratio = z.im / direct;
  return {
    "R/Rdc": z.re / direct,
    "Xint/Rdc": ratio,
    "Lint/(mu0/8pi)": z.im / omega / 0.5e-7,
  };
}

export function tube(row: PublishedRow) {
  const radius = input(row, "outer radius/delta") * depth;
  const wall = input(row, "wall/delta") * depth;
  const z = roundConductorImpedance(
    {
      form: "tube",
      layers: [{ metal: copper, outerRadius: radius }],
      holeRadius: radius - wall,
      effectiveRadiusRatio: 1,
      resistanceFactor: 1,
    },
    omega,
  );
  const unit = surfaceResistance(copper.conductivity, 1, omega) / (2 * Math.PI * radius);
  return { R_rel: z.re / unit, X_rel: z.im / unit };
}

export function cladWire(row: PublishedRow) {
  const radius = input(row, "d_mm") / 2e3;
  const core = {
    name: "steel",
    conductivity: input(row, "sigma_steel"),
    permeability: input(row, "mu_r_steel"),
  };
  const z = roundConductorImpedance(
    {
      form: "solid",
      layers: [
        { metal: core, outerRadius: radius - input(row, "copper_thickness_um") * 1e-6 },
        { metal: copper, outerRadius: radius },
      ],
      holeRadius: 0,
      effectiveRadiusRatio: 1,
      resistanceFactor: 1,
    },
    omegaOf(row),
  );
  const solid = solidWireImpedance(radius, input(row, "sigma_Cu"), 1, omegaOf(row)).re;
  return { R_ccs_ohm_per_m: z.re, X_ccs_ohm_per_m: z.im, R_solid_Cu_ohm_per_m: solid, ratio: z.re / solid };
}
