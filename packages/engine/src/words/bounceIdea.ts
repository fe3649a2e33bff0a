/** What `bounce` corrects, what it takes for granted, and what it leaves out. English. */
import type { RuleOfThumb } from "../answer/answer";
import { metres, plainNumber, significantNumber, swrText, wholeWatts, withPrefix } from "../quantity/format";
import { type BounceFacts, loadSays, nanoseconds, toldWatts } from "./bounce";

export function bounceIdea(f: BounceFacts): { idea: string; refutation: string } {
  if (f.signal !== "carrier") {
    return {
      idea: "“The ohms on a cable's jacket are a resistor inside it.”",
      refutation: `For ${nanoseconds(2 * f.delay)} this line draws the current of ${plainNumber(f.surgeImpedance, 0)} Ω, and that power travels along it instead of turning into heat; then the echo says what really stands at the end.`,
    };
  }
  const idea = "“The reflected wave burns up in the transmitter.”";
  if (f.loadKind === "open" || f.loadKind === "shorted") {
    return {
      idea,
      refutation: `All of the wave comes back here, and still only ${wholeWatts(f.powerIn)} flow into the line: volts and amperes at its start fall out of step, so that the source gives less.`,
    };
  }
  const { into } = toldWatts(f);
  return {
    idea,
    refutation:
      `Over each full swing nothing flows back into the transmitter: ${into} flow into this line on balance, though ${wholeWatts(f.reflectedAtLoad)} stand for the wave that returns. ` +
      `${sourcesSay(f)}. The watts in the end are the same.`,
  };
}

/** "1 with a matched source, 5 with a low or a high one". */
function sourcesSay({ sources }: BounceFacts): string {
  const counts = [...new Set(sources.map(({ echoes }) => echoes))];
  const told = counts.map((count) => {
    const names = sources
      .filter(({ echoes }) => echoes === count)
      .map(({ name }) => (name === "asked" ? "as asked" : name));
    return `${count ?? "over 200"} with a source that is ${names.join(" or ")}`;
  });
  return `Echoes that count: ${told.join(", ")}`;
}

export const bounceRules = (f: BounceFacts): RuleOfThumb[] =>
  f.signal !== "carrier" || !Number.isFinite(f.swrAtLoad)
    ? []
    : [
        {
          rule: "forward less reverse is what passes",
          ruleValue: wholeWatts(f.forwardAtLoad - f.reflectedAtLoad),
          computed: wholeWatts(f.powerOut),
          holds:
            "exactly on a line whose impedance is real; on a real line the two waves do not simply add, and differ by a little",
          source: "common practice, no source",
        },
        {
          rule: `SWR ${swrText(f.swrAtLoad)} sends ${plainNumber(100 * f.reflectionAtLoad ** 2, 0)} % back, “and it is gone”`,
          ruleValue: wholeWatts(f.reflectionAtLoad ** 2 * f.powerIn),
          computed: `${wholeWatts(Math.max(0, f.heat - f.matchedHeat))} more heat in the line`,
          holds: "never: what comes back is sent out again, or makes the source give less",
          source: "common practice, no source",
        },
      ];

export function bounceAssumptions(f: BounceFacts) {
  const assumed = [];
  if (f.sourceAssumed) {
    assumed.push({
      name: "impedance that feeds the line",
      value: `${significantNumber(f.source, 3)} Ω`,
      reason:
        f.signal === "carrier"
          ? "no transmitter's is known; it decides how the line fills and nothing of what stands in the end"
          : "a pulse generator is made to match its line",
      place: "",
    });
  }
  if (f.quality !== null && f.signal === "carrier") {
    assumed.push({
      name: "load while it fills",
      value: `coil, capacitor and resistor, Q ${significantNumber(f.quality, 2)}`,
      reason: `fitted beside the frequency, within ${significantNumber(100 * (f.fitDeviation ?? 0), 2)} %; exact at the frequency`,
      place: "antennas",
    });
  }
  if (f.lengthTried) {
    assumed.push({
      name: `length of ${f.line}`,
      value: metres(f.length),
      reason: "asked for; the transmitter stands at the start of this line",
      place: "path",
    });
  }
  if (f.loadKind === "open" || f.loadKind === "shorted" || f.loadKind === "tried") {
    assumed.push({
      name: "load",
      value: loadSays(f),
      reason: "asked for; the transmitter stands at the start of this line",
      place: "path",
    });
  }
  return assumed;
}

export function bounceCautions(f: BounceFacts): string[] {
  if (f.signal !== "carrier") return [];
  const open = f.loadKind === "open" || f.loadKind === "shorted";
  return [
    ...filmCautions(f),
    "Forward and reflected watts are names for two waves; on a line with a complex impedance they do not simply add, and only their balance heats or radiates.",
    ...(open
      ? [
          "An open or shorted line may stand at several times its working voltage, and the transmitter may be damaged: this is a thought experiment.",
        ]
      : []),
  ];
}

/** Percent of the load beside its frequency, and of the film's last period, from which on it is said. */
const roughLoad = 15;
const roughEnd = 5;

function filmCautions({ fitDeviation, settling }: BounceFacts): string[] {
  const rough = 100 * (fitDeviation ?? 0);
  const off = 100 * Math.abs(settling?.deviation ?? 0);
  return [
    ...(rough > roughLoad
      ? [
          `Beside the frequency the load changes otherwise than one coil and one capacitor can follow (${plainNumber(rough, 0)} % off): how it fills is a sketch, what stands in the end is not.`,
        ]
      : []),
    ...(off > roughEnd
      ? [`The film ends before all is settled: its last period is ${plainNumber(off, 0)} % off what stands in the end.`]
      : []),
  ];
}

export function bounceNotCovered(f: BounceFacts): string[] {
  return [
    "What the transmitter itself does while the line fills: its protection, its output filter and its supply are not in it.",
    "Ranges of the file: every value is taken at its middle here.",
    ...(f.loadKind === "rest"
      ? ["Echoes inside the rest of the path: it is one coil, one capacitor and one resistor here."]
      : []),
    ...(f.signal !== "carrier" && (f.loadKind === "antenna" || f.loadKind === "rest")
      ? [
          `The antenna's higher resonances: at frequencies far from ${withPrefix(f.frequency, "Hz", 3)} its stand-in is not the antenna.`,
        ]
      : []),
    ...(f.shows === "sizes"
      ? ["Each swing of the wave: the line is many waves long, so the film shows how large they swing."]
      : []),
  ];
}
