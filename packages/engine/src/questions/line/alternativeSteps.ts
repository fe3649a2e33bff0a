/** How the alternatives were worked out: lengths, transformers of line, two lines side by side, a switch, more power. */
import type { WorkingStep } from "../../answer/answer";
import { fixedNumber, plainNumber, swrText, watts } from "../../quantity/format";
import type { LineFacts } from "../../words/lineFacts";
import { lengthText } from "../../words/lineIdea";
import { doubled } from "./alternativeTables";
import { bandName } from "./bandName";
import { type Findings, usualCoaxial } from "./findings";
import { shortSection, widthSwr } from "./matchedEnds";
import { presentOf } from "./proposal";
import { worstOf } from "./study";

export function lengthSteps({ lengths }: Findings): WorkingStep[] {
  if (!lengths) return [];
  const { entry, halfWave, halfWaves, band, range, rangeOnRated } = lengths;
  const told = halfWaves
    .slice(0, 6)
    .map(
      (h) =>
        `${h.multiple} on ${bandName(h.band.name, h.band.frequency.value)}: ${lengthText(h.length, h.low, h.high)}, SWR ${swrText(h.swr)}`,
    );
  const list =
    told.length === 0
      ? ""
      : ` Multiples near the present length: ${told.join("; ")}. ${halfWaves.some((h) => h.high > h.low) ? "The spread is that" : "Nothing is known of the spread"} of the velocity factor: measure the reel before it is cut.${beyondCutting(lengths)}`;
  return [
    {
      text: `Half a wave of ${entry.designation} shows what stands at its end, less what its loss hides.${list}`,
      formula: "\\ell = n \\, \\frac{v c}{2 f}",
      substituted: `\\ell = n \\times ${plainNumber(halfWave, 2)} \\; \\mathrm{m} \\; (${plainNumber(band.frequency.value / 1e6, 3)} \\; \\mathrm{MHz})`,
      result: { value: halfWave, unit: "m" },
      source: "definition of the velocity factor; its value and spread from the line's own sources",
      explains: ["halfWaveOnLine"],
    },
    {
      text: `Its length moved over half a wave, the SWR goes from ${swrText(range.low)} to ${swrText(range.high)} with this antenna, from ${swrText(rangeOnRated.low)} to ${swrText(rangeOnRated.high)} with the rated load in its place. Without loss the rated load would give 1 to the square of the ratio of impedances.`,
      formula: "\\mathrm{SWR}_{\\mathrm{most}} = \\left(\\frac{Z_0}{R}\\right)^{2}",
      source: "telegrapher's equations at 48 lengths; the limit follows from the quarter wave, Z = Z0²/R",
      explains: ["lowestSwrByLength", "highestSwrByLength", "lowestSwrOnRated", "highestSwrOnRated"],
    },
  ];
}

/** Where the doubt of the length is no longer small against half a wave. */
function beyondCutting({ halfWaves, halfWave, band }: NonNullable<Findings["lengths"]>): string {
  const wide = halfWaves.some((h) => h.band === band && h.high - h.low > halfWave / 4);
  return wide
    ? " So many half waves cannot be cut by a printed velocity factor: the doubt is over a quarter of one."
    : "";
}

export function endSteps({ ends, worked, swrBelow, study }: Findings): WorkingStep[] {
  const [, quarter, short] = ends;
  if (!quarter || !short) return [];
  const rated = worked.point.ratedResistance;
  const other = short.sections[0]!.impedance;
  const width = ({ width: w }: typeof quarter): string =>
    w === null ? "nowhere" : `${plainNumber(w.from / 1e6, 2)} to ${plainNumber(w.to / 1e6, 2)} MHz`;
  const at = study.bands.indexOf(worked.band);
  const plain = ends[0]?.rows[at];
  const broughtBy = ({ rows }: typeof quarter): string => {
    const row = rows[at];
    if (!row || !plain) return "";
    return ` With this antenna ${watts(row.watts)} arrive and the SWR seen is ${swrText(row.swrSeen)}; without them ${watts(plain.watts)} and ${swrText(plain.swrSeen)}.`;
  };
  const upTo = `SWR up to ${swrText(widthSwr(swrBelow))} into the rated load`;
  return [
    {
      text: `At both ends a quarter wave of ${plainNumber(quarter.sections[0]!.impedance, 1)} Ω (${plainNumber(quarter.sections[0]!.length, 2)} m) would join the two impedances: ${upTo}: ${width(quarter)} (looked for over an octave either way).${broughtBy(quarter)}`,
      formula: "Z_1 = \\sqrt{R Z_0}",
      substituted: `Z_1 = \\sqrt{${plainNumber(rated, 0)} \\times ${plainNumber(other, 1)}} = ${plainNumber(quarter.sections[0]!.impedance, 1)} \\; \\Omega`,
      source: "elementary; the section is taken with the loss and velocity of the line of the rated impedance",
      explains: [],
    },
    {
      text: `Or two short sections, seen from the set ${short.sections.map((s) => `${plainNumber(s.length, 2)} m of ${s.name}`).join(", then ")}, and the same mirrored at the antenna: no third impedance is needed. ${upTo}: ${width(short)}.${broughtBy(short)}`,
      formula: "\\tan^{2}\\theta = \\frac{1}{B + 1 + \\frac{1}{B}}, \\; B = \\frac{Z_0}{R}",
      substituted: `\\theta = ${plainNumber((shortSection(other / rated) * 180) / Math.PI, 1)}\\degree = ${fixedNumber(shortSection(other / rated) / 2 / Math.PI, 4)} \\lambda`,
      source: "derivation, exact without loss; the loss is in the watts of the table",
      explains: [],
    },
  ];
}

