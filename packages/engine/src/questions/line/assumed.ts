/** What `line` takes for granted of lines that are not there yet. */
import type { Answer } from "../../answer/answer";
import { lineConstants } from "../../lines/lineConstants";
import { decibels, plainNumber } from "../../quantity/format";
import type { Findings } from "./findings";
import { worstOf } from "./study";
import { conversionLoss } from "./swapped";

export function ownAssumptions(found: Findings): Answer["assumptions"] {
  const { bench, ranked } = found;
  const place = "path";
  const others = ranked.filter((one) => !one.candidate.present);
  const convertedHere = others.some((one) => one.candidate.standing === "converted");
  const { side, part } = bench.replaced;
  return [
    ...(others.length > 0
      ? [
          {
            name: "other lines",
            value: "new, dry, as long and as warm as the present one",
            reason: "they are not there yet",
            place,
          },
        ]
      : []),
    ...(convertedHere && side === "coaxial"
      ? [
          {
            name: "pair lines between coaxial joints",
            value: `two conversions: a transformer to the line's impedance before ${part.name} and one back behind it, ${decibels(conversionLoss.value)} each (${decibels(conversionLoss.low)} to ${decibels(conversionLoss.high)})`,
            reason: "a pair wants equal currents in its wires (common practice, no source)",
            place,
          },
        ]
      : []),
    ...(convertedHere && side === "balanced"
      ? [
          {
            name: "coaxial lines in the place of the pair",
            value: "fed unbalanced, with a choke at the antenna that lets nothing pass outside and takes no power",
            reason: "a coaxial line on a balanced antenna carries current on its outside without one",
            place,
          },
        ]
      : []),
    ...notesOfLines(found),
    ...takenAround(found),
  ];
}

/** Where the constants of the lines that are named are weaker than they look. */
function notesOfLines({ proposal, cheap, study, bench }: Findings): Answer["assumptions"] {
  const { frequency } = study.bands[worstOf(study.present)]!;
  return [...new Set([proposal, cheap])].flatMap((one) => {
    if (!one || one.candidate.present) return [];
    const { designation, model } = one.candidate.entry;
    const { notes } = lineConstants(model, frequency.value, {
      temperature: bench.replaced.part.temperature?.value ?? null,
    });
    return notes.map((value) => ({ name: designation, value, reason: "nothing more is known of it", place: "path" }));
  });
}

/** What the file does not say of air, place and receiver. */
function takenAround({ study }: Findings): Answer["assumptions"] {
  const { air, lies, place, receiver, taken } = study.around;
  const all = {
    air: [
      "temperature of the air",
      `${plainNumber(air.temperature - 273.15, 0)} °C`,
      "not given: that of most published power curves; write it under site",
      "site.airTemperature",
    ],
    lies: ["how the line lies", lies, "not given; write lies at the line", "path"],
    noise: [
      "kind of place by its radio noise",
      place,
      "not given: the middle of four kinds (ITU-R P.372); write noise under site",
      "site.noise",
    ],
    receiver: [
      "noise figure of the receiver",
      `${plainNumber(receiver, 0)} dB`,
      "not given: between a good and a poor one (common practice, no source); write noise figure under transmitter",
      "transmitter.noiseFigure",
    ],
  } as const;
  return taken.map((name) => {
    const [what, value, reason, at] = all[name];
    return { name: what, value, reason, place: at };
  });
}
