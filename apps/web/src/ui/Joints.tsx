/** The joints of the path as a row to walk along: left and right go from one to the next, its readings stand below. */
import type { Joint } from "@feedpath/engine";
import type { Figure, Mark } from "@feedpath/figures";
import { type KeyboardEvent, useRef, useState } from "react";
import { sayComplex, sayNumber, sayQuantity } from "./say";

interface JointsProps {
  readonly joints: readonly Joint[];
  readonly figure: Figure;
}

/** Widest the readings of a joint are set, px. */
const saysWidth = 280;

export function Joints({ joints, figure }: JointsProps) {
  const [current, setCurrent] = useState(0);
  const [shown, setShown] = useState<number | null>(null);
  const row = useRef<HTMLDivElement>(null);
  const focus = (index: number) => row.current?.querySelectorAll("button")[index]?.focus();
  const walk = (event: KeyboardEvent) => {
    const step = event.key === "ArrowRight" ? 1 : event.key === "ArrowLeft" ? -1 : 0;
    const end = event.key === "Home" ? 0 : event.key === "End" ? joints.length - 1 : null;
    if (event.key === "Escape") setShown(null);
    if (step === 0 && end === null) return;
    event.preventDefault();
    focus(end ?? Math.min(joints.length - 1, Math.max(0, current + step)));
  };
  const joint = shown === null ? undefined : joints[shown];
  const place = joint && placeOf(figure.marks, joint.name);
  return (
    <>
      {/* biome-ignore lint/a11y/useSemanticElements: a row of marks on a picture, not a form's fieldset */}
      <div className="joints" role="group" aria-label="Joints, from the transmitter on" ref={row} onKeyDown={walk}>
        {joints.map(({ name }, index) => {
          const mark = placeOf(figure.marks, name);
          if (!mark) return null;
          return (
            <button
              key={name}
              type="button"
              className="joint"
              tabIndex={index === Math.min(current, joints.length - 1) ? 0 : -1}
              aria-label={`Joint ${name}: ${sayJoint(joints[index]!)}`}
              style={{ left: mark.x, top: mark.y }}
              onFocus={() => {
                setCurrent(index);
                setShown(index);
              }}
              onMouseEnter={() => setShown(index)}
              onMouseLeave={() => setShown(null)}
              onBlur={() => setShown(null)}
            />
          );
        })}
      </div>
      {joint && place && (
        <p
          className="joint-says label"
          aria-hidden="true"
          style={{ left: Math.max(0, Math.min(place.x - 24, figure.width - saysWidth)), top: place.y + 24 }}
        >
          <strong>{joint.name}</strong>
          {sayJoint(joint)}
        </p>
      )}
    </>
  );
}

/** "SWR 1.8 on 50 Ω, 76.5 − j23.4 Ω, 91 V, 1.1 A, 100 W". */
export function sayJoint(joint: Joint): string {
  const { swr, impedance, voltage, current, power } = joint;
  const ratio = swr.value === null ? "without bound" : sayNumber(swr.value);
  return [
    `SWR ${ratio} on ${sayQuantity(swr.reference, "ohm")}`,
    sayComplex(impedance.re, impedance.im, "ohm"),
    sayQuantity(voltage.rms, "V"),
    sayQuantity(current.rms, "A"),
    sayQuantity(power, "W"),
  ].join(", ");
}

/** Where the mark of a joint stands in the picture, px. */
function placeOf(marks: readonly Mark[], name: string): { x: number; y: number } | null {
  for (const mark of marks) {
    if (mark.id === name) {
      const place = pointOf(mark);
      if (place) return place;
    }
    if (mark.kind === "group") {
      const place = placeOf(mark.id === name ? [] : mark.marks, name);
      if (place) return place;
    }
  }
  return null;
}

function pointOf(mark: Mark): { x: number; y: number } | null {
  if (mark.kind === "circle") return { x: mark.cx, y: mark.cy };
  if (mark.kind === "line") return { x: mark.x1, y: Math.min(mark.y1, mark.y2) };
  if (mark.kind === "group") for (const inner of mark.marks) return pointOf(inner);
  return null;
}
