/** Dipoles of real thickness in free space, against a moment method of another kind (generators/cylindrical_dipole.py). */
import { portImpedance } from "../antennas/portImpedance";
import { resonantLength, solveDipole } from "../antennas/solvedDipole";
import { input, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

/**
 * Against the published value on a graded mesh with a gap of 0.01 wavelengths, the width of the engine's own. On equal
 * elements the published values still move at each doubling, because the gap narrows and the ends are unresolved.
 */
const impedance = (row: PublishedRow) => ({
  graded: portImpedance(solveDipole(input(row, "length/lambda"), input(row, "radius/lambda"))),
});

export const cylindricalDipoles: Topic = {
  name: "cylindricalDipoles",
  title: "Cylindrical dipoles",
  evaluators: [
    { rows: /^dipole\.mom\./, compute: impedance },
    {
      // A length of 20 diameters is thicker than the hundredth of a wavelength the engine holds: not covered.
      rows: /^dipole\.resonance\.L2a(?!20$)/,
      compute: (row) => ({ "K, graded": 2 * resonantLength(input(row, "length/diameter")) }),
    },
  ],
};
