/** A sentence set in the book face with its numbers in the number face, each unbroken from its unit. */
import type { ReactNode } from "react";

const unit =
  "(?:[\\u00b0%]|(?:MHz|kHz|GHz|Hz|dBi|dB|mS/m|S/m|k\\u03a9|\\u03a9|ohm|kV/cm|kV|mV|MV/m|V/m|V|mA|A/m|A|MW|kW|mW|\\u00b5W|W|\\u00b5J|[pnm]J|kg|\\u00b5s|ns|km|cm|mm|m|ft|in|\\u00b5H|nH|pF|min|s)(?:/100\\s?m|/m)?(?!\\p{L}))";
/** A number, the imaginary part of an impedance with it, and its unit. */
const number = new RegExp(
  `(?<![\\p{L}\\p{N}.\\-])[+\\u2212-]?\\d+(?:\\.\\d+)?(?: [\\u2212+]\\s?j\\d+(?:\\.\\d+)?)?(?:\\s?${unit})?(?!\\p{L})`,
  "gu",
);

/** An S-unit stays on one line too. */
const unbroken = (text: string): string => text.replaceAll("S-unit", "S\u2011unit");

export function Prose({ text }: { readonly text: string }) {
  const pieces: ReactNode[] = [];
  let end = 0;
  for (const found of text.matchAll(number)) {
    pieces.push(unbroken(text.slice(end, found.index)));
    pieces.push(
      <span className="number" key={found.index}>
        {found[0].replaceAll(" ", "\u00a0")}
      </span>,
    );
    end = found.index + found[0].length;
  }
  pieces.push(unbroken(text.slice(end)));
  return <>{pieces}</>;
}
