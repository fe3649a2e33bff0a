import { describe, expect, it } from "vitest";
import { beginHistory, changeText, redo, undo } from "./history";

describe("history of the file's text", () => {
  it("goes back through every act and forth again", () => {
    let history = beginHistory("a");
    history = changeText(history, "ab", "", 0);
    history = changeText(history, "abc", "", 1);
    history = undo(undo(history));
    expect(history.now).toBe("a");
    history = redo(redo(history));
    expect(history.now).toBe("abc");
    expect(history.future).toEqual([]);
  });

  it("takes quick typing as one step, and a pause as the begin of another", () => {
    let history = beginHistory("");
    history = changeText(history, "1", "typing", 0);
    history = changeText(history, "12", "typing", 500);
    history = changeText(history, "12 m", "typing", 2000);
    expect(history.past).toEqual(["", "12"]);
  });

  it("does not run a mend together with the typing before it", () => {
    let history = changeText(beginHistory("x"), "xy", "typing", 0);
    history = changeText(history, "xz", "mend", 1);
    expect(undo(history).now).toBe("xy");
  });

  it("keeps typing after a step back apart from what was typed before", () => {
    let history = changeText(beginHistory("x"), "xy", "typing", 0);
    history = changeText(undo(history), "xq", "typing", 1);
    expect(history.past).toEqual(["x"]);
    expect(history.future).toEqual([]);
  });

  it("stays as it is at either end", () => {
    const history = beginHistory("x");
    expect(undo(history)).toBe(history);
    expect(redo(history)).toBe(history);
    expect(changeText(history, "x", "typing", 0)).toBe(history);
  });

  it("forgets the oldest steps first: 200 steps, two million characters", () => {
    let many = beginHistory("0");
    for (let step = 1; step <= 300; step += 1) many = changeText(many, `${step}`, "", step);
    expect(many.past).toHaveLength(200);
    expect(many.past[0]).toBe("100");
    let large = beginHistory("");
    for (let step = 1; step <= 5; step += 1) large = changeText(large, `${step}`.repeat(900_000), "", step);
    expect(large.past.map((text) => text[0])).toEqual(["3", "4"]);
  });
});
