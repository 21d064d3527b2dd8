import type { StandIn } from '../../../app/plan-input-of.ts';
import { settings } from '../../../app/session.ts';
import { hrefTo } from '../../shell/route.ts';
import { standInWords, planWords as words } from './words.ts';

/** Every usual figure that stood in for one not known, with the way to tell it. */
export const StandIns = ({ standIns, rigId }: { standIns: readonly StandIn[]; rigId: string }) =>
  standIns.length === 0 ? null : (
    <ul class="stand-ins">
      {standIns.map((standIn) => (
        <li key={standIn.what === 'wood' ? standIn.wood : standIn.what}>
          {standInWords(standIn, settings.value.unit)}{' '}
          {standIn.what !== 'wood' && (
            <a href={hrefTo('shop', 'rig', standIn.what, rigId)}>{words.tellRig}</a>
          )}
        </li>
      ))}
    </ul>
  );

/** The same in one line, for a screen that is read at the lathe. */
export const StoodIn = ({ standIns }: { standIns: readonly StandIn[] }) =>
  standIns.length === 0 ? null : (
    <p class="soft">
      {words.stoodIn(standIns.length)} <a href={hrefTo('bench', 'plan')}>{words.seeThem}</a>
    </p>
  );
