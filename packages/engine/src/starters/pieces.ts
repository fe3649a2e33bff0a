/** What the starters are put together from: lengths as people write them, places, conductors, an antenna of one shape. */
import { cableMetals } from "../lines/cableMaterials";
import { speedOfLight } from "../numerics/vacuum";
import { exactly, type Quantity } from "../quantity/quantity";
import type { Antenna, Feed, Shape } from "../station/antennaDescription";
import type { Conductor, Place } from "../station/place";

/** Metres, to four figures: nobody cuts finer. */
export const metres = (x: number): Quantity => exactly(tidy(x));

const tidy = (x: number): number => Number(x.toPrecision(4)) + 0;

export const wavelengthAt = (frequency: number): number => speedOfLight / frequency;

/** East, north, up, m. A centimetre of a wavelength of metres decides nothing, of one of decimetres it does. */
export const place = (east: number, north: number, up: number): Place => [metres(east), metres(north), metres(up)];

const round = (diameter: number, form: Conductor["form"], metal: "copper" | "aluminium"): Conductor => ({
  diameter: exactly(diameter),
  form,
  material: cableMetals[metal].name,
  conductivity: cableMetals[metal].conductivity,
  permeability: cableMetals[metal].permeability,
  insulation: null,
});

/** Wire of 2 mm, thinner where a tenth of a thousandth of the wavelength is less. */
export const wireFor = (wavelength: number): Conductor => round(wavelength < 4 ? 1e-3 : 2e-3, "wire", "copper");

/** Tube for masts and elements: about a thousandth of the wavelength, between 6 and 50 mm. */
export function tubeFor(wavelength: number): Conductor {
  const millimetres = Math.min(50, Math.max(6, Math.round(wavelength)));
  return round(millimetres / 1000, "tube", "aluminium");
}

export const copperTube = (diameter: number): Conductor => round(diameter, "tube", "copper");

/** Height of a horizontal wire: half a wavelength where a mast of 12 m reaches it, and no lower than 4 m. */
export const usualHeight = (wavelength: number): number => Math.min(12, Math.max(4, wavelength / 2));

/** Height of the foot of something that stands on a mast of its own. */
export const footHeight = (wavelength: number): number => Math.min(2.5, Math.max(0.5, wavelength / 16));

export const east = exactly(Math.PI / 2);

export const antennaWith = (shape: Shape, more: Partial<Antenna> = {}): Antenna => ({
  name: "antenna",
  shapes: [{ name: shape.kind, shape }],
  feeds: [],
  against: null,
  radials: null,
  loads: [],
  at: place(0, 0, 0),
  ...more,
});

/** Wires one by one: name, both ends, what it is made of. */
export type Run = readonly [name: string, from: Place, to: Place, wire: Conductor];

export const antennaOfWires = (runs: readonly Run[], feeds: readonly Feed[], more: Partial<Antenna> = {}): Antenna =>
  antennaWith(
    { kind: "wires", wires: runs.map(([name, from, to, wire]) => ({ name, from, to, wire })) },
    { feeds, ...more },
  );

export const feedAt = (at: Place, from: string, into: string, name = "antenna"): Feed => ({ name, at, from, into });

/** Wires from a hub outwards, named by their number, evenly over a sector (radians clockwise from north). */
export function spread(name: string, hub: Place, count: number, length: number, drop: number, wire: Conductor): Run[] {
  return Array.from({ length: count }, (_, i): Run => {
    const azimuth = (2 * Math.PI * i) / count;
    const end = place(
      hub[0].value + length * Math.sin(azimuth),
      hub[1].value + length * Math.cos(azimuth),
      hub[2].value - drop,
    );
    return [`${name} ${i + 1}`, hub, end, wire];
  });
}
