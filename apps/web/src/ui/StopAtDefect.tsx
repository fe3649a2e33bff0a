/** When the page itself breaks: plain words, and the file's text can still be saved. Nothing is sent. */
import { Component, type ReactNode } from "react";
import type { Bench } from "../state/bench";
import { saveText } from "./waysOut";

interface Props {
  readonly bench: Bench;
  readonly children: ReactNode;
}

export class StopAtDefect extends Component<Props, { readonly says: string | null }> {
  override state = { says: null };

  static getDerivedStateFromError(defect: unknown) {
    return { says: defect instanceof Error ? defect.message : String(defect) };
  }

  override render() {
    if (this.state.says === null) return this.props.children;
    const { history, fileName } = this.props.bench.get();
    return (
      <main className="broken">
        <h1 className="headline">The page has a defect and cannot go on.</h1>
        <p>Your text is kept in this browser, and you can save it here. Nothing was sent anywhere.</p>
        <p className="label">{this.state.says}</p>
        <p className="acts">
          <button type="button" className="button" onClick={() => saveText(history.now, fileName, "application/yaml")}>
            Save the file
          </button>
          <button type="button" className="button" onClick={() => window.location.reload()}>
            Load the page again
          </button>
        </p>
      </main>
    );
  }
}
