/** Conductors of lines as written to what the engine computes with. */
import { type Conductor, type Metal, type RoundConductor, sectionOf, strandedConductor } from "@feedpath/engine";
import { findMetal } from "../catalogue/wireMaterials";
import type { LineConductor } from "../units/lineConductor";

/** A coat thinner than this lets the current through to what it covers: the core decides (tin, silver). */
const thinCoat = 1e-5;

/** The surface metal under its name in the file, with what the catalogue knows of it. */
export function metalOf({ material, conductivity, permeability }: Conductor): Metal {
  const coefficient = findMetal(material)?.temperatureCoefficient;
  return {
    name: material,
    conductivity,
    permeability,
    ...(coefficient === undefined ? {} : { temperatureCoefficient: coefficient }),
  };
}

/**
 * One metal for the whole of a conductor that has a single one in the engine (shields): of coated metal its core's
 * constants where the coat is thin, the surface's where it is thick, under the name in the file.
 */
export const bulkMetalOf = (conductor: Conductor): Metal =>
  isThinlyCoated(conductor) ? { ...conductor.cladding.core, name: conductor.material } : metalOf(conductor);

/** A conductor plated with tin or silver. */
export const isThinlyCoated = (
  conductor: Conductor,
): conductor is Conductor & { readonly cladding: NonNullable<Conductor["cladding"]> } =>
  conductor.cladding !== null && conductor.cladding !== undefined && conductor.cladding.thickness < thinCoat;

/** A round conductor by its nominal diameter: its layers, strands, or solid of one metal. A tube without a wall is as good as solid. */
export function roundConductor({ conductor, strands }: LineConductor): RoundConductor {
  if (strands !== null) return stranded(strands, conductor);
  const section = sectionOf(conductor);
  if (section) {
    const layers = section.layers.map((layer) =>
      layer.metal.name === conductor.material ? { ...layer, metal: metalOf(conductor) } : layer,
    );
    return { ...section, layers };
  }
  return {
    form: "solid",
    layers: [{ metal: metalOf(conductor), outerRadius: conductor.diameter.value / 2 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  };
}

/** Coated strands keep their coat, unless it would be all of them. */
function stranded(count: number, conductor: Conductor): RoundConductor {
  const { cladding, diameter } = conductor;
  const metal = metalOf(conductor);
  if (!cladding || cladding.thickness >= diameter.value / 2) return strandedConductor(count, diameter.value, metal);
  return strandedConductor(count, diameter.value, cladding.core, {
    coatings: [{ metal, thickness: cladding.thickness }],
  });
}

/** m over all of a conductor, strands included, without its insulation. */
export const overallDiameter = (conductor: RoundConductor): number => 2 * (conductor.layers.at(-1)?.outerRadius ?? 0);
