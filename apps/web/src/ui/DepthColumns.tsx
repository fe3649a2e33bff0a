/** Below the parts: curves and working on the left, what it rests on at the right, then tables over the whole width. */
import type { Block } from "@feedpath/report";
import type { ReactNode } from "react";
import type { Depth } from "../worker/messages";
import { Blocks } from "./Blocks";

interface DepthColumnsProps {
  /** Null for the moment before the worker has made it. */
  readonly depth: Depth | null;
  /** What stands first in the left column. */
  readonly children: ReactNode;
}

type Columns = Extract<Block, { kind: "columns" }>;

export function DepthColumns({ depth, children }: DepthColumnsProps) {
  const columns = depth?.blocks.find((block): block is Columns => block.kind === "columns");
  const others = depth?.blocks.filter((block) => block !== columns);
  return (
    <>
      <div className="depth">
        <div className="depth-text">
          {children}
          {columns && <Blocks blocks={columns.left} />}
        </div>
        <div className="depth-margin">{columns && <Blocks blocks={columns.right} />}</div>
      </div>
      {others && <Blocks blocks={others} />}
      {depth && (
        <p className="provenance">
          {depth.provenance.worked} {depth.provenance.check}
        </p>
      )}
    </>
  );
}
