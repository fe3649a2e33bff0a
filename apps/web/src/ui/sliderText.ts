/** Places of a slider and the texts of its values, as they are typed. */
import type { ParameterDefinition } from "@feedpath/engine";

type Slider = NonNullable<ParameterDefinition["slider"]>;

/** Steps from end to end. */
export const sliderSteps = 200;

const scales = {
  linear: { to: (value: number) => value, back: (at: number) => at },
  log: { to: Math.log, back: Math.exp },
} as const;

/** SI value at a step. */
export function valueAtStep({ from, to, scale }: Slider, step: number): number {
  const { to: on, back } = scales[scale];
  return back(on(from) + ((on(to) - on(from)) * step) / sliderSteps);
}

/** The nearest step, ends included. */
export function stepOfValue({ from, to, scale }: Slider, value: number): number {
  const { to: on } = scales[scale];
  const share = (on(Math.max(value, 1e-30)) - on(from)) / (on(to) - on(from));
  return Math.round(sliderSteps * Math.min(1, Math.max(0, share)));
}

/** What a person would type: three figures, lengths in millimetres. */
export function typedValue(dimension: ParameterDefinition["dimension"], value: number): string {
  const three = (number: number): string => String(Number(number.toPrecision(3)));
  if (dimension === "length") return value < 1 ? `${three(1e3 * value)} mm` : `${three(value)} m`;
  return three(value);
}
