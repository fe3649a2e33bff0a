import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";

const base = `feedpath: 1
station: Test
frequency: 7.1 MHz
band: 7.0 MHz to 7.2 MHz
transmitter: { power: 100 W, duty: 40 %, designed for: 50 ohm, earthed: floating }
path:
  - { line: RG-213/U, length: 28 m }
  - choke: between 1 kohm and 5 kohm
antenna:
  dipole: { length: 20.1 m, height: 12 m, direction: east, wire: 2 mm copper }
ground: { permittivity: 13, conductivity: 5 mS/m }
`;

const changed = (from: string, to: string): string => {
  expect(base).toContain(from);
  return base.replace(from, to);
};
const read = (text: string) => readStation(text, { fileName: "test.yaml" }).problems;

const line = "{ line: RG-213/U, length: 28 m }";
const dipole = "dipole: { length: 20.1 m, height: 12 m, direction: east, wire: 2 mm copper }";
const ground = "{ permittivity: 13, conductivity: 5 mS/m }";

/** What is changed, to what, what the problem then says, and the text it offers in place of what was found. */
const slips: readonly (readonly [string, string, string, string | null])[] = [
  ["length: 28 m", "lenght: 28 m", 'A line has no key "lenght". Nearest: length.', "length"],
  ["5 mS/m", "5", "Conductivity needs a unit: mS/m or S/m.", null],
  ["20.1 m", "20,1 m", '"20,1 m" has a decimal comma. Write the point: 20.1 m.', "20.1 m"],
  ["7.1 MHz\n", "7,1 MHz\n", '"7,1 MHz" has a decimal comma. Write the point: 7.1 MHz.', "7.1 MHz"],
  ["7.1 MHz\n", "7.1 mhz\n", 'Frequency has no unit "mhz". Nearest: MHz.', "7.1 MHz"],
  ["20.1 m", "20.1 metres", 'Length has no unit "metres". Nearest: m.', "20.1 m"],
  ["7.0 MHz to 7.2 MHz", "7.0 to 7.2 MHz", "Frequency needs a unit: MHz, kHz, GHz or Hz.", "7.0 MHz to 7.2 MHz"],
  ["7.1 MHz\n", "7.1 Hz\n", 'Frequency "7.1 Hz" must be at least 0.001 MHz.', null],
  [
    line,
    "{ line: RG-213/U, length: 28 m, lies: in the son }",
    '"in the son" is not a word for this. Nearest: in the sun.',
    "in the sun",
  ],
  [
    "station: Test",
    "station: Test\nsite: { noise: rurall }",
    '"rurall" is not a word for this. Nearest: rural.',
    "rural",
  ],
  [
    line,
    "{ line: { inner: 8 mm copper, outer: 7 mm copper, dielectric: air }, length: 28 m }",
    "The outer conductor is given by its inner diameter: it must be greater than the inner conductor.",
    null,
  ],
  [
    line,
    "{ line: { impedance: 50 ohm, velocity: 0.66, loss: { 10 MHz: -4 dB/100 m } }, length: 28 m }",
    'Loss per length "-4 dB/100 m" is below 0 dB/100 m, the least that is read here.',
    null,
  ],
  [
    "station: Test",
    "station: Test\nlines: { loft: { like: RG-213/U, weight: 155 g } }",
    'Weight per length has no unit "g". Expected: weight per length in kg/m, kg/100 m, g/m or lb/100 ft.',
    null,
  ],
  [
    "station: Test",
    "station: Test\nlines: { loft: { like: RG-213/U, cost: 2 EUR per m } }",
    'A line like another has no key "cost". Nearest: price.',
    "price",
  ],
  [line, "{ lin: RG-213/U, length: 28 m }", 'A part has no kind "lin". Nearest: line.', "line"],
  ["direction: east", "direction: eest", '"eest" is no direction. Nearest: east.', "east"],
  [ground, "wet grund", '"wet grund" is not a word for this. Nearest: wet ground.', "wet ground"],
  ["2 mm copper", "2 mm coper", 'No metal "coper" is known. Nearest: copper.', "2 mm copper"],
  ["earthed: floating", "earthed: floatin", 'No earth is called "floatin". Nearest: floating.', "floating"],
  ["feedpath: 1", "feedpath: one", '"one" is no version of the grammar. Expected: feedpath: 1.', "1"],
  ["duty: 40 %", "duty: 140 %", 'Ratio "140 %" is above 100 %, the most that is read here.', null],
  ["power: 100 W", "power: -100 W", 'Power "-100 W" is below 0 W, the least that is read here.', null],
  ["power: 100 W", "power: 0 W", 'Power "0 W" must be greater than 0 W.', null],
  ["12 m", "1e300 m", 'Length "1e300 m" is above 100000 m, the most that is read here.', null],
  ["length: 20.1 m", "length:", '"length" has no value. Expected: length in m, cm, mm, ft or in.', null],
  ["length: 20.1 m", "length: [20.1 m]", '"length" cannot be a list. Expected: length in m, cm, mm, ft or in.', null],
  ["40 %", "&a 40 %", "Anchors (&a) are not read. Leave it out.", null],
  ["40 %", "!!str 40 %", "Tags (tag:yaml.org,2002:str) are not read. Leave it out.", null],
  ["station: Test", "station: *a", "Aliases (*a) are not read. Write the value out.", null],
  ["station: Test", "station: Test\n<<: { a: b }", "Merge keys (<<) are not read. Write the keys out.", null],
  ["station: Test", "station: Test\nstation: Test", 'The key "station" stands twice here.', null],
  ["station: Test", "station: Test\n---\na: b", "A station file is one document: a second begins here.", null],
  ["station: Test", "station: [", "The indentation does not fit here, or a bracket opened above is not closed.", null],
  ["band: 7.0 MHz to 7.2 MHz", "band: 8 MHz to 9 MHz", "The frequency lies outside its band.", null],
  [
    "band: 7.0 MHz to 7.2 MHz",
    "band: 7.2 MHz to 7.0 MHz",
    '"7.2 MHz to 7.0 MHz" runs downwards: the lower end comes first.',
    "7.0 MHz to 7.2 MHz",
  ],
  [
    "path:\n",
    "path:\nearths:\n",
    '"path" has no value. Expected: a list of parts in order; for a transmitter at the feed point, [].',
    null,
  ],
  [line, `${line}\n  - { feed: antenna }`, '"feed" ends a path: nothing can follow it in the same list.', null],
  [
    line,
    "{ line: RG-213/U, choke: 3 kohm, length: 28 m }",
    'A part has one kind; "line" and "choke" stand in one entry. Split it in two.',
    null,
  ],
  [line, "{ line: RG-213/U }", 'A line needs "length".', null],
  [
    line,
    "{ filter: low-pass }",
    "A filter has its loss, or a file with its measured network: write one of the two.",
    null,
  ],
  [line, "{ bond: rod }", 'No earth is called "rod". None is given in the file.', null],
  [
    "length: 28 m }",
    "length: 28 m, route: [[1 m up], [30 m up]] }",
    "The route of line 1 is 29 m long, the line only 28 m.",
    null,
  ],
  [
    "length: 28 m }",
    "length: 28 m, name: feed point }",
    '"feed point" has a meaning of its own in a station file. Choose another name.',
    null,
  ],
  [
    "length: 28 m }",
    "length: 28 m, name: a }\n  - { meter: a }",
    'The name "a" is given twice. Names are unique in a file.',
    null,
  ],
  [
    "length: 28 m",
    "length: unknown",
    '"unknown" cannot stand here: no source publishes a range for it. Write an estimate: between A m and B m.',
    null,
  ],
  [
    dipole,
    "vertical: { length: 10 m }",
    'A vertical has one side only: say what it works against with "against" (radials, outside of the line, a conductor, an earth).',
    null,
  ],
  [
    dipole,
    "vertical: { length: 10 m }\n  against: radials",
    'The antenna works against radials: give them with "radials".',
    null,
  ],
  [
    dipole,
    "end-fed wire: { points: [[9 m up], [9 m east, 9 m up]] }\n  against: outside of the line",
    "The antenna works against the outside of the line: no line of the path has a route, so there is no outside.",
    null,
  ],
  ["height: 12 m", "height: 12 m, ends height: 1 m", "A leg of 10.05 m cannot reach down 11 m.", null],
  ["height: 12 m", "height: 12 m, sag: 13 m", "The wire would sag to the ground.", null],
  [
    "feedpath: 1",
    "feedpath: 3",
    "This file is written in version 3 of the grammar; this program reads up to version 1. Open it with a Feedpath that reads version 3.",
    null,
  ],
];

