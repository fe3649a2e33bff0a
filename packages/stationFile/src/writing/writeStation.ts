/** A station back to text: canonical, so that the same station always gives the same bytes. */
import type { Ground, SoilConstant, Station, Surrounding } from "@feedpath/engine";
import { stringify } from "yaml";
import { feedCount } from "../building/feedCount";
import { formatAmount, formatDirection, formatPlace, formatQuantity, formatSpan } from "../units/formatQuantity";
import { grammarVersion } from "../versions/version";
import { writeAntenna } from "./writeAntenna";
import { optional, writeSpectrum } from "./writeComponents";
import { writeConductor } from "./writeConductor";
import { describeLine } from "./writeLine";
import { writePath } from "./writePath";
import { type Branch, type Leaf, present, type Writing, writing } from "./writing";

/**
 * Text of a station in the present version of the grammar. Values the reader filled in are left out: reading the text
 * gives an equal station with the same assumptions.
 */
export function writeStation(station: Station): string {
  const w = writing(station.assumptions, station.lines);
  const tree = present({
    feedpath: w.given("feedpath", String(grammarVersion)),
    station: w.given("title", station.title),
    note: station.note === "" ? undefined : station.note,
    ...writeBands(w, station),
    transmitter: writeTransmitter(w, station),
    lines: writeLines(w, station),
    path: writePath(w, station.path, "path", feedCount(station.antennas)),
    ...writeAntennas(w, station),
    ground: w.given("ground", writeGround(station.ground)),
    site: writeSite(station),
    earths: station.earths.length > 0 ? writeEarths(station) : undefined,
    surroundings:
      station.surroundings.length > 0
        ? station.surroundings.map((thing, index) => writeSurrounding(w, thing, index))
        : undefined,
    people: station.people.length > 0 ? writePeople(w, station) : undefined,
    wanted: writeWanted(station),
    readings: station.readings.length > 0 ? writeReadings(w, station) : undefined,
  });
  return stringify(tree, { lineWidth: 0, schema: "failsafe", aliasDuplicateObjects: false });
}

function writeBands(w: Writing, { bands }: Station): Branch {
  const written = bands.map((band, index): readonly [string, Branch] => [
    band.name,
    present({
      frequency: w.given(`bands.${index}.frequency`, formatQuantity(band.frequency, "frequency")),
      band: w.given(`bands.${index}.sweep`, formatSpan(band.sweep.from, band.sweep.to, "frequency")),
      set: Object.keys(band.set).length > 0 ? band.set : undefined,
    }),
  ]);
  const [first] = written;
  return first?.[0] === "" ? first[1] : { bands: Object.fromEntries(written) };
}

function writeTransmitter(w: Writing, { transmitter }: Station): Branch {
  const { power, duty, onAir, designedFor, powerAtSwr, earthed, noiseFigure } = transmitter;
  const table = powerAtSwr.map((row) => [String(row.swr), formatQuantity(row.power, "power")]);
  return present({
    power: formatQuantity(power, "power"),
    duty: w.given("transmitter.duty", formatQuantity(duty, "ratio")),
    "on air": onAir ? `${formatAmount(onAir.on, "time")} of ${formatAmount(onAir.of, "time")}` : undefined,
    "designed for": w.given("transmitter.designedFor", formatQuantity(designedFor, "impedance")),
    "power at SWR": table.length > 0 ? Object.fromEntries(table) : undefined,
    earthed: w.given("transmitter.earthed", earthed),
    "noise figure": noiseFigure ? formatQuantity(noiseFigure, "decibels") : undefined,
  });
}

function writeAntennas(w: Writing, { antennas }: Station): Branch {
  const written = antennas.map(
    (antenna, index) => [antenna.name, writeAntenna(w, antenna, `antennas.${index}`)] as const,
  );
  const [first] = written;
  if (first && written.length === 1 && first[0] === "antenna") return { antenna: first[1] };
  return { antennas: Object.fromEntries(written) };
}

function writeLines(w: Writing, { lines = [] }: Station): Leaf {
  if (lines.length === 0) return undefined;
  return Object.fromEntries(
    lines.map((line, index) => [line.designation, describeLine(w, line, `lines.${index}`)] as const),
  );
}

