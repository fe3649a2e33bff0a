/** Puts the page together: store, worker, keeper, theme, and the copy that works without a server. */
import { colourDeclarations } from "@feedpath/figures";
import { get, set } from "idb-keyval";
import { createRoot } from "react-dom/client";
import { makeBench } from "./state/bench";
import { firstExample, measuredBeside } from "./state/examples";
import { makeKeeper } from "./state/keeper";
import { questionIn } from "./state/questionIn";
import "./theme/base.css";
import "./theme/frame.css";
import "./theme/answer.css";
import "./theme/stage.css";
import "./theme/depth.css";
import "./theme/file.css";
import "./theme/narrow.css";
import "./theme/print.css";
import { App } from "./ui/App";
import { StopAtDefect } from "./ui/StopAtDefect";
import { BenchContext } from "./ui/useBench";
import { startClient, type WorkerLike } from "./worker/client";

const colours = document.createElement("style");
colours.textContent = `:root { ${colourDeclarations("light")} }
@media screen and (prefers-color-scheme: dark) { :root { ${colourDeclarations("dark")} } }`;
document.head.append(colours);

const first = firstExample();
const makeWorker = (): WorkerLike =>
  new Worker(new URL("./worker/host.ts", import.meta.url), { type: "module", name: "feedpath" }) as WorkerLike;

const bench = makeBench({
  startClient: (onReport) => startClient(makeWorker, onReport),
  makeKeeper: (onRefused, onKept) => makeKeeper({ get, set }, onRefused, onKept),
  first: { text: first?.text ?? "feedpath: 1\n", fileName: `${first?.id ?? "station"}.yaml` },
  measuredBeside,
  now: () => performance.now(),
  later: (ms, act) => {
    const timer = setTimeout(act, ms);
    return () => clearTimeout(timer);
  },
});

window.addEventListener("pagehide", bench.keepNow);
document.addEventListener("visibilitychange", () => document.visibilityState === "hidden" && bench.keepNow());

createRoot(document.getElementById("bench")!).render(
  <StopAtDefect bench={bench}>
    <BenchContext value={bench}>
      <App />
    </BenchContext>
  </StopAtDefect>,
);
const linked = (): string => questionIn(window.location.hash);
window.addEventListener("hashchange", () => bench.ask(linked()));
void bench.begin(linked());

if (import.meta.env.PROD && "serviceWorker" in navigator)
  // A browser that refuses (a private window, say) shows the page all the same, only not without a server.
  navigator.serviceWorker.register("./offline.js").catch(() => undefined);
