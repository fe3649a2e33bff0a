/** One number with its unit: "28 m", "40 ft 6 in", "5 mS/m", "9 dB/100 m", "40 %", "13". */
import { type Dimension, type DimensionName, dimensions, type Unit } from "./dimensions";
import { faulty, type Parsed, parsed } from "./fault";
import { nearestWord, orList, shown } from "./nearest";

export interface Amount {
  /** SI value. */
  readonly value: number;
  /** The unit it was written in; a bound in the same unit is `number * unit.scale`. */
  readonly unit: Unit;
  readonly unitName: string;
}

const bareUnit: Unit = { scale: 1, offset: 0 };
const numberPattern = /^([+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d{1,4})?)\s*/;
const feetAndInches = /^(\d+(?:\.\d+)?)\s*ft\s+(\d+(?:\.\d+)?)\s*in$/;

/** One spelling for what has several: both micro signs and both ohm signs, the minus sign, plus-minus, degree sign, odd spaces. */
export function plainSymbols(text: string): string {
  return text
    .replace(/[\u00b5\u03bc]/g, "u")
    .replace(/\u2126/g, "\u03a9")
    .replace(/\u2212/g, "-")
    .replace(/\u00b1|\+-/g, "+/-")
    .replace(/\u00b0\s?([CF])\b/g, "deg$1")
    .replace(/\s*\u00b0/g, " deg")
    .replace(/[\u00a0\u2007\u2009\u202f]/g, " ")
    .trim();
}

/** Kinds of quantity with one unit that nearly everybody means; metres or feet, mS/m or S/m are for the owner to say. */
const usualUnit: ReadonlySet<DimensionName> = new Set<DimensionName>(["frequency", "power", "impedance"]);

