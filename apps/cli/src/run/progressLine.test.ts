import { describe, expect, it } from "vitest";
import { progressLine } from "./progressLine";

function screen(isTTY: boolean) {
  const written: string[] = [];
  return { isTTY, written, write: (text: string) => written.push(text) };
}

/** Shows one step every `every` ms for `lasting` ms. */
function work(isTTY: boolean, quiet: boolean, lasting: number, every = 50) {
  let clock = 0;
  const paper = screen(isTTY);
  const line = progressLine(quiet, paper, () => clock);
  for (clock = 0; clock < lasting; clock += every) line.show({ done: clock / every, of: 99, what: "heights" });
  line.clear();
  return paper.written;
}

describe("progressLine", () => {
  it("says nothing of work under half a second", () => {
    expect(work(true, false, 500)).toEqual([]);
    expect(work(false, false, 500)).toEqual([]);
  });

  it("says nothing when quiet", () => {
    expect(work(true, true, 60_000)).toEqual([]);
  });

  it("writes whole lines, at most one every two seconds, where lines cannot be overwritten", () => {
    const written = work(false, false, 5000);
    expect(written).toEqual(["10 of 99 heights\n", "50 of 99 heights\n", "90 of 99 heights\n"]);
  });

  it("redraws one line on a terminal, covers what stood there, and takes it away at the end", () => {
    const written = work(true, false, 1000);
    expect(written[0]).toBe("\r10 of 99 heights");
    expect(written.at(-1)).toBe(`\r${" ".repeat("18 of 99 heights".length)}\r`);
    expect(written.join("")).not.toContain("\u001b");
  });
});
