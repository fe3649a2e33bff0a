/** A voltage that something stands. Type only. */

/** A limit in V peak with its doubt; what happens there, and where the number comes from. */
export interface VoltageLimit {
  readonly kind: "rating" | "glow" | "breakdown";
  readonly peak: number;
  readonly low: number;
  readonly high: number;
  readonly says: string;
  readonly source: string;
}
