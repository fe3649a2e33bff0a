/** A line's build as a thermal circuit per metre: what heats where, what lies between, and what must warm. */
import { outerConductorImpedance } from "../conductors/outerConductor";
import { outerRadius, roundConductorImpedance } from "../conductors/roundConductor";
import { radiusRatio } from "../lines/coaxialLine";
import { lineConstants } from "../lines/lineConstants";
import type { BuiltLine, CoaxialLine, LineEntry, ParallelWireLine, RoundConductor } from "../lines/lineModel";
import {
  bareWireLimit,
  jacketMaterial,
  metalHeat,
  type ThermalMaterial,
  thermalMaterial,
  unknownInsulation,
} from "./materials";
import type { RoundSurface } from "./surfaceHeat";

/** One round thing that warms: a coaxial line, or one wire of a pair. Everything per metre. */
export interface ThermalLine {
  /** Ohm/m at 20 °C of the inner conductor (a pair: of one wire) and of the outer (a pair: 0); S/m of the insulation's loss. */
  readonly inner: number;
  readonly outer: number;
  readonly conductance: number;
  /** Relative rise of the resistivity a kelvin. */
  readonly coefficient: number;
  /** K m/W of insulation and jacket. */
  readonly insulation: number;
  readonly jacket: number;
  /** J/(m K) that warm with the inner conductor, with the outer, with the surface. */
  readonly capacities: readonly [number, number, number];
  readonly surface: RoundSurface;
  /** W m/K along inner and outer metal. */
  readonly axial: number;
  /** K the insulation bears for long, and why. */
  readonly greatestTemperature: number;
  readonly limitSource: string;
  /** Sentences on what was taken for lack of knowledge. */
  readonly notes: readonly string[];
}

/** The build of a line, where it has one: its own model, or what the catalogue knows of it. */
export const buildOf = (line: LineEntry): BuiltLine | null =>
  line.build ?? (line.model.kind === "data sheet" ? null : line.model);

/** Dark jackets, and bare wire that has stood outdoors (from memory). */
const jacketed = { emissivity: 0.9, absorptivity: 0.8 };
const weathered = { emissivity: 0.6, absorptivity: 0.7 };
/** K m/W and J/(m K) of what is not there: small enough to change nothing. */
const hardly = 1e-3;

/**
 * The thermal circuit of a line at `frequency` (Hz); null where its build is not known. Losses are those of the line's own
 * model at 20 °C with `excess` dB/m over new, shared between the conductors as the build has it.
 */
export function thermalLine(line: LineEntry, frequency: number, excess: number): ThermalLine | null {
  const build = buildOf(line);
  if (build === null) return null;
  const losses = lineConstants(line.model, frequency, { excessDecibelsPerMetre: excess });
  if (build.kind === "coaxial") return coaxial(line, build, losses, frequency);
  if (build.kind === "parallel-wire") return oneWire(line, build, losses);
  return null;
}

interface Losses {
  readonly resistance: number;
  readonly conductance: number;
}

function coaxial(line: LineEntry, build: CoaxialLine, losses: Losses, frequency: number): ThermalLine {
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
    coefficient: build.inner.layers.at(-1)?.metal.temperatureCoefficient ?? copperCoefficient,
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

const copperCoefficient = 0.003_93;

const area = (outer: number, inner: number): number => (Math.PI / 4) * (outer ** 2 - inner ** 2);

/** m over the inner conductor, over the insulation, over everything. */
function diameters(line: LineEntry, build: CoaxialLine): readonly [number, number, number] {
  const insulation = 2 * build.outer.innerRadius;
  const wall = Number.isFinite(build.outer.wall) ? 2 * build.outer.wall : 0;
  return [2 * outerRadius(build.inner), insulation, Math.max(line.jacketDiameter ?? 0, insulation + wall)];
}

/** J/(m K) and W m/K of a round conductor, layer by layer. */
function metalArea(conductor: RoundConductor): { readonly heatCapacity: number; readonly along: number } {
  let [inside, heatCapacity, along] = [conductor.holeRadius, 0, 0];
  for (const layer of conductor.layers) {
    const section = area(2 * layer.outerRadius, 2 * inside);
    const metal = metalHeat(layer.metal.name);
    heatCapacity += section * metal.heatCapacity;
    along += section * metal.conductivity;
    inside = layer.outerRadius;
  }
  return { heatCapacity, along };
}

/** m² of metal in the outer conductor. Its wall where it has one; else a braid of usual weight, 4 % of the diameter (our assumption). */
function shellArea(build: CoaxialLine): number {
  const { innerRadius, wall } = build.outer;
  const thickness = Number.isFinite(wall) ? wall : 0.04 * innerRadius;
  return 2 * Math.PI * innerRadius * thickness;
}

function oneWire(line: LineEntry, build: ParallelWireLine, losses: Losses): ThermalLine {
  const diameter = 2 * outerRadius(build.wire);
  const { insulation } = build;
  const sleeveName = insulation?.dielectric.name ?? (isCovered(build) ? build.dielectric.name : null);
  const sleeve = sleeveName === null ? null : (thermalMaterial(sleeveName) ?? unknownInsulation);
  const over = insulation ? 2 * insulation.outerRadius : sleeve ? 2 * diameter : diameter;
  const metal = metalArea(build.wire);
  const limit = sleeve
    ? limitOf(line, insulation?.dielectric.greatestTemperature ?? build.dielectric.greatestTemperature, sleeve)
    : {
        greatestTemperature: line.ratings?.temperature?.value ?? bareWireLimit,
        limitSource: "hard-drawn wire begins to soften (from memory)",
      };
  return {
    inner: losses.resistance / 2,
    outer: 0,
    conductance: losses.conductance / 2,
    coefficient: build.wire.layers.at(-1)?.metal.temperatureCoefficient ?? copperCoefficient,
    insulation: sleeve ? Math.log(over / diameter) / (2 * Math.PI * sleeve.conductivity) : hardly,
    jacket: hardly,
    capacities: [metal.heatCapacity, hardly, hardly + (sleeve ? area(over, diameter) * sleeve.heatCapacity : 0)],
    surface: { diameter: over, ...(sleeve ? jacketed : weathered) },
    axial: metal.along,
    ...limit,
    notes:
      sleeve && !insulation
        ? [`${line.designation}: a sleeve half as thick as the wire is taken for its insulation`]
        : [],
  };
}

/** Without a shape: what surrounds the wires is more than air. */
const isCovered = (build: ParallelWireLine): boolean => !/^air|vacuum/i.test(build.dielectric.name);

function limitOf(
  line: LineEntry,
  stated: number | undefined,
  material: ThermalMaterial,
): Pick<ThermalLine, "greatestTemperature" | "limitSource"> {
  const rated = line.ratings?.temperature?.value;
  if (rated !== undefined) return { greatestTemperature: rated, limitSource: "the line's rating" };
  if (stated !== undefined) return { greatestTemperature: stated, limitSource: "what its insulation bears for long" };
  return {
    greatestTemperature: material.greatestTemperature ?? unknownInsulation.greatestTemperature!,
    limitSource:
      material.greatestTemperature === null
        ? "its spacers and jacket, taken as polyethylene (our assumption)"
        : "what its insulation bears for long: cable practice (from memory)",
  };
}

const unknownNote = (line: LineEntry, name: string, known: ThermalMaterial | null): string[] =>
  known ? [] : [`${line.designation}: how "${name}" carries heat is not known; taken as polyethylene`];

const bareNote = (line: LineEntry): string[] =>
  line.jacketDiameter ? [] : [`${line.designation}: its jacket is not known; taken without one`];
