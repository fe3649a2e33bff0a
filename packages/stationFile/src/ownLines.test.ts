import type { LineEntry, LinePart } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { findLine } from "./catalogue/lines";
import { readStation } from "./readStation";

const file = (lines: string, line: string, more = "") => `feedpath: 1
station: T
frequency: 7.1 MHz
transmitter: { power: 100 W, duty: 40 %, designed for: 50 ohm, earthed: floating }
${lines === "" ? "" : `lines:\n${lines}\n`}path: [{ line: ${line}, length: 20 m, condition: dry${more} }]
antenna:
  dipole: { length: 20 m, height: 12 m }
ground: medium dry ground
`;

/** The line of the path; what is written reads back equal. */
function part(lines: string, line: string, more = ""): LinePart {
  const read = readStation(file(lines, line, more), { fileName: "x.yaml" });
  expect(read.problems.map((problem) => problem.message)).toEqual([]);
  const again = readStation(read.normalised, { fileName: "x.yaml" });
  expect(again.problems.map((problem) => problem.message)).toEqual([]);
  expect(again.station).toEqual(read.station);
  expect(again.normalised).toBe(read.normalised);
  return read.station!.path.parts[0] as LinePart;
}
const own = (description: string): LineEntry => part(`  mine: ${description}`, "mine").line;
const told = (lines: string, line = "mine", more = "") =>
  readStation(file(lines, line, more), { fileName: "x.yaml" }).problems;
const messages = (lines: string, line = "mine", more = ""): string =>
  told(lines, line, more)
    .map((problem) => problem.message)
    .join("\n");

const sheet = "{ impedance: 75 ohm, velocity: 0.82, loss: { 10 MHz: 2 dB/100 m, 100 MHz: 6.5 dB/100 m } }";

describe("a line of the file's own", () => {
  it("is found by its name before the catalogue, whatever its capitals", () => {
    const line = part(`  loft cable: ${sheet}`, "Loft  Cable").line;
    expect(line).toMatchObject({ designation: "loft cable", model: { kind: "data sheet", impedance: { value: 75 } } });
    expect(part(`  loft cable: ${sheet}`, "RG-213/U").line).toEqual(findLine("RG-213/U"));
  });

  it("has its ratings, jacket, price and note in SI", () => {
    const rated =
      "voltage: 1.4 kV, greatest temperature: 80 degC, weight: 5 kg/100 m, bend radius: 50 mm, jacket: 6.9 mm, capacitance: 54 pF/m, loop resistance: 30 ohm/km, price: 0.61 USD per ft, note: From the loft";
    const line = own(sheet.replace(/ \}$/, `, ${rated} }`));
    expect(line).toMatchObject({
      about: "From the loft",
      jacketDiameter: expect.closeTo(6.9e-3, 12),
      price: { perMetre: 0.61 / 0.3048, money: "USD" },
      ratings: {
        voltage: { value: 1400 },
        temperature: { value: 353.15 },
        weight: { value: expect.closeTo(0.05, 12) },
        bendRadius: { value: expect.closeTo(0.05, 12) },
        capacitance: { value: expect.closeTo(54e-12, 20) },
        loopResistance: { value: expect.closeTo(0.03, 12) },
      },
    });
  });

  it("may repeat a catalogue line with what its owner adds", () => {
    const known = findLine("RG-213/U")!;
    const line = part("  RG-213/U: { like: RG-213/U, price: 2.40 EUR per m, bend radius: 60 mm }", "RG-213/U").line;
    expect(line).toMatchObject({ designation: "RG-213/U", like: "RG-213/U", price: { perMetre: 2.4, money: "EUR" } });
    expect(line.model).toEqual(known.model);
    expect(line.ratings?.bendRadius?.value).toBe(0.06);
    expect(line.sources.at(-1)).toMatchObject({ value: "bend radius, price", source: "the station file" });
    expect(part("", "{ like: rg-58c/u, price: 90 EUR per 100 m }").line).toMatchObject({ price: { perMetre: 0.9 } });
  });

  it("is told when its name is taken, missing or near to another", () => {
    expect(messages(`  RG-213/U: ${sheet}`, "RG-213/U")).toContain('"RG-213/U" is a line of the catalogue.');
    expect(messages(`  mine: ${sheet}\n  Mine: ${sheet}`)).toContain('The line "Mine" is described twice.');
    expect(told(`  loft cable: ${sheet}`, "loft cabel")[0]).toMatchObject({
      nearest: "loft cable",
      mend: "loft cable",
    });
    expect(messages("", "RG-214x/U")).toContain("The catalogue has no line");
    expect(messages("  mine: { like: RG-213/X }")).toContain("Nearest: RG-213/U.");
    expect(messages(`  75: ${sheet}`, "RG-213/U")).toContain('The name "75" is a bare number.');
  });
});

