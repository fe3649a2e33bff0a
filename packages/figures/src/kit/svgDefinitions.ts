/** Patterns, fades and lobes of one picture, each defined once under an id of its own. */
import type { Fill, Role } from "./figure";
import { rounded } from "./outline";

type Colour = (role: Role) => string;

export interface SvgDefinitions {
  /** Value of the `fill` attribute. */
  readonly paint: (fill: Fill) => string;
  /** Value of the `mask` attribute, or null: fades to nothing go through a mask, so that patterns and strokes fade too. */
  readonly mask: (fill: Fill) => string | null;
  readonly markup: () => string;
}

const hatch = (colour: Colour, role: Role, tint: Role, s: number): string =>
  `width="${rounded(5 * s)}" height="${rounded(5 * s)}" patternTransform="rotate(45)"><rect width="${rounded(5 * s)}" ` +
  `height="${rounded(5 * s)}" fill="${colour(tint)}"/><rect width="${rounded(2.2 * s)}" height="${rounded(5 * s)}" ` +
  `fill="${colour(role)}"/></pattern>`;

const dots = (colour: Colour, role: Role, tint: Role, s: number): string => {
  const p = rounded(7 * s);
  const dot = (x: number, y: number) =>
    `<circle cx="${rounded(x * s)}" cy="${rounded(y * s)}" r="${rounded(0.85 * s)}" fill="${colour(role)}"/>`;
  return `width="${p}" height="${p}"><rect width="${p}" height="${p}" fill="${colour(tint)}"/>${dot(1.75, 1.75)}${dot(5.25, 5.25)}</pattern>`;
};

function fadeGradient(id: string, fade: NonNullable<Fill["fade"]>, from: string, to: string): string {
  const [x2, y2] = fade.direction === "right" ? [fade.end, 0] : [0, fade.end];
  const [x1, y1] = fade.direction === "right" ? [fade.start, 0] : [0, fade.start];
  return (
    `<linearGradient id="${id}" gradientUnits="userSpaceOnUse" x1="${rounded(x1)}" y1="${rounded(y1)}" ` +
    `x2="${rounded(x2)}" y2="${rounded(y2)}"><stop offset="0" ${from}/><stop offset="1" ${to}/></linearGradient>`
  );
}

function lobeGradient(id: string, radial: NonNullable<Fill["radial"]>, colour: string): string {
  const place = `cx="${rounded(radial.cx)}" cy="${rounded(radial.cy)}" r="${rounded(radial.r)}"`;
  return (
    `<radialGradient id="${id}" gradientUnits="userSpaceOnUse" ${place}><stop offset="0" stop-color="${colour}" ` +
    `stop-opacity="${radial.centre}"/><stop offset="1" stop-color="${colour}" stop-opacity="${radial.edge}"/></radialGradient>`
  );
}

/** `idPrefix` keeps ids apart between pictures of one page; `size`: of the picture, px; `s`: its scale. */
export function createSvgDefinitions(
  idPrefix: string,
  colour: Colour,
  size: { readonly width: number; readonly height: number },
  s: number,
): SvgDefinitions {
  const known = new Map<string, { readonly id: string; readonly markup: string }>();
  const define = (key: string, write: (id: string) => string): string => {
    const found = known.get(key);
    if (found) return found.id;
    const id = `${idPrefix}-${known.size + 1}`;
    known.set(key, { id, markup: write(id) });
    return id;
  };
  const pattern = (role: Role, kind: "hatch" | "dots"): string =>
    define(`${kind} ${role}`, (id) => {
      const tint: Role = role === "heat" ? "heatTint" : "fieldTint";
      const body = kind === "hatch" ? hatch(colour, role, tint, s) : dots(colour, role, tint, s);
      return `<pattern id="${id}" patternUnits="userSpaceOnUse" ${body}`;
    });
  const stop = (text: string) => `stop-color="${text}"`;
  return {
    paint: (fill) => {
      const { radial, fade } = fill;
      if (radial) {
        const key = `radial ${fill.role} ${JSON.stringify(radial)}`;
        return `url(#${define(key, (id) => lobeGradient(id, radial, colour(fill.role)))})`;
      }
      if (fill.pattern) return `url(#${pattern(fill.role, fill.pattern)})`;
      if (fade && fade.to !== "none") {
        const to = colour(fade.to);
        const key = `fade ${fill.role} ${JSON.stringify(fade)}`;
        return `url(#${define(key, (id) => fadeGradient(id, fade, stop(colour(fill.role)), stop(to)))})`;
      }
      return colour(fill.role);
    },
    mask: (fill) => {
      const { fade } = fill;
      if (fade?.to !== "none") return null;
      const key = `mask ${fade.direction} ${rounded(fade.start)} ${rounded(fade.end)}`;
      const id = define(key, (maskId) => {
        const gradient = fadeGradient(
          `${maskId}-fade`,
          fade,
          'stop-color="#fff"',
          'stop-color="#fff" stop-opacity="0"',
        );
        const area = `x="0" y="0" width="${rounded(size.width)}" height="${rounded(size.height)}"`;
        return `${gradient}<mask id="${maskId}" maskUnits="userSpaceOnUse" ${area}><rect ${area} fill="url(#${maskId}-fade)"/></mask>`;
      });
      return `url(#${id})`;
    },
    markup: () => (known.size === 0 ? "" : `<defs>${[...known.values()].map((entry) => entry.markup).join("")}</defs>`),
  };
}
