/** The sentences of real answers, for every example: short, whole, and in the words that were agreed on. */
import { readdirSync, readFileSync } from "node:fs";
import { type Answer, questions } from "@feedpath/engine";
import { lineCatalogue, readStation } from "@feedpath/station-file";
import { describe, expect, it } from "vitest";

const folder = new URL("../../../examples/", import.meta.url);
const examples = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
/** Sweeps and height studies solve the antenna anew many times: a few examples speak for their words. */
const askedOnly: Readonly<Record<string, readonly string[]>> = {
  bounce: ["harbour-school-club.yaml", "orchard-doublet.yaml", "phased-pair.yaml", "rooftop-flat.yaml"],
  band: ["harbour-school-club.yaml", "field-day-doublet.yaml", "rooftop-flat.yaml"],
  limits: [
    "harbour-school-club.yaml",
    "orchard-doublet.yaml",
    "balcony-end-fed.yaml",
    "rooftop-flat.yaml",
    "terrace-fan.yaml",
  ],
  listen: ["coax-as-counterpoise.yaml", "field-day-doublet.yaml", "quarry-cottage.yaml", "terrace-fan.yaml"],
  line: ["harbour-school-club.yaml", "field-day-doublet.yaml", "relay-box.yaml", "quarry-cottage.yaml"],
  height: ["harbour-school-club.yaml"],
  nearby: ["attic-coils.yaml", "eaves-and-mast.yaml"],
  outside: ["coax-as-counterpoise.yaml", "attic-coils.yaml"],
  radials: ["meadow-vertical.yaml"],
  sky: ["coax-as-counterpoise.yaml", "harbour-school-club.yaml", "rooftop-flat.yaml"],
  trim: ["harbour-school-club.yaml", "field-day-doublet.yaml", "rooftop-flat.yaml"],
};
const asked = (id: string, example: string): boolean => askedOnly[id]?.includes(example) ?? true;

const measuredFiles = (path: string): string | null => {
  try {
    return readFileSync(new URL(path, folder), "utf8");
  } catch {
    return null;
  }
};

function answersOf(example: string): Answer[] {
  const { station, problems } = readStation(readFileSync(new URL(example, folder), "utf8"), {
    fileName: example,
    readFile: measuredFiles,
  });
  if (station === null) throw new Error(JSON.stringify(problems));
  return questions
    .filter((question) => asked(question.id, example))
    .flatMap((question) => {
      const run = question.run(station, {}, { program: "test", catalogue: "test", fileHash: "", lines: lineCatalogue });
      let step = run.next();
      while (!step.done) step = run.next();
      return "refused" in step.value ? [] : [step.value];
    });
}

const verdictOf = (answer: Answer): string => answer.verdictPhrases.map((phrase) => phrase.text).join("");

/** Words with a letter or a figure in them. */
const wordCount = (text: string): number => text.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length;

/** Outside of the mistaken idea's quotes nobody is told that power is lost, wasted or safe. */
const avoided = /\b(lost|loses|wasted?|reflected away|efficien\w+|safe|safely)\b/i;

describe.each(examples)("%s", (example) => {
  const answers = answersOf(example);

  it("is told in a headline of at most twelve words and one decimal", () => {
    for (const { headline } of answers) {
      expect(wordCount(headline), headline).toBeLessThanOrEqual(12);
      // Band edges are names of frequencies, not results.
      expect(headline.replace(/ from [\d.]+ to [\d.]+ MHz/, ""), headline).not.toMatch(/\d\.\d\d/);
      expect(headline).toMatch(/^[A-Z\d].*\.$/);
    }
  });

  it("says a sentence after the verdict, and what to do", () => {
    for (const answer of answers) {
      expect(verdictOf(answer)).toMatch(/^[A-Z\d].*[.]$/);
      expect(answer.next).toMatch(/^[A-Z].*[.]$/);
    }
  });

  it("keeps to the words that were agreed on", () => {
    for (const answer of answers) {
      const said = [
        answer.headline,
        verdictOf(answer),
        answer.next,
        answer.wouldSettle ?? "",
        answer.mistakenIdea?.refutation ?? "",
        ...answer.cautions,
        ...answer.notCovered,
      ];
      for (const text of said) {
        expect(text.replaceAll(/“[^”]*”/g, "")).not.toMatch(avoided);
        expect(text).not.toMatch(/\b(\w+) \1\b|\bthe \w+ \d+ (has|takes?)\b|undefined|NaN|null/);
      }
    }
  });

  it("names the mistaken idea in quotes and refutes it with a number", () => {
    for (const { mistakenIdea } of answers) {
      expect(mistakenIdea?.idea).toMatch(/^“[A-Z].*[.?]”$/);
      expect(mistakenIdea?.refutation).toMatch(/\d/);
    }
  });

  it("writes cautions and what is left out as sentences, each once", () => {
    for (const { cautions, notCovered } of answers) {
      const all = [...cautions, ...notCovered];
      expect(new Set(all).size).toBe(all.length);
      for (const text of all) expect(text).toMatch(/^([A-Z]|\d).*\.$/);
    }
  });
});
