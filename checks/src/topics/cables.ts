/** Cables of MIL-DTL-17: impedance and capacitance from dimensions, loss of the catalogue's lines. */
import { type CoaxialLine, cableDielectric, impliedImpedance, lineConstants, matchedLoss } from "@feedpath/engine";
import { type CatalogueLine, lineCatalogue } from "@feedpath/station-file";
import { input, type PublishedRow, publishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";
import { greatestPower } from "./cablePower";

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

/** "mil17.rg58cu.att" is a row of "RG-58C/U". */
function catalogueLine(row: PublishedRow): CatalogueLine {
  const plain = (text: string): string => text.toLowerCase().replace(/[^a-z0-9]/g, "");
  const line = lineCatalogue.find(({ designation }) => plain(designation) === row.id.split(".")[1]);
  if (!line?.build) throw new Error(`${row.id}: not in the catalogue, or without a build`);
  return line;
}

/** What the catalogue holds of the printed ratings: where two differ it takes the lower, and keeps the other as the high end. */
function voltages(row: PublishedRow) {
  const { ratings, designation } = catalogueLine(row);
  if (!ratings?.voltage) throw new Error(`${designation}: no voltage in the catalogue`);
  const both = { old: ratings.voltage.high, new: ratings.voltage.value };
  return (row.value as { readonly new: number | null }).new === null ? { old: both.old } : both;
}

const classes: Readonly<Record<string, string>> = { rg58: "RG-58C/U", rg213: "RG-213/U" };

function ofClass(row: PublishedRow): CatalogueLine {
  const name = classes[/rg\d+/.exec(row.id)?.[0] ?? ""];
  const line = lineCatalogue.find(({ designation }) => designation === name);
  if (!line) throw new Error(`${row.id}: not in the catalogue`);
  return line;
}

/** What answers take (nominal) beside the greatest that a sheet allows: the row bounds nothing. */
const nominalBesideGreatest = (row: PublishedRow) =>
  Object.fromEntries(
    Object.keys(row.value as object).map((megahertz) => [
      `${megahertz} / dB_per_100ft`,
      matchedLoss(lineConstants(ofClass(row).model, 1e6 * Number(megahertz)), 30.48),
    ]),
  );

const meanPowers = (row: PublishedRow) =>
  Object.fromEntries(
    Object.keys(row.value as object).map((megahertz) => [
      megahertz,
      greatestPower(ofClass(row), 1e6 * Number(megahertz)),
    ]),
  );

const celsius = (name: string): number => (cableDielectric(name)?.greatestTemperature ?? Number.NaN) - 273.15;

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
    { rows: /^mil17\.\w+\.att$/, compute: losses },
    { rows: /^mil17\.\w+\.volt$/, compute: voltages },
    {
      rows: /^mil17\.\w+\.zcheck$/,
      compute: (row) => ({
        "": impliedImpedance(input(row, "VF"), (input(row, "C_pF_per_ft") * 1e-12) / 0.3048),
      }),
    },
    { rows: /^mil17\.rg(58|213)\.max$/, compute: nominalBesideGreatest },
    { rows: /^mil17\.power\.rg(58|213)$/, compute: meanPowers },
    {
      rows: /^mil17\.temp$/,
      compute: () => ({
        PE: celsius("polyethylene"),
        "foam PE": celsius("foam polyethylene"),
        "PTFE / FEP": celsius("PTFE"),
      }),
    },
  ],
};
