import { readdirSync, readFileSync } from "node:fs";
import { isQuantity, type Part, type Station } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";

interface Pieces {
  readonly head?: string;
  readonly path?: string;
  readonly antenna?: string;
  readonly rest?: string;
}

const text = ({
  head = "frequency: 7.1 MHz",
  path = "[]",
  antenna = "dipole: { length: 20 m, height: 12 m }",
  rest = "",
}: Pieces): string =>
  `feedpath: 1\nstation: T\n${head}\ntransmitter: { power: 100 W }\npath: ${path}\nantenna:\n  ${antenna}\n${rest}\n`;

function station(pieces: Pieces): Station {
  const read = readStation(text(pieces), { fileName: "x.yaml" });
  expect(read.problems.map((problem) => problem.message)).toEqual([]);
  if (!read.station) throw new Error("no station");
  const again = readStation(read.normalised, { fileName: "x.yaml" });
  expect(again.problems.map((problem) => problem.message)).toEqual([]);
  expect(again.station).toEqual(read.station);
  return read.station;
}

const messages = (pieces: Pieces): string =>
  readStation(text(pieces), { fileName: "x.yaml" })
    .problems.map((problem) => problem.message)
    .join("\n");

function part<Kind extends Part["kind"]>(kind: Kind, written: string, rest = ""): Extract<Part, { kind: Kind }> {
  const [found] = station({ path: `[${written}]`, rest }).path.parts;
  if (found?.kind !== kind) throw new Error(`a ${kind} was expected`);
  return found as Extract<Part, { kind: Kind }>;
}

describe("parts", () => {
  it("a line has its constants by name, data sheet, pair or build", () => {
    expect(part("line", "{ line: rg-213/u, length: 28 m }").line.designation).toBe("RG-213/U");
    const sheet = part(
      "line",
      "{ line: { impedance: 75 ohm, velocity: 0.66, loss: { 145 MHz: 9 dB/100 m } }, length: 1 m }",
    );
    expect(sheet.line.model).toMatchObject({ kind: "data sheet", side: "coaxial", loss: [{ frequency: 145e6 }] });
    const pair = part("line", "{ line: { wire: 1.6 mm copper, spacing: 100 mm }, length: 18 m, condition: wet }");
    expect(pair).toMatchObject({
      condition: "wet",
      line: { model: { kind: "parallel-wire", spacing: { value: 0.1 } } },
    });
    const own = part(
      "line",
      "{ line: { inner: 2.26 mm copper, outer: 7.24 mm copper, dielectric: polyethylene }, length: 1 m }",
    );
    expect(own.line.model).toMatchObject({
      kind: "coaxial",
      outer: { innerRadius: expect.closeTo(0.00362, 9) },
      dielectric: { permittivity: 2.26 },
    });
    const foam = part(
      "line",
      "{ line: { inner: 1 mm copper, outer: 5 mm copper, dielectric: { permittivity: 1.5, loss tangent: 0.0002 } }, length: 1 m }",
    );
    expect(foam.line.model).toMatchObject({ dielectric: { permittivity: 1.5, lossTangent: 0.0002 } });
  });

  it("a choke is a resistance, a table by frequency, resistance and reactance, or unknown", () => {
    expect(part("choke", "{ choke: 3 kohm }").resistance).toMatchObject({
      kind: "constant",
      quantity: { value: 3000 },
    });
    const table = part("choke", "{ choke: { 14 MHz: 2.5 kohm, 7 MHz: 1.5 kohm } }").resistance;
    expect(table.kind === "points" && table.points.map((point) => point.frequency)).toEqual([7e6, 14e6]);
    expect(part("choke", "{ choke: { resistance: 2 kohm, reactance: -1 kohm } }").reactance).toMatchObject({
      quantity: { value: -1000 },
    });
    const read = station({ path: "[{ choke: unknown }]" });
    expect(read.path.parts[0]).toMatchObject({ resistance: { quantity: { basis: "unknown", low: 100, high: 5000 } } });
    expect(read.assumptions.find((one) => one.place === "path.parts.0.resistance")?.reason).toContain(
      "common practice, no source",
    );
  });

  it("all others are read with their keys", () => {
    expect(part("connector", "{ connector: N, count: 4, loss: 0.05 dB }")).toMatchObject({ series: "N", count: 4 });
    expect(part("meter", "{ meter: m, directivity: 25 dB }")).toMatchObject({ name: "m", directivity: { value: 25 } });
    expect(part("arrestor", "{ arrestor: gas tube, capacitance: 1.5 pF, sparkover: 600 V }")).toMatchObject({
      form: "gas tube",
    });
    expect(part("bond", "{ bond: rod, strap: 1 m }", "earths: { rod: { rod: 1.2 m } }")).toMatchObject({
      earth: "rod",
    });
    expect(part("balun", "{ balun: 50 ohm to 200 ohm, kind: voltage, loss: 0.2 dB }")).toMatchObject({
      form: "voltage",
      antennaSide: { value: 200 },
    });
    expect(
      part("transformer", "{ transformer: 50 ohm to 2450 ohm, sides: isolated, winding inductance: 5 uH }"),
    ).toMatchObject({ sides: "isolated" });
    expect(part("tuner", "{ tuner: T, set: { capacitors: [120 pF, 80 pF], coils: [3 uH] } }").set).toMatchObject({
      capacitors: [{ value: 120e-12 }, {}],
    });
    expect(part("stub", "{ stub: RG-58C/U, length: 1 m, far end: open }")).toMatchObject({ farEnd: "open" });
    expect(part("series", "{ series: { capacitor: 10 nF, Q: 1000 } }").component).toMatchObject({
      capacitor: { value: 1e-8 },
      q: { value: 1000 },
    });
    expect(part("across", "{ across: { resistor: 10 kohm }, state: bypassed }")).toMatchObject({ state: "bypassed" });
  });

  it("without a name are called by kind and count", () => {
    const { path } = station({ path: "[{ choke: 1 kohm }, { choke: 2 kohm, name: choke 2 }, { choke: 3 kohm }]" });
    expect(path.parts.map(({ name }) => name)).toEqual(["choke 1", "choke 2", "choke 3"]);
  });
});

