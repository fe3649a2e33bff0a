/** Dielectrics of lines as written to what the engine computes with. */
import { cableDielectric, cableDielectrics, type Dielectric, type Quantity } from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileDielectric } from "../schema/dielectric";
import { nearestWord, orList, shown } from "../units/nearest";
import { type Build, fault } from "./build";

/** Dry air, as the engine knows it. */
export const air: Dielectric = { name: "air", permittivity: 1, lossTangent: 0 };

export function dielectricOf(build: Build, written: FileDielectric, path: KeyPath): Dielectric {
  if (typeof written === "string") return namedDielectric(build, written, path);
  const limit = greatest(written["greatest temperature"]);
  if ("material" in written) return { ...namedDielectric(build, written.material, [...path, "material"]), ...limit };
  return { ...ownDielectric(build, written, path), ...limit };
}

const greatest = (temperature: Quantity | undefined) => (temperature ? { greatestTemperature: temperature.value } : {});

/** The constants of a named material, without what the engine's table says beside them. */
export function knownDielectric(name: string): Dielectric | null {
  const known = cableDielectric(name);
  if (!known) return null;
  const { breakdown: _, source: __, breakdownSource: ___, ...constants } = known;
  return constants;
}

function namedDielectric(build: Build, written: string, path: KeyPath): Dielectric {
  const known = knownDielectric(written);
  if (known) return known;
  const names = cableDielectrics.map((dielectric) => dielectric.name);
  const near = nearestWord(written, names);
  const hint = near === null ? `Known: ${orList(names)}.` : `Nearest: ${near}.`;
  const message = `No dielectric "${shown(written)}" is known. ${hint} Or write { permittivity: 2.3, loss tangent: 0.0003 }.`;
  build.report(path, "value", fault(message, orList(names), { nearest: near, mend: near }));
  return air;
}

type Own = Extract<FileDielectric, { permittivity: Quantity }>;

/** Its own constants; with several loss tangents the permittivity holds at the frequency of one of them. */
function ownDielectric(build: Build, written: Own, path: KeyPath): Dielectric {
  const { permittivity, at, "loss tangent": loss } = written;
  const base = { name: "own", permittivity: permittivity.value };
  if ("value" in loss) return { ...base, lossTangent: loss.value, ...(at ? { statedAt: at.value } : {}) };
  const points = loss.kind === "points" ? loss.points : [];
  const stated = at ? points.find((point) => point.frequency === at.value) : points[0];
  if (!stated) {
    const message = "The permittivity is stated at a frequency that has no loss tangent here: give it one.";
    build.report([...path, "at"], "value", fault(message, "one of the frequencies under loss tangent"));
    return air;
  }
  const others = points
    .filter((point) => point !== stated)
    .map(({ frequency, quantity }) => ({ frequency, lossTangent: quantity.value }));
  return {
    ...base,
    lossTangent: stated.quantity.value,
    statedAt: stated.frequency,
    ...(others.length > 0 ? { lossPoints: others } : {}),
  };
}
