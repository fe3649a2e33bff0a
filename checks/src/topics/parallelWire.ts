/** Parallel-wire lines: impedance from spacing, loss of an open pair, window line as sold. */
import { exactly, lineConstants, type ParallelWireLine, ratioOfPair, solidWireImpedance } from "@feedpath/engine";
import { findLine } from "@feedpath/station-file";
import { input, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

/** A pair in air. Metres, S/m. */
function pair(diameter: number, spacing: number, conductivity: number): ParallelWireLine {
  return {
    kind: "parallel-wire",
    wire: {
      form: "solid",
      layers: [{ metal: { name: "metal", conductivity, permeability: 1 }, outerRadius: diameter / 2 }],
      holeRadius: 0,
      effectiveRadiusRatio: 1,
      resistanceFactor: 1,
    },
    spacing: { value: spacing, low: spacing, high: spacing, basis: "stated" },
    dielectric: { name: "vacuum", permittivity: 1, lossTangent: 0 },
  };
}

/** Impedance of a pair without loss for spacing over diameter. */
const lossless = (ratio: number): number =>
  lineConstants(pair(1e-3, ratio * 1e-3, Number.POSITIVE_INFINITY), 1e7).z0.re;

/** A wire at a height (to its axis) over a perfect plane, without loss. */
function overPlane(ratio: number): number {
  const { wire, dielectric } = pair(1e-3, 1, Number.POSITIVE_INFINITY);
  const plane = { name: "perfect", conductivity: Number.POSITIVE_INFINITY, permeability: 1 };
  const line = { kind: "wire over plane", wire, height: exactly(ratio * 1e-3), plane, dielectric } as const;
  return lineConstants(line, 1e7).z0.re;
}

function openPair(row: PublishedRow) {
  const [diameter, spacing] = [input(row, "d_mm") / 1e3, input(row, "D_mm") / 1e3];
  const omega = 2e6 * Math.PI * input(row, "f_MHz");
  return {
    Z0_ohm: lossless(spacing / diameter),
    R_ohm_per_m_Bessel_no_proximity: 2 * solidWireImpedance(diameter / 2, input(row, "sigma"), 1, omega).re,
    R_ohm_per_m_HF_with_proximity: resistanceOfThinSkin(row, pair(diameter, spacing, input(row, "sigma"))),
  };
}

/**
 * The published formula is the limit of small skin depth. The line is taken there, at 10^16 times the frequency, where
 * resistance has grown by 10^8. (At 1.8 MHz its true resistance lies 2 to 4 % above the formula.)
 */
const resistanceOfThinSkin = (row: PublishedRow, line: ParallelWireLine): number =>
  lineConstants(line, 1e22 * input(row, "f_MHz")).resistance / 1e8;

function sold(designation: string) {
  const line = findLine(designation);
  if (!line) throw new Error(`the catalogue has no ${designation}`);
  const constants = lineConstants(line.model, 1e7);
  return { Z0: constants.z0.re, VF: constants.velocityFactor };
}

/** Window lines of the catalogue by the wires they are sold with. Their spacing is entered so that the nominal impedance comes out. */
const windowKinds = {
  "18 AWG solid": "450-ohm window line",
  "16 AWG stranded": "450-ohm window line 16 AWG stranded",
  "18 AWG stranded": "450-ohm window line 18 AWG stranded",
  "14 AWG stranded": "450-ohm window line 14 AWG stranded",
} as const;

const windowLines = () =>
  Object.fromEntries(
    Object.entries(windowKinds).flatMap(([kind, designation]) => {
      const { Z0, VF } = sold(designation);
      return [
        [`${kind} / Z0`, Z0],
        [`${kind} / VF`, VF],
      ];
    }),
  );

export const parallelWire: Topic = {
  name: "parallelWire",
  title: "Parallel-wire lines",
  evaluators: [
    { rows: /^pair\.z0\./, compute: (row) => ({ Z0_exact: lossless(input(row, "D/d")) }) },
    { rows: /^pair\.ratio_for\./, compute: (row) => ({ "": ratioOfPair(input(row, "Z0"), 1) }) },
    { rows: /^pair\.loss\./, compute: openPair },
    { rows: /^pair\.open600$/, compute: () => ({ "": lossless(75) }) },
    { rows: /^pair\.window\.z$/, compute: windowLines },
    { rows: /^pair\.twin300$/, compute: () => sold("300-ohm ribbon line") },
    { rows: /^wire_over_plane\.z0\./, compute: (row) => ({ "": overPlane(input(row, "h/d")) }) },
  ],
};
