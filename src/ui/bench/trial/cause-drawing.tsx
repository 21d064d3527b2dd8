import type { Cause } from '../../../domain/diagnosis/causes.ts';
import type { JointView } from '../../../domain/diagnosis/view.ts';
import { HALF_ANGLE } from '../../../domain/joint/profile.ts';
import { type CausePlace, CauseSection } from '../../drawings/joint-section/cause-section.tsx';
import { partName } from '../../set-up/words.ts';
import { causeWord, placeWord, adviceWords as words } from './advice-words.ts';

/** Where each cause acts on the joint. */
const PLACE: Readonly<Record<Cause, CausePlace | null>> = {
  'nothing-wrong': null,
  tight: 'flanks',
  loose: 'flanks',
  spring: 'flanks',
  crests: 'crests',
  'tapered-bore': 'crests',
  'tapered-tenon': 'crests',
  lean: 'flanks',
  creep: 'flanks',
  slip: 'flanks',
  tilt: 'shoulder',
  eccentric: 'whole',
  float: 'whole',
  oval: 'whole',
  squeezed: 'whole',
  bottoming: 'floor',
  relief: 'floor',
  'last-thread': 'shoulder',
  shoulder: 'shoulder',
  struck: 'shoulder',
  fuzz: 'flanks',
  dent: 'spot',
  film: 'flanks',
  'no-lead-in': 'start',
  'cross-start': 'start',
  'weak-wood': 'crests',
  'hot-cutter': 'flanks',
  'low-engagement': 'crests',
};

/** The cause drawn where it acts, on the joint as its record has it. */
export const CauseDrawing = ({ cause, joint }: { cause: Cause; joint: JointView }) => {
  const place = PLACE[cause];
  const piece = (part: 'recess' | 'tenon') => ({
    diameter: part === 'recess' ? joint.bore : joint.tenon,
    depth: joint.depth[part],
    tipFlat: joint.tipFlat,
  });
  return (
    <CauseSection
      pair={{
        pitch: joint.pitch,
        halfAngle: HALF_ANGLE,
        recess: piece('recess'),
        tenon: piece('tenon'),
        pose: 'centred',
      }}
      bottomGap={joint.bottomGap}
      place={place}
      names={{
        recess: partName.recess.toLowerCase(),
        tenon: partName.tenon.toLowerCase(),
        place: place && placeWord[place],
      }}
      label={words.section(causeWord[cause], place && placeWord[place])}
    />
  );
};
