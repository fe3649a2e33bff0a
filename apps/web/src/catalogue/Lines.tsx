/** Feed lines beside each other: a list of all, up to four drawn, each with its sources. */
import { linesCaution } from "@feedpath/report";
import { useEffect, useState } from "react";
import { useBench, useBenchState } from "../ui/useBench";
import { printHtml, saveText } from "../ui/waysOut";
import type { LinesAsked } from "../worker/messages";
import { LineRows } from "./LineRows";
import { LinesAskedWith } from "./LinesAskedWith";
import { LossPicture } from "./LossPicture";
import { matching, type Order, ordered } from "./order";
import "./lines.css";

/** Pause in typing before the lines are worked out anew, ms. */
const typingPause = 200;

export function Lines() {
  const bench = useBench();
  const { lines: listing, history } = useBenchState();
  const [asked, setAsked] = useState<LinesAsked>({ at: "", length: "", chosen: null, units: "metric" });
  const [order, setOrder] = useState<Order>("family");
  const [sought, setSought] = useState("");

  // biome-ignore lint/correctness/useExhaustiveDependencies: another text of the file asks anew
  useEffect(() => {
    const timer = setTimeout(() => bench.showLines(asked), listing ? typingPause : 0);
    return () => clearTimeout(timer);
  }, [bench, asked, history.now]);

  if (!listing) return <p role="status">The lines are being worked out.</p>;
  const { comparison, study, problems } = listing;
  // What is chosen shows at once; its picture follows.
  const chosen = asked.chosen ?? listing.chosen;
  const found = matching(comparison.rows, sought);
  const choose = (name: string, on: boolean) => {
    const others = chosen.filter((one) => one !== name);
    setAsked({ ...asked, chosen: on ? [...others, name] : others });
  };
  return (
    <div className="lines">
      <LinesAskedWith
        asked={asked}
        onAsked={setAsked}
        comparison={comparison}
        problems={problems}
        order={order}
        onOrder={setOrder}
        sought={sought}
        onSought={setSought}
      />
      {study ? (
        <LossPicture study={study} />
      ) : (
        <p className="quiet">Choose up to four lines to see their loss over the frequencies.</p>
      )}
      <LineHandOver asked={{ ...asked, chosen }} count={chosen.length} />
      <p className="label quiet" role="status">
        {found.length} of {comparison.rows.length} lines
      </p>
      <p className="label quiet">{linesCaution}</p>
      <LineRows
        groups={ordered(found, order)}
        comparison={comparison}
        units={asked.units}
        chosen={chosen}
        onChoose={choose}
      />
    </div>
  );
}

function LineHandOver({ asked, count }: { readonly asked: LinesAsked; readonly count: number }) {
  const bench = useBench();
  const [says, setSays] = useState("");
  const what = count === 0 ? "all lines" : count === 1 ? "this line" : `these ${count} lines`;
  const withPage = async (use: (html: string) => void | Promise<void>) => {
    setSays("The page is being made.");
    try {
      await use(await bench.makeLinesPage(asked));
      setSays("");
    } catch (failure) {
      setSays(`The page could not be made: ${failure instanceof Error ? failure.message : String(failure)}`);
    }
  };
  return (
    <div className="acts">
      <button
        type="button"
        className="button"
        onClick={() => void withPage((html) => saveText(html, "feed-lines.html", "text/html"))}
      >
        Save {what} as a page
      </button>
      <button type="button" className="button" onClick={() => void withPage(printHtml)}>
        Print {what}
      </button>
      <span role="status" className="label quiet">
        {says}
      </span>
    </div>
  );
}
