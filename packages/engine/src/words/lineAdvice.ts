/** What `line` says is to be done. English. */
import { decibels, metres, plainNumber, significantNumber } from "../quantity/format";
import { isOverloaded, type LineFacts, type LineInPath, onBand } from "./lineFacts";
import { asSUnits } from "./sUnits";

/** "3.1 kg, bends to 0.12 m, 45 EUR": what is known of a run. */
function runWords(line: LineInPath, money: string | null): string {
  const known = [
    line.weight === null ? "" : `${significantNumber(line.weight, 2)} kg`,
    line.bendRadius === null ? "" : `bends to ${metres(line.bendRadius)}`,
    line.price === null || money === null
      ? ""
      : `${plainNumber(line.price, 0)} ${money}${line.perDecibel === null ? "" : `: ${significantNumber(line.perDecibel, 2)} ${money} a decibel`}`,
  ].filter((text) => text !== "");
  return known.join(", ");
}

const measureNames: Readonly<Record<string, string>> = { bend: "least bend", wind: "diameter", receive: "noise" };

/** The one thing to do. */
export const lineAdvice = (f: LineFacts): string =>
  f.notKnown === null
    ? advice(f)
    : `${advice(f)} No line has a ${measureNames[f.notKnown] ?? f.notKnown} here, so watts decide: write it under \`lines\` in the file.`;

function advice(f: LineFacts): string {
  const { proposal } = f;
  if (f.matters !== "watts") return byMeasure(f);
  if (isOverloaded(f) && !proposal)
    return "Lower the power, or name a stronger line: none of the list is known to bear this.";
  if (proposal) {
    const run = runWords(proposal, f.money);
    const stands = proposal.voltageShare === null ? " What voltage it stands is not known here: look it up first." : "";
    return `Lay ${metres(f.length)} of ${proposal.name}${run === "" ? "" : ` (${run})`}: ${gainWords(f, proposal)}.${stands}`;
  }
  if (f.others === 0) return "Keep it; name other lines to hold it against.";
  const { best } = f;
  if (!best) return `Keep it: no other line of the ${f.others} looked at would stand here as it is.`;
  return best.gained > 0.05
    ? `Keep it: even ${best.name}, which brings most of the ${f.others} others, would give ${decibels(best.gained)} more, ${asSUnits(best.gained)}.`
    : `Keep it: none of the ${f.others} other lines looked at brings more.`;
}

function gainWords(f: LineFacts, proposal: LineInPath): string {
  if (proposal.gained < 0.05) return "it bears what the present one does not";
  return `${decibels(proposal.gained)} more${onBand(f)}, ${asSUnits(proposal.gained)}, on sending${receiveWords(f, proposal)}`;
}

/** What it does for receiving: noise from outside falls with the signal. */
function receiveWords(f: LineFacts, other: LineInPath): string {
  if (f.present.receive === null || other.receive === null) return "";
  const gained = f.present.receive - other.receive;
  return gained < 0.1
    ? "; nothing that could be heard on receiving"
    : `, and ${decibels(gained)} more over the noise on receiving`;
}

function byMeasure(f: LineFacts): string {
  const { first } = f;
  if (first.name === f.present.name) return "Keep it: by that measure nothing comes before it.";
  const run = runWords(first, f.money);
  const differs =
    Math.abs(first.gained) < 0.05
      ? "no watts"
      : `${decibels(Math.abs(first.gained))} ${first.gained > 0 ? "more" : "less"}`;
  return `Take ${metres(f.length)} of ${first.name}${run === "" ? "" : ` (${run})`} if that is what matters: ${differs === "no watts" ? "it costs no watts" : `it brings ${differs}${onBand(f)}`}.`;
}
