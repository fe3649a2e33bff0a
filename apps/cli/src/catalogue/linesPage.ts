import { type Figure, lineLosses } from "@feedpath/figures";
import {
  type LineComparison,
  type LineUnits,
  type ListedLine,
  linesDocument,
  lossStudy,
  mostCurves,
  sheetFigureSizes,
  toHtml,
} from "@feedpath/report";

/** One self-contained page that lists or compares lines. */
export function linesPage(
  lines: readonly ListedLine[],
  comparison: LineComparison,
  units: LineUnits,
  worked: string,
): string {
  const study = lines.length <= mostCurves ? lossStudy(lines, comparison, units) : null;
  const drawn = (size: { width: number; scale?: number }): Figure | null => study && lineLosses(study, size);
  return toHtml(
    linesDocument({
      comparison,
      units,
      figure: drawn(sheetFigureSizes.paper),
      narrowFigure: drawn(sheetFigureSizes.phone),
      worked,
    }),
  );
}
