/** Masts fed at their foot, against radials. Lengths in m. */
import type { Antenna, Radials } from "../station/antennaDescription";
import type { Conductor } from "../station/place";
import {
  antennaOfWires,
  antennaWith,
  feedAt,
  footHeight,
  metres,
  place,
  spread,
  tubeFor,
  wavelengthAt,
  wireFor,
} from "./pieces";
import type { Starter } from "./starter";

const radialsOf = (count: number, length: number, wire: Conductor, lie: Radials["lie"]): Radials => ({
  count,
  length: metres(length),
  wire,
  lie,
  over: { from: 0, to: 2 * Math.PI },
  bond: null,
});

interface Mast {
  readonly length: number;
  readonly base: number;
  readonly tube: Conductor;
  readonly radials: Radials;
}

export const vertical = (d: Mast): Antenna =>
  antennaWith(
    { kind: "vertical", base: metres(d.base), sections: [{ length: metres(d.length), wire: d.tube }] },
    { against: "radials", radials: d.radials },
  );

/** A wire up from its foot and on, level, against raised radials. */
export const invertedL = (d: {
  up: number;
  along: number;
  base: number;
  radials: Radials;
  wire: Conductor;
}): Antenna => {
  const top = d.base + d.up;
  const points = [place(0, 0, d.base), place(0, 0, top), place(d.along, 0, top)];
  return antennaWith({ kind: "end-fed wire", points, wire: d.wire }, { against: "radials", radials: d.radials });
};

/** A wire up from its foot into the middle of a level wire, against raised radials. */
export function tAntenna(d: {
  up: number;
  arm: number;
  base: number;
  count: number;
  radial: number;
  wire: Conductor;
}): Antenna {
  const [foot, top] = [place(0, 0, d.base), place(0, 0, d.base + d.up)];
  return antennaOfWires(
    [
      ["mast", foot, top, d.wire],
      ["east arm", top, place(d.arm, 0, d.base + d.up), d.wire],
      ["west arm", top, place(-d.arm, 0, d.base + d.up), d.wire],
      ...spread("radial", foot, d.count, d.radial, 0, d.wire),
    ],
    [feedAt(foot, "mast", "radial 1")],
  );
}

const quarterRule = "71 m over the frequency in MHz: common practice, no source";

export const verticalStarters: readonly Starter[] = [
  {
    name: "vertical with raised radials",
    says: "a quarter-wave mast with four raised radials",
    rule: quarterRule,
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const base = footHeight(w);
      const radials = radialsOf(4, 0.238 * w, wireFor(w), metres(base));
      return vertical({ length: 0.237 * w, base, tube: tubeFor(w), radials });
    },
  },
  {
    name: "vertical with radials on the soil",
    says: "a quarter-wave mast at the soil with twelve radials lying on it",
    rule: `${quarterRule}; radials a fifth of a wavelength`,
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const radials = radialsOf(12, 0.2 * w, wireFor(w), "on the soil");
      return vertical({ length: 0.237 * w, base: 0.1, tube: tubeFor(w), radials });
    },
  },
  {
    name: "ground plane",
    says: "a quarter-wave rod on a mast with four radials 45 degrees down, nearer to 50 ohm",
    rule: quarterRule,
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const base = Math.max(4, 0.3 * w);
      const radials = radialsOf(4, 0.245 * w, wireFor(w), metres(base - 0.245 * w * Math.SQRT1_2));
      return vertical({ length: 0.237 * w, base, tube: tubeFor(w), radials });
    },
  },
  {
    name: "inverted L",
    says: "a wire a seventh of a wavelength up and on, level, to a quarter wave, with four raised radials",
    rule: `0.25 wavelengths of wire in all: common practice, no source`,
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const base = footHeight(w);
      const radials = radialsOf(4, 0.238 * w, wireFor(w), metres(base));
      return invertedL({ up: w / 7, along: (0.25 - 1 / 7) * w, base, radials, wire: wireFor(w) });
    },
  },
  {
    name: "T",
    says: "an upright wire of an eighth of a wavelength into a level one, with four raised radials",
    rule: "each arm 0.085 wavelengths, about a quarter wave to either end: common practice, no source",
    feeding: { kind: "line" },
    at: (f) => {
      const w = wavelengthAt(f);
      const size = { up: w / 8, arm: 0.085 * w, base: footHeight(w), count: 4, radial: 0.238 * w };
      return tAntenna({ ...size, wire: wireFor(w) });
    },
  },
];
