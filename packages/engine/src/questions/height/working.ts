/** How the heights were worked out, and the rule of thumb beside them. */
import type { RuleOfThumb, WorkingStep } from "../../answer/answer";
import { decibels, fixedNumber, metres, plainNumber, significantNumber, watts } from "../../quantity/format";
import type { HeightFacts } from "../../words/height";
import type { Study } from "./study";

export function heightRules(f: HeightFacts): RuleOfThumb[] {
  const quarter = f.wave / 4;
  // Whatever sends nothing straight up is no level wire.
  if (f.present.height < quarter || f.zenithIsNull) return [];
  const lobe = (Math.asin(f.wave / (4 * f.present.height)) * 180) / Math.PI;
  return [
    {
      rule: "lowest lobe of a level wire: sine of the angle is a quarter wave over the height",
      ruleValue: `${plainNumber(lobe, 0)}°`,
      computed: `strongest ${plainNumber(f.present.elevationOfMaximum, 0)}° up`,
      holds:
        "for level wires over a perfect conductor, from a quarter wave up; real soil and the wire's own pattern pull it down",
      source: "image theory; handbooks",
    },
  ];
}

export function heightWorking(f: HeightFacts, study: Study, now: number): WorkingStep[] {
  const bands = study.effects.map((e) => e.input.name).join(" and ");
  return [
    {
      text: `The antenna was solved anew over the soil at ${study.points.length} heights, line and path unchanged; the wires move as one, the feed point now at ${metres(now)}, ${fixedNumber(now / f.wave, 2)} of a wave.${bands === "" ? "" : ` The bands show ${bands} moved to the ends of their range.`}`,
      source: "moment method and Sommerfeld integrals",
      explains: ["presentHeight", "feedPointImpedance", "swrAtTransmitter"],
    },
    {
      text: "Gain is what arrives at a far place against an antenna that sends the same power evenly to all sides; losses in wires and soil are in it:",
      formula: "G = \\frac{4 \\pi U}{P_{\\mathrm{in}}}",
      substituted: `G(${plainNumber(f.aim.elevation, 0)}^\\circ) = ${fixedNumber(f.present.gainLow, 1)} \\; \\mathrm{dBi}, \\; G(90^\\circ) = ${fixedNumber(f.present.gainHigh, 1)} \\; \\mathrm{dBi}`,
      source: "IEEE Std 145",
      explains: ["gainAtElevation", "gainStraightUp", "maximumGain", "elevationOfMaximum", "signalOfMoreHeight"],
    },
    {
      text: `At ${metres(f.present.height)} the soil takes ${watts(f.present.heatInSoil)}, and ${watts(f.present.radiatedPower)} leave. Most would leave at ${metres(f.most.height)}: ${watts(f.most.radiatedPower)}, a difference of ${decibels(10 * Math.log10(f.most.radiatedPower / f.present.radiatedPower))}.`,
      source: "power flow through the surface, and far field integrated over the sky: each on its own",
      explains: ["radiatedPower", "heatInSoil", "lowestSwrHeight", "radiatedPowerAtLowestSwr"],
    },
    {
      text: `${
        f.split === null
          ? "The pattern does not split between the heights shown."
          : `From ${significantNumber(f.split, 3)} m on, straight up is more than 1 dB below the strongest direction: there the pattern splits.`
      } ${lobesSay(f, study)}`,
      source: "our mark: 1 dB; every lobe and null by golden section on the pattern, not read off a grid",
      explains: ["splitHeight"],
    },
  ];
}

/** What stands above the horizon at the present height. */
function lobesSay(f: HeightFacts, { presentLobes }: Study): string {
  const degrees = (kind: "lobe" | "minimum") =>
    presentLobes.extremes.filter((e) => e.kind === kind).map((e) => `${plainNumber((e.angle * 180) / Math.PI, 0)}°`);
  const [lobes, minima] = [degrees("lobe"), degrees("minimum")];
  const where = `Towards ${plainNumber(f.aim.azimuth, 0)}° from north`;
  if (lobes.length === 0) return `${where} the pattern is level at ${metres(f.present.height)}.`;
  const between = minima.length === 0 ? "" : `, weakest at ${listText(minima)}`;
  return `${where}, at ${metres(f.present.height)}, ${lobes.length === 1 ? "one lobe stands" : `${lobes.length} lobes stand`} ${listText(lobes)} up${between}.`;
}

const listText = (items: readonly string[]): string =>
  items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} and ${items.at(-1)}`;
