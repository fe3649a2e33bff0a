/** A dielectric that took water, as data again: water's relaxation and ions seen through a mixing rule. */
import { pureWater } from "../ground/water";
import { complex } from "../numerics/complex";
import { vacuumPermittivity } from "../numerics/vacuum";
import type { Dielectric } from "./dielectric";
import { diluted } from "./diluted";
import { mixture } from "./mixture";

/** K (269 to 313), and S/m of what is dissolved in it: rain 1e-3 to 1e-2, tap water 0.05 (practice, from memory). */
export interface DirtyWater {
  readonly temperature: number;
  readonly conductivity: number;
}

/**
 * Water as a dielectric: its slower relaxation and its conductivity; right up to some 100 GHz, where its faster one begins.
 * Source: Recommendation ITU-R P.527-4.
 */
export function waterDielectric({ temperature, conductivity }: DirtyWater): Dielectric {
  const celsius = temperature - 273.15;
  if (!(celsius >= -4 && celsius <= 40 && conductivity >= 0)) {
    throw new RangeError(
      `water of ${celsius.toFixed(1)} degrees, ${conductivity} S/m: expected -4 to 40 degrees and no negative conductivity; ice is not water`,
    );
  }
  const { low, middle, first } = pureWater(celsius);
  const relaxations = [{ strength: low - middle, frequency: first * 1e9 }];
  return { name: "water", permittivity: middle, lossTangent: 0, relaxations, conductivity };
}

/** What is added to a permittivity: a part that is always there, Debye terms, and S/m. */
export interface WaterResponse {
  readonly above: number;
  readonly relaxations: readonly { readonly strength: number; readonly frequency: number }[];
  readonly conductivity: number;
}

/**
 * (w - host)/(1 + weakening (w - host)/host) as Debye terms, exactly, for water's permittivity w in a loss-free host: where its shape
 * weakens the field within it (`weakening` above 0), ions charge its surface, which is one more relaxation (Maxwell and Wagner),
 * and no direct current is left.
 */
export function waterResponse(water: DirtyWater, host: number, weakening: number): WaterResponse {
  const { permittivity, relaxations, conductivity } = waterDielectric(water);
  const [{ strength, frequency }] = relaxations as readonly [{ strength: number; frequency: number }];
  const contrast = permittivity - host;
  if (weakening === 0)
    return { above: contrast, relaxations: [{ strength, frequency }], conductivity: water.conductivity };
  // With S = j f/frequency the response is N/D: N = contrast S (1 + S) + strength S + ions (1 + S), D = S (1 + S) + q N.
  const q = weakening / host;
  const ions = (conductivity ?? 0) / (2 * Math.PI * frequency * vacuumPermittivity);
  const square = 1 + q * contrast;
  const linear = square + q * (strength + ions);
  const poles = realRoots(square, linear, q * ions);
  return {
    above: contrast / square,
    relaxations: poles
      .filter((pole) => pole < 0)
      .map((pole) => {
        const numerator = contrast * pole * (1 + pole) + strength * pole + ions * (1 + pole);
        return { strength: -numerator / (pole * (2 * square * pole + linear)), frequency: -pole * frequency };
      }),
    conductivity: 0,
  };
}

/** Both roots of a x^2 + b x + c, b > 0, that are real for passive mixtures; without losing the small one's digits. */
function realRoots(a: number, b: number, c: number): readonly number[] {
  const larger = -(b + Math.sqrt(Math.max(0, b * b - 4 * a * c))) / 2;
  return [larger / a, c / larger];
}

/**
 * A dielectric with the share `share` (0 to 1, by volume) of water in bodies of one depolarisation factor: 1/3 drops in cells, 0
 * channels along the field, 1 a layer across it. The host's losses are kept to first order.
 */
export function soaked(host: Dielectric, water: DirtyWater, share: number, factor: number): Dielectric {
  const { permittivity } = waterDielectric(water);
  const base = diluted(host, (own) => mixture(own, complex(permittivity), share, factor));
  return withResponse(
    { ...host, ...base },
    waterResponse(water, host.permittivity, factor * (1 - share)),
    share,
    host.name,
  );
}

/** A dielectric whose permittivity holds `above` already, with `weight` times the rest of a response added. */
export function withResponse(base: Dielectric, response: WaterResponse, weight: number, name: string): Dielectric {
  const added = response.relaxations.map((r) => ({ ...r, strength: weight * r.strength }));
  return {
    ...base,
    name: `wet ${name}`,
    relaxations: [...(base.relaxations ?? []), ...added],
    conductivity: (base.conductivity ?? 0) + weight * response.conductivity,
  };
}
