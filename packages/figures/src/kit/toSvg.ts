/** A figure as SVG text. The only place that knows themes; every text is escaped. */
import { colourOf, colourProperty, type Theme } from "./colours";
import { escapeText } from "./escape";
import type { Figure, Fill, Mark, Role, Stroke } from "./figure";
import type { TextMark } from "./labelBoard";
import { rounded } from "./outline";
import { createSvgDefinitions, type SvgDefinitions } from "./svgDefinitions";
import { typefaces } from "./typefaces";

export interface SvgOptions {
  /** `css` writes `var(--fp-...)` (`colourDeclarations`), so that the page switches the theme. */
  readonly theme: Theme | "css";
  /** Start of every id in the picture: letters, digits, hyphens; unique on the page. */
  readonly idPrefix: string;
  /** A file of its own: paper, size, title and description inside. */
  readonly standalone?: boolean;
}

interface Pen {
  readonly colour: (role: Role) => string;
  readonly definitions: SvgDefinitions;
}

type Attribute = readonly [name: string, value: string | number | null | undefined];

const attributes = (list: readonly Attribute[]): string =>
  list
    .filter(([, value]) => value !== null && value !== undefined)
    .map(([name, value]) => ` ${name}="${typeof value === "number" ? rounded(value) : escapeText(value!)}"`)
    .join("");

function fillAttributes(fill: Fill | undefined, pen: Pen): Attribute[] {
  if (!fill) return [["fill", "none"]];
  return [
    ["fill", pen.definitions.paint(fill)],
    ["fill-opacity", fill.opacity],
    ["mask", pen.definitions.mask(fill)],
  ];
}

const strokeAttributes = (stroke: Stroke | undefined, pen: Pen): Attribute[] =>
  stroke
    ? [
        ["stroke", pen.colour(stroke.role)],
        ["stroke-width", stroke.width],
        ["stroke-dasharray", stroke.dash],
      ]
    : [];

const baseAttributes = (mark: Mark): Attribute[] => [
  ["data-name", mark.id],
  ["data-datum", mark.datum ? `${mark.datum.series}:${mark.datum.index}` : null],
];

function textMarkup(mark: TextMark, pen: Pen): string {
  const halo: Attribute[] = mark.halo
    ? [
        ["stroke", pen.colour(mark.halo.role)],
        ["stroke-width", mark.halo.width],
        ["stroke-linejoin", "round"],
        ["paint-order", "stroke"],
      ]
    : [];
  const list: Attribute[] = [
    ...baseAttributes(mark),
    ["x", mark.x],
    ["y", mark.y],
    ["font-family", mark.face === "numbers" ? null : typefaces[mark.face]],
    ["font-size", mark.size],
    ["font-weight", mark.weight],
    ["font-style", mark.italic ? "italic" : null],
    ["text-anchor", mark.anchor === "start" ? null : mark.anchor],
    ["fill", pen.colour(mark.role)],
    ...halo,
  ];
  return `<text${attributes(list)}>${escapeText(mark.text)}</text>`;
}

function shapeAttributes(mark: Exclude<Mark, { kind: "text" | "group" }>): Attribute[] {
  switch (mark.kind) {
    case "path":
      return [
        ["d", mark.d],
        ["stroke-linejoin", "round"],
      ];
    case "line":
      return (["x1", "y1", "x2", "y2"] as const).map((name) => [name, mark[name]]);
    case "rect":
      return [
        ["x", mark.x],
        ["y", mark.y],
        ["width", mark.width],
        ["height", mark.height],
        ["rx", mark.radius],
      ];
    case "circle":
      return (["cx", "cy", "r"] as const).map((name) => [name, mark[name]]);
  }
}

function markup(mark: Mark, pen: Pen): string {
  if (mark.kind === "text") return textMarkup(mark, pen);
  if (mark.kind === "group") {
    return `<g${attributes(baseAttributes(mark))}>${mark.marks.map((inner) => markup(inner, pen)).join("")}</g>`;
  }
  const fill = mark.kind === "line" ? [] : fillAttributes(mark.fill, pen);
  const list = [...baseAttributes(mark), ...shapeAttributes(mark), ...fill, ...strokeAttributes(mark.stroke, pen)];
  return `<${mark.kind}${attributes(list)}/>`;
}

/** SVG text of a figure: one element, no scripts, nothing fetched, no style sheet needed but for theme `css`. */
export function toSvg(figure: Figure, options: SvgOptions): string {
  if (!/^[A-Za-z][A-Za-z0-9-]*$/.test(options.idPrefix)) {
    throw new Error(
      `The id prefix "${options.idPrefix}" of figure ${figure.name} is not usable: expected a letter, then letters, digits, hyphens.`,
    );
  }
  const { theme } = options;
  const colour = (role: Role) => (theme === "css" ? colourProperty(role) : colourOf(theme, role));
  const definitions = createSvgDefinitions(options.idPrefix, colour, figure, figure.scale ?? 1);
  const drawn = figure.marks.map((mark) => markup(mark, { colour, definitions })).join("");
  const size: Attribute[] = [
    ["width", figure.width],
    ["height", figure.height],
    ["viewBox", `0 0 ${rounded(figure.width)} ${rounded(figure.height)}`],
  ];
  const head: Attribute[] = [
    ["xmlns", options.standalone ? "http://www.w3.org/2000/svg" : null],
    ["class", "fp-figure"],
    ["font-family", typefaces.numbers],
    ["role", "img"],
    ["aria-label", `${figure.title} ${figure.description}`],
    ...size,
  ];
  const alone = options.standalone
    ? `<title>${escapeText(figure.title)}</title><desc>${escapeText(figure.description)}</desc>` +
      "<style>text{font-variant-numeric:tabular-nums lining-nums}</style>" +
      `<rect width="100%" height="100%" fill="${colour("paper")}"/>`
    : "";
  return `<svg${attributes(head)}>${alone}${definitions.markup()}${drawn}</svg>`;
}
