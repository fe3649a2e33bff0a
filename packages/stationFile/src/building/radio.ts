/** Bands and transmitter. */
import { type Band, exactly, type Quantity, type Transmitter } from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileBand, FileStation } from "../schema/station";
import { formatSpan } from "../units/formatQuantity";
import { parseQuantity, type Span } from "../units/parseQuantity";
import { type Build, fault, fill, fillQuantity, list } from "./build";

/** Half-width of the sweep about a lone frequency, relative. */
const sweepHalfWidth = 0.025;

export function buildBands(build: Build, file: FileStation): readonly Band[] {
  if (file.bands === undefined) return [buildBand(build, file, "", 0, [])];
  for (const key of ["frequency", "band"] as const) {
    if (file[key] === undefined) continue;
    build.report(
      [key],
      "key",
      fault(`"${key}" and "bands" exclude each other: move ${key} into a band.`, "either of them"),
    );
  }
  const names = Object.keys(file.bands);
  if (names.length === 0) build.report(["bands"], "key", fault("At least one band is needed.", "a band"));
  return names.map((name, index) => buildBand(build, file.bands?.[name] ?? {}, name, index, ["bands", name]));
}

function buildBand(build: Build, file: FileBand, name: string, index: number, path: KeyPath): Band {
  const of = name === "" ? "" : ` of ${name}`;
  const place = `bands.${index}`;
  if (file.frequency === undefined && file.band === undefined) {
    const what = name === "" ? "The station" : `The band "${name}"`;
    build.report(path, "key", fault(`${what} needs a frequency, a band, or both.`, "frequency: 7.1 MHz"));
  }
  const frequency = fill<Quantity>(build, file.frequency, middleOf(file.band, `${place}.frequency`, of));
  const sweep = fill<Span>(build, file.band, aroundOf(frequency.value, `${place}.sweep`, of));
  if (frequency.value < sweep.from || frequency.value > sweep.to) {
    build.report(
      [...path, "frequency"],
      "value",
      fault(`The frequency${of} lies outside its band.`, "a frequency in the band"),
    );
  }
  return { name, frequency, sweep, set: file.set ?? {} };
}

const middleOf = (band: Span | undefined, place: string, of: string) => ({
  place,
  name: `frequency${of}`,
  value: exactly(band ? (band.from + band.to) / 2 : 1e6, "assumed"),
  says: band ? `${(band.from + band.to) / 2e6} MHz` : "1 MHz",
  reason: "no frequency is given: the middle of the band",
});

function aroundOf(frequency: number, place: string, of: string) {
  const value = {
    from: Math.round(frequency * (1 - sweepHalfWidth)),
    to: Math.round(frequency * (1 + sweepHalfWidth)),
  };
  const reason = "no band is given: 2.5 % to either side of the frequency";
  return { place, name: `band${of}`, value, says: formatSpan(value.from, value.to, "frequency"), reason };
}

export function buildTransmitter(build: Build, file: FileStation["transmitter"]): Transmitter {
  const at = (key: string): string => `transmitter.${key}`;
  const duty = fillQuantity(build, file.duty, "ratio", {
    place: at("duty"),
    name: "duty of the transmitter",
    value: 1,
    reason: "not given: a steady carrier is the worst case for heat and exposure",
  });
  const designedFor = fillQuantity(build, file["designed for"], "impedance", {
    place: at("designedFor"),
    name: "rated load of the transmitter",
    value: 50,
    reason: "not given: common practice, no source",
  });
  const earthed = fill(build, file.earthed, {
    place: at("earthed"),
    name: "earthing of the transmitter",
    value: "floating",
    says: "floating",
    reason: "not given: no connection to earth is taken into account",
  });
  return {
    power: file.power,
    duty,
    onAir: file["on air"] ?? null,
    designedFor,
    powerAtSwr: foldback(build, file["power at SWR"]),
    earthed,
    noiseFigure: file["noise figure"] ?? null,
  };
}

/** The table of delivered power against SWR; without one full power is taken as delivered. */
function foldback(build: Build, table: Readonly<Record<string, Quantity>> | undefined): Transmitter["powerAtSwr"] {
  if (!table) {
    const reason = "the file does not say how far the set turns itself down";
    list(build, "transmitter.powerAtSwr", "power at a high SWR", "delivered in full", reason);
    return [];
  }
  const path = ["transmitter", "power at SWR"];
  const rows = Object.entries(table).map(([key, power]) => {
    const swr = parseQuantity(key, "number", { least: 1, most: 1000 });
    if (!swr.ok) build.report([...path, key], "key", swr.fault);
    return { swr: swr.ok ? swr.value.value : 1, power };
  });
  if (rows.length === 0)
    build.report(path, "key", fault("The table of power at SWR is empty.", "{ 1.5: 100 W, 3: 30 W }"));
  return rows.sort((a, b) => a.swr - b.swr);
}
