/** What `why` can be asked with. */
import { cableDielectrics } from "../../lines/cableMaterials";
import type { ParameterDefinition } from "../common/question";
import { studyMetals } from "./materials";

export const sizeRange = { least: 0.5e-3, most: 0.3 };
const permittivityRange = { least: 1, most: 20 };
/** Of the outer conductor where its weight or cost counts, m. */
export const usualWall = 0.2e-3;
/** Price of a kilogram of metal over one of insulation. */
export const usualPriceRatio = 6;

const word = { dimension: "word", least: 0, most: 0 } as const;
const number = { dimension: "none", words: [] } as const;
const metals = studyMetals.map(({ name }) => name);
const ofTheLine = "that of the first coaxial line in the path, else";

export const whyParameters: readonly ParameterDefinition[] = [
  { name: "shape", title: "shape of the line", ...word, words: ["coaxial", "pair"], otherwise: "coaxial" },
  {
    name: "dielectric",
    title: "insulation",
    ...word,
    words: cableDielectrics.map((d) => d.name),
    otherwise: `${ofTheLine} solid polyethylene; air for a pair`,
  },
  {
    name: "permittivity",
    title: "relative permittivity",
    ...number,
    ...permittivityRange,
    slider: { from: 1, to: 4, scale: "linear" },
    otherwise: "that of the insulation",
  },
  {
    name: "outerSize",
    title: "inner diameter of the outer conductor, or spacing of a pair",
    dimension: "length",
    words: [],
    ...sizeRange,
    slider: { from: 1e-3, to: 0.2, scale: "log" },
    otherwise: `${ofTheLine} 7.24 mm; 150 mm for a pair`,
  },
  { name: "inner", title: "metal of the inner conductor", ...word, words: metals, otherwise: `${ofTheLine} copper` },
  { name: "outer", title: "metal of the outer conductor", ...word, words: metals, otherwise: `${ofTheLine} copper` },
  {
    name: "temperature",
    title: "temperature of the conductors",
    dimension: "temperature",
    words: [],
    least: 200,
    most: 500,
    otherwise: "20 °C",
  },
  {
    name: "held",
    title: "what stays the same while the impedance changes",
    ...word,
    words: ["size", "weight", "cost"],
    otherwise: "size",
  },
  {
    name: "wall",
    title: "wall of the outer conductor, for weight and cost",
    dimension: "length",
    words: [],
    least: 1e-6,
    most: 0.02,
    otherwise: "0.2 mm, about a braid",
  },
  {
    name: "priceRatio",
    title: "price of a kilogram of metal over one of insulation",
    ...number,
    least: 0.1,
    most: 1000,
    otherwise: `${usualPriceRatio}`,
  },
];
