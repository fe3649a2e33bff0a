/** The compass around a pattern: north up, clockwise. */
import type { Mark } from "../kit/figure";
import type { LabelBoard } from "../kit/labelBoard";
import type { PolarFrame } from "./polarFrame";

/** Angle on the picture, degrees from the right hand. */
export const compassAngle = (azimuth: number): number => 90 - azimuth;

/** The four winds just outside of the outermost ring. */
export function compassLabels(frame: PolarFrame, board: LabelBoard): Mark[] {
  const { s } = frame;
  const names = [
    ["north", 0, "middle"],
    ["east", 90, "start"],
    ["south", 180, "middle"],
    ["west", 270, "end"],
  ] as const;
  return names.flatMap(([name, azimuth, anchor]) => {
    const [x, y] = frame.at(compassAngle(azimuth), frame.radius + 10 * s);
    const down = azimuth === 180 ? 8 * s : azimuth === 0 ? 0 : 4 * s;
    return board.place({ role: "ink2", size: 12 * s }, [{ lines: [name], x, y: y + down, anchor }]);
  });
}
