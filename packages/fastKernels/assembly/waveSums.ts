/** Sums of current moments with the phases of plane waves, two waves at once. Definition: the readable twin's waveSums. */
import { cosine, sinCos, sine } from "./sinCos";

/** Bytes of a point: position, direction (three numbers each), a quarter of the radius squared, re and im of the moment. */
const pointBytes: usize = 72;

/**
 * `waves`: level wavenumbers of all, then angles, then upright wavenumbers, `stride` bytes apart; their number (`count`) is
 * even. `out`: u, v, n, re and im each, of two waves side by side.
 */
export function sumWaves(points: usize, pointCount: i32, waves: usize, stride: usize, count: i32, out: usize): void {
  const end = points + usize(pointCount) * pointBytes;
  for (let w = 0; w < count; w += 2) {
    const at = waves + usize(8 * w);
    const radial = v128.load(at);
    const kz = v128.load(at + 2 * stride);
    sinCos(v128.load(at + stride));
    const c = cosine;
    const s = sine;
    const kx = f64x2.mul(radial, c);
    const ky = f64x2.mul(radial, s);
    const square = f64x2.add(f64x2.mul(radial, radial), f64x2.mul(kz, kz));
    let ur = f64x2.splat(0);
    let ui = ur;
    let vr = ur;
    let vi = ur;
    let nr = ur;
    let ni = ur;
    for (let p = points; p < end; p += pointBytes) {
      const tx = v128.load64_splat(p, 24);
      const ty = v128.load64_splat(p, 32);
      const tz = v128.load64_splat(p, 40);
      const level = f64x2.add(f64x2.mul(kx, v128.load64_splat(p)), f64x2.mul(ky, v128.load64_splat(p, 8)));
      sinCos(f64x2.add(level, f64x2.mul(kz, v128.load64_splat(p, 16))));
      const along = f64x2.add(f64x2.mul(tx, c), f64x2.mul(ty, s));
      const across = f64x2.sub(f64x2.mul(ty, c), f64x2.mul(tx, s));
      const parallel = f64x2.add(f64x2.mul(along, radial), f64x2.mul(tz, kz));
      const crosswise = f64x2.sub(square, f64x2.mul(parallel, parallel));
      const tube = f64x2.sub(f64x2.splat(1), f64x2.mul(crosswise, v128.load64_splat(p, 48)));
      const mr = f64x2.mul(tube, v128.load64_splat(p, 56));
      const mi = f64x2.mul(tube, v128.load64_splat(p, 64));
      const re = f64x2.sub(f64x2.mul(mr, cosine), f64x2.mul(mi, sine));
      const im = f64x2.add(f64x2.mul(mr, sine), f64x2.mul(mi, cosine));
      ur = f64x2.add(ur, f64x2.mul(along, re));
      ui = f64x2.add(ui, f64x2.mul(along, im));
      vr = f64x2.add(vr, f64x2.mul(across, re));
      vi = f64x2.add(vi, f64x2.mul(across, im));
      nr = f64x2.add(nr, f64x2.mul(tz, re));
      ni = f64x2.add(ni, f64x2.mul(tz, im));
    }
    const to = out + usize(48 * w);
    v128.store(to, ur);
    v128.store(to, ui, 16);
    v128.store(to, vr, 32);
    v128.store(to, vi, 48);
    v128.store(to, nr, 64);
    v128.store(to, ni, 80);
  }
}
