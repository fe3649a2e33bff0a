/** A value with what is known of it: "28 m", "12 m ± 0.5 m", "12 m +- 5 %", "between 1 kohm and 5 kohm". */
import { between, exactly, type Quantity, within } from "@feedpath/engine";
import { type Amount, bound, expectedAmount, parseAmount, parseDifference, plainSymbols } from "./amount";
import { type DimensionName, dimensions } from "./dimensions";
import { faulty, type Parsed, parsed } from "./fault";
import { shown } from "./nearest";

/** What a key allows beyond its dimension. Bounds in SI units, inclusive unless `above` says otherwise. */
export interface QuantityRule {
  readonly least?: number;
  readonly most?: number;
  /** The value must be greater than this. */
  readonly above?: number;
}

const betweenPattern = /^between\s+(.+?)\s+and\s+(.+)$/;
const withinPattern = /^(.+?)\s*\+\/-\s*(.+)$/;

/** A missing unit in the first of two amounts is mended from the second: "7.0 to 7.2 MHz". */
function bothAmounts(first: string, second: string, name: DimensionName, join: (a: string, b: string) => string) {
  const low = parseAmount(first, name);
  const high = parseAmount(second, name);
  if (high.ok && !low.ok && high.value.unitName !== "" && /^[+-]?[\d.]+$/.test(first)) {
    const mended = join(`${first} ${high.value.unitName}`, second);
    return faulty<readonly [Amount, Amount]>(low.fault.message, low.fault.expected, { mend: mended });
  }
  if (!low.ok) return low;
  if (!high.ok) return high;
  return parsed([low.value, high.value] as const);
}

function readBetween(text: string, match: RegExpExecArray, name: DimensionName): Parsed<Quantity> {
  const ends = bothAmounts(match[1] ?? "", match[2] ?? "", name, (a, b) => `between ${a} and ${b}`);
  if (!ends.ok) return ends;
  const [low, high] = ends.value;
  if (low.value < high.value) return parsed(between(low.value, high.value));
  return faulty(`"${shown(text)}": the first end must be the lower one.`, "the lower end first", {
    mend: low.value > high.value ? `between ${match[2]} and ${match[1]}` : null,
  });
}

function readWithin(text: string, match: RegExpExecArray, name: DimensionName): Parsed<Quantity> {
  const nominal = parseAmount(match[1] ?? "", name);
  if (!nominal.ok) return nominal;
  const spread = readBound(match[2] ?? "", nominal.value, name);
  if (!spread.ok) return spread;
  if (spread.value > 0) return parsed(within(nominal.value.value, spread.value));
  return faulty(`"${shown(text)}": the bound after ± must be greater than zero.`, "a bound greater than zero");
}

/** The bound after ±: in the value's own kind of unit, or in percent of the value. */
function readBound(text: string, nominal: Amount, name: DimensionName): Parsed<number> {
  const percent = name === "ratio" ? null : /^(\d+(?:\.\d+)?)\s*%$/.exec(text);
  if (percent) return parsed((Math.abs(nominal.value) * Number(percent[1])) / 100);
  const spread = parseDifference(text, name);
  if (!spread.ok) return spread;
  return parsed(spread.value.value - spread.value.unit.offset);
}

function keptTo(rule: QuantityRule, text: string, quantity: Quantity, name: DimensionName): Parsed<Quantity> {
  const dimension = dimensions[name];
  const least = Math.max(dimension.least, rule.least ?? Number.NEGATIVE_INFINITY);
  const most = Math.min(dimension.most, rule.most ?? Number.POSITIVE_INFINITY);
  const title = `${dimension.title} "${shown(text)}"`;
  const fault = (how: string) => faulty<Quantity>(`${title} must be ${how}.`, `${expectedAmount(dimension)}, ${how}`);
  if (rule.above !== undefined && quantity.low <= rule.above)
    return fault(`greater than ${bound(dimension, rule.above)}`);
  if (quantity.low < least) return fault(`at least ${bound(dimension, least)}`);
  if (quantity.high > most) return fault(`at most ${bound(dimension, most)}`);
  return parsed(quantity);
}

