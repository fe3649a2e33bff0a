export type * from "./kit/figure";
