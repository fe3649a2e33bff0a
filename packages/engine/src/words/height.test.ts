/** Stations as facts, and the sentences of `height` for them. Invented. */
import { describe, expect, it } from "vitest";
import { type HeightFact, type HeightFacts, heightAdvice, heightHeadline, heightVerdict } from "./height";
import { heightMistakenIdea } from "./heightIdea";
import { sentence } from "./phrases";

const at = (height: number, more: Partial<HeightFact> = {}): HeightFact => ({
  height,
  radiatedPower: 60,
  powerIntoAntenna: 90,
  swrAtTransmitter: 1.5,
  gainLow: 2,
  gainHigh: 6,
  maximumGain: 6,
  elevationOfMaximum: 70,
  heatInSoil: 28,
  ...more,
});
const height: HeightFacts = {
  present: at(10),
  pathLoss: 0.5,
  share: 0.67,
  verdict: "workable",
  lowestSwr: at(10),
  higher: at(13, { gainLow: 3.6 }),
  most: at(20, { radiatedPower: 75, heatInSoil: 13 }),
  split: null,
  zenithIsNull: false,
  aim: { elevation: 20, azimuth: 0 },
  wave: 42,
  delivered: 100,
};
const heightOf = (changes: Partial<HeightFacts>): HeightFacts => ({ ...height, ...changes });

describe("height in words", () => {
  it.each([
    [{}, "Go higher for far stations: 60 W leave at 10 m."],
    [{ higher: at(13, { gainLow: 3.6, gainHigh: 7 }) }, "Go higher: 60 W leave at 10 m."],
    [{ higher: at(13, { gainLow: 2.5 }) }, "Higher helps far stations a little: 60 W leave at 10 m."],
    [{ higher: at(13) }, "Keep it at 10 m: 60 W leave for the sky."],
  ] as const)("says what to do first: %o", (changes, headline) => {
    const said = sentence(heightHeadline(heightOf(changes)));
    expect(said).toBe(headline);
    expect(said.split(" ").length).toBeLessThanOrEqual(12);
  });

  it("counts the path: a gain that a worse match takes back is no gain", () => {
    // 1.6 dB more gain, and 10 log10(90/62) = 1.62 dB less power into the antenna.
    const facts = heightOf({ higher: at(13, { gainLow: 3.6, powerIntoAntenna: 62 }) });
    expect(heightAdvice(facts)).toBe("More height brings next to nothing here; leave it.");
  });

  it("tells far and near stations apart", () => {
    expect(heightAdvice(heightOf({ higher: at(13, { gainLow: 3.6, gainHigh: 4.8 }) }))).toBe(
      "Raise it by 3 m for 1.6 dB more 20° up, a quarter of one S-unit; straight up, for near stations, that is 1.2 dB less.",
    );
  });

  it("looks at the strongest direction of a high antenna, not at one angle between its lobes", () => {
    const facts = heightOf({ wave: 2, higher: at(10.4, { gainLow: 11 }) });
    expect(heightAdvice(facts)).toMatch(
      /^More height brings next to nothing here; leave it\. Ask “Where does my signal go\?” .*how far over the horizon/,
    );
    expect(heightMistakenIdea(facts).refutation).toContain("in its strongest direction by less than 0.1 dB");
  });

  it("does not say keep it where a much greater height clearly sends more", () => {
    const low = { verdict: "trouble" as const, higher: at(10.4, { gainLow: at(10).gainLow }) };
    expect(heightAdvice(heightOf({ ...low, most: at(30, { radiatedPower: 2 * at(10).radiatedPower }) }))).toMatch(
      /bring nothing; at 30 m .* would leave\.$/,
    );
    expect(heightAdvice(heightOf({ ...low, most: at(30, { radiatedPower: 1.1 * at(10).radiatedPower }) }))).toMatch(
      /^Height alone mends little/,
    );
  });

  it("begins every sentence of the verdict with a capital", () => {
    for (const changes of [
      {},
      { present: at(10, { heatInSoil: 0, powerIntoAntenna: 100 }) },
      { present: at(10, { heatInSoil: 0 }) },
    ])
      expect(sentence(heightVerdict(heightOf(changes)))).toMatch(/^[A-Z]/);
  });

  it.each([
    [
      { verdict: "trouble", higher: at(13, { gainLow: 6, gainHigh: 9 }) },
      "the lower the better",
      "3 m more bring 3.0 dB straight up",
    ],
    [{ verdict: "trouble", higher: at(13) }, "A good match makes up", "SWR 1.5 at the transmitter, and still 28.0 W"],
    [
      { lowestSwr: at(6, { swrAtTransmitter: 1.1, radiatedPower: 45 }) },
      "lowest SWR",
      "45.0 W leave for the sky; at 10 m",
    ],
    [{ lowestSwr: at(0.5, { swrAtTransmitter: 1.1, radiatedPower: 5 }) }, "Below half a wave", "0.24 of a wave"],
    [{ present: at(10, { gainHigh: -5 }), higher: at(13, { gainHigh: -5, gainLow: 2.2 }) }, "Every metre", "by 0.2 dB"],
  ] as const)("refutes what this station refutes: %o", (changes, idea, refutation) => {
    const told = heightMistakenIdea(heightOf(changes));
    expect(told.idea).toContain(idea);
    expect(told.refutation).toContain(refutation);
  });
});
