/** The headlines of `bounce`. English. */
import type { Phrase } from "../answer/answer";
import { plainNumber, withPrefix } from "../quantity/format";
import { type BounceFacts, echoesSay, ohmic, swingTime, toldWatts } from "./bounce";
import { linked, said } from "./phrases";

export function bounceHeadline(f: BounceFacts): Phrase[] {
  if (f.signal === "step") return stepHeadline(f);
  if (f.signal === "pulse") return pulseHeadline(f);
  const settled = settledSays(f);
  if (f.loadKind === "open" || f.loadKind === "shorted") {
    const kind = f.loadKind === "open" ? "the open end" : "the short";
    return [...settled, said(`${kind} takes `), linked("no power", "powerOutOfLine"), said(".")];
  }
  const { into, out } = toldWatts(f);
  const where =
    f.loadKind === "antenna"
      ? " reach the antenna."
      : f.loadKind === "rest"
        ? " come through."
        : ` go into ${f.load!.im === 0 ? ohmic(f.load!) : "the load"}.`;
  return [...settled, linked(out, "powerOutOfLine"), said(" of "), linked(into, "powerIntoLine"), said(where)];
}

/** By time where the load comes into swing more slowly than the echoes fade, else by echoes. */
function settledSays(f: BounceFacts): Phrase[] {
  const time = swingTime(f);
  if (time !== null) return [said("Settled after "), linked(shortTime(time), "settlingTime"), said(": ")];
  if (f.echoes === null) return [said("Not settled after 200 echoes: ")];
  if (f.echoes === 0) return [said("No echo worth telling: ")];
  return [said("Settled after "), linked(echoesSay(f.echoes), "echoesToSettle"), said(": ")];
}

/** Ohm at the start at last, in a few words. */
function atLastSays({ home }: BounceFacts): string {
  const after = home?.after ?? null;
  return after === null || Math.abs(after) > noCurrent ? "no current" : shortOhms(Math.abs(after));
}

const shortOhms = (ohm: number): string =>
  ohm >= 1000 ? withPrefix(ohm, "Ω", 2) : `${plainNumber(ohm, ohm < 10 ? 1 : 0)} Ω`;

/** One decimal at most: "283 ns", "1.1 µs". */
const shortTime = (seconds: number): string => withPrefix(seconds, "s", seconds < 999e-9 ? 3 : 2);

/** Ohm from which on next to nothing flows. */
const noCurrent = 1e4;

const stepHeadline = (f: BounceFacts): Phrase[] => [
  said("The line shows "),
  linked(`${plainNumber(f.home?.before ?? f.surgeImpedance, 0)} Ω`, "seenBeforeEcho"),
  said(" for "),
  linked(shortTime(2 * f.delay), "firstEchoHome"),
  said(", "),
  linked(atLastSays(f), "seenAtLast"),
  said(` after ${shortTime(f.home?.filmed ?? 0)}.`),
];

/** Below this share of the first wave an echo is not told. */
const leastEcho = 1;

function pulseHeadline(f: BounceFacts): Phrase[] {
  const share = f.home?.share ?? 0;
  if (Math.abs(share) < leastEcho)
    return [said("No echo worth telling: "), linked("the pulse", "firstEchoShare"), said(" stays in the load.")];
  return [
    said(`The pulse comes home ${share < 0 ? "upside down " : ""}after `),
    linked(shortTime(2 * f.delay), "firstEchoHome"),
    said(", "),
    linked(`${plainNumber(Math.abs(share), 0)} %`, "firstEchoShare"),
    said(" of it."),
  ];
}
