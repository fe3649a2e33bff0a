/** The stage for readers who do not see it: a sentence a joint in path order, and the table of watts. */
import type { Answer, Drawing, Joint, PartResult } from "@feedpath/engine";
import { numbersOf, requiredNumber, requiredTable, scalar } from "../kit/answerValues";
import type { FigureTable } from "../kit/figure";
import { givenWattsText, impedanceText, metresText, voltsText, wattsText } from "../kit/numberText";
import { strongestText } from "./angleMarks";
import { partSays } from "./columns";
import { swrOnText } from "./jointWords";
import { strongestOf } from "./lobe";
import { wiresSay } from "./wiresSay";

const backwards = (watts: number): string =>
  watts < 0 ? `${wattsText(-watts)} come back` : `${wattsText(watts)} pass`;

function jointSentence(joint: Joint): string {
  const { re, im } = joint.impedance;
  return `At the joint "${joint.name}" ${backwards(joint.power)}: ${swrOnText(joint)}, ${impedanceText(re, im, 1)}, ${voltsText(joint.voltage.rms)}.`;
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function partSentence(part: PartResult, parts: readonly PartResult[]): string {
  const name = partSays(part, parts);
  const says = part.says && part.says !== part.name ? ` (${part.says})` : "";
  return `${capital(name)}${says} is warmed by ${wattsText(part.heat)}.`;
}

function doubt(answer: Answer): string {
  const sky = scalar(answer, "radiatedPower");
  if (sky?.low === undefined || sky.high === undefined) return "";
  return ` Between ${wattsText(sky.low)} and ${wattsText(sky.high)} may leave, as far as the inputs are known.`;
}

function alsoThere({ surroundings: conductors, people, feedPoint }: Drawing): string {
  const [fx = 0, fy = 0] = feedPoint;
  const names = conductors.map(({ name }) => name);
  const near = names.length > 0 ? ` Around it: ${names.join(", ")}.` : "";
  const who = people.map(({ name, at: [x = 0, y = 0] }) => `${name} (${metresText(Math.hypot(x - fx, y - fy))})`);
  const where = "level distance from the feed point";
  return who.length > 0 ? `${near} People, with the ${where}: ${who.join(", ")}.` : near;
}

function surroundings(answer: Answer): string {
  const { drawing } = answer;
  if (!drawing) return "";
  const up = metresText(drawing.feedPoint[2] ?? 0);
  const table = requiredTable(answer, "elevationCut");
  const strongest = strongestText(strongestOf(numbersOf(table, "elevation"), numbersOf(table, "gain")));
  return ` ${capital(drawing.antennaSays)}, feed point ${up} up, over ${drawing.soil.says}. In the cut the field is ${strongest}.${alsoThere(drawing)}`;
}

/** One sentence a joint and a part, in path order, then wires, soil and sky. */
export function stageDescription(answer: Answer): string {
  const first = answer.joints[0];
  const start = `The transmitter gives ${givenWattsText(requiredNumber(answer, "powerFromTransmitter"))}.`;
  const path = answer.parts.flatMap((part) => {
    const end = answer.joints.find((joint) => joint.name === part.to);
    return [partSentence(part, answer.parts), ...(end ? [jointSentence(end)] : [])];
  });
  const wires = wattsText(requiredNumber(answer, "heatInWires"));
  const soil = wattsText(requiredNumber(answer, "heatInSoil"));
  const sky = wattsText(requiredNumber(answer, "radiatedPower"));
  const end = `At the antenna ${wires} warm the ${wiresSay(answer)}, ${soil} warm the soil and ${sky} leave for the sky.${doubt(answer)}`;
  return [start, ...(first ? [jointSentence(first)] : []), ...path, end].join(" ") + surroundings(answer);
}

/** Rows: what the transmitter gives, heat in each part, wires, soil, sky. */
export function stageTable(answer: Answer): FigureTable {
  const whole = requiredNumber(answer, "powerFromTransmitter");
  const share = (watts: number) => (whole > 0 ? (100 * watts) / whole : null);
  const value = (name: string, says: string) => {
    const watts = requiredNumber(answer, name);
    const { low = null, high = null } = scalar(answer, name) ?? {};
    return [says, watts, share(watts), low, high];
  };
  const parts = answer.parts.map((part) => [
    part.says && part.says !== part.name ? `${part.name} (${part.says})` : part.name,
    part.heat,
    share(part.heat),
    null,
    null,
  ]);
  return {
    caption: "Where the power goes",
    columns: [
      { name: "where", unit: "" },
      { name: "power", unit: "W" },
      { name: "share", unit: "%" },
      { name: "low", unit: "W" },
      { name: "high", unit: "W" },
    ],
    rows: [
      value("powerFromTransmitter", "from the transmitter"),
      ...parts,
      value("heatInWires", wiresSay(answer)),
      value("heatInSoil", "soil"),
      value("radiatedPower", "sky"),
    ],
  };
}
