/** Ground, earths, surroundings, people, what is wanted, and readings. */
import type { Earth, Ground, Person, Place, Quantity, Reading, Station, Surrounding, Wanted } from "@feedpath/engine";
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
    const values = `permittivity ${known.permittivity}, conductivity ${known.conductivity * 1e3} mS/m`;
    list(build, "ground.conductivity", `values of ${known.name}`, values, `${known.source}; ${known.status}`);
    return namedSoil(known);
  }
  const values = "permittivity 15 (3 to 30), conductivity 1 mS/m (0.1 mS/m to 10 mS/m)";
  list(build, "ground.conductivity", "soil", values, unknownSoilReason);
  return unknownSoil;
}

interface Soil {
  readonly permittivity: Quantity;
  readonly conductivity: Quantity;
}

function soilOf(build: Build, soil: Soil): Ground {
  listUnknown(build, soil.permittivity, "ground.permittivity", "permittivity of the soil", "number", unknownSoilReason);
  listUnknown(
    build,
    soil.conductivity,
    "ground.conductivity",
    "conductivity of the soil",
    "conductivity",
    unknownSoilReason,
  );
  return { kind: "soil", name: "", permittivity: soil.permittivity, conductivity: soil.conductivity };
}

function layered(build: Build, layers: readonly (Soil & { readonly thickness?: Quantity | undefined })[]): Ground {
  layers.forEach((layer, index) => {
    const last = index === layers.length - 1;
    const path = ["ground", "layers", index];
    if (!last && layer.thickness === undefined) {
      build.report(path, "value", fault("A layer with another below it needs its thickness.", "thickness: 1 m"));
    }
    if (last && layer.thickness !== undefined) {
      const message = "The lowest layer goes down without end: leave its thickness out, or add the layer below.";
      build.report([...path, "thickness"], "key", fault(message, "no thickness"));
    }
    const place = `ground.layers.${index}`;
    listUnknown(
      build,
      layer.permittivity,
      `${place}.permittivity`,
      `permittivity of layer ${index + 1}`,
      "number",
      unknownSoilReason,
    );
    listUnknown(
      build,
      layer.conductivity,
      `${place}.conductivity`,
      `conductivity of layer ${index + 1}`,
      "conductivity",
      unknownSoilReason,
    );
  });
  return { kind: "layers", layers: layers.map((layer) => ({ ...layer, thickness: layer.thickness ?? null })) };
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
