/** What the electrode of a contact with the soil has as impedance by itself. */
import { soilLength } from "../ground/soilLength";
import type { RealSoil } from "../ground/soilSurface";
import { createBoundedStore } from "../kept/boundedStore";
import type { Kernels } from "../kernels/door";
import { type Complex, complex } from "../numerics/complex";
import { speedOfLight } from "../numerics/vacuum";
import { assembleMatrix } from "./assembleMatrix";
import { armCount, armHalves, armsOf } from "./electrodes";
import { buildElements, collectScatter } from "./elements";
import { wireLength } from "./geometry";
import { localImpedances } from "./localTerms";
import type { Mesh } from "./mesh";
import type { PreparedMesh } from "./preparedMesh";
import { buildSamplePoints } from "./samplePoints";
import { isRealSoil, type Soil, type SoilContact, type Structure } from "./structure";

/** About the bytes of a key and its number. */
const bytesEach = 300;
const kept = createBoundedStore<Complex>(300e3, () => bytesEach);

/**
 * Impedance (ohm) of one contact's electrode by itself at a frequency (Hz), as the moment matrix holds it whose mesh was made
 * for `meshFrequency`; 0 over a perfect plane.
 */
export function electrodeImpedance(
  contact: SoilContact,
  soil: Soil,
  frequency: number,
  meshFrequency: number,
  kernels: Kernels,
): Complex {
  if (!isRealSoil(soil)) return complex(0);
  const key = JSON.stringify([contact.reach, soil, frequency, meshFrequency, kernels.name]);
  const impedance = kept.get(key) ?? workedOut({ ...contact, at: [0, 0, 0] }, soil, frequency, meshFrequency, kernels);
  kept.set(key, impedance);
  return impedance;
}

function workedOut(
  contact: SoilContact,
  soil: RealSoil,
  frequency: number,
  meshFrequency: number,
  kernels: Kernels,
): Complex {
  const structure: Structure = { wires: armsOf(contact, soil), feeds: [], loads: [] };
  const nodes = structure.wires.map((arm) => [0, wireLength(arm)]);
  const elements = buildElements(structure, nodes);
  const firstElement = Int32Array.from({ length: armCount + 1 }, (_, w) => w);
  const arms = structure.wires.map((_, w) => w);
  const mesh: Mesh = {
    elements,
    firstElement,
    scatter: collectScatter(elements.count, [armHalves(arms, firstElement, 1)]),
    unknowns: 1,
    ports: [],
    coarse: Int32Array.of(0),
  };
  const prepared: PreparedMesh = {
    mesh,
    lowered: elements,
    near: kernels.nearMoments(elements, elements),
    images: null,
    restriction: { size: 1, first: Int32Array.of(0, 1), unknown: Int32Array.of(0), weight: Float64Array.of(1) },
    shape: null,
    height: 0,
  };
  const w = 2 * Math.PI * frequency;
  const points = buildSamplePoints(structure, prepared, speedOfLight / meshFrequency, soilLength(soil, meshFrequency));
  const local = localImpedances(structure, mesh, w);
  const { matrix } = assembleMatrix({ structure, prepared, points, local, soil, angularFrequency: w }, kernels);
  return complex(matrix.re[0]!, matrix.im[0]!);
}
