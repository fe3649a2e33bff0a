import { visibleLine } from "../words/visible";

const special = /[\\`*_[\]<>|#&~$!]/g;

/** Text on one line that Markdown shows as it is; a start that would make a list or heading is escaped too. */
export function escapeMarkdown(text: string): string {
  return visibleLine(text)
    .replaceAll(special, (c) => `\\${c}`)
    .replace(/^(\s*)([-+=])/, "$1\\$2")
    .replace(/^(\s*\d+)([.)])(?=\s|$)/, "$1\\$2");
}