function writeSite({ site }: Station): Leaf {
  if (!site) return undefined;
  const { altitude, airTemperature, noise } = site;
  return present({
    altitude: optional(altitude, "length"),
    "air temperature": optional(airTemperature, "temperature"),
    noise: noise ?? undefined,
  });
}

function writeGround(ground: Ground): Leaf {
  if (ground.kind === "free space" || ground.kind === "perfect") return ground.kind;
  if (ground.name) return ground.name;
  if (ground.kind === "soil") return writeSoil(ground);
  const [only, ...others] = ground.layers;
  const byFrequency = only && ("kind" in only.permittivity || "kind" in only.conductivity);
  if (byFrequency && others.length === 0) return writeSoil(only);
  return {
    layers: ground.layers.map((layer) =>
      present({
        ...writeSoil(layer),
        thickness: layer.thickness ? formatQuantity(layer.thickness, "length") : undefined,
      }),
    ),
  };
}

function writeSoil(soil: { readonly permittivity: SoilConstant; readonly conductivity: SoilConstant }): Branch {
  const value = (constant: SoilConstant, dimension: "number" | "conductivity"): Leaf =>
    "kind" in constant ? writeSpectrum(constant, dimension) : formatQuantity(constant, dimension);
  return { permittivity: value(soil.permittivity, "number"), conductivity: value(soil.conductivity, "conductivity") };
}

const writeEarths = ({ earths }: Station): Branch =>
  Object.fromEntries(
    earths.map(({ name, form, size, diameter, at, resistance }) => {
      const sized =
        form === "unspecified" || !size ? {} : { [form]: formatQuantity(size, form === "plate" ? "area" : "length") };
      const rest = {
        diameter: diameter ? formatQuantity(diameter, "length") : undefined,
        at: at ? formatPlace(at) : undefined,
        resistance: resistance ? formatQuantity(resistance, "impedance") : undefined,
      };
      return [name, present({ ...sized, ...rest })];
    }),
  );

function writeSurrounding(w: Writing, thing: Surrounding, index: number): Branch {
  if (thing.kind === "sheet") return { sheet: thing.name, corners: thing.corners.map(formatPlace) };
  if (thing.kind === "roof") return { roof: thing.covering, loss: formatQuantity(thing.loss, "decibels") };
  return present({
    conductor: thing.name,
    points: thing.points.map(formatPlace),
    wire: writeConductor(thing.wire),
    foot: thing.foot ? w.given(`surroundings.${index}.foot`, formatQuantity(thing.foot, "impedance")) : undefined,
    insulators: thing.insulators?.map((at) => formatQuantity(at, "length")),
  });
}

const writePeople = (w: Writing, { people }: Station): Leaf =>
  people.map(({ place, at, who, stays }, index) =>
    present({
      place,
      at: formatPlace(at),
      who: w.given(`people.${index}.who`, who),
      stays: w.given(`people.${index}.stays`, typeof stays === "string" ? stays : formatQuantity(stays, "time")),
    }),
  );

function writeWanted({ wanted }: Station): Leaf {
  const { elevation, direction, swrBelow, mayChange } = wanted;
  const facing =
    direction === null ? undefined : { value: direction, low: direction, high: direction, basis: "stated" as const };
  const tree = present({
    elevation: elevation ? formatQuantity(elevation, "angle") : undefined,
    direction: facing ? formatDirection(facing) : undefined,
    "SWR below": swrBelow ? formatQuantity(swrBelow, "number") : undefined,
    "may change": mayChange.length > 0 ? mayChange : undefined,
  });
  return Object.keys(tree).length > 0 ? tree : undefined;
}

const writeReadings = (w: Writing, { readings }: Station): Leaf =>
  readings.map(({ at, frequency, swr, file, taken, farEnd }, index) =>
    present({
      at,
      frequency: frequency ? formatQuantity(frequency, "frequency") : undefined,
      SWR: swr ? formatQuantity(swr, "number") : undefined,
      file: file ?? undefined,
      taken: taken ?? undefined,
      "far end": w.given(`readings.${index}.farEnd`, farEnd),
    }),
  );
