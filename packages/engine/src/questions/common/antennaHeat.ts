/** What is warm in the antenna beside its wires, by name: `heatInWires` counts it all. */
import { type Warm, warmSays } from "../../words/warm";
import { antennasInUse } from "./inUse";
import type { Worked } from "./worked";

/** "wires", "wires and coils", "wires, resistor and chokes". */
export function antennaHeatSays(worked: Worked): string {
  const { station, point, result, numbers } = worked;
  const { account } = result;
  const loads = antennasInUse(station, point).flatMap((a) => a.loads.filter((load) => load.kind !== "hat"));
  const loops = point.antenna.build.loops.length > 0;
  const share = point.powerIntoAntenna / account.powerIn;
  const warm: Warm[] = [
    { name: loops ? "capacitor" : loadsName(loads), watts: numbers.heatInLoads ?? 0 },
    { name: "lines between its feeds", watts: account.heatInJoinedLines * share },
    { name: "chokes", watts: numbers.heatInChokes ?? 0 },
  ];
  return warmSays(numbers.heatInWires ?? 0, warm);
}

const namesOfKinds: Readonly<Record<string, string>> = {
  coil: "coil",
  capacitor: "capacitor",
  resistor: "resistor",
  trap: "trap",
};

/** One kind by its name, several kinds as "loads". */
export function loadsName(loads: readonly { readonly kind: string; readonly on: string }[]): string {
  const kinds = [...new Set(loads.map((load) => namesOfKinds[load.kind] ?? "load"))];
  const [kind] = kinds;
  if (kind === undefined || kinds.length > 1) return "loads";
  return loads.length === 1 && loads[0]!.on !== "both legs" ? kind : `${kind}s`;
}
