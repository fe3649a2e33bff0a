/** The invented stations that come with Feedpath, as texts; the build puts them into the page. */

export interface Example {
  /** File name without its ending. */
  readonly id: string;
  readonly title: string;
  readonly text: string;
}

const files = import.meta.glob<string>("../../../../examples/*.yaml", {
  query: "?raw",
  import: "default",
  eager: true,
});

const measured = import.meta.glob<string>("../../../../examples/*.s[12]p", {
  query: "?raw",
  import: "default",
  eager: true,
});

const baseName = (path: string): string => path.replace(/^.*\//, "");

const titleOf = (text: string, otherwise: string): string =>
  /^station:[ \t]*(.*?)[ \t]*(?:#.*)?$/m.exec(text)?.[1]?.replace(/^(["'])(.*)\1$/, "$2") ?? otherwise;

export const examples: readonly Example[] = Object.entries(files)
  .map(([path, text]) => {
    const id = baseName(path).replace(/\.yaml$/, "");
    return { id, title: titleOf(text, id), text };
  })
  .sort((a, b) => a.title.localeCompare(b.title, "en"));

/** The station a first visit shows: the harbour school club, or the first there is. */
export const firstExample = (): Example | undefined => examples.find(({ id }) => id.includes("harbour")) ?? examples[0];

/** The example a text is, letter for letter, or undefined. */
export const exampleOf = (text: string): Example | undefined => examples.find((example) => example.text === text);

/** Sweeps and two-ports that stand beside the examples, by name; a file of one's own has none on the page yet. */
export const measuredBeside = (fileName: string): Readonly<Record<string, string>> =>
  examples.some(({ id }) => `${id}.yaml` === fileName)
    ? Object.fromEntries(Object.entries(measured).map(([path, text]) => [baseName(path), text]))
    : {};
