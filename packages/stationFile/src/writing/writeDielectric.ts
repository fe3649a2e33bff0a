/** Dielectrics of lines as texts. */
import type { Dielectric } from "@feedpath/engine";
import { knownDielectric } from "../building/dielectrics";
import { formatAmount } from "../units/formatQuantity";
import { type Leaf, present } from "./writing";

/** By its name where the engine's table says all of it, else by its constants. */
export function writeDielectric(dielectric: Dielectric): Leaf {
  const { name, permittivity, statedAt, greatestTemperature } = dielectric;
  const limit = greatestTemperature === undefined ? undefined : formatAmount(greatestTemperature, "temperature");
  const known = knownDielectric(name);
  if (known) {
    const own = limit !== undefined && greatestTemperature !== known.greatestTemperature;
    return own ? { material: name, "greatest temperature": limit } : name;
  }
  return present({
    permittivity: String(permittivity),
    "loss tangent": lossOf(dielectric),
    at: statedAt === undefined ? undefined : formatAmount(statedAt, "frequency"),
    "greatest temperature": limit,
  });
}

function lossOf({ lossTangent, statedAt, lossPoints }: Dielectric): Leaf {
  if (!lossPoints || statedAt === undefined) return String(lossTangent);
  const points = [...lossPoints, { frequency: statedAt, lossTangent }].sort((a, b) => a.frequency - b.frequency);
  return Object.fromEntries(
    points.map((point) => [formatAmount(point.frequency, "frequency"), String(point.lossTangent)]),
  );
}
