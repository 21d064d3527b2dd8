/** Ground colours of the two looks, for the browser's own bars. */
const GROUND = { day: '#f4efe4', night: '#15191b' } as const;

/** Day, night, or as the phone has it. */
export const applyLook = (look: 'auto' | 'day' | 'night'): void => {
  document.documentElement.dataset.look = look;
  for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]'))
    meta.content = GROUND[look === 'auto' ? (meta.media.includes('dark') ? 'night' : 'day') : look];
};

/** Assumed when nobody has measured the glass: 160 CSS px to the inch. */
const USUAL_PX_PER_MM = 160 / 25.4;
/** Cap height of Atkinson Hyperlegible Next, in em. */
const CAP_HEIGHT_EM = 0.672;

/** Type size in CSS px whose capitals span `arcMinutes` at `distanceMm`. */
export const typeSize = (arcMinutes: number, distanceMm: number, pxPerMm: number): number => {
  const capHeightMm = 2 * distanceMm * Math.tan(((arcMinutes / 60) * Math.PI) / 180 / 2);
  return (capHeightMm * pxPerMm) / CAP_HEIGHT_EM;
};

/** Sets the set-up's type for the reading distance: --say at 20 arc minutes (ISO 9241-303 recommends 20 to 22), --rest at 16. */
export const applyDistance = (distanceCm: number, pxPerMm: number | null): void => {
  const { style } = document.documentElement;
  const px = (arcMinutes: number): string =>
    `${typeSize(arcMinutes, distanceCm * 10, pxPerMm ?? USUAL_PX_PER_MM).toFixed(1)}px`;
  style.setProperty('--say', px(20));
  style.setProperty('--rest', px(16));
};
