/** Dielectrics of lines as texts. */
import type { Dielectric } from "@feedpath/engine";
import { knownDielectric } from "../building/dielectrics";
import { formatAmount } from "../units/formatQuantity";
import { type Branch, type Leaf, present } from "./writing";

/** By its name where the engine's table says all of it, else by what it is mixed of, else by its constants. */
export function writeDielectric(dielectric: Dielectric): Leaf {
  const { greatestTemperature, madeOf } = dielectric;
  const given = ofTemperature(dielectric);
  if (madeOf?.kind === "wet") {
    const { dry, water, conductivity } = madeOf;
    const kept = greatestTemperature === dry.greatestTemperature ? undefined : given;
    const below = writeDielectric(dry);
    return present({
      ...(typeof below === "string" ? { material: below } : (below as Branch)),
      water: formatAmount(water, "ratio"),
      "water conductivity": conductivity === null ? undefined : formatAmount(conductivity, "conductivity"),
      ...(kept === undefined ? {} : { "greatest temperature": kept }),
    });
  }
  const known = knownDielectric(madeOf?.solid ?? dielectric.name);
  const own = greatestTemperature === known?.greatestTemperature ? undefined : given;
  if (madeOf?.kind === "foam")
    return present({ foam: madeOf.solid, gas: formatAmount(madeOf.gas, "ratio"), "greatest temperature": own });
  if (madeOf?.kind === "spacers") {
    const { form, solid, filled } = madeOf;
    return present({ spacers: form, of: solid, filled: formatAmount(filled, "ratio"), "greatest temperature": own });
  }
  if (known && sameConstants(known, dielectric))
    return own === undefined ? dielectric.name : { material: dielectric.name, "greatest temperature": own };
  return present({
    permittivity: String(dielectric.permittivity),
    "loss tangent": lossOf(dielectric),
    at: dielectric.statedAt === undefined ? undefined : formatAmount(dielectric.statedAt, "frequency"),
    "greatest temperature": given,
  });
}

const ofTemperature = ({ greatestTemperature }: Dielectric): string | undefined =>
  greatestTemperature === undefined ? undefined : formatAmount(greatestTemperature, "temperature");

const sameConstants = (a: Dielectric, b: Dielectric): boolean =>
  a.permittivity === b.permittivity && a.lossTangent === b.lossTangent && a.statedAt === b.statedAt;

function lossOf({ lossTangent, statedAt, lossPoints }: Dielectric): Leaf {
  if (!lossPoints || statedAt === undefined) return String(lossTangent);
  const points = [...lossPoints, { frequency: statedAt, lossTangent }].sort((a, b) => a.frequency - b.frequency);
  return Object.fromEntries(
    points.map((point) => [formatAmount(point.frequency, "frequency"), String(point.lossTangent)]),
  );
}
