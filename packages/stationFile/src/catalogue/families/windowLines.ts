/** Flat pairs in polyethylene, computed from their wires and an even permittivity that gives the measured velocity. */
import type { ParallelWireLine, RoundConductor } from "@feedpath/engine";
import type { CatalogueLine, LineSource } from "../catalogueLine";
import { cladSteel, cladStrands, drop21, practice, strands, vacuumImpedance } from "../lineParts";
import { bend, temperature, together, weight } from "../lineRatings";

const family = "ribbon and window line";
const measured = {
  source: "measurements published in 1999 and taken up again later",
  status: "published, confirmed in a summary (2017) and a page that says 370 to 410 Ω",
};

interface FlatPair {
  readonly designation: string;
  readonly about: string;
  /** Ohm: nominal, least, greatest of what is sold under this name. */
  readonly impedance: readonly [nominal: number, low: number, high: number];
  readonly velocityFactor: number;
  readonly wire: RoundConductor;
  readonly web: string;
  readonly weight: number;
  readonly sources: readonly LineSource[];
}

/** Spacing in m that gives an impedance between wires of that effective diameter. */
const spacingFor = (diameter: number, permittivity: number, impedance: number): number =>
  diameter * Math.cosh((Math.PI * impedance * Math.sqrt(permittivity)) / vacuumImpedance);

function flatPair(pair: FlatPair): CatalogueLine {
  const { designation, wire } = pair;
  const permittivity = 1 / pair.velocityFactor ** 2;
  const diameter = 2 * wire.layers.at(-1)!.outerRadius * wire.effectiveRadiusRatio;
  const [value, low, high] = pair.impedance.map((ohms) => spacingFor(diameter, permittivity, ohms)) as [
    number,
    number,
    number,
  ];
  const build: ParallelWireLine = {
    kind: "parallel-wire",
    wire,
    spacing: { value, low, high, basis: "catalogue", tied: `spacing of ${designation}` },
    dielectric: { name: pair.web, permittivity, lossTangent: 1e-4 },
  };
  const rated = together(temperature("polyethylene"), weight(pair.weight, 0.3), bend(0.05, 0.2));
  return {
    designation,
    family,
    about: pair.about,
    model: build,
    build,
    ratings: rated.ratings,
    sources: [...pair.sources, ...rated.sources],
  };
}

const lossSource = (wire: string): LineSource => ({
  of: ["loss"],
  value: `loss, computed from ${wire}; loss tangent 1e-4 from the share of the field in the web`,
  source: "two-layer Bessel solution; copper of 6.5 % of the radius, steel as listed",
  status: "cladding and steel from memory. Wet or dirty line takes several times as much: not in these numbers",
});

const windows = "polyethylene web with windows";

const window450 = flatPair({
  designation: "450-ohm window line",
  about: "Flat pair in a web with windows, clad steel wires; measures nearer 400 Ω than its name. Dry.",
  impedance: [400, 360, 410],
  velocityFactor: 0.902,
  wire: cladSteel(1.024e-3),
  web: windows,
  weight: 0.03,
  sources: [
    {
      of: ["impedance", "velocity factor", "build"],
      value:
        "400 Ω and velocity factor 0.902 for 18 AWG solid clad steel; 360 to 410 Ω over the kinds sold under this name",
      ...measured,
    },
    lossSource("clad wires of 1.024 mm"),
  ],
});

/** The kinds with strands: wires, strands and what was measured. */
const stranded = (
  gauge: string,
  wire: RoundConductor,
  ohms: number,
  velocityFactor: number,
  weightOfIt: number,
): CatalogueLine =>
  flatPair({
    designation: `450-ohm window line ${gauge} stranded`,
    about: `Flat pair in a web with windows, ${gauge} clad steel strands; measures ${ohms} Ω. Dry.`,
    impedance: [ohms, 0.95 * ohms, 1.05 * ohms],
    velocityFactor,
    wire,
    web: windows,
    weight: weightOfIt,
    sources: [
      {
        of: ["impedance", "velocity factor", "build"],
        value: `${ohms} Ω, ± 5 %, and velocity factor ${velocityFactor}, ± 0.01, for ${gauge} stranded clad steel; its strands from memory`,
        ...measured,
      },
      {
        ...lossSource("19 strands, taken as one wire clad as thick as one of them"),
        status:
          "cladding and steel from memory; strands carry more in their copper than one wire would, so that below about " +
          "30 MHz the loss is an upper bound. Wet or dirty line takes several times as much: not in these numbers",
      },
    ],
  });

const ribbon = (
  designation: string,
  about: string,
  velocityFactor: number,
  range: string,
  web: string,
): CatalogueLine =>
  flatPair({
    designation,
    about,
    impedance: [300, 285, 315],
    velocityFactor,
    wire: strands(7, 0.254e-3),
    web,
    weight: 0.02,
    sources: [
      {
        of: ["impedance", "velocity factor", "build"],
        value: `300 Ω, ± 5 %, velocity factor ${velocityFactor} (${range}); 7 strands of copper, 22 AWG, their spacing worked out from both`,
        source: "handbooks",
        status: practice,
      },
      { ...lossSource("copper strands of 0.76 mm over all"), source: "skin effect; strands by the field round them" },
    ],
  });

export const windowLines: readonly CatalogueLine[] = [
  ribbon(
    "300-ohm ribbon line",
    "Flat pair in a solid web, thin copper strands, as laid to old television antennas. Dry.",
    0.82,
    "0.80 to 0.85",
    "polyethylene web",
  ),
  ribbon(
    "300-ohm window line",
    "Flat pair in a web with windows, thin copper strands. Dry.",
    0.87,
    "0.84 to 0.90",
    windows,
  ),
  window450,
  stranded("18 AWG", cladStrands(19, 0.234e-3, drop21), 395, 0.902, 0.032),
  stranded("16 AWG", cladStrands(19, 0.29e-3, drop21), 380, 0.918, 0.04),
  stranded("14 AWG", cladStrands(19, 0.37e-3, drop21), 360, 0.93, 0.055),
];
