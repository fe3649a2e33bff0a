import { describe, expect, it } from "vitest";
import type { Answer, Refusal } from "../../answer/answer";
import type { CoaxialLine, DataSheetLine, LineEntry, ParallelWireLine } from "../../lines/lineModel";
import { between, exactly, within } from "../../quantity/quantity";
import { coaxialBuild, copperMetal } from "../../testing/coaxialBuild";
import { linePart, plainStation } from "../../testing/plainStation";
import type { Parameters } from "../common/question";
import { build } from "./run";

/** Dimensions of MIL-DTL-17 sheet M17/74, from memory; smooth tube of half a millimetre for the braid. */
const coaxial = coaxialBuild({
  inner: 1.13e-3,
  outer: 3.62e-3,
  strands: 0.939,
  innerFactor: 1.25,
  outerFactor: 2,
  wall: 0.5e-3,
});
/** Attenuation of the same sheet and handbook tables, from memory: dB/100 m. */
const points = [
  [10, 2.03],
  [50, 4.92],
  [100, 6.89],
  [400, 15.42],
  [1000, 26.25],
] as const;
const sheet = (times = 1): DataSheetLine => ({
  kind: "data sheet",
  side: "coaxial",
  impedance: within(50, 2),
  velocityFactor: within(0.659, 0.005),
  loss: points.map(([megahertz, loss]) => ({
    frequency: megahertz * 1e6,
    decibelsPerMetre: exactly((times * loss) / 100),
  })),
});
const entry = (more: Partial<LineEntry> = {}): LineEntry => ({
  designation: "thick line",
  model: sheet(),
  build: coaxial,
  sources: [],
  ...more,
});
const pair: ParallelWireLine = {
  kind: "parallel-wire",
  wire: {
    form: "solid",
    layers: [{ metal: copperMetal, outerRadius: 1e-3 }],
    holeRadius: 0,
    effectiveRadiusRatio: 1,
    resistanceFactor: 1,
  },
  spacing: between(0.14, 0.16),
  dielectric: { name: "air", permittivity: 1, lossTangent: 0 },
};

const context = {
  program: "test",
  catalogue: "test",
  fileHash: "0",
  lines: [entry({ designation: "catalogue line" })],
};
const asked = (line: LineEntry, parameters: Parameters = {}): Answer | Refusal => {
  const station = {
    ...plainStation(),
    path: { parts: [linePart("garden line", 28, line)], end: { kind: "feed", feed: "antenna" } as const },
  };
  const run = build.run(station, parameters, context);
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
  }
};
const answered = (line: LineEntry, parameters: Parameters = {}): Answer => {
  const answer = asked(line, parameters);
  if ("refused" in answer) throw new Error(answer.refused.why);
  return answer;
};
const refused = (line: LineEntry, parameters: Parameters): string => {
  const answer = asked(line, parameters);
  if (!("refused" in answer)) throw new Error("expected a refusal");
  return `${answer.refused.why} ${answer.refused.wouldMakeItAnswerable}`;
};
const value = (answer: Answer, name: string): number => {
  const found = answer.values[name];
  if (!found || !("value" in found) || found.value === null) throw new Error(`no value "${name}"`);
  return found.value;
};
const column = (answer: Answer, name: string) => answer.tables[0]!.columns[name]!.values;

