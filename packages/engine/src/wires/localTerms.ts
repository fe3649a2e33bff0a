/** What the wires themselves add to the matrix: skin effect, thin insulation, lumped loads. */
import { roundConductorImpedance } from "../conductors/roundConductor";
import { solidWireImpedance } from "../conductors/solidWire";
import type { SplitMatrix } from "../kernels/door";
import { add, type Complex, complex, scale, subtract, zero } from "../numerics/complex";
import { vacuumPermittivity } from "../numerics/vacuum";
import { elementEndAt } from "./elements";
import type { Mesh } from "./mesh";
import type { Structure, Wire } from "./structure";

/** A lumped load sits on an element's end: its current is the sum of the unknowns there. */
export interface PlacedLoad {
  readonly elementEnd: number;
  readonly impedance: Complex;
}

/** Local properties at one frequency: series impedance of each wire (ohm/m), its sleeve, and the loads in the structure's order. */
export interface LocalImpedances {
  readonly wires: readonly Complex[];
  /** Factor of the product of charge densities for the sleeve of each wire, ohm m; zero when bare. */
  readonly sleeves: readonly Complex[];
  readonly loads: readonly PlacedLoad[];
}

export function localImpedances(structure: Structure, mesh: Mesh, angularFrequency: number): LocalImpedances {
  return {
    wires: structure.wires.map((w) => internalImpedance(w, angularFrequency)),
    sleeves: structure.wires.map((w) => sleeveFactor(w, angularFrequency)),
    loads: structure.loads.map((load) => ({
      elementEnd: elementEndAt(mesh.elements, mesh.firstElement, load.wire, load.distance),
      impedance: load.impedance(angularFrequency),
    })),
  };
}

/** Series impedance of the metal, ohm/m, exact for axially symmetric current in every layer. */
const internalImpedance = (wire: Wire, angularFrequency: number): Complex =>
  wire.section
    ? roundConductorImpedance(wire.section, angularFrequency)
    : solidWireImpedance(wire.radius, wire.conductivity, wire.permeability, angularFrequency);

/**
 * Sleeve, quasi-static: factor of the product of charge densities, ohm m (Richmond and Newman 1976, from memory):
 * (1/(j w eps0)) (1/2 pi) (1/eps - 1) ln(b/a), eps = eps_r (1 - j tan delta). Its real part is the heat in the sleeve.
 */
function sleeveFactor(wire: Wire, angularFrequency: number): Complex {
  if (!wire.insulation) return zero;
  const { outerRadius, permittivity, lossTangent = 0 } = wire.insulation;
  const logarithm = Math.log(outerRadius / wire.radius);
  const inverse = scale(complex(1, lossTangent), 1 / (permittivity * (1 + lossTangent ** 2)));
  const factor = logarithm / (2 * Math.PI * angularFrequency * vacuumPermittivity);
  return complex(inverse.im * factor, (1 - inverse.re) * factor);
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
export function addLocalTerms(structure: Structure, mesh: Mesh, local: LocalImpedances, matrix: SplitMatrix): void {
  structure.wires.forEach((_, w) => {
    const z = local.wires[w]!;
    const sleeve = local.sleeves[w]!;
    for (let e = mesh.firstElement[w]!; e < mesh.firstElement[w + 1]!; e++) {
      const length = mesh.elements.length[e]!;
      const slope = scale(sleeve, 1 / length);
      addBlock(mesh, e, add(scale(z, length / 3), slope), subtract(scale(z, length / 6), slope), matrix);
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
