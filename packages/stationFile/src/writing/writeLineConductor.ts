/** Conductors of lines as texts. */
import type { Braid, Dielectric, OuterConductor, RoundConductor, Shield } from "@feedpath/engine";
import { exactly } from "@feedpath/engine";
import { insulationOf } from "../units/conductor";
import { formatAmount } from "../units/formatQuantity";
import { type Leaf, present } from "./writing";

/** What covers a wire. */
interface Sleeve {
  readonly outerRadius: number;
  readonly dielectric: Dielectric;
}

const metres = (value: number): string => formatAmount(value, "length");

/** A difference of lengths with the fewest figures that give `larger` or `smaller` back when it is taken off or added. */
function difference(larger: number, smaller: number, gives: (written: number) => boolean): number {
  for (let digits = 1; digits <= 17; digits++) {
    const rounded = Number((larger - smaller).toPrecision(digits));
    if (gives(rounded)) return rounded;
  }
  return larger - smaller;
}

/** A round conductor in one text where that says all of it, else with its keys. */
export function writeRound(conductor: RoundConductor, sleeve: Sleeve | null): Leaf {
  const { strands, layers, form, holeRadius } = conductor;
  const radius = layers.at(-1)?.outerRadius ?? 0;
  const material = layers.at(-1)?.metal.name ?? "";
  const diameter = metres(strands?.diameter ?? 2 * radius);
  const cover = sleeve && coverOf(sleeve, radius);
  if (form !== "tube" && (!cover || cover.plain)) {
    const count = strands ? `${strands.count} x ` : "";
    return `${count}${diameter} ${material}${cover ? ` in ${cover.wall} ${cover.material}` : ""}`;
  }
  return present({
    strands: strands ? String(strands.count) : undefined,
    diameter,
    material,
    form: form === "tube" ? "tube" : undefined,
    wall: form === "tube" ? metres(difference(radius, holeRadius, (wall) => radius - wall === holeRadius)) : undefined,
    insulation: cover?.long,
  });
}

/** Insulation by its name where the catalogue's constants are its own. */
function coverOf({ outerRadius, dielectric }: Sleeve, radius: number) {
  const thickness = difference(outerRadius, radius, (wall) => radius + wall === outerRadius);
  const wall = metres(thickness);
  const named = insulationOf(dielectric.name, exactly(thickness), null);
  const known = named.ok ? named.value : null;
  const plain =
    known?.permittivity.value === dielectric.permittivity && (known.lossTangent?.value ?? 0) === dielectric.lossTangent;
  const long: Leaf = present({
    wall,
    permittivity: String(dielectric.permittivity),
    "loss tangent": dielectric.lossTangent === 0 && !known ? undefined : String(dielectric.lossTangent),
    material: known ? dielectric.name : undefined,
  });
  return { wall, material: dielectric.name, plain, long };
}

/** A smooth tube in one text, a shield with its keys. */
export function writeOuter({ innerRadius, wall, metal, shield }: OuterConductor): Leaf {
  const diameter = metres(2 * innerRadius);
  if (!shield && wall === Number.POSITIVE_INFINITY) return `${diameter} ${metal.name}`;
  return present({
    diameter,
    material: metal.name,
    // The wall of a braid and that of a foil stand for what their own keys tell.
    wall: wall === Number.POSITIVE_INFINITY || ownsWall(shield) ? undefined : metres(wall),
    ...(shield ? shieldKeys(shield) : {}),
  });
}

const ownsWall = (shield: Shield | undefined): boolean =>
  shield !== undefined && ("braid" in shield || "foil" in shield);

function shieldKeys(shield: Shield): Readonly<Record<string, Leaf>> {
  if (shield.form === "tube") return {};
  if (shield.form === "corrugated") return { corrugated: { depth: metres(shield.depth), pitch: metres(shield.pitch) } };
  return {
    braid: "braid" in shield ? braidKeys(shield.braid) : undefined,
    foil: "foil" in shield ? { material: shield.foil.metal.name, thickness: metres(shield.foil.thickness) } : undefined,
  };
}

const braidKeys = ({ coverage, carriers, ends, wire, angle, layers }: Braid): Leaf =>
  present({
    coverage: coverage === null ? undefined : formatAmount(coverage, "ratio"),
    carriers: carriers === null ? undefined : String(carriers),
    ends: ends === null ? undefined : String(ends),
    wire: wire === null ? undefined : metres(wire),
    angle: angle === null ? undefined : formatAmount(angle, "angle"),
    layers: layers === 1 ? undefined : String(layers),
  });