/**
 * Reads a value, exact or uncertain, into a Quantity in SI units.
 * Bounds of `±` hold the range as two standard deviations; `between` takes the middle, or the geometric middle when the
 * ends differ more than threefold. Faults say what was expected; low and high ends are held to the rule too.
 */
export function parseQuantity(written: string, name: DimensionName, rule: QuantityRule = {}): Parsed<Quantity> {
  const text = plainSymbols(written);
  const dimension = dimensions[name];
  if (text === "unknown") {
    return faulty(
      `"unknown" cannot stand here: no source publishes a range for it. Write an estimate${exampleOf(name)}.`,
      `${expectedAmount(dimension)}, or between two of them`,
    );
  }
  const ends = betweenPattern.exec(text);
  const spread = ends ? null : withinPattern.exec(text);
  const read = ends ? readBetween(text, ends, name) : spread ? readWithin(text, spread, name) : readPlain(text, name);
  return read.ok ? keptTo(rule, written, read.value, name) : read;
}

function readPlain(text: string, name: DimensionName): Parsed<Quantity> {
  const amount = parseAmount(text, name);
  return amount.ok ? parsed(exactly(amount.value.value)) : amount;
}

/** ": between 4 m and 6 m" in the first unit that is offered. */
function exampleOf(name: DimensionName): string {
  const [unit] = dimensions[name].offered;
  return unit === undefined ? ": between A and B" : `: between A ${unit} and B ${unit}`;
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

const spanPattern = /^(.+?)\s+to\s+(.+)$/;

/** "7 - 7.2 MHz" as a span; null for anything else. */
function dashedSpan(text: string): string | null {
  const match = /^(\d[\d.]*)\s*([A-Za-z]*)\s*(?:-|\u2013|\.\.)\s*(\d[\d.]*)\s*([A-Za-z]+)$/.exec(text);
  if (!match) return null;
  const [, from, fromUnit, to, toUnit] = match;
  return `${from} ${fromUnit === "" ? toUnit : fromUnit} to ${to} ${toUnit}`;
}

/** "4:1" as "50 ohm to 200 ohm", the step that is meant most often; null for anything else. */
function asImpedances(text: string): string | null {
  const match = /^(\d{1,3}(?:\.\d+)?)\s*:\s*(\d{1,3}(?:\.\d+)?)$/.exec(text);
  const [up, down] = [Number(match?.[1]), Number(match?.[2])];
  return up > 0 && down > 0 ? `50 ohm to ${Number(((50 * up) / down).toPrecision(4))} ohm` : null;
}

/** Two amounts "A to B", as quantities and in the order written. */
export function parsePair(
  written: string,
  name: DimensionName,
  rule: QuantityRule = {},
): Parsed<readonly [Quantity, Quantity]> {
  const text = plainSymbols(written);
  const match = spanPattern.exec(text);
  if (!match) {
    const expected = `two values, "A to B", each ${expectedAmount(dimensions[name])}`;
    const ratio = name === "impedance" ? asImpedances(text) : null;
    if (ratio !== null)
      return faulty(`"${shown(written)}" is a ratio: write the two impedances, transmitter side first.`, expected, {
        mend: ratio,
      });
    return faulty(`"${shown(written)}" is not a span. Expected: ${expected}.`, expected, { mend: dashedSpan(text) });
  }
  const ends = bothAmounts(match[1] ?? "", match[2] ?? "", name, (a, b) => `${a} to ${b}`);
  if (!ends.ok) return ends;
  const from = keptTo(rule, written, exactly(ends.value[0].value), name);
  const to = keptTo(rule, written, exactly(ends.value[1].value), name);
  if (!from.ok) return from;
  return to.ok ? parsed([from.value, to.value]) : to;
}

/** A span "A to B" in SI units, A below B. */
export function parseSpan(written: string, name: DimensionName, rule: QuantityRule = {}): Parsed<Span> {
  const pair = parsePair(written, name, rule);
  if (!pair.ok) return pair;
  const [from, to] = [pair.value[0].value, pair.value[1].value];
  if (from < to) return parsed({ from, to });
  const match = spanPattern.exec(plainSymbols(written));
  return faulty(`"${shown(written)}" runs downwards: the lower end comes first.`, "the lower end first", {
    mend: from > to && match ? `${match[2]} to ${match[1]}` : null,
  });
}
