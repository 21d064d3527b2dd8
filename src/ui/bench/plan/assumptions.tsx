import { settings } from '../../../app/session.ts';
import type { Assumption } from '../../../domain/box/assumed.ts';
import { hrefTo } from '../../shell/route.ts';
import { assumptionWords, planWords as words } from './words.ts';

/** Every usual figure that stood in for one not known, with the way to tell it. */
export const Assumptions = ({ assumed, rigId }: { assumed: readonly Assumption[]; rigId: string }) =>
  assumed.length === 0 ? null : (
    <ul class="stand-ins">
      {assumed.map((assumption) => (
        <li key={assumption.what === 'wood' ? assumption.wood : assumption.what}>
          {assumptionWords(assumption, settings.value.unit)}{' '}
          {assumption.what !== 'wood' && (
            <a href={hrefTo('shop', 'rig', assumption.what, rigId)}>{words.tellRig}</a>
          )}
        </li>
      ))}
    </ul>
  );

/** The same in one line, for a screen that is read at the lathe. */
export const AssumedNote = ({ assumed }: { assumed: readonly Assumption[] }) =>
  assumed.length === 0 ? null : (
    <p class="soft">
      {words.stoodIn(assumed.length)} <a href={hrefTo('bench', 'plan')}>{words.seeThem}</a>
    </p>
  );
