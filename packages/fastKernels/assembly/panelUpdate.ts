/** What a panel of eliminated rows does to others: packed for reading in order, then subtracted tile by tile. */

/** Copies columns from `to` on of the panel's rows in groups of 4: re of 4, im of 4, row after row. */
export function packPanel(re: usize, plane: usize, stride: usize, from: i32, to: i32, out: usize): void {
  for (let column = usize(8 * to); column < stride; column += 32) {
    for (let k = from; k < to; k++) {
      const at = re + usize(k) * stride + column;
      v128.store(out, v128.load(at));
      v128.store(out, v128.load(at, 16), 16);
      v128.store(out, v128.load(at + plane), 32);
      v128.store(out, v128.load(at + plane, 16), 48);
      out += 64;
    }
  }
}

/** Multipliers of rows i, i + 1: entries of the panel's columns i, i + 1 over its pivots. */
export function packMultipliers(re: usize, plane: usize, stride: usize, from: i32, to: i32, i: i32, out: usize): void {
  for (let k = from; k < to; k++) {
    const row = re + usize(k) * stride;
    const dr = load<f64>(row + usize(8 * k));
    const di = load<f64>(row + plane + usize(8 * k));
    const size = dr * dr + di * di;
    const wr = f64x2.splat(dr / size);
    const wi = f64x2.splat(di / size);
    const ur = v128.load(row + usize(8 * i));
    const ui = v128.load(row + plane + usize(8 * i));
    v128.store(out, f64x2.add(f64x2.mul(ur, wr), f64x2.mul(ui, wi)));
    v128.store(out, f64x2.sub(f64x2.mul(ui, wr), f64x2.mul(ur, wi)), 16);
    out += 32;
  }
}

/** Subtracts the panel's part from 2 rows x 4 columns at `a`, `b`. */
export function updateTile(a: usize, b: usize, plane: usize, panel: usize, multipliers: usize, rows: i32): void {
  let a0 = v128.load(a);
  let a1 = v128.load(a, 16);
  let c0 = v128.load(a + plane);
  let c1 = v128.load(a + plane, 16);
  let b0 = v128.load(b);
  let b1 = v128.load(b, 16);
  let d0 = v128.load(b + plane);
  let d1 = v128.load(b + plane, 16);
  for (const end = panel + usize(64 * rows); panel < end; panel += 64) {
    const r0 = v128.load(panel);
    const r1 = v128.load(panel, 16);
    const i0 = v128.load(panel, 32);
    const i1 = v128.load(panel, 48);
    let m = v128.load_splat<f64>(multipliers);
    a0 = f64x2.sub(a0, f64x2.mul(m, r0));
    a1 = f64x2.sub(a1, f64x2.mul(m, r1));
    c0 = f64x2.sub(c0, f64x2.mul(m, i0));
    c1 = f64x2.sub(c1, f64x2.mul(m, i1));
    m = v128.load_splat<f64>(multipliers, 16);
    a0 = f64x2.add(a0, f64x2.mul(m, i0));
    a1 = f64x2.add(a1, f64x2.mul(m, i1));
    c0 = f64x2.sub(c0, f64x2.mul(m, r0));
    c1 = f64x2.sub(c1, f64x2.mul(m, r1));
    m = v128.load_splat<f64>(multipliers, 8);
    b0 = f64x2.sub(b0, f64x2.mul(m, r0));
    b1 = f64x2.sub(b1, f64x2.mul(m, r1));
    d0 = f64x2.sub(d0, f64x2.mul(m, i0));
    d1 = f64x2.sub(d1, f64x2.mul(m, i1));
    m = v128.load_splat<f64>(multipliers, 24);
    b0 = f64x2.add(b0, f64x2.mul(m, i0));
    b1 = f64x2.add(b1, f64x2.mul(m, i1));
    d0 = f64x2.sub(d0, f64x2.mul(m, r0));
    d1 = f64x2.sub(d1, f64x2.mul(m, r1));
    multipliers += 32;
  }
  v128.store(a, a0);
  v128.store(a, a1, 16);
  v128.store(a + plane, c0);
  v128.store(a + plane, c1, 16);
  v128.store(b, b0);
  v128.store(b, b1, 16);
  v128.store(b + plane, d0);
  v128.store(b + plane, d1, 16);
}
