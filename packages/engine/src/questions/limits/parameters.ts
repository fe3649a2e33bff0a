/** What may be asked of `limits`. */
import type { ParameterDefinition } from "../common/question";

const quantity = (
  name: string,
  title: string,
  dimension: ParameterDefinition["dimension"],
  span: readonly [least: number, most: number],
  otherwise: string,
): ParameterDefinition => ({ name, title, dimension, words: [], least: span[0], most: span[1], otherwise });

const word = (name: string, title: string, words: readonly string[], otherwise: string): ParameterDefinition => ({
  name,
  title,
  dimension: "word",
  words,
  least: 0,
  most: 0,
  otherwise,
});

export const limitParameters: readonly ParameterDefinition[] = [
  quantity(
    "airTemperature",
    "air on the hottest day",
    "temperature",
    [223.15, 343.15],
    "the file's `site`, else 40 °C",
  ),
  quantity("altitude", "height above the sea", "length", [-450, 6000], "the file's `site`, else sea level"),
  word(
    "lies",
    "how the lines lie",
    ["in air", "in the sun", "buried", "in a conduit", "on a drum"],
    "as the file says, else in air and shade; buried where the route is",
  ),
  word("modulation", "kind of sending", ["SSB", "AM", "keyed", "digital"], "the file's `duty`"),
  quantity(
    "transmission",
    "longest time of sending without a pause",
    "time",
    [1, 86_400],
    "the file's `on air`, else without end",
  ),
  quantity("gap", "least gap between plates or contacts of the tuner", "length", [5e-5, 0.05], "its `voltage limit`"),
];
