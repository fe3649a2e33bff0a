/** Soils of ITU-R P.527. Values hold below about 30 MHz for conductivity and below about 1 GHz for permittivity. */
import type { Ground, Quantity } from "@feedpath/engine";

export interface SoilEntry {
  readonly name: string;
  readonly permittivity: number;
  /** S/m. */
  readonly conductivity: number;
  readonly source: string;
  readonly status: string;
}

const source = "Rec. ITU-R P.527-3 (1992), figure 1";
const confirmed = "published, confirmed in a post that quotes the ground-wave curves";
const remembered = "published, quoted from memory";

const soil = (name: string, permittivity: number, conductivity: number, status: string): SoilEntry => ({
  name,
  permittivity,
  conductivity,
  source,
  status,
});

const wet = soil("wet ground", 30, 1e-2, confirmed);
const mediumDry = soil("medium dry ground", 15, 1e-3, confirmed);
const veryDry = soil("very dry ground", 3, 1e-4, remembered);

export const soils: readonly SoilEntry[] = [
  soil("sea water", 70, 5, confirmed),
  wet,
  soil("fresh water", 80, 3e-3, remembered),
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

/** A named soil with the width of its curve. */
export const namedSoil = (entry: SoilEntry): Ground => ({
  kind: "soil",
  name: entry.name,
  permittivity: around(
    entry.permittivity,
    entry.permittivity * (1 - permittivityReading),
    entry.permittivity * (1 + permittivityReading),
    "catalogue",
  ),
  conductivity: around(
    entry.conductivity,
    entry.conductivity / conductivityFactor,
    entry.conductivity * conductivityFactor,
    "catalogue",
  ),
});

/** Soil nobody knows: from very dry to wet ground, medium dry as nominal; both values move together. */
export const unknownPermittivity = around(mediumDry.permittivity, veryDry.permittivity, wet.permittivity, "unknown");
export const unknownConductivity = around(mediumDry.conductivity, veryDry.conductivity, wet.conductivity, "unknown");
export const unknownSoil: Ground = {
  kind: "soil",
  name: "unknown",
  permittivity: unknownPermittivity,
  conductivity: unknownConductivity,
};

export const unknownSoilReason = `unknown soil: from very dry to wet ground, ${source}; both values move together`;
