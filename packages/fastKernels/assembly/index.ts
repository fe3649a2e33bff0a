/** What the module offers; each operation lives in a file of its own. Addresses are bytes in the module's memory. */
import { cosine, sinCos, sine } from "./sinCos";

/** Sine and cosine of `count` numbers (rounded up to an even count), for tests of the polynomials. */
export function sinCosOfAll(x: usize, count: i32, sines: usize, cosines: usize): void {
  for (let i = 0; i < count; i += 2) {
    const at = usize(8 * i);
    sinCos(v128.load(x + at));
    v128.store(sines + at, sine);
    v128.store(cosines + at, cosine);
  }
}