/** 33' 6" as "33 ft 6 in"; null for anything else. */
function feetByMarks(text: string): string | null {
  const match = /^(\d+(?:\.\d+)?)\s*['\u2032\u2019]\s*(?:(\d+(?:\.\d+)?)\s*(?:["\u2033\u201d]|'')?)?$/.exec(text);
  if (!match) return null;
  return match[2] === undefined ? `${match[1]} ft` : `${match[1]} ft ${match[2]} in`;
}

const lower = (title: string): string => title.toLowerCase();

/** "a length (m, cm, mm, ft or in)", "a number without a unit". */
export function expectedAmount(dimension: Dimension): string {
  if (dimension.offered.length === 0) return "a number without a unit";
  const units = dimension.bare ? [...dimension.offered, "a plain number"] : dimension.offered;
  return `${lower(dimension.title)} in ${orList(units)}`;
}

/** The number to the point, not the comma; null when there is no decimal comma. */
function decimalComma<T>(text: string, dimension: Dimension): Parsed<T> | null {
  const match = /(\d+),(\d+)/.exec(text);
  if (!match) return null;
  const pointed = text.replace(/(\d+),(\d+)/g, "$1.$2");
  // "1,500 W" may mean either: no mend is offered where three figures follow.
  const mend = /,\d{3}(?!\d)/.test(text) ? null : pointed;
  return faulty(
    `"${shown(text)}" has a decimal comma. Write the point: ${shown(pointed)}.`,
    expectedAmount(dimension),
    {
      nearest: pointed,
      mend,
    },
  );
}

/** Units written out in words, which are understood and mended. */
const spokenUnits: Readonly<Record<string, string>> = {
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  foot: "ft",
  feet: "ft",
  inch: "in",
  inches: "in",
  watt: "W",
  watts: "W",
  ohms: "ohm",
  percent: "%",
  degree: "deg",
  degrees: "deg",
  megahertz: "MHz",
  volts: "V",
};

const nearestUnit = (unit: string, known: readonly string[]): string | null => {
  const word = unit.toLowerCase();
  const spoken = Object.hasOwn(spokenUnits, word) ? spokenUnits[word] : undefined;
  return spoken !== undefined && known.includes(spoken) ? spoken : nearestWord(unit, known);
};

function unknownUnit<T>(text: string, unit: string, dimension: Dimension): Parsed<T> {
  const expected = expectedAmount(dimension);
  const near = nearestUnit(unit, Object.keys(dimension.units));
  if (near !== null) {
    const mend = `${text.slice(0, text.length - unit.length).trimEnd()} ${near}`;
    return faulty(`${dimension.title} has no unit "${shown(unit)}". Nearest: ${near}.`, expected, {
      nearest: near,
      mend,
    });
  }
  const owner = Object.values(dimensions).find((other) => Object.hasOwn(other.units, unit.replaceAll(" ", "")));
  if (owner) {
    return faulty(`"${shown(text)}" is a ${lower(owner.title)}. Expected: ${expected}.`, expected);
  }
  return faulty(`${dimension.title} has no unit "${shown(unit)}". Expected: ${expected}.`, expected);
}

/**
 * Reads one number with its unit into SI. Case of the unit counts. Values outside the dimension's plausible range are
 * a fault that names the bound. Works on text of `plainSymbols`.
 */
export function parseAmount(text: string, name: DimensionName): Parsed<Amount> {
  const read = parseDifference(text, name);
  return read.ok ? plausible(read.value, text, dimensions[name]) : read;
}

/** `parseAmount` for the bound after ±: a difference is not held to the range of the values themselves. */
export function parseDifference(text: string, name: DimensionName): Parsed<Amount> {
  const dimension = dimensions[name];
  const comma = decimalComma<Amount>(text, dimension);
  if (comma) return comma;
  const both = name === "length" ? feetAndInches.exec(text) : null;
  if (both) {
    const inches = Number(both[1]) * 12 + Number(both[2]);
    return parsed({ value: inches * 0.0254, unit: dimension.units.in as Unit, unitName: "in" });
  }
  const primes = name === "length" ? feetByMarks(text) : null;
  if (primes !== null)
    return faulty(`"${shown(text)}": feet and inches are written with ft and in.`, expectedAmount(dimension), {
      mend: primes,
    });
  const match = numberPattern.exec(text);
  if (!match) {
    const expected = expectedAmount(dimension);
    return faulty(`"${shown(text)}" is not a number with its unit. Expected: ${expected}.`, expected);
  }
  const unitText = text.slice(match[0].length);
  const unitName = unitText.replaceAll(" ", "");
  const unit = unitName === "" && dimension.bare ? bareUnit : dimension.units[unitName];
  if (unitName === "" && !unit) {
    const mend = usualUnit.has(name) ? `${text} ${dimension.offered[0]}` : null;
    return faulty(`${dimension.title} needs a unit: ${orList(dimension.offered)}.`, expectedAmount(dimension), {
      mend,
    });
  }
  if (!unit || (unitName !== "" && !Object.hasOwn(dimension.units, unitName))) {
    return unknownUnit(text, unitText, dimension);
  }
  return parsed({ value: Number(match[1]) * unit.scale + unit.offset, unit, unitName });
}

function plausible(amount: Amount, text: string, dimension: Dimension): Parsed<Amount> {
  const { value } = amount;
  if (value > dimension.most) return beyond(text, `above ${bound(dimension, dimension.most)}, the most`, dimension);
  if (value < dimension.least) return beyond(text, `below ${bound(dimension, dimension.least)}, the least`, dimension);
  return parsed(amount);
}

const beyond = (text: string, how: string, dimension: Dimension): Parsed<Amount> =>
  faulty(`${dimension.title} "${shown(text)}" is ${how} that is read here.`, expectedAmount(dimension));

/** A bound in the first offered unit: "100000 m". */
export function bound(dimension: Dimension, value: number): string {
  const [unit] = dimension.offered;
  if (unit === undefined) return String(value);
  const { scale, offset } = dimension.units[unit.replaceAll(" ", "")] as Unit;
  return `${Number(((value - offset) / scale).toPrecision(6))} ${unit}`;
}
