import '../../parts/field.css';
import { settings } from '../../../app/session.ts';
import type { Refusal } from '../../../domain/result.ts';
import { hrefTo } from '../../shell/route.ts';
import { refusalWords } from '../../words/refusal.ts';
import { figureName, planWords as words } from './words.ts';

/** Why no joint can be made of these figures, and the way to the rig. */
export const NoPlan = ({ refusal }: { refusal: Refusal }) => (
  <div class="no-plan" role="alert">
    <p>{words.noPlan}</p>
    <p class="refusal">{refusalWords(refusal, figureName(refusal.field), settings.value.unit)}</p>
    <a href={hrefTo('shop', 'rig')}>{words.toRig}</a>
  </div>
);
