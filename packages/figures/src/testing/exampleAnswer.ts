/** Answers made by hand for tests and the gallery. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Drawing, Joint, PartResult, Table } from "@feedpath/engine";

export interface Shares {
  readonly sky: number;
  readonly soil: number;
  readonly line: number;
  readonly wires: number;
}

/** The mixes of docs/look.md, in watts of 100 W. */
export const mixes: Readonly<Record<string, Shares>> = {
  usual: { sky: 68.7, soil: 17.9, line: 12.2, wires: 1.2 },
  plain: { sky: 69, soil: 18, line: 12, wires: 1 },
  poor: { sky: 16, soil: 33, line: 45, wires: 6 },
  fine: { sky: 95, soil: 3.7, line: 1, wires: 0.3 },
};

const ohms = (re: number, im: number) => ({ re, im, unit: "ohm" });
const watts = (value: number) => ({ value, unit: "W" });
const steps = 24;
const between = (from: number, to: number): number[] =>
  Array.from({ length: steps }, (_, i) => from + ((to - from) * i) / (steps - 1) + bend(i) * (from - to));
const bend = (i: number): number => 0.03 * Math.sin((2 * Math.PI * i) / (steps - 1));

export function exampleJoint(name: string, power: number, swr: number | null, re: number, im: number): Joint {
  const rms = Math.sqrt((power / re) * (re * re + im * im));
  const amps = Math.sqrt(power / re);
  return {
    name,
    side: "coaxial",
    impedance: ohms(re, im),
    swr: { value: swr, reference: 50 },
    power,
    voltage: { rms, peak: rms * Math.SQRT2 },
    current: { rms: amps, peak: amps * Math.SQRT2 },
  };
}

/** A part between two joints that takes `heat` of the `power` that enters it. */
export function examplePart(
  name: string,
  kind: string,
  says: string,
  place: { readonly from: string; readonly to: string; readonly branch?: string },
  numbers: { readonly power: number; readonly heat: number; readonly length?: number },
): PartResult {
  const { power, heat, length = 0 } = numbers;
  const along = length > 0 ? between(power, power - heat) : [];
  return {
    name,
    kind,
    says,
    from: place.from,
    to: place.to,
    branch: place.branch ?? "",
    loss: 10 * Math.log10(power / (power - heat)),
    heat,
    margin: null,
    length,
    along: { power: along, voltage: [], current: [] },
  };
}

const degrees = (count: number): number[] => Array.from({ length: count }, (_, i) => i);

export function exampleCuts(): Table[] {
  const elevation = degrees(181);
  const azimuth = degrees(361);
  const lobeGain = (at: number) => {
    const sine = Math.sin((at * Math.PI) / 180);
    return 5.7 + 20 * Math.log10(Math.max(0.02, Math.abs(Math.sin(2.05 * sine))));
  };
  const roundGain = (at: number) => 5.7 + 10 * Math.log10(0.45 + 0.55 * Math.cos((at * Math.PI) / 180) ** 2);
  return [
    {
      name: "elevationCut",
      axis: "elevation",
      columns: {
        elevation: { unit: "deg", values: elevation },
        gain: { unit: "dBi", values: elevation.map(lobeGain) },
      },
    },
    {
      name: "azimuthCut",
      axis: "azimuth",
      columns: { azimuth: { unit: "deg", values: azimuth }, gain: { unit: "dBi", values: azimuth.map(roundGain) } },
    },
  ];
}

export const exampleDrawing: Drawing = {
  wires: [
    { name: "west leg", from: [0, 0, 12], to: [-10.05, 0, 12] },
    { name: "east leg", from: [0, 0, 12], to: [10.05, 0, 12] },
  ],
  surroundings: [],
  people: [],
  antennaName: "dipole",
  antennaSays: "dipole, 20.1 m",
  feedPoint: [0, 0, 12],
  lineRoute: [
    [0, -16, 0],
    [0, 0, 0],
    [0, 0, 12],
  ],
  soil: { kind: "soil", says: "soil 13, 5 mS/m", penetrationDepth: 4.2 },
  cutAzimuth: 0,
};

/** A dipole on 28 m of line with a choke; where its 100 W go is said by `shares`. */
export function exampleAnswer(shares: Shares = mixes.usual!, whole = 100): Answer {
  const into = whole - shares.line;
  return {
    ...emptyAnswer,
    headline: `Of your ${whole}\u00a0W, ${shares.sky.toFixed(0)}\u00a0W leave for the sky.`,
    values: {
      powerFromTransmitter: watts(whole),
      powerIntoAntenna: watts(into),
      heatInPath: watts(shares.line),
      heatInWires: watts(shares.wires),
      heatInSoil: watts(shares.soil),
      radiatedPower: { ...watts(shares.sky), low: shares.sky * 0.85, high: Math.min(shares.sky * 1.13, into) },
      elevationOfMaximum: { value: 50, unit: "deg" },
      azimuthOfMaximum: { value: 0, unit: "deg" },
    },
    joints: [
      exampleJoint("transmitter", whole, 1.8, 76.5, -23.4),
      exampleJoint("after line 1", into, 1.9, 83.1, -25.1),
      exampleJoint("feed point", into, 1.9, 83.1, -25.1),
    ],
    parts: [
      examplePart(
        "line 1",
        "line",
        "28 m of RG-213/U",
        { from: "transmitter", to: "after line 1" },
        { power: whole, heat: shares.line, length: 28 },
      ),
      examplePart(
        "choke 1",
        "choke",
        "choke of 1 kΩ to 5 kΩ",
        { from: "after line 1", to: "feed point" },
        { power: into, heat: 0 },
      ),
    ],
    tables: exampleCuts(),
    drawing: exampleDrawing,
  };
}

