/** The mistaken idea that `watts` corrects: the one that this station's own numbers refute. English. */
import { plainNumber, swrText } from "../quantity/format";
import { said, sentence } from "./phrases";
import { asSUnits } from "./sUnits";
import { precisely, turnsDown, type WattsFacts } from "./watts";

export interface Idea {
  readonly idea: string;
  readonly refutation: string;
}

/** Up to here an SWR counts as low with people: our rule. */
const lowSwr = 2;
/** Mismatch heat below this share of the power is told as nothing. */
const nothing = 0.0005;

export function wattsMistakenIdea(f: WattsFacts): Idea {
  if (f.tuner) return tunerIdea(f, f.tuner.behind);
  if (turnsDown(f)) return foldbackIdea(f);
  const claimed = ((f.swrAtTransmitter - 1) / (f.swrAtTransmitter + 1)) ** 2 * f.delivered;
  const heat = f.delivered - f.radiated;
  // The line flatters: its mismatch takes more than the reading in the shack would let anyone fear.
  if (f.addedByMismatch > claimed && (f.addedByMismatch > 0.3 * f.heatInLines || f.swrAtTransmitter >= lowSwr))
    return flatteredIdea(f);
  if (f.swrAtTransmitter < lowSwr && heat > 0.5 * f.delivered) return lowSwrIdea(f);
  if (f.swrAtTransmitter < 1.2) return heat > 0.2 * f.delivered ? lowSwrIdea(f) : everyWattIdea(f);
  return reflectedIdea(f, claimed);
}

function tunerIdea(f: WattsFacts, behind: NonNullable<WattsFacts["tuner"]>["behind"]): Idea {
  if (behind && behind.heat < 0.1 * f.delivered && behind.swr > 3) {
    return {
      idea: "“A high SWR on the line eats my power.”",
      refutation: `SWR is ${swrText(behind.swr)} on the line behind the tuner, and it takes only ${precisely(f, behind.heat)} of ${precisely(f, f.delivered)}.`,
    };
  }
  const idea = "“With the tuner the SWR is 1, so nothing is lost.”";
  if (behind && behind.heat >= 0.05 * f.delivered) {
    const share =
      behind.added > 0.1 * behind.heat ? `, ${precisely(f, behind.added)} of it because of the mismatch there` : "";
    return {
      idea,
      refutation: `The tuner matches the transmitter, not the line: behind it the line still takes ${precisely(f, behind.heat)}${share}.`,
    };
  }
  return {
    idea,
    refutation: `The tuner mends the match and nothing else: ${precisely(f, f.delivered - f.radiated)} of ${precisely(f, f.delivered)} still turn into heat, and what the tuner itself takes is not counted yet.`,
  };
}

const thrownBack = (f: WattsFacts): string => {
  const rho2 = ((f.swrAtTransmitter - 1) / (f.swrAtTransmitter + 1)) ** 2;
  return `“SWR ${swrText(f.swrAtTransmitter)} throws ${plainNumber(100 * rho2, 0)} % of my power back, and it is lost.”`;
};

function foldbackIdea(f: WattsFacts): Idea {
  return {
    idea: thrownBack(f),
    refutation: `What comes back is sent out again. What costs here is the transmitter: at this SWR it gives only ${precisely(f, f.delivered)} of ${precisely(f, f.rated)}; the mismatch adds ${precisely(f, Math.max(0, f.addedByMismatch))} of heat in the line.`,
  };
}

function flatteredIdea(f: WattsFacts): Idea {
  const flatters = f.swrAtFeedPoint > f.swrAtTransmitter;
  const start = flatters ? `At the feed point it is ${swrText(f.swrAtFeedPoint)}. ` : "";
  const end = flatters ? ", and that heat is what makes the meter look so good" : "";
  return {
    idea: `“SWR ${swrText(f.swrAtTransmitter)} in the shack: the mismatch cannot cost much.”`,
    refutation: `${start}The mismatch costs ${precisely(f, f.addedByMismatch)}: the line takes ${precisely(f, f.heatInLines)} of ${precisely(f, f.delivered)}${end}.`,
  };
}

function lowSwrIdea(f: WattsFacts): Idea {
  return {
    idea: "“My SWR is low, so my power gets out.”",
    refutation: `SWR ${swrText(f.swrAtTransmitter)} here, and still ${precisely(f, f.delivered - f.radiated)} of ${precisely(f, f.delivered)} turn into heat. SWR says nothing about where the watts go.`,
  };
}

/** For the station that is fine as it is. */
function everyWattIdea(f: WattsFacts): Idea {
  return {
    idea: "“Better cable and plugs would make me louder.”",
    refutation: `All the heat from transmitter to sky is ${precisely(f, f.delivered - f.radiated)} here. Without any of it the signal would rise by ${asSUnits(f.totalLoss).replace(/^next to nothing on the air$/, "less than a tenth of one S-unit")}.`,
  };
}

/** From this share on, parts other than lines may add heat by mismatch that is not told apart. */
const partsMatter = 0.05;
const heatInParts = (f: WattsFacts): number =>
  f.takers.filter((t) => t.kind === "part").reduce((sum, t) => sum + t.watts, 0);

function reflectedIdea(f: WattsFacts, claimed: number): Idea {
  const refutation = [said("What comes back is sent out again. ")];
  if (f.heatInLines < nothing * f.delivered)
    refutation.push(said(`Here no line takes anything: not one of these ${precisely(f, claimed)} turns into heat.`));
  else if (f.addedByMismatch < nothing * f.delivered)
    refutation.push(said(`Here the mismatch adds nothing to the ${precisely(f, f.heatInLines)} that warm the line.`));
  else
    refutation.push(
      said(
        `${heatInParts(f) > partsMatter * f.delivered ? `In the line the mismatch costs ${precisely(f, f.addedByMismatch)}` : `Here the mismatch costs ${precisely(f, f.addedByMismatch)}, not ${precisely(f, claimed)}`}: the line takes ${precisely(f, f.heatInLines)}, and would take ${precisely(f, f.heatInLines - f.addedByMismatch)} at SWR 1.`,
      ),
    );
  return { idea: thrownBack(f), refutation: sentence(refutation) };
}
