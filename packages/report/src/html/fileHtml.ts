import { escapeHtml } from "./escapeHtml";

const key = /^(\s*(?:- )?(?:\{ )?)([\p{L}\d][\p{L}\d ]*:)/u;

/** The station file, line by line, its keys in bold; the text itself stays as it is. */
export function fileHtml(text: string): string {
  const lines = text.replace(/\n+$/, "").split("\n");
  const shown = lines.map((line) => {
    const found = key.exec(line);
    const [all, before, name] = found ?? ["", "", ""];
    const head = found === null ? "" : `${escapeHtml(before!)}<b>${escapeHtml(name!)}</b>`;
    return `<span class="line">${head}${escapeHtml(line.slice(all!.length))}\n</span>`;
  });
  return `<pre class="file" dir="auto">${shown.join("")}</pre>`;
}
