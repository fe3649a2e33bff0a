import type { Answer } from "@feedpath/engine";

/** True for an answer whose grids run over time. Apart from `filmOf`, so that a page can load that when it is needed. */
export const hasFilm = (answer: Answer): boolean => answer.grids?.some(({ rows }) => rows.name === "time") ?? false;
