/** Outer conductors and shields as written to what the engine computes with. */
import { type Braid, exactly, type Metal, type OuterConductor, type Quantity, type Shield } from "@feedpath/engine";
import type { KeyPath } from "../reading/sourceText";
import type { FileBraid, FileOuter } from "../schema/outerConductor";
import { conductorOf } from "../units/conductor";
import { type Build, fault } from "./build";
import { bulkMetalOf } from "./lineConductors";

type Long = Exclude<FileOuter, { conductivity: number }>;

/** Resistance of a braid over a smooth tube: common practice, no source; the catalogue's too. */
const braidFactor = 2;

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
  const base: OuterConductor = { ...smooth(diameter, metal), ...(wall ? { wall: wall.value } : {}) };
  const shield = shieldOf(build, written, path);
  if (!shield) return base;
  return { ...base, shield, resistanceFactor: shield.form.includes("braid") ? braidFactor : 1 };
}

export function metalNamed(build: Build, name: string, diameter: Quantity, path: KeyPath): Metal {
  const read = conductorOf(diameter, "tube", name, null);
  if (read.ok) return bulkMetalOf(read.value);
  build.report(path, "value", { ...read.fault, mend: read.fault.nearest });
  return { name, conductivity: 1, permeability: 1 };
}

function shieldOf(build: Build, written: Long, path: KeyPath): Shield | null {
  const { braid: wires, foil, corrugated, wall, diameter } = written;
  if (corrugated) {
    if (wires || foil) {
      const message = "A corrugated tube is closed: it has no braid and no foil.";
      build.report([...path, "corrugated"], "key", fault(message, "corrugated, or braid and foil"));
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
  const wound = lay ? Math.atan((Math.PI * meanDiameter) / lay.value) : null;
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
  }
  return braid;
}

/** Share of the way round that the carriers of one direction take; null where the braid is not known well enough. */
function fillOf({ carriers, ends, wire, angle }: Braid, meanDiameter: number): number | null {
  if (carriers === null || ends === null || wire === null || angle === null) return null;
  return (carriers * ends * wire) / (2 * Math.PI * meanDiameter * Math.cos(angle));
}