describe("a slip of the pen", () => {
  it.each(slips)("%s -> %s", (from, to, message, mend) => {
    const text = changed(from, to);
    const told = read(text).find((problem) => problem.message === message);
    expect(read(text).map((problem) => problem.message)).toContain(message);
    expect(told?.mend).toBe(mend);
    if (!told || mend === null) return;
    // What is offered, put in place of what was found, mends it.
    const lines = text.split("\n");
    const old = lines[told.line - 1] ?? "";
    lines[told.line - 1] = old.slice(0, told.column - 1) + mend + old.slice(told.endColumn - 1);
    expect(read(lines.join("\n"))).toEqual([]);
  });

  it("is marked from its first column to the one after its last", () => {
    const [problem] = read(changed("length: 28 m", "lenght: 28 m"));
    expect(problem).toEqual({
      file: "test.yaml",
      line: 7,
      column: 23,
      endColumn: 29,
      place: "path.1.lenght",
      found: "lenght",
      expected: expect.stringContaining("length"),
      message: 'A line has no key "lenght". Nearest: length.',
      nearest: "length",
      mend: "length",
    });
  });

  it("does not hide another: all are told at once, in the order of the file", () => {
    const text = base.replace("28 m", "28").replace("40 %", "400 %").replace("east", "eest").replace("5 mS/m", "5 mS");
    expect(read(text).map((problem) => problem.line)).toEqual([5, 7, 10, 11]);
  });

  it("keeps to itself what only follows from it", () => {
    expect(read(changed("length: 28 m", "lenght: 28 m"))).toHaveLength(1);
    expect(read(changed("20.1 m", "20,1 m"))).toHaveLength(1);
    expect(read(changed("antenna:\n", "antena:\n"))).toHaveLength(1);
  });
});

describe("a file that cannot be a station", () => {
  it.each([
    ["", "The file is empty. A station begins with: feedpath: 1."],
    [
      "hello",
      "A station is written as keys with values (feedpath, station, note or frequency); a single value stands here.",
    ],
    ["- a", "A station is written as keys with values (feedpath, station, note or frequency); a list stands here."],
    [base.replace(/antenna:\n.*\n/, ""), 'A station needs "antenna", or "antennas" with a name for each.'],
    [base.replace(/path:\n.*\n.*\n/, ""), 'A station needs "path".'],
    [base.replace(/frequency.*\nband.*\n/, ""), "The station needs a frequency, a band, or both."],
  ])("%j", (text, message) => {
    expect(read(text).map((problem) => problem.message)).toContain(message);
  });
});
