/** What solving the wires of an antenna at one frequency gives. */
import type { SplitVectors, SymmetricSolution } from "../kernels/door";
import type { Complex } from "../numerics/complex";
import type { LocalImpedances } from "./localTerms";
import type { Mesh } from "./mesh";
import type { PortBasis } from "./portBasis";
import type { Refinement } from "./refinement";
import type { SamplePoints } from "./samplePoints";
import type { Soil, Structure } from "./structure";

export interface AntennaSolution {
  /** Hz */
  readonly frequency: number;
  readonly soil: Soil;
  /** Names of all ports: feeds, gaps, contacts, in the order of the structure (portNames). */
  readonly ports: readonly string[];
  /** Ohm: what the electrode of each contact contributes by itself, to give way to a stated impedance. */
  readonly electrodes: readonly Complex[];
  /** Which ports carry currents of their own, and the others as sums of those. */
  readonly basis: PortBasis;
  /** Port admittance matrix in siemens, from extrapolated impedances. */
  readonly admittance: readonly (readonly Complex[])[];
  /** The same from the fine mesh alone, which the currents and powers belong to. */
  readonly fineAdmittance: readonly (readonly Complex[])[];
  /** Estimated error of the port impedances in ohm: a third of the difference to the halved mesh, largest entry. */
  readonly errorEstimate: number;
  /** The estimate over the goal (accuracy.ts), where that is largest: the goal is met up to 1. */
  readonly errorOverGoal: number;
  /** How it is shared among the wires of the model, nearly (errorByWire.ts); what counts is their proportion. */
  readonly errorByWire: readonly number[];
  readonly goalMet: boolean;
  readonly unknowns: number;
  readonly method: {
    readonly kernels: string;
    readonly factorisation: SymmetricSolution["method"];
    readonly growth: number;
    readonly residual: number;
    readonly samplePoints: number;
    readonly refinement: Refinement;
    /** Largest share of a reflected kernel its tables leave unresolved; 0 without soil. */
    readonly kernelError: number;
    /** Isometries that lay the structure on itself and were made use of; 1 without any. */
    readonly symmetry: number;
  };
  readonly model: SolvedModel;
}

/** What currents, fields and powers are computed from. */
export interface SolvedModel {
  readonly structure: Structure;
  readonly mesh: Mesh;
  readonly points: SamplePoints;
  readonly local: LocalImpedances;
  /** One vector of unknown currents (A) for 1 V at each port, the others short. */
  readonly currents: SplitVectors;
  /** The same of the mesh of doubled elements, as unknowns of this one. */
  readonly coarseCurrents: SplitVectors;
}
