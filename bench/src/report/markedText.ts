/** Puts text between two markers of a page, so that measured numbers are never typed by hand. */

const begin = (name: string): string => `<!-- ${name}: begin -->`;
const end = (name: string): string => `<!-- ${name}: end -->`;

/** The page with what stands between the markers of that name replaced. Throws where they are missing or out of order. */
export function withMarked(page: string, name: string, text: string): string {
  const [from, to] = [page.indexOf(begin(name)), page.indexOf(end(name))];
  if (from < 0 || to < from)
    throw new Error(`the page has no place for "${name}": expected a line ${begin(name)} and after it ${end(name)}`);
  return `${page.slice(0, from + begin(name).length)}\n\n${text}\n\n${page.slice(to)}`;
}
