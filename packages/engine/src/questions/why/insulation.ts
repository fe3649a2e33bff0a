/** The insulation that is studied: as asked, as in the station's line, or usual; with where its numbers come from. */
import type { Answer } from "../../answer/answer";
import { type CableDielectric, cableDielectric, cableDielectrics } from "../../lines/cableMaterials";
import type { CoaxialLine, Dielectric } from "../../lines/lineModel";
import type { StudyInput } from "../../lines/study/studyPoint";
import type { Parameters } from "../common/question";
import type { NoInput } from "./noInput";

/** `material`: what it is made of, whatever permittivity was asked of it. */
export type StudiedInsulation = Dielectric &
  Pick<CableDielectric, "breakdown" | "source" | "breakdownSource"> & { readonly material: string };

/** A dielectric this program has no breakdown field for is taken to fail like air, which is the least of all. */
export function insulationOf(
  parameters: Parameters,
  shape: StudyInput["shape"],
  build: CoaxialLine | null,
): StudiedInsulation | NoInput {
  const asked = parameters.dielectric;
  const usual = shape === "pair" ? "air" : "polyethylene";
  const known = cableDielectric(String(asked ?? build?.dielectric.name ?? usual));
  if (asked !== undefined && known === null) {
    return {
      refused: `"${String(asked)}" is no insulation this question knows`,
      mend: `one of: ${cableDielectrics.map((d) => d.name).join(", ")}`,
    };
  }
  const air = cableDielectric("air")!;
  const taken: StudiedInsulation =
    asked !== undefined || build === null
      ? { ...known!, material: known!.name }
      : {
          ...build.dielectric,
          material: build.dielectric.name,
          breakdown: known?.breakdown ?? air.breakdown,
          source: "the line of the station",
          breakdownSource: known?.breakdownSource ?? `not known for ${build.dielectric.name}: that of air is taken`,
        };
  const { permittivity } = parameters;
  return typeof permittivity === "number"
    ? { ...taken, name: `${taken.name} of permittivity ${permittivity}`, permittivity, source: "as asked" }
    : taken;
}

/** A permittivity by itself says nothing of loss, breakdown and weight: they stay those of the material. */
export function assumedInsulation({ permittivity }: Parameters, material: string): Answer["assumptions"] {
  if (typeof permittivity !== "number") return [];
  const own = cableDielectric(material)?.permittivity ?? permittivity;
  const foam = permittivity < own ? "; a foam fails at a far lower voltage" : "";
  return [
    {
      name: "loss, breakdown field and weight of the insulation",
      value: `as ${material}`,
      reason: `only the permittivity was asked otherwise${foam}`,
      place: "",
    },
  ];
}
