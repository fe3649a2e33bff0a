/** A coaxial line that is sold by class and size, not by a public sheet: values from memory, with their ranges. */
import type { CoaxialLine } from "@feedpath/engine";
import type { CatalogueLine, LineFamily, LineSource } from "./catalogueLine";
import { braidSays, known, type LossRow, lossPoints, perHundredMetres } from "./lineParts";
import { type Rated, temperature, together, weight } from "./lineRatings";

/** Dimensions in m, weight in kg/m, loss in dB for the length of `per` (100 m when left out). */
export interface ClassLine {
  readonly designation: string;
  readonly family: LineFamily;
  readonly about: string;
  readonly impedance: readonly [ohms: number, tolerance: number];
  readonly velocityFactor: readonly [value: number, bound: number];
  readonly loss: readonly LossRow[];
  readonly per?: number;
  /** Least and greatest loss over the nominal one. */
  readonly lossRange: readonly [low: number, high: number];
  readonly build: Omit<CoaxialLine, "kind">;
  readonly jacket: number;
  readonly weight: number;
  readonly rated: readonly Rated[];
  readonly says: {
    readonly loss: string;
    readonly build: string;
    /** Where it comes from, and how well it is known, with what weakens it. */
    readonly source: string;
    readonly status: string;
  };
}

const percent = (share: number): string => `${Math.round(100 * Math.abs(share - 1))} %`;

function sourcesOf({ impedance, velocityFactor, lossRange, build, jacket, says }: ClassLine): LineSource[] {
  const braid = braidSays(build.outer);
  const { source, status } = says;
  const [low, high] = lossRange;
  return [
    {
      of: ["impedance", "loss"],
      value: `${impedance[0]} ± ${impedance[1]} Ω; ${says.loss}, taken from ${percent(low)} below to ${percent(high)} above`,
      source,
      status: "from memory",
    },
    {
      of: ["velocity factor", "build", "jacket"],
      value:
        `velocity factor ${velocityFactor[0]} ± ${velocityFactor[1]}; ${says.build}${braid === "" ? "" : `: ${braid}`}; ` +
        `about ${Number((1000 * jacket).toFixed(1))} mm over the jacket`,
      source: "usual sheets of this size",
      status,
    },
  ];
}

export function classLine(line: ClassLine): CatalogueLine {
  const { designation, lossRange } = line;
  const rated = together(temperature("polyethylene"), weight(line.weight, 0.25), ...line.rated);
  return {
    designation,
    family: line.family,
    about: line.about,
    model: {
      kind: "data sheet",
      side: "coaxial",
      impedance: known(...line.impedance, `impedance of ${designation}`),
      velocityFactor: known(...line.velocityFactor, `velocity factor of ${designation}`),
      loss: lossPoints(designation, line.loss, ...lossRange, line.per ?? perHundredMetres),
    },
    build: { kind: "coaxial", ...line.build },
    jacketDiameter: line.jacket,
    ratings: rated.ratings,
    sources: [...sourcesOf(line), ...rated.sources],
  };
}
