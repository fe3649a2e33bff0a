/** What is wrong with one written value, without its place in the file. */
export interface Fault {
  readonly message: string;
  readonly expected: string;
  readonly nearest: string | null;
  /** Text that would be right in place of the whole value, or null. */
  readonly mend: string | null;
}

export type Parsed<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: Fault };

export const parsed = <T>(value: T): Parsed<T> => ({ ok: true, value });

export const faulty = <T>(
  message: string,
  expected: string,
  more: { readonly nearest?: string | null; readonly mend?: string | null } = {},
): Parsed<T> => ({
  ok: false,
  fault: { message, expected, nearest: more.nearest ?? null, mend: more.mend ?? null },
});