describe("a price", () => {
  it.each([
    ["2.40 EUR", "is no price of a line", null],
    ["2,40 EUR per m", "is no price of a line", "2.40 EUR per m"],
    ["EUR 2.40 per m", "is no price of a line", "2.40 EUR per m"],
    ["2.40 EUR per metre", 'not for "metre"', "2.40 EUR per m"],
    ["2.40 EUR per reel", 'not for "reel"', null],
  ])("%s is told", (price, message, mend) => {
    const [problem] = told(`  mine: { like: RG-213/U, price: "${price}" }`);
    expect(problem?.message).toContain(message);
    expect(problem?.mend).toBe(mend);
  });
});

describe("inner conductors", () => {
  const inner = (text: string) => own(`{ inner: ${text}, outer: 7.24 mm copper, dielectric: polyethylene }`).model;

  it("are solid, clad, hollow, or of strands", () => {
    expect(inner("19 x 0.18 mm tinned copper")).toMatchObject({
      inner: {
        form: "stranded",
        strands: { count: 19, diameter: expect.closeTo(0.18e-3, 12) },
        layers: [
          { metal: { name: "copper" } },
          { metal: { name: "tinned copper" }, outerRadius: expect.closeTo(0.45e-3, 12) },
        ],
      },
    });
    const clad = inner("0.72 mm copper-clad steel 30 %");
    expect(clad).toMatchObject({
      inner: { layers: [{ metal: { name: "steel" } }, { metal: { name: "copper-clad steel 30 %" } }] },
    });
    expect(inner("{ diameter: 3 mm, material: copper, form: tube, wall: 0.4 mm }")).toMatchObject({
      inner: { form: "tube", holeRadius: expect.closeTo(1.1e-3, 12) },
    });
  });

  it("are told when they cannot be", () => {
    const bad = (text: string) => messages(`  mine: { inner: ${text}, outer: 7.24 mm copper, dielectric: air }`);
    expect(bad("1 x 0.5 mm copper")).toContain("from 2 to 10000 strands");
    expect(bad("7 x 2.5 mm copper")).toContain("it must be greater than the inner conductor");
    expect(bad("8 mm copper")).toContain("it must be greater than the inner conductor");
    expect(bad("7 x 0.5 mm coper")).toContain("Nearest: copper.");
  });
});

