/**
 * Reads Touchstone files of version 1.1 with one or two ports.
 * Source: Touchstone File Format Specification Rev 1.1, EIA/IBIS Open Forum, 2002.
 */
import type { MeasuredNetwork, Problem } from "@feedpath/engine";
import { problemAt, type SourceText, sourceText } from "../reading/sourceText";
import { shown } from "../units/nearest";
import { fileNumber, type Options, parseOptions } from "./optionLine";
import { complexOf, toScattering } from "./toScattering";

export interface TouchstoneResult {
  /** Null when there is any problem. */
  readonly network: MeasuredNetwork | null;
  readonly problems: readonly Problem[];
}

/** Most characters and most frequencies that are read. */
const mostCharacters = 4e6;
const mostFrequencies = 20_000;
const mostProblems = 20;

interface Reading {
  readonly source: SourceText;
  readonly problems: Problem[];
  options: Options | null;
  /** Numbers a line holds: 3 for one port, 9 for two; 0 before the first. */
  width: number;
  readonly frequencies: number[];
  readonly scattering: number[][];
}

/**
 * Touchstone 1.1 text to a network: frequencies in Hz increasing, scattering parameters row-major, re and im in turn.
 * Version 2 files, noise data, more than two ports, and G or H parameters are problems that say so. Never throws.
 */
export function readTouchstone(text: string, fileName: string): TouchstoneResult {
  const source = sourceText(fileName, text.length > mostCharacters ? "" : text);
  const reading: Reading = { source, problems: [], options: null, width: 0, frequencies: [], scattering: [] };
  if (text.length > mostCharacters)
    tell(
      reading,
      0,
      0,
      `The file has ${text.length} characters; at most ${mostCharacters} are read.`,
      "a shorter file",
    );
  source.lineStarts.forEach((start, line) => {
    const end = source.lineStarts[line + 1] ?? source.text.length;
    if (reading.problems.length < mostProblems && reading.frequencies.length <= mostFrequencies)
      readLine(reading, start, end);
  });
  if (reading.frequencies.length > mostFrequencies)
    tell(reading, 0, 0, `More than ${mostFrequencies} frequencies.`, "fewer frequencies");
  if (reading.frequencies.length === 0 && reading.problems.length === 0)
    tell(reading, 0, 0, "The file holds no data.", "a line per frequency");
  if (reading.problems.length > 0 || !reading.options) return { network: null, problems: reading.problems };
  const { reference } = reading.options;
  const ports = reading.width === 9 ? 2 : 1;
  return {
    network: { ports, reference, frequencies: reading.frequencies, scattering: reading.scattering },
    problems: [],
  };
}

function tell(
  reading: Reading,
  from: number,
  to: number,
  message: string,
  expected: string,
  mend: string | null = null,
): void {
  reading.problems.push(problemAt(reading.source, [from, to], "", { message, expected, nearest: mend, mend }));
}

function readLine(reading: Reading, start: number, end: number): void {
  const line = reading.source.text.slice(start, end);
  const comment = line.indexOf("!");
  const body = comment < 0 ? line : line.slice(0, comment);
  const words = [...body.matchAll(/\S+/g)].map((match) => ({ text: match[0], at: start + match.index }));
  const [first] = words;
  const last = words.at(-1);
  if (!first || !last) return;
  const stop = last.at + last.text.length;
  if (first.text.startsWith("#")) {
    if (!reading.options) readOptions(reading, first.at, stop);
    return;
  }
  if (first.text.startsWith("[")) {
    tell(
      reading,
      first.at,
      stop,
      "This is a Touchstone file of version 2; version 1.1 is read. Save it as version 1.1 (.s1p, .s2p).",
      "version 1.1",
    );
    return;
  }
  if (!reading.options) {
    tell(reading, first.at, stop, "Data stand before the option line.", "an option line first: # MHz S RI R 50");
    reading.options = { scale: 1e9, parameter: "S", format: "MA", reference: 50 };
  }
  readData(reading, words, first.at, stop);
}

function readOptions(reading: Reading, from: number, to: number): void {
  const words = reading.source.text
    .slice(from + 1, to)
    .split(/\s+/)
    .filter((word) => word !== "");
  const options = parseOptions(words);
  reading.options = options.ok ? options.value : { scale: 1, parameter: "S", format: "MA", reference: 50 };
  if (!options.ok) tell(reading, from, to, options.fault.message, options.fault.expected);
}

function readData(
  reading: Reading,
  words: readonly { readonly text: string; readonly at: number }[],
  from: number,
  to: number,
): void {
  const { options } = reading;
  if (!options) return;
  const numbers = words.map((word) => fileNumber(word.text));
  const wrong = numbers.indexOf(null);
  const bad = words[wrong];
  if (bad) {
    tell(
      reading,
      bad.at,
      bad.at + bad.text.length,
      `"${shown(bad.text)}" is not a number.`,
      "a number with a decimal point",
    );
    return;
  }
  const values = numbers.map((number) => number ?? 0);
  const frequency = (values[0] ?? 0) * options.scale;
  const lastFrequency = reading.frequencies.at(-1) ?? Number.NEGATIVE_INFINITY;
  if (reading.width === 9 && values.length === 5 && frequency <= lastFrequency) {
    tell(
      reading,
      from,
      to,
      "Noise data are not read: take the lines from here on out of the file.",
      "network data only",
    );
    return;
  }
  if (reading.width === 0 && (values.length === 3 || values.length === 9)) reading.width = values.length;
  if (values.length !== reading.width) {
    const expected =
      reading.width === 0 ? "3 numbers (one port) or 9 (two ports)" : `${reading.width} numbers, as above`;
    tell(reading, from, to, `${values.length} numbers stand here. Expected: ${expected}.`, expected);
    return;
  }
  if (frequency <= lastFrequency || frequency < 0) {
    tell(
      reading,
      from,
      to,
      "Frequencies must increase from line to line.",
      "a higher frequency than on the line before",
    );
    return;
  }
  keep(reading, options, values, frequency, from, to);
}

function keep(
  reading: Reading,
  options: Options,
  values: readonly number[],
  frequency: number,
  from: number,
  to: number,
): void {
  const pair = (index: number) => complexOf(values[2 * index + 1] ?? 0, values[2 * index + 2] ?? 0, options.format);
  // Two-port lines hold 11, 21, 12, 22 in this order.
  const matrix = reading.width === 9 ? [pair(0), pair(2), pair(1), pair(3)] : [pair(0)];
  const row = toScattering(matrix, options.parameter).flatMap(({ re, im }) => [re, im]);
  if (!row.every(Number.isFinite)) {
    tell(reading, from, to, "These numbers describe no network with finite scattering parameters.", "finite values");
    return;
  }
  reading.frequencies.push(frequency);
  reading.scattering.push(row);
}