describe("ends", () => {
  const two =
    "wires: [{ name: a, from: [1 m up], to: [9 m up] }, { name: b, from: [1 m up], to: [9 m east, 1 m up] }]\n  feed: { at: [1 m up], from: a, into: b }";

  it("a path without one stops at the only feed; a load takes none", () => {
    expect(station({}).path.end).toEqual({ kind: "feed", feed: "antenna" });
    expect(station({ antenna: two }).path.end).toEqual({ kind: "feed", feed: "antenna" });
    const loaded = station({ path: "[{ load: 50 ohm }]" });
    expect(loaded.path.end).toMatchObject({ kind: "load", resistance: { value: 50 } });
    expect(loaded.assumptions.map((one) => one.value)).toContain("not connected");
  });

  it("bands throw switches and bypass parts", () => {
    const head = "bands: { a: { frequency: 7.1 MHz, set: { s: two, choke 1: bypassed } } }";
    const read = station({
      head,
      path: "[{ choke: 1 kohm }, { switch: s, positions: { one: [{ load: 50 ohm }], two: [] } }]",
    });
    expect(read.bands[0]?.set).toEqual({ s: "two", "choke 1": "bypassed" });
    expect(messages({ head, path: "[{ choke: 1 kohm }, { switch: s, positions: { one: [] } }]" })).toContain(
      'No position of s is called "two"',
    );
    expect(messages({ head, path: "[]" })).toContain('No part is called "s"');
  });

  it("names with a letter keep their order", () => {
    const head = "bands: { 80: { frequency: 3.6 MHz }, 40: { frequency: 7.1 MHz } }";
    expect(messages({ head })).toContain('The name "80" is a bare number. Give it a letter, such as a unit: 80 m.');
  });

  it("a feed is reached once", () => {
    expect(messages({ path: "[{ tee: t, branches: { x: [], y: [] } }]" })).toContain("is reached twice");
    expect(messages({ path: "[{ feed: other }]" })).toContain('No feed is called "other"');
  });

  it("a band splitter needs the same names twice", () => {
    const path = "[{ band splitter: s, passes: { a: 1 MHz to 30 MHz }, branches: { b: [] } }]";
    expect(messages({ path })).toContain('The branch "a" of s needs both');
  });
});

