import { describe, expect, it } from "vitest";
import { readStation } from "./readStation";

const station = (path: string, antenna: string): string =>
  `feedpath: 1\nstation: T\nfrequency: 7.1 MHz\ntransmitter: { power: 100 W }\npath: ${path}\nantenna:\n  ${antenna}\n`;
const dipole = "dipole: { length: 20 m, height: 12 m }";
const many = (count: number, one: (index: number) => string): string =>
  Array.from({ length: count }, (_, i) => one(i)).join(", ");

/** Each ends in a clear problem; a runaway would meet the time limit of the test, never a measured bound. */
const hostile: readonly (readonly [string, string, RegExp])[] = [
  ["a megabyte of brackets", `a: ${"[".repeat(1e6)}`, /characters/],
  ["many brackets", `a: ${"[".repeat(1e5)}`, /nested/],
  ["many braces", `a: ${"{a: ".repeat(3e4)}`, /nested/],
  ["compact lists in lists", "- ".repeat(5e4), /indented/],
  ["compact keys in keys", "? ".repeat(5e4), /indented/],
  ["deep indentation", many(400, (i) => `\n${" ".repeat(i)}a:`).replaceAll(", ", ""), /indented/],
  ["an alias bomb", `a: &a [x]\n${many(30, (i) => `\nb${i}: [*a, *a]`).replaceAll(", \n", "\n")}`, /Aliases/],
  ["a NUL byte", "feedpath: 1\u0000", /U\+0000/],
  ["UTF-16 read as text", "\ufffd\ufffdf\u0000e\u0000", /not UTF-8/],
  ["ten megabytes", "x".repeat(1e7), /characters/],
  ["a hundred thousand lines", "\n".repeat(1e5), /lines/],
  ["a million wires", station("[]", `wires: [${"{},".repeat(1e6)}]`), /characters/],
  ["forty thousand wires", station("[]", `wires: [${"{},".repeat(4e4)}]`), /at most 500/],
  ["keys without end", many(1e4, (i) => `"${i}"`), /missing|flow|Unexpected|end/],
  ["one key a thousand times", "a: 1\n".repeat(1e3), /at most 500/],
  ["very many values", `a: [${many(400, () => `[${"1, ".repeat(99)}]`)}]`, /more than 20000/],
  ["prototype keys", "__proto__: 1\nconstructor: 2\ntoString: 3", /cannot be a key/],
  ["a long value", station("[]", dipole).replace("7.1", "1".repeat(1e5)), /at most 120/],
  ["a long run of between", station("[]", dipole).replace("20 m", `between ${"1 and ".repeat(1e4)}m`), /at most 120/],
  ["closing brackets", "]\n".repeat(4e3), /Unexpected/],
  ["directives", "%a\n".repeat(4e3), /directives/],
  ["comments alone", "#\n".repeat(4e3), /empty/],
  ["not a number", station("[]", dipole).replace("100 W", ".nan"), /not a number/],
  ["infinity", station("[]", dipole).replace("100 W", ".inf"), /not a number/],
  ["beyond any length", station("[]", dipole).replace("12 m", "1e300 m"), /100000 m/],
  ["beyond any number", station("[]", dipole).replace("100 W", "1e999 W"), /1000000 W/],
];

describe("a hostile file", () => {
  it.each(hostile)("%s", (_, text, message) => {
    const { station: read, problems } = readStation(text, { fileName: "x.yaml" });
    expect(read).toBeNull();
    expect(problems.length).toBeLessThanOrEqual(100);
    expect(problems.map((problem) => problem.message).join("\n")).toMatch(message);
  });

  it("does not reach the prototypes", () => {
    readStation("__proto__: { polluted: 1 }\nbands: { __proto__: { polluted: 1 } }", { fileName: "x.yaml" });
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  it("reads no file outside the station's folder", () => {
    const asked: string[] = [];
    const readFile = (name: string) => {
      asked.push(name);
      return null;
    };
    for (const file of ["../x.s1p", "/etc/x.s1p", "C:\\x.s1p", "a/../../x.s1p", "..\\x.s1p", "./x.s1p", "a//x.s1p"]) {
      const text = `${station("[]", dipole)}readings: [{ at: transmitter, file: "${file.replaceAll("\\", "\\\\")}" }]\n`;
      const { problems } = readStation(text, { fileName: "x.yaml", readFile });
      expect(problems[0]?.message, file).toContain("below the station's own folder");
    }
    expect(asked).toEqual([]);
  });

  it("is read in full where it is only large", () => {
    const text = station(`[${many(400, () => "{ line: RG-58C/U, length: 1 m }")}]`, dipole);
    const { station: read, problems } = readStation(text, { fileName: "x.yaml" });
    expect(problems).toEqual([]);
    expect(read?.path.parts.length).toBe(400);
  });

  it("may begin with a byte order mark and end its lines as on Windows", () => {
    const text = `\ufeff${station("[]", dipole).replaceAll("\n", "\r\n")}`;
    expect(readStation(text, { fileName: "x.yaml" }).problems).toEqual([]);
  });
});
