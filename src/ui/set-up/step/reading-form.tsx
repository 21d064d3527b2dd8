import './reading-form.css';
import { useEffect } from 'preact/hooks';
import { lastLength } from '../../../app/last-length.ts';
import { settings } from '../../../app/session.ts';
import { record } from '../../../app/set-up-run.ts';
import type { RunState } from '../../../domain/setup/fold.ts';
import type { ReadingKind } from '../../../domain/setup/procedure.ts';
import type { Reading } from '../../../domain/setup/reading.ts';
import { mm } from '../../../domain/units/brands.ts';
import { readLength, readTurns } from '../../../domain/units/read-quantity.ts';
import { Field } from '../../parts/field.tsx';
import { useForm } from '../../parts/use-form.ts';
import { GAUGES, readingWords as words } from './reading-words.ts';

interface ReadingFormProps {
  readonly run: RunState;
  readonly kind: ReadingKind;
  readonly stepKey: string;
  /** True when a reading was kept. */
  readonly onClose: (kept: boolean) => void;
}

/** The optional measurement of a step: a gauge at hand is one tap, anything else is typed. */
export const ReadingForm = ({ run, kind, stepKey, onClose }: ReadingFormProps) => {
  const { unit } = settings.value;
  const form = useForm(`reading ${run.runId} ${stepKey}`, { gap: '', over: '', turns: '' });

  // The board and the arm seldom change.
  useEffect(() => {
    if (kind === 'turns') return;
    lastLength(kind).then(
      (last) => last !== null && form.values.value.over === '' && form.set('over', last),
      () => {},
    );
  }, [kind]);

  const reading = (gauge?: string): Reading | undefined => {
    if (kind === 'turns') {
      const count = form.read('turns', (field, typed) => readTurns(field, typed, { min: 0.25, max: 60 }));
      return count === undefined ? undefined : { kind: 'turns', turns: count };
    }
    const over = form.read('over', (field, typed) =>
      readLength(field, typed, unit, { min: mm(10), max: mm(600) }),
    );
    const gap = form.read('gap', (field, typed) =>
      readLength(field, gauge ?? typed, unit, { min: mm(0), max: mm(20) }),
    );
    if (!gap || !over) return undefined;
    return kind === 'gap'
      ? { kind: 'gap', gap, over, plane: 'either' }
      : { kind: 'sweep', difference: gap, radius: over, plane: 'lean' };
  };
  const keep = async (gauge?: string) => {
    const value = reading(gauge);
    if (!value || !(await record({ kind: 'read', step: stepKey, reading: value }, run))) return;
    form.done();
    onClose(true);
  };

  return (
    <form
      class={`reading ${kind === 'gap' ? 'with-gauges' : ''}`}
      onSubmit={(event) => {
        event.preventDefault();
        keep();
      }}
    >
      {kind === 'turns' ? (
        <Field form={form} name="turns" label={words.turns} hint={words.turnsHint} />
      ) : (
        <>
          <Field form={form} name="over" label={words[kind].over} />
          {kind === 'gap' && (
            <fieldset class="gauges">
              <legend>{words.thickest[unit]}</legend>
              {GAUGES[unit].map(({ key, text }) => (
                <button
                  key={key}
                  type="button"
                  aria-label={words.gauge(key, text)}
                  onClick={() => keep(text)}
                >
                  {key}
                </button>
              ))}
            </fieldset>
          )}
          <Field form={form} name="gap" label={words[kind].gap} />
        </>
      )}
      <div class="ends">
        <button type="submit">{words.keep}</button>
        <button type="button" onClick={() => onClose(false)}>
          {words.without}
        </button>
      </div>
    </form>
  );
};

export default ReadingForm;
