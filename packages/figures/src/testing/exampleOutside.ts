/** An answer to `outside`, made by hand. Every number is invented: none is a result and none may be quoted. */
import type { Answer, Table } from "@feedpath/engine";
import { exampleAnswer } from "./exampleAnswer";

const steps = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

const length = 24;

function currentTable(): Table {
  const distance = steps(0, length, 33);
  const wave = (d: number, scale: number) => scale * Math.abs(Math.sin((2 * Math.PI * d) / 38));
  return {
    name: "outsideCurrent",
    axis: "distance",
    columns: {
      distance: { unit: "m", values: distance },
      current: { unit: "A", values: distance.map((d) => wave(d, 0.28)) },
      share: { unit: "%", values: distance.map((d) => wave(d, 20)) },
      withoutChokes: { unit: "A", values: distance.map((d) => wave(d + 1, 0.62)) },
      withPerfectChoke: { unit: "A", values: distance.map((d) => wave(length - d, 0.02)) },
    },
  };
}

function reactanceTable(): Table {
  const reactance = steps(-5000, 5000, 51);
  const left = (r: number, x: number) => 3.2e4 / Math.hypot(r + 210, x + 800);
  const at = (r: number) => ({ unit: "%", values: reactance.map((x) => left(r, x)) });
  return {
    name: "chokeReactance",
    axis: "reactance",
    columns: {
      reactance: { unit: "ohm", values: reactance },
      withNoResistance: at(0),
      withThreeHundredOhm: at(300),
      withOneKilohm: at(1000),
      withThreeKilohm: at(3000),
      withTenKilohm: at(10000),
    },
  };
}

const placeTable: Table = {
  name: "chokePlace",
  axis: "distance",
  columns: {
    distance: { unit: "m", values: [6, 12, 18, 24] },
    shareWithChoke: { unit: "%", values: [31, 14, 22, 9] },
    resistanceNeeded: { unit: "ohm", values: [null, 4100, null, 2300] },
  },
};

function lengthTable(): Table {
  const extra = steps(-8, 12, 11);
  const share = (d: number, scale: number) => scale * (1.1 + Math.sin((2 * Math.PI * d) / 21));
  return {
    name: "outsideLength",
    axis: "extraLength",
    columns: {
      extraLength: { unit: "m", values: extra },
      share: { unit: "%", values: extra.map((d) => share(d, 14)) },
      shareWithoutChokes: { unit: "%", values: extra.map((d) => share(d - 3, 41)) },
      swrAtTransmitter: { unit: "1", values: extra.map((d) => 1.4 + 0.02 * d) },
    },
  };
}

/** A line of 24 m with one choke at its feed, its transmitter's end floating. */
export function exampleOutside(): Answer {
  const base = exampleAnswer();
  const percent = (value: number) => ({ value, unit: "%" });
  return {
    ...base,
    question: "outside",
    asked: "Does the outside of the line carry current?",
    headline: "The outside of the line carries 0.28 A, 20 % of the current in the antenna.",
    parameters: {
      judged: "outsideShare",
      places: "window choke at 6.00; choke at 24.00",
      bonds: "mast rod at 14.00",
      earthed: null,
      tried: "3000 Ω",
      studiedAt: length,
    },
    values: {
      ...base.values,
      lengthOfOutside: { value: length, unit: "m" },
      outsideShare: percent(20),
      outsideCurrent: { value: 0.28, unit: "A" },
      outsideCurrentAt: { value: 9.5, unit: "m" },
      outsideCurrentAtHouse: { value: 0.24, unit: "A" },
      chokeHeatOnAir: { value: 2.1, unit: "W" },
      worstReactance: { value: -800, unit: "ohm" },
      shareAtWorstReactance: percent(152),
      resistanceNeeded: { value: 5900, unit: "ohm" },
      worstExtraLength: { value: 6, unit: "m" },
      shareAtWorstLength: percent(29),
    },
    tables: [currentTable(), reactanceTable(), placeTable, lengthTable(), ...base.tables],
  };
}
