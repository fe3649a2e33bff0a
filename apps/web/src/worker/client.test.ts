import type { Answer } from "@feedpath/engine";
import { describe, expect, it } from "vitest";
import { type Report, startClient, type WorkerLike } from "./client";
import type { FromWorker, ToWorker } from "./messages";

const asking = { text: "feedpath: 1", fileName: "a.yaml", measured: {}, question: "watts", parameters: {} };
const answer = {} as Answer;

function bench() {
  const workers: (WorkerLike & { readonly sent: ToWorker[]; ended: boolean })[] = [];
  const reports: Report[] = [];
  const waiting: (() => void)[] = [];
  const makeWorker = () => {
    const worker = {
      sent: [] as ToWorker[],
      ended: false,
      onmessage: null,
      onerror: null,
      postMessage: (message: ToWorker) => void worker.sent.push(message),
      terminate: () => {
        worker.ended = true;
      },
    };
    workers.push(worker);
    return worker;
  };
  const client = startClient(
    makeWorker,
    (report) => reports.push(report),
    (_, act) => waiting.push(act),
  );
  const from = (index: number, data: FromWorker) => workers[index]?.onmessage?.({ data });
  return { client, workers, reports, from, timeout: () => waiting.splice(0).forEach((act) => void act()) };
}

describe("client of the worker", () => {
  it("numbers its runs and passes on the reports of the last one only", () => {
    const { client, workers, reports, from } = bench();
    client.ask(asking);
    client.ask({ ...asking, question: "band" });
    expect(workers[0]?.sent.map((message) => message.run)).toEqual([1, 2]);
    from(0, { kind: "answered", run: 1, answer });
    expect(reports).toEqual([]);
    from(0, { kind: "answered", run: 2, answer });
    expect(reports).toEqual([{ kind: "answered", run: 2, answer }]);
  });

  it("drops what a stopped run still reports once the next is asked", () => {
    const { client, workers, reports, from } = bench();
    client.ask(asking);
    client.stop();
    expect(workers[0]?.sent.at(-1)).toEqual({ kind: "stop", run: 1 });
    client.ask(asking);
    from(0, { kind: "answered", run: 1, answer });
    expect(reports).toEqual([]);
  });

  it("replaces a worker that does not hear stop, and hears the old one no more", () => {
    const { client, workers, reports, from, timeout } = bench();
    client.ask(asking);
    client.stop();
    timeout();
    expect(workers).toHaveLength(2);
    expect(workers[0]?.ended).toBe(true);
    from(0, { kind: "answered", run: 1, answer });
    expect(reports).toEqual([{ kind: "stopped", run: 1 }]);
  });

  it("leaves a worker alone that stopped in time", () => {
    const { client, workers, from, timeout } = bench();
    client.ask(asking);
    client.stop();
    from(0, { kind: "stopped", run: 1 });
    timeout();
    expect(workers).toHaveLength(1);
  });

  it("tells when the worker breaks at work, and puts a new one in its place", () => {
    const { client, workers, reports, from } = bench();
    client.ask(asking);
    workers[0]?.onerror?.({ message: "out of memory" });
    expect(reports).toEqual([{ kind: "broke", message: "out of memory" }]);
    client.ask(asking);
    expect(workers[1]?.sent).toHaveLength(1);
    from(1, { kind: "answered", run: 2, answer });
    expect(reports.at(-1)?.kind).toBe("answered");
  });

  it("does not start worker after worker when one cannot even begin, but tries again when asked", () => {
    const { client, workers, reports } = bench();
    workers[0]?.onerror?.({ message: "no such file" });
    expect(workers).toHaveLength(1);
    expect(reports).toEqual([{ kind: "broke", message: "no such file" }]);
    client.ask(asking);
    expect(workers).toHaveLength(2);
    expect(workers[1]?.sent).toHaveLength(1);
  });

  it("tells a part that could not be loaded, and asks a new worker next", () => {
    const { client, workers, reports, from } = bench();
    client.ask(asking);
    from(0, { kind: "answered", run: 1, answer });
    from(0, { kind: "missing", run: 1 });
    expect(reports.map(({ kind }) => kind)).toEqual(["answered", "missing"]);
    expect(workers).toHaveLength(1);
    client.ask(asking);
    expect(workers).toHaveLength(2);
    expect(workers[0]?.ended).toBe(true);
    expect(workers[1]?.sent).toHaveLength(1);
  });

  it("has a sheet made beside a run without ending it", () => {
    const { client, reports, from } = bench();
    client.ask(asking);
    client.sheet(answer, "text");
    from(0, { kind: "sheet", run: 2, html: "<p>" });
    from(0, { kind: "progress", run: 1, progress: { done: 1, of: 2, what: "heights" } });
    expect(reports.map(({ kind }) => kind)).toEqual(["sheet", "progress"]);
  });
});
