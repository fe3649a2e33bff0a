/** Text of a station file to a station, or everything that is wrong with it. */
import type { Assumption, Problem, Station } from "@feedpath/engine";
import { buildStation } from "./building/station";
import { markedRange, problemsOf } from "./reading/issues";
import { forbidding, limits } from "./reading/limits";
import { placeOf, problemAt, type SourceText, sourceText } from "./reading/sourceText";
import { yamlTree } from "./reading/yamlTree";
import { stationFile } from "./schema/station";
import { grammarVersion, presentVersion } from "./versions/version";
import { writeStation } from "./writing/writeStation";

export interface ReadOptions {
  /** Name shown in problems. */
  readonly fileName: string;
  /** Text of a file below the station's own folder, or null where there is none. Left out: referenced files stay unread. */
  readonly readFile?: (relativePath: string) => string | null;
}

export interface ReadResult {
  /** Null when there is any problem. */
  readonly station: Station | null;
  /** In the order of the file. */
  readonly problems: readonly Problem[];
  /** Canonical text of the same station; its SHA-256 names the station. Empty when there is none. */
  readonly normalised: string;
}

const versionAssumed: Assumption = {
  place: "feedpath",
  name: "version of the grammar",
  value: String(grammarVersion),
  reason: "not given: read as version 1",
};

/** Reads a station file. Never throws; all problems come at once. */
export function readStation(text: string, options: ReadOptions): ReadResult {
  const source = sourceText(options.fileName, text.startsWith("\ufeff") ? text.slice(1) : text);
  const forbidden = forbidding(source.text);
  if (forbidden) {
    const { offset, length, fault } = forbidden;
    return refused([problemAt(source, [offset, offset + length], "", fault)]);
  }
  return readTree(source, options);
}

const refused = (problems: readonly Problem[]): ReadResult => ({
  station: null,
  problems: inOrder(problems),
  normalised: "",
});

const inOrder = (problems: readonly Problem[]): readonly Problem[] =>
  [...problems].sort((a, b) => a.line - b.line || a.column - b.column).slice(0, limits.problems);

function readTree(source: SourceText, options: ReadOptions): ReadResult {
  const { tree, root, problems } = yamlTree(source);
  if (tree === null) return refused(problems.length > 0 ? problems : [emptyFile(source)]);
  const version = presentVersion(tree);
  if ("fault" in version) {
    const range = markedRange(root, ["feedpath"], "value");
    return refused([...problems, problemAt(source, range, "feedpath", version.fault)]);
  }
  const decoded = stationFile.safeParse(version.tree, { reportInput: true });
  if (!decoded.success) return refused([...problems, ...problemsOf(source, root, decoded.error.issues)]);
  const found: Problem[] = [...problems];
  const built = buildStation(
    decoded.data,
    (path, at, fault) => found.push(problemAt(source, markedRange(root, path, at), placeOf(path), fault)),
    version.assumed ? [versionAssumed] : [],
    options.readFile,
  );
  found.push(...built.problems);
  if (found.length > 0) return refused(found);
  return { station: built.station, problems: [], normalised: writeStation(built.station) };
}

const emptyFile = (source: SourceText): Problem =>
  problemAt(source, [0, 0], "", {
    message: "The file is empty. A station begins with: feedpath: 1.",
    expected: "a station",
    nearest: null,
    mend: null,
  });
