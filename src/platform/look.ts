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

/** Asks for the set-up's type at the reading distance: 20 arc minutes (ISO 9241-303 recommends 20 to 22); the glass may hold less. */
export const applyDistance = (distanceCm: number, pxPerMm: number | null): void => {
  const px = typeSize(20, distanceCm * 10, pxPerMm ?? USUAL_PX_PER_MM);
  // Rounded up: to the nearest, the smaller type of the two fell short of its 16 arc minutes.
  document.documentElement.style.setProperty('--say-asked', `${Math.ceil(px * 10) / 10}px`);
};

/** How far away, in cm, type of `px` set for 20 arc minutes can be read. */
export const distanceOf = (px: number, pxPerMm: number | null): number =>
  px / typeSize(20, 10, pxPerMm ?? USUAL_PX_PER_MM);
