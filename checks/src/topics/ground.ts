/** Soil as a wave medium: reflection of plane waves, penetration depth; soils and metals of the catalogue. */
import {
  type Complex,
  cableDielectric,
  cableMetals,
  complexPermittivity,
  flatAttenuation,
  layersAt,
  penetrationDepth,
  reflection,
  water,
} from "@feedpath/engine";
import { readStation } from "@feedpath/station-file";
import { input, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

const soilOf = (row: PublishedRow) => ({
  relativePermittivity: input(row, "eps_r"),
  conductivity: input(row, "sigma_S/m"),
});

const frequencyOf = (row: PublishedRow): number => 1e6 * input(row, "f_MHz");
const size = (z: Complex): number => Math.hypot(z.re, z.im);

/** R_h and R_v of the texts from the engine's coefficients of the tangential field: R_v has the opposite sign. */
function planeWave(row: PublishedRow, elevation: number): { horizontal: Complex; vertical: Complex } {
  const eps = complexPermittivity(soilOf(row), frequencyOf(row));
  const { te, tm } = reflection({ re: Math.sin(elevation), im: 0 }, 1, eps);
  return { horizontal: te, vertical: { re: -tm.re, im: -tm.im } };
}

function fresnel(row: PublishedRow) {
  const { horizontal, vertical } = planeWave(row, (input(row, "elevation_deg") * Math.PI) / 180);
  return { R_h: horizontal, R_v: vertical, "|R_h|": size(horizontal), "|R_v|": size(vertical) };
}

/** Elevation of least |R_v| by golden section; |R_v| has one minimum between the horizon and the zenith. */
function pseudoBrewster(row: PublishedRow) {
  const golden = (Math.sqrt(5) - 1) / 2;
  const at = (elevation: number) => size(planeWave(row, elevation).vertical);
  let [low, high] = [0, Math.PI / 2];
  while (high - low > 1e-9) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (at(left) < at(right)) high = right;
    else low = left;
  }
  const eps = complexPermittivity(soilOf(row), frequencyOf(row));
  return {
    elevation_deg: (90 * (low + high)) / Math.PI,
    "|R_v|_min": at((low + high) / 2),
    "depth_1/e_m": penetrationDepth(soilOf(row), frequencyOf(row)),
    loss_tangent: -eps.im / eps.re,
  };
}

/** Attenuation along flat ground at w = p e^{-jb}. */
function norton(row: PublishedRow) {
  const p = input(row, "numerical distance p");
  const b = (input(row, "phase b_deg") * Math.PI) / 180;
  return { "|F|_exact": size(flatAttenuation({ re: p * Math.cos(b), im: -p * Math.sin(b) })) };
}

/** The soil of that name as the station file reads it. */
function namedSoil(row: PublishedRow) {
  const name = row.id.split(".").at(-1)!.replaceAll("_", " ");
  const text = `feedpath: 1\nstation: soil\nfrequency: 7 MHz\ntransmitter: { power: 1 W }\npath: []\nantenna: { dipole: { length: 20 m, height: 10 m, wire: 2 mm copper } }\nground: ${name}\n`;
  const { station, problems } = readStation(text, { fileName: "soil.yaml" });
  const [layer] = station ? layersAt(station.ground, 7e6) : [];
  if (!layer) throw new Error(`ground: ${name} is not read: ${problems.map((p) => p.message).join(" ")}`);
  return { eps_r: layer.relativePermittivity, "sigma_S/m": layer.conductivity };
}

function waterOf(row: PublishedRow) {
  const salty = row.id.startsWith("p527.sea");
  const salinity = salty ? input(row, "S_g/kg") : 0;
  const found = water(1e9 * input(row, "f_GHz"), input(row, "T_C"), salinity);
  const permittivity = { "eps'": found.relativePermittivity, "eps''": found.dielectricLoss };
  return salty ? { ...permittivity, "sigma_S/m": found.ionicConductivity } : permittivity;
}

export const ground: Topic = {
  name: "ground",
  title: "Ground and materials",
  evaluators: [
    { rows: /^ground\.fresnel\./, compute: fresnel },
    { rows: /^ground\.norton\./, compute: norton },
    { rows: /^ground\.brewster\.(?!lossless)/, compute: pseudoBrewster },
    {
      rows: /^ground\.p527-3\.(sea_water|wet_ground|fresh_water|medium_dry_ground|very_dry_ground)$/,
      compute: namedSoil,
    },
    { rows: /^p527\.(pure|sea)\./, compute: waterOf },
    { rows: /^mat\.cu$/, compute: () => ({ "sigma_MS/m": cableMetals.copper.conductivity / 1e6 }) },
    { rows: /^mat\.al$/, compute: () => ({ "sigma_MS/m": cableMetals.aluminium.conductivity / 1e6 }) },
    { rows: /^mat\.air$/, compute: () => ({ eps_r: cableDielectric("air")!.permittivity }) },
  ],
};
