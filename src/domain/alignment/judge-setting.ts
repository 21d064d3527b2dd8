import { SLOPE } from '../joint/profile.ts';
import { firstRefusal, ok, type Refusal, type Result, refuse } from '../result.ts';
import type { Part } from '../setup/events.ts';
import { type Millimetres, mm, type Radians, rad } from '../units/brands.ts';
import type { MeasuredAngle } from './gauge.ts';
import { type Grade, gradeOf, worse } from './grade.ts';
import { asGap, toPaper, toThou } from './in-hand.ts';
import { angle, doubt } from './inputs.ts';
import { type AngleReading, measuredAngle } from './measure.ts';
import { axialGap } from './play.ts';
import { shoulderGap } from './rocking.ts';
import {
  type AlignedJoint,
  engagedHeightOf,
  leanLimits,
  squareLimits,
  thinningByTilt,
  threadOf,
  tiltLimit,
} from './tolerance.ts';
import type { Together } from './walls.ts';

/** What an angle was measured of: the jig's axis level or upright to the lathe's, or the piece's seat on the jig after re-chucking. */
type Aspect = 'lean' | 'tilt' | 'seat';

/** What is known of the other piece's set-up in the same aspect. */
export type OtherPiece =
  | { readonly known: 'nothing' }
  /** Both pieces are cut in one unbroken setting, so the angle is one and the same. */
  | { readonly known: 'same-setting' }
  | {
      readonly known: 'measured';
      readonly measured: MeasuredAngle;
      /** Whether both were open toward the same side; null when nobody noted it. */
      readonly sameWay: boolean | null;
    };

/** What the joint will do if the set-up is left as it is, in steps that can be measured by hand: a thou, or 0.05 mm for a paper feeler. */
interface IfLeft {
  /** How far the flanks of the pair lie apart in angle. */
  readonly mismatch: Radians;
  /** Gap at the tip of the tooth. */
  readonly tipGap: Millimetres;
  readonly playLost: Millimetres;
  readonly playLeft: Millimetres;
  /** The lid will not go on. */
  readonly binds: boolean;
  /** Gap at the rim; a lean alone never opens one. */
  readonly shoulderGap: Millimetres;
  readonly ridgeThinner: Millimetres;
}

export interface SettingJudgement {
  readonly aspect: Aspect;
  readonly grade: Grade;
  /** This set-up's own angle. */
  readonly measured: MeasuredAngle;
  /** What was held against the limit: for the second piece, what both make together. */
  readonly counted: MeasuredAngle;
  readonly limit: Radians;
  /** How the two leans add up; 'alone' when only one is known or it is not a lean. */
  readonly together: Together | 'alone';
  /** The same as gaps over 80 mm: a bank card is half a degree. */
  readonly gap: Millimetres;
  readonly limitGap: Millimetres;
  readonly ifLeft: IfLeft;
}

export interface Question {
  readonly joint: AlignedJoint;
  readonly part: Part;
  readonly measured: MeasuredAngle;
  readonly other: OtherPiece;
  /** From the dial sense of the rig; decides how leans add up. */
  readonly together: Together;
  /** Lean mismatch already known of the pair, which eats play and with it the freedom to sit flush. */
  readonly mismatch?: Radians;
}

/** The least effect that counts as felt, mm: a thou between flanks, a paper at the rim, two thou off the ridge. */
const FELT = { flank: 0.0254, rim: 0.05, ridge: 0.0508 } as const;

const plain = {
  mismatch: rad(0),
  tipGap: mm(0),
  playLost: mm(0),
  binds: false,
  shoulderGap: mm(0),
  ridgeThinner: mm(0),
};

const sized = ({ angle: value, uncertainty }: MeasuredAngle): MeasuredAngle => ({
  angle: rad(Math.abs(value)),
  uncertainty,
});
const times = (factor: number, one: MeasuredAngle): MeasuredAngle => ({
  angle: rad(factor * Math.abs(one.angle)),
  uncertainty: rad(factor * one.uncertainty),
});
const sum = (one: MeasuredAngle, other: MeasuredAngle): MeasuredAngle => ({
  angle: rad(Math.abs(one.angle) + Math.abs(other.angle)),
  uncertainty: rad(Math.hypot(one.uncertainty, other.uncertainty)),
});
const difference = (one: MeasuredAngle, other: MeasuredAngle): MeasuredAngle => ({
  ...sum(one, other),
  angle: rad(Math.abs(Math.abs(one.angle) - Math.abs(other.angle))),
});

const badQuestion = ({ measured, other, mismatch }: Question): Refusal | undefined =>
  firstRefusal(
    angle('measured', measured.angle),
    doubt('uncertainty', measured.uncertainty),
    angle('mismatch', mismatch ?? 0),
    ...(other.known === 'measured'
      ? [angle('other', other.measured.angle), doubt('otherUncertainty', other.measured.uncertainty)]
      : []),
  );

/** Mismatch of the pair from both set-ups. Unknown senses are taken at their worst. */
const leansTogether = ({ measured, other, together }: Question): MeasuredAngle => {
  if (other.known === 'nothing') return sized(measured);
  if (other.known === 'same-setting') return together === 'cancels' ? times(0, measured) : times(2, measured);
  if (together === 'worst-case' || other.sameWay === null) return sum(measured, other.measured);
  const alike = other.sameWay === (together === 'doubles');
  return alike ? sum(measured, other.measured) : difference(measured, other.measured);
};

