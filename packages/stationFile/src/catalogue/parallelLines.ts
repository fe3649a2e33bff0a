/** Parallel-wire lines of the catalogue, computed from their build. */
import { cableMetals, type ParallelWireLine } from "@feedpath/engine";
import { type CatalogueLine, cladSteel, dielectric, known } from "./lineParts";

/** The spread of impedance sold under one name, told as a spread of the spacing that gives it. */
const windowPermittivity = 1 / 0.902 ** 2;
const spacingFor = (impedance: number): number =>
  1.024e-3 * Math.cosh((Math.PI * impedance * Math.sqrt(windowPermittivity)) / 376.730_313_461_77);

const windowBuild: ParallelWireLine = {
  kind: "parallel-wire",
  wire: cladSteel(1.024e-3),
  spacing: {
    value: spacingFor(400),
    low: spacingFor(360),
    high: spacingFor(410),
    basis: "catalogue",
    tied: "spacing of 450-ohm window line",
  },
  dielectric: { name: "polyethylene web with windows", permittivity: windowPermittivity, lossTangent: 1e-4 },
};

const windowLine: CatalogueLine = {
  designation: "450-ohm window line",
  about: "Flat pair in a web with windows, clad steel wires; measures nearer 400 Ω than its name. Dry.",
  model: windowBuild,
  build: windowBuild,
  sources: [
    {
      value:
        "400 Ω and velocity factor 0.902 for 18 AWG solid clad steel; 360 to 410 Ω over the kinds sold under this name",
      source: "measurements published in 1999 and taken up again later",
      status: "published, confirmed in a summary (2017) and a page that says 370 to 410 Ω",
    },
    {
      value: "loss, computed from clad wires of 1.024 mm; loss tangent 1e-4 from the share of the field in the web",
      source: "two-layer Bessel solution; copper of 6.5 % of the radius (ASTM B452), steel as listed",
      status: "cladding and steel from memory. Wet or dirty line takes several times as much: not in these numbers",
    },
  ],
};

const openBuild: ParallelWireLine = {
  kind: "parallel-wire",
  wire: {
    form: "solid",
    layers: [{ metal: cableMetals.copper, outerRadius: 1e-3 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  spacing: known(0.15, 0.01, "spacing of 600-ohm open line"),
  dielectric: dielectric("air"),
};

const openLine: CatalogueLine = {
  designation: "600-ohm open line",
  about: "Two bare 2 mm copper wires 150 mm apart on spreaders.",
  model: openBuild,
  build: openBuild,
  sources: [
    {
      value: "601 Ω for 2 mm wires at 150 mm, spacing kept within 10 mm",
      source: "(eta0/pi) arcosh(D/d), exact for wires in air",
      status: "computed; spreaders lower impedance and velocity by 1 to 3 % (common practice, no source)",
    },
  ],
};

export const parallelLines: readonly CatalogueLine[] = [windowLine, openLine];
