/** What stands for the heat in the antenna's wires, where other things in it warm too. English. */

export interface Warm {
  readonly name: string;
  readonly watts: number;
}

/** Share of that heat from which something beside the wires is named. Our rule. */
const worthNaming = 0.05;

/** "wires, coils and chokes": the wires first, then what takes most. */
export function warmSays(whole: number, beside: readonly Warm[]): string {
  const named = beside.filter((w) => w.watts > worthNaming * whole).sort((a, b) => b.watts - a.watts);
  const names = ["wires", ...named.map((w) => w.name)];
  return names.length === 1 ? names[0]! : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
}
