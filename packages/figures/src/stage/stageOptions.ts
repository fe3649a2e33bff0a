export interface StageOptions {
  /** Of the picture, px. */
  readonly width: number;
  /** Of type and strokes: 1 desktop, 0.8 sheet, 1.85 presentation. Left out: 0.9 from 600 to 959 px, else 1. */
  readonly scale?: number;
  /** Fewer words, edge to edge. Left out: below 600 px. */
  readonly compact?: boolean;
  /** Largest power gain times power into the antenna (W) of all variants shown together. Left out: this answer's own. */
  readonly referenceStrength?: number;
  /** px for one watt, shared by variants. Left out: from the picture's size. */
  readonly pixelsPerWatt?: number;
  /** px; the section is drawn smaller so that the whole stage is at most this high. */
  readonly maximumHeight?: number;
}

export interface StageStyle {
  readonly width: number;
  readonly s: number;
  readonly compact: boolean;
  readonly referenceStrength: number | null;
  readonly pixelsPerWatt: number | null;
  readonly maximumHeight: number | null;
}

/** Options with everything that was left out filled in. Width: 280 px at least. */
export function stageStyle(options: StageOptions): StageStyle {
  const { width } = options;
  if (!(width >= 280)) throw new Error(`A stage of ${width} px cannot be read: expected a width of 280 px or more.`);
  const compact = options.compact ?? width < 600;
  return {
    width,
    compact,
    s: options.scale ?? (width >= 600 && width < 960 ? 0.9 : 1),
    referenceStrength: options.referenceStrength ?? null,
    pixelsPerWatt: options.pixelsPerWatt ?? null,
    maximumHeight: options.maximumHeight ?? null,
  };
}
