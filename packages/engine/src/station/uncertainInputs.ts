/** The uncertain quantities of a station, in words, and the station with one of them moved to an end. */
import { isQuantity, isUncertain, type Quantity } from "../quantity/quantity";
import { isPair } from "./isPair";
import type { Path } from "./path";
import type { Station } from "./station";

type Key = string | number;

export interface UncertainInput {
  /** "the soil", "length of line 1". */
  readonly name: string;
  /** First place it stands at: keys joined by dots. */
  readonly place: string;
  /** One place, or all places that move together. */
  readonly places: readonly (readonly Key[])[];
  readonly quantities: readonly Quantity[];
}

/** Parts of a station whose uncertainty reaches the electrical result. */
const roots: readonly (keyof Station)[] = [
  ...(["bands", "transmitter", "path", "antennas", "ground", "surroundings"] as const),
  "earths",
];
/** Keys that change no number of this version: heat limits, ratings (of lines too), the receiver. */
const idle = new Set([
  "ratings",
  "heatLimit",
  "voltageLimit",
  "sparkover",
  "noiseFigure",
  "strap",
  "isolation",
  "duty",
  "directivity",
]);

/** All uncertain inputs in file order; quantities tied together count as one. */
export function uncertainInputs(station: Station): UncertainInput[] {
  const found: { place: readonly Key[]; quantity: Quantity }[] = [];
  const outside = hasOutside(station.path);
  for (const root of roots) collect(station[root], [root], found, outside);
  const groups = new Map<string, { place: readonly Key[]; quantity: Quantity }[]>();
  for (const entry of found) {
    const key = entry.quantity.tied ? `tied ${entry.quantity.tied}` : entry.place.join(".");
    groups.set(key, [...(groups.get(key) ?? []), entry]);
  }
  return [...groups.values()].map((entries) => ({
    name: entries[0]!.quantity.tied ? `the ${entries[0]!.quantity.tied}` : nameOf(station, entries[0]!.place),
    place: entries[0]!.place.join("."),
    places: entries.map((e) => e.place),
    quantities: entries.map((e) => e.quantity),
  }));
}

/** Whether any coaxial line has a route: only then have chokes something to act on. */
function hasOutside(path: Path): boolean {
  if (path.parts.some((p) => p.kind === "line" && p.route.length > 1 && !isPair(p))) return true;
  const { end } = path;
  if (end.kind === "switch") return Object.values(end.positions).some(hasOutside);
  return (end.kind === "tee" || end.kind === "band splitter") && Object.values(end.branches).some(hasOutside);
}

function collect(
  thing: unknown,
  place: readonly Key[],
  found: { place: readonly Key[]; quantity: Quantity }[],
  outside: boolean,
): void {
  if (typeof thing !== "object" || thing === null) return;
  if (isQuantity(thing)) {
    if (isUncertain(thing) && Number.isFinite(thing.low) && Number.isFinite(thing.high))
      found.push({ place, quantity: thing });
    return;
  }
  if ("kind" in thing && thing.kind === "roof") return;
  const choking = "kind" in thing && thing.kind === "choke" ? ["resistance", "reactance"] : ["choking"];
  for (const [key, value] of Object.entries(thing)) {
    // What opens the outside of the line acts only where that is in the model.
    if (idle.has(key) || (!outside && choking.includes(key))) continue;
    collect(value, [...place, Array.isArray(thing) ? Number(key) : key], found, outside);
  }
}

/** The station with the input at its low or high end, now exact. */
export function movedStation(station: Station, input: UncertainInput, end: "low" | "high"): Station {
  return input.places.reduce<Station>((moved, place, i) => {
    const value = input.quantities[i]![end];
    return replaceAt(moved, place, { ...input.quantities[i]!, value, low: value, high: value }) as Station;
  }, station);
}

/** A copy of a plain object with the thing at a place replaced; everything else is shared. */
export function replaceAt(thing: unknown, place: readonly Key[], value: unknown): unknown {
  const [key, ...rest] = place;
  if (key === undefined) return value;
  const container = thing as Record<Key, unknown>;
  const inner = replaceAt(container[key], rest, value);
  if (Array.isArray(thing)) return thing.map((x, i) => (i === key ? inner : x));
  return { ...container, [key]: inner };
}

/** camelCase key to words: "endsHeight" is "ends height". */
const words = (key: Key): string => (key === "q" ? "Q" : plainWords(key));
const plainWords = (key: Key): string => String(key).replace(/([A-Z])/g, (c) => ` ${c.toLowerCase()}`);

/** "length of line 1", "height of the dipole", "permittivity of the insulation". */
function nameOf(station: Station, place: readonly Key[]): string {
  const keys = place.filter((key) => typeof key === "string");
  const what = words(keys.findLast((key) => key !== "points" && key !== "quantity") ?? "");
  if (place[0] === "ground") return `${what} of ${ownLayer(station, place)}`;
  if (place[0] === "transmitter") return `${what} of the transmitter`;
  const owners = ownersOf(station, place);
  if (place.includes("insulation")) return `${what} of the insulation`;
  if (place[0] === "antennas") {
    const kind = owners.findLast((o) => typeof o.kind === "string")?.kind;
    return kind === undefined ? what : `${what} of the ${String(kind)}`;
  }
  const name = owners.findLast((o) => typeof o.name === "string" && o.name !== "")?.name;
  return name === undefined ? what : `${what} of ${String(name)}`;
}

/** "the soil", "layer 2 of the soil". */
const ownLayer = ({ ground }: Station, place: readonly Key[]): string =>
  ground.kind === "layers" && ground.layers.length > 1 ? `layer ${Number(place[2]) + 1} of the soil` : "the soil";

/** Objects on the way to a place, outermost first. */
function ownersOf(station: Station, place: readonly Key[]): Record<string, unknown>[] {
  const owners: Record<string, unknown>[] = [];
  let owner: unknown = station;
  for (const key of place.slice(0, -1)) {
    owner = (owner as Record<Key, unknown>)[key];
    if (typeof owner === "object" && owner !== null && !Array.isArray(owner))
      owners.push(owner as Record<string, unknown>);
  }
  return owners;
}
