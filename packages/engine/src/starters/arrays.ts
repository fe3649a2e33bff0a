/** Several elements: beams and phased verticals. Lengths in m. */
import type { Antenna, Feed } from "../station/antennaDescription";
import type { Conductor } from "../station/place";
import {
  antennaOfWires,
  antennaWith,
  east,
  feedAt,
  footHeight,
  metres,
  place,
  type Run,
  tubeFor,
  usualHeight,
  wavelengthAt,
  wireFor,
} from "./pieces";
import type { Starter } from "./starter";

export const beam = (d: {
  /** From back to front: length of each element and its place along the boom. */
  elements: readonly (readonly [length: number, along: number])[];
  driven: number;
  height: number;
  tube: Conductor;
}): Antenna =>
  antennaWith({
    kind: "beam",
    elements: d.elements.map(([length, along]) => ({ length: metres(length), along: metres(along) })),
    driven: d.driven,
    height: metres(d.height),
    boom: east,
    wire: d.tube,
    boomCorrection: "none",
  });

/**
 * Directors of NBS Technical Note 688 (1976), Table 1, in wavelengths, for elements 0.0085 wavelengths thick on a boom that
 * does not conduct: reflector 0.482 long and 0.2 behind the driven element, directors `spacing` apart.
 */
const noteBeams: Readonly<Record<number, { readonly directors: readonly number[]; readonly spacing: number }>> = {
  3: { directors: [0.424], spacing: 0.2 },
  5: { directors: [0.428, 0.424, 0.428], spacing: 0.2 },
  6: { directors: [0.428, 0.42, 0.42, 0.428], spacing: 0.25 },
};

const noteThickness = 0.0085;

/**
 * Length (wavelengths) of an element `thickness` wavelengths thick that has the reactance of one of the Note's elements:
 * X = (430.3 log10(2/thickness) - 320)(2 length - 1) + 40 ohm near half a wave. Handbooks of beams, from memory.
 */
function sameReactance(length: number, thickness: number): number {
  const slope = (thick: number): number => 430.3 * Math.log10(2 / thick) - 320;
  return (1 + ((2 * length - 1) * slope(noteThickness)) / slope(thickness)) / 2;
}

/** A beam of 3, 5 or 6 elements for a wavelength, by that table. Throws RangeError for other counts. */
export function beamOf(count: number, wavelength: number, height: number, tube: Conductor): Antenna {
  const found = noteBeams[count];
  if (!found) throw new RangeError(`a beam of ${count} elements: the table has 3, 5 and 6`);
  // The table gives none for the driven element, which was tuned: 0.455 wavelengths, common practice.
  const lengths = [0.482, 0.455, ...found.directors];
  const places = [0, 0.2, ...found.directors.map((_, i) => 0.2 + (i + 1) * found.spacing)];
  const thickness = tube.diameter.value / wavelength;
  const elements = lengths.map(
    (length, i) => [sameReactance(length, thickness) * wavelength, places[i]! * wavelength] as const,
  );
  return beam({ elements, driven: 2, height, tube });
}

/** Masts with two radials each, at places on the ground (m east, m north); each has a feed of its mast's name. */
export function phasedVerticals(d: {
  masts: readonly {
    readonly name: string;
    readonly east: number;
    readonly north: number;
    readonly away: readonly (readonly [number, number])[];
  }[];
  length: number;
  radial: number;
  base: number;
  tube: Conductor;
  wire: Conductor;
}): Antenna {
  const feeds: Feed[] = [];
  const runs = d.masts.flatMap(({ name, east: x, north: y, away }): Run[] => {
    const foot = place(x, y, d.base);
    feeds.push(feedAt(foot, `${name} mast`, `${name} radial 1`, name));
    const radials = away.map(
      ([dx, dy], i): Run => [
        `${name} radial ${i + 1}`,
        foot,
        place(x + dx * d.radial, y + dy * d.radial, d.base),
        d.wire,
      ],
    );
    return [[`${name} mast`, foot, place(x, y, d.base + d.length), d.tube], ...radials];
  });
  return antennaOfWires(runs, feeds);
}

const mastsFor = (wavelength: number) => ({
  length: 0.237 * wavelength,
  radial: 0.238 * wavelength,
  base: footHeight(wavelength),
  tube: tubeFor(wavelength),
  wire: wireFor(wavelength),
});

const across = [
  [0, 1],
  [0, -1],
] as const;

/** Back mast at x = 0, front mast a quarter wave to the east; radials across. */
export const twoPhasedVerticals = (wavelength: number): Antenna =>
  phasedVerticals({
    masts: [
      { name: "back", east: 0, north: 0, away: across },
      { name: "front", east: wavelength / 4, north: 0, away: across },
    ],
    ...mastsFor(wavelength),
  });

/** A square of a quarter wave with its diagonal to the east; each mast has two radials outwards. */
export function fourPhasedVerticals(wavelength: number): Antenna {
  const s = wavelength / 4 / Math.SQRT2;
  const [c, d] = [Math.cos(Math.PI / 4), Math.sin(Math.PI / 4)];
  const masts = [
    { name: "back", east: -s, north: 0, away: [[-c, d] as const, [-c, -d] as const] },
    { name: "left", east: 0, north: s, away: [[-c, d] as const, [c, d] as const] },
    { name: "right", east: 0, north: -s, away: [[-c, -d] as const, [c, -d] as const] },
    { name: "front", east: s, north: 0, away: [[c, d] as const, [c, -d] as const] },
  ];
  return phasedVerticals({ masts, ...mastsFor(wavelength) });
}

const quarterApart = "71 m over the frequency in MHz, a quarter wave apart: common practice, no source";

export const arrayStarters: readonly Starter[] = [
  {
    name: "beam",
    says: "three parallel elements of tube, one of them fed",
    rule: "NBS Technical Note 688 (1976), Table 1, lengths moved to this thickness at equal reactance (from memory)",
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      return beamOf(3, w, usualHeight(w), tubeFor(w));
    },
  },
  {
    name: "two phased verticals",
    says: "two quarter-wave masts a quarter wave apart, the front one fed a quarter wave later",
    rule: `${quarterApart}; lines found with this program's own moment method for equal currents over average soil`,
    feeding: { kind: "tee", wavelengths: { back: 0.17, front: 0.55 } },
    at: (f) => twoPhasedVerticals(wavelengthAt(f)),
  },
  {
    name: "four phased verticals",
    says: "four quarter-wave masts in a square, fed one after the other along its diagonal",
    rule: `${quarterApart}; lines of a quarter, a half and three quarters of a wave alone do not give equal currents`,
    feeding: { kind: "tee", wavelengths: { back: 0.25, left: 0.5, right: 0.5, front: 0.75 } },
    at: (f) => fourPhasedVerticals(wavelengthAt(f)),
  },
];
