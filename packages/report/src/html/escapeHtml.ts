import { visibleText } from "../words/visible";

const signs: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;", "'": "&#39;" };

/** Text for element content and quoted attributes; control and direction characters are written out. */
export const escapeHtml = (text: string): string => visibleText(text).replaceAll(/[&<>"']/g, (c) => signs[c]!);
