/** A parameter as a slider beside its field: the answer follows while it moves. */
import type { ParameterDefinition } from "@feedpath/engine";
import { useState } from "react";
import { sliderSteps, stepOfValue, typedValue, valueAtStep } from "./sliderText";
import { useBench, useBenchState } from "./useBench";

type Props = Pick<ParameterDefinition, "name" | "title" | "dimension"> & {
  readonly slider: NonNullable<ParameterDefinition["slider"]>;
  readonly typed: string;
};

export function ParameterSlider({ name, title, dimension, slider, typed }: Props) {
  const bench = useBench();
  const { shown } = useBenchState();
  const [moved, setMoved] = useState<number | null>(null);
  const textAt = (step: number): string => typedValue(dimension, valueAtStep(slider, step));
  const asked = shown?.kind === "answer" ? shown.answer.parameters[name] : undefined;
  const answered = stepOfValue(slider, typeof asked === "number" ? asked : slider.from);
  // The hand leads, the answer follows: only where something else was typed does the knob go where the answer is.
  const step = moved !== null && typed === textAt(moved) ? moved : answered;
  return (
    <input
      type="range"
      className="slider"
      aria-label={title}
      aria-valuetext={textAt(step)}
      min={0}
      max={sliderSteps}
      value={step}
      onChange={(event) => {
        const next = Number(event.target.value);
        setMoved(next);
        bench.setParameter(name, textAt(next));
      }}
    />
  );
}
