/** Beams of parallel level elements in free space. Metres. */
import type { Structure } from "@feedpath/engine";
import { type Dipole, dipoles, level } from "./thinWires";

const radiusInWavelengths = 0.0085 / 2;
const reflectorSpacing = 0.2;

/**
 * Reflector, driven element and directors along x, lengths and spacing in wavelengths. The driven element is a plain
 * dipole of 0.47 wavelengths instead of a tuned folded one: gain hardly depends on it, the feed impedance would.
 */
export function yagi(wavelength: number, reflector: number, directors: readonly number[], spacing: number): Structure {
  const element = (length: number, at: number): Dipole => ({
    length: length * wavelength,
    radius: radiusInWavelengths * wavelength,
    middle: [at * wavelength, 0, 0],
    along: level,
  });
  const driven = element(0.47, 0);
  const others = [
    element(reflector, -reflectorSpacing),
    ...directors.map((length, i) => element(length, (i + 1) * spacing)),
  ];
  const { wires, feeds } = dipoles(driven, ...others);
  return { wires, feeds: feeds.slice(0, 1), loads: [] };
}
