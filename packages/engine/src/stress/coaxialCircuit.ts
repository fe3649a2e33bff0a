/** The thermal circuit of a coaxial line. */
import { outerConductorImpedance } from "../conductors/outerConductor";
import { outerRadius, roundConductorImpedance } from "../conductors/roundConductor";
import { radiusRatio } from "../lines/coaxialLine";
import type { CoaxialLine, LineEntry } from "../lines/lineModel";
import { area, coefficientOf, hardly, jacketed, type Losses, limitOf, metalArea, weathered } from "./conductorHeat";
import { jacketMaterial, metalHeat, type ThermalMaterial, thermalMaterial, unknownInsulation } from "./materials";
import type { ThermalLine } from "./thermalCircuit";

/** `losses` of the whole line at `frequency` (Hz), shared between the conductors as the build has it; half of the insulation's heat starts at the inner. */
export function coaxialCircuit(line: LineEntry, build: CoaxialLine, losses: Losses, frequency: number): ThermalLine {
  const omega = 2 * Math.PI * frequency;
  const inner = roundConductorImpedance(build.inner, omega).re;
  const outer = outerConductorImpedance(build.outer, omega).re;
  const share = inner + outer > 0 ? inner / (inner + outer) : 0;
  const [d, di, dj] = diameters(line, build);
  const dielectric = thermalMaterial(build.dielectric.name);
  const material = dielectric ?? unknownInsulation;
  const ratio = di / d;
  const wormer = 1 / (2 * Math.log(ratio)) - 1 / (ratio * ratio - 1);
  const stored = area(di, d) * material.heatCapacity;
  const metal = metalArea(build.inner);
  const shell = shellArea(build);
  const cover = area(dj, di) * jacketMaterial.heatCapacity;
  const outerMetal = metalHeat(build.outer.metal.name);
  const limit = limitOf(line, build.dielectric.greatestTemperature, material);
  return {
    inner: share * losses.resistance,
    outer: (1 - share) * losses.resistance,
    conductance: losses.conductance,
    coefficient: coefficientOf(build.inner, omega),
    insulation: Math.log(radiusRatio(build)) / (2 * Math.PI * material.conductivity),
    jacket: dj > di ? Math.log(dj / di) / (2 * Math.PI * jacketMaterial.conductivity) : hardly,
    capacities: [
      metal.heatCapacity + wormer * stored,
      shell * outerMetal.heatCapacity + (1 - wormer) * stored + cover / 2,
      cover / 2 + hardly,
    ],
    surface: { diameter: dj, ...(line.jacketDiameter ? jacketed : weathered) },
    axial: metal.along + shell * outerMetal.conductivity,
    ...limit,
    notes: [...unknownNote(line, build.dielectric.name, dielectric), ...bareNote(line)],
  };
}

/** m over the inner conductor, over the insulation, over everything. */
function diameters(line: LineEntry, build: CoaxialLine): readonly [number, number, number] {
  const insulation = 2 * build.outer.innerRadius;
  const wall = Number.isFinite(build.outer.wall) ? 2 * build.outer.wall : 0;
  return [2 * outerRadius(build.inner), insulation, Math.max(line.jacketDiameter ?? 0, insulation + wall)];
}

/** m² of metal in the outer conductor. Its wall where it has one; else a braid of usual weight, 4 % of the diameter (our assumption). */
function shellArea(build: CoaxialLine): number {
  const { innerRadius, wall } = build.outer;
  const thickness = Number.isFinite(wall) ? wall : 0.04 * innerRadius;
  return 2 * Math.PI * innerRadius * thickness;
}

const unknownNote = (line: LineEntry, name: string, known: ThermalMaterial | null): string[] =>
  known ? [] : [`${line.designation}: how "${name}" carries heat is not known; taken as polyethylene`];

const bareNote = (line: LineEntry): string[] =>
  line.jacketDiameter ? [] : [`${line.designation}: its jacket is not known; taken without one`];
