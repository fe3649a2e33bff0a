/** Where an answer comes from: versions, file, and how each number was worked out. No time, no path. */
import type { Provenance } from "../../answer/answer";
import type { WorkedPoint } from "../../chain/workedPoint";
import { significantNumber } from "../../quantity/format";
import type { Soil } from "../../wires/structure";
import { feedError } from "./feedError";
import type { Context } from "./question";

export const kernelsVersion = "reference kernels 1";

type Method = Provenance["methods"][number];

/** Methods of a solved antenna, and whatever a question adds. */
export function provenanceOf(
  context: Context,
  point: WorkedPoint | null,
  residue: number | null,
  more: readonly Method[] = [],
): Provenance {
  const { program, catalogue, fileHash } = context;
  return {
    program,
    catalogue,
    kernels: kernelsVersion,
    file: fileHash,
    methods: [...antennaMethods(point, residue), ...more],
  };
}

const errorSays = (ohms: number | null): string =>
  ohms === null
    ? "its error could not be estimated"
    : `from the halved mesh its impedance at the feed point is in doubt by about ${significantNumber(ohms, 2)} Ω`;

function soilMethod(soil: Soil): string {
  if (soil.kind === "layered") return `Sommerfeld integrals for soil in ${soil.layers.length} layers`;
  return soil.kind === "homogeneous" ? "Sommerfeld integrals for the soil" : soil.kind;
}

function antennaMethods(point: WorkedPoint | null, residue: number | null): Method[] {
  const solution = point?.antenna.solution;
  if (!solution) return [];
  const soil = soilMethod(point.antenna.soil);
  const balance =
    residue === null
      ? []
      : [
          {
            name: "power balance",
            says: `what goes in and what comes out differ by ${significantNumber(Math.abs(residue) * 100, 1)} %; each term is worked out on its own`,
          },
        ];
  return [
    {
      name: "antenna",
      says: `moment method on thin round wires (piecewise-linear Galerkin functions, exact cylindrical kernel, ${soil}), ${solution.unknowns} unknowns; ${errorSays(feedError(point))}`,
    },
    ...balance,
    {
      name: "path",
      says: "every part as a two-port with its loss, joined with the antenna's admittance matrix into one network",
    },
  ];
}