interface Weighed {
  readonly aspect: Aspect;
  readonly counted: MeasuredAngle;
  readonly limit: Radians;
  readonly felt: boolean;
  readonly together: Together | 'alone';
  readonly ifLeft: Omit<IfLeft, 'playLeft'>;
}

const judgementFrom = ({ joint, measured }: Question, weighed: Weighed): Result<SettingJudgement> => {
  const { aspect, counted, limit, felt, together, ifLeft } = weighed;
  const [gap, limitGap] = [asGap(measured.angle), asGap(rad(Math.min(limit, 0.2)))];
  if (!gap.ok) return gap;
  if (!limitGap.ok) return limitGap;
  return ok({
    aspect,
    grade: gradeOf(counted, limit, felt),
    measured,
    counted,
    limit,
    together,
    gap: gap.value,
    limitGap: limitGap.value,
    ifLeft: {
      ...ifLeft,
      tipGap: toThou(ifLeft.tipGap),
      playLost: toThou(ifLeft.playLost),
      playLeft: toThou(mm(Math.max(0, joint.clearance * SLOPE - ifLeft.playLost))),
      shoulderGap: toPaper(ifLeft.shoulderGap),
      ridgeThinner: toThou(ifLeft.ridgeThinner),
    },
  });
};

/**
 * Judges a lean. Alone, a piece may use half the pair's tolerance, or all of it when equal leans cancel; with the other piece known, what
 * both make together stands against the whole. Refuses a joint without clearance or overlap, and angles beyond 15 degrees.
 */
export const judgeLean = (question: Question): Result<SettingJudgement> => {
  const { joint, other, together } = question;
  const bad = badQuestion(question);
  if (bad) return refuse(bad);
  const limits = leanLimits(joint);
  if (!limits.ok) return limits;
  const counted = leansTogether(question);
  const alone = other.known === 'nothing';
  const off = alone && together !== 'cancels' ? times(2, counted).angle : counted.angle;
  const gap = axialGap(engagedHeightOf(joint), rad(Math.min(off, Math.PI / 12)));
  if (!gap.ok) return gap;
  return judgementFrom(question, {
    aspect: 'lean',
    counted,
    limit: alone && together !== 'cancels' ? limits.value.each : limits.value.mismatch,
    felt: gap.value >= FELT.flank,
    together: alone ? 'alone' : together,
    ifLeft: {
      ...plain,
      mismatch: rad(off),
      tipGap: gap.value,
      playLost: gap.value,
      binds: off > limits.value.binds,
    },
  });
};

/** Judges a tilt, which thins this piece's ridge and nothing else; taken in its worse sense. Refuses as `judgeLean` does, and a recess cutter as large as its recess. */
export const judgeTilt = (question: Question): Result<SettingJudgement> => {
  const { joint, part, measured } = question;
  const bad = badQuestion(question);
  if (bad) return refuse(bad);
  const limit = tiltLimit(joint, part);
  if (!limit.ok) return limit;
  const thinned = thinningByTilt(joint, part, measured.angle);
  if (!thinned.ok) return thinned;
  return judgementFrom(question, {
    aspect: 'tilt',
    counted: sized(measured),
    limit: limit.value,
    felt: thinned.value >= FELT.ridge,
    together: 'alone',
    ifLeft: { ...plain, ridgeThinner: thinned.value },
  });
};

/**
 * Judges how square the piece sits on the jig after re-chucking: both pieces' errors add up at the worst clocking and must stay within
 * what the lid can rock in its play; half of that for one piece alone. Refuses as `judgeLean` does.
 */
export const judgeSeat = (question: Question): Result<SettingJudgement> => {
  const { joint, measured, other, mismatch } = question;
  const bad = badQuestion(question);
  if (bad) return refuse(bad);
  const lost = axialGap(engagedHeightOf(joint), mismatch ?? rad(0));
  if (!lost.ok) return lost;
  const limits = squareLimits(joint, mm(Math.min(lost.value, joint.clearance * SLOPE)));
  if (!limits.ok) return limits;
  const both = other.known === 'measured' ? sum(measured, other.measured) : times(2, measured);
  const open = shoulderGap(
    joint.shoulder,
    rad(Math.min(both.angle, Math.PI / 12)),
    threadOf(joint, lost.value),
  );
  if (!open.ok) return open;
  const alone = other.known !== 'measured';
  return judgementFrom(question, {
    aspect: 'seat',
    counted: alone ? sized(measured) : both,
    limit: rad(alone ? limits.value.flush / 2 : limits.value.flush),
    felt: open.value >= FELT.rim,
    together: 'alone',
    ifLeft: { ...plain, mismatch: mismatch ?? rad(0), playLost: lost.value, shoulderGap: open.value },
  });
};

/** Judges a reading as it was taken. One whose plane was not noted is judged both as lean and as tilt, and the worse counts. */
export const judgeReading = (
  reading: AngleReading,
  question: Omit<Question, 'measured'>,
  of: 'jig' | 'seat' = 'jig',
): Result<SettingJudgement> => {
  const measured = measuredAngle(reading);
  if (!measured.ok) return measured;
  const asked = { ...question, measured: measured.value };
  if (of === 'seat') return judgeSeat(asked);
  if (reading.plane === 'lean') return judgeLean(asked);
  const tilt = judgeTilt(asked);
  if (reading.plane === 'tilt') return tilt;
  const lean = judgeLean(asked);
  return lean.ok && tilt.ok ? ok(worse(lean.value, tilt.value)) : lean;
};
