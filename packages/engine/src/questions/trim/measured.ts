/** Where the SWR was measured lowest: asked with, read in a sweep, or told by several readings. */
import { resolveStation } from "../../chain/resolve";
import { isTunerAtWork } from "../../networks/partTwoPort";
import { megahertz } from "../../quantity/format";
import type { Band, Reading, Station } from "../../station/station";
import { vertex } from "./parabola";
import { leastReflection, type SweepDip } from "./sweepDip";

export interface Measured {
  readonly from: "question" | "readings" | "sweep";
  /** Joint or meter it was read at. */
  readonly at: string;
  /** Frequency of lowest SWR, Hz. */
  readonly dip: number;
  readonly file: string | null;
  readonly taken: string | null;
  readonly sweep: SweepDip | null;
}

export interface MeasuredDip {
  readonly measured: Measured | null;
  /** Why readings of the file tell nothing here, as sentences. */
  readonly unused: readonly string[];
}

/** Readings are of this resonance within these shares of the wanted frequency. */
const lowest = 0.7;
const highest = 1.4;

export function measuredDip(station: Station, band: Band, asked: number | null): MeasuredDip {
  if (asked !== null)
    return {
      measured: { from: "question", at: "transmitter", dip: asked, file: null, taken: null, sweep: null },
      unused: [],
    };
  const unused: string[] = [];
  const usable = station.readings.filter((r) => {
    const why = unusable(station, band, r);
    if (why) unused.push(why);
    return why === null;
  });
  return { measured: ofSweeps(station, band, usable, unused) ?? ofReadings(band, usable, unused), unused };
}

function unusable(station: Station, band: Band, reading: Reading): string | null {
  const what = reading.file === null ? `the reading at "${reading.at}"` : `the sweep in ${reading.file}`;
  if (reading.farEnd !== "antenna") return `Not used: ${what} was taken with the far end ${reading.farEnd}.`;
  const { joints, edges } = resolveStation(station, band, band.frequency.value);
  const meter = edges.find((e) => e.kind === "meter" && e.name === reading.at);
  const joint = meter ? meter.from : joints.findIndex((j) => j.name === reading.at);
  if (joint < 0) return `Not used: ${what}: there is no joint or meter of that name.`;
  const tuner = edges.find((e) => e.inUse && e.part !== null && isTunerAtWork(e.part) && e.from >= joint);
  return tuner ? `Not used: ${what}: how ${tuner.name} behind it was set is not known.` : null;
}

/** The sweep taken last that shows a least SWR near the wanted frequency. */
function ofSweeps(station: Station, band: Band, readings: readonly Reading[], unused: string[]): Measured | null {
  const sweeps = readings
    .filter((r) => r.file !== null)
    .toSorted((a, b) => (b.taken ?? "").localeCompare(a.taken ?? ""));
  const wanted = band.frequency.value;
  for (const { file, at, taken } of sweeps) {
    const network = station.measured[file!];
    if (network?.ports !== 1) {
      unused.push(`Not used: the sweep in ${file}: it could not be read as a one-port.`);
      continue;
    }
    const span = { from: lowest * wanted, to: highest * wanted };
    const sweep = leastReflection(network, span, station.transmitter.designedFor.value);
    if (sweep) return { from: "sweep", at, dip: sweep.dip, file, taken, sweep };
    unused.push(`Not used: the sweep in ${file}: near ${megahertz(wanted)} it shows no lowest SWR between its ends.`);
  }
  return null;
}

/** Three readings at one joint with the least of them in the middle, through which a parabola is laid. */
function ofReadings(band: Band, readings: readonly Reading[], unused: string[]): Measured | null {
  const wanted = band.frequency.value;
  const joints = [...new Set(readings.map((r) => r.at))];
  for (const at of joints) {
    const points = readings
      .filter((r) => r.at === at)
      .flatMap((r) => (r.frequency && r.swr ? [{ f: r.frequency.value, y: r.swr.value }] : []))
      .filter(({ f }) => f > lowest * wanted && f < highest * wanted)
      .toSorted((a, b) => a.f - b.f);
    if (points.length === 0) continue;
    const least = points.reduce((best, p, i) => (p.y < points[best]!.y ? i : best), 0);
    const [a, b, c] = [points[least - 1], points[least]!, points[least + 1]];
    if (a && c && a.y > b.y && c.y > b.y)
      return { from: "readings", at, dip: vertex(a, b, c), file: null, taken: null, sweep: null };
    unused.push(
      `The ${points.length === 1 ? "reading" : "readings"} at "${at}" ${points.length === 1 ? "does" : "do"} not show where the SWR is lowest: give readings on both sides of the lowest one, or --measured-lowest.`,
    );
  }
  return null;
}
