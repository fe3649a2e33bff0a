/** Coaxial lines of the catalogue. */
import { cableMetals } from "@feedpath/engine";
import { braid, type CatalogueLine, cladSteel, dielectric, known, lossPoints, strands } from "./lineParts";

const memory = "published, quoted from memory";
const polyethyleneSource = {
  value: "velocity factor 0.659 ± 0.005",
  source: "solid polyethylene of permittivity 2.26, MIL-DTL-17 lists",
  status: memory,
};
const lossSource = (sheet: string) => ({
  value: "attenuation, nominal at 20 °C, ± 15 %",
  source: `MIL-DTL-17 sheet ${sheet} and handbook tables`,
  status: `${memory}; cable sold under the old name need not meet the sheet`,
});

const rg58: CatalogueLine = {
  designation: "RG-58C/U",
  about: "Thin 50 Ω coaxial line, 5 mm, solid polyethylene, for short runs.",
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: known(50, 2, "impedance of RG-58C/U"),
    velocityFactor: known(0.659, 0.005, "velocity factor of RG-58C/U"),
    loss: lossPoints(
      "RG-58C/U",
      [
        [10, 1.4],
        [50, 3.3, 4],
        [100, 4.9],
        [400, 11],
        [1000, 20, 28],
      ],
      0.85,
      1.2,
    ),
  },
  build: {
    kind: "coaxial",
    inner: strands(0.9e-3, 0.97),
    outer: braid(2.95e-3),
    dielectric: dielectric("polyethylene"),
  },
  jacketDiameter: 4.95e-3,
  sources: [
    {
      value: "50 ± 2 Ω; attenuation at most 4.0 dB/100 ft at 50 MHz and 28 dB/100 ft at 1 GHz (the high ends)",
      source: "MIL-C-17/28C",
      status: "published, confirmed in a transcription of the sheet (2004)",
    },
    lossSource("M17/28"),
    {
      value: "19 strands of 0.0071 in, 0.90 mm over all; 2.95 mm over the insulation; tinned braid",
      source: "MIL-DTL-17 sheet M17/28",
      status: "published, confirmed in a compilation of coaxial data; strands from memory",
    },
    {
      value: "4.95 mm over the jacket",
      source: "MIL-DTL-17 sheet M17/28",
      status: "published, confirmed in a compilation of coaxial data; within 3 %",
    },
    polyethyleneSource,
  ],
};

const rg213: CatalogueLine = {
  designation: "RG-213/U",
  about: "50 Ω coaxial line, 10 mm, solid polyethylene, the usual choice for power at HF.",
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: known(50, 2, "impedance of RG-213/U"),
    velocityFactor: known(0.659, 0.005, "velocity factor of RG-213/U"),
    loss: lossPoints(
      "RG-213/U",
      [
        [10, 0.62],
        [50, 1.5],
        [100, 2.1],
        [400, 4.7],
        [1000, 8],
      ],
      0.85,
      1.15,
    ),
  },
  build: {
    kind: "coaxial",
    inner: strands(2.26e-3, 0.939),
    outer: braid(7.24e-3),
    dielectric: dielectric("polyethylene"),
  },
  jacketDiameter: 10.29e-3,
  sources: [
    {
      value: "50 ± 2 Ω",
      source: "MIL-C-17/74C",
      status: "published, confirmed in a transcription of the sheet (2004)",
    },
    lossSource("M17/74"),
    {
      value:
        "attenuation at most 9.0 dB/100 ft at 1 GHz and 1.2 dB/100 ft at 50 MHz; the second lies below the nominal 1.5 and is not used",
      source: "MIL-C-17/74C",
      status: "published, confirmed in a transcription of the sheet (2004), which may have a slip there",
    },
    {
      value: "7 strands of 0.0296 in, 2.26 mm over all; 7.24 mm over the insulation; bare copper braid",
      source: "MIL-DTL-17 sheet M17/74",
      status: memory,
    },
    {
      value: "10.29 mm over the jacket",
      source: "MIL-DTL-17 sheet M17/74",
      status: memory,
    },
    polyethyleneSource,
  ],
};

const rg11: CatalogueLine = {
  designation: "RG-11A/U",
  about: "75 Ω coaxial line, 10 mm, solid polyethylene.",
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: known(75, 3, "impedance of RG-11A/U"),
    velocityFactor: known(0.659, 0.005, "velocity factor of RG-11A/U"),
    loss: lossPoints(
      "RG-11A/U",
      [
        [10, 0.66],
        [50, 1.6],
        [100, 2.3],
        [400, 5.2],
        [1000, 8.7],
      ],
      0.85,
      1.15,
    ),
  },
  build: {
    kind: "coaxial",
    inner: strands(1.21e-3, 0.939),
    outer: braid(7.24e-3),
    dielectric: dielectric("polyethylene"),
  },
  jacketDiameter: 10.29e-3,
  sources: [
    { value: "75 ± 3 Ω", source: "MIL-DTL-17 sheet M17/6", status: memory },
    lossSource("M17/6"),
    {
      value: "7 strands, 1.21 mm over all; 7.24 mm over the insulation; bare copper braid",
      source: "MIL-DTL-17 sheet M17/6",
      status: "published, confirmed in a compilation of coaxial data; strands from memory",
    },
    {
      value: "10.29 mm over the jacket",
      source: "MIL-DTL-17 sheet M17/6",
      status: "published, confirmed in a compilation of coaxial data; within 3 %",
    },
    polyethyleneSource,
  ],
};

const series6: CatalogueLine = {
  designation: "75-ohm series-6 drop cable",
  about: "75 Ω foam line with foil and braid, 7 mm, clad steel inside, as laid to television sets.",
  model: {
    kind: "data sheet",
    side: "coaxial",
    impedance: known(75, 3, "impedance of 75-ohm series-6 drop cable"),
    velocityFactor: known(0.84, 0.02, "velocity factor of 75-ohm series-6 drop cable"),
    loss: lossPoints(
      "75-ohm series-6 drop cable",
      [
        [5, 0.58],
        [55, 1.6],
        [211, 3.05],
        [450, 4.4],
        [1000, 6.55],
      ],
      0.85,
      1.1,
    ),
  },
  build: {
    kind: "coaxial",
    inner: cladSteel(1.024e-3),
    outer: {
      innerRadius: 4.57e-3 / 2,
      wall: Number.POSITIVE_INFINITY,
      metal: cableMetals.aluminium,
      resistanceFactor: 1,
    },
    dielectric: { ...dielectric("foam polyethylene"), permittivity: 1 / 0.84 ** 2 },
  },
  sources: [
    {
      value: "75 ± 3 Ω; greatest attenuation at 20 °C, taken from 15 % below to 10 % above",
      source: "ANSI/SCTE 74, series 6",
      status: "from memory",
    },
    {
      value: "velocity factor 0.82 to 0.86; 1.024 mm clad steel, 4.57 mm over the foam, aluminium foil and braid",
      source: "cable makers' sheets of this series",
      status: "from memory; the thin foil takes more below about 20 MHz than the build tells",
    },
  ],
};

export const coaxialLines: readonly CatalogueLine[] = [rg58, rg213, rg11, series6];
