/** Something wrong with a file or a command, told so that it can be mended. Lines and columns count from 1. */
export interface Problem {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  /** Column after the last character of what was found, on the same line. */
  readonly endColumn: number;
  /** Place in the file as keys, "antenna.dipole.length". */
  readonly place: string;
  readonly found: string;
  readonly expected: string;
  /** Whole sentence. */
  readonly message: string;
  /** Nearest valid word or value, or null. */
  readonly nearest: string | null;
  /** Text that mends it when it replaces what was found, or null. */
  readonly mend: string | null;
}
