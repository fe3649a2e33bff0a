/** What the moment method here cannot hold, said before any memory is taken. */
import { speedOfLight } from "../numerics/vacuum";
import { distanceBetween, wireLength } from "./geometry";
import { sameplace } from "./junctions";
import { isRealSoil, type Sleeve, type Soil, type Structure, type Wire } from "./structure";
import { feedProblems } from "./validateFeeds";
import { portProblems } from "./validatePorts";
import { countProblems, sizeProblems } from "./validateSize";
import { spacingProblems } from "./validateSpacing";

/** Wires thicker than this share of a wavelength carry currents around themselves that the method does not know. */
const thickestInWavelengths = 0.01;
/** A wire that ends in the air is thinner than a tenth of its length. */
const shortestInRadii = 20;
/** Pieces between others, such as the link of a close pair, and bars of grids. */
const shortestLinkInRadii = 6;
/**
 * Over soil: least height of an axis. Below it the current's crowding towards the soil counts, which is not modelled: over a
 * perfect plane arcosh(h/a) against ln(2h/a) is 1.6 % off at 3 radii, 12 % at 1.5.
 */
const lowestHeight = 0.001;
const lowestInRadii = 1.5;
/** Over a perfect plane: distance from the own image as for two wires. */
const lowestOverPlaneInRadii = 3;

const metres = (x: number): string => `${Number(x.toPrecision(4))} m`;

/** Everything that stands against solving, as sentences with the bound that is broken; empty when all is well. */
export function validateStructure(structure: Structure, soil: Soil, frequency: number): string[] {
  if (!(frequency > 0 && Number.isFinite(frequency))) return [`frequency ${frequency} Hz: expected a positive number`];
  const tooMany = countProblems(structure);
  if (tooMany.length > 0) return tooMany;
  const basics = [...soilProblems(soil), ...wireProblems(structure, soil, speedOfLight / frequency)];
  if (basics.length > 0) return basics;
  const problems = [
    ...heightProblems(structure, soil),
    ...spacingProblems(structure),
    ...feedProblems(structure, soil),
    ...portProblems(structure, soil),
    ...loadProblems(structure, frequency),
  ];
  return problems.length > 0 ? problems : sizeProblems(structure, soil, frequency);
}

function soilProblems(soil: Soil): string[] {
  if (!isRealSoil(soil)) return [];
  const layers = soil.kind === "layered" ? soil.layers : [{ ...soil, thickness: null }];
  const problems = layers.flatMap(({ relativePermittivity, conductivity }) => {
    const fine = relativePermittivity >= 1 && conductivity >= 0 && Number.isFinite(conductivity);
    if (fine && Number.isFinite(relativePermittivity)) return [];
    return [
      `soil of permittivity ${relativePermittivity} and conductivity ${conductivity} S/m: ` +
        "expected a permittivity of 1 or more and a conductivity of 0 or more",
    ];
  });
  const flawed = layers.slice(0, -1).findIndex(({ thickness }) => !(thickness !== null && thickness > 0));
  return flawed < 0 && layers.length > 0
    ? problems
    : [...problems, `soil in layers: layer ${flawed + 1} has no thickness: expected metres above 0`];
}

function wireProblems(structure: Structure, soil: Soil, wavelength: number): string[] {
  if (structure.wires.length === 0) return ["the structure has no wires"];
  return structure.wires.flatMap((wire) => {
    const length = wireLength(wire);
    const name = `wire "${wire.name}"`;
    if (!(length > 0 && Number.isFinite(length))) return [`${name} has no length: its ends must be apart`];
    if (!(wire.radius > 0)) return [`${name} has radius ${wire.radius} m: expected more than 0`];
    const found: string[] = [];
    if (!(wire.conductivity > 0 && wire.permeability > 0))
      found.push(`${name}: conductivity and permeability must be positive`);
    if (wire.section && wire.section.layers.at(-1)?.outerRadius !== wire.radius)
      found.push(`${name}: the outermost layer of its metal must end at its radius, ${wire.radius} m`);
    if (wire.insulation && !soundSleeve(wire.insulation, wire.radius))
      found.push(
        `${name}: insulation must lie outside of the wire and have a permittivity of 1 or more and a loss tangent of 0 or more`,
      );
    found.push(...thicknessProblems(structure, soil, wire, wavelength));
    return found;
  });
}

