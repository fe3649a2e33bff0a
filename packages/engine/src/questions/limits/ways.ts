/** The hottest line in every way it could lie. */
import type { Lying } from "../../station/path";
import { lineHeat } from "./lineHeat";
import type { LineStudy, Study } from "./study";

export interface Way {
  readonly lies: Lying;
  /** °C of the inner conductor. */
  readonly temperature: number;
  /** Times the power may be raised. */
  readonly times: number;
}

const ways: readonly Lying[] = ["in air", "in the sun", "buried", "in a conduit", "on a drum"];

export const waysToLie = ({ worked: { point }, conditions }: Study, { part }: LineStudy): Way[] =>
  ways.flatMap((lies) => {
    const heat = lineHeat(point, part, { ...conditions, lies });
    return heat ? [{ lies, temperature: heat.temperatures.inner - 273.15, times: heat.times }] : [];
  });
