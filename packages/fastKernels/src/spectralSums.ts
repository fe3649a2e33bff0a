/** Sommerfeld sums in the module. */
import type { Kernels } from "@feedpath/engine";
import { instance, Room } from "./instance";

type Spectrum = Parameters<Kernels["sumSpectrum"]>[0];
type Sums = ReturnType<Kernels["sumSpectrum"]>;

const names = ["horizontal", "scalar", "vertical", "cross"] as const;

/** Planes of a spectrum one after another, each padded with zeros to an even number of nodes. */
function putSpectrum(room: Room, spectrum: Spectrum, padded: number): number {
  const planes = [spectrum.radial, spectrum.depth, ...names.map((name) => spectrum[name])];
  const at = room.take(16 * padded * planes.length);
  const view = room.numbers(at, 2 * padded * planes.length);
  const count = spectrum.depth.re.length;
  planes
    .flatMap(({ re, im }) => [re, im])
    .forEach((plane, p) => {
      view.set(plane, p * padded);
      view.fill(0, p * padded + count, (p + 1) * padded);
    });
  return at;
}

/** See Kernels.sumSpectrum. */
export function sumSpectrum(spectrum: Spectrum, rho: Float64Array, s: Float64Array): Sums {
  const count = spectrum.depth.re.length;
  const padded = 2 * Math.ceil(count / 2);
  const kinds = spectrum.steep ? 4 : 2;
  const places = rho.length * s.length;
  const room = new Room();
  const nodes = putSpectrum(room, spectrum, padded);
  const [rhoAt, sAt] = [room.put(rho), room.put(s)];
  const row = room.take(32 * padded);
  const factors = room.take(16 * kinds * padded * s.length);
  const counts = room.take(4 * s.length);
  const out = room.take(64 * places);
  instance().operations.sumSpectrum(
    ...([count, spectrum.waves, kinds, nodes, 8 * padded] as const),
    ...([rhoAt, rho.length, sAt, s.length, row, factors, counts, out] as const),
  );
  const sums = room.numbers(out, 8 * places).slice();
  if (kinds === 2) sums.fill(0, 4 * places);
  const plane = (p: number): Float64Array => sums.subarray(p * places, (p + 1) * places);
  const kernel = (kind: number): Sums["cross"] => ({ re: plane(2 * kind), im: plane(2 * kind + 1) });
  return { horizontal: kernel(0), scalar: kernel(1), vertical: kernel(2), cross: kernel(3) };
}
