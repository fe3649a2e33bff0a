import { createContext, useContext } from "react";

/** MathML by formula of the answer that is shown. */
export const FormulasContext = createContext<Readonly<Record<string, string>>>({});

export const useFormulas = (): Readonly<Record<string, string>> => useContext(FormulasContext);
