/**
 * A few Gauss points per wire that stand for all its elements wherever the field is smooth: reflected waves, far field,
 * power into the soil. Currents are projected on them by Lagrange polynomials, so these parts cost the same however
 * fine the mesh is.
 */
import { createBoundedStore } from "../kept/boundedStore";
import { wireDirection } from "./geometry";
import type { PreparedMesh } from "./preparedMesh";
import { type Projection, panelRule, project } from "./projection";
import { isLow, panelEdges } from "./samplePanels";
import type { Structure } from "./structure";

export interface SamplePoints extends Projection {
  readonly count: number;
  /** Three numbers a point, m. */
  readonly position: Float64Array;
  /** Unit vectors. */
  readonly direction: Float64Array;
  /** Whether each wire of the structure is low: its quasi-static images are integrated element by element. */
  readonly lowWires: readonly boolean[];
  /** The same for the wire of each point: 1 or 0. */
  readonly low: Uint8Array;
  /** Radius of the wire at each point, m. */
  readonly radius: Float64Array;
  /** Names the panels of all wires. */
  readonly layout: string;
}

/**
 * Arms of electrodes lie in the surface itself; what is left of their images once these are taken out varies over the
 * soil's length, so that their points may lie this high (m), as low as the kernels are tested.
 */
const leastHeight = 1e-3;

const mostBytes = 16e6;
const projections = createBoundedStore<Projection>(mostBytes, (p) => 20 * p.point.length + 4 * p.first.length);

/** The projection of a mesh on panels; kept, for it is the same at every height. */
function keptProjection({ shape, mesh }: PreparedMesh, edges: readonly (readonly number[])[], layout: string) {
  if (shape === null) return project(mesh, edges);
  const key = `${shape} ${layout}`;
  const made = projections.get(key) ?? project(mesh, edges);
  projections.set(key, made);
  return made;
}

/** Chooses the points for a wavelength (m) and a soil (soilLength, m; null: none) and projects the mesh on them. */
export function buildSamplePoints(
  structure: Structure,
  prepared: PreparedMesh,
  wavelength: number,
  soil: number | null,
): SamplePoints {
  const lowWires = structure.wires.map((wire) => isLow(wire, soil));
  const edges = structure.wires.map((wire) => panelEdges(wire, wavelength, soil));
  const layout = JSON.stringify(edges);
  const position: number[] = [];
  const direction: number[] = [];
  const radius: number[] = [];
  const low: number[] = [];
  structure.wires.forEach((wire, w) => {
    const u = wireDirection(wire);
    const ofWire = edges[w]!;
    for (let p = 1; p < ofWire.length; p++) {
      for (const x of panelRule.points) {
        const s = ofWire[p - 1]! + ((ofWire[p]! - ofWire[p - 1]!) * (1 + x)) / 2;
        position.push(wire.from[0] + u[0] * s, wire.from[1] + u[1] * s, Math.max(leastHeight, wire.from[2] + u[2] * s));
        direction.push(u[0], u[1], u[2]);
        radius.push(wire.radius);
        low.push(lowWires[w] ? 1 : 0);
      }
    }
  });
  return {
    ...keptProjection(prepared, edges, layout),
    count: position.length / 3,
    position: Float64Array.from(position),
    direction: Float64Array.from(direction),
    radius: Float64Array.from(radius),
    lowWires,
    low: Uint8Array.from(low),
    layout,
  };
}
