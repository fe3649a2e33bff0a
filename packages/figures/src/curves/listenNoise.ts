/** Noise from outside against that of line and receiver over frequency, and what the line costs in signal to noise. */
import type { Answer, Table } from "@feedpath/engine";
import { numbersOf, optionalNumber, requiredColumn, requiredNumber, requiredTable, scalar } from "../kit/answerValues";
import type { Figure } from "../kit/figure";
import { fixedText, plainText, withUnit } from "../kit/numberText";
import { drawChart } from "./chart";
import type { ChartOptions, Curve, Panel, Vertical } from "./chartTypes";
import { frequencyText, placeOf } from "./frequencyAxis";
import { roundSpan } from "./panelFrame";
import { allNumbers, figureTable, valueAt } from "./tableValues";

/** dB of signal to noise up to which nothing is heard of it, as the question has it. */
const unheard = 0.5;

/** MHz at which the axis has its numbers; fewer on a narrow picture. */
const wide = [2, 5, 10, 20, 50, 100, 200, 400];
const narrow = [2, 10, 50, 400];

const ticksOf = (width: number) =>
  (width < 420 ? narrow : wide).map((megahertz) => ({ value: placeOf(megahertz), text: plainText(megahertz, 0) }));

const noiseCurve = (table: Table): Curve => ({
  series: "externalNoise",
  ...requiredColumn(table, "externalNoise"),
  role: "field",
  labelRole: "fieldInk",
  dashed: false,
  labels: ["from outside", "outside"],
});

const behindCurve = (table: Table): Curve => ({
  series: "receiverNoiseAtAntenna",
  values: requiredColumn(table, "receiverNoiseAtAntenna").values,
  role: "ink",
  labelRole: "ink",
  dashed: true,
  labels: ["receiver behind the line", "receiver"],
});

function noisePanel(table: Table): Panel {
  const [from, to] = roundSpan(allNumbers(table, ["externalNoise", "receiverNoiseAtAntenna"]));
  return {
    name: "noise at the antenna, dB over thermal noise",
    height: 168,
    from,
    to,
    curves: [noiseCurve(table), behindCurve(table)],
    rings: [],
  };
}

/** The line alone would cost these many dB in the station as it is, at its own frequency. */
function costPanel(answer: Answer, table: Table): Panel {
  const bands = requiredTable(answer, "byBand");
  const places = numbersOf(bands, "frequency");
  const costs = requiredColumn(bands, "snrLossByLine").values;
  const values = [...allNumbers(table, ["snrLossByLine"]), ...costs.filter((c): c is number => c !== null)];
  const rings = places.flatMap((megahertz, i) => {
    const value = costs[i] ?? null;
    const inside = megahertz >= numbersOf(table, "frequency")[0]! && megahertz <= numbersOf(table, "frequency").at(-1)!;
    if (value === null || !inside) return [];
    return [{ at: placeOf(megahertz), value, text: costText(value), quiet: megahertz !== answer.frequency / 1e6 }];
  });
  return {
    name: "signal to noise that the line costs, dB",
    height: 150,
    from: 0,
    to: roundSpan([0, Math.max(1, ...values)])[1],
    curves: [
      {
        series: "snrLossByLine",
        ...requiredColumn(table, "snrLossByLine"),
        role: "heat",
        labelRole: "heatInk",
        dashed: false,
        labels: ["into a matched antenna", "matched"],
      },
    ],
    rings,
  };
}

const costText = (decibels: number): string =>
  decibels < 0.005 ? `below ${withUnit("0.01", "dB")}` : withUnit(fixedText(decibels, decibels < 0.095 ? 2 : 1), "dB");

function verticalsOf(answer: Answer): Vertical[] {
  const from = optionalNumber(answer, "lineMattersFrom");
  const here = answer.frequency / 1e6;
  return [
    { at: placeOf(here), text: answer.band === "" ? frequencyText(here) : answer.band, main: true },
    ...(from === null
      ? []
      : [
          {
            at: placeOf(from),
            text: `line alone: 0.5 dB from ${frequencyText(Number(from.toPrecision(2)))}`,
            main: false,
          },
        ]),
  ];
}

function titleOf(answer: Answer): string {
  const cost = requiredNumber(answer, "snrLossByLine");
  const from = optionalNumber(answer, "lineMattersFrom");
  const where = answer.band === "" ? `At ${frequencyText(answer.frequency / 1e6)}` : `On ${answer.band}`;
  const name = scalar(answer, "snrLossByLine")?.says ?? "line";
  const here = `${where} the ${name} ${name.endsWith("s") ? "cost" : "costs"} ${costText(cost).replace("below", "less than")} of signal to noise`;
  if (cost >= unheard) return here;
  return from === null
    ? `${here}, and hardly more up to 432 MHz`
    : `${here}; from ${frequencyText(Number(from.toPrecision(2)))} on it matters`;
}

/** Figure of the answer to `listen`. Noise figures in dB over k T0 b. */
export function listenNoise(answer: Answer, options: ChartOptions): Figure {
  const table = requiredTable(answer, "byFrequency");
  const frequencies = numbersOf(table, "frequency");
  const title = titleOf(answer);
  const drawn = drawChart({
    ...options,
    axis: {
      values: frequencies.map(placeOf),
      ticks: ticksOf(options.width / (options.scale ?? 1)),
      name: "frequency, MHz",
    },
    panels: [noisePanel(table), costPanel(answer, table)],
    verticals: verticalsOf(answer).filter(
      ({ at }) => at >= placeOf(frequencies[0]!) && at <= placeOf(frequencies.at(-1)!),
    ),
    note: "Bands: the noise without its lowest and highest tenth within an hour. Rings and dots: the station on its own bands, with all of its path.",
  });
  return {
    name: "listenNoise",
    title,
    width: options.width,
    height: drawn.height,
    scale: options.scale ?? 1,
    marks: drawn.marks,
    description: describe(answer, table, title),
    table: figureTable(table, "Noise and line over frequency", {
      frequency: "frequency",
      externalNoise: "noise from outside",
      receiverNoiseAtAntenna: "receiver and line, at the antenna",
      matchedLineLoss: "line loss, matched",
      snrLossByLine: "signal to noise that the line costs",
    }),
  };
}

function describe(answer: Answer, table: Table, title: string): string {
  const told = [3.5, 28, 144, 430].map((megahertz) => {
    const cost = valueAt(table, "snrLossByLine", megahertz);
    return cost === null ? "" : ` At ${frequencyText(megahertz)} it costs ${costText(cost)}.`;
  });
  const place = String(answer.parameters.noisePlace ?? "");
  return `Over frequency: noise from outside in a ${place} place beside that of the receiver behind its line, and what the line costs in signal to noise. ${title}.${told.join("")}`;
}
