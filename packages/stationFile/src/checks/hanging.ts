/** Wires that hang between their ends: long enough, drawn hard enough, and not straight up. Metres, newtons. */
import type { Shape } from "@feedpath/engine";
import { fault } from "../building/build";
import type { KeyPath } from "../reading/sourceText";
import { formatAmount } from "../units/formatQuantity";
import type { Checked } from "./checked";

type HungWire = Extract<Shape, { kind: "wires" }>["wires"][number];

/** Differences below this are rounding, m. */
const tolerance = 1e-6;
/** Half the level distance of the ends over tension/weight: at 2 the wire hangs about as deep as its ends are apart. */
const slackest = 2;

export function checkHanging(checked: Checked, { name, from, to, hangs }: HungWire, path: KeyPath): void {
  if (!hangs) return;
  const tell = (message: string, expected: string): void =>
    checked.build.report([...path, hangs.kind], "value", fault(message, expected));
  const run = Math.hypot(to[0].value - from[0].value, to[1].value - from[1].value);
  const chord = Math.hypot(run, to[2].value - from[2].value);
  if (run < tolerance) {
    tell(`The ends of "${name}" lie above each other: nothing hangs between them.`, "no length and no tension here");
  } else if (hangs.kind === "length") {
    if (hangs.length.value >= chord - tolerance) return;
    const message = `The wire "${name}" is ${length(hangs.length.value)} long; its ends are ${length(chord)} apart.`;
    tell(message, `${length(chord)} or more`);
  } else if (hangs.tension.low < (run * hangs.weight) / (2 * slackest)) {
    const least = (run * hangs.weight) / (2 * slackest);
    const message = `With so little pull the wire "${name}" would hang deeper than its ends are apart.`;
    tell(message, `${formatAmount(Number(least.toPrecision(2)), "force")} or more`);
  }
}

const length = (value: number): string => formatAmount(Number(value.toFixed(3)), "length");
