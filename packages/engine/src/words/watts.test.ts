/** Stations as facts, and the sentences of `watts` for them: grammar, and refutations that refute. Invented. */
import { describe, expect, it } from "vitest";
import { sentence } from "./phrases";
import { type Taker, type WattsFacts, wattsAdvice, wattsHeadline, wattsVerdict } from "./watts";
import { wattsMistakenIdea } from "./wattsIdea";

const taker = (name: string, watts: number, more: Partial<Taker> = {}): Taker => ({
  kind: "part",
  name,
  several: false,
  watts,
  rounded: watts,
  value: "heatInPath",
  ...more,
});
const soil = (watts: number) => taker("the soil", watts, { kind: "soil" });
const line = (watts: number) => taker("the line", watts, { kind: "line" });

const fine: WattsFacts = {
  rated: 100,
  delivered: 100,
  radiated: 70,
  radiatedRounded: 70,
  takers: [soil(18), line(12)],
  totalLoss: 1.55,
  verdict: "good",
  swrAtTransmitter: 1.8,
  swrAtFeedPoint: 1.9,
  addedByMismatch: 1.5,
  heatInLines: 12,
  returnSide: "itself",
  loads: "loads",
  tuner: null,
};
const stationOf = (changes: Partial<WattsFacts>): WattsFacts => ({ ...fine, ...changes });

describe("watts in words", () => {
  const turnedDown = stationOf({ delivered: 66, radiated: 44, radiatedRounded: 44, totalLoss: 3.6 });
  it.each([
    ["as it is", fine, "Of 100 W, 70 W leave for the sky."],
    ["turned down", turnedDown, "The transmitter gives only 66 W; 44 W leave for the sky."],
    [
      "of milliwatts",
      stationOf({ rated: 0.2, delivered: 0.2, radiatedRounded: 0.073 }),
      "Of 200 mW, 73 mW leave for the sky.",
    ],
    ["of one watt", stationOf({ radiatedRounded: 1 }), "Of 100 W, 1 W leaves for the sky."],
  ])("tells a station %s", (_, facts, headline) => {
    expect(sentence(wattsHeadline(facts))).toBe(headline);
  });

  it.each([
    ["one taker", stationOf({ takers: [soil(30)] }), "The soil takes 30 W: a quarter of one S-unit."],
    [
      "a first taker in the plural",
      stationOf({ takers: [taker("the lines", 20, { kind: "line", several: true }), soil(10)] }),
      "The lines take 20 W, the soil 10 W: together",
    ],
    [
      "a counted part",
      stationOf({ takers: [soil(18), taker("connector 2", 3)] }),
      "The soil takes 18 W, connector 2 with 3 W: together",
    ],
    [
      "what the transmitter holds back",
      turnedDown,
      "The transmitter holds back 34 W, the soil takes 18 W, the line 12 W",
    ],
    ["nothing", stationOf({ takers: [], totalLoss: 0.1 }), "Nearly all of it leaves."],
  ])("names %s", (_, facts, start) => {
    expect(sentence(wattsVerdict(facts))).toContain(start);
  });

  it("sends nobody to a question that refuses, and claims nothing that was not worked out", () => {
    const wasteful = { totalLoss: 5, takers: [soil(60), line(8)] };
    expect(wattsAdvice(stationOf(wasteful))).toBe("Ask “How high should it hang?” next: the soil takes most.");
    expect(wattsAdvice(stationOf({ ...wasteful, returnSide: "nearby" }))).toMatch(/ask again\.$/);
    expect(wattsAdvice(stationOf({ ...wasteful, returnSide: "radials" }))).toContain("“How many radials");
    expect(wattsAdvice(stationOf({ ...wasteful, returnSide: "line" }))).toContain("“Does the outside of the line");
    const warm = {
      kind: "loads" as const,
      name: "the wires and coils",
      several: true,
      watts: 60,
      value: "heatInWires",
    };
    expect(wattsAdvice(stationOf({ totalLoss: 5, takers: [{ ...warm, rounded: 60 }], loads: "coils" }))).toBe(
      "Look at the coils first: they take most.",
    );
    // 80 of 100 W in the line: without it five times the power would leave, 7 dB.
    const lossy = stationOf({ totalLoss: 8, takers: [line(80)], heatInLines: 80, addedByMismatch: 5 });
    expect(wattsAdvice(lossy)).toBe("A shorter line or one of lower loss helps most: at best one S-unit.");
  });
});

describe("the idea that watts corrects", () => {
  const tuner = { name: "tuner", impedance: "41 + j385 Ω", behind: { heat: 25, added: 23, swr: 12 } };
  const farBelow = { radiated: 20, takers: [soil(70), line(8)] };
  it.each([
    ["a fair station", fine, "SWR 1.8 throws 8 %", "costs 1.5 W, not 8.2 W"],
    [
      "a low SWR and little that leaves",
      stationOf({ ...farBelow, swrAtTransmitter: 1.3 }),
      "SWR is low",
      "80.0 W of 100.0 W",
    ],
    [
      "a good station",
      stationOf({ swrAtTransmitter: 1.05, radiated: 93, totalLoss: 0.32 }),
      "would make me louder",
      "7.0 W here. Without any of it the signal would rise by less than a tenth of one S-unit",
    ],
    [
      "no line",
      stationOf({ heatInLines: 0, addedByMismatch: 0 }),
      "throws 8 %",
      "not one of these 8.2 W turns into heat",
    ],
    [
      "a line that flatters",
      stationOf({ swrAtTransmitter: 3.8, swrAtFeedPoint: 115, addedByMismatch: 57, heatInLines: 97, radiated: 2 }),
      "the mismatch cannot cost much",
      "At the feed point it is 115. The mismatch costs 57.0 W",
    ],
    [
      "a transmitter that turns down",
      stationOf({ delivered: 66, swrAtTransmitter: 2.6 }),
      "throws 20 %",
      "gives only 66.0 W",
    ],
    ["a tuner before a bad line", stationOf({ tuner }), "With the tuner the SWR is 1", "takes 25.0 W, 23.0 W of it"],
    [
      "a tuner before a good pair",
      stationOf({ tuner: { ...tuner, behind: { heat: 2, added: 1.5, swr: 12 } } }),
      "A high SWR on the line",
      "it takes only 2.0 W",
    ],
    [
      "a tuner that comes last",
      stationOf({ tuner: { ...tuner, behind: null } }),
      "With the tuner",
      "30.0 W of 100.0 W still turn",
    ],
  ])("%s", (_, facts, idea, refutation) => {
    const told = wattsMistakenIdea(facts);
    expect(told.idea).toContain(idea);
    expect(told.refutation).toContain(refutation);
  });

  it("never sets a mismatch that costs more against a smaller claim", () => {
    for (const swr of [1.1, 1.5, 2, 3, 6])
      for (const added of [0, 1, 5, 20, 60]) {
        const facts = stationOf({
          swrAtTransmitter: swr,
          addedByMismatch: added,
          heatInLines: added + 10,
          radiated: 25,
        });
        const claimed = 100 * ((swr - 1) / (swr + 1)) ** 2;
        if (added > claimed) expect(wattsMistakenIdea(facts).idea).not.toContain("throws");
      }
  });
});
