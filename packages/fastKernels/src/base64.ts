const letters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";

/** The bytes of a base64 text (RFC 4648) with its padding. */
export function bytesOf(text: string): Uint8Array {
  const padding = text.endsWith("==") ? 2 : text.endsWith("=") ? 1 : 0;
  const bytes = new Uint8Array((text.length / 4) * 3 - padding);
  const valueOfLetter = new Uint8Array(128);
  for (let i = 0; i < letters.length; i++) valueOfLetter[letters.charCodeAt(i)] = i;
  for (let i = 0, at = 0; i < text.length; i += 4) {
    let group = 0;
    for (let k = 0; k < 4; k++) group = (group << 6) | valueOfLetter[text.charCodeAt(i + k)]!;
    for (let shift = 16; shift >= 0; shift -= 8) bytes[at++] = (group >> shift) & 255;
  }
  return bytes;
}
