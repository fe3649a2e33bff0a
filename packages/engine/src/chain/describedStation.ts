/** The structure of a station's antennas, built once for each content. */
import { type AntennaBuild, antennaStructure } from "../antenna/antennaStructure";
import { createBoundedStore } from "../kept/boundedStore";
import type { Station } from "../station/station";

export interface DescribedBuild {
  readonly build: AntennaBuild;
  /** All that the solution of the wires hangs on but frequency, lift and mesh: chokes and the resistance of earths are no part of it. */
  readonly wires: string;
}

const mostBytes = 16e6;
/** Wires are objects of some 400 bytes beside their text. */
const byContent = createBoundedStore<DescribedBuild>(
  mostBytes,
  ({ build, wires }) => 4 * wires.length + 400 * build.structure.wires.length,
);
/** Stations are never changed: the same object is the same content, and writing it out takes longer than a look-up. */
const byStation = new WeakMap<Station, DescribedBuild>();

export function describeStation(station: Station): DescribedBuild {
  const known = byStation.get(station);
  if (known) return known;
  const content = JSON.stringify([
    ...[station.antennas, station.surroundings, station.earths, station.ground],
    ...[station.path, station.transmitter.earthed],
  ]);
  const described = byContent.get(content) ?? describedBuild(station);
  byContent.set(content, described);
  byStation.set(station, described);
  return described;
}

function describedBuild(station: Station): DescribedBuild {
  const build = antennaStructure(station);
  const { structure, refused, surroundingWires, outsideWires, restingWires } = build;
  const loads = station.antennas.map((a) => [a.loads, a.shapes]);
  // What a lift leaves where it is.
  const staying = [surroundingWires, outsideWires, restingWires].map((wires) => [...wires]);
  return { build, wires: JSON.stringify([structure, refused, loads, staying, station.ground]) };
}
