/** Small loops of a station set at the frequency of the band: there resonant and matched. */
import type { AntennaBuild } from "../antenna/antennaStructure";
import { type LoopSetting, tuneLoop } from "../antenna/loopTuning";
import type { Station } from "../station/station";
import { type AntennaRefused, closingsOf, noSingleState, type PortState } from "./closeAntenna";
import { type Closing, closePorts } from "./closePorts";

/** Frequency (Hz) at which the loops are set for work at `frequency`: that of the band it lies in, else of the nearest one. */
export function settingFrequency(station: Station, frequency: number): number {
  const away = ({ sweep }: Station["bands"][number]): number =>
    Math.max(0, Math.log(sweep.from / frequency), Math.log(frequency / sweep.to));
  const [nearest] = [...station.bands].sort((a, b) => away(a) - away(b));
  return nearest?.frequency.value ?? frequency;
}

/** Settings in the order of the structure's loops, from the state of all ports at the setting frequency. */
export function loopSettings(build: AntennaBuild, state: PortState): LoopSetting[] | AntennaRefused {
  const { feeds, gaps = [] } = build.structure;
  const closings: Closing[] = [...feeds.map(() => "open" as const), ...closingsOf(build, state, [])];
  const settings: LoopSetting[] = [];
  for (const loop of build.loops) {
    const own = [loop.feed, feeds.length + loop.gap];
    const order = [...own, ...closings.map((_, port) => port).filter((port) => !own.includes(port))];
    const seen = closePorts(
      order.map((i) => order.map((k) => state.admittance[i]![k]!)),
      order.slice(own.length).map((port) => closings[port]!),
    );
    if (!seen) return { refused: noSingleState };
    const setting = tuneLoop({ ...loop, feed: 0, gap: 1 }, seen.admittance, state.frequency);
    if ("refused" in setting) return setting;
    settings.push(setting);
  }
  return gaps.length < settings.length ? [] : settings;
}
