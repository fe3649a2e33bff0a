/** How heat leaves a line where it lies: W per metre against the temperature of its surface. */
import { rootBetween } from "../numerics/crossings";
import type { Lying } from "../station/path";
import type { AirState } from "./standardAir";
import { heatIntoAir, type RoundSurface, stefanBoltzmann, sunshine } from "./surfaceHeat";

export interface Site {
  readonly air: AirState;
  /** W/m² on a surface square to the sun. */
  readonly irradiance: number;
  readonly soil: {
    /** K far from the line, K m/W, and m from the surface to the line's axis. */
    readonly temperature: number;
    readonly resistivity: number;
    readonly depth: number;
  };
  /** Inner and outer diameter of a conduit over the line's. */
  readonly conduit: number;
}

/** W/m that leave at a surface temperature (K), rising with it; negative where the surroundings are warmer. */
export type Leaving = (surfaceTemperature: number) => number;

/**
 * IEC 60287-2-1: resistance (K m/W) of the soil round one line: ρ/(2π) ln(u + √(u² − 1)), u = 2 depth/diameter.
 * The soil's surface is taken as wide and of one temperature. Throws RangeError where the line is not wholly in the soil.
 */
export function soilResistance(diameter: number, depth: number, resistivity: number): number {
  const u = (2 * depth) / diameter;
  if (!(u > 1)) {
    throw new RangeError(`buried line: axis ${depth} m deep, ${diameter} m thick; expected it wholly in the soil`);
  }
  return (resistivity / (2 * Math.PI)) * Math.log(u + Math.sqrt(u * u - 1));
}

/** W/(m K) of air at rest, at some 330 K: handbooks (from memory). */
const stillAir = 0.028;
const pipe = { emissivity: 0.9, absorptivity: 0.6 };

/**
 * In a conduit hung in the shade: conduction through still air and radiation from line to pipe, as concentric cylinders, then
 * pipe to air. Without convection inside, and so on the warm side of the truth.
 */
function throughConduit(surface: RoundSurface, site: Site): Leaving {
  const outside: RoundSurface = { diameter: site.conduit * surface.diameter, ...pipe };
  const conducting = (2 * Math.PI * stillAir) / Math.log(site.conduit);
  const exchange = 1 / (1 / surface.emissivity + (1 / pipe.emissivity - 1) / site.conduit);
  const radiating = Math.PI * surface.diameter * exchange * stefanBoltzmann;
  const across = (hot: number, cold: number): number => conducting * (hot - cold) + radiating * (hot ** 4 - cold ** 4);
  return inTurn(across, (t) => heatIntoAir(outside, t, site.air), site.air.temperature);
}

/** W/(m K) of cables wound tightly, jackets and air between them; of the drum's surface what a dark one gives off (our assumptions). */
const wound = { conductivity: 0.2, emissivity: 0.9 };

/**
 * Wound on a drum: `length` metres packed square in a ring as deep as wide, twice that its inner diameter. Heat spreads through half the depth to
 * the ring's outside (πw(4w) round it and two faces of 3πw²), which is cooled like a cylinder of its size. Rough, on the warm side: the
 * core of a slab of even heat is (w/2)²/(2k) W/m³ above its faces, and the inside of the ring is not counted.
 */
function throughWinding(surface: RoundSurface, site: Site, length: number): Leaving {
  const area = surface.diameter ** 2;
  const depth = Math.max(surface.diameter, ((length * area) / (3 * Math.PI)) ** (1 / 3));
  const inside = depth ** 2 / (8 * wound.conductivity * area);
  const ring: RoundSurface = { diameter: 4 * depth, emissivity: wound.emissivity, absorptivity: 0 };
  const metresOfRing = (10 * Math.PI * depth ** 2) / (Math.PI * ring.diameter);
  const fromRing = (t: number): number => (heatIntoAir(ring, t, site.air) * metresOfRing) / length;
  return inTurn((hot, cold) => (hot - cold) / inside, fromRing, site.air.temperature);
}

/** Two steps one after the other: the temperature between them is where both carry the same. */
function inTurn(
  first: (hot: number, cold: number) => number,
  second: (temperature: number) => number,
  ambient: number,
): Leaving {
  return (hot) => {
    if (hot === ambient) return 0;
    const low = Math.min(hot, ambient);
    const high = Math.max(hot, ambient);
    const between = rootBetween((t) => first(hot, t) - second(t), low, high, 1e-7);
    return first(hot, between);
  };
}

/** `length` of the line in m counts on a drum only. */
export function leavingOf(lies: Lying, surface: RoundSurface, site: Site, length: number): Leaving {
  switch (lies) {
    case "in air":
      return (t) => heatIntoAir(surface, t, site.air);
    case "in the sun":
      return (t) => heatIntoAir(surface, t, site.air) - sunshine(surface, site.irradiance);
    case "buried": {
      const resistance = soilResistance(surface.diameter, site.soil.depth, site.soil.resistivity);
      return (t) => (t - site.soil.temperature) / resistance;
    }
    case "in a conduit":
      return throughConduit(surface, site);
    case "on a drum":
      return throughWinding(surface, site, length);
  }
}
