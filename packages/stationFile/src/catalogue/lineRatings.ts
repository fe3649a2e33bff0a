/** What lines stand and how they handle: quantities in SI units with the sources that speak of them. */
import type { LineRatings, Quantity } from "@feedpath/engine";
import type { LineSource } from "./catalogueLine";
import { fromMemory, practice, spread } from "./lineParts";

const kelvin = (celsius: number): number => celsius + 273.15;

/** A value that a catalogue of lines gives, with the spread it may have. */
const about = (value: number, low: number, high: number): Quantity => ({ value, low, high, basis: "catalogue" });

export interface Rated {
  readonly ratings: LineRatings;
  readonly sources: readonly LineSource[];
}

export const together = (...parts: readonly Rated[]): Rated => ({
  ratings: Object.assign({}, ...parts.map((p) => p.ratings)),
  sources: parts.flatMap((p) => p.sources),
});

/** Where the older lists and the later sheets differ, the lower counts. Where one is published, the other is guessed from the rest. */
export function milVoltage(older: number, later: number | null, sheet: string, status = fromMemory): Rated {
  const usual = 0.74;
  return {
    ratings: { voltage: about(later ?? older, later ?? usual * older, older) },
    sources: [
      {
        of: ["voltage"],
        value:
          later === null
            ? `${older} V rms in the older lists; the later sheets of the others give about 0.74 of theirs: from there up`
            : `${older} V rms in the older lists, ${later} V rms in the later sheet: the lower is taken`,
        source: sheet,
        status,
      },
    ],
  };
}

const limits = {
  polyethylene: { celsius: 80, says: "80 °C for polyethylene, 80 to 85 °C; a jacket may bear less" },
  PTFE: { celsius: 200, says: "200 °C for PTFE with an FEP jacket" },
} as const;

export function temperature(material: keyof typeof limits): Rated {
  const { celsius, says } = limits[material];
  return {
    ratings: {
      temperature: about(kelvin(celsius), kelvin(celsius), kelvin(material === "polyethylene" ? 85 : celsius)),
    },
    sources: [
      {
        of: ["temperature"],
        value: says,
        source: "MIL-DTL-17, general requirements, and handbooks",
        status: fromMemory,
      },
    ],
  };
}

/** kg/m, known within a fifth. */
export const weight = (perMetre: number, spreadShare = 0.2): Rated => ({
  ratings: { weight: about(perMetre, (1 - spreadShare) * perMetre, (1 + spreadShare) * perMetre) },
  sources: [
    {
      of: ["weight"],
      value: `${Number((100 * perMetre).toPrecision(3))} kg/100 m, ± ${100 * spreadShare} %`,
      source: "tables of cables",
      status: "from memory",
    },
  ],
});

/** Least radius of a bend laid once, from the diameter over the jacket in m. */
export const fiveDiameters = (jacket: number): Rated => ({
  ratings: { bendRadius: about(5 * jacket, 4 * jacket, 10 * jacket) },
  sources: [
    {
      of: ["bendRadius"],
      value: "5 times the diameter over the jacket, laid once; 10 times where it moves",
      source: "usual rule for flexible coaxial cable",
      status: practice,
    },
  ],
});

/** m, from a range of what makers of this size give. */
export const bend = (low: number, high: number): Rated => ({
  ratings: { bendRadius: spread(low, high) },
  sources: [
    {
      of: ["bendRadius"],
      value: `${1000 * low} to ${1000 * high} mm, laid once`,
      source: "usual sheets of this size",
      status: "from memory",
    },
  ],
});

/** V rms, from a range. */
export const voltageBetween = (low: number, high: number, says: string): Rated => ({
  ratings: { voltage: spread(low, high) },
  sources: [
    {
      of: ["voltage"],
      value: `${low} to ${high} V rms: ${says}`,
      source: "usual sheets of this size",
      status: "from memory",
    },
  ],
});
