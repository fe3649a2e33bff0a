import { escapeHtml } from "./escapeHtml";

const key = /^(\s*(?:- )?(?:\{ )?)([\p{L}\d][\p{L}\d ]*:)/u;

/** Lines up to which a file is not broken between pages. */
const keptWhole = 40;

/** The station file, line by line, its keys in bold; a key that opens a list is not parted from it. */
export function fileHtml(text: string): string {
  const lines = text.replace(/\n+$/, "").split("\n");
  const shown = lines.map((line) => {
    const found = key.exec(line);
    const [all, before, name] = found ?? ["", "", ""];
    const head = found === null ? "" : `${escapeHtml(before!)}<b>${escapeHtml(name!)}</b>`;
    const place = /:\s*$/.test(line) ? "line opens" : "line";
    return `<span class="${place}">${head}${escapeHtml(line.slice(all!.length))}\n</span>`;
  });
  const whole = lines.length <= keptWhole ? " whole" : "";
  return `<pre class="file${whole}" dir="auto">${shown.join("")}</pre>`;
}
