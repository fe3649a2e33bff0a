/** How the limits were worked out, with the numbers put in. */
import type { WorkingStep } from "../../answer/answer";
import { constantsOf } from "../../chain/edges";
import { fixedNumber, plainNumber, significantNumber, withPrefix } from "../../quantity/format";
import { decidingLimit, lineVoltageLimits } from "../../stress/lineVoltage";
import { greatestAlong } from "../../stress/standingWave";
import { heatAt } from "../../stress/steadyHeat";
import { celsius, minutes, roughWatts, type StressFacts, volts } from "../../words/stress";
import { lineTimeConstant } from "./course";
import { hottestLine, partName } from "./facts";
import { marginOf } from "./limitFact";
import { waveOf } from "./lineHeat";
import type { LineStudy, Study } from "./study";
import type { Way } from "./ways";

export function limitWorking(study: Study, facts: StressFacts, ways: readonly Way[]): WorkingStep[] {
  const line = hottestLine(study);
  return [
    ...study.lines.slice(0, 3).flatMap((one) => voltageSteps(study, one)),
    ...(line ? heatSteps(study, line, ways) : []),
    ...wireStep(study),
    marginStep(study, facts),
  ];
}

function voltageSteps(study: Study, { part }: LineStudy): WorkingStep[] {
  const {
    worked: { point },
    conditions,
  } = study;
  const wave = waveOf(point, part);
  const line = part.edge.part;
  if (!wave || line?.kind !== "line") return [];
  const highest = greatestAlong(wave, (s) => s.voltage);
  const peak = Math.sqrt(2 * highest.value);
  const limits = lineVoltageLimits(line.line, conditions.air);
  const deciding = decidingLimit(limits);
  const name = partName(study, part.edge.name);
  const told = limits
    .map((one) => `${volts(one.peak)} peak (${volts(one.low)} to ${volts(one.high)}): ${one.says}`)
    .join("; ");
  return [
    {
      text: `Largest voltage on ${name}, ${plainNumber(part.length - highest.distance, 1)} m from its end towards the transmitter, from the waves towards (a) and from (b) the antenna at its far end. ${told === "" ? "Nothing is known of what it stands." : `What it stands: ${told}.`}`,
      formula: "V_{\\mathrm{peak}} = \\sqrt{2} \\, |a e^{\\gamma x} + b e^{-\\gamma x}|",
      substituted: `|a| = ${significantNumber(Math.sqrt(wave.forward), 3)}\\,\\mathrm{V}, \\; |b| = ${significantNumber(Math.sqrt(wave.backward), 3)}\\,\\mathrm{V}, \\; x = ${fixedNumber(highest.distance, 2)}\\,\\mathrm{m}, \\; V_{\\mathrm{peak}} = ${significantNumber(peak, 3)}\\,\\mathrm{V}`,
      result: { value: peak, unit: "V" },
      source: `telegrapher's equations, exact${deciding ? `; the limit that counts: ${deciding.source}` : ""}`,
      explains: ["greatestPeakVoltage", "leastVoltageMargin"],
    },
  ];
}

