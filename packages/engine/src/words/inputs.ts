/** Uncertain inputs in words, and the cheapest measurement that would settle each. English. */
import { metres, significantNumber } from "../quantity/format";
import type { UncertainInput } from "../station/uncertainInputs";

/** "dry to wet soil", "11.5 to 12.5 m". */
export function inputSays(input: UncertainInput): string {
  if (input.quantities.some((q) => q.tied === "soil")) return "very dry to wet soil";
  const q = input.quantities[0]!;
  const unit = unitOfPlace(input.place);
  const text = (x: number) => significantNumber(x * unit.factor, 3);
  return `${text(q.low)} to ${text(q.high)}${unit.name === "" ? "" : ` ${unit.name}`}`;
}

const unitNames: readonly (readonly [RegExp, string, number])[] = [
  [/(length|height|Height|spacing|sag|wall|diameter|legs\.\d+|base|along|\.[0-2])$/, "m", 1],
  [/conductivity$/, "mS/m", 1000],
  [/excessLoss$|decibelsPerMetre$/, "dB/100 m", 100],
  [/loss$/i, "dB", 1],
  [/(resistance|transmitterSide|antennaSide|designedFor|impedance|resistor)$/i, "Ω", 1],
  [/power$/i, "W", 1],
  [/frequency$/, "MHz", 1e-6],
  [/temperature$/, "K", 1],
  [/capacitor$|capacitance$/, "pF", 1e12],
  [/coil$|Inductance$/, "µH", 1e6],
];

function unitOfPlace(place: string): { readonly name: string; readonly factor: number } {
  const found = unitNames.find(([pattern]) => pattern.test(place));
  return found ? { name: found[1], factor: found[2] } : { name: "", factor: 1 };
}

/** What to measure to know this input better. */
export function settledBy(input: { readonly place: string; readonly input: string }): string {
  const { place } = input;
  const what = input.input.replace(/^the /, "");
  if (place.startsWith("ground")) {
    return "Read R at the feed point at a low height: so near the soil it shows most plainly what the soil is.";
  }
  if (/excessLoss|decibelsPerMetre|loss$/i.test(place) && place.startsWith("path")) {
    return "Open or short the far end of the line and read the SWR at its near end: that gives its loss.";
  }
  if (/length$/.test(place)) return `Measure the ${what} with a tape.`;
  if (/eight$/.test(place)) return `Measure the ${what} with a line and a weight.`;
  if (/\.q$/.test(place)) return `Measure the ${what}, or read the SWR over the whole band: its width shows it.`;
  return `Measure the ${what}.`;
}

/** The reading that tells soils apart, with what it would show; `height` null where the antenna stays where it is. */
export function soilSettledBy(f: {
  readonly height: number | null;
  readonly low: string;
  readonly taken: string;
  readonly high: string;
}): string {
  const how =
    f.height === null
      ? "Read R at the feed point"
      : `Lower the wire to ${metres(f.height)} and read R at the feed point`;
  return `${how}: about ${f.low} at the low end of what the soil may be, ${f.taken} as taken, ${f.high} at the high end.`;
}
