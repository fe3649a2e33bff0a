/** Dipoles of real thickness in free space, against a moment method of another kind (generators/cylindrical_dipole_mom.py). */
import { portImpedance, resonantLength, solveDipole } from "../antennas/solvedDipole";
import { input, numbersOf, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

/** Against the published value of most functions; the spread over the others is the source's own error bar. */
function impedance(row: PublishedRow) {
  const finest = [...numbersOf(row).keys()].at(-1)!;
  return { [finest]: portImpedance(solveDipole(input(row, "length/lambda"), input(row, "radius/lambda"))) };
}

export const cylindricalDipoles: Topic = {
  name: "cylindricalDipoles",
  title: "Cylindrical dipoles",
  evaluators: [
    { rows: /^dipole\.mom\./, compute: impedance },
    {
      // A length of 20 diameters is thicker than the hundredth of a wavelength the engine holds: not covered.
      rows: /^dipole\.resonance\.L2a(?!20$)/,
      compute: (row) => ({ "K = L/(lambda/2)": 2 * resonantLength(input(row, "length/diameter")) }),
    },
  ],
};
