import { describe, expect, it } from "vitest";
import { answerSheet } from "../answerSheet";
import { exampleAnswer, exampleStationText } from "../fixture/exampleAnswer";
import { exampleFigure } from "../fixture/exampleFigure";

const figures = [exampleFigure(682, 360)];
const narrowFigures = [exampleFigure(358, 300)];
const sheet = answerSheet({ answer: exampleAnswer, figures, narrowFigures, stationText: exampleStationText });
const textOf = (html: string): string =>
  html
    .replaceAll(/<[^>]*>/g, "")
    .replaceAll("&lt;", "<")
    .replaceAll("&gt;", ">")
    .replaceAll("&quot;", '"')
    .replaceAll("&#39;", "'")
    .replaceAll("&amp;", "&");

describe("answer sheet", () => {
  it("refers to nothing outside and runs nothing", () => {
    expect(sheet).toContain("default-src 'none'; style-src 'unsafe-inline'; base-uri 'none'; form-action 'none'");
    expect(sheet).not.toMatch(/<script|<link|<img|<iframe|<object|@import|\ssrc=|javascript:|https?:/i);
    for (const [, target] of sheet.matchAll(/(?:href=["']|url\(["']?)([^"')]*)/g)) expect(target).toMatch(/^#/);
  });

  it("gives every id once, and every link inside the page has its place", () => {
    const ids = [...sheet.matchAll(/\sid="([^"]*)"/g)].map((match) => match[1]!);
    expect(new Set(ids).size).toBe(ids.length);
    const targets = [...sheet.matchAll(/(?:href="#|url\(#|aria-labelledby=")([^")]*)/g)].map((match) => match[1]!);
    expect(targets).toContain("step-2");
    expect(targets.filter((target) => !ids.includes(target))).toEqual([]);
  });

  it("has one first heading and then second ones only, in reading order", () => {
    expect([...sheet.matchAll(/<h(\d)/g)].map((match) => match[1])).toEqual(["1", ...Array(10).fill("2")]);
    const order = [
      'class="asked"',
      "<h1>",
      'class="verdict"',
      "<figure",
      "How it was worked out",
      "The idea this corrects",
      "Rules of thumb",
      "Where the watts go",
      "What it rests on",
      "Care, and what is not covered",
      "Why it is called good",
      "Your readings",
      "At each joint",
      "The station, as a file",
      "Worked out by Feedpath 0.1.0",
    ].map((words) => sheet.indexOf(words));
    expect(order).not.toContain(-1);
    expect(order).toEqual(order.toSorted((a, b) => a - b));
  });

  it("lets a number open its working, and words that stand for one too", () => {
    expect(sheet).toContain('<a class="n" href="#step-3">69 W</a>');
    const headlinePhrases = [{ text: "Next to nothing", value: "heatInWires" }];
    const html = answerSheet({ answer: { ...exampleAnswer, headlinePhrases }, figures, stationText: "" });
    expect(html).toContain('<h1><a href="#step-3">Next to nothing</a></h1>');
  });

  it("gives each picture a text alternative and the table behind it", () => {
    const pictures = [...sheet.matchAll(/<svg[^>]*role="img"[^>]*>/g)];
    expect(pictures).toHaveLength(2);
    for (const [picture] of pictures) expect(picture).toContain("68.7 W leave for the sky");
    expect(sheet).toContain("The numbers behind this picture");
    expect(sheet).toContain('<tr><th scope="row">tuner</th><td class="r">–</td></tr>');
  });

  it("lists every value with its range, or why it has none", () => {
    expect(sheet).toContain(
      '<tr><th scope="row">heat in soil</th><td class="r">17.9 W</td><td class="r">9.0 to 29.0 W</td></tr>',
    );
    expect(sheet).toContain('<th scope="row">SWR at feed point</th><td class="r">infinite: nothing is connected</td>');
  });

  it("typesets the working: formula, numbers put in, result, source", () => {
    expect(sheet.match(/<math /g)).toHaveLength(4);
    expect(sheet).toContain("= 87.8 W");
    expect(sheet).toContain("loss of a mismatched line: source and equation number stand here");
  });

  it.each([
    ["good", 3],
    ["workable", 2],
    ["trouble", 1],
  ] as const)("marks %s by %i filled blocks and the word", (verdict, filled) => {
    const html = answerSheet({ answer: { ...exampleAnswer, verdict }, figures, stationText: "" });
    const mark = /<span class="mark">.*?<\/span>/.exec(html)![0];
    expect(mark.match(/fill="#171c20"/g)).toHaveLength(filled);
    expect(mark).toContain(`</svg> ${verdict}`);
  });

  it("shows the file as it is, keys in bold", () => {
    const file = /<pre[^>]*>[\s\S]*<\/pre>/.exec(sheet)![0];
    expect(textOf(file)).toBe(exampleStationText);
    expect(file).toContain("  <b>dipole:</b> { length");
    expect(file).toContain("<b>station:</b>");
  });
});

describe("a hostile file", () => {
  const nasty = `</style></pre><script>alert("1")</script><img src=x onerror='alert(2)'>\u202Egnp\u202C & "q"`;
  const everywhere = {
    ...exampleAnswer,
    station: nasty,
    asked: nasty,
    headlinePhrases: [{ text: nasty }, { text: nasty, value: "radiatedPower" }],
    verdictPhrases: [{ text: nasty }],
    next: nasty,
    wouldSettle: nasty,
    cautions: [nasty],
    notCovered: [nasty],
    mistakenIdea: { idea: nasty, refutation: nasty },
    assumptions: [{ name: nasty, value: nasty, reason: nasty, place: nasty }],
    rulesOfThumb: [{ rule: nasty, ruleValue: nasty, computed: nasty, holds: nasty, source: nasty }],
    uncertainties: [
      { input: nasty, place: nasty, says: nasty, atLow: 1, atHigh: 2 },
      { input: nasty, place: nasty, says: nasty, atLow: 1, atHigh: 2 },
    ],
    reasons: [{ says: nasty, value: 1, limit: 2, unit: "dB", source: nasty }],
    joints: exampleAnswer.joints.map((joint) => ({ ...joint, name: nasty })),
    parts: exampleAnswer.parts.map((part) => ({ ...part, says: nasty, name: nasty })),
    working: [{ text: nasty, source: nasty, result: { value: 1, unit: nasty }, explains: [nasty] }],
    provenance: { ...exampleAnswer.provenance, program: nasty, methods: [{ name: nasty, says: nasty }] },
  };
  const drawn = exampleFigure(682, 360);
  const figure = {
    ...drawn,
    title: nasty,
    description: nasty,
    marks: [{ kind: "text", x: 1, y: 1, text: nasty, role: "ink", size: 10, face: "words", id: nasty } as const],
    table: { caption: nasty, columns: [{ name: nasty, unit: nasty }], rows: [[nasty]] },
  };
  const html = answerSheet({ answer: everywhere, figures: [figure], narrowFigures: [figure], stationText: nasty });

  it("opens no element and closes none", () => {
    expect(html).not.toMatch(/<script|<img/i);
    expect(html.match(/<\/style>/g)).toHaveLength(1);
    expect(html.match(/<\/pre>/g)).toHaveLength(1);
    expect(html.split("&lt;script&gt;").length).toBeGreaterThan(30);
  });

  it("keeps direction characters visible instead of obeying them", () => {
    expect(html).not.toMatch(/[\u202A-\u202E\u2066-\u2069\u200E\u200F]/);
    expect(html).toContain("‹U+202E›gnp");
  });

  it("names the formula that cannot be shown", () => {
    const working = [{ ...exampleAnswer.working[0]!, formula: "\\href{x}{y}" }];
    expect(() => answerSheet({ answer: { ...exampleAnswer, working }, figures, stationText: "" })).toThrow("\\href");
  });
});
