/** A place of the file to go to: a problem by its index, or a line that counts from 1. */
export type FilePlace = { readonly problem: number } | { readonly line: number };
