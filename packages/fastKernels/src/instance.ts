/** The compiled module and its memory: made once, when first used. */
import { bytesOf } from "./base64";
import { moduleBase64 } from "./module.generated";

/** What assembly/index.ts exports. Addresses are bytes in the memory. */
export interface Operations {
  readonly sinCosOfAll: (x: number, count: number, sines: number, cosines: number) => void;
  readonly exponentialOfAll: (x: number, count: number, out: number) => void;
  readonly logarithmOfAll: (x: number, count: number, out: number) => void;
  readonly besselOfAll: (x: number, count: number, zeroth: number, first: number) => void;
  readonly besselComplexOfAll: (re: number, im: number, count: number, out: number, stride: number) => void;
  readonly endOfKept: () => number;
  readonly findNear: (
    tests: number,
    testCount: number,
    sources: number,
    sourceCount: number,
    rowStart: number,
    column: number,
    work: number,
  ) => number;
  readonly nearMoments: (
    tests: number,
    testCount: number,
    sources: number,
    sourceCount: number,
    rowStart: number,
    column: number,
    out: number,
  ) => void;
  readonly pairTerms: (
    tests: number,
    testCount: number,
    sources: number,
    sourceCount: number,
    rowStart: number,
    column: number,
    moments: number,
    ends: number,
    unknowns: number,
    signs: number,
    orbits: number,
    sizes: number,
    constants: number,
    work: number,
    size: number,
    re: number,
    im: number,
  ) => void;
  readonly sumWaves: (
    points: number,
    pointCount: number,
    waves: number,
    stride: number,
    count: number,
    out: number,
  ) => void;
  readonly reflectedTerms: (
    count: number,
    position: number,
    direction: number,
    low: number,
    lessImages: number,
    whole: number,
    size: number,
    first: number,
    point: number,
    current: number,
    charge: number,
    vectorFactor: number,
    scalarFactor: number,
    work: number,
    re: number,
    im: number,
  ) => void;
  readonly pairPower: (
    count: number,
    position: number,
    direction: number,
    low: number,
    lessImages: number,
    whole: number,
    current: number,
    charge: number,
  ) => number;
  readonly sumSpectrum: (
    nodes: number,
    waves: number,
    kinds: number,
    spectrum: number,
    stride: number,
    rho: number,
    rhoCount: number,
    s: number,
    sCount: number,
    row: number,
    factors: number,
    counts: number,
    out: number,
  ) => void;
  readonly solveUnpivoted: (
    re: number,
    im: number,
    n: number,
    b: number,
    count: number,
    x: number,
    work: number,
    report: number,
  ) => void;
  readonly solvePivoted: (
    re: number,
    im: number,
    n: number,
    b: number,
    count: number,
    x: number,
    report: number,
  ) => number;
  readonly residualOf: (re: number, im: number, n: number, b: number, count: number, x: number, sums: number) => number;
}

const page = 65_536;
/** The module's own data lie below. */
export const firstFree = 65_536;

export interface Instance {
  readonly operations: Operations;
  readonly memory: WebAssembly.Memory;
}

let made: Instance | null = null;

export function instance(): Instance {
  if (made) return made;
  const memory = new WebAssembly.Memory({ initial: (4 * firstFree) / page });
  const { exports } = new WebAssembly.Instance(new WebAssembly.Module(bytesOf(moduleBase64)), { env: { memory } });
  made = { operations: exports as Operations, memory };
  return made;
}

/**
 * Room in the module's memory for the operands of one operation, handed out from the start again by the next `Room`:
 * operations do not overlap, so that nothing has to be freed. Views die when more room is taken: take all, then view.
 */
export class Room {
  private end = firstFree;

  /** Address of so many bytes, a multiple of 16. Throws RangeError when the memory cannot grow that far. */
  take(bytes: number): number {
    const at = this.end;
    this.end += Math.ceil(bytes / 16) * 16;
    const { memory } = instance();
    const missing = this.end - memory.buffer.byteLength;
    if (missing > 0) memory.grow(Math.ceil(missing / page));
    return at;
  }

  /** Address of a copy of the values. */
  put(values: Float64Array | Int32Array | Uint8Array): number {
    const at = this.take(values.byteLength);
    const { buffer } = instance().memory;
    new Uint8Array(buffer, at, values.byteLength).set(
      new Uint8Array(values.buffer, values.byteOffset, values.byteLength),
    );
    return at;
  }

  /** All of the memory as it stands now, for operands of mixed kinds. */
  bytes(): DataView {
    return new DataView(instance().memory.buffer);
  }

  /** The same of whole numbers. */
  integers(at: number, count: number): Int32Array {
    return new Int32Array(instance().memory.buffer, at, count);
  }

  /** The numbers at an address as they stand now: copy what is to stay. */
  numbers(at: number, count: number): Float64Array {
    return new Float64Array(instance().memory.buffer, at, count);
  }
}
