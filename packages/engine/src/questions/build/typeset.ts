/** Numbers with their units as formulas hold them: Greek letters of a unit by name, the rest upright. */
import { withPrefix } from "../../quantity/format";

const greek: Readonly<Record<string, string>> = { µ: "\\mu ", Ω: "\\Omega " };

/** "mΩ/m" for a formula. */
export const unitTex = (unit: string): string =>
  unit
    .split(/([µΩ])/)
    .filter((piece) => piece !== "")
    .map((piece) => greek[piece] ?? `\\mathrm{${piece}}`)
    .join("");

/** "1.69 GHz" for a formula. */
export const typeset = (value: number, unit: string, figures = 3): string => {
  const [number = "", prefixed = ""] = withPrefix(value, unit, figures).split(" ");
  return `${number} \\; ${unitTex(prefixed)}`;
};
