import type { ComponentChildren } from 'preact';
import type { Procedure, Step } from '../../../domain/setup/procedure.ts';
import { StepDrawing } from '../../drawings/step-drawing.tsx';
import { movementWord } from '../../set-up/words.ts';
import { guardWord, procedureWords as words } from './words.ts';

/** A procedure to read: each step with why, what it guards against and what asks it again. */
export const StepList = ({
  procedure,
  under,
}: {
  procedure: Procedure;
  under?: (step: Step) => ComponentChildren;
}) => (
  <ol class="steps">
    {procedure.steps.map((step) => (
      <li key={step.key}>
        {step.drawing && (
          <div class="small-drawing">
            <StepDrawing of={step.drawing} labelled={false} />
          </div>
        )}
        <b>{step.sentence}</b> {step.hold && <span class="soft">({words.hold})</span>}
        {step.why && <p>{step.why}</p>}
        {step.guards.length > 0 && (
          <p class="soft">
            {words.guards}: {step.guards.map((guard) => guardWord[guard]).join(', ')}
          </p>
        )}
        <p class="soft">
          {step.everyTime
            ? words.always
            : `${words.reopenedBy}: ${step.reopenedBy.map((what) => movementWord[what].toLowerCase()).join(', ')}`}
        </p>
        {under?.(step)}
      </li>
    ))}
  </ol>
);
