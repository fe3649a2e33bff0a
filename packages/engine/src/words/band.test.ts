/** Stations as facts, and the sentences of `band` for them. Invented. */
import { describe, expect, it } from "vitest";
import { type BandFacts, bandAdvice, bandHeadline, bandVerdict } from "./band";
import { bandMistakenIdea } from "./bandIdea";
import { sentence } from "./phrases";

const band: BandFacts = {
  from: 7e6,
  to: 7.2e6,
  limit: 2,
  worst: 2.3,
  best: 1.14,
  share: 0.8,
  verdict: "workable",
  lowestAtEdge: false,
  lowestSwr: 1.1,
  lowestSwrFrequency: 7.19e6,
  resonantFrequency: null,
  usableWidth: 374e3,
  usableFrom: 7.04e6,
  usableTo: 7.414e6,
  usableOpen: false,
  ends: { frequency: 7e6, atAntenna: 2.3, atTransmitter: 2.3 },
  onlyLoss: true,
  onlyLines: true,
  matchedLoss: 0.3,
  flattered: false,
  rated: 50,
  lineLossAtBest: 0.3,
  lineLossAtWorst: 0.4,
  trimmed: "wire",
  outsideShift: null,
  tuner: null,
};
const bandOf = (changes: Partial<BandFacts>): BandFacts => ({ ...band, ...changes });

describe("band in words", () => {
  it("keeps the SWR of a headline to one decimal, and the tuner's to twelve words", () => {
    expect(sentence(bandHeadline(band))).toBe("The transmitter sees SWR 1.1 to 2.3 from 7.0 to 7.2 MHz.");
    expect(sentence(bandHeadline(bandOf({ best: 1.02, worst: 1.04 })))).toBe(
      "The transmitter sees SWR 1.0 from 7.0 to 7.2 MHz.",
    );
    const tuner = { name: "tuner", frequency: 7.1e6, impedance: "20 + j187 Ω", lineBehind: true };
    expect(sentence(bandHeadline(bandOf({ tuner, best: 26, worst: 47 })))).toBe(
      "Without the tuner: SWR 26 to 47 from 7.0 to 7.2 MHz.",
    );
    expect(sentence(bandVerdict(bandOf({ tuner })))).toMatch(
      /^At 7\.1 MHz the tuner has to match 20 \+ j187 Ω; whether/,
    );
  });

  it("blames no line where the tuner comes last", () => {
    const tuner = { name: "mast tuner", frequency: 7.1e6, impedance: "18 − j719 Ω", lineBehind: false };
    expect(bandAdvice(bandOf({ tuner }))).toContain("a wire somewhat longer or shorter");
    expect(bandAdvice(bandOf({ tuner: { ...tuner, lineBehind: true } }))).toContain(
      "a line some metres longer or shorter",
    );
  });

  it.each([
    [{}, "SWR is below 2 from 7.04 MHz up, over 374 kHz."],
    [{ share: 1, usableFrom: 6.9e6 }, "SWR stays below 2 over the whole band, 374 kHz in all."],
    [{ share: 0, usableFrom: 7.21e6 }, "SWR is below 2 only above the band, from 7.21 MHz up, over 374 kHz."],
    [
      { share: 0, usableFrom: 6.5e6, usableTo: 6.9e6 },
      "SWR is below 2 only below the band, up to 6.9 MHz, over 374 kHz.",
    ],
    [{ share: 0.2, usableFrom: 6.5e6, usableTo: 6.9e6 }, "SWR is below 2 over 20 % of the band."],
    [{ usableTo: 7.18e6 }, "SWR is below 2 from 7.04 to 7.18 MHz only, over 374 kHz."],
    [{ usableWidth: 0, lowestSwr: 3.1 }, "SWR is nowhere below 2; it is lowest, 3.1, at 7.19 MHz."],
  ] as const)("says where the usable stretch lies: %o", (changes, start) => {
    expect(sentence(bandVerdict(bandOf(changes)))).toContain(start);
  });

  it.each([
    [{}, "A little longer wire moves the curve down to the middle of the band."],
    [{ trimmed: "vertical" }, "A little longer vertical moves"],
    [
      { lowestSwrFrequency: 7.02e6 },
      "A little shorter wire moves the curve up to the middle of the band; fold back before cutting.",
    ],
    [
      { lowestSwrFrequency: 7.02e6, trimmed: "driven element" },
      "A little shorter driven element moves the curve up to the middle of the band.",
    ],
    [{ lowestSwrFrequency: 7.1e6 }, "covers the edges; at SWR 2.3 the line takes 0.4 dB."],
    [{ lowestSwr: 5.9, lowestAtEdge: true }, "A little longer wire moves the curve down towards the band."],
    [{ lowestSwr: 3.1 }, "Trimming alone does not bring it below 2: match it, or change height or line."],
    [{ onlyLoss: false, trimmed: "antenna" }, "Change little and measure again"],
    [{ onlyLoss: false }, "Ask “How long should it be, and how much do I cut?” for how much."],
  ] as const)("advises what can be done: %o", (changes, says) => {
    expect(bandAdvice(bandOf(changes))).toContain(says);
  });

  it.each([
    [{ onlyLoss: false, ends: { frequency: 7e6, atAntenna: 84, atTransmitter: 2.3 } }, "84, both on 50 Ω"],
    [{ ends: { frequency: 7e6, atAntenna: 5.7, atTransmitter: 4.7 } }, "the line's own 0.3 dB make"],
    [
      { onlyLines: false, ends: { frequency: 7e6, atAntenna: 5.7, atTransmitter: 4.7 } },
      "what line and parts take between makes",
    ],
    [{ resonantFrequency: 7.3e6 }, "lowest at 7.19 MHz and the antenna resonant at 7.3 MHz"],
    [{}, "the line takes 0.3 dB at the one and 0.4 dB at the other"],
    [{ lineLossAtBest: 0, lineLossAtWorst: 0 }, "no line lies between"],
    [{ lineLossAtWorst: 6 }, "Where the shack shows 2.3 the line takes 6.0 dB"],
  ] as const)("refutes with a number of this station: %o", (changes, says) => {
    expect(bandMistakenIdea(bandOf(changes)).refutation).toContain(says);
  });
});
