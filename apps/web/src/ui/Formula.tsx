/** A formula as MathML, which the worker has set; until it is there, nothing stands in its place. */
import { useFormulas } from "./useFormulas";

export function Formula({ latex }: { readonly latex: string }) {
  const mathml = useFormulas()[latex];
  if (mathml === undefined) return null;
  // MathML made by the report package from the engine's own formulas; it escapes what it sets.
  // biome-ignore lint/security/noDangerouslySetInnerHtml: the markup comes from our own typesetting, not from the file
  return <div className="formula" dangerouslySetInnerHTML={{ __html: mathml }} />;
}
