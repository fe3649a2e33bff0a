/** The colours of the roles in both themes. Hues: Okabe and Ito (2008); contrast ratios stand in docs/look.md. */
import type { Role } from "./figure";

export type Theme = "light" | "dark";

const light: Readonly<Record<Role, string>> = {
  paper: "#FFFFFF",
  rail: "#F2F4F5",
  ink: "#171C20",
  ink2: "#4C565E",
  line: "#7B858D",
  hair: "#D3D8DC",
  power: "#0072B2",
  powerInk: "#005A8C",
  powerTint: "#D4E6F2",
  onPower: "#FFFFFF",
  heat: "#D55E00",
  heatInk: "#A24500",
  heatTint: "#FBE3D2",
  field: "#B5618F",
  fieldInk: "#8C3B68",
  fieldTint: "#F4E2EC",
  soil: "#6E6A60",
  soilInk: "#57534A",
  note: "#FFF6D6",
};

const dark: Readonly<Record<Role, string>> = {
  paper: "#12171B",
  rail: "#1A2025",
  ink: "#EEF1F3",
  ink2: "#AEB8BF",
  line: "#7C8891",
  hair: "#333C43",
  power: "#3F9FDD",
  powerInk: "#7CC2F0",
  powerTint: "#17364A",
  onPower: "#08131B",
  heat: "#F0812E",
  heatInk: "#FFA867",
  heatTint: "#4A2A12",
  field: "#CC79A7",
  fieldInk: "#E5A6C8",
  fieldTint: "#3C2433",
  soil: "#8D887B",
  soilInk: "#B9B3A5",
  note: "#3A3314",
};

const themes = { light, dark };

/** Colour of a role as `#RRGGBB`. */
export const colourOf = (theme: Theme, role: Role): string => themes[theme][role];

const propertyName = (role: Role): string => `--fp-${role.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}`;

/** Reference to the CSS custom property of a role: `var(--fp-power-ink)`. */
export const colourProperty = (role: Role): string => `var(${propertyName(role)})`;

/** Declarations of every role for a style sheet: `--fp-paper: #FFFFFF; ...`. */
export const colourDeclarations = (theme: Theme): string =>
  (Object.keys(themes[theme]) as Role[]).map((role) => `${propertyName(role)}: ${themes[theme][role]};`).join(" ");
