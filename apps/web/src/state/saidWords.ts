/** Words people use for what they noticed, by question: the find field looks for them besides the question's own words. */
import type { QuestionListing } from "../worker/messages";

export const saidWords: Readonly<Record<string, string>> = {
  watts:
    "power loss losses lost heat weak signal nobody hears answers decibel dB efficiency soil cable warm coil S-unit where",
  band: "SWR high standing wave band edge width bandwidth resonance resonant meter shack curve flat narrow reflected 50 ohm match sweep",
  height:
    "high low height mast tree tower raise lower hang put up dipole take-off angle near far DX local soil ground wavelength",
  trim: "trim cut length long short resonance resonant too low too high prune fold wire leg end insulation formula measured dip lowest SWR X = 0",
  sky: "where signal goes nobody hears me pattern lobe null beam direction azimuth elevation take-off angle far near DX gain dBi front back polarisation hop layer E F ionosphere skip",
  line: "feed line feeder cable coax coaxial RG-58 RG-213 75 ohm TV television cheap thin thick ladder window open wire pair balanced hardline corrugated loss price weight buy replace bend length half wave transformer",
  outside:
    "outside shield sheath current common mode choke balun ferrite bead counterpoise end-fed radiates RF shack bites burns microphone computer resets interference noise pick-up coax coaxial earth",
  radials:
    "radial radials ground plane mat screen counterpoise vertical earth return wires number length raised elevated laid soil efficiency SWR fell lower 120 quarter wave",
  nearby:
    "gutter mast tower guy metal roof panel railing fence other antenna second dipole near by close distance away detuned induced resonance insulator parasitic neighbour house wires",
  build:
    "line cable coax coaxial constants impedance ohm ohm-meter velocity factor VF attenuation loss data sheet dimensions dielectric capacitance inductance unknown reel marking cut-off frequency skin shield",
  limits:
    "arc arcing spark flash over overheat hot heat melt burn smell power voltage rating limit high kilowatt connector insulation breakdown corona glow tuner snaps SWR creeps up duty derate altitude coax balun core ferrite",
  why: "why 50 ohm 75 ohm impedance coaxial standard compromise attenuation voltage power diameter dielectric cable television",
  listen:
    "hear hearing receive receiving receiver reception noise noisy only noise floor S-meter SNR signal weak preamplifier amplifier mast deaf local interference place city quiet loss cable matter",
  bounce:
    "bounce echo echoes reflection reflected wave comes back standing wave pulse step impulse animation film time delay open short tester ohms burns transmitter steady",
};

/** Questions that share a word with what was said, best first; none of its words known: none; nothing said: all. */
export function findQuestions(questions: readonly QuestionListing[], said: string): readonly QuestionListing[] {
  const wanted = wordsOf(said).filter((word) => !fillWords.has(word));
  if (wanted.length === 0) return questions;
  return questions
    .map((question) => ({ question, score: wanted.filter((start) => hasWord(question, start)).length }))
    .filter(({ score }) => score > 0)
    .sort((a, b) => b.score - a.score)
    .map(({ question }) => question);
}

const fillWords = new Set(
  "a an and at be do does in is it me my of on or so that the this to too was what with".split(" "),
);

const wordsOf = (text: string): string[] => text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

function hasWord(question: QuestionListing, start: string): boolean {
  const text = [question.id, question.asked, question.group, question.about, saidWords[question.id] ?? ""].join(" ");
  return wordsOf(text).some((word) => word.startsWith(start));
}
