/** Dielectrics of lines as written to what the engine computes with. */
import {
  airWithSpacers,
  type CableDielectric,
  cableDielectric,
  cableDielectrics,
  type Dielectric,
  depolarisation,
  foamed,
  gasFractionOfVelocity,
  type Quantity,
  soaked,
} from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileDielectric } from "../schema/dielectric";
import { nearestWord, orList, shown } from "../units/nearest";
import { type Build, fault, fillQuantity } from "./build";

/** Dry air, as the engine knows it. */
export const air: Dielectric = { name: "air", permittivity: 1, lossTangent: 0 };

export function dielectricOf(build: Build, written: FileDielectric, path: KeyPath): Dielectric {
  if (typeof written === "string") return namedDielectric(build, written, path);
  const limit = written["greatest temperature"];
  const dry = dryDielectric(build, written, path);
  const wet = written.water ? wetDielectric(build, dry, written, path) : dry;
  return limit ? { ...wet, greatestTemperature: limit.value } : wet;
}

function dryDielectric(build: Build, written: Exclude<FileDielectric, string>, path: KeyPath): Dielectric {
  if ("material" in written) return namedDielectric(build, written.material, [...path, "material"]);
  if ("foam" in written) return foamOf(build, written, path);
  if ("spacers" in written) return spacedAir(build, written, path);
  return ownDielectric(build, written, path);
}

/** What a line needs of a dielectric, without what the engine's table says beside it. */
const plain = ({ name, permittivity, lossTangent, ...more }: Dielectric): Dielectric => {
  const { statedAt, lossPoints, relaxations, conductivity, greatestTemperature } = more;
  return {
    name,
    permittivity,
    lossTangent,
    ...(statedAt === undefined ? {} : { statedAt }),
    ...(lossPoints === undefined ? {} : { lossPoints }),
    ...(relaxations === undefined ? {} : { relaxations }),
    ...(conductivity === undefined ? {} : { conductivity }),
    ...(greatestTemperature === undefined ? {} : { greatestTemperature }),
  };
};

/** The constants of a named material. */
export function knownDielectric(name: string): Dielectric | null {
  const known = cableDielectric(name);
  return known && plain(known);
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

type Mixed<Key extends string> = Extract<FileDielectric, Readonly<Record<Key, unknown>>>;

/** A solid that can be foamed or cut into spacers, or null with the problem told. */
function solidOf(build: Build, name: string, path: KeyPath): CableDielectric | null {
  const found = cableDielectric(name);
  if (found && !/^(air|foam)/.test(name)) return found;
  if (found) {
    const message = `"${name}" is no solid: name the plastic itself, and how much of it or of gas there is.`;
    build.report(path, "value", fault(message, "a solid, such as polyethylene"));
  } else namedDielectric(build, name, path);
  return null;
}

/** Foam by its share of gas, or by the velocity factor that a line filled with it has. */
function foamOf(build: Build, written: Mixed<"foam">, path: KeyPath): Dielectric {
  const solid = solidOf(build, written.foam, [...path, "foam"]);
  const { gas, velocity } = written;
  if ((gas === undefined) === (velocity === undefined)) {
    const message =
      "A foam has its share of gas, or the velocity factor of a line filled with it: write one of the two.";
    build.report(path, "value", fault(message, "gas: 45 %, or velocity: 0.82"));
    return air;
  }
  if (!solid) return air;
  const slowest = 1 / Math.sqrt(solid.permittivity);
  if (velocity && velocity.value < slowest) {
    const message = `A foam is faster than its solid: solid ${solid.name} has a velocity factor of ${slowest.toFixed(3)}.`;
    build.report([...path, "velocity"], "value", fault(message, `${slowest.toFixed(3)} to 1`));
    return air;
  }
  const share = gas ? gas.value : gasFractionOfVelocity(solid.permittivity, velocity!.value);
  return { ...plain(foamed(solid, share)), madeOf: { kind: "foam", solid: solid.name, gas: share } };
}

function spacedAir(build: Build, { spacers: form, of, filled }: Mixed<"spacers">, path: KeyPath): Dielectric {
  const solid = solidOf(build, of, [...path, "of"]);
  if (!solid) return air;
  const recipe = { kind: "spacers", solid: solid.name, form, filled: filled.value } as const;
  return { ...plain(airWithSpacers(solid, filled.value, form)), madeOf: recipe };
}

/** S/m of rain that has met dust and metal (practice, from memory); K of the ground. */
const usualWater = { conductivity: 0.01, temperature: 293.15 };

/** Water in drops or cells, round. */
function wetDielectric(
  build: Build,
  dry: Dielectric,
  written: { readonly water?: Quantity | undefined; readonly "water conductivity"?: Quantity | undefined },
  path: KeyPath,
): Dielectric {
  const water = written.water!.value;
  const place = `${path.join(".")}.water conductivity`;
  const conductivity = fillQuantity(build, written["water conductivity"], "conductivity", {
    place,
    name: "conductivity of the water in a dielectric",
    value: usualWater.conductivity,
    reason: "not given: rain that has met dust and metal (practice, from memory); at 20 °C, in round drops",
  }).value;
  const stated = written["water conductivity"]?.value ?? null;
  const wet = soaked(dry, { ...usualWater, conductivity }, water, depolarisation.round);
  return { ...plain(wet), madeOf: { kind: "wet", dry, water, conductivity: stated } };
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
