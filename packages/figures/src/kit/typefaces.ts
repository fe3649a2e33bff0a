/** The two faces: words in a book face, numbers and labels in the system's. No font is ever fetched. */
export const typefaces = {
  words: 'Charter, "Bitstream Charter", "Charis SIL", "Sitka Text", Cambria, Georgia, serif',
  numbers: 'system-ui, "Segoe UI", Roboto, "Noto Sans", "Open Sans", sans-serif',
} as const;
