/** Values as text that reads back to exactly the same value: the shortest such text among the usual units. */
import { between, type Conductor, isUncertain, type Place, type Quantity, within } from "@feedpath/engine";
import { parseConductor } from "./conductor";
import { type DimensionName, dimensions, type Unit } from "./dimensions";
import { directionWords, parseDirection } from "./place";

/** Units a value is written in; a later unit is taken only when it makes the text shorter. */
const writtenUnits: Readonly<Record<DimensionName, readonly string[]>> = {
  length: ["m", "mm", "cm"],
  area: ["m2"],
  frequency: ["MHz", "kHz", "GHz", "Hz"],
  power: ["W", "kW", "mW"],
  impedance: ["ohm", "kohm", "Mohm"],
  inductance: ["uH", "nH", "mH"],
  capacitance: ["pF", "nF", "uF"],
  voltage: ["V", "kV"],
  angle: ["deg"],
  force: ["N", "kN"],
  time: ["s", "min", "h"],
  temperature: ["degC", "K"],
  conductivity: ["mS/m", "S/m"],
  decibels: ["dB"],
  lossPerLength: ["dB/100m", "dB/m", "dB/100ft"],
  weightPerLength: ["kg/m", "g/m", "kg/100m", "lb/100ft"],
  capacitancePerLength: ["pF/m", "pF/ft"],
  resistancePerLength: ["ohm/km", "ohm/1000ft"],
  ratio: ["%"],
  number: [],
};

/** Units with scale 1 and no offset: every number can be written in them exactly. */
const exactUnit: Readonly<Record<DimensionName, string>> = {
  length: "m",
  area: "m2",
  frequency: "Hz",
  power: "W",
  impedance: "ohm",
  inductance: "H",
  capacitance: "F",
  voltage: "V",
  angle: "rad",
  force: "N",
  time: "s",
  temperature: "K",
  conductivity: "S/m",
  decibels: "dB",
  lossPerLength: "dB/m",
  weightPerLength: "kg/m",
  capacitancePerLength: "F/m",
  resistancePerLength: "ohm/m",
  ratio: "",
  number: "",
};

const spelled = (unit: string): string => unit.replace(/10+/, "$& ");

/** Fewest figures that give back exactly `target` when the reader's own arithmetic is applied; null when none do. */
function figures(estimate: number, target: (written: number) => boolean): string | null {
  for (let digits = 1; digits <= 17; digits++) {
    const rounded = Number(estimate.toPrecision(digits));
    if (target(rounded)) return String(rounded);
  }
  return null;
}

function inUnit(value: number, name: string, unit: Unit): string | null {
  const number = figures((value - unit.offset) / unit.scale, (written) => written * unit.scale + unit.offset === value);
  return number === null ? null : `${number} ${spelled(name)}`;
}

/** A value in the unit that makes the shortest text, reading back to the same number. */
export function formatAmount(value: number, name: DimensionName): string {
  const { units } = dimensions[name];
  const texts = writtenUnits[name].flatMap((unit) => inUnit(value, unit, units[unit] as Unit) ?? []);
  const exact = `${value} ${exactUnit[name]}`.trim();
  return texts.reduce((best, text) => (text.length < best.length ? text : best), texts[0] ?? exact);
}

/** A quantity as the reader understands it. */
export function formatQuantity(quantity: Quantity, name: DimensionName): string {
  const { value, low, high, basis } = quantity;
  if (basis === "unknown") return "unknown";
  if (!isUncertain(quantity)) return formatAmount(value, name);
  const spread = formatBound(quantity, name);
  if (spread !== null) return `${formatAmount(value, name)} ± ${spread}`;
  const ends = `between ${formatAmount(low, name)} and ${formatAmount(high, name)}`;
  const middle = between(low, high).value;
  if (middle === value) return ends;
  // Neither form gives the three numbers to the last bit: the wider bound keeps both ends inside.
  return `${formatAmount(value, name)} ± ${formatAmount(Math.max(high - value, value - low), name)}`;
}

/** The bound after ±, in a unit or in percent, that gives back both ends exactly; null when none does. */
function formatBound(quantity: Quantity, name: DimensionName): string | null {
  const { value, low, high } = quantity;
  const same = (bound: number): boolean => {
    const read = within(value, bound);
    return read.low === low && read.high === high;
  };
  const { units, bare } = dimensions[name];
  const estimates = [high - value, value - low];
  for (const estimate of estimates) {
    for (const unitName of [...writtenUnits[name], exactUnit[name]]) {
      const unit = units[unitName] ?? { scale: 1, offset: 0 };
      if (unitName === "" && !bare) continue;
      const text = figures(estimate / unit.scale, (written) => same(written * unit.scale + unit.offset - unit.offset));
      if (text !== null && text.length <= 8) return `${text} ${spelled(unitName)}`.trim();
    }
    const percent = figures((estimate / Math.abs(value)) * 100, (written) => same((Math.abs(value) * written) / 100));
    if (percent !== null && percent.length <= 8 && name !== "ratio") return `${percent} %`;
  }
  return null;
}

const words = [
  ["east", "west"],
  ["north", "south"],
  ["up", "under"],
] as const;

/** A signed length with the word for its way: "5 cm under". */
export function formatOffset(quantity: Quantity, axis: 0 | 1 | 2): string {
  const back = quantity.value < 0;
  const turned = back
    ? { ...quantity, value: 0 - quantity.value, low: 0 - quantity.high, high: 0 - quantity.low }
    : quantity;
  return `${formatQuantity(turned, "length")} ${words[axis][back ? 1 : 0]}`;
}

/** A place as its offsets; parts that are exactly zero are left out. */
export function formatPlace(place: Place): readonly string[] {
  const axes = [0, 1, 2] as const;
  const offsets = axes.flatMap((axis) => {
    const quantity = place[axis];
    return quantity.value === 0 && !isUncertain(quantity) ? [] : [formatOffset(quantity, axis)];
  });
  return offsets.length > 0 ? offsets : ["0 m up"];
}

/** A direction as a compass word or an angle. */
export function formatDirection(direction: Quantity): string {
  const word = directionWords.find((known) => {
    const read = parseDirection(known);
    return read.ok && read.value.value === direction.value && !isUncertain(direction);
  });
  return word ?? formatQuantity(direction, "angle");
}

/** A conductor in one text, or null where only its long form says it all. */
export function formatConductor(conductor: Conductor): string | null {
  const { insulation } = conductor;
  const form = conductor.form === "tube" ? "tube " : "";
  const sleeve = insulation ? ` in ${formatQuantity(insulation.wall, "length")} ${insulation.material}` : "";
  const text = `${formatQuantity(conductor.diameter, "length")} ${form}${conductor.material}${sleeve}`;
  const read = parseConductor(text);
  const same =
    read.ok && !conductor.wall && JSON.stringify(read.value.insulation) === JSON.stringify(conductor.insulation);
  return same ? text : null;
}

/** A span "A to B". */
export const formatSpan = (from: number, to: number, name: DimensionName): string =>
  `${formatAmount(from, name)} to ${formatAmount(to, name)}`;
