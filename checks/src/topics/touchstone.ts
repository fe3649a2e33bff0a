/** Touchstone samples written after the specification's rules, read by the station-file package. Version 1 only. */
import type { Complex, MeasuredNetwork } from "@feedpath/engine";
import { readTouchstone } from "@feedpath/station-file";
import type { Computed } from "../ledger/ledgerEntry";
import { numbersOf, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

export function readBody(row: PublishedRow) {
  return readTouchstone(String(row.inputs.body), `${row.id}.s1p`);
}

/** Place of a parameter in the row-major scattering matrix. */
const places: Readonly<Record<string, number>> = { S11: 0, S12: 1, S21: 2, S22: 3 };

function namedValue(network: MeasuredNetwork, name: string): number | Complex | null {
  const [what, index] = name.split(" / ");
  if (what === "R") return network.reference;
  if (what === "f_Hz") return network.frequencies[Number(index)]!;
  const place = places[what!];
  if (place === undefined) return null;
  const at = network.ports === 1 ? 0 : place;
  const line = network.scattering[Number(index)]!;
  return { re: line[2 * at]!, im: line[2 * at + 1]! };
}

function sample(row: PublishedRow): Computed {
  const { network, problems } = readBody(row);
  if (!network) throw new Error(`${row.id} is not read: ${problems.map((p) => p.message).join(" ")}`);
  return Object.fromEntries(
    [...numbersOf(row).keys()].flatMap((name) => {
      const value = namedValue(network, name);
      return value === null ? [] : [[name, value]];
    }),
  );
}

export const touchstone: Topic = {
  name: "touchstone",
  title: "Touchstone files",
  evaluators: [{ rows: /^ts\.ex\.(default|order|db|twoopt|z1|y1|2port|crlf|sci|active)$/, compute: sample }],
};
