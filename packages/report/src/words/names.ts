const keptWords: ReadonlyMap<string, string> = new Map([
  ["swr", "SWR"],
  ["snr", "signal-to-noise"],
]);

/** Name of a value or column as words: "swrAtTransmitter" becomes "SWR at transmitter". */
export function wordsOf(name: string): string {
  return name
    .replaceAll(/([a-z\d])([A-Z])|([a-z])(\d)/g, (_, a, b, c, d) => `${a ?? c} ${b ?? d}`)
    .split(" ")
    .map((word) => keptWords.get(word.toLowerCase()) ?? (/^[A-Z]+$/.test(word) ? word : word.toLowerCase()))
    .join(" ");
}

/** First letter as a capital, for headings. */
export const capitalised = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
