import { type Figure, toSvg } from "@feedpath/figures";
import type { Block, Fact } from "../document/document";
import { inlinesOf } from "../words/inlines";
import { visibleText } from "../words/visible";
import { escapeHtml } from "./escapeHtml";
import { fileHtml } from "./fileHtml";
import { inlinesHtml } from "./inlinesHtml";
import { stepsHtml } from "./stepsHtml";
import { tableHtml } from "./tableHtml";

/** Direction characters inside a picture's texts are written out like everywhere else. */
const drawn = (figure: Figure, idPrefix: string): string => visibleText(toSvg(figure, { theme: "light", idPrefix }));

/** Height, px, up to which a further picture stands below the stage on the first printed page; taller ones come last in print, unless there are so many that their order tells more. */
const fitsBelowLead = 400;

function figureHtml(block: Extract<Block, { kind: "figure" }>, path: string): string {
  const { figure, narrow, titled } = block;
  const widths = `--w:${figure.width}${narrow === null ? "" : `;--v:${narrow.width}`}`;
  const place = titled ? (figure.height > fitsBelowLead ? "tall " : "") : "lead ";
  const classes = place + (narrow === null ? "only-wide" : "has-narrow");
  const caption = titled ? `<figcaption>${inlinesHtml(inlinesOf(figure.title))}</figcaption>` : "";
  const wide = `<div class="figure-box wide">${drawn(figure, `wide-${path}`)}</div>`;
  const small = narrow === null ? "" : `<div class="narrow">${drawn(narrow, `narrow-${path}`)}</div>`;
  return `<figure class="${classes}" style="${widths}">${caption}${wide}${small}</figure>`;
}

/** Characters that fit beside each other in the narrow column; longer facts put their origin below. */
const room = { name: 12, rest: 32 };

function factHtml({ name, value, from }: Fact): string {
  const fits = name.length <= room.name && value.length + from.length <= room.rest;
  const inner = `<dt>${escapeHtml(name)}</dt><dd>${escapeHtml(value)}</dd><dd class="from">${escapeHtml(from)}</dd>`;
  return `<div${fits ? "" : ' class="stacked"'}>${inner}</div>`;
}

/** `path`: place of the block in the document, letters, digits and hyphens; ids are made of it. */
function blockHtml(block: Block, path: string): string {
  switch (block.kind) {
    case "section": {
      const inner = blocksHtml(block.blocks, path);
      return `<section aria-labelledby="h-${path}"><h2 id="h-${path}">${escapeHtml(block.title)}</h2>\n${inner}</section>`;
    }
    case "columns": {
      const [left, right] = [blocksHtml(block.left, `${path}-l`), blocksHtml(block.right, `${path}-r`)];
      return `<div class="columns"><div>${left}</div><div>${right}</div></div>`;
    }
    case "paragraph":
      return `<p>${inlinesHtml(block.inlines)}</p>`;
    case "list":
      return `<ul>${block.items.map((item) => `<li>${inlinesHtml(item)}</li>`).join("\n")}</ul>`;
    case "steps":
      return stepsHtml(block.steps);
    case "facts":
      return `<dl>${block.facts.map(factHtml).join("\n")}</dl>`;
    case "table":
      return tableHtml(block.table, false);
    case "folded":
      return `<details><summary>${escapeHtml(block.summary)}</summary>${tableHtml(block.table, true)}</details>`;
    case "figure":
      return figureHtml(block, path);
    case "file":
      return fileHtml(block.text);
  }
}

export const blocksHtml = (blocks: readonly Block[], path: string): string =>
  blocks.map((block, index) => blockHtml(block, path === "" ? `b${index}` : `${path}-${index}`)).join("\n");