export function twinStep({ twins, ranked }: Findings): WorkingStep[] {
  const own = presentOf(ranked).candidate.entry.designation;
  const twin = [own, usualCoaxial].flatMap((name) => twins.find((t) => t.name === name) ?? [])[0] ?? twins[0];
  if (!twin) return [];
  return [
    {
      text: `Two equal coaxial lines side by side, shields joined at both ends, are a shielded pair: inductances add, capacitances halve, so that the impedance doubles and the loss of a metre stays. Two runs of ${twin.name} would be ${plainNumber(twin.impedance, 0)} Ω and take ${fixedNumber(twin.matched, 2)} dB matched, ${fixedNumber(twin.loss, 2)} dB at this load.`,
      formula: "Z_{\\mathrm{pair}} = 2 Z_0",
      substituted: `Z_{\\mathrm{pair}} = 2 \\times ${plainNumber(twin.impedance / 2, 1)} = ${plainNumber(twin.impedance, 1)} \\; \\Omega`,
      source: "two lines in series at both ends; the table has the other lines",
      explains: [],
    },
  ];
}

export const powerStep = (f: LineFacts): WorkingStep => ({
  text: `Twice the power from the set would bring ${fixedNumber(doubled, 1)} dB, half an S-unit, and nothing on receiving. The line in use keeps ${fixedNumber(f.present.loss, 1)} dB: that is the most any other one could bring on sending.`,
  formula: "10 \\log_{10} 2 = 3.01 \\; \\mathrm{dB}",
  source: "definition; one S-unit is 6 dB: IARU Region 1 Technical Recommendation R.1 (from memory)",
  explains: [],
});

export function arrangementStep({ arrangements, study }: Findings): WorkingStep[] {
  if (arrangements.length === 0) return [];
  const told = arrangements.map(
    ({ says, metres, watts: into }) =>
      `${says}, ${plainNumber(metres, 0)} m in all: ${into.map((w, i) => `${w === null ? "not worked out" : watts(w)}${study.bands.length > 1 ? ` on ${study.bands[i]!.name}` : ""}`).join(", ")}`,
  );
  return [
    {
      text: `One line to a switch, or a line for each antenna. Into the antenna with ${told.join("; with ")}. A line each leaves out the switch and what it takes.`,
      source: "the same path, worked out with each; prices are the file's, the switch left out",
      explains: [],
    },
  ];
}

/** Which impedance of pair to build: by the spacing of the same wires. */
export function spacingStep({ spacings, study }: Findings): WorkingStep[] {
  const [close, wide] = [spacings[0], spacings.at(-1)];
  if (!close || !wide || close === wide) return [];
  const told = (s: typeof close): string =>
    `${plainNumber(1000 * s.spacing, 0)} mm apart ${plainNumber(s.impedance, 0)} Ω, ${fixedNumber(s.loss, 2)} dB and ${plainNumber(s.highestVoltage, 0)} V rms at most`;
  const { band } = study.present.rows[worstOf(study.present)]!;
  return [
    {
      text: `The same wires built otherwise, on ${bandName(band.name, band.frequency.value)}: ${told(close)}; ${told(wide)}. The impedance need not be the antenna's: what counts is the loss with what stands on the line.`,
      formula:
        "Z_0 = \\frac{\\eta_0}{\\pi} \\ln\\left(\\frac{D}{d} + \\sqrt{\\left(\\frac{D}{d}\\right)^{2} - 1}\\right)",
      source: "telegrapher's equations with the pair's own constants at each spacing; the formula without loss, in air",
      explains: [],
    },
  ];
}
