/** What opens the outside of a line at a joint: chokes, baluns, transformers whose sides are apart. */
import { type Complex, complex } from "../../numerics/complex";
import { readSpectrum } from "../../quantity/spectrum";
import type { Part } from "../../station/path";
import { assume, type Growing } from "../growing";

export interface Opening {
  readonly name: string;
  readonly impedance: ((angularFrequency: number) => Complex) | "open";
  readonly heatLimit: number | null;
}

/** What this part puts in series with the outside of the line; null: nothing. */
export function openingOf(part: Part, growing: Growing): Opening | null {
  if (part.kind === "choke") {
    const { resistance, reactance } = part;
    if (reactance === null)
      assume(growing, part.name, "resistive, without reactance", "the file gives no reactance of the choke");
    const impedance = (w: number): Complex => {
      const f = w / (2 * Math.PI);
      return complex(
        readSpectrum(resistance, f).quantity.value,
        reactance ? readSpectrum(reactance, f).quantity.value : 0,
      );
    };
    return { name: part.name, impedance, heatLimit: part.heatLimit?.value ?? null };
  }
  if (part.kind === "balun") {
    const { choking } = part;
    if (choking && part.form === "current") {
      const impedance = (w: number): Complex => complex(readSpectrum(choking, w / (2 * Math.PI)).quantity.value);
      return { name: part.name, impedance, heatLimit: part.heatLimit?.value ?? null };
    }
    const why =
      part.form === "voltage"
        ? "a voltage balun holds both sides of the antenna, not the outside of the line"
        : "the file gives no `choking`";
    assume(growing, part.name, "no current from its case to the outside of the line", why);
    return { name: part.name, impedance: "open", heatLimit: null };
  }
  if (part.kind === "transformer" && part.sides === "isolated") {
    assume(
      growing,
      part.name,
      "nothing passes between its windings along the outside",
      "their capacitance is not known",
    );
    return { name: part.name, impedance: "open", heatLimit: null };
  }
  return null;
}