describe("outer conductors", () => {
  const line = (outer: string) => `{ inner: 2.26 mm copper, outer: ${outer}, dielectric: polyethylene }`;
  const bad = (outer: string) => messages(`  mine: ${line(outer)}`);

  it("are braid, foil, both, corrugated, or a tube with a wall", () => {
    expect(own(line("{ diameter: 7.24 mm, material: copper, braid: { coverage: 96 % } }")).model).toMatchObject({
      outer: { shield: { form: "braid", braid: { coverage: 0.96, carriers: null, layers: 1 } } },
    });
    expect(
      own(
        line(
          "{ diameter: 7.24 mm, material: tinned copper, braid: { carriers: 24, ends: 7, wire: 0.17 mm, angle: 31 deg, layers: 2 }, foil: { material: aluminium, thickness: 9 um } }",
        ),
      ).model,
    ).toMatchObject({
      outer: {
        metal: { conductivity: 58e6 },
        shield: { form: "foil and braid", foil: { thickness: 9e-6 }, braid: { ends: 7, layers: 2 } },
      },
    });
    expect(own(line("{ diameter: 7.24 mm, foil: { material: aluminium, thickness: 50 um } }")).model).toMatchObject({
      outer: { metal: { name: "aluminium" }, shield: { form: "foil" } },
    });
    expect(
      own(line("{ diameter: 7.24 mm, material: copper, corrugated: { depth: 1 mm, pitch: 4 mm } }")).model,
    ).toMatchObject({
      outer: { shield: { form: "corrugated", depth: 1e-3, pitch: 4e-3 } },
    });
    expect(own(line("{ diameter: 7.24 mm, material: copper, wall: 0.3 mm }")).model).toMatchObject({
      outer: { wall: 3e-4 },
    });
  });

  it("have the resistance of their braid's wires, a coat on them, and a corrugation's longer way", () => {
    const outer = (text: string) => {
      const { model } = own(line(text));
      return model.kind === "coaxial" ? model.outer : null;
    };
    const wires = "braid: { carriers: 24, ends: 7, wire: 0.17 mm, angle: 31 deg }";
    const bare = outer(`{ diameter: 7.24 mm, material: copper, ${wires} }`)!;
    // 168 wires of 0.17 mm at 31 degrees: 4/(pi d^2 N C sigma cos a), the wall of a tube that has it times the factor.
    const resistance = 4 / (Math.PI * 0.17e-3 ** 2 * 168 * 58e6 * Math.cos((31 * Math.PI) / 180));
    const area = Math.PI * ((bare.innerRadius + bare.wall) ** 2 - bare.innerRadius ** 2);
    expect(bare.resistanceFactor / (58e6 * area) / resistance).toBeCloseTo(1, 9);
    expect(bare.coating).toBeUndefined();
    const tinned = outer(`{ diameter: 7.24 mm, material: tinned copper, ${wires} }`)!;
    expect(tinned.metal.conductivity).toBe(58e6);
    expect(tinned.coating?.metal.conductivity).toBeLessThan(1e7);
    const pipe = outer("{ diameter: 7.24 mm, material: copper, corrugated: { depth: 1 mm, pitch: 4 mm } }")!;
    expect(pipe.resistanceFactor).toBeGreaterThan(1.1);
  });

  it("list what a braid is taken for where the file does not say", () => {
    const read = readStation(
      file(`  mine: ${line("{ diameter: 7.24 mm, material: copper, braid: { coverage: 96 % } }")}`, "mine"),
      { fileName: "x.yaml" },
    );
    const listed = read.station!.assumptions.filter((one) => one.place.includes("braid"));
    expect(listed.map((one) => `${one.name}: ${one.value}`)).toEqual([
      "angle of a braid: 28°",
      "wires of a braid: 0.15 mm",
    ]);
  });

  it("take the lay of a braid as its angle", () => {
    const { model } = own(
      line("{ diameter: 7 mm, material: copper, braid: { carriers: 24, ends: 6, wire: 0.15 mm, lay: 30 mm } }"),
    );
    const outer = model.kind === "coaxial" ? model.outer : null;
    // A helix on the mean diameter: the tangent is its circumference over the lay.
    const angle = Math.atan((Math.PI * 7.3) / 30);
    expect(outer?.shield).toMatchObject({ braid: { angle: expect.closeTo(angle, 12) } });
  });

  it.each([
    ["{ diameter: 7 mm, material: copper, braid: { coverage: 104 % } }", "above 100 %"],
    ["{ diameter: 7 mm, material: copper, braid: {} }", "A braid needs its coverage"],
    ["{ diameter: 7 mm, material: copper, braid: { carriers: 23, ends: 4 } }", "their count is even"],
    [
      "{ diameter: 7 mm, material: copper, braid: { angle: 30 deg, lay: 30 mm } }",
      "its angle, or the length of its lay",
    ],
    [
      "{ diameter: 7 mm, material: copper, braid: { carriers: 24, ends: 20, wire: 0.2 mm, angle: 30 deg } }",
      "do not fit round 7.00 mm",
    ],
    ["{ diameter: 7 mm, material: copper, braid: { coverage: 90 % }, wall: 1 mm }", "A wall is that of a smooth tube"],
    [
      "{ diameter: 7 mm, material: copper, foil: { material: aluminium, thickness: 9 um }, corrugated: { depth: 1 mm, pitch: 4 mm } }",
      "A corrugated tube is closed",
    ],
    [
      "{ diameter: 7 mm, material: copper, corrugated: { depth: 9 mm, pitch: 4 mm } }",
      "less than its pitch, from crest to crest",
    ],
    ["{ diameter: 7 mm, material: coper }", "Nearest: copper."],
    ["{ diameter: 7 mm, braid: { coverage: 90 % } }", 'needs its "material"'],
  ])("%s is told", (outer, message) => {
    expect(bad(outer)).toContain(message);
  });
});

