/** Ground, earths, surroundings, people, what is wanted, and readings. */
import {
  type Earth,
  type Ground,
  isUncertain,
  type Person,
  type Place,
  type Quantity,
  type Reading,
  type SoilConstant,
  type Spectrum,
  type Station,
  type Surrounding,
  type Wanted,
} from "@feedpath/engine";
import { earthRange, footRange } from "../catalogue/ranges";
import { namedSoil, soils, unknownSoil, unknownSoilReason } from "../catalogue/soils";
import type { FileStation } from "../schema/station";
import { formatQuantity } from "../units/formatQuantity";
import { type Build, fault, fill, list, listUnknown } from "./build";

export function buildGround(build: Build, file: FileStation["ground"]): Ground {
  const ground = fill<NonNullable<FileStation["ground"]>>(build, file, {
    place: "ground",
    name: "ground",
    value: "unknown",
    says: "unknown soil",
    reason: "not given: the soil is taken as unknown",
  });
  if (typeof ground !== "string") return "layers" in ground ? layered(build, ground.layers) : soilOf(build, ground);
  if (ground === "free space" || ground === "perfect") return { kind: ground };
  const known = soils.find((soil) => soil.name === ground);
  if (known) {
    const [permittivity, conductivity] = [known.permittivity, known.conductivity * 1e3].map((x) => x.toPrecision(3));
    const values = `permittivity ${Number(permittivity)}, conductivity ${Number(conductivity)} mS/m`;
    list(build, "ground.conductivity", `values of ${known.name}`, values, `${known.source}; ${known.status}`);
    return namedSoil(known);
  }
  const values = "permittivity 15 (3 to 30), conductivity 1 mS/m (0.1 mS/m to 10 mS/m)";
  list(build, "ground.conductivity", "soil", values, unknownSoilReason);
  return unknownSoil;
}

type Written = Quantity | Spectrum;

interface Soil {
  readonly permittivity: Written;
  readonly conductivity: Written;
}

type Layer = Extract<Ground, { readonly kind: "layers" }>["layers"][number];

/** One value, or points that move together: who measures wrong does so at all frequencies. */
function soilConstant(written: Written, name: string): SoilConstant {
  if (!("kind" in written)) return written;
  if (written.kind === "constant") return written.quantity;
  const tied = (quantity: Quantity): Quantity => (isUncertain(quantity) ? { ...quantity, tied: name } : quantity);
  return { ...written, points: written.points.map((p) => ({ ...p, quantity: tied(p.quantity) })) };
}

/** A soil's values at `place` of the station; `of` says whose they are. */
function soilValues(build: Build, soil: Soil, place: string, of: string): Pick<Layer, "permittivity" | "conductivity"> {
  const value = (key: "permittivity" | "conductivity", dimension: "number" | "conductivity"): SoilConstant => {
    const constant = soilConstant(soil[key], `${key} of ${of}`);
    const quantity = "kind" in constant ? null : constant;
    listUnknown(build, quantity, `${place}.${key}`, `${key} of ${of}`, dimension, unknownSoilReason);
    return constant;
  };
  return { permittivity: value("permittivity", "number"), conductivity: value("conductivity", "conductivity") };
}

/** One soil; with values by frequency it is a single layer. */
function soilOf(build: Build, soil: Soil): Ground {
  const { permittivity, conductivity } = soilValues(build, soil, "ground", "the soil");
  if ("kind" in permittivity || "kind" in conductivity)
    return { kind: "layers", layers: [{ permittivity, conductivity, thickness: null }] };
  return { kind: "soil", name: "", permittivity, conductivity };
}

function layered(build: Build, layers: readonly (Soil & { readonly thickness?: Quantity | undefined })[]): Ground {
  const built = layers.map((layer, index): Layer => {
    const last = index === layers.length - 1;
    const path = ["ground", "layers", index];
    if (!last && layer.thickness === undefined) {
      build.report(path, "value", fault("A layer with another below it needs its thickness.", "thickness: 1 m"));
    }
    if (last && layer.thickness !== undefined) {
      const message = "The lowest layer goes down without end: leave its thickness out, or add the layer below.";
      build.report([...path, "thickness"], "key", fault(message, "no thickness"));
    }
    const values = soilValues(build, layer, `ground.layers.${index}`, `layer ${index + 1}`);
    return { ...values, thickness: layer.thickness ?? null };
  });
  return { kind: "layers", layers: built };
}