/** Wires too thick for their length or for the wavelength (m). */
function thicknessProblems(structure: Structure, soil: Soil, wire: Wire, wavelength: number): string[] {
  const length = wireLength(wire);
  const name = `wire "${wire.name}"`;
  const found: string[] = [];
  const shortest = wire.bar || isLink(structure, soil, wire) ? shortestLinkInRadii : shortestInRadii;
  if (length < shortest * wire.radius * (1 - 1e-9))
    found.push(
      `${name} is ${metres(length)} long and ${metres(2 * wire.radius)} thick: shorter than ${shortest} of its radii, ` +
        "no wire any more; make it longer or thinner, or leave it out",
    );
  if (wire.radius > thickestInWavelengths * wavelength)
    found.push(
      `${name} has radius ${metres(wire.radius)}: thicker than ${thickestInWavelengths} wavelengths ` +
        `(${metres(thickestInWavelengths * wavelength)}), where currents around the wire count; make it thinner, ` +
        "or ask at a lower frequency",
    );
  return found;
}

/** Whether both ends go on: in another wire, in a contact, or in the perfect plane. */
const isLink = (structure: Structure, soil: Soil, wire: Wire): boolean =>
  [wire.from, wire.to].every(
    (end) =>
      (soil.kind === "perfect" && Math.abs(end[2]) <= sameplace) ||
      (structure.contacts ?? []).some((c) => distanceBetween(c.at, end) <= sameplace) ||
      structure.wires.some(
        (other) => other !== wire && [other.from, other.to].some((place) => distanceBetween(place, end) <= sameplace),
      ),
  );

const soundSleeve = ({ outerRadius, permittivity, lossTangent = 0 }: Sleeve, radius: number): boolean =>
  outerRadius > radius && permittivity >= 1 && lossTangent >= 0;

function heightProblems(structure: Structure, soil: Soil): string[] {
  if (soil.kind === "free space") return [];
  return structure.wires.flatMap((wire) => {
    const low = Math.min(wire.from[2], wire.to[2]);
    const high = Math.max(wire.from[2], wire.to[2]);
    const name = `wire "${wire.name}"`;
    if (soil.kind === "perfect") {
      const least = lowestOverPlaneInRadii * wire.radius;
      const stands = Math.abs(low) <= sameplace && high > least;
      if (stands || low >= least) return [];
      return [
        `${name} comes down to ${metres(low)}: over a perfect plane it ends on it or stays ${metres(least)} above`,
      ];
    }
    const least = leastHeight(wire);
    // As typed numbers have it, a sleeve may lie on the surface.
    if (low >= least * (1 - 1e-9)) return [];
    return [
      `${name} comes down to ${metres(low)}: its axis must stay ${metres(least)} above the soil ` +
        `(${metres(lowestHeight)}, ${lowestInRadii} radii of its metal where it lies level, and its sleeve in the air); ` +
        "nearer, the current crowds to the side of the soil, which is not computed; raise it",
    ];
  });
}

/** Least height of a wire's axis over soil, m. */
function leastHeight(wire: Wire): number {
  const level = Math.hypot(wire.to[0] - wire.from[0], wire.to[1] - wire.from[1]) / wireLength(wire);
  return Math.max(lowestHeight, level * lowestInRadii * wire.radius, level * (wire.insulation?.outerRadius ?? 0));
}

function loadProblems(structure: Structure, frequency: number): string[] {
  return structure.loads.flatMap((load) => {
    const wire = structure.wires[load.wire];
    if (!wire) return [`a load sits on wire number ${load.wire}, which does not exist`];
    const length = wireLength(wire);
    if (!(load.distance >= 0 && load.distance <= length))
      return [`a load sits ${load.distance} m along wire "${wire.name}", which is ${metres(length)} long`];
    const z = load.impedance(2 * Math.PI * frequency);
    if (Number.isFinite(z.re) && Number.isFinite(z.im)) return [];
    return [`a load on wire "${wire.name}" has an infinite impedance at ${frequency} Hz: give it a loss`];
  });
}
