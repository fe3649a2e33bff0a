/** The decoded file to the station, with every gap filled and listed, and everything that refers to something checked. */
import type { Assumption, Problem, Station } from "@feedpath/engine";
import { checkStation } from "../checks/checkStation";
import { partsWithPlaces } from "../checks/references";
import { measuredFiles } from "../reading/measuredFiles";
import type { FileStation } from "../schema/station";
import { buildAntenna, feedNames, writtenAntennas } from "./antennas";
import type { Build } from "./build";
import { fill } from "./build";
import { buildLines, buildSite } from "./ownLines";
import { buildPath, givenNames, type PathBuild } from "./path";
import { buildBands, buildTransmitter } from "./radio";
import { buildEarths, buildGround, buildPeople, buildReadings, buildSurroundings, buildWanted } from "./surroundings";

export interface BuiltStation {
  readonly station: Station;
  /** Problems inside files that the station refers to. */
  readonly problems: readonly Problem[];
}

/** Builds a station. Problems go to `report`; the station is only good when there are none anywhere. */
export function buildStation(
  file: FileStation,
  report: Build["report"],
  listed: readonly Assumption[],
  readFile?: (relativePath: string) => string | null,
): BuiltStation {
  const build: Build = { assumptions: [...listed], lines: [], report };
  const title = fill(build, file.station, {
    place: "title",
    name: "title of the station",
    value: "A station without a name",
    says: "A station without a name",
    reason: "not given",
  });
  const bands = buildBands(build, file);
  const transmitter = buildTransmitter(build, file.transmitter);
  const antennas = writtenAntennas(build, file);
  const lines = buildLines(build, file.lines);
  const site = buildSite(file.site);
  const walk: PathBuild = {
    build,
    given: new Set(givenNames(file.path)),
    counts: new Map(),
    feeds: antennas.flatMap(feedNames),
    names: [],
  };
  const path = buildPath(walk, file.path, ["path"], "path");
  const station: Station = {
    title,
    note: file.note ?? "",
    bands,
    transmitter,
    path,
    antennas: antennas.map((antenna, index) => buildAntenna(build, antenna, index)),
    ground: buildGround(build, file.ground),
    earths: buildEarths(build, file.earths),
    surroundings: buildSurroundings(build, file),
    people: buildPeople(build, file.people),
    wanted: buildWanted(file.wanted),
    readings: buildReadings(build, file.readings),
    assumptions: build.assumptions,
    ...(lines.length > 0 ? { lines } : {}),
    ...(site ? { site } : {}),
    measured: {},
  };
  const checked = { build, file, station, antennas, partNames: walk.names, feeds: walk.feeds };
  checkStation(checked);
  const places = new Map(partsWithPlaces(checked).map(({ part, path: at }) => [part.name, at]));
  const { measured, problems } = measuredFiles(build, station, (part) => places.get(part) ?? ["path"], readFile);
  return { station: { ...station, measured }, problems };
}
