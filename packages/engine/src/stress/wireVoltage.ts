/** What voltage open wires stand: glow of the air round them, and flash-over between them. Peak values. */
import { outerRadius } from "../conductors/roundConductor";
import type { BuiltLine, RoundConductor, TwistedPairLine } from "../lines/lineModel";
import { pairFieldFactor } from "../lines/study/pairRatios";
import { coronaOnsetField, gapBreakdown, peekDensity } from "./airBreakdown";
import type { AirState } from "./standardAir";
import type { VoltageLimit } from "./voltageLimit";

/** Two wires: highest field on the sides that face, V/m for 1 V between them. Lengths in m, between centres and of a radius. */
export const pairField = (spacing: number, radius: number): number =>
  pairFieldFactor(spacing / (2 * radius)) / (2 * radius);

/** None for two wires in one shield: what their insulation stands is not worked out. */
export function wireLimits(build: Exclude<BuiltLine, { readonly kind: "coaxial" }>, air: AirState): VoltageLimit[] {
  switch (build.kind) {
    case "parallel-wire":
      return openLimits(build.wire, { spacing: build.spacing.value, apart: build.spacing.value, share: 1 }, air);
    case "four-wire": {
      // Charges of both pairs as of one pair of thin wires: D/√2 where like wires are diagonal, D√2 where they are neighbours.
      const spacing = build.side.value * (build.joined === "diagonals" ? Math.SQRT1_2 : Math.SQRT2);
      return openLimits(build.wire, { spacing, apart: build.side.value, share: 1 }, air);
    }
    case "wire over plane": {
      const spacing = 2 * build.height.value;
      return openLimits(build.wire, { spacing, apart: spacing, share: 1 / 2 }, air);
    }
    case "twisted pair":
      return [twistedLimit(build, air)];
    case "shielded pair":
      return [];
  }
}

interface OpenWires {
  /** m between centres of the pair whose charge the wires have, and of wires between which it may flash over. */
  readonly spacing: number;
  readonly apart: number;
  /** Of the pair's voltage: a half for a wire and its image in a plane. */
  readonly share: number;
}

/** V/m, peak, that sparks need on their way through air where only the ends are strong: that of rod gaps, 5.3 kV/cm (IEC 60052, from memory). */
const sparkField = 5.3e5;

function openLimits(wire: RoundConductor, { spacing, apart, share }: OpenWires, air: AirState): VoltageLimit[] {
  const radius = outerRadius(wire);
  const surface = wire.form === "stranded" ? 0.85 : 0.95;
  const density = peekDensity(air);
  const glow = (share * coronaOnsetField(radius, density, "parallel wires", surface)) / pairField(spacing, radius);
  const gap = share * (apart - 2 * radius);
  const even = gapBreakdown(gap, air);
  // Glow sends sparks ahead once the field beside the wires carries them; between wide metal both come together.
  const flash = Math.min(even, Math.max(glow, sparkField * density * gap));
  return [
    {
      kind: "glow",
      peak: glow,
      low: 0.5 * glow,
      high: 1.05 * glow,
      says: "the air round its wires begins to glow",
      source: "Peek's law, weathered wire; wet or dirty wire from half of it (common practice, no source)",
    },
    {
      kind: "breakdown",
      peak: flash,
      low: 0.5 * flash,
      high: Math.min(even, 1.5 * flash),
      says: "it flashes over between its wires",
      source:
        "rod gaps, 5.3 kV/cm (IEC 60052, from memory), not below glow nor above a uniform field; over a wet spreader from half of it (common practice, no source)",
    },
  ];
}

/** m of air where two sleeves part: somewhere beside the line where they touch it fits best. */
const wedge = { narrowest: 5e-6, widest: 2e-3, steps: 60 } as const;

/** Air in the wedge between two sleeves of wall t: least over its width g of V(g) (1 + 2t/(εr g)), V(g) the breakdown of the gap. */
function twistedLimit({ wire, sleeve }: TwistedPairLine, air: AirState): VoltageLimit {
  const walls = 2 * (sleeve.outerRadius - outerRadius(wire));
  const growth = (wedge.widest / wedge.narrowest) ** (1 / wedge.steps);
  const gaps = Array.from({ length: wedge.steps + 1 }, (_, i) => wedge.narrowest * growth ** i);
  const peak = Math.min(
    ...gaps.map((gap) => gapBreakdown(gap, air) * (1 + walls / (sleeve.dielectric.permittivity * gap))),
  );
  return {
    kind: "glow",
    peak,
    low: 0.7 * peak,
    high: 1.3 * peak,
    says: "the air between its sleeves begins to glow",
    source: "Paschen's law in the wedge between two sleeves (from memory)",
  };
}