describe("dielectrics", () => {
  const dielectric = (text: string) => {
    const { model } = own(`{ inner: 2.26 mm copper, outer: 7.24 mm copper, dielectric: ${text} }`);
    if (model.kind !== "coaxial") throw new Error("a coaxial line was expected");
    return model.dielectric;
  };

  it("have their constants at a frequency, or losses by frequency", () => {
    expect(
      dielectric("{ permittivity: 2.3, loss tangent: 0.0003, at: 1 MHz, greatest temperature: 80 degC }"),
    ).toMatchObject({
      statedAt: 1e6,
      greatestTemperature: 353.15,
    });
    expect(
      dielectric("{ permittivity: 2.3, loss tangent: { 100 MHz: 0.0005, 1 MHz: 0.0002, 1 GHz: 0.001 } }"),
    ).toMatchObject({
      lossTangent: 0.0002,
      statedAt: 1e6,
      lossPoints: [
        { frequency: 1e8, lossTangent: 0.0005 },
        { frequency: 1e9, lossTangent: 0.001 },
      ],
    });
    expect(
      dielectric("{ permittivity: 2.3, loss tangent: { 1 MHz: 0.0002, 100 MHz: 0.0005 }, at: 100 MHz }"),
    ).toMatchObject({
      lossTangent: 0.0005,
      statedAt: 1e8,
    });
    expect(dielectric("{ material: PTFE, greatest temperature: 200 degC }")).toMatchObject({
      name: "PTFE",
      greatestTemperature: 473.15,
    });
  });

  it("are told when they cannot be", () => {
    const bad = (text: string) => messages(`  mine: { inner: 2 mm copper, outer: 7 mm copper, dielectric: ${text} }`);
    expect(bad("{ permittivity: 2.3, loss tangent: -0.1 }")).toContain("must be at least 0");
    expect(bad("{ permittivity: 2.3, loss tangent: { 1 MHz: 0.0002 }, at: 3 MHz }")).toContain(
      "has no loss tangent here",
    );
    expect(bad("poliethylene")).toContain("Nearest: polyethylene.");
  });
});

describe("mixed dielectrics", () => {
  const line = (text: string) => `{ inner: 2.26 mm copper, outer: 7.24 mm copper, dielectric: ${text} }`;
  const dielectric = (text: string) => {
    const { model } = own(line(text));
    if (model.kind !== "coaxial") throw new Error("a coaxial line was expected");
    return model.dielectric;
  };

  it("are foam by its gas or its velocity, air with spacers, or wet", () => {
    const gas = dielectric("{ foam: polyethylene, gas: 45 % }");
    expect(gas.madeOf).toEqual({ kind: "foam", solid: "polyethylene", gas: 0.45 });
    expect(gas.permittivity).toBeGreaterThan(1);
    expect(gas.permittivity).toBeLessThan(2.26);
    // A line filled with it has the velocity factor 1/sqrt(permittivity).
    expect(dielectric("{ foam: polyethylene, velocity: 0.82 }").permittivity).toBeCloseTo(1 / 0.82 ** 2, 9);
    expect(dielectric("{ spacers: discs, of: PTFE, filled: 5 % }")).toMatchObject({
      permittivity: expect.closeTo(1 + 0.05 * (2.1 - 1), 2),
      madeOf: { form: "discs", filled: 0.05 },
    });
    const wet = dielectric("{ foam: polyethylene, gas: 45 %, water: 1 %, greatest temperature: 70 degC }");
    expect(wet.permittivity).toBeGreaterThan(gas.permittivity);
    expect(wet).toMatchObject({
      greatestTemperature: 343.15,
      madeOf: { kind: "wet", water: 0.01, conductivity: null },
    });
    expect(dielectric("{ material: polyethylene, water: 2 %, water conductivity: 50 mS/m }").madeOf).toMatchObject({
      dry: { name: "polyethylene" },
      conductivity: 0.05,
    });
    expect(dielectric("{ permittivity: 2.3, loss tangent: 0.0003, at: 1 MHz, water: 2 % }").madeOf).toMatchObject({
      dry: { statedAt: 1e6 },
    });
  });

  it("list the water they are taken to hold", () => {
    const read = readStation(file(`  mine: ${line("{ material: polyethylene, water: 1 % }")}`, "mine"), {
      fileName: "x.yaml",
    });
    expect(read.station?.assumptions.map(({ name }) => name)).toContain("conductivity of the water in a dielectric");
  });

  it("are told when they cannot be", () => {
    const bad = (text: string) => messages(`  mine: ${line(text)}`);
    expect(bad("{ foam: polyethylene }")).toContain("write one of the two");
    expect(bad("{ foam: polyethylene, gas: 40 %, velocity: 0.8 }")).toContain("write one of the two");
    expect(bad("{ foam: polyethylene, velocity: 0.5 }")).toContain("A foam is faster than its solid");
    expect(bad("{ foam: foam polyethylene, gas: 40 % }")).toContain("is no solid");
    expect(bad("{ foam: polyethylen, gas: 40 % }")).toContain("Nearest: polyethylene.");
    expect(bad("{ spacers: discs, of: air, filled: 5 % }")).toContain("is no solid");
    expect(bad("{ material: polyethylene, water: 130 % }")).toContain("above 100 %");
  });
});

