/** Complex symmetric systems in the module. */
import type { Kernels } from "@feedpath/engine";
import { instance, Room } from "./instance";

type Matrix = Parameters<Kernels["solveSymmetric"]>[0];
type Vectors = Parameters<Kernels["solveSymmetric"]>[1];
type Solution = ReturnType<Kernels["solveSymmetric"]>;

/** The bounds of the readable twin. */
const smallestPivot = 1e-10;
const largestGrowth = 100;
const largestResidual = 1e-12;

const padded = (n: number): number => 4 * Math.ceil(n / 4);

/** Addresses of the operands: one place for the matrix, which is put there again after each factorisation. */
interface Operands {
  readonly room: Room;
  readonly matrix: Matrix;
  readonly sides: Vectors;
  readonly re: number;
  readonly im: number;
  readonly b: number;
  readonly x: number;
  readonly sums: number;
  readonly work: number;
  readonly report: number;
}

function takeRoom(matrix: Matrix, sides: Vectors): Operands {
  const n = matrix.size;
  const room = new Room();
  const columns = padded(n) + padded(sides.count);
  const [re, im] = [room.take(8 * padded(n) * columns), room.take(8 * padded(n) * columns)];
  const [b, x] = [room.take(16 * n * sides.count), room.take(16 * padded(n) * sides.count)];
  const [sums, work, report] = [room.take(8 * n), room.take(2048 + 256 * columns), room.take(24)];
  return { room, matrix, sides, re, im, b, x, sums, work, report };
}

function putMatrix({ room, matrix, re, im }: Operands): void {
  room.numbers(re, matrix.re.length).set(matrix.re);
  room.numbers(im, matrix.im.length).set(matrix.im);
}

function putSides({ room, sides, b }: Operands): Float64Array {
  const view = room.numbers(b, 2 * sides.re.length);
  view.set(sides.re);
  view.set(sides.im, sides.re.length);
  return view;
}

/** Of the solution standing at x. */
function residual(operands: Operands): number {
  const { room, matrix, sides, re, im, b, x, sums } = operands;
  putMatrix(operands);
  const view = putSides(operands);
  for (let i = 0; i < view.length; i++) view[i] = -view[i]!;
  room.numbers(sums, matrix.size).fill(0);
  return instance().operations.residualOf(re, im, matrix.size, b, sides.count, x, sums);
}

function solution({ room, matrix, sides, x }: Operands): Vectors {
  const n = matrix.size;
  const plane = sides.count * padded(n);
  const view = room.numbers(x, 2 * plane);
  const vectors = { ...sides, re: new Float64Array(sides.re.length), im: new Float64Array(sides.re.length) };
  for (let side = 0; side < sides.count; side++) {
    const from = side * padded(n);
    vectors.re.set(view.subarray(from, from + n), side * n);
    vectors.im.set(view.subarray(plane + from, plane + from + n), side * n);
  }
  return vectors;
}

function solvePivoted(operands: Operands, scale: number): Solution {
  const { room, matrix, sides, re, im, b, x, report } = operands;
  const n = matrix.size;
  putMatrix(operands);
  putSides(operands);
  const stuck = instance().operations.solvePivoted(re, im, n, b, sides.count, x, report);
  if (stuck) throw new RangeError(`the system of ${n} equations is singular at equation ${stuck}`);
  const growth = room.numbers(report, 1)[0]! / scale;
  const vectors = solution(operands);
  return { vectors, method: "LU with partial pivoting", growth, residual: residual(operands) };
}

/** See Kernels.solveSymmetric. */
export function solveSymmetric(matrix: Matrix, sides: Vectors): Solution {
  const operands = takeRoom(matrix, sides);
  const { room, re, im, b, x, work, report } = operands;
  putMatrix(operands);
  putSides(operands);
  instance().operations.solveUnpivoted(re, im, matrix.size, b, sides.count, x, work, report);
  const [scale, pivot, most] = room.numbers(report, 3).slice() as unknown as [number, number, number];
  const growth = most / scale;
  const vectors = solution(operands);
  const left = residual(operands);
  const sound = pivot > smallestPivot * scale && growth < largestGrowth && left < largestResidual;
  if (!sound) return solvePivoted(operands, scale);
  return { vectors, method: "LDL^T without pivoting", growth, residual: left };
}
