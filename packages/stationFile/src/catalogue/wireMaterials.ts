/**
 * Metals of wires and tubes, and plastics of their insulation, at 20 degrees Celsius. Temperature coefficients of the
 * resistivity: handbooks (from memory), good to a tenth.
 */
import { between, cableMetals, exactly, type Metal, type Quantity } from "@feedpath/engine";

export interface WireMetal extends Metal {
  readonly source: string;
  readonly status: string;
}

/** A clad or plated wire: its surface metal over a core, so thick (m) on a wire of that diameter (m). */
export interface CladMetal extends WireMetal {
  readonly core: Metal;
  readonly thickness: (diameter: number) => number;
}

export interface Insulation {
  readonly name: string;
  readonly permittivity: Quantity;
  readonly lossTangent: Quantity;
  readonly source: string;
  readonly lossSource: string;
  readonly status: string;
}

const metal = (
  name: string,
  conductivity: number,
  permeability: number,
  temperatureCoefficient: number,
  source: string,
  status: string,
): WireMetal => ({
  name,
  conductivity,
  permeability,
  temperatureCoefficient,
  source,
  status,
});

const { aluminium, copper, steel } = cableMetals;

export const conductorMetals: readonly WireMetal[] = [
  { ...copper, source: "IEC 60028, annealed copper", status: "published, confirmed in a power-engineering handbook" },
  { ...aluminium, source: "IEC 60889, hard-drawn aluminium, 61 % IACS", status: "published, value from memory" },
  metal("aluminium alloy", 0.53 * copper.conductivity, 1, 0.0036, "handbooks, alloy 6063-T6, 53 % IACS", "from memory"),
  metal("silver", 62.9e6, 1, 0.0038, "CRC Handbook", "from memory"),
  metal("brass", 0.28 * copper.conductivity, 1, 0.0016, "handbooks, brass 70/30, 28 % IACS", "from memory"),
  metal("bronze", 0.15 * copper.conductivity, 1, 0.0018, "handbooks, phosphor bronze, 15 % IACS", "from memory"),
  metal("zinc", 16.9e6, 1, 0.0037, "CRC Handbook", "from memory"),
  {
    ...steel,
    source: "handbooks: 10 % IACS; relative permeability 50 to 300 at radio frequency",
    status: "from memory",
  },
  metal("stainless steel", 1.39e6, 1, 0.00094, "handbooks, type 304", "from memory"),
];

/**
 * Thickness of copper that gives a wire the direct-current conductance of its class, a share of that of copper of the
 * same size: the core takes (1 - class)/(1 - core/copper) of the cross-section.
 */
const ofClass = (share: number, core: Metal) => (diameter: number) =>
  (diameter / 2) * (1 - Math.sqrt((1 - share) / (1 - core.conductivity / copper.conductivity)));

const cladSteel = (percent: number): CladMetal => ({
  ...copper,
  name: `copper-clad steel ${percent} %`,
  core: steel,
  thickness: ofClass(percent / 100, steel),
  source: `ASTM B227: ${percent} % of the direct-current conductance of copper`,
  status: "class from memory, thickness computed from it and from the catalogue's steel",
});

const plated = (name: string, surface: Metal, core: Metal, thickness: number, source: string): CladMetal => ({
  ...surface,
  name,
  core,
  thickness: () => thickness,
  source,
  status: "common practice, no source",
});

const byName = (name: string): Metal => conductorMetals.find((known) => known.name === name)!;
/** CRC Handbook, from memory: 15 % IACS. */
const tin: Metal = { name: "tin", conductivity: 8.7e6, permeability: 1, temperatureCoefficient: 0.0042 };

export const cladMetals: readonly CladMetal[] = [
  cladSteel(40),
  cladSteel(30),
  cladSteel(21),
  {
    ...copper,
    name: "copper-clad aluminium",
    core: aluminium,
    thickness: (diameter) => (diameter / 2) * (1 - Math.sqrt(0.9)),
    source: "ASTM B566 class 10A: copper a tenth of the volume",
    status: "from memory",
  },
  plated("tinned copper", tin, copper, 2e-6, "a coat of 1 to 5 micrometres"),
  plated("silver-plated copper", byName("silver"), copper, 2e-6, "a coat of 1 to 5 micrometres"),
  plated("galvanised steel", byName("zinc"), steel, 30e-6, "a coat of 20 to 60 micrometres"),
];

/** Lossless, for comparisons. */
export const perfectMetal: Metal = { name: "perfect", conductivity: Number.POSITIVE_INFINITY, permeability: 1 };

/** A metal of the catalogue by its name; of a clad or plated one its surface. */
export const findMetal = (name: string): Metal | null =>
  [...conductorMetals, ...cladMetals, perfectMetal].find((known) => known.name === name) ?? null;

export const insulations: readonly Insulation[] = [
  {
    name: "PVC",
    permittivity: between(3, 4.5, "catalogue"),
    lossTangent: between(0.01, 0.1, "catalogue"),
    source: "handbooks, at 1 MHz",
    lossSource: "plasticised PVC at 1 to 30 MHz, by its mixture: handbooks, from memory",
    status: "published, confirmed in a reference table of dielectrics (4); range from memory",
  },
  {
    name: "polyethylene",
    permittivity: between(2.23, 2.29, "catalogue"),
    lossTangent: exactly(3e-4, "catalogue"),
    source: "handbooks, solid polyethylene, 2.26",
    lossSource: "a table of dielectrics gives 3e-4 (published, confirmed)",
    status: "published, confirmed in a reference table of dielectrics (2.21)",
  },
  {
    name: "PTFE",
    permittivity: between(2.05, 2.15, "catalogue"),
    lossTangent: exactly(2e-4, "catalogue"),
    source: "handbooks, 2.1",
    lossSource: "a table of dielectrics gives 2e-4 (published, confirmed)",
    status: "published, confirmed in a reference table of dielectrics (2.0)",
  },
];
