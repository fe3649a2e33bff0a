/** Bare wires on spreaders. */
import type { ParallelWireLine } from "@feedpath/engine";
import type { CatalogueLine } from "../catalogueLine";
import { dielectric, known, practice, solid } from "../lineParts";

const copperDensity = 8960;

/** Diameter and spacing in m, and how far the spacing strays. */
function openLine(ohms: number, diameter: number, spacing: number, stray: number, exact: string): CatalogueLine {
  const designation = `${ohms}-ohm open line`;
  const build: ParallelWireLine = {
    kind: "parallel-wire",
    wire: solid(diameter),
    spacing: known(spacing, stray, `spacing of ${designation}`),
    dielectric: dielectric("air"),
  };
  const wires = 2 * copperDensity * Math.PI * (diameter / 2) ** 2;
  const [thick, apart, bound] = [diameter, spacing, stray].map((metres) => Number((1000 * metres).toFixed(1)));
  return {
    designation,
    family: "open-wire line",
    about: `Two bare ${thick} mm copper wires ${apart} mm apart on spreaders.`,
    model: build,
    build,
    ratings: { weight: { value: 1.15 * wires, low: wires, high: 1.5 * wires, basis: "catalogue" } },
    sources: [
      {
        of: ["impedance", "velocity factor", "loss", "build"],
        value: `${exact} Ω for ${thick} mm wires at ${apart} mm, spacing kept within ${bound} mm`,
        source: "(eta0/pi) arcosh(D/d), exact for wires in air",
        status: "computed; spreaders lower impedance and velocity by 1 to 3 % (common practice, no source)",
      },
      {
        of: ["weight"],
        value: `${Number((100 * wires).toPrecision(2))} kg/100 m of copper, up to half as much again for spreaders`,
        source: "section and density of copper, 8960 kg/m³",
        status: `computed; the spreaders ${practice}`,
      },
    ],
  };
}

export const openLines: readonly CatalogueLine[] = [
  openLine(450, 2e-3, 0.0427, 3e-3, "450"),
  openLine(600, 2e-3, 0.15, 10e-3, "601"),
];
