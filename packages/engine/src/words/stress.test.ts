import { describe, expect, it } from "vitest";
import { sentence } from "./phrases";
import {
  celsius,
  minutes,
  placeOn,
  roughWatts,
  type StressFacts,
  stressHeadline,
  stressVerdict,
  volts,
} from "./stress";
import { stressAdvice, stressCautions } from "./stressAdvice";
import { stressMistakenIdea } from "./stressIdea";

const facts = (changes: Partial<StressFacts> = {}, first: Partial<StressFacts["first"]> = {}): StressFacts => ({
  power: 400,
  duty: 0.4,
  failing: 212,
  failingLow: 150,
  failingHigh: 300,
  verdict: "trouble",
  endless: true,
  hot: null,
  swrOnLine: null,
  peak: 800,
  added: null,
  ...changes,
  first: {
    name: "the line",
    of: "temperature",
    happens: "its conductor passes 80 °C",
    value: 109,
    limit: 80,
    unit: "°C",
    at: 0.7,
    length: 20,
    source: "",
    ...first,
  },
});

describe("the words of limits", () => {
  it("round powers to what is known of them, and nearer where the limit is close", () => {
    expect(roughWatts(1234)).toBe("1.2 kW");
    expect(roughWatts(449)).toBe("450 W");
    expect(sentence(stressHeadline(facts()))).toBe("400 W is too much: above 210 W the line overheats.");
    expect(sentence(stressHeadline(facts({ failing: 391 })))).toBe(
      "400 W is too much: above 391 W the line overheats.",
    );
    expect(sentence(stressHeadline(facts({ failing: 900 })))).toMatch(/^Below 900 W peak nothing/);
    expect(sentence(stressHeadline(facts({ failing: 1e9 })))).toMatch(/comes anywhere near/);
  });

  it("say where on a part, how long, how hot and how high", () => {
    expect(placeOn(0.1, 20)).toBe("at its end towards the transmitter");
    expect(placeOn(19.9, 20)).toBe("at its end towards the antenna");
    expect(placeOn(5, 20)).toMatch(/^5 m from/);
    expect([minutes(40), minutes(600), minutes(7200)]).toEqual(["40 s", "10 min", "2 h"]);
    expect([celsius(79.6), celsius(1090)]).toEqual(["80 °C", "more than 500 °C"]);
    expect([volts(276), volts(3479)]).toEqual(["276 V", "3.5 kV"]);
    expect(sentence(stressVerdict(facts()))).toContain("now 109 °C of 80 °C");
    expect(sentence(stressVerdict(facts()))).toContain(
      "210 W peak envelope (150 W to 300 W with what is not known), 40 %",
    );
    expect(sentence(stressVerdict(facts({}, { of: "voltage" })))).not.toContain("mean");
    expect(sentence(stressVerdict(facts({}, { name: "", of: "glow", unit: "kV/cm peak" })))).toMatch(/own wires come/);
  });

  it("advise by what fails", () => {
    const added = { metres: -4.1, volts: 300, now: 800 };
    expect(stressAdvice(facts())).toMatch(/^Send with 150 W at most, pause between/);
    expect(stressAdvice(facts({}, { of: "heat", name: "the balun" }))).toMatch(/warms with the mean/);
    expect(stressAdvice(facts({}, { of: "sparkover" }))).toContain("fires above 1.6 kV");
    expect(stressAdvice(facts({}, { of: "glow", name: "" }))).toContain("ends round");
    expect(stressAdvice(facts({ added }, { of: "voltage", name: "the tuner" }))).toMatch(/^Take 4.1 m off/);
    expect(stressAdvice(facts({}, { of: "voltage" }))).toContain("more than 1.1 kV peak");
    expect(stressAdvice(facts({ verdict: "good", failing: 900, failingLow: 700 }))).toMatch(/^Nothing to do/);
  });

  it("warn of volts and heat only where there are some, and never promise", () => {
    expect(stressCautions({ peak: 30, hot: null })).toHaveLength(1);
    expect(stressCautions({ peak: 300, hot: null })[0]).toMatch(/300 V peak/);
  });

  it("correct the idea that this station's numbers refute", () => {
    const none = { both: null, standing: null, warm: null, field: 2 };
    const both = { designation: "cable", peak: 2000, impedance: 50, watts: 400, degrees: 80 };
    expect(stressMistakenIdea(none).idea).toMatch(/ends of a wire/);
    expect(stressMistakenIdea({ ...none, both }).refutation).toContain("40 kW");
    const standing = { name: "the line", swr: 5, highest: 500, lowest: 100 };
    expect(stressMistakenIdea({ ...none, both, standing }).idea).toMatch(/SWR tells/);
    const warm = { name: "the balun", asSent: 300, steady: 60 };
    expect(stressMistakenIdea({ ...none, warm }).refutation).toContain("60 W of a steady carrier");
  });
});
