/** A round conductor as people write it: "2 mm copper in 0.8 mm PVC", "30 mm tube aluminium", "1.6 mm copper bare". */
import type { Conductor, Metal, Quantity } from "@feedpath/engine";
import { type CladMetal, cladMetals, conductorMetals, insulations, perfectMetal } from "../catalogue/wireMaterials";
import { plainSymbols } from "./amount";
import { dimensions } from "./dimensions";
import { type Fault, faulty, type Parsed, parsed } from "./fault";
import { nearestWord, orList, shown } from "./nearest";
import { parseQuantity } from "./parseQuantity";

const expectedConductor = "2 mm copper in 0.8 mm PVC, or 30 mm tube aluminium";
/** Thinnest and thickest round conductor that is read, in metres. */
export const diameterRule = { least: 1e-5, most: 3 };
export const wallRule = { least: 1e-6, most: 0.1 };

const metals: readonly (Metal | CladMetal)[] = [...conductorMetals, ...cladMetals, perfectMetal];
export const metalNames: readonly string[] = metals.map((metal) => metal.name);
export const insulationNames: readonly string[] = insulations.map((plastic) => plastic.name);

/** A conductor of a named metal; the fault names the nearest one. Insulation null for a bare wire, wall null where it is not stated. */
export function conductorOf(
  diameter: Quantity,
  form: "wire" | "tube",
  material: string,
  insulation: Conductor["insulation"],
  wall: Quantity | null = null,
): Parsed<Conductor> {
  const metal = metals.find((known) => known.name === material);
  if (!metal) return unknownWord("metal", material, metalNames);
  return parsed({
    diameter,
    form,
    material: metal.name,
    conductivity: metal.conductivity,
    permeability: metal.permeability,
    ...("core" in metal ? { cladding: { thickness: metal.thickness(diameter.value), core: metal.core } } : {}),
    ...(wall ? { wall } : {}),
    insulation,
  });
}

function unknownWord<T>(kind: string, word: string, words: readonly string[]): Parsed<T> {
  const near = nearestWord(word, words);
  const hint = near === null ? `Known: ${orList(words)}.` : `Nearest: ${near}.`;
  return faulty(`No ${kind} "${shown(word)}" is known. ${hint}`, orList(words), { nearest: near });
}

/** Insulation of a named plastic; its permittivity and loss tangent are the catalogue's. Of another material what is not stated is none. */
export function insulationOf(
  material: string,
  wall: Quantity,
  permittivity: Quantity | null,
  lossTangent: Quantity | null = null,
): Parsed<Conductor["insulation"]> {
  const plastic = insulations.find((known) => known.name === material);
  const loss = lossTangent ?? plastic?.lossTangent;
  const known = permittivity ?? plastic?.permittivity;
  if (!known) return unknownWord("insulation", material, insulationNames);
  return parsed({ material, wall, permittivity: known, ...(loss ? { lossTangent: loss } : {}) });
}

function withMend(parsedConductor: Parsed<Conductor>, text: string, wrong: string): Parsed<Conductor> {
  if (parsedConductor.ok || parsedConductor.fault.nearest === null) return parsedConductor;
  const fault: Fault = { ...parsedConductor.fault, mend: text.replace(wrong, parsedConductor.fault.nearest) };
  return { ok: false, fault };
}

/** Index of the first word that is no part of an amount ("between", "and", "+/-", a unit, anything with a figure). */
function firstWord(words: readonly string[], start: number): number {
  const index = words.findIndex(
    (word, at) =>
      at >= start && !/\d/.test(word) && !Object.hasOwn(dimensions.length.units, word) && !amountWords.has(word),
  );
  return index < 0 ? words.length : index;
}
const amountWords = new Set(["between", "and", "+/-", "%"]);

interface Pieces {
  readonly size: string;
  readonly form: "wire" | "tube";
  readonly metal: string;
  /** Null for a bare wire. */
  readonly sleeve: { readonly wall: string; readonly plastic: string } | null;
}

/** Cuts "30 mm tube aluminium" and "0.1 in copper in 0.02 in PVC" into their pieces; null when one is missing. */
function pieces(text: string): Pieces | null {
  const words = text.split(" ");
  const metalAt = firstWord(words, 0);
  const form = words[metalAt] === "tube" ? "tube" : "wire";
  const nameAt = words[metalAt] === "tube" || words[metalAt] === "wire" ? metalAt + 1 : metalAt;
  const rest = words.findIndex((word, at) => at > nameAt && (word === "in" || word === "bare"));
  const size = words.slice(0, metalAt).join(" ");
  const metal = words.slice(nameAt, rest < 0 ? words.length : rest).join(" ");
  if (size === "" || metal === "") return null;
  if (rest < 0) return { size, form, metal, sleeve: null };
  if (words[rest] === "bare") return rest === words.length - 1 ? { size, form, metal, sleeve: null } : null;
  const plasticAt = firstWord(words, rest + 1);
  const wall = words.slice(rest + 1, plasticAt).join(" ");
  const plastic = words.slice(plasticAt).join(" ");
  return wall === "" || plastic === "" ? null : { size, form, metal, sleeve: { wall, plastic } };
}

/** A wire given by its gauge number: the diameter is ASTM B258's, 0.127 mm times 92 to the power (36 - n)/39. */
function byGauge(text: string): Parsed<Conductor> | null {
  const match = /^#?\s?(\d{1,2})\s*(?:AWG|gauge|ga)\b\s*(.*)$/i.exec(text);
  if (!match) return null;
  const millimetres = `${(0.127 * 92 ** ((36 - Number(match[1])) / 39)).toFixed(2)} mm`;
  return faulty(`A wire is given by its diameter: ${match[1]} AWG is ${millimetres}.`, expectedConductor, {
    mend: `${millimetres} ${match[2] === "" ? "copper" : match[2]}`,
  });
}

/** Reads a conductor from one text. `perfect` as the metal is lossless. */
export function parseConductor(written: string): Parsed<Conductor> {
  const text = plainSymbols(written).replace(/\s+/g, " ");
  const gauge = byGauge(text);
  if (gauge) return gauge;
  const cut = pieces(text);
  if (!cut) {
    return faulty(
      `"${shown(written)}" is no conductor: diameter, material, insulation. Example: ${expectedConductor}.`,
      expectedConductor,
    );
  }
  const diameter = parseQuantity(cut.size, "length", diameterRule);
  if (!diameter.ok) return diameter;
  if (!cut.sleeve) return withMend(conductorOf(diameter.value, cut.form, cut.metal, null), text, cut.metal);
  const wall = parseQuantity(cut.sleeve.wall, "length", wallRule);
  if (!wall.ok) return wall;
  const sleeve = insulationOf(cut.sleeve.plastic, wall.value, null);
  if (!sleeve.ok) return withMend({ ok: false, fault: sleeve.fault }, text, cut.sleeve.plastic);
  return withMend(conductorOf(diameter.value, cut.form, cut.metal, sleeve.value), text, cut.metal);
}
