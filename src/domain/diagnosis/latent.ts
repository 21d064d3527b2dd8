/**
 * One joint as it may really be, behind the record and the words: plain numbers in mm and radians, radial unless said otherwise, changed in
 * place in the hot loop. `low`, `top` and `hand` are the turner's: what feels right to them, and how hard they turn.
 */
export interface Latent {
  /** Turned diameters, depths from touch-off, width of the cutter's tip. */
  bore: number;
  tenon: number;
  depthRecess: number;
  depthTenon: number;
  tip: number;
  /** Ridge made thinner by a slip, axial. */
  slipRecess: number;
  slipTenon: number;
  /** Difference in lean between the two grooves, rad. */
  lean: number;
  /** Groove shallower where the cut ended; all along, because the wood gave. */
  creepRecess: number;
  creepTenon: number;
  springRecess: number;
  springTenon: number;
  /** Crests that stand above the turned diameter. */
  raisedRecess: number;
  raisedTenon: number;
  /** Diametral, over the length; positive is tighter at the far end. */
  taperBore: number;
  taperTenon: number;
  /** Off centre; 1 where that is felt once a turn. */
  eccentric: number;
  eccentricFelt: number;
  /** Axial float of the spindle in step with the crank. */
  float: number;
  /** Shoulder out of square to the thread, rad. */
  tilt: number;
  /** Of a finish, on each flank. */
  film: number;
  /** Diametral. */
  fuzz: number;
  /** 1 where loose chips lie in the thread. */
  chips: number;
  /** Diametral; `ovalOne` is 1 where only one piece has gone oval. */
  oval: number;
  ovalOne: number;
  squeeze: number;
  /** Room at the floor, and by how much relief and last thread fall short: axial, negative is clear. */
  floor: number;
  relief: number;
  last: number;
  /** Shoulder not flat; struck by the cutter. */
  hump: number;
  struck: number;
  dent: number;
  /** Lead-in that is missing. */
  lead: number;
  /** 0 to 1. */
  crossed: number;
  weak: number;
  burnt: number;
  /** Ease that wax gives, diametral. */
  wax: number;
  /** Diametral clearance from which, and to which, it feels right. */
  low: number;
  top: number;
  hand: number;
  /** Where this joint stands among its like when a move works only sometimes, 0 to 1. */
  luck: number;
  /** Errors of the next tenon, were one made: diametral and radial. */
  nextSize: number;
  nextDepth: number;
  nextRaised: number;
  /** How far beside the groove the cutter would come down, were it picked up again, axial. */
  pickUp: number;
}

/** Relief and last thread that are clear stand this far from touching, mm. */
export const CLEAR = 1;

export const emptyLatent = (): Latent => ({
  bore: 0,
  tenon: 0,
  depthRecess: 0,
  depthTenon: 0,
  tip: 0,
  slipRecess: 0,
  slipTenon: 0,
  lean: 0,
  creepRecess: 0,
  creepTenon: 0,
  springRecess: 0,
  springTenon: 0,
  raisedRecess: 0,
  raisedTenon: 0,
  taperBore: 0,
  taperTenon: 0,
  eccentric: 0,
  eccentricFelt: 0,
  float: 0,
  tilt: 0,
  film: 0,
  fuzz: 0,
  chips: 0,
  oval: 0,
  ovalOne: 0,
  squeeze: 0,
  floor: 0,
  relief: 0,
  last: 0,
  hump: 0,
  struck: 0,
  dent: 0,
  lead: 0,
  crossed: 0,
  weak: 0,
  burnt: 0,
  wax: 0,
  low: 0,
  top: 0,
  hand: 1,
  luck: 0,
  nextSize: 0,
  nextDepth: 0,
  nextRaised: 0,
  pickUp: 0,
});

/** Field by field: a general copy is ten times as slow, and this one runs for every joint and every move. */
export const copyLatent = (from: Latent, to: Latent): void => {
  to.bore = from.bore;
  to.tenon = from.tenon;
  to.depthRecess = from.depthRecess;
  to.depthTenon = from.depthTenon;
  to.tip = from.tip;
  to.slipRecess = from.slipRecess;
  to.slipTenon = from.slipTenon;
  to.lean = from.lean;
  to.creepRecess = from.creepRecess;
  to.creepTenon = from.creepTenon;
  to.springRecess = from.springRecess;
  to.springTenon = from.springTenon;
  to.raisedRecess = from.raisedRecess;
  to.raisedTenon = from.raisedTenon;
  to.taperBore = from.taperBore;
  to.taperTenon = from.taperTenon;
  to.eccentric = from.eccentric;
  to.eccentricFelt = from.eccentricFelt;
  to.float = from.float;
  to.tilt = from.tilt;
  to.film = from.film;
  to.fuzz = from.fuzz;
  to.chips = from.chips;
  to.oval = from.oval;
  to.ovalOne = from.ovalOne;
  to.squeeze = from.squeeze;
  to.floor = from.floor;
  to.relief = from.relief;
  to.last = from.last;
  to.hump = from.hump;
  to.struck = from.struck;
  to.dent = from.dent;
  to.lead = from.lead;
  to.crossed = from.crossed;
  to.weak = from.weak;
  to.burnt = from.burnt;
  to.wax = from.wax;
  to.low = from.low;
  to.top = from.top;
  to.hand = from.hand;
  to.luck = from.luck;
  to.nextSize = from.nextSize;
  to.nextDepth = from.nextDepth;
  to.nextRaised = from.nextRaised;
  to.pickUp = from.pickUp;
};