describe("pairs", () => {
  it("keep the insulation of their wires, with a web between them or not", () => {
    expect(
      own("{ wire: 1 mm copper in 0.8 mm polyethylene, spacing: 9 mm, web: { thickness: 1 mm, filled: 60 % } }").model,
    ).toMatchObject({
      insulation: { form: "web", outerRadius: expect.closeTo(1.3e-3, 12), thickness: 1e-3, filled: 0.6 },
    });
    expect(own("{ wire: 7 x 0.3 mm copper in 0.5 mm PVC, spacing: 9 mm }").model).toMatchObject({
      insulation: { form: "sleeves", dielectric: { name: "PVC" } },
    });
    expect(
      own(
        "{ wire: { diameter: 1 mm, material: copper, insulation: { wall: 0.5 mm, permittivity: 3.3 } }, spacing: 9 mm }",
      ).model,
    ).toMatchObject({ insulation: { dielectric: { permittivity: 3.3, lossTangent: 0 } } });
  });

  it("are told when they cannot be", () => {
    expect(messages("  mine: { wire: 1 mm copper, spacing: 9 mm, web: { thickness: 1 mm } }")).toContain(
      "give the wire its insulation",
    );
    expect(messages("  mine: { wire: 1 mm copper in 1 mm PVC, spacing: 2 mm }")).toContain("run into each other");
    expect(messages("  mine: { wire: 1 mm copper in 0.5 mm PVC, spacing: 9 mm, web: { thickness: 3 mm } }")).toContain(
      "no thicker than the insulation",
    );
  });
});