const emptyAnswer: Answer = {
  schema: "feedpath-answer-1",
  question: "watts",
  asked: "Where does my power go?",
  station: "Invented station",
  band: "",
  frequency: 7.1e6,
  parameters: { judged: "radiatedPower" },
  headline: "",
  headlinePhrases: [],
  verdict: "good",
  verdictPhrases: [],
  reasons: [],
  next: "",
  wouldSettle: null,
  values: {},
  joints: [],
  parts: [],
  tables: [],
  lobes: [],
  rulesOfThumb: [],
  mistakenIdea: null,
  assumptions: [],
  uncertainties: [{ input: "the soil", place: "ground", says: "dry to wet soil", atLow: 58, atHigh: 78 }],
  readings: [],
  cautions: [],
  notCovered: [],
  working: [],
  figures: [],
  drawing: null,
  provenance: { program: "", catalogue: "", kernels: "", file: "", methods: [] },
};

/** The dipole with conductors and people about it, one of each out of the picture. */
export function exampleAround(): Answer {
  const surroundings = [
    {
      name: "garden fence",
      points: [
        [-9, 6, 1],
        [9, 6, 1],
      ],
    },
    {
      name: "lamp post",
      points: [
        [4, 14, 0],
        [4, 14, 6],
      ],
    },
    {
      name: "crane at the harbour",
      points: [
        [0, 300, 0],
        [0, 300, 60],
      ],
    },
  ];
  const people = [
    { name: "bench", at: [0, 10, 0] },
    { name: "kitchen", at: [-3, -7, 0] },
    { name: "pantry", at: [3, -7.2, 0] },
    { name: "roof terrace next door", at: [12, 3, 7] },
    { name: "office across the river", at: [0, 250, 12] },
  ];
  return { ...exampleAnswer(), drawing: { ...exampleDrawing, surroundings, people } };
}

/** Two lines, a tuner and a balun: a column where SWR jumps, and five strips. */
export function exampleLongPath(): Answer {
  const base = exampleAnswer();
  const place = (from: string, to: string) => ({ from, to });
  return {
    ...base,
    values: {
      ...base.values,
      powerIntoAntenna: watts(80),
      heatInPath: watts(20),
      heatInWires: watts(1.5),
      heatInSoil: watts(16.5),
      radiatedPower: watts(62),
    },
    joints: [
      exampleJoint("transmitter", 100, 1, 50.2, 0.4),
      exampleJoint("after line 1", 99.2, 1, 50.1, 0.3),
      exampleJoint("after tuner 1", 94, 7.8, 212, -190),
      exampleJoint("after line 2", 83.4, 11.5, 24, 130),
      exampleJoint("feed point", 80, 12.4, 95, 540),
    ],
    parts: [
      examplePart("line 1", "line", "2 m of RG-58/U", place("transmitter", "after line 1"), {
        power: 100,
        heat: 0.8,
        length: 2,
      }),
      examplePart("tuner 1", "tuner", "tuner, T", place("after line 1", "after tuner 1"), { power: 99.2, heat: 5.2 }),
      examplePart("line 2", "line", "26 m of RG-213/U", place("after tuner 1", "after line 2"), {
        power: 94,
        heat: 10.6,
        length: 26,
      }),
      examplePart("balun 1", "balun", "balun 50 Ω to 200 Ω", place("after line 2", "feed point"), {
        power: 83.4,
        heat: 3.4,
      }),
    ],
    drawing: { ...exampleDrawing, cutAzimuth: 60 },
  };
}

/** A tee with two branches. */
export function exampleTee(): Answer {
  const base = exampleAnswer();
  const place = (from: string, to: string, branch = "") => ({ from, to, branch });
  return {
    ...base,
    joints: [
      exampleJoint("transmitter", 100, 1.3, 60, 4),
      exampleJoint("after line 1", 96, 1.3, 62, 5),
      exampleJoint("feed point left", 55, 1.6, 72, 12),
      exampleJoint("feed point right", 32.8, 2.2, 100, -22),
    ],
    parts: [
      examplePart("line 1", "line", "10 m of RG-213/U", place("transmitter", "after line 1"), {
        power: 100,
        heat: 4,
        length: 10,
      }),
      examplePart("line 2", "line", "9 m of RG-213/U", place("after line 1", "feed point left", "left"), {
        power: 59,
        heat: 4,
        length: 9,
      }),
      examplePart("line 3", "line", "9 m of RG-213/U", place("after line 1", "feed point right", "right"), {
        power: 37,
        heat: 4.2,
        length: 9,
      }),
    ],
  };
}
