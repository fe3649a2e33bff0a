/** Metals of wires and tubes, and plastics of their insulation, at 20 degrees Celsius. */
import { between, cableMetals, type Metal, type Quantity } from "@feedpath/engine";

export interface WireMetal extends Metal {
  readonly source: string;
  readonly status: string;
}

export interface Insulation {
  readonly name: string;
  readonly permittivity: Quantity;
  readonly source: string;
  readonly status: string;
}

const metal = (
  name: string,
  conductivity: number,
  permeability: number,
  source: string,
  status: string,
): WireMetal => ({
  name,
  conductivity,
  permeability,
  source,
  status,
});

const { aluminium, copper, steel } = cableMetals;

export const conductorMetals: readonly WireMetal[] = [
  { ...copper, source: "IEC 60028, annealed copper", status: "published, confirmed in a power-engineering handbook" },
  { ...aluminium, source: "IEC 60889, hard-drawn aluminium, 61 % IACS", status: "published, value from memory" },
  metal("aluminium alloy", 0.53 * copper.conductivity, 1, "handbooks, alloy 6063-T6, 53 % IACS", "from memory"),
  metal("silver", 62.9e6, 1, "CRC Handbook", "from memory"),
  metal("brass", 0.28 * copper.conductivity, 1, "handbooks, brass 70/30, 28 % IACS", "from memory"),
  metal("bronze", 0.15 * copper.conductivity, 1, "handbooks, phosphor bronze, 15 % IACS", "from memory"),
  metal("zinc", 16.9e6, 1, "CRC Handbook", "from memory"),
  {
    ...steel,
    source: "handbooks: 10 % IACS; relative permeability 50 to 300 at radio frequency",
    status: "from memory",
  },
  metal("stainless steel", 1.39e6, 1, "handbooks, type 304", "from memory"),
];

/** Lossless, for comparisons. */
export const perfectMetal: Metal = { name: "perfect", conductivity: Number.POSITIVE_INFINITY, permeability: 1 };

export const insulations: readonly Insulation[] = [
  {
    name: "PVC",
    permittivity: between(3, 4.5, "catalogue"),
    source: "handbooks, at 1 MHz",
    status: "published, confirmed in a reference table of dielectrics (4); range from memory",
  },
  {
    name: "polyethylene",
    permittivity: between(2.23, 2.29, "catalogue"),
    source: "handbooks, solid polyethylene, 2.26",
    status: "published, confirmed in a reference table of dielectrics (2.21)",
  },
  {
    name: "PTFE",
    permittivity: between(2.05, 2.15, "catalogue"),
    source: "handbooks, 2.1",
    status: "published, confirmed in a reference table of dielectrics (2.0)",
  },
];
