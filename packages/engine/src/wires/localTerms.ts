/** What the wires themselves add to the matrix: skin effect, thin insulation, lumped loads. */
import { solidWireImpedance } from "../conductors/solidWire";
import type { SplitMatrix } from "../kernels/door";
import { type Complex, complex, zero } from "../numerics/complex";
import { vacuumPermittivity } from "../numerics/vacuum";
import { elementEndAt } from "./elements";
import type { Mesh } from "./mesh";
import type { Structure, Wire } from "./structure";

/** A lumped load sits on an element's end: its current is the sum of the unknowns there. */
export interface PlacedLoad {
  readonly elementEnd: number;
  readonly impedance: Complex;
}

/** Local properties at one frequency: series impedance of each wire (ohm/m) and the loads in the structure's order. */
export interface LocalImpedances {
  readonly wires: readonly Complex[];
  readonly loads: readonly PlacedLoad[];
}

export function localImpedances(structure: Structure, mesh: Mesh, angularFrequency: number): LocalImpedances {
  return {
    wires: structure.wires.map((w) => solidWireImpedance(w.radius, w.conductivity, w.permeability, angularFrequency)),
    loads: structure.loads.map((load) => ({
      elementEnd: elementEndAt(mesh.elements, mesh.firstElement, load.wire, load.distance),
      impedance: load.impedance(angularFrequency),
    })),
  };
}

/**
 * Thin lossless sleeve, quasi-static: factor of the product of charge densities, ohm m (Richmond and Newman 1976, from
 * memory): (1/(j w eps0)) (1/2 pi) (1/eps_r - 1) ln(b/a).
 */
function sleeveFactor(wire: Wire, angularFrequency: number): Complex {
  if (!wire.insulation) return zero;
  const { outerRadius, permittivity } = wire.insulation;
  const logarithm = Math.log(outerRadius / wire.radius);
  return complex(0, ((1 - 1 / permittivity) * logarithm) / (2 * Math.PI * angularFrequency * vacuumPermittivity));
}

/** Adds one 2 x 2 element block (same ends, opposite ends) to the upper triangle. */
function addBlock(mesh: Mesh, e: number, same: Complex, opposite: Complex, matrix: SplitMatrix): void {
  const { first, unknown, sign } = mesh.scatter;
  for (let a = first[2 * e]!; a < first[2 * e + 2]!; a++) {
    for (let b = first[2 * e]!; b < first[2 * e + 2]!; b++) {
      if (unknown[a]! > unknown[b]!) continue;
      const block = a < first[2 * e + 1]! === b < first[2 * e + 1]! ? same : opposite;
      const index = unknown[a]! * matrix.size + unknown[b]!;
      matrix.re[index]! += sign[a]! * sign[b]! * block.re;
      matrix.im[index]! += sign[a]! * sign[b]! * block.im;
    }
  }
}

/** Adds all local terms to the upper triangle. */
export function addLocalTerms(
  structure: Structure,
  mesh: Mesh,
  local: LocalImpedances,
  angularFrequency: number,
  matrix: SplitMatrix,
): void {
  structure.wires.forEach((wire, w) => {
    const z = local.wires[w]!;
    const sleeve = sleeveFactor(wire, angularFrequency);
    for (let e = mesh.firstElement[w]!; e < mesh.firstElement[w + 1]!; e++) {
      const length = mesh.elements.length[e]!;
      const slope = sleeve.im / length;
      const same = complex((z.re * length) / 3, (z.im * length) / 3 + slope);
      addBlock(mesh, e, same, complex((z.re * length) / 6, (z.im * length) / 6 - slope), matrix);
    }
  });
  const { first, unknown, sign } = mesh.scatter;
  for (const { elementEnd, impedance } of local.loads) {
    for (let a = first[elementEnd]!; a < first[elementEnd + 1]!; a++) {
      for (let b = first[elementEnd]!; b < first[elementEnd + 1]!; b++) {
        if (unknown[a]! > unknown[b]!) continue;
        const index = unknown[a]! * matrix.size + unknown[b]!;
        matrix.re[index]! += sign[a]! * sign[b]! * impedance.re;
        matrix.im[index]! += sign[a]! * sign[b]! * impedance.im;
      }
    }
  }
}
