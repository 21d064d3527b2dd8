declare const unit: unique symbol;
type Branded<Name extends string> = number & { readonly [unit]: Name };

/** Millimetres: every length inside the domain. */
export type Millimetres = Branded<'mm'>;
/** Inches: only at the edge, on the way in or out. */
type Inches = Branded<'in'>;
/** Radians: every angle inside the domain. */
export type Radians = Branded<'rad'>;
/** Degrees: only at the edge. */
export type Degrees = Branded<'deg'>;
/** Moisture content of wood, in percent of its oven-dry mass. */
export type MoisturePercent = Branded<'moisture %'>;
/** Turns of a crank or a dial. */
export type Turns = Branded<'turns'>;

export const MM_PER_INCH = 25.4;

export const mm = (value: number): Millimetres => value as Millimetres;
export const inches = (value: number): Inches => value as Inches;
export const rad = (value: number): Radians => value as Radians;
export const degrees = (value: number): Degrees => value as Degrees;
export const moisture = (value: number): MoisturePercent => value as MoisturePercent;
export const turns = (value: number): Turns => value as Turns;

export const mmFromInches = (value: Inches): Millimetres => mm(value * MM_PER_INCH);
export const inchesFromMm = (value: Millimetres): Inches => inches(value / MM_PER_INCH);
export const radFromDegrees = (value: Degrees): Radians => rad((value * Math.PI) / 180);
export const degreesFromRad = (value: Radians): Degrees => degrees((value * 180) / Math.PI);

/** Pitch of a thread given in threads per inch. */
export const pitchFromTpi = (tpi: number): Millimetres => mm(MM_PER_INCH / tpi);
export const tpiFromPitch = (pitch: Millimetres): number => MM_PER_INCH / pitch;
