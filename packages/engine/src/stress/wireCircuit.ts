/** The thermal circuit of one wire of a pair, of four, or over a plane. */
import { outerRadius } from "../conductors/roundConductor";
import type { BuiltLine, Dielectric, LineEntry, RoundConductor } from "../lines/lineModel";
import {
  area,
  coefficientOf,
  type HeatLimit,
  hardly,
  jacketed,
  type Losses,
  limitOf,
  metalArea,
  weathered,
} from "./conductorHeat";
import { bareWireLimit, thermalMaterial, unknownInsulation } from "./materials";
import type { ThermalLine } from "./thermalCircuit";

interface WireForm {
  readonly wire: RoundConductor;
  /** Share of all the line's heat that one wire makes. */
  readonly share: number;
  /** m over its sleeve, and what that is of; null for bare wire. */
  readonly sleeve: { readonly diameter: number; readonly dielectric: Dielectric; readonly taken: boolean } | null;
  /** Of its surface what the air reaches: two that touch hide a part of each other. */
  readonly free: number;
}

/** Two touching circles: (π + 2) diameters round both, of 2π (a string round them). */
const freeOfTouching = (Math.PI + 2) / (2 * Math.PI);

/** Null for two wires in one shield: how their heat crosses to it is not worked out. A plane is taken to make no heat of its own. */
function formOf(build: Exclude<BuiltLine, { readonly kind: "coaxial" }>): WireForm | null {
  switch (build.kind) {
    case "parallel-wire":
      return { wire: build.wire, share: 1 / 2, sleeve: sleeveOfPair(build), free: 1 };
    case "twisted pair": {
      const { outerRadius: radius, dielectric } = build.sleeve;
      const sleeve = { diameter: 2 * radius, dielectric, taken: false };
      return { wire: build.wire, share: 1 / 2, sleeve, free: freeOfTouching };
    }
    case "wire over plane":
      return { wire: build.wire, share: 1, sleeve: taken(build.wire, build.dielectric), free: 1 };
    case "four-wire":
      return { wire: build.wire, share: 1 / 4, sleeve: taken(build.wire, build.dielectric), free: 1 };
    case "shielded pair":
      return null;
  }
}

function sleeveOfPair(build: Extract<BuiltLine, { readonly kind: "parallel-wire" }>): WireForm["sleeve"] {
  const { insulation } = build;
  return insulation
    ? { diameter: 2 * insulation.outerRadius, dielectric: insulation.dielectric, taken: false }
    : taken(build.wire, build.dielectric);
}

/** More than air without a shape: a sleeve half as thick as the wire is taken. */
const taken = (wire: RoundConductor, dielectric: Dielectric): WireForm["sleeve"] =>
  /^(air|vacuum)/i.test(dielectric.name) ? null : { diameter: 4 * outerRadius(wire), dielectric, taken: true };

/** `losses` of the whole line at `frequency` (Hz); the current in the drive is that of the line. */
export function wireCircuit(
  line: LineEntry,
  build: Exclude<BuiltLine, { readonly kind: "coaxial" }>,
  losses: Losses,
  frequency: number,
): ThermalLine | null {
  const form = formOf(build);
  if (form === null) return null;
  const { wire, share, sleeve, free } = form;
  const diameter = 2 * outerRadius(wire);
  const material = sleeve && (thermalMaterial(sleeve.dielectric.name) ?? unknownInsulation);
  const over = sleeve ? sleeve.diameter : diameter;
  const metal = metalArea(wire);
  const stored = material ? area(over, diameter) * material.heatCapacity : 0;
  return {
    inner: share * losses.resistance,
    outer: 0,
    conductance: share * losses.conductance,
    coefficient: coefficientOf(wire, 2 * Math.PI * frequency),
    insulation: material ? Math.log(over / diameter) / (2 * Math.PI * material.conductivity) : hardly,
    jacket: hardly,
    capacities: [metal.heatCapacity, hardly, hardly + stored],
    surface: { diameter: free * over, ...(sleeve ? jacketed : weathered) },
    axial: metal.along,
    ...(sleeve && material ? limitOf(line, sleeve.dielectric.greatestTemperature, material) : bareLimit(line)),
    notes: sleeve?.taken ? [`${line.designation}: a sleeve half as thick as the wire is taken for its insulation`] : [],
  };
}

const bareLimit = (line: LineEntry): HeatLimit => ({
  greatestTemperature: line.ratings?.temperature?.value ?? bareWireLimit,
  limitSource: "hard-drawn wire begins to soften (from memory)",
});