export function buildEarths(build: Build, file: FileStation["earths"]): readonly Earth[] {
  return Object.entries(file ?? {}).map(([name, earth], index) => {
    const forms = (["rod", "strip", "plate"] as const).filter((form) => earth[form] !== undefined);
    if (forms.length > 1) {
      const message = `The earth "${name}" is ${forms.join(" and ")} at once: write one of them.`;
      build.report(["earths", name, forms[1] ?? ""], "key", fault(message, "one of rod, strip, plate"));
    }
    const [form] = forms;
    const resistance = earth.resistance ?? null;
    const reason = `${earthRange.source}; ${earthRange.status}`;
    listUnknown(build, resistance, `earths.${index}.resistance`, `resistance of ${name}`, "impedance", reason);
    return {
      name,
      form: form ?? "unspecified",
      size: (form && earth[form]) ?? null,
      diameter: earth.diameter ?? null,
      at: earth.at ?? null,
      resistance,
    };
  });
}

type FileConductor = Extract<NonNullable<FileStation["surroundings"]>[number], { conductor: string }>;

/** The foot of a conductor that stands on the soil: what the file says, else a usual range, listed. */
function footOf(build: Build, file: FileStation, thing: FileConductor, index: number): Quantity | null {
  const ends = [thing.points[0], thing.points.at(-1)];
  const standing = ends.find((end) => end?.[2].value === 0);
  if (!standing || file.ground === "free space") return thing.foot ?? null;
  const near = (at: Place | undefined): boolean =>
    at !== undefined && Math.hypot(at[0].value - standing[0].value, at[1].value - standing[1].value) < 0.5;
  if (!thing.foot && Object.values(file.earths ?? {}).some((earth) => near(earth.at))) return null;
  return fill(build, thing.foot, {
    place: `surroundings.${index}.foot`,
    name: `foot of ${thing.conductor}`,
    value: footRange.quantity,
    says: formatQuantity(footRange.quantity, "impedance"),
    reason: `it stands on the soil; ${footRange.source}; ${footRange.status}`,
  });
}

export const buildSurroundings = (build: Build, file: FileStation): readonly Surrounding[] =>
  (file.surroundings ?? []).map((thing, index): Surrounding => {
    if ("conductor" in thing) {
      const foot = footOf(build, file, thing, index);
      return {
        kind: "conductor",
        name: thing.conductor,
        points: thing.points,
        wire: thing.wire,
        ...(foot && { foot }),
        ...(thing.insulators && { insulators: thing.insulators }),
      };
    }
    if ("sheet" in thing) return { kind: "sheet", name: thing.sheet, corners: thing.corners };
    return { kind: "roof", covering: thing.roof, loss: thing.loss };
  });

export const buildPeople = (build: Build, file: FileStation["people"]): readonly Person[] =>
  (file ?? []).map((person, index) => ({
    place: person.place,
    at: person.at,
    who: fill(build, person.who, {
      place: `people.${index}.who`,
      name: `who is at ${person.place}`,
      value: "public" as const,
      says: "public",
      reason: "not given: the strictest limits",
    }),
    stays: fill<Person["stays"]>(build, person.stays, {
      place: `people.${index}.stays`,
      name: `how long people stay at ${person.place}`,
      value: "all day",
      says: "all day",
      reason: "not given: the worst case",
    }),
  }));

export const buildWanted = (file: FileStation["wanted"]): Wanted => ({
  elevation: file?.elevation ?? null,
  direction: file?.direction?.value ?? null,
  swrBelow: file?.["SWR below"] ?? null,
  mayChange: file?.["may change"] ?? [],
});

export const buildReadings = (build: Build, file: FileStation["readings"]): Station["readings"] =>
  (file ?? []).map((reading, index): Reading => {
    const path = ["readings", index];
    const bySwr = reading.SWR !== undefined || reading.frequency !== undefined;
    if (reading.file === undefined && (reading.SWR === undefined || reading.frequency === undefined)) {
      build.report(path, "value", fault("A reading needs frequency and SWR, or a file.", "frequency and SWR, or file"));
    }
    if (reading.file !== undefined && bySwr) {
      build.report(path, "value", fault("A reading has frequency and SWR, or a file, not both.", "one of the two"));
    }
    return {
      at: reading.at,
      frequency: reading.frequency ?? null,
      swr: reading.SWR ?? null,
      file: reading.file ?? null,
      taken: reading.taken ?? null,
      farEnd: fill(build, reading["far end"], {
        place: `readings.${index}.farEnd`,
        name: `far end during reading ${index + 1}`,
        value: "antenna" as const,
        says: "antenna",
        reason: "not given: the station as it is used",
      }),
    };
  });
