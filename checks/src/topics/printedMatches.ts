/** Worked examples as a textbook prints them, designed anew: the inputs stand in the text of the rows. */
import { shuntStubMatches, twoElementMatches } from "@feedpath/engine";
import type { Computed } from "../ledger/ledgerEntry";

const omega = 2 * Math.PI * 500e6;

/** Henry or farad of a reactance, as the row names them. */
const component = (reactance: number): readonly [string, number] =>
  reactance > 0 ? ["L_nH", (1e9 * reactance) / omega] : ["C_pF", -1e12 / (omega * reactance)];

/** ZL = 200 - j100 ohm, 100 ohm wanted, 500 MHz. */
export function printedTwoElements(): Computed {
  const matches = twoElementMatches({ re: 200, im: -100 }, 100);
  return Object.fromEntries(
    matches.flatMap(({ susceptance, reactance }, i) =>
      [component(-1 / susceptance), component(reactance)].map(([name, value]) => [`${i} / ${name}`, value]),
    ),
  );
}

/** ZL = 60 - j80 ohm on 50 ohm, shorted stub. */
export function printedStubs(): Computed {
  const stubs = shuntStubMatches({ re: 60, im: -80 }, 50).sort((a, b) => a.distance - b.distance);
  return Object.fromEntries(
    stubs.flatMap(({ distance, shorted }, i) => [
      [`${i} / d`, distance],
      [`${i} / l`, shorted],
    ]),
  );
}
