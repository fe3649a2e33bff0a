/** Rules of thumb beside what is worked out here. */
import type { RuleOfThumb } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import { magnitude } from "../../numerics/complex";
import { plainNumber, swrText } from "../../quantity/format";
import { connectorClass } from "../../stress/connectors";
import { greatestAlong } from "../../stress/standingWave";
import { celsius, roughWatts, volts } from "../../words/stress";
import { hottestLine, swrOnLine } from "./facts";
import { lineHeat, waveOf } from "./lineHeat";
import type { LineStudy, Study } from "./study";

export function limitRules(study: Study): RuleOfThumb[] {
  const line = hottestLine(study) ?? study.lines[0];
  if (!line) return connectorRule(study);
  return [
    ...voltageRule(study, line),
    ...publishedRules(study, line),
    ...swrRule(study, line),
    ...airRule(study, line),
    ...connectorRule(study),
    carrierRule(study),
  ];
}

function voltageRule(study: Study, { part }: LineStudy): RuleOfThumb[] {
  const { point } = study.worked;
  const wave = waveOf(point, part);
  const ratio = swrOnLine(study, part);
  if (!wave || ratio === null || part.edge.part?.kind !== "line" || !Number.isFinite(ratio)) return [];
  const z0 = constantsOf(part.edge.part, point.frequency).z0.re;
  return [
    {
      rule: `highest voltage √(2 P Z0 SWR) on ${part.edge.name}`,
      ruleValue: `${volts(Math.sqrt(2 * part.powerOut * z0 * ratio))} peak`,
      computed: `${volts(Math.sqrt(2 * greatestAlong(wave, (s) => s.voltage).value))} peak`,
      holds: "where the line is at least a quarter wave long and takes little itself",
      source: "standing-wave algebra; handbooks",
    },
  ];
}

/** A published power curve is read at the working frequency on logarithmic scales; not beyond its ends. */
function publishedRules(study: Study, { part, heat }: LineStudy): RuleOfThumb[] {
  const { point } = study.worked;
  const line = part.edge.part;
  if (line?.kind !== "line" || heat === null) return [];
  const points = line.line.ratings?.publishedPower ?? [];
  const at = curveAt(points, point.frequency);
  if (at === null) return [];
  const mean = steadyMatched(study, part);
  if (mean === null) return [];
  return [
    {
      rule: `published mean power of ${line.line.designation}, ${points[0]!.says}`,
      ruleValue: roughWatts(at),
      computed: `${roughWatts(mean)} matched, steady, in this air`,
      holds: "for its own conditions: air temperature, height, and how the line lies",
      source: "the line's published curve (see its sources); shown, not used",
    },
  ];
}

function curveAt(
  points: readonly { readonly frequency: number; readonly power: number }[],
  frequency: number,
): number | null {
  const next = points.findIndex((point) => point.frequency >= frequency);
  if (next < 1) return points[next]?.frequency === frequency ? points[next].power : null;
  const [a, b] = [points[next - 1]!, points[next]!];
  const share = Math.log(frequency / a.frequency) / Math.log(b.frequency / a.frequency);
  return a.power * (b.power / a.power) ** share;
}

/** W into a matched line that bring it to its limit in steady sending; null without a build. */
export function steadyMatched({ worked: { point }, conditions }: Study, part: LineStudy["part"]): number | null {
  const line = part.edge.part;
  if (line?.kind !== "line") return null;
  const { z0 } = constantsOf(line, point.frequency);
  const current = { re: 1, im: 0 };
  const voltage = { re: z0.re, im: z0.im };
  const joints = point.joints.map((joint) => (joint.name === part.to ? { ...joint, current, voltage } : joint));
  const heat = lineHeat({ ...point, joints }, part, { ...conditions, duty: 1, sending: { kind: "endless" } });
  if (!heat || !Number.isFinite(heat.times)) return null;
  const { gamma } = constantsOf(line, point.frequency);
  return heat.times * z0.re * Math.exp(2 * gamma.re * part.length);
}

function swrRule(study: Study, { part, heat }: LineStudy): RuleOfThumb[] {
  const ratio = swrOnLine(study, part);
  const matched = steadyMatched(study, part);
  if (heat === null || ratio === null || ratio < 1.2 || matched === null || !Number.isFinite(ratio)) return [];
  const steady = lineHeat(study.worked.point, part, { ...study.conditions, duty: 1, sending: { kind: "endless" } });
  if (!steady || !Number.isFinite(steady.times)) return [];
  return [
    {
      rule: `a rating divided by the SWR on the line (${swrText(ratio)})`,
      ruleValue: roughWatts(matched / ratio),
      computed: `${roughWatts(steady.times * part.powerIn)} steady into ${part.edge.name}`,
      holds: "where a current maximum lies on the line, insulation loss is small and nothing else cools it",
      source: "standing-wave algebra; handbooks",
    },
  ];
}

/** Also where the file names none: every coaxial joint has one. */
function connectorRule({ worked: { point } }: Study): RuleOfThumb[] {
  const peaks = point.joints
    .filter((joint) => joint.side === "coaxial")
    .map((joint) => ({ name: joint.name, peak: Math.SQRT2 * magnitude(joint.voltage) }));
  const highest = peaks.sort((a, b) => b.peak - a.peak)[0];
  const uhf = connectorClass("UHF");
  if (!highest || !uhf) return [];
  return [
    {
      rule: "a connector of the UHF class stands so much",
      ruleValue: `${volts(uhf.peakVoltage)} peak`,
      computed: `${volts(highest.peak)} peak ${highest.name === "transmitter" ? "at the transmitter" : highest.name.startsWith("after") ? highest.name : `at the ${highest.name}`}, the highest of the coaxial joints`,
      holds: "dry, clean and well soldered, at sea level",
      source: uhf.source,
    },
  ];
}

/** Power in proportion to what is left below the limit, from 40 °C on, against 10 K cooler air. */
function airRule({ worked: { point }, conditions }: Study, { part, heat }: LineStudy): RuleOfThumb[] {
  if (heat === null || heat.lies === "buried" || !Number.isFinite(heat.times)) return [];
  const cooler = conditions.air.temperature - 10;
  const other = lineHeat(point, part, { ...conditions, air: { ...conditions.air, temperature: cooler } });
  const limit = heat.thermal.greatestTemperature;
  if (!other || limit <= conditions.air.temperature) return [];
  const more = (times: number): string => `${plainNumber(100 * (times - 1), 0)} % more power`;
  return [
    {
      rule: `power in proportion to the rise that is left, air at ${celsius(cooler - 273.15)} for ${celsius(conditions.air.temperature - 273.15)}`,
      ruleValue: more((limit - cooler) / (limit - conditions.air.temperature)),
      computed: more(other.times / heat.times),
      holds: "in the shade, as surfaces shed heat a little faster than in proportion",
      source: "common practice, no source",
    },
  ];
}

function carrierRule({ worked: { point } }: Study): RuleOfThumb {
  const power = point.powerFromTransmitter;
  return {
    rule: "amplitude modulation needs four times the carrier",
    ruleValue: `${roughWatts(power)} of peak envelope power`,
    computed: `${roughWatts(power / 4)} of carrier, ${roughWatts((power / 4) * 1.5)} mean with a full tone`,
    holds: "with full modulation: twice the voltage at the crest",
    source: "(1 + m)² and 1 + m²/2, elementary",
  };
}
