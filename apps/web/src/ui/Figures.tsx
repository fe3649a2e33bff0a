/** The further pictures of an answer, each under its message, with the numbers behind it to open. */
import type { Answer } from "@feedpath/engine";
import { type Figure, figuresOf, hasFilm, toSvg } from "@feedpath/figures";
import type { DocumentTable } from "@feedpath/report";
import { lazy, Suspense, useMemo, useRef } from "react";
import { NumbersTable } from "./NumbersTable";
import { sayNumber } from "./say";
import { useWidth } from "./useWidth";

/** Loaded with the first answer that has one. */
const Film = lazy(() =>
  import("./Film").then(
    ({ Film: loaded }) => ({ default: loaded }),
    () => ({ default: NoFilm }),
  ),
);

const NoFilm = () => <p className="quiet">The film could not be loaded. Load the page anew to try again.</p>;

/** Narrowest picture that still reads, px. */
const leastWidth = 280;

export function Figures({ answer, grey }: { readonly answer: Answer; readonly grey: boolean }) {
  const frame = useRef<HTMLDivElement>(null);
  const width = useWidth(frame);
  const figures = useMemo(
    () => (width >= leastWidth ? figuresOf(answer, { width }).filter(({ name }) => name !== "stage") : []),
    [answer, width],
  );
  return (
    <div className={grey ? "figures grey" : "figures"} ref={frame}>
      {hasFilm(answer) && (
        <Suspense fallback={null}>
          <Film answer={answer} grey={grey} />
        </Suspense>
      )}
      {figures.map((figure) => (
        <FigureWithTable key={figure.name} figure={figure} />
      ))}
    </div>
  );
}

function FigureWithTable({ figure }: { readonly figure: Figure }) {
  const svg = toSvg(figure, { theme: "css", idPrefix: `figure-${figure.name.replace(/[^A-Za-z0-9]+/g, "-")}` });
  return (
    <figure>
      <figcaption>
        <h2>{figure.title}</h2>
      </figcaption>
      {/* biome-ignore lint/security/noDangerouslySetInnerHtml: drawn by @feedpath/figures, which escapes every text */}
      <div className="picture" dangerouslySetInnerHTML={{ __html: svg }} />
      <details>
        <summary>The numbers behind this picture</summary>
        <p>{figure.description}</p>
        <NumbersTable table={tableOf(figure)} captioned />
      </details>
    </figure>
  );
}

function tableOf({ table }: Figure): DocumentTable {
  return {
    caption: table.caption,
    columns: table.columns.map(({ name, unit }, index) => ({
      name,
      unit,
      numeric: table.rows.some((row) => typeof row[index] === "number"),
    })),
    rows: table.rows.map((row) => row.map((cell) => (typeof cell === "number" ? sayNumber(cell) : (cell ?? "\u2013")))),
  };
}