function heatSteps(study: Study, line: LineStudy, ways: readonly Way[]): WorkingStep[] {
  const { heat, part } = line;
  if (!heat || part.edge.part?.kind !== "line") return [];
  const { point } = study.worked;
  const made = heatAt(heat.thermal, heat.drive, heat.temperatures);
  const z0 = constantsOf(part.edge.part, point.frequency).z0.re;
  const name = partName(study, part.edge.name);
  const rise = heat.temperatures.inner - heat.temperatures.surface;
  const w = (x: number): string => significantNumber(x, 3);
  return [
    {
      text: `Heat of ${name} at its hottest place, mean while sending: ${w(made.inner)} W/m in the inner conductor, ${w(made.insulation)} W/m in the insulation, ${w(made.outer)} W/m in the outer. There the mean current squared is ${w(heat.drive.current)} A²; a matched line of ${plainNumber(z0, 0)} Ω would have ${w((study.conditions.duty * part.powerIn) / z0)} A².${smoothing(heat.spread, heat.swing)}`,
      formula: "q = I^{2} R + V^{2} G",
      substituted: `q = ${w(heat.drive.current)} \\times ${w(heat.thermal.inner + heat.thermal.outer)} \\cdot \\sqrt{1 + ${heat.thermal.coefficient} \\, \\Delta T} + ${w(heat.drive.voltage)} \\times ${w(heat.thermal.conductance)} = ${w(heat.watts)}\\,\\mathrm{W/m}`,
      result: { value: heat.watts, unit: "W/m" },
      source:
        "the line's own constants at 20 °C, shared between its conductors as its build has it; IEC 60028 for warm copper",
      explains: ["hotSpotHeat", "hotSpotAt", "spreadLength"],
    },
    {
      text: `How it leaves: insulation ${w(heat.thermal.insulation)} K m/W, jacket ${w(heat.thermal.jacket)} K m/W, then from a surface of ${w(1000 * heat.thermal.surface.diameter)} mm, ${heat.lies}, to ${celsius(heat.ambient - 273.15)}. At the hottest moment the conductor is at ${celsius(heat.temperatures.inner - 273.15)}, the surface at ${celsius(heat.temperatures.surface - 273.15)}.`,
      formula: "T_{i} - T_{s} = (W_{i} + W_{d}/2) T_{1} + (W_{i} + W_{d} + W_{o}) T_{3}",
      substituted: `T_{i} - T_{s} = ${fixedNumber(rise, 1)}\\,\\mathrm{K}`,
      result: { value: heat.temperatures.inner - 273.15, unit: "°C" },
      source:
        "thermal circuit of IEC 60287-1-1, nothing of heat stored in the steady part; free convection: Churchill and Chu 1975 (from memory); radiation: Stefan and Boltzmann; soil: IEC 60287-2-1",
      explains: ["hottestConductor", "jacketTemperature", "leastHeatMargin", "temperatureIfMatched"],
    },
    {
      text: `In time: about ${w(heat.thermal.capacities.reduce((a, b) => a + b, 0))} J/(m K) must warm, so the conductor makes two thirds of its way in ${minutes(lineTimeConstant(heat))}. Other ways to lie: ${ways.map((way) => `${way.lies} ${celsius(way.temperature)}, ${limitSays(point.powerFromTransmitter * way.times)}`).join("; ")}.`,
      source:
        "three thermal masses, backward Euler; heat capacities of IEC 60853 (from memory); conduit and drum: our own models, on the warm side",
      explains: [
        "timeConstant",
        "temperatureInAir",
        "temperatureInSun",
        "temperatureBuried",
        "temperatureInConduit",
        "temperatureOnDrum",
      ],
    },
  ];
}

/** W from which on no power used comes near. */
const farAbove = 1e6;

const limitSays = (watts: number): string =>
  watts < farAbove ? `its limit at ${roughWatts(watts)}` : "its limit far above any power used";

const smoothing = (spread: number, swing: number): string =>
  swing < 0.98 && swing > 0
    ? ` Heat spreads over ${withPrefix(spread, "m", 2)} along the metal, which leaves ${plainNumber(100 * swing, 0)} % of the standing wave's swing.`
    : "";

function wireStep({ facts }: Study): WorkingStep[] {
  const wires = facts.find((fact) => fact.part === "");
  if (!wires) return [];
  return [
    {
      text: `The antenna's wires: charge per metre from how fast the current falls along them, and from it the field at the metal; such wire glows from ${fixedNumber(wires.limit, 0)} kV/cm.`,
      formula:
        "E = \\frac{\\lambda}{2 \\pi \\epsilon_{0} a}, \\; \\lambda = \\frac{1}{\\omega} \\left|\\frac{dI}{dx}\\right|",
      substituted: `E = ${significantNumber(wires.value, 3)}\\,\\mathrm{kV/cm}`,
      result: { value: wires.value, unit: "kV/cm" },
      source: "currents of the moment method; Peek 1929. A cut end has more in its last few diameters",
      explains: ["fieldAtWires"],
    },
  ];
}

function marginStep({ facts: [first] }: Study, f: StressFacts): WorkingStep {
  const dB = marginOf(first.times);
  return {
    text: "Margin of each part: power at its first limit over the power now. Voltage goes with the root of the power, heat nearly with the power itself. The least of all margins:",
    formula: "M = 10 \\log_{10} \\frac{P_{\\mathrm{limit}}}{P}",
    substituted: `M = 10 \\log_{10} \\frac{${significantNumber(f.failing, 3)}}{${significantNumber(f.power, 3)}} = ${fixedNumber(dB, 1)}\\,\\mathrm{dB}`,
    result: { value: dB, unit: "dB" },
    source: "definition",
    explains: ["leastMargin", "powerAtFirstLimit"],
  };
}
