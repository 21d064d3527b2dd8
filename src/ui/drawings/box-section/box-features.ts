import type { BoxSizes, Point } from './box-profile.ts';

/** What the Plan can point at. */
export const FEATURES = [
  'outside',
  'opening',
  'recess',
  'recessDepth',
  'recessRelief',
  'recessChamfer',
  'insert',
  'tenon',
  'tenonLength',
  'tenonRelief',
  'tenonChamfer',
  'reliefWidth',
] as const;
export type BoxFeature = (typeof FEATURES)[number];

/** The place of a feature: on which piece, and where on its right half. None for an insert that is not there. */
export const featureAt = (
  box: BoxSizes,
  feature: BoxFeature,
): { readonly piece: 'recess' | 'tenon'; readonly at: Point } | null => {
  const runOut = box.recessDepth - box.reliefWidth;
  const on = (piece: 'recess' | 'tenon', r: number, s: number) => ({ piece, at: [r, s] as const });
  switch (feature) {
    case 'outside':
      return on('tenon', box.outside / 2, -box.floor);
    case 'opening':
      return on('tenon', box.opening / 2, -box.floor);
    case 'recess':
      return on('recess', box.recess / 2, runOut / 2);
    case 'recessDepth':
      return on('recess', (box.opening + box.recess) / 4, box.recessDepth);
    case 'recessRelief':
      return on('recess', box.recessReliefDiameter / 2, box.recessDepth - box.reliefWidth / 2);
    case 'recessChamfer':
      return on('recess', box.recessChamferDiameter / 2, 0);
    case 'insert':
      return box.insert === null ? null : on('recess', box.insert / 2, box.recessDepth / 2);
    case 'tenon':
      return on('tenon', box.tenon / 2, (box.reliefWidth + box.tenonLength) / 2);
    case 'tenonLength':
      return on('tenon', (box.opening + box.tenonChamferDiameter) / 4, box.tenonLength);
    case 'tenonRelief':
      return on('tenon', box.tenonReliefDiameter / 2, box.reliefWidth / 2);
    case 'tenonChamfer':
      return on(
        'tenon',
        (box.tenonChamferDiameter + box.tenon) / 4,
        box.tenonLength - (box.tenon - box.tenonChamferDiameter) / 4,
      );
    case 'reliefWidth':
      return on('tenon', box.tenonReliefDiameter / 2, box.reliefWidth);
  }
};
