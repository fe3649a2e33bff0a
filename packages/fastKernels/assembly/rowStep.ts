/** Subtracts (lr + j li) times a row from another; `bytes` a multiple of 16, the planes of im at `im` behind those of re. */
export function subtractRow(target: usize, source: usize, im: usize, bytes: usize, lr: f64, li: f64): void {
  const cr = f64x2.splat(lr);
  const ci = f64x2.splat(li);
  for (let at: usize = 0; at < bytes; at += 16) {
    const r = v128.load(source + at);
    const i = v128.load(source + im + at);
    const tr = f64x2.sub(f64x2.mul(cr, r), f64x2.mul(ci, i));
    const ti = f64x2.add(f64x2.mul(cr, i), f64x2.mul(ci, r));
    v128.store(target + at, f64x2.sub(v128.load(target + at), tr));
    v128.store(target + im + at, f64x2.sub(v128.load(target + im + at), ti));
  }
}
