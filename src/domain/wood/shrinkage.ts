/** Moisture at which wood stops swelling, percent. */
const FIBRE_SATURATION = 30;
/** The coefficients are fractions of the dimension at this moisture, percent. */
const REFERENCE = 10;

/**
 * Movement per point of moisture, as a fraction of the dimension at 10 %, from total shrinkage S, percent from green to oven-dry (0 to 25):
 * (S/30)/(100 - 20 S/30). Wood Handbook FPL-GTR-190 (2010), equation 13-3; it gives Table 13-5 from Table 4-3 within 0.00002 for 68 of 76
 * woods. Plain number, for use inside tables.
 */
export const movementFromShrinkage = (percent: number): number =>
  percent / FIBRE_SATURATION / (100 - (percent * (FIBRE_SATURATION - REFERENCE)) / FIBRE_SATURATION);
