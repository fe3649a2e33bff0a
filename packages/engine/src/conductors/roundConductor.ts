/** Round conductors in layers: plated, clad and hollow wires, exact at every frequency. */
import { modifiedBessel } from "../numerics/besselModified";
import { add, type Complex, complex, divide, exponential, multiply, scale, subtract, zero } from "../numerics/complex";
import type { Metal, RoundConductor } from "./conductor";
import { skinDepth } from "./solidWire";

/** Radius of the metal in metres. */
export const outerRadius = (conductor: RoundConductor): number => conductor.layers.at(-1)?.outerRadius ?? Number.NaN;

/**
 * Internal impedance per metre (ohm/m), return outside, far away: the surface impedance E/H at the outermost radius over
 * its circumference, carried outwards layer by layer. Exact for axially symmetric current; proximity is not in it.
 * `angularFrequency` in rad/s (0: direct current). The resistance factor multiplies resistance and internal reactance
 * alike, so that skin effect keeps them tied. Where the strands are known, direct current finds the resistance of their metal
 * instead; the difference fades as the direct over the actual impedance of the smooth conductor: right at both ends, causal,
 * and for seven strands with the inductance of their geometric mean radius within a few per cent of the internal one.
 * Source: Schelkunoff, Bell Syst. Tech. J. 13 (1934) 532, for one layer; fields joined at the layers.
 */
export function roundConductorImpedance(conductor: RoundConductor, angularFrequency: number): Complex {
  checkLayers(conductor);
  const { strands, resistanceFactor } = conductor;
  if (angularFrequency === 0) return complex(directResistance(conductor));
  const smooth = smoothImpedance(conductor, angularFrequency);
  const rough = scale(smooth, resistanceFactor);
  if (strands === undefined || isPerfect(conductor)) return rough;
  const direct = 1 / directConductance(conductor.layers, conductor.holeRadius);
  const excess = directResistance(conductor) - resistanceFactor * direct;
  return add(rough, divide(complex(excess * direct), smooth));
}

const isPerfect = ({ layers }: RoundConductor): boolean =>
  layers.some(({ metal }) => metal.conductivity === Number.POSITIVE_INFINITY);

/** Internal impedance (ohm/m) of the layers as smooth cylinders. */
function smoothImpedance(conductor: RoundConductor, angularFrequency: number): Complex {
  let inside = conductor.holeRadius;
  let surface: Complex | null = null;
  for (const layer of conductor.layers) {
    surface = throughLayer(layer.metal, inside, layer.outerRadius, surface, angularFrequency);
    inside = layer.outerRadius;
  }
  return scale(surface ?? zero, 1 / (2 * Math.PI * inside));
}

/** Ohm/m: of all strands with their longer way where they are known, else of the layers times the resistance factor. */
function directResistance({ layers, holeRadius, strands, resistanceFactor }: RoundConductor): number {
  if (strands === undefined) return resistanceFactor / directConductance(layers, holeRadius);
  const bundle = layers.at(-1)!.outerRadius;
  const radius = strands.diameter / 2;
  // The coatings of the bundle's surface cover every strand.
  const strand = layers
    .map(({ metal, outerRadius }) => ({ metal, outerRadius: outerRadius - bundle + radius }))
    .filter((layer) => layer.outerRadius > 0);
  // Half of the strands' area lies beyond 0.7 of the bundle's radius.
  const way =
    strands.turn === undefined ? 1 : Math.hypot(1, (2 * Math.PI * Math.SQRT1_2 * (bundle - radius)) / strands.turn);
  return way / (strands.count * directConductance(strand, 0));
}

/** Siemens times metre: conductivity times cross-section, summed over the layers. */
function directConductance(layers: RoundConductor["layers"], holeRadius: number): number {
  let inside = holeRadius;
  let sum = 0;
  for (const layer of layers) {
    sum += layer.metal.conductivity * Math.PI * (layer.outerRadius ** 2 - inside ** 2);
    inside = layer.outerRadius;
  }
  return sum;
}

/**
 * Surface impedance E/H (ohm) at radius `outside` of one layer, given that at `inside` (null: no current within).
 * Written with scaled functions; only the decay across the layer appears as an exponential, so nothing overflows.
 */
function throughLayer(
  metal: Metal,
  inside: number,
  outside: number,
  within: Complex | null,
  angularFrequency: number,
): Complex {
  if (metal.conductivity === Number.POSITIVE_INFINITY) return zero;
  const g = scale(complex(1, 1), 1 / skinDepth(metal.conductivity, metal.permeability, angularFrequency));
  const zeta = scale(g, 1 / metal.conductivity);
  const outer = modifiedBessel(scale(g, outside));
  if (inside === 0) return divide(multiply(zeta, outer.i0), outer.i1);
  const inner = modifiedBessel(scale(g, inside));
  const share =
    within === null
      ? divide(inner.i1, inner.k1)
      : divide(
          subtract(multiply(within, inner.i1), multiply(zeta, inner.i0)),
          add(multiply(zeta, inner.k0), multiply(within, inner.k1)),
        );
  const q = multiply(share, exponential(scale(g, -2 * (outside - inside))));
  const field = add(outer.i0, multiply(q, outer.k0));
  return divide(multiply(zeta, field), subtract(outer.i1, multiply(q, outer.k1)));
}

function checkLayers(conductor: RoundConductor): void {
  let inside = conductor.holeRadius;
  for (const { metal, outerRadius } of conductor.layers) {
    if (!(outerRadius > inside && metal.conductivity > 0 && metal.permeability > 0)) {
      throw new RangeError(
        `round conductor: a layer of ${metal.name} ends at ${outerRadius} m and begins at ${inside} m; ` +
          "expected radii that grow outwards and positive material constants",
      );
    }
    inside = outerRadius;
  }
  if (!(conductor.holeRadius >= 0 && conductor.layers.length > 0)) {
    throw new RangeError("round conductor: expected at least one layer and a hole radius of 0 or more");
  }
}
