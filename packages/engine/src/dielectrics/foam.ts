/** Foams, and air held by spacers, from the solid they are made of. */
import { complex } from "../numerics/complex";
import type { CableDielectric } from "./cableDielectric";
import type { Dielectric } from "./dielectric";
import { diluted } from "./diluted";
import { depolarisation, mixture } from "./mixture";

/** Dry air at 20 degrees Celsius: W/(m K) and V/m of peak field (handbooks, from memory). */
const gas = { thermalConductivity: 0.0257, breakdown: 3e6 } as const;

/** Spacers by shape: discs across the line (layers along the field), a cord wound round, beads or crumbs. */
export type SpacerForm = "discs" | "cord" | "beads";

const factorOf: Record<SpacerForm, number> = {
  discs: depolarisation.along,
  cord: depolarisation.cylinders,
  beads: depolarisation.round,
};

/**
 * Closed-cell foam of a solid with the share `gasShare` of gas (0 to 1, by volume): cells in thin walls are the upper bound of
 * Hashin and Shtrikman, which Maxwell Garnett's rule gives; `foamSpread` says how far other rules lie. Permittivity, losses, heat
 * and density follow the mixture; it breaks down in its gas (taken as air).
 */
export function foamed(solid: CableDielectric, gasShare: number): CableDielectric {
  const mixed = diluted(solid, (own) => mixture(own, complex(1), gasShare, depolarisation.round));
  const heat = mixture(
    complex(solid.thermalConductivity),
    complex(gas.thermalConductivity),
    gasShare,
    depolarisation.round,
  );
  const percent = Math.round(100 * gasShare);
  return {
    ...solid,
    ...mixed,
    name: `foam ${solid.name}`,
    breakdown: gasShare > 0 ? gas.breakdown : solid.breakdown,
    thermalConductivity: heat.re,
    density: solid.density * (1 - gasShare),
    source: `closed cells with ${percent} % of gas (Maxwell Garnett's rule) in the solid: ${solid.source}`,
    breakdownSource: "that of the gas in its cells, taken as air (our assumption)",
    thermalSource: `worked out for ${percent} % of gas; solid: ${solid.thermalSource}`,
  };
}

/**
 * Air held by spacers that fill the share `share` of the space. Discs thin and close against the wavelength: exact. Cord and beads
 * thin against the gap: between the bounds, `spread` as for foams.
 */
export function airWithSpacers(solid: Dielectric, share: number, form: SpacerForm): Dielectric {
  return {
    ...solid,
    ...diluted(solid, (own) => mixture(complex(1), own, share, factorOf[form])),
    name: `air with ${solid.name} ${form}`,
  };
}
