import { describe, expect, it } from "vitest";
import { decodeStationBytes } from "./decodeBytes";

const bytes = (...values: number[]) => Uint8Array.from(values);

describe("bytes of a station file", () => {
  it("are UTF-8, with or without a byte order mark", () => {
    const text = "note: 5 µH, 3 Ω, 😀 ±";
    const encoded = new TextEncoder().encode(text);
    expect(decodeStationBytes(encoded, "x.yaml").text).toBe(text);
    expect(decodeStationBytes(bytes(0xef, 0xbb, 0xbf, 0x61), "x.yaml").text).toBe("a");
  });

  it.each([
    ["UTF-16", bytes(0xff, 0xfe, 0x61, 0), /UTF-16/],
    ["Latin-1", bytes(0x61, 0xb5, 0x48), /Byte 2 is not UTF-8/],
    ["an overlong form", bytes(0xc0, 0x80), /Byte 1/],
    ["an overlong form of three bytes", bytes(0xe0, 0x80, 0x80), /Byte 1/],
    ["a surrogate", bytes(0xed, 0xa0, 0x80), /Byte 1/],
    ["a cut character", bytes(0xe2, 0x84), /Byte 1/],
    ["beyond Unicode", bytes(0xf4, 0x90, 0x80, 0x80), /Byte 1/],
  ])("%s is told", (_, encoded, message) => {
    const decoded = decodeStationBytes(encoded, "x.yaml");
    expect(decoded.text).toBe("");
    expect(decoded.problems[0]?.message).toMatch(message);
  });
});