describe("lines of other shapes", () => {
  it("go by the name of their kind", () => {
    expect(own("{ twisted pair: 0.5 mm copper in 0.3 mm polyethylene, turn: 20 mm }").model).toMatchObject({
      kind: "twisted pair",
      turn: 0.02,
      sleeve: { outerRadius: expect.closeTo(5.5e-4, 12), dielectric: { name: "polyethylene" } },
    });
    expect(own("{ wire over plane: 2 mm copper, height: 50 mm, plane: aluminium }").model).toMatchObject({
      kind: "wire over plane",
      plane: { name: "aluminium" },
    });
    expect(own("{ wire over plane: 2 mm copper, height: 50 mm }").model).toMatchObject({ plane: { name: "copper" } });
    expect(own("{ four wires: 2 mm copper, square: 60 mm, joined: neighbours }").model).toMatchObject({
      kind: "four-wire",
      side: { value: expect.closeTo(0.06, 12) },
      joined: "neighbours",
    });
    expect(own("{ four wires: 2 mm copper, square: 60 mm, price: 4 EUR per m }")).toMatchObject({
      model: { joined: "diagonals" },
      price: { perMetre: 4 },
    });
    expect(
      own("{ shielded pair: 1 mm copper, spacing: 3 mm, outer: 8 mm copper, dielectric: polyethylene }").model,
    ).toMatchObject({ kind: "shielded pair", outer: { innerRadius: expect.closeTo(0.004, 12) } });
    expect(part("", "{ twisted pair: 7 x 0.2 mm copper in 0.3 mm PVC, turn: 20 mm }").line.designation).toBe(
      "twisted pair of 0.6 mm copper",
    );
  });

  it("are told when they cannot be", () => {
    expect(messages("  mine: { twisted pair: 0.5 mm copper, turn: 20 mm }")).toContain("they need their insulation");
    expect(messages("  mine: { twisted pair: 0.5 mm copper in 0.3 mm PVC, turn: 1 mm }")).toContain("so short a turn");
    expect(messages("  mine: { wire over plane: 2 mm copper, height: 1 mm }")).toContain("greater than its radius");
    expect(messages("  mine: { four wires: 2 mm copper in 1 mm PVC, square: 60 mm }")).toContain("bare wires");
    expect(messages("  mine: { four wires: 2 mm copper, square: 2 mm }")).toContain("measured between centres");
    expect(
      messages("  mine: { shielded pair: 1 mm copper, spacing: 3 mm, outer: 3.9 mm copper, dielectric: air }"),
    ).toContain("both wires must fit into it");
    expect(messages("  mine: { four wire: 2 mm copper, square: 60 mm }")).toContain("Nearest: four wires.");
  });
});

describe("where lines lie and stations stand", () => {
  it("is read and written back", () => {
    expect(part("", "RG-213/U", ", lies: on a drum")).toMatchObject({ lies: "on a drum" });
    const text = `${file("", "RG-213/U")}site: { altitude: 1200 m, air temperature: 35 degC, noise: quiet rural }\n`;
    const read = readStation(text, { fileName: "x.yaml" });
    expect(read.station?.site).toMatchObject({
      altitude: { value: 1200 },
      airTemperature: { value: 308.15 },
      noise: "quiet rural",
    });
    expect(readStation(read.normalised, { fileName: "x.yaml" }).station).toEqual(read.station);
    expect(messages("", "RG-213/U", ", lies: on the drum")).toContain("Nearest: on a drum.");
  });

  it("no line is hotter than it bears", () => {
    const lines =
      "  mine: { inner: 2 mm copper, outer: 7 mm copper, dielectric: { permittivity: 2.3, loss tangent: 0.0003, greatest temperature: 80 degC } }";
    expect(messages(lines, "mine", ", temperature: 95 degC")).toContain(
      "line 1 would be at 95 degC: its dielectric bears 80 degC",
    );
    expect(part(lines, "mine", ", temperature: 60 degC").temperature?.value).toBe(333.15);
  });
});

describe("a data sheet that physics cannot give", () => {
  const lossy = (loss: string, more = "") => `  mine: { impedance: 50 ohm, velocity: 0.66, loss: ${loss}${more} }`;

  it("is told where its unit slipped a hundredfold", () => {
    const [problem] = told(lossy("{ 10 MHz: 4.6 dB/m, 100 MHz: 16 dB/m }"));
    expect(problem?.message).toContain("meant per 100 m and read per metre");
    expect(problem?.place).toBe("lines.mine.loss");
  });

  it("is taken as written where a point or a value does not fit, and that is listed", () => {
    const listed = (lines: string) =>
      readStation(file(lines, "mine"), { fileName: "x.yaml" })
        .station?.assumptions.map((one) => `${one.name}: ${one.reason}`)
        .join("\n");
    expect(listed(lossy("{ 10 MHz: 4.6 dB/100 m, 100 MHz: 3 dB/100 m }"))).toContain(
      "no line takes less at a higher frequency",
    );
    expect(listed(lossy("{ 10 MHz: 4.6 dB/100 m, 100 MHz: 16 dB/100 m }", ", capacitance: 30.8 pF/m"))).toContain(
      "meant per foot",
    );
    part(lossy("{ 10 MHz: 4.6 dB/100 m, 100 MHz: 3 dB/100 m }"), "mine");
  });
});
