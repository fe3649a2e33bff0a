/** Uncertain inputs in words, and the cheapest measurement that would settle each. English. */
import { metres, significantNumber } from "../quantity/format";
import type { Quantity } from "../quantity/quantity";
import type { UncertainInput } from "../station/uncertainInputs";
import { theName } from "./phrases";

/** "very dry to wet soil", "11.5 to 12.5 m", "15 % less to 15 % more than listed". */
export function inputSays(input: UncertainInput): string {
  const q = input.quantities[0]!;
  if (q.tied === "soil") {
    if (q.basis === "unknown") return "very dry to wet soil";
    return input.quantities.flatMap((one, i) => soilSays(one, input.places[i]!)).join(", ");
  }
  // Loss points move together: what they have in common is the share, not the decibels of the first.
  if (/decibelsPerMetre$/.test(input.place)) {
    const share = (x: number) => significantNumber(Math.abs(100 * (x / q.value - 1)), 2);
    return `${share(q.low)} % less to ${share(q.high)} % more than listed`;
  }
  return spanText(q, unitOfPlace(input.place));
}

/** Of values by frequency the first tells how wide they are. */
function soilSays(q: Quantity, place: readonly (string | number)[]): string[] {
  const point = place.indexOf("points");
  if (point >= 0 && place[point + 1] !== 0) return [];
  const keys = point < 0 ? place : place.slice(0, point);
  return [`${String(keys.at(-1))} ${spanText(q, unitOfPlace(keys.join(".")))}`];
}

interface Unit {
  readonly name: string;
  readonly factor: number;
}

function spanText(q: Quantity, unit: Unit): string {
  const text = (x: number) => significantNumber(x * unit.factor, 3);
  return `${text(q.low)} to ${text(q.high)}${unit.name === "" ? "" : ` ${unit.name}`}`;
}

const unitNames: readonly (readonly [RegExp, string, number])[] = [
  [/(length|height|Height|thickness|spacing|sag|wall|diameter|legs\.\d+|base|along|\.[0-2])$/, "m", 1],
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

function unitOfPlace(place: string): Unit {
  const plain = place.replace(/\.points\.\d+\.quantity$|\.quantity$/, "");
  const found = unitNames.find(([pattern]) => pattern.test(plain));
  return found ? { name: found[1], factor: found[2] } : { name: "", factor: 1 };
}

/** By the place of an input, the first pattern that fits: what to measure to know it better. `what` is its name without "the". */
const measurements: readonly (readonly [RegExp, (what: string) => string])[] = [
  [
    /excessLoss|decibelsPerMetre/,
    () => "Open or short the far end of the line and read the SWR at its near end: that gives its loss.",
  ],
  [
    /\.model\.impedance$/,
    () =>
      "Open, then short the far end of the line and read the impedance at its near end: the root of their product is the line's own.",
  ],
  [
    /velocityFactor$/,
    () =>
      "Open the far end of the line and find the lowest frequency of least impedance at its near end: there it is a quarter wave long.",
  ],
  [
    /^path.*loss$/i,
    (what) =>
      `Read the power before and behind ${theName(what.replace(/^loss of /, ""))}, into a dummy load of the resistance it is made for: the difference is its loss.`,
  ],
  [/insulation\.permittivity$/, () => "Read where the SWR is lowest: it shows how much the insulation slows the wire."],
  [/length$/, (what) => `Measure the ${what} with a tape.`],
  [/eight$/, (what) => `Measure the ${what} with a line and a weight.`],
  [/\.q$/, (what) => `Measure the ${what}, or read the SWR over the whole band: its width shows it.`],
];

/** What to measure to know this input better; null for soil, which is told by `soilSettledBy` where a reading can tell it. */
export function settledBy(input: { readonly place: string; readonly input: string }): string | null {
  if (input.place.startsWith("ground")) return null;
  const what = input.input.replace(/^the /, "");
  const found = measurements.find(([pattern]) => pattern.test(input.place));
  return found ? found[1](what) : `Measure the ${what}.`;
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
