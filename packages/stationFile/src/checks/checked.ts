/** What every check is given: the file as decoded, the station built from it, and where names stand. */
import type { Station } from "@feedpath/engine";
import type { WrittenAntenna } from "../building/antennas";
import type { Build } from "../building/build";
import type { KeyPath } from "../reading/sourceText";
import type { FileStation } from "../schema/station";

export interface Checked {
  readonly build: Build;
  readonly file: FileStation;
  readonly station: Station;
  readonly antennas: readonly WrittenAntenna[];
  /** Names of the parts and ends of the path, in order, with their place in the file. */
  readonly partNames: readonly { readonly name: string; readonly path: KeyPath }[];
  /** Names of all feeds. */
  readonly feeds: readonly string[];
}