describe("antennas", () => {
  const shapes: readonly (readonly [string, object])[] = [
    [
      "dipole: { length: 20 m, height: 12 m, ends height: 10 m, sag: 0.5 m }",
      { kind: "dipole", endsHeight: { value: 10 } },
    ],
    ["inverted vee: { length: 20 m, height: 12 m, ends height: 6 m }", { kind: "inverted vee" }],
    [
      "off-centre dipole: { legs: [7 m, 13 m], height: 12 m }",
      { kind: "off-centre dipole", legs: [{ value: 7 }, { value: 13 }] },
    ],
    [
      "folded dipole: { length: 20 m, spacing: 5 cm, height: 12 m }",
      { kind: "folded dipole", spacing: { value: 0.05 } },
    ],
    [
      "loop: { corners: [[5 m up], [5 m east, 5 m up], [5 m east, 10 m up]], fed at: corner 2 }",
      { kind: "loop", fedAt: { corner: 2 } },
    ],
    [
      "small loop: { round: 3 m, height: 2 m, plane: north, capacitor: { range: 10 pF to 200 pF, Q: 2000 } }",
      { kind: "small loop", plane: { value: 0 } },
    ],
    [
      "beam: { elements: [{ length: 10.5 m, along: 0 m }, { length: 10 m, along: 2 m }], driven: 2, height: 12 m }",
      { kind: "beam", driven: 2, boomCorrection: "none" },
    ],
  ];

  it.each(shapes)("%s", (written, expected) => {
    expect(station({ antenna: written }).antennas[0]?.shapes[0]?.shape).toMatchObject(expected);
  });

  it("a vertical may have sections, a hat and a trap, over radials", () => {
    const antenna = `vertical: { base: 0.3 m, sections: [{ length: 4 m, wire: 30 mm tube aluminium }, { length: 5 m, wire: 12 mm tube aluminium }] }
  against: radials
  radials: { count: 4, length: 5 m, lie: 5 cm under, over: 90 deg to 270 deg }
  loads:
    - { hat: { spokes: 4, length: 0.5 m, ring: yes }, on: mast, from feed: end }
    - { trap: { coil: 2.5 uH, capacitor: 50 pF }, on: mast, from feed: 4 m, length: 0.3 m }`;
    const [first] = station({ antenna }).antennas;
    expect(first?.radials).toMatchObject({ count: 4, lie: { value: -0.05 }, over: { from: Math.PI / 2 } });
    expect(first?.loads).toMatchObject([
      { kind: "hat", fromFeed: "end", hat: { ring: true } },
      { kind: "trap", fromFeed: { value: 4 } },
    ]);
  });

  it("loads lie on the wire", () => {
    const load = (antenna: string, spot: string) =>
      messages({ antenna: `${antenna}\n  loads: [{ coil: 2 uH, Q: 200, on: first leg, from feed: ${spot} }]` });
    expect(load("dipole: { length: 20 m, height: 12 m }", "9 m")).toBe("");
    expect(load("dipole: { length: 20 m, height: 12 m }", "12 m")).toContain(
      "12 m from the feed; the wire ends at 10 m",
    );
    expect(load("off-centre dipole: { legs: [7 m, 13 m], height: 12 m }", "8 m")).toContain("ends at 7 m");
    expect(load("vertical: { length: 10 m }\n  against: outside of the line", "1 m")).toContain(
      "No leg or wire is called",
    );
  });

  it("several shapes share one feed point", () => {
    const antenna =
      "elements: { long: { dipole: { length: 20 m, height: 8 m } }, short: { inverted vee: { length: 7 m, height: 8 m, ends height: 7 m } } }";
    expect(station({ antenna }).antennas[0]?.shapes.map(({ name }) => name)).toEqual(["long", "short"]);
  });

  it("wires meet at ends only, stay on one side of the soil, and are fed where they meet", () => {
    const wires = (second: string, feed = "into: b") =>
      messages({
        antenna: `wires: [{ name: a, from: [2 m up], to: [10 m up] }, { name: b, ${second} }]\n  feed: { at: [2 m up], from: a, ${feed} }`,
      });
    expect(wires("from: [2 m up], to: [5 m east, 2 m up]")).toBe("");
    expect(wires("from: [6 m up], to: [5 m east, 6 m up]", "into: a")).toContain(
      'The wire "b" ends on the middle of "a". Split that one in two at [6 m up].',
    );
    expect(wires("from: [2 m up], to: [5 m east, 1 m under]")).toContain("goes through the surface of the soil");
    expect(wires("from: [2 m up], to: [2 m up]")).toContain("has no length");
    expect(wires("from: [3 m east, 2 m up], to: [9 m east, 2 m up]")).toContain(
      'The wire "b" has no end at the feed, [2 m up].',
    );
    expect(wires("from: [2 m up], to: [5 m east, 2 m up]", "into: c")).toContain('No wire is called "c". Known: a, b.');
    const single =
      "wires: [{ name: a, from: [2 m up], to: [9 m up], diameter: 2 mm, material: copper, insulation: { wall: 0.5 mm, permittivity: 2.5 } }]";
    expect(messages({ antenna: single })).toBe("Wires one by one need a feed: feed: { at, from, into }.");
  });

  it("a wire may be given by diameter and material", () => {
    const antenna = `wires:
    - { name: a, from: [2 m up], to: [9 m up], diameter: 2 mm, material: copper, insulation: { wall: 0.5 mm, permittivity: 2.5 } }
    - { name: b, from: [2 m up], to: [5 m east, 2 m up], wire: { diameter: 1 mm, material: steel } }
  feed: { at: [2 m up], from: a, into: b }`;
    const shape = station({ antenna }).antennas[0]?.shapes[0]?.shape;
    expect(
      shape?.kind === "wires" && shape.wires.map(({ wire }) => [wire.material, wire.insulation?.permittivity.value]),
    ).toEqual([
      ["copper", 2.5],
      ["steel", undefined],
    ]);
  });
});

