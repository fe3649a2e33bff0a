/** Assumptions that differ in nothing but what they are about, told as one. */
import type { Assumption } from "@feedpath/engine";

export type Told = Pick<Assumption, "name" | "value" | "reason">;

const separator = " of ";

/** "condition of line 1" as "condition" and "line 1"; null where the name has no owner. */
function cut(name: string): { readonly what: string; readonly owner: string } | null {
  const at = name.indexOf(separator);
  return at < 0 ? null : { what: name.slice(0, at), owner: name.slice(at + separator.length) };
}

/** "condition of line 1, line 2" where both have the same value for the same reason; in the order of the first of each. */
export function toldTogether(assumptions: readonly Assumption[]): readonly Told[] {
  const groups = new Map<string, { told: Told; readonly owners: string[] }>();
  for (const { name, value, reason } of assumptions) {
    const parts = cut(name);
    const key = JSON.stringify([parts?.what ?? name, value, reason, parts === null]);
    const group = groups.get(key);
    if (!group) groups.set(key, { told: { name, value, reason }, owners: parts ? [parts.owner] : [] });
    else if (parts && !group.owners.includes(parts.owner)) {
      group.owners.push(parts.owner);
      group.told = { ...group.told, name: `${parts.what}${separator}${group.owners.join(", ")}` };
    }
  }
  return [...groups.values()].map(({ told }) => told);
}
