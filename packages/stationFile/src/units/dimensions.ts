/** Kinds of quantity the station file knows: SI unit, units people write, and the range in which a value is plausible. */

export interface Unit {
  /** SI value = number * scale + offset. */
  readonly scale: number;
  readonly offset: number;
}

export interface Dimension {
  /** With a capital, as it begins a sentence. */
  readonly title: string;
  /** Units by the text that names them, without spaces; the order is the one in which messages offer them. */
  readonly units: Readonly<Record<string, Unit>>;
  /** Units shown in messages. */
  readonly offered: readonly string[];
  /** Plausible range in SI units, inclusive. Beyond it a value is taken for a slip of the pen. */
  readonly least: number;
  readonly most: number;
  /** True when a bare number is right (Q, SWR, permittivity, count). */
  readonly bare: boolean;
}

export type DimensionName =
  | "length"
  | "area"
  | "frequency"
  | "power"
  | "impedance"
  | "inductance"
  | "capacitance"
  | "voltage"
  | "angle"
  | "force"
  | "time"
  | "temperature"
  | "conductivity"
  | "decibels"
  | "lossPerLength"
  | "weightPerLength"
  | "capacitancePerLength"
  | "resistancePerLength"
  | "ratio"
  | "number";

const foot = 0.3048;
/** Pound avoirdupois in kg. */
const pound = 0.45359237;

const scaled = (scales: Readonly<Record<string, number>>): Readonly<Record<string, Unit>> =>
  Object.fromEntries(Object.entries(scales).map(([name, scale]) => [name, { scale, offset: 0 }]));

function dimension(
  title: string,
  units: Readonly<Record<string, Unit>>,
  offered: readonly string[],
  least: number,
  most: number,
): Dimension {
  return { title, units, offered, least, most, bare: offered.length === 0 };
}

export const dimensions: Readonly<Record<DimensionName, Dimension>> = {
  length: dimension(
    "Length",
    scaled({ m: 1, mm: 1e-3, cm: 1e-2, km: 1e3, um: 1e-6, ft: foot, in: 0.0254, yd: 3 * foot, mi: 5280 * foot }),
    ["m", "cm", "mm", "ft", "in"],
    -1e5,
    1e5,
  ),
  area: dimension(
    "Area",
    scaled({ m2: 1, "m²": 1, cm2: 1e-4, "cm²": 1e-4, ft2: foot * foot, "ft²": foot * foot }),
    ["m2", "ft2"],
    1e-6,
    1e6,
  ),
  frequency: dimension(
    "Frequency",
    scaled({ MHz: 1e6, kHz: 1e3, GHz: 1e9, Hz: 1 }),
    ["MHz", "kHz", "GHz", "Hz"],
    1,
    1e11,
  ),
  power: dimension("Power", scaled({ W: 1, kW: 1e3, MW: 1e6, mW: 1e-3, uW: 1e-6 }), ["W", "kW", "mW"], 0, 1e6),
  impedance: dimension(
    "Impedance",
    scaled({ ohm: 1, kohm: 1e3, Mohm: 1e6, mohm: 1e-3, Ω: 1, kΩ: 1e3, MΩ: 1e6, mΩ: 1e-3 }),
    ["ohm", "kohm"],
    -1e9,
    1e9,
  ),
  inductance: dimension("Inductance", scaled({ uH: 1e-6, nH: 1e-9, mH: 1e-3, H: 1 }), ["uH", "nH", "mH"], 1e-12, 10),
  capacitance: dimension("Capacitance", scaled({ pF: 1e-12, nF: 1e-9, uF: 1e-6, F: 1 }), ["pF", "nF", "uF"], 1e-16, 1),
  voltage: dimension("Voltage", scaled({ V: 1, kV: 1e3, mV: 1e-3 }), ["V", "kV"], 1e-3, 1e6),
  angle: dimension("Angle", scaled({ deg: Math.PI / 180, rad: 1 }), ["deg", "rad"], -2 * Math.PI, 2 * Math.PI),
  force: dimension("Force", scaled({ N: 1, kN: 1e3, kgf: 9.80665, lbf: 4.4482216 }), ["N", "kN"], 1e-3, 1e6),
  time: dimension("Time", scaled({ s: 1, min: 60, h: 3600, ms: 1e-3 }), ["s", "min", "h"], 0, 366 * 86400),
  temperature: dimension(
    "Temperature",
    {
      degC: { scale: 1, offset: 273.15 },
      K: { scale: 1, offset: 0 },
      degF: { scale: 5 / 9, offset: 273.15 - (32 * 5) / 9 },
    },
    ["degC", "degF", "K"],
    150,
    600,
  ),
  conductivity: dimension(
    "Conductivity",
    scaled({ "mS/m": 1e-3, "S/m": 1, "uS/m": 1e-6, "MS/m": 1e6 }),
    ["mS/m", "S/m"],
    0,
    1e8,
  ),
  decibels: dimension("Loss", scaled({ dB: 1 }), ["dB"], 0, 1000),
  lossPerLength: dimension(
    "Loss per length",
    scaled({
      "dB/100m": 0.01,
      "dB/m": 1,
      "dB/km": 1e-3,
      "dB/100ft": 0.01 / foot,
      "dB/ft": 1 / foot,
    }),
    ["dB/100 m", "dB/m", "dB/100 ft"],
    0,
    1000,
  ),
  weightPerLength: dimension(
    "Weight per length",
    scaled({
      "kg/m": 1,
      "g/m": 1e-3,
      "kg/100m": 0.01,
      "kg/km": 1e-3,
      "lb/100ft": pound / (100 * foot),
      "lb/1000ft": pound / (1000 * foot),
    }),
    ["kg/m", "kg/100 m", "g/m", "lb/100 ft"],
    1e-5,
    1e3,
  ),
  capacitancePerLength: dimension(
    "Capacitance per length",
    scaled({ "pF/m": 1e-12, "nF/km": 1e-12, "pF/ft": 1e-12 / foot, "F/m": 1 }),
    ["pF/m", "nF/km", "pF/ft"],
    1e-13,
    1e-7,
  ),
  resistancePerLength: dimension(
    "Resistance per length",
    scaled({ "ohm/km": 1e-3, "mohm/m": 1e-3, "ohm/m": 1, "ohm/100m": 0.01, "ohm/1000ft": 1e-3 / foot }),
    ["ohm/km", "mohm/m", "ohm/1000 ft"],
    0,
    1e4,
  ),
  ratio: { ...dimension("Ratio", scaled({ "%": 0.01 }), ["%"], 0, 1), bare: true },
  number: dimension("Number", {}, [], -1e12, 1e12),
};
