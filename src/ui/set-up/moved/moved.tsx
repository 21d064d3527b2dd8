import { record } from '../../../app/set-up-run.ts';
import type { Movement } from '../../../domain/setup/procedure.ts';
import { feel } from '../feel.ts';
import { WhatMoved } from './what-moved.tsx';

/** Something moved during the set-up: the fold re-opens exactly what that loses. */
export const Moved = ({ onClose }: { onClose: () => void }) => {
  const note = async (what: Movement) => {
    if (!(await record({ kind: 'moved', what }))) return;
    feel('reopened');
    onClose();
  };
  return (
    <main class="set-up">
      <WhatMoved heading="h1" onMoved={note} onNothing={onClose} />
    </main>
  );
};