describe("what stands around", () => {
  it("soil is unknown, named, layered, or two values; unknown values move together", () => {
    const soil = (ground: string) => station({ rest: `ground: ${ground}` }).ground;
    expect(soil("free space")).toEqual({ kind: "free space" });
    // Rec. ITU-R P.527-3, figure 1: very dry 3 and 0.1 mS/m, medium dry 15 and 1 mS/m, wet 30 and 10 mS/m.
    expect(soil("unknown")).toEqual({
      kind: "soil",
      name: "unknown",
      permittivity: { value: 15, low: 3, high: 30, basis: "unknown", tied: "soil" },
      conductivity: { value: 1e-3, low: 1e-4, high: 1e-2, basis: "unknown", tied: "soil" },
      range: { from: 1e4, to: 30e6 },
    });
    expect(soil("wet ground")).toMatchObject({
      permittivity: { value: 30 },
      conductivity: { value: 0.01, basis: "catalogue" },
    });
    expect(soil("{ permittivity: unknown, conductivity: 5 mS/m }")).toMatchObject({
      permittivity: { basis: "unknown" },
    });
    expect(
      soil(
        "{ layers: [{ permittivity: 15, conductivity: 6 mS/m, thickness: 1 m }, { permittivity: 8, conductivity: 1 mS/m }] }",
      ),
    ).toMatchObject({
      kind: "layers",
      layers: [{ thickness: { value: 1 } }, { thickness: null }],
    });
    expect(
      messages({
        rest: "ground: { layers: [{ permittivity: 8, conductivity: 1 mS/m }, { permittivity: 8, conductivity: 1 mS/m }] }",
      }),
    ).toContain("needs its thickness");
  });

  it("earths, surroundings, people, wants and readings", () => {
    const read = station({
      path: "[{ meter: m }]",
      rest: `earths: { r: { plate: 0.5 m2, resistance: unknown }, s: { strip: 10 m, at: [1 m east] } }
surroundings: [{ sheet: roof foil, corners: [[5 m up], [5 m east, 5 m up], [5 m north, 5 m up]] }, { roof: slate, loss: 1 dB }]
people: [{ place: path, at: [6 m east], stays: 10 min }]
wanted: { elevation: 15 deg, direction: west, SWR below: 2, may change: [height, m] }
readings: [{ at: m, frequency: 7.1 MHz, SWR: 1.5 }, { at: feed point, frequency: 7.1 MHz, SWR: 2 }, { at: after m, frequency: 7.1 MHz, SWR: 2 }]`,
    });
    expect(read.earths).toMatchObject([
      { form: "plate", resistance: { basis: "unknown" } },
      { form: "strip", size: { value: 10 } },
    ]);
    expect(read.people).toMatchObject([{ who: "public", stays: { value: 600 } }]);
    expect(read.wanted).toMatchObject({ swrBelow: { value: 2 }, mayChange: ["height", "m"] });
    expect(messages({ rest: "wanted: { may change: [heigth] }" })).toContain("Nearest: height.");
    expect(messages({ rest: "readings: [{ at: after line 1, frequency: 7 MHz, SWR: 2 }]" })).toContain(
      "No meter or joint",
    );
    expect(
      messages({ rest: "readings: [{ at: transmitter, taken: 2026-02-30, frequency: 7 MHz, SWR: 2 }]" }),
    ).toContain("is no date");
  });

  it("measured files have as many ports as their place needs", () => {
    const twoPort = "# MHz S RI R 50\n7 0 0 1 0 1 0 0 0\n";
    const written = `${text({ path: "[{ two-port: x, file: a.s2p }]" })}readings: [{ at: transmitter, file: a.s2p }]\n`;
    const asked: string[] = [];
    const readFile = (name: string) => {
      asked.push(name);
      return twoPort;
    };
    const read = readStation(written, { fileName: "x.yaml", readFile });
    expect(read.problems.map((problem) => problem.message)).toEqual([
      '"a.s2p" has two ports; one port is needed here.',
    ]);
    expect(asked).toEqual(["a.s2p"]);
    const broken = readStation(written, { fileName: "x.yaml", readFile: () => "no data" });
    expect(broken.problems[0]).toMatchObject({ file: "a.s2p", line: 1 });
    const missing = readStation(written, { fileName: "x.yaml", readFile: () => null });
    expect(missing.problems[0]?.message).toBe('There is no file "a.s2p" beside the station file.');
    const unread = readStation(written, { fileName: "x.yaml" });
    expect(unread.station?.measured).toEqual({ "a.s2p": null });
    expect(unread.station?.assumptions.map((one) => one.place)).toContain("measured");
  });
});

