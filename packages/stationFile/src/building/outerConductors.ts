/** Outer conductors and shields as written to what the engine computes with. */
import {
  type Braid,
  braidAngle,
  exactly,
  type Metal,
  type OuterConductor,
  type Quantity,
  type Shield,
  shieldedConductor,
  usualBraid,
} from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileBraid, FileOuter } from "../schema/outerConductor";
import { conductorOf } from "../units/conductor";
import { formatAmount } from "../units/formatQuantity";
import { type Build, fault, list } from "./build";
import { bulkMetalOf, isThinlyCoated, metalOf } from "./lineConductors";

type Long = Exclude<FileOuter, { conductivity: number }>;

export function outerConductor(build: Build, written: FileOuter, path: KeyPath): OuterConductor {
  if (!("conductivity" in written)) return shielded(build, written, path);
  return smooth(written.diameter, bulkMetalOf(written));
}

const smooth = (diameter: Quantity, metal: Metal): OuterConductor => ({
  innerRadius: diameter.value / 2,
  wall: Number.POSITIVE_INFINITY,
  metal,
  resistanceFactor: 1,
});

function shielded(build: Build, written: Long, path: KeyPath): OuterConductor {
  const { diameter, foil, wall } = written;
  const material = written.material ?? (written.braid ? undefined : foil?.material);
  if (material === undefined)
    build.report(path, "value", fault('An outer conductor needs its "material".', "material: copper"));
  const at = written.material === undefined ? [...path, "foil", "material"] : [...path, "material"];
  const metal = metalNamed(build, material ?? "copper", diameter, at);
  const shield = shieldOf(build, written, path);
  if (!shield) return { ...smooth(diameter, metal), ...(wall ? { wall: wall.value } : {}) };
  if ("braid" in shield) listUnknownBraid(build, shield.braid, path);
  const coating = coatNamed(material ?? "copper", diameter);
  return shieldedConductor({
    innerRadius: diameter.value / 2,
    metal,
    shield,
    ...(wall && { wall: wall.value }),
    ...(coating && { coating }),
  });
}

/** What a braid is taken for where its text leaves it open. */
function listUnknownBraid(build: Build, braid: Braid, path: KeyPath): void {
  const { carriers, ends, wire, angle, coverage } = braid;
  const place = [...path, "braid"].join(".");
  const wires = carriers !== null && ends !== null && wire !== null;
  if (angle === null) {
    const degrees = `${Math.round((180 * usualBraid.angle) / Math.PI)}°`;
    const left = wires && coverage !== null ? "; its wires are then taken by their coverage alone" : "";
    list(build, `${place}.angle`, "angle of a braid", degrees, `to the axis, common practice${left}`);
  }
  if (coverage === null && !(wires && angle !== null)) {
    list(build, `${place}.coverage`, "coverage of a braid", `${100 * usualBraid.coverage} %`, "common practice");
  }
  if (wire === null) {
    list(build, `${place}.wire`, "wires of a braid", formatAmount(usualBraid.wire, "length"), "common practice");
  }
}

export function metalNamed(build: Build, name: string, diameter: Quantity, path: KeyPath): Metal {
  const read = conductorOf(diameter, "tube", name, null);
  if (read.ok) return bulkMetalOf(read.value);
  build.report(path, "value", { ...read.fault, mend: read.fault.nearest });
  return { name, conductivity: 1, permeability: 1 };
}

/** The thin coat of a metal's name, tin on tinned copper; undefined for a metal of one piece. */
function coatNamed(name: string, diameter: Quantity): OuterConductor["coating"] {
  const read = conductorOf(diameter, "tube", name, null);
  if (!read.ok || !isThinlyCoated(read.value)) return undefined;
  return { metal: metalOf(read.value), thickness: read.value.cladding.thickness };
}

function shieldOf(build: Build, written: Long, path: KeyPath): Shield | null {
  const { braid: wires, foil, corrugated, wall, diameter } = written;
  if (corrugated) {
    if (wires || foil) {
      const message = "A corrugated tube is closed: it has no braid and no foil.";
      build.report([...path, "corrugated"], "key", fault(message, "corrugated, or braid and foil"));
    }
    if (corrugated.depth.value > corrugated.pitch.value) {
      const message =
        "The depth of a corrugation goes from trough to crest and is less than its pitch, from crest to crest.";
      build.report([...path, "corrugated", "depth"], "value", fault(message, "a depth below the pitch"));
      return null;
    }
    return { form: "corrugated", depth: corrugated.depth.value, pitch: corrugated.pitch.value };
  }
  if ((wires || foil) && wall) {
    const message = "A wall is that of a smooth tube; a braid has its wire, a foil its thickness.";
    build.report([...path, "wall"], "key", fault(message, "wire of the braid, thickness of the foil"));
  }
  const sheet = foil && {
    metal: metalNamed(build, foil.material, exactly(diameter.value), [...path, "foil", "material"]),
    thickness: foil.thickness.value,
  };
  const braid = wires && braidOf(build, wires, diameter.value, [...path, "braid"]);
  if (sheet && braid) return { form: "foil and braid", foil: sheet, braid };
  if (braid) return { form: "braid", braid };
  return sheet ? { form: "foil", foil: sheet } : null;
}

function braidOf(build: Build, written: FileBraid, innerDiameter: number, path: KeyPath): Braid {
  const { coverage, carriers = null, ends = null, wire, angle, lay, layers = 1 } = written;
  if (Object.keys(written).length === 0) {
    const message = "A braid needs its coverage, or its carriers, ends, wire and angle.";
    build.report(path, "value", fault(message, "coverage: 95 %"));
  }
  if (angle && lay) {
    const message = "A braid has its angle, or the length of its lay: write one of the two.";
    build.report([...path, "lay"], "key", fault(message, "angle or lay"));
  }
  if (carriers !== null && carriers % 2 === 1) {
    const message = "Half of the carriers of a braid go either way round: their count is even.";
    build.report([...path, "carriers"], "value", fault(message, "an even count"));
  }
  const meanDiameter = innerDiameter + 2 * (wire?.value ?? 0);
  const wound = lay ? braidAngle(innerDiameter / 2, wire?.value ?? 0, lay.value) : null;
  const braid: Braid = {
    coverage: coverage?.value ?? null,
    carriers,
    ends,
    wire: wire?.value ?? null,
    angle: angle?.value ?? wound,
    layers,
  };
  const filled = fillOf(braid, meanDiameter);
  if (filled !== null && filled > 1) {
    const percent = Math.round(100 * filled);
    const message = `So many wires do not fit round ${(innerDiameter * 1e3).toFixed(2)} mm: side by side they need ${percent} % of the way.`;
    build.report(path, "value", fault(message, "fewer carriers or ends, or a thinner wire"));
    return { ...braid, wire: null };
  }
  return braid;
}

/** Share of the way round that the carriers of one direction take; null where the braid is not known well enough. */
function fillOf({ carriers, ends, wire, angle }: Braid, meanDiameter: number): number | null {
  if (carriers === null || ends === null || wire === null || angle === null) return null;
  return (carriers * ends * wire) / (2 * Math.PI * meanDiameter * Math.cos(angle));
}
