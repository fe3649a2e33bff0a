/** Cables of MIL-DTL-17: impedance and capacitance from dimensions, loss of the catalogue's lines. */
import { type CoaxialLine, lineConstants, matchedLoss } from "@feedpath/engine";
import { type CatalogueLine, findLine } from "@feedpath/station-file";
import { type PublishedRow, publishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

/** Effective over geometric diameter by the number of strands: row coax.t.strand of the coaxial topic. */
function strandFactor(strands: number): number {
  if (strands === 1) return 1;
  const factors = publishedRow("coaxialTheory", "coax.t.strand").value as Record<string, number>;
  const factor = factors[String(strands)];
  if (factor === undefined) throw new Error(`no strand factor for ${strands} strands`);
  return factor;
}

/** The dimensions that stand in the build row of the same cable. */
function buildOf(row: PublishedRow): CoaxialLine {
  const id = row.id.replace(/\.\w+$/, ".build");
  const value = publishedRow("cables", id).value as Record<string, number>;
  const strands = Number(/^(\d+) x /.exec(String(value.inner))?.[1] ?? 1);
  const copper = { name: "copper", conductivity: 58e6, permeability: 1 };
  return {
    kind: "coaxial",
    inner: {
      form: strands > 1 ? "stranded" : "solid",
      layers: [{ metal: copper, outerRadius: value.d_mm! / 2e3 }],
      holeRadius: 0,
      effectiveRadiusRatio: strandFactor(strands),
      resistanceFactor: 1,
    },
    outer: { innerRadius: value.D_mm! / 2e3, wall: Number.POSITIVE_INFINITY, metal: copper, resistanceFactor: 1 },
    dielectric: { name: "insulation", permittivity: 1 / value.velocity_factor! ** 2, lossTangent: 0 },
  };
}

/** At 1 GHz, where the skin depth no longer matters. */
const fromBuild = (row: PublishedRow) => lineConstants(buildOf(row), 1e9);

const catalogueNames: Readonly<Record<string, string>> = {
  rg58cu: "RG-58C/U",
  rg213u: "RG-213/U",
  rg11au: "RG-11A/U",
};

function catalogueLine(row: PublishedRow): CatalogueLine {
  const line = findLine(catalogueNames[row.id.split(".")[1]!] ?? "");
  if (!line?.build) throw new Error(`${row.id}: not in the catalogue, or without a build`);
  return line;
}

/**
 * Loss of a catalogue line twice: per 100 m from the constants that answers use (they were fitted to such points), per
 * 100 ft from the line's build (strands, braid, insulation), which never saw the published points.
 */
function losses(row: PublishedRow) {
  const { model, build } = catalogueLine(row);
  return Object.fromEntries(
    (row.inputs.f_MHz as readonly number[]).flatMap((megahertz) => [
      [`${megahertz} / dB_per_100m`, matchedLoss(lineConstants(model, 1e6 * megahertz), 100)],
      [`${megahertz} / dB_per_100ft`, matchedLoss(lineConstants(build!, 1e6 * megahertz), 30.48)],
    ]),
  );
}

export const cables: Topic = {
  name: "cables",
  title: "Cables of MIL-DTL-17",
  evaluators: [
    { rows: /^mil17\.\w+\.z0$/, compute: (row) => ({ Z0: fromBuild(row).z0.re }) },
    { rows: /^mil17\.\w+\.build$/, compute: (row) => ({ C_pF_per_m: 1e12 * fromBuild(row).capacitance }) },
    { rows: /^mil17\.(rg58cu|rg213u|rg11au)\.att$/, compute: losses },
  ],
};
