/** Where an answer comes from: versions, file, and how each number was worked out. No time, no path. */
import type { Provenance } from "../../answer/answer";
import type { WorkedPoint } from "../../chain/workedPoint";
import { chosenKernels } from "../../kernels/chosen";
import { plainNumber, significantNumber } from "../../quantity/format";
import { usualAccuracy } from "../../wires/accuracy";
import type { AntennaSolution } from "../../wires/antennaSolution";
import { elementsInWave } from "../../wires/grading";
import { refinementOf } from "../../wires/refinement";
import type { Soil } from "../../wires/structure";
import { feedError, strongestGainError } from "./feedError";
import type { Context } from "./question";
import type { StationNumbers } from "./stationNumbers";

type Method = Provenance["methods"][number];

interface PointResult {
  readonly point: WorkedPoint;
  readonly result: StationNumbers;
}

/** Methods of a solved antenna, and whatever a question adds. */
export function provenanceOf(context: Context, worked: PointResult | null, more: readonly Method[] = []): Provenance {
  const { program, catalogue, fileHash } = context;
  const solution = worked?.point.antenna.solution;
  return {
    program,
    catalogue,
    kernels: `${solution?.method.kernels ?? chosenKernels().name} kernels`,
    file: fileHash,
    methods: [...(worked && solution ? antennaMethods(worked, solution) : []), ...more],
  };
}

function antennaMethods({ point, result }: PointResult, solution: AntennaSolution): Method[] {
  const { soil } = point.antenna;
  const residue = result.account.residue;
  return [
    {
      name: "antenna",
      says: `moment method on thin round wires (piecewise-linear Galerkin functions, exact cylindrical kernel, ${soilMethod(soil)}), ${solution.unknowns} unknowns, solved at the frequency of the answer itself`,
    },
    { name: "mesh", says: `${meshSays(solution)}; ${errorSays(feedError(point), strongestGainError(point, result))}` },
    { name: "equations", says: equationsSays(solution) },
    {
      name: "power balance",
      says: `what goes in and what comes out differ by ${significantNumber(Math.abs(residue) * 100, 1)} %; each term is worked out on its own`,
    },
    {
      name: "path",
      says: "every part as a two-port with its loss, joined with the antenna's admittance matrix into one network",
    },
  ];
}

function soilMethod(soil: Soil): string {
  if (soil.kind === "layered") return `Sommerfeld integrals for soil in ${soil.layers.length} layers`;
  return soil.kind === "homogeneous" ? "Sommerfeld integrals for the soil" : soil.kind;
}

/** Which mesh was taken, and whether the ports are known as well as wanted. */
function meshSays({ method, model, goalMet }: AntennaSolution): string {
  const { wires } = model.structure;
  const factors = wires.map(({ name }) => refinementOf(method.refinement, name));
  const [least, most] = [Math.min(...factors), Math.max(...factors)];
  const part = (factor: number): string => `1/${plainNumber(elementsInWave * factor, 0)}`;
  const refined = factors.filter((factor) => factor > least).length;
  const finer = refined === 0 ? "" : `, refined on ${refined} of ${wires.length} wires, up to ${part(most)}`;
  const { ohms, share } = usualAccuracy;
  const goal = `the goal of ${plainNumber(ohms, 1)} Ω or ${plainNumber(100 * share, 1)} % of the impedance`;
  return `elements of at most ${part(least)} wavelength${finer}; ${goal} ${goalMet ? "is met at every port" : "is not met at every port"}`;
}

function errorSays(ohms: number | null, decibels: number | null): string {
  if (ohms === null) return "its error could not be estimated";
  const gain = decibels === null ? "" : ` and its largest gain by ${decibelsSays(decibels)}`;
  return `from the halved mesh the impedance at the feed point is in doubt by about ${significantNumber(ohms, 2)} Ω${gain}`;
}

const decibelsSays = (decibels: number): string =>
  decibels < leastDecibels ? `less than ${leastDecibels} dB` : `about ${significantNumber(decibels, 1)} dB`;

/** The directions of the largest gain are found within this. */
const leastDecibels = 0.001;

const equationsSays = ({ method }: AntennaSolution): string => {
  const { factorisation, symmetry } = method;
  const residual = `residual ${method.residual.toExponential(0)}`;
  const part = symmetry > 1 ? `, for one part of a symmetry of order ${symmetry}` : "";
  return factorisation === "LDL^T without pivoting"
    ? `symmetric factorisation LDL^T without pivoting${part}, ${residual}`
    : `LU factorisation with partial pivoting${part}, which took over where the symmetric one grew too much or left too much, ${residual}`;
};
