import { settings } from '../../../app/session.ts';
import { slipAllowanceOf } from '../../../app/setting-verdict.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import { useLive } from '../../parts/use-live.ts';
import { slipWords } from './verdict-words.ts';

/** Where the groove is picked up: how much of an error the passes to come still cut away. */
export const SlipNote = ({ run }: { run: RunState }) => {
  const allowance = useLive(slipAllowanceOf, ['box', 'rig'], run.boxId, run.part).value;
  return allowance ? <span>{slipWords(allowance, settings.value.unit)}</span> : null;
};
