/** Conductors near by as wires of the structure. */
import type { Station, Surrounding } from "../station/station";
import type { Point } from "../wires/structure";
import { connectToSoil, contactHeight } from "./earths";
import { addWires, assume, type Growing, type PortClosing } from "./growing";
import { sheetGrid } from "./sheetGrid";
import { chainOf, distance, pointOf } from "./wireRun";

/** Ends at most this high (m) touch the soil. */
const touching = 1e-6;
const footReach = 0.5;

type Conductor = Extract<Surrounding, { kind: "conductor" }>;

export function addSurroundings(station: Station, growing: Growing): void {
  for (const thing of station.surroundings) {
    if (thing.kind === "sheet") addSheet(station, thing, growing);
    else if (thing.kind === "roof") {
      const { low, high } = thing.loss;
      growing.notComputed.push(
        `not computed yet: the roof of ${thing.covering}, which may take another ${low} to ${high} dB`,
      );
    } else addConductor(station, thing, growing);
  }
}

function addSheet(station: Station, thing: Extract<Surrounding, { kind: "sheet" }>, growing: Growing): void {
  if (station.ground.kind !== "free space" && thing.corners.some((p) => p[2].value <= touching)) {
    growing.notComputed.push(`not computed yet: the sheet "${thing.name}", which lies on the soil or in it`);
    return;
  }
  const grid = sheetGrid(station, thing);
  if ("cannot" in grid) {
    growing.notComputed.push(`not computed yet: ${grid.cannot}`);
    return;
  }
  growing.surrounding.set(thing.name, addWires(growing, grid.wires));
  assume(
    growing,
    `sheet "${thing.name}"`,
    `a grid of ${grid.wires.length} wires, cells of up to ${Number(grid.pitch.toFixed(2))} m`,
    "a sheet is computed as a grid of wires; it touches nothing",
  );
}

function addConductor(station: Station, thing: Conductor, growing: Growing): void {
  const free = station.ground.kind === "free space";
  const places = thing.points.map(pointOf);
  if (!free && places.some((p) => p[2] < -touching)) {
    growing.notComputed.push(`not computed yet: the conductor "${thing.name}", which runs in the soil`);
    return;
  }
  const foot = station.ground.kind === "perfect" ? 0 : contactHeight;
  const onSoil = (p: Point): boolean => !free && p[2] <= touching;
  const points = places.map((p): Point => (onSoil(p) ? [p[0], p[1], foot] : p));
  const indices = addWires(growing, chainOf(thing.name, points, thing.wire));
  growing.surrounding.set(thing.name, indices);
  for (const at of thing.insulators ?? []) openAt(growing, thing, indices, insulatorAt(thing, at.value));
  for (const { at, bridge } of thing.gaps ?? []) {
    const name = `gap in ${thing.name}, ${Number(at.value.toFixed(2))} m along`;
    const kind = bridge === "open" ? "insulator" : "choke";
    openAt(growing, thing, indices, { name, kind, at: at.value, impedance: () => bridge });
  }
  const ends = [places[0]!, places.at(-1)!];
  for (const end of ends.filter(onSoil)) standOnSoil(station, thing, end, foot, growing);
}

/** An end on the soil: through an earth of the file that lies there, else through one of a usual range. */
function standOnSoil(station: Station, thing: Conductor, end: Point, foot: number, growing: Growing): void {
  const at: Point = [end[0], end[1], foot];
  const named = station.earths.find(
    (e) => e.at && Math.hypot(e.at[0].value - end[0], e.at[1].value - end[1]) < 0.5 && e.resistance,
  );
  const resistance = thing.foot ?? named?.resistance;
  if (!resistance) {
    growing.notComputed.push(
      `not computed: the contact of "${thing.name}" with the soil, whose resistance is not given`,
    );
    return;
  }
  const reach = named?.size ? named.size.value / 2 : footReach;
  connectToSoil(station, growing, { name: named?.name ?? `foot of ${thing.name}`, resistance, reach }, at, at);
}

type Opening = PortClosing & { readonly at: number };

const insulatorAt = (thing: Conductor, at: number): Opening => ({
  name: `insulator in ${thing.name}, ${Number(at.toFixed(2))} m along`,
  kind: "insulator",
  at,
  impedance: () => "open",
});

/** Opens the conductor at a length along it. */
function openAt(growing: Growing, thing: Conductor, wires: readonly number[], { at, ...closing }: Opening): void {
  let left = at;
  for (const wire of wires) {
    const { from, to } = growing.wires[wire]!;
    const length = distance(from, to);
    if (left < length) {
      growing.gaps.push({ name: closing.name, wire, distance: left, closing });
      return;
    }
    left -= length;
  }
  growing.notComputed.push(`the ${closing.kind} ${at} m along "${thing.name}" lies beyond its end: it is left out`);
}
