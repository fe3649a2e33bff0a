import { describe, expect, it } from "vitest";
import { clipped } from "./box";
import { colourDeclarations, colourOf, type Theme } from "./colours";
import type { Role } from "./figure";
import { createLabelBoard } from "./labelBoard";
import { impedanceText, metresText, swrText, voltsText, wattsText } from "./numberText";
import { roundedPolyline } from "./outline";
import { toCsv, toTable } from "./table";
import { textWidth, wrapText } from "./textWidth";

const plain = (text: string) => text.replaceAll("\u00a0", " ");

/** WCAG 2.2: (L1 + 0.05) / (L2 + 0.05), L from linearised sRGB. */
function contrast(theme: Theme, a: Role, b: Role): number {
  const luminance = (role: Role) => {
    const parts = [1, 3, 5].map((at) => Number.parseInt(colourOf(theme, role).slice(at, at + 2), 16) / 255);
    const [red = 0, green = 0, blue = 0] = parts.map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
  };
  const [high = 0, low = 0] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

describe("a straight piece in a box", () => {
  const box = { left: 0, top: 0, right: 10, bottom: 10 };
  it("keeps what lies inside and is cut at the edges", () => {
    expect(clipped([2, 3], [7, 8], box)).toEqual([
      [2, 3],
      [7, 8],
    ]);
    expect(clipped([-5, 5], [15, 5], box)).toEqual([
      [0, 5],
      [10, 5],
    ]);
    expect(clipped([5, -5], [5, 5], box)).toEqual([
      [5, 0],
      [5, 5],
    ]);
  });
  it("is nothing where it passes by", () => {
    expect(clipped([-5, 1], [1, -5], box)).toBeNull();
    expect(clipped([11, 0], [11, 10], box)).toBeNull();
  });
});

describe("boxes to avoid", () => {
  const style = { role: "ink", size: 10 } as const;
  const places = [0, 40, 80].map((x) => ({ lines: ["a"], x, y: 20 }));
  const at = (marks: readonly { x: number }[]) => marks.map(({ x }) => x);
  const box = (x: number) => ({ left: x, right: x + 10, top: 0, bottom: 30 });
  it("are given up in order: outlines first, then lines, never what is reserved", () => {
    const board = createLabelBoard(200, 50);
    board.reserve(box(0));
    board.avoidFirmly(box(40));
    board.avoid(box(80));
    expect(at(board.place(style, places))).toEqual([80]);
    expect(at(board.placeClear(style, places))).toEqual([]);
    expect(at(board.place(style, places))).toEqual([40]);
    expect(at(board.place(style, places))).toEqual([]);
  });
});

describe("colours", () => {
  const texts: readonly (readonly [Role, Role])[] = [
    ["ink", "paper"],
    ["ink2", "paper"],
    ["ink2", "rail"],
    ["powerInk", "paper"],
    ["heatInk", "paper"],
    ["fieldInk", "paper"],
    ["fieldInk", "fieldTint"],
    ["soilInk", "paper"],
    ["onPower", "power"],
    ["ink", "note"],
  ];
  const marks: readonly Role[] = ["line", "power", "heat", "field", "soil"];
  it.each(["light", "dark"] as const)(
    "reach 4.5 to 1 for text and 3 to 1 for marks in %s (WCAG 2.2, 1.4.3 and 1.4.11)",
    (theme) => {
      for (const [a, b] of texts) expect(contrast(theme, a, b), `${a} on ${b}`).toBeGreaterThanOrEqual(4.5);
      for (const role of marks) expect(contrast(theme, role, "paper"), role).toBeGreaterThanOrEqual(3);
    },
  );

  it("become custom properties", () => {
    expect(colourDeclarations("light")).toContain("--fp-power-ink: #005A8C;");
    expect(colourDeclarations("dark")).toContain("--fp-ink2: #AEB8BF;");
  });
});

describe("numbers in words", () => {
  it("keep one decimal where it tells something", () => {
    expect(["100", 68.74, 12, 1500, 0.02, 0].map((x) => plain(wattsText(Number(x))))).toEqual([
      "100 W",
      "68.7 W",
      "12.0 W",
      "1500 W",
      "20 mW",
      "0.0 W",
    ]);
    expect([1.04, 9.94, 12.4, null].map((x) => swrText(x))).toEqual(["1.0", "9.9", "12", "infinite"]);
    expect(plain(impedanceText(76.5, -23.4, 1))).toBe("76.5 − j23.4 Ω");
    expect(plain(impedanceText(50, 0, 0))).toBe("50 + j0 Ω");
    expect([91.2, 1234].map((x) => plain(voltsText(x)))).toEqual(["91 V", "1.2 kV"]);
    expect([12, 20.14, 0.08].map((x) => plain(metresText(x)))).toEqual(["12 m", "20.1 m", "8 cm"]);
  });
});

describe("text and labels", () => {
  it("wraps at the width", () => {
    const lines = wrapText("dry to wet soil", 13, 80);
    expect(lines).toEqual(["dry to wet", "soil"]);
    for (const line of lines) expect(textWidth(line, 13)).toBeLessThanOrEqual(80);
  });

  it("takes the first free place, then one it would rather avoid, then none", () => {
    const board = createLabelBoard(200, 100);
    const style = { role: "ink", size: 10 } as const;
    const place = { lines: ["abc"], x: 10, y: 20 };
    board.avoid({ left: 0, right: 200, top: 0, bottom: 40 });
    expect(board.place(style, [place, { ...place, y: 80 }])[0]?.y).toBe(80);
    expect(board.place(style, [place])[0]?.y).toBe(20);
    expect(board.place(style, [place])).toEqual([]);
    expect(board.place(style, [{ ...place, x: 195, y: 60 }])).toEqual([]);
  });

  it("rounds corners without leaving the ends", () => {
    expect(
      roundedPolyline(
        [
          [0, 0],
          [10, 0],
          [10, 10],
        ],
        2,
      ),
    ).toBe("M0,0L8,0Q10,0 10,2L10,10");
  });
});

describe("tables", () => {
  const figure = {
    name: "t",
    title: "t",
    width: 1,
    height: 1,
    marks: [],
    description: "",
    table: {
      caption: "c",
      columns: [
        { name: "where", unit: "" },
        { name: "power", unit: "W" },
      ],
      rows: [
        ['=1+1, "x"', 1.23456],
        ["b", null],
      ],
    },
  };
  it("become rows of text", () => {
    expect(toTable(figure)).toEqual({
      caption: "c",
      head: ["where", "power, W"],
      rows: [
        ['=1+1, "x"', "1.235"],
        ["b", "none"],
      ],
    });
  });
  it("become CSV that no spreadsheet runs", () => {
    expect(toCsv(figure)).toBe('where,power (W)\r\n" =1+1, ""x""",1.23456\r\nb,\r\n');
  });
});
