/** The watts as a list, for narrow pages: what leaves for the sky first, then each heat, largest first. */
import type { Answer, ScalarValue } from "@feedpath/engine";
import { sayQuantity, saySpan } from "./say";

interface Row {
  readonly name: string;
  readonly note: string;
  readonly watts: number;
  readonly pattern: "dots" | "hatch";
}

export function WattsList({ answer }: { readonly answer: Answer }) {
  const rows = rowsOf(answer);
  if (rows.length === 0) return null;
  return (
    <ul className="watts" aria-label="Where the watts go">
      {rows.map(({ name, note, watts, pattern }) => (
        <li key={name}>
          <span className={`swatch ${pattern}`} aria-hidden="true" />
          <span>
            {name} <span className="label quiet">{note}</span>
          </span>
          <strong className="number">{sayQuantity(watts, "W")}</strong>
        </li>
      ))}
    </ul>
  );
}

function rowsOf(answer: Answer): Row[] {
  const { values } = answer;
  const watts = (name: string): number | null => {
    const value = values[name];
    return value && "value" in value ? value.value : null;
  };
  const heats: Row[] = answer.parts.map((part) => ({
    name: part.name,
    note: part.says,
    watts: part.heat,
    pattern: "hatch",
  }));
  const warm = values.heatInWires as ScalarValue | undefined;
  const more: [string, string][] = [
    ["the soil", "heatInSoil"],
    [`the ${warm?.says ?? "wires"}`, "heatInWires"],
  ];
  for (const [name, key] of more)
    heats.push({ name, note: spanOf(answer, key), watts: watts(key) ?? 0, pattern: "hatch" });
  const sky = watts("radiatedPower");
  if (sky === null) return [];
  return [
    { name: "the sky", note: spanOf(answer, "radiatedPower"), watts: sky, pattern: "dots" },
    ...heats.filter((row) => row.watts >= 0.05).sort((a, b) => b.watts - a.watts),
  ];
}

const spanOf = (answer: Answer, name: string): string => {
  const value = answer.values[name];
  return (value && saySpan(value)) ?? "";
};
