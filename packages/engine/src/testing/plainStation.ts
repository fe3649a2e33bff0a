/** A small invented station for tests of the engine: a level dipole over soil on a data-sheet line. Tests only. */
import type { LineEntry } from "../lines/lineModel";
import { exactly } from "../quantity/quantity";
import type { Antenna, Shape } from "../station/antennaDescription";
import type { LinePart, Part, Path } from "../station/path";
import type { Conductor, Place } from "../station/place";
import type { Station } from "../station/station";

const q = exactly;

export const place = (x: number, y: number, z: number): Place => [q(x), q(y), q(z)];

export const copper = (diameter: number): Conductor => ({
  diameter: q(diameter),
  form: "wire",
  material: "copper",
  conductivity: 58e6,
  permeability: 1,
  insulation: null,
});

/** 50 ohm, velocity factor 0.66, 2 dB/100 m at 7 MHz: invented. */
export const plainLine = (impedance = 50): LineEntry => ({
  designation: "a line",
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: q(impedance),
    velocityFactor: q(0.66),
    loss: [{ frequency: 7e6, decibelsPerMetre: q(0.02) }],
  },
  build: null,
  sources: [],
});

export const linePart = (name: string, length: number, line = plainLine()): LinePart => ({
  kind: "line",
  name,
  note: "",
  state: "in line",
  line,
  length: q(length),
  route: [],
  condition: "dry",
  excessLoss: q(0),
  temperature: null,
});

export const pathOf = (parts: readonly Part[], feed = "antenna"): Path => ({ parts, end: { kind: "feed", feed } });

export const antennaOf = (shape: Shape, name = "antenna"): Antenna => ({
  name,
  shapes: [{ name: shape.kind, shape }],
  feeds: [],
  against: null,
  radials: null,
  loads: [],
  at: place(0, 0, 0),
});

export const levelDipole = (length: number, height: number): Shape => ({
  kind: "dipole",
  length: q(length),
  height: q(height),
  endsHeight: null,
  sag: q(0),
  direction: q(Math.PI / 2),
  wire: copper(2e-3),
});

export function plainStation(changes: Partial<Station> = {}): Station {
  return {
    title: "Test station",
    note: "",
    bands: [{ name: "", frequency: q(7.1e6), sweep: { from: 7e6, to: 7.2e6 }, set: {} }],
    transmitter: {
      power: q(100),
      duty: q(0.4),
      onAir: null,
      designedFor: q(50),
      powerAtSwr: [],
      earthed: "floating",
      noiseFigure: null,
    },
    path: pathOf([linePart("line 1", 28)]),
    antennas: [antennaOf(levelDipole(20.1, 12))],
    ground: { kind: "soil", name: "", permittivity: q(13), conductivity: q(5e-3) },
    earths: [],
    surroundings: [],
    people: [],
    wanted: { elevation: null, direction: null, swrBelow: null, mayChange: [] },
    readings: [],
    assumptions: [],
    measured: {},
    ...changes,
  };
}
