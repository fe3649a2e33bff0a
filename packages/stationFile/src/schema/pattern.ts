/** Regular expressions for editors: what a value of a dimension looks like. The parsers decide; these only help typing. */
import { type DimensionName, dimensions } from "../units/dimensions";

const figure = String.raw`[+-]?(\d+(\.\d*)?|\.\d+)([eE][+-]?\d+)?`;

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/]/g, String.raw`\$&`);

/** Units with both micro signs, ohm signs and degree signs, and a space allowed after "100". */
function unitPattern(name: DimensionName): string {
  const units = Object.keys(dimensions[name].units).map((unit) =>
    escaped(unit)
      .replace(/^u/, "[uµμ]")
      .replace("Ω", "[ΩΩ]")
      .replace("ohm", "ohm")
      .replace(/10+/, "$& ?")
      .replace(/^deg([CF])$/, "(deg|°)$1")
      .replace(/^deg$/, "(deg|°)"),
  );
  return `(${units.join("|")})`;
}

function amountPattern(name: DimensionName): string {
  const { bare } = dimensions[name];
  const unit = Object.keys(dimensions[name].units).length === 0 ? "" : ` ?${unitPattern(name)}`;
  const one = bare && unit !== "" ? `${figure}(${unit})?` : `${figure}${unit}`;
  return name === "length" ? String.raw`(${one}|\d+(\.\d+)? ?ft \d+(\.\d+)? ?in)` : `(${one})`;
}

/** Pattern of an exact or uncertain value; `unknown` is added where the catalogue publishes a range. */
export function quantityPattern(name: DimensionName): string {
  const amount = amountPattern(name);
  const bound = String.raw` ?(±|\+/-|\+-) ?(${amount}|\d+(\.\d+)? ?%)`;
  return `^(${amount}(${bound})?|between ${amount} and ${amount})$`;
}

/** Pattern of "A to B". */
export const spanPattern = (name: DimensionName): string => `^${amountPattern(name)} to ${amountPattern(name)}$`;
