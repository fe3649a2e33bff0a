import type { Answer } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import type { Asking, Report } from "../worker/client";
import type { QuestionListing } from "../worker/messages";
import { makeBench } from "./bench";
import type { Kept } from "./keeper";

const listing = (id: string): QuestionListing => ({ id, asked: `${id}?`, group: "", about: "", parameters: [] });
const outline = { title: "A school", bands: [""], entries: [] };
const answer = { question: "watts", station: "A school" } as Answer;

function started(kept: Kept | null = null) {
  const asked: Asking[] = [];
  const waiting: { ms: number; act: () => void }[] = [];
  const saved: Kept[] = [];
  let report: (report: Report) => void = () => {};
  let refuse: (reason: string) => void = () => {};
  const bench = makeBench({
    startClient: (onReport) => {
      report = onReport;
      return { ask: (asking) => void asked.push(asking), sheet: () => {}, lines: () => {}, stop: () => {} };
    },
    makeKeeper: (onRefused) => {
      refuse = onRefused;
      return { load: async () => kept, keepSoon: (one) => void saved.push(one), keepNow: async () => {} };
    },
    first: { text: "first", fileName: "first.yaml" },
    measuredBeside: () => ({}),
    now: () => 0,
    later: (ms, act) => {
      const entry = { ms, act };
      waiting.push(entry);
      return () => void waiting.splice(waiting.indexOf(entry), waiting.includes(entry) ? 1 : 0);
    },
  });
  const know = () => report({ kind: "questions", questions: [listing("watts"), listing("band")] });
  const pass = () => {
    for (const { act } of waiting.splice(0)) act();
  };
  return {
    bench,
    asked,
    saved,
    know,
    pass,
    report: (one: Report) => report(one),
    refuse: (why: string) => refuse(why),
  };
}

describe("the bench", () => {
  it("asks once it knows which questions there are, whichever comes first", async () => {
    const early = started();
    early.know();
    await early.bench.begin("");
    expect(early.asked.map(({ text, question }) => [text, question])).toEqual([["first", "watts"]]);
    const late = started();
    await late.bench.begin("band");
    expect(late.asked).toEqual([]);
    late.know();
    expect(late.asked.map(({ question }) => question)).toEqual(["band"]);
    late.know();
    expect(late.asked).toHaveLength(1);
  });

  it("takes the first question for one there is not", async () => {
    const { bench, asked, know } = started();
    await bench.begin("fortune");
    know();
    expect(asked[0]?.question).toBe("watts");
    bench.ask("fortune");
    expect(asked).toHaveLength(1);
  });

  it("goes on where the person stopped, steps back included, and keeps every change", async () => {
    const kept: Kept = {
      version: 1,
      history: { past: ["older"], now: "mine", future: [] },
      fileName: "mine.yaml",
      question: "band",
    };
    const { bench, asked, know, saved } = started(kept);
    know();
    await bench.begin("");
    expect(bench.get()).toMatchObject({ firstVisit: false, fileName: "mine.yaml" });
    expect(asked[0]).toMatchObject({ text: "mine", question: "band" });
    bench.undo();
    expect(bench.get().history.now).toBe("older");
    expect(saved.at(-1)?.history).toEqual({ past: [], now: "older", future: ["mine"] });
  });

  it("runs after a pause in typing, with the last text only", async () => {
    const { bench, asked, know, pass } = started();
    know();
    await bench.begin("");
    pass();
    bench.type("a");
    bench.type("ab");
    expect(asked).toHaveLength(1);
    pass();
    expect(asked.slice(1).map(({ text }) => text)).toEqual(["ab"]);
  });

  it("says that it is at work only when a run takes long", async () => {
    const { bench, know, pass, report } = started();
    know();
    await bench.begin("");
    expect(bench.get()).toMatchObject({ running: true, slow: false });
    pass();
    expect(bench.get().slow).toBe(true);
    report({ kind: "read", run: 1, problems: [], outline });
    report({ kind: "answered", run: 1, answer });
    expect(bench.get()).toMatchObject({ running: false, slow: false, shown: { kind: "answer", text: "first" } });
  });

  it("keeps the last answer beside a text that cannot be read, and takes examples as one step", async () => {
    const { bench, know, report } = started();
    know();
    await bench.begin("");
    report({ kind: "read", run: 1, problems: [], outline });
    report({ kind: "answered", run: 1, answer });
    bench.open("example", "example.yaml");
    report({ kind: "read", run: 2, problems: [{ line: 1 } as never], outline: null });
    expect(bench.get()).toMatchObject({ running: false, outlineText: "first", shown: { text: "first" } });
    bench.undo();
    expect(bench.get().history.now).toBe("first");
  });

  it("writes over a stretch of the file and marks it for a moment", async () => {
    const { bench, know, pass } = started();
    know();
    await bench.begin("");
    bench.write(0, 5, "second");
    expect(bench.get().history.now).toBe("second");
    expect(bench.get().marked).toEqual({ from: 0, to: 6 });
    pass();
    expect(bench.get().marked).toBeNull();
  });

  it("tells a refused storage and a broken worker, and hands out no sheet without an answer", async () => {
    const { bench, know, report, refuse } = started();
    know();
    await bench.begin("");
    refuse("full");
    expect(bench.get().storage).toEqual({ refused: true, reason: "full" });
    report({ kind: "broke", message: "" });
    expect(bench.get()).toMatchObject({ running: false, defect: "The computation ended without saying why." });
    await expect(bench.makeSheet()).rejects.toThrow("no answer to hand over");
  });

  it("hands out the sheet, or why it could not be made", async () => {
    const { bench, know, report } = started();
    know();
    await bench.begin("");
    report({ kind: "read", run: 1, problems: [], outline });
    report({ kind: "answered", run: 1, answer });
    const made = bench.makeSheet();
    report({ kind: "sheet", run: 2, html: "<p>" });
    expect(await made).toBe("<p>");
    const failing = bench.makeSheet();
    report({ kind: "defect", run: 3, message: "no figure" });
    await expect(failing).rejects.toThrow("no figure");
  });
});
