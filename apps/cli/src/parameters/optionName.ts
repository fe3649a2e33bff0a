import type { ParameterDefinition } from "@feedpath/engine";

/** `swrBelow` as it is written on the command line: `--swr-below`. */
export const optionName = ({ name }: Pick<ParameterDefinition, "name">): string =>
  `--${name.replace(/[A-Z]/g, (capital) => `-${capital.toLowerCase()}`)}`;

/** What stands after the option in help: an example of the form a value has. */
export function valueForm({ dimension }: ParameterDefinition): string {
  const forms = {
    none: "number",
    length: "length",
    lengthSpan: "length to length",
    frequency: "frequency",
    frequencySpan: "frequency to frequency",
    angle: "angle",
    impedance: "impedance",
    temperature: "temperature",
    time: "time",
    power: "power",
    decibels: "decibels",
    word: "word",
    name: "name",
  };
  return forms[dimension];
}

/** What the parameter is, the words it knows, and what is taken without it. */
export function says({ title, words, otherwise }: ParameterDefinition): string {
  const known = words.length > 0 ? ` (${words.join(", ")})` : "";
  return `${title}${known}; otherwise: ${otherwise}`;
}

/** An example of a value, for help. */
export function exampleValue({ dimension, words, least, most }: ParameterDefinition): string {
  const inside = (value: number): number => Math.min(Math.max(value, least), most);
  const degrees = (angle: number): number => Math.round((angle * 180) / Math.PI);
  const examples = {
    none: () => `${inside(2)}`,
    length: () => `"${inside(10)} m"`,
    lengthSpan: () => `"${inside(5)} m to ${inside(20)} m"`,
    frequency: () => `"${inside(7.1e6) / 1e6} MHz"`,
    frequencySpan: () => `"${inside(7e6) / 1e6} MHz to ${inside(7.2e6) / 1e6} MHz"`,
    angle: () => `"${degrees(inside(Math.PI / 9))} deg"`,
    impedance: () => `"${inside(50)} ohm"`,
    temperature: () => `"${Math.round(inside(293.15) - 273.15)} degC"`,
    time: () => `"${inside(60)} s"`,
    power: () => `"${inside(100)} W"`,
    decibels: () => `"${inside(3)} dB"`,
    word: () => `${words[0]}`,
    name: () => `"line 1"`,
  };
  return examples[dimension]();
}
