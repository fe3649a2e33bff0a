/** Soils and waters of ITU-R P.527. Land: the curves of P.527-3, level up to 30 MHz. Water: the model of P.527-4. */
import { type Ground, type Quantity, type SoilConstant, water } from "@feedpath/engine";

export interface SoilEntry {
  readonly name: string;
  readonly permittivity: number;
  /** S/m. Of waters, at the lowest frequency of `points`. */
  readonly conductivity: number;
  /** Values by frequency (Hz), all loss in the conductivity; null for land, whose curves are level over `range`. */
  readonly points:
    | readonly { readonly frequency: number; readonly permittivity: number; readonly conductivity: number }[]
    | null;
  /** Hz, between which the source gives values that are used here. */
  readonly range: { readonly from: number; readonly to: number };
  readonly source: string;
  readonly status: string;
}

const curves = "Rec. ITU-R P.527-3 (1992), figure 1";
const confirmed = "published, confirmed in a post that quotes the ground-wave curves";
const remembered = "published, quoted from memory";
/** P.527-3: conductivity constant to at least 30 MHz, as summarised on a mailing list in 2000. */
const levelRange = { from: 1e4, to: 30e6 };

const land = (name: string, permittivity: number, conductivity: number, status: string): SoilEntry => ({
  name,
  permittivity,
  conductivity,
  points: null,
  range: levelRange,
  source: curves,
  status,
});

const waterFrequencies = [1e4, 1e6, 1e7, 2e7, 5e7, 1e8, 2e8, 5e8, 1e9];
/** Degrees Celsius at which P.527-3 draws its curves of water. */
const temperature = 20;

/** Water with a salinity in g/kg, and `ions` (S/m) besides. */
function waterEntry(name: string, salinity: number, ions: number, source: string, status: string): SoilEntry {
  const points = waterFrequencies.map((frequency) => {
    const { relativePermittivity, conductivity } = water(frequency, temperature, salinity);
    return { frequency, permittivity: relativePermittivity, conductivity: conductivity + ions };
  });
  const { permittivity, conductivity } = points[0]!;
  return { name, permittivity, conductivity, points, range: { from: 1e4, to: 1e9 }, source, status };
}

const wet = land("wet ground", 30, 1e-2, confirmed);
const mediumDry = land("medium dry ground", 15, 1e-3, confirmed);
const veryDry = land("very dry ground", 3, 1e-4, remembered);
const model = "Rec. ITU-R P.527-4 (2017), equations of water";

export const soils: readonly SoilEntry[] = [
  waterEntry("sea water", 35, 0, `${model}, 35 g/kg, 20 °C`, "published, confirmed in public transcriptions"),
  wet,
  waterEntry("fresh water", 0, 3e-3, `${model}, 20 °C, with the 3 mS/m of P.527-3 (1992)`, remembered),
  mediumDry,
  veryDry,
];

/** The curves are read to about 5 % in permittivity; in nature conductivity varies by a factor 1.5 about them. */
const permittivityReading = 0.05;
const conductivityFactor = 1.5;

const around = (value: number, low: number, high: number, basis: Quantity["basis"]): Quantity => ({
  value,
  low,
  high,
  basis,
  tied: "soil",
});

const readPermittivity = (value: number): Quantity =>
  around(value, value * (1 - permittivityReading), value * (1 + permittivityReading), "catalogue");
const readConductivity = (value: number): Quantity =>
  around(value, value / conductivityFactor, value * conductivityFactor, "catalogue");

/** A named soil with the width of its curve. */
export function namedSoil(entry: SoilEntry): Ground {
  const { name, points, range } = entry;
  if (!points) {
    const permittivity = readPermittivity(entry.permittivity);
    return { kind: "soil", name, permittivity, conductivity: readConductivity(entry.conductivity), range };
  }
  const by = (read: (value: number) => Quantity, key: "permittivity" | "conductivity"): SoilConstant => ({
    kind: "points",
    points: points.map((point) => ({ frequency: point.frequency, quantity: read(point[key]) })),
  });
  const permittivity = by(readPermittivity, "permittivity");
  const conductivity = by(readConductivity, "conductivity");
  return { kind: "layers", name, layers: [{ permittivity, conductivity, thickness: null }] };
}

/** Soil nobody knows: from very dry to wet ground, medium dry as nominal; both values move together. */
export const unknownPermittivity = around(mediumDry.permittivity, veryDry.permittivity, wet.permittivity, "unknown");
export const unknownConductivity = around(mediumDry.conductivity, veryDry.conductivity, wet.conductivity, "unknown");
export const unknownSoil: Ground = {
  kind: "soil",
  name: "unknown",
  permittivity: unknownPermittivity,
  conductivity: unknownConductivity,
  range: levelRange,
};

export const unknownSoilReason = `unknown soil: from very dry to wet ground, ${curves}; both values move together`;
