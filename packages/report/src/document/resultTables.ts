/** The two tables of a station's answer: where the watts go, and what is found at each joint. */
import type { Answer, Joint, ScalarValue } from "@feedpath/engine";
import { complexText, numberText, spanText, swrText, wattsText } from "../words/numbers";
import { visibleLine } from "../words/visible";
import type { Block, DocumentTable } from "./document";

const words = (name: string) => ({ name, unit: "", numeric: false });
const numbers = (name: string, unit: string) => ({ name, unit, numeric: true });

function scalar(answer: Answer, name: string): ScalarValue | null {
  const value = answer.values[name];
  return value !== undefined && "value" in value && value.value !== null ? value : null;
}

/** Share of the power below which the heat of a part is told as none. */
const leastTold = 1e-6;

/** Where the watts go, in path order and then wires, soil, sky; null where the answer follows no power. */
export function wattsRows(answer: Answer): DocumentTable | null {
  const total = scalar(answer, "powerFromTransmitter");
  const least = leastTold * (total?.value ?? 0);
  const path = answer.parts.map((part) => [
    visibleLine(part.says),
    wattsText(Math.abs(part.heat) < least ? 0 : part.heat),
    "",
    numberText(part.loss, 2),
  ]);
  const ends = (
    [
      [scalar(answer, "heatInWires")?.says ?? "wires", "heatInWires"],
      ["soil", "heatInSoil"],
      ["to the sky", "radiatedPower"],
    ] as const
  ).flatMap(([says, name]) => {
    const value = scalar(answer, name);
    return value === null ? [] : [[says, wattsText(value.value!), spanText(value), ""]];
  });
  if (path.length + ends.length === 0) return null;
  const last = total === null ? [] : [["from the transmitter", wattsText(total.value!), spanText(total), ""]];
  return {
    caption: "Where the watts go",
    columns: [words("part"), numbers("power", "W"), numbers("range", ""), numbers("loss", "dB")],
    rows: [...last, ...path, ...ends],
  };
}

export function wattsTable(answer: Answer): Block | null {
  const table = wattsRows(answer);
  return table === null ? null : { kind: "section", title: table.caption, blocks: [{ kind: "table", table }] };
}

/** One row a joint, in path order. */
export function jointRows(joints: readonly Joint[]): DocumentTable {
  return {
    caption: "At each joint",
    columns: [
      words("joint"),
      numbers("impedance", "Ω"),
      numbers("SWR", ""),
      numbers("power", "W"),
      numbers("voltage", "V rms"),
      numbers("current", "A rms"),
    ],
    rows: joints.map((joint) => [
      visibleLine(joint.name),
      complexText({ ...joint.impedance, unit: "1" }),
      swrText(joint.swr.value, joint.swr.reference),
      wattsText(joint.power),
      numberText(joint.voltage.rms),
      numberText(joint.current.rms),
    ]),
  };
}

export function jointsTable(joints: readonly Joint[]): Block | null {
  if (joints.length === 0) return null;
  const table = jointRows(joints);
  return { kind: "section", title: table.caption, blocks: [{ kind: "table", table }] };
}
