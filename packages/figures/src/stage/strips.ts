/** The strips of heat that leave the ribbon: which there are, how wide, where they turn down. */
import type { Answer } from "@feedpath/engine";
import { requiredNumber } from "../kit/answerValues";
import type { RibbonColumn } from "./columns";
import { wiresSay } from "./wiresSay";

export interface HeatStrip {
  /** Name of the part, "wires" or "soil". */
  readonly id: string;
  readonly says: string;
  readonly watts: number;
  /** Net power just before the part and just after it, W: the strip lies between these levels. */
  readonly before: number;
  readonly after: number;
  /** The band's lower edge above the strip, x in px and power in W, from the start of the part. */
  readonly edge: readonly (readonly [number, number])[];
  /** Where it would turn down with all the room in the world, px. */
  readonly wanted: number;
  readonly inPath: boolean;
}

/** Shares below this are listed, not drawn. */
export const leastShare = 0.0005;
const mostStrips = 5;
const smallShare = 0.01;

function pathStrip(column: RibbonColumn): HeatStrip {
  const steps = column.power.length - 1;
  const before = column.power[0]!;
  return {
    id: column.names.join(", "),
    says: column.says,
    watts: column.heat,
    before,
    after: before - column.heat,
    edge: column.power.map((power, i) => [column.x0 + ((column.x1 - column.x0) * i) / steps, power]),
    wanted: column.x1,
    inPath: true,
  };
}

function joinSmallStrips(strips: readonly HeatStrip[], whole: number): HeatStrip[] {
  const isSmall = (strip: HeatStrip) => strip.inPath && strip.watts < smallShare * whole;
  const small = strips.filter(isSmall);
  if (small.length < 2) return [...strips];
  const watts = small.reduce((sum, strip) => sum + strip.watts, 0);
  const last = small.at(-1)!;
  const together: HeatStrip = {
    ...last,
    id: small.map((strip) => strip.id).join(", "),
    says: "small parts together",
    watts,
    before: last.after + watts,
    edge: [last.edge.at(-1)!],
  };
  return strips.flatMap((strip) => (strip === last ? [together] : isSmall(strip) ? [] : [strip]));
}

/** Strips in the order in which they leave: parts of the path, then wires, then soil. */
export function heatStrips(answer: Answer, columns: readonly RibbonColumn[], xFeed: number, s: number): HeatStrip[] {
  const whole = requiredNumber(answer, "powerFromTransmitter");
  const radiated = requiredNumber(answer, "radiatedPower");
  const soil = requiredNumber(answer, "heatInSoil");
  const wires = requiredNumber(answer, "heatInWires");
  const antenna = (id: string, says: string, watts: number, before: number, offset: number): HeatStrip => ({
    id,
    says: `the ${says}`,
    watts,
    before,
    after: before - watts,
    edge: [[xFeed, before - watts]],
    wanted: xFeed + offset * s,
    inPath: false,
  });
  const all = [
    ...columns.map(pathStrip),
    antenna("wires", wiresSay(answer), wires, radiated + soil + wires, 70),
    antenna("soil", "soil", soil, radiated + soil, 190),
  ].filter((strip) => strip.watts >= leastShare * whole);
  return all.length > mostStrips ? joinSmallStrips(all, whole) : all;
}

/** All of the path as one strip, for pictures in which its parts find no room. */
export function joinPathStrips(strips: readonly HeatStrip[]): HeatStrip[] {
  const path = strips.filter((strip) => strip.inPath);
  const [first, last] = [path[0], path.at(-1)];
  if (!first || !last || path.length < 2) return [...strips];
  const together: HeatStrip = {
    id: path.map((strip) => strip.id).join(", "),
    says: "parts together",
    watts: path.reduce((sum, strip) => sum + strip.watts, 0),
    before: first.before,
    after: last.after,
    edge: path.flatMap((strip) => strip.edge),
    wanted: last.wanted,
    inPath: true,
  };
  return [together, ...strips.filter((strip) => !strip.inPath)];
}
