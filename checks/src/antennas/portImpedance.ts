/** Impedance at the only feed of a solved antenna, ohm: extrapolated, and of the mesh the currents belong to. */
import type { AntennaSolution, Complex } from "@feedpath/engine";

const inverse = ({ re, im }: Complex): Complex => {
  const size = re * re + im * im;
  return { re: re / size, im: -im / size };
};

export const portImpedance = (solution: AntennaSolution): Complex => inverse(solution.admittance[0]![0]!);
export const meshImpedance = (solution: AntennaSolution): Complex => inverse(solution.fineAdmittance[0]![0]!);
export const distance = (a: Complex, b: Complex): number => Math.hypot(a.re - b.re, a.im - b.im);
