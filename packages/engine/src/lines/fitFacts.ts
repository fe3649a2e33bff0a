/** Velocity factor, capacitance and direct-current resistance of a sheet against its impedance, its losses and nature. */
import { speedOfLight } from "../numerics/vacuum";
import { significantNumber, withPrefix } from "../quantity/format";
import { type Numbered, type SheetFacts, type SheetFinding, slack } from "./fitFinding";

export function velocity({ velocityFactor }: SheetFacts): SheetFinding[] {
  if (velocityFactor === undefined) return [];
  const finding = (says: string, suggestion: string | null): SheetFinding[] => [
    { about: "velocity factor", point: null, says, suggestion },
  ];
  const text = significantNumber(velocityFactor, 3);
  if (!(velocityFactor > 0)) return finding(`A velocity factor of ${text} is none: waves move.`, null);
  if (velocityFactor > 20 && velocityFactor <= 100) {
    return finding(
      `A velocity factor of ${text} is above 1, and nothing passes light.`,
      `Written in per cent? That is ${significantNumber(velocityFactor / 100, 3)}.`,
    );
  }
  if (velocityFactor > 1)
    return finding(
      `A velocity factor of ${text} is above 1, and nothing passes light.`,
      "Air-spaced lines reach 0.95 to 0.99.",
    );
  if (velocityFactor < 0.3) {
    return finding(
      `A velocity factor of ${text} asks for a permittivity of ${significantNumber(velocityFactor ** -2, 2)}; insulation of lines has 1 to 4.`,
      "Solid polyethylene gives 0.66, foam 0.8 to 0.88, air 0.95 and more.",
    );
  }
  return [];
}

/** Impedance (ohm) that a velocity factor and a capacitance (F/m) imply: 1/(v C). In US units 101670/(VP% C), C in pF/ft. */
export const impliedImpedance = (velocityFactor: number, capacitance: number): number =>
  1 / (velocityFactor * speedOfLight * capacitance);

/** Root of the sum of squares of what sheets grant: 4 % of impedance, 4 % of capacitance, 0.005 of the velocity factor. */
const capacitanceSlack = 0.06;

export function capacity({ impedance, velocityFactor, capacitance }: SheetFacts): SheetFinding[] {
  if (capacitance === undefined) return [];
  const picofarads = `${significantNumber(1e12 * capacitance, 3)} pF/m`;
  const finding = (says: string, suggestion: string | null): SheetFinding[] => [
    { about: "capacitance", point: null, says, suggestion },
  ];
  if (!(capacitance > 0)) return finding(`A capacitance of ${picofarads} is none.`, null);
  if (impedance === undefined || velocityFactor === undefined || !(velocityFactor > 0 && velocityFactor <= 1))
    return [];
  const implied = impliedImpedance(velocityFactor, capacitance);
  if (Math.abs(implied / impedance - 1) <= capacitanceSlack) return [];
  const feet = 1 / 0.3048;
  const slip = [feet, 1 / feet].find((factor) => Math.abs(implied / factor / impedance - 1) <= capacitanceSlack);
  return finding(
    `${picofarads} and a velocity factor of ${significantNumber(velocityFactor, 3)} give ${significantNumber(implied, 3)} Ω, not ${significantNumber(impedance, 3)} Ω.`,
    slip === undefined
      ? "One of the three is off."
      : `It looks like a capacitance ${slip > 1 ? "meant per foot and read per metre" : "meant per metre and read per foot"}: ${significantNumber(1e12 * capacitance * slip, 3)} pF/m.`,
  );
}

export function resistance(points: readonly Numbered[], { impedance, loopResistance }: SheetFacts): SheetFinding[] {
  const first = points[0];
  if (loopResistance === undefined || impedance === undefined || first === undefined) return [];
  const most = 2 * impedance * first.decibelsPerMetre * (Math.LN10 / 20) * (1 + slack);
  if (loopResistance <= most && loopResistance > 0) return [];
  return [
    {
      about: "loop resistance",
      point: null,
      says:
        loopResistance > 0
          ? `${withPrefix(loopResistance, "Ω/m", 3)} at direct current is more than the conductors show at ${withPrefix(first.frequency, "Hz")}, at most ${withPrefix(most, "Ω/m", 3)} from the loss there: skin effect only adds.`
          : "A loop resistance of nothing is that of no metal.",
      suggestion:
        loopResistance > 0 ? "See whether it is per kilometre or per 1000 ft, and of both conductors together." : null,
    },
  ];
}
