/** A line's value as written to a line as the engine knows it: of the catalogue, of the file's own, or described on the spot. */
import type { LineEntry, LineModel } from "@feedpath/engine";
import { findLine, lineCatalogue } from "../catalogue/lines";
import type { FileLine, FileOwnLine } from "../schema/line";
import { nearestWord, shown, someOf } from "../units/nearest";
import { fault } from "./build";
import { coaxialLine, dataSheetLine, type LineSpot, pairLine } from "./lineModels";
import { designationOf, whatOf } from "./lineNames";
import { ratingsOf } from "./ratings";
import { examineSheet } from "./sheetFindings";
import { fourWires, shieldedPair, twistedPair, wireOverPlane } from "./wireLines";

const designations = lineCatalogue.map((known) => known.designation);

/** Same name, whatever its capitals and blanks. */
export const sameName = (a: string, b: string): boolean => plain(a) === plain(b);
const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, " ");

/** The line that a path names or describes. */
export function buildLine(spot: LineSpot, line: FileLine): LineEntry {
  if (typeof line !== "string") return describedLine(spot, line, null);
  const found = spot.build.lines.find((own) => sameName(own.designation, line)) ?? findLine(line);
  if (found) return found;
  const own = spot.build.lines.map((one) => one.designation);
  const near = nearestWord(line, [...own, ...designations]);
  const known = own.length > 0 ? `In this file: ${someOf(own)}; in the catalogue: ` : "Known: ";
  const hint = near === null ? `${known}${someOf(designations)}.` : `Nearest: ${near}.`;
  const describe = "Or describe it: { impedance: 50 ohm, velocity: 0.66, loss: { 10 MHz: 4.6 dB/100 m } }.";
  const where = own.length > 0 ? "The catalogue and this file have" : "The catalogue has";
  const message = `${where} no line "${shown(line)}". ${hint} ${describe}`;
  spot.build.report(spot.path, "value", fault(message, "a line of the catalogue", { nearest: near, mend: near }));
  return nothing;
}

/** In place of a line that could not be found; the problem told of it keeps the station from being used. */
const nothing: LineEntry = lineCatalogue[0]!;

/** A line by what it is; without a name it is called by what it is made of. */
export function describedLine(spot: LineSpot, line: FileOwnLine, name: string | null): LineEntry {
  if ("like" in line) return likeLine(spot, line, name);
  const { ratings, ...more } = ratingsOf(line);
  const model = modelOf(spot, line);
  if (model.kind === "data sheet") examineSheet(spot, model, line);
  return {
    designation: name ?? designationOf(model),
    model,
    build: model.kind === "data sheet" ? null : model,
    ...more,
    ...(Object.keys(ratings).length > 0 ? { ratings } : {}),
    sources: [{ value: whatOf(model), source: "the station file", status: "stated by the owner" }],
  };
}

function likeLine(spot: LineSpot, line: Extract<FileOwnLine, { like: string }>, name: string | null): LineEntry {
  const found = findLine(line.like);
  if (!found) {
    const near = nearestWord(line.like, designations);
    const hint = near === null ? `Known: ${someOf(designations)}.` : `Nearest: ${near}.`;
    const message = `The catalogue has no line "${shown(line.like)}" that this one could be like. ${hint}`;
    const expected = "a line of the catalogue";
    spot.build.report([...spot.path, "like"], "value", fault(message, expected, { nearest: near, mend: near }));
    return nothing;
  }
  const { ratings, ...more } = ratingsOf(line);
  const merged = { ...found.ratings, ...ratings };
  const added = Object.keys(line).filter((key) => key !== "like");
  return {
    ...found,
    designation: name ?? found.designation,
    like: found.designation,
    ...more,
    ...(Object.keys(merged).length > 0 ? { ratings: merged } : {}),
    sources:
      added.length === 0
        ? found.sources
        : [...found.sources, { value: added.join(", "), source: "the station file", status: "stated by the owner" }],
  };
}

function modelOf(spot: LineSpot, line: Exclude<FileOwnLine, { like: string }>): LineModel {
  if ("impedance" in line) return dataSheetLine(spot, line);
  if ("inner" in line) return coaxialLine(spot, line);
  if ("wire" in line) return pairLine(spot, line);
  if ("twisted pair" in line) return twistedPair(spot, line);
  if ("wire over plane" in line) return wireOverPlane(spot, line);
  return "four wires" in line ? fourWires(spot, line) : shieldedPair(spot, line);
}
