/** The values of `nearby`. */
import type { Value } from "../../answer/answer";
import type { NearbyFacts, ThingFacts } from "../../words/nearbyFacts";
import { complexValue, scalarValue } from "../common/values";

const nothing = "does not apply to what stands near by";

export function nearbyValues(f: NearbyFacts, reference: number): Record<string, Value> {
  const top = f.things[0];
  const { asIs, withoutAll, dips } = f;
  const swrValue = (swr: number): Value => ({ ...scalarValue(swr, "1", "without end"), reference });
  return {
    swrSeen: swrValue(asIs.swr),
    swrWithout: swrValue(withoutAll.swr),
    feedPointImpedanceWithout: complexValue(withoutAll.feedPoint),
    radiatedPowerWithout: scalarValue(withoutAll.radiated, "W"),
    gainAtElevation: scalarValue(asIs.gain, "dBi"),
    gainAtElevationWithout: scalarValue(withoutAll.gain, "dBi"),
    maximumGainWithout: scalarValue(withoutAll.strongest.gain, "dBi"),
    elevationOfMaximumWithout: scalarValue(withoutAll.strongest.elevation, "deg"),
    azimuthOfMaximumWithout: scalarValue(withoutAll.strongest.azimuth, "deg"),
    ...dipValues(dips),
    ...(top ? thingValues(f, top) : {}),
    ...roofValues(f),
  };
}

function dipValues({ asIs, without }: NearbyFacts["dips"]): Record<string, Value> {
  const megahertz = (f: number | null | undefined): Value =>
    scalarValue(f == null ? null : f / 1e6, "MHz", "not within the span looked at");
  return {
    lowestSwrFrequency: megahertz(asIs?.lowestSwr),
    lowestSwrFrequencyWithout: megahertz(without?.lowestSwr),
    resonantFrequency: megahertz(asIs?.resonance),
    resonantFrequencyWithout: megahertz(without?.resonance),
  };
}

function thingValues(f: NearbyFacts, top: ThingFacts): Record<string, Value> {
  const hertz = top.resonance?.frequency ?? null;
  return {
    inducedCurrent: scalarValue(top.induced.current, "A"),
    inducedShare: scalarValue((100 * top.induced.current) / f.antennaCurrent, "%"),
    inducedShareOfFeedCurrent: scalarValue((100 * top.induced.current) / f.feedCurrent, "%"),
    inducedAt: scalarValue(top.induced.at, "m"),
    heatInThing: scalarValue(top.induced.heat, "W"),
    antennaCurrent: scalarValue(f.antennaCurrent, "A"),
    distanceOfThing: scalarValue(top.distance, "m"),
    clearDistance: scalarValue(top.clear?.distance ?? null, "m", "it still matters at one and a half waves"),
    resonanceOfThing: scalarValue(hertz === null ? null : hertz / 1e6, "MHz", nothing),
    ...Object.fromEntries(
      top.remedies.flatMap(({ kind, state }) => [
        [`swrWith${suffix[kind]}`, scalarValue(state.swr, "1", "without end")],
        [`radiatedPowerWith${suffix[kind]}`, scalarValue(state.radiated, "W")],
        [`gainAtElevationWith${suffix[kind]}`, scalarValue(state.gain, "dBi")],
      ]),
    ),
  };
}

const suffix = { insulator: "Insulator", choke: "Choke", open: "OpenEnd", shorted: "ShortedEnd" } as const;

/** What the file's roofs leave, all of them in the way. */
function roofValues({ roofs, asIs }: NearbyFacts): Record<string, Value> {
  if (roofs.length === 0) return {};
  const low = roofs.reduce((sum, r) => sum + r.low, 0);
  const high = roofs.reduce((sum, r) => sum + r.high, 0);
  const left = (dB: number): number => asIs.radiated * 10 ** (-dB / 10);
  const middle = (low + high) / 2;
  return {
    roofLoss: { ...scalarValue(middle, "dB"), low, high },
    radiatedPowerBehindRoof: { ...scalarValue(left(middle), "W"), low: left(high), high: left(low) },
  };
}