describe("what the reader fills in", () => {
  const folder = new URL("../../../examples/", import.meta.url);
  const examples = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
  const readFile = (name: string) => readFileSync(new URL(name, folder), "utf8");
  const bare = `feedpath: 1\nfrequency: 7.1 MHz\ntransmitter: { power: 100 W }\npath:
  - { line: RG-58C/U, length: 10 m }
  - { connector: N }
  - { arrestor: gap }
  - { balun: 50 ohm to 50 ohm }
  - { transformer: 50 ohm to 50 ohm }
  - { tuner: L, capacitors: { range: 10 pF to 20 pF }, coil: { range: 1 uH to 2 uH } }
  - { series: { coil: 1 uH } }
  - { switch: s, positions: { a: [] } }
antenna:
  vertical: { length: 10 m }
  against: radials
  radials: { count: 2, length: 3 m }
  loads: [{ coil: 2 uH, on: mast, from feed: 3 m }, { hat: { spokes: 2, length: 1 m }, on: mast, from feed: end }]
people: [{ place: door, at: [1 m east] }]
readings: [{ at: transmitter, frequency: 7 MHz, SWR: 2 }]
`;

  /** Places of all quantities of a basis. */
  function placesOf(thing: unknown, basis: string, place = ""): readonly string[] {
    if (typeof thing !== "object" || thing === null) return [];
    if (isQuantity(thing)) return thing.basis === basis ? [place] : [];
    return Object.entries(thing).flatMap(([key, inner]) =>
      placesOf(inner, basis, place === "" ? key : `${place}.${key}`),
    );
  }

  it.each([...examples, "bare"])("is listed: %s", (name) => {
    const read = readStation(name === "bare" ? bare : readFile(name), { fileName: name, readFile });
    expect(read.problems).toEqual([]);
    const listed = read.station?.assumptions.map((one) => one.place) ?? [];
    for (const place of placesOf(read.station, "assumed")) {
      // A place of three coordinates is listed as one.
      expect(
        listed.some((known) => place === known || place.startsWith(`${known}.`)),
        place,
      ).toBe(true);
    }
    for (const place of placesOf(read.station, "unknown")) {
      expect(
        listed.some(
          (known) => place.startsWith(known) || known.startsWith(place.replace("permittivity", "conductivity")),
        ),
        place,
      ).toBe(true);
    }
    for (const one of read.station?.assumptions ?? []) expect([one.name, one.value, one.reason]).not.toContain("");
  });

  it("is exactly this for a bare file", () => {
    const read = readStation(bare, { fileName: "x.yaml" });
    expect(read.station?.assumptions.map((one) => `${one.name}: ${one.value}`)).toMatchSnapshot();
  });
});
