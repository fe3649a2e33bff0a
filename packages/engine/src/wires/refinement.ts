/** How fine a mesh is, as plain data: it is held over sweeps and changes of a station, and names what is kept. */

/** 1 is the default mesh, 2 halves its elements. One number for all wires, or one a wire. */
export type Refinement = number | RefinedWires;

export interface RefinedWires {
  /** By the wire's name, so that it holds for a station with wires more or less. */
  readonly wires: Readonly<Record<string, number>>;
  /** Of all that are not named. */
  readonly others: number;
}

export const refinementOf = (refinement: Refinement, wire: string): number =>
  typeof refinement === "number" ? refinement : (refinement.wires[wire] ?? refinement.others);

/** On every wire as fine as the finer of both. */
export function finerOf(one: Refinement, other: Refinement): Refinement {
  const names = [one, other].flatMap((r) => (typeof r === "number" ? [] : Object.keys(r.wires)));
  return refinedWires(
    new Map(names.map((name) => [name, Math.max(refinementOf(one, name), refinementOf(other, name))])),
    Math.max(othersOf(one), othersOf(other)),
  );
}

/** So many times finer everywhere. */
export function timesFiner(refinement: Refinement, factor: number): Refinement {
  if (typeof refinement === "number") return factor * refinement;
  const wires = Object.entries(refinement.wires).map(([name, value]) => [name, factor * value] as const);
  return refinedWires(new Map(wires), factor * refinement.others);
}

export const othersOf = (refinement: Refinement): number =>
  typeof refinement === "number" ? refinement : refinement.others;

/** Those that differ from the others, their names in order: the same refinement is the same text. */
export function refinedWires(wires: ReadonlyMap<string, number>, others: number): Refinement {
  const named = [...wires].filter(([, value]) => value !== others).sort(([a], [b]) => (a < b ? -1 : 1));
  return named.length === 0 ? others : { wires: Object.fromEntries(named), others };
}