describe("build", () => {
  it("tells watts first, and meets the sheet's points where it is asked at one", () => {
    const answer = answered(entry(), { frequency: 100e6 });
    // The sheet's 6.89 dB/100 m within the fit's own deviation.
    expect(Math.abs(value(answer, "attenuation") / 6.89 - 1)).toBeLessThan(value(answer, "fitDeviation") / 100 + 1e-9);
    expect(value(answer, "powerThrough")).toBeCloseTo(
      value(answer, "powerInto") * 10 ** (-0.028 * value(answer, "attenuation")),
      9,
    );
    expect(answer.headline).toMatch(/^Of \d+ W, [\d.]+ W pass 28 m of thick line\.$/);
  });

  it("tells both routes where they part below the sheet's points, in twelve words", () => {
    const thin: CoaxialLine = { ...coaxial, inner: { ...coaxial.inner, resistanceFactor: 4 } };
    const answer = answered(entry({ build: thin, designation: "75-ohm cable of the third kind" }), {
      frequency: 3.6e6,
    });
    expect(answer.headline).toMatch(/^[\d.]+ to [\d.]+ of \d+ W pass 28 m of this line\.$/);
    expect(answer.next).toMatch(/^Measure a length at 3\.6 MHz: the sheet begins at 10 MHz/);
    expect(answered(entry({ build: thin }), { frequency: 100e6 }).headline).toMatch(/^Of \d+ W, /);
  });

  it("splits the build's attenuation into parts that add up", () => {
    const answer = answered(entry());
    const sum = ["attenuationInInner", "attenuationInOuter", "attenuationInDielectric"].reduce(
      (s, n) => s + value(answer, n),
      0,
    );
    expect(sum / value(answer, "attenuationByBuild")).toBeCloseTo(1, 9);
    expect(value(answer, "buildAgainstSheet")).toBeCloseTo(
      100 * (value(answer, "attenuationByBuild") / value(answer, "attenuation") - 1),
      6,
    );
  });

  it("ends at the exact cut-off, and refuses above it", () => {
    const answer = answered(entry());
    // D/d = 3.412: between the exact roots for 2.30 (1.0208 of the estimate) and 3.59 (1.0285).
    const ratio = value(answer, "cutOff") / value(answer, "cutOffEstimate");
    expect(ratio).toBeGreaterThan(1.0208);
    expect(ratio).toBeLessThan(1.0286);
    expect(column(answer, "frequency").at(-1)).toBeCloseTo(1e3 * value(answer, "cutOff"), 6);
    expect(refused(entry(), { frequency: 20e9 })).toMatch(
      /second mode \(TE11\).*at 20 GHz.*A frequency below 13\.9|second mode.*a frequency below 13\.9/i,
    );
  });

  it("lets the impedance rise and turn capacitive towards low frequency where the build is known", () => {
    const answer = answered(entry());
    expect(column(answer, "characteristicResistanceByBuild")[0]).toBeGreaterThan(60);
    expect(column(answer, "characteristicReactanceByBuild")[0]).toBeLessThan(-20);
    // The sheet says nothing of resistance so far below its points.
    expect(column(answer, "characteristicResistance")[0]).toBeNull();
    expect(answer.mistakenIdea?.idea).toMatch(/ohm-meter/);
  });

  it("takes the sheet's own direct-current resistance, and then goes as low", () => {
    const answer = answered(entry({ build: null, ratings: { loopResistance: exactly(0.01) } }), { frequency: 7.1e6 });
    expect(value(answer, "loopResistanceOfLength")).toBeCloseTo(0.28, 12);
    expect(column(answer, "frequency")[0]).toBeCloseTo(1e-3, 12);
    expect(column(answer, "characteristicReactance")[0]).toBeLessThan(-20);
    expect(answered(entry({ build: null })).values.loopResistance).toMatchObject({ value: null });
  });

  it("carries what is uncertain to the numbers", () => {
    const answer = answered(entry());
    const velocity = answer.values.velocityFactor as { value: number; low: number; high: number };
    expect((velocity.high - velocity.low) / 2).toBeCloseTo(0.005, 3);
    const wires = answered(entry({ model: pair, build: pair }));
    // (eta0/pi) acosh(D/d) at 140 and 160 mm differ by 119.92 ln(160/140) = 16.0 ohm.
    const resistance = wires.values.characteristicResistance as { low: number; high: number };
    expect(resistance.high - resistance.low).toBeCloseTo(16.0, 1);
  });

  it("tells a sheet's slip of units, and what to do", () => {
    const answer = answered(entry({ model: sheet(100) }));
    expect(answer.next).toMatch(/meant per 100 m and read per metre/);
    expect(answer.cautions.join(" ")).toMatch(/smooth solid copper of this size/);
  });

  it("finds a line by its part, by the catalogue, and says which there are", () => {
    expect(answered(entry(), { line: "Garden  line" }).parameters).toMatchObject({
      designation: "thick line",
      length: 28,
    });
    const named = answered(entry(), { line: "catalogue line", length: 5 });
    expect(named.parameters).toMatchObject({ designation: "catalogue line", length: 5 });
    expect(refused(entry(), { line: "no such thing" })).toMatch(
      /no line is called "no such thing".*garden line.*catalogue line/i,
    );
  });

  it("names lines of the catalogue that measure alike, for a line known by its sizes", () => {
    const answer = answered(entry({ designation: "a reel", model: coaxial }));
    expect(answer.tables.find(({ name }) => name === "similarLines")?.labels).toEqual(["catalogue line"]);
    expect(answer.next).toMatch(/good to about 15 %.*catalogue line/);
    expect(answered(entry()).tables.map(({ name }) => name)).not.toContain("similarLines");
  });

  it("takes the velocity factor from a measured dip, with what tape, plug and analyser leave", () => {
    const answer = answered(entry(), { length: 7.62, dip: 6.48e6 });
    // 4 x 7.62 m x 6.48 MHz / c = 0.658824; sqrt((10^2 + 20^2) mm)/7.62 m = 0.29 %, and 0.1 % of the analyser.
    expect(answer.values.measuredVelocityFactor).toMatchObject({ value: expect.closeTo(0.658824, 5) });
    const { low, high } = answer.values.measuredVelocityFactor as { low: number; high: number };
    expect((high - low) / 2 / 0.658824).toBeCloseTo(0.0031, 4);
    expect(answer.mistakenIdea?.idea).toMatch(/printed velocity factor/);
    expect(answer.verdictPhrases.map((p) => p.text).join("")).toMatch(/they agree/);
    const off = answered(entry(), { length: 7.62, dip: 7.9e6 });
    expect(off.verdictPhrases.map((p) => p.text).join("")).toMatch(/do not agree/);
    expect(refused(entry(), { length: 7.62, dip: 19.4e6 })).toMatch(/faster than light.*below 9\.85 MHz/);
  });

  it("cautions where the insulation is hotter than it bears", () => {
    const rated = entry({ ratings: { temperature: exactly(353.15) } });
    expect(answered(rated, { temperature: 393.15 }).cautions.join(" ")).toMatch(
      /At 120 °C the insulation is above the 80 °C/,
    );
    expect(answered(rated, { temperature: 333.15 }).cautions.join(" ")).not.toMatch(/bears for long/);
  });

  it("takes more when warm", () => {
    const [cold, warm] = [293.15, 333.15].map((temperature) =>
      value(answered(entry(), { temperature }), "attenuation"),
    );
    // Copper: 0.393 % a kelvin, of which the root, at 40 K and with nearly all loss in conductors.
    expect(warm! / cold!).toBeGreaterThan(1.06);
    expect(warm! / cold!).toBeLessThan(1.08);
  });
});
