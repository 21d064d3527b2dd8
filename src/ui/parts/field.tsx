import './field.css';
import { useId } from 'preact/hooks';
import { settings } from '../../app/session.ts';
import { refusalWords } from '../words/refusal.ts';
import type { Form } from './use-form.ts';

interface Props<N extends string> {
  readonly form: Form<N>;
  readonly name: N;
  readonly label: string;
  readonly hint?: string;
  /** 'decimal' brings up digits; lengths need 'text', for fractions and units. */
  readonly keys?: 'decimal' | 'text' | 'numeric';
  /** More than one: room for a sentence that a phone cannot show on one line. */
  readonly rows?: number;
}

/** One labelled input; its refusal, in the user's words, stands beside it and what was typed stays. */
export const Field = <N extends string>({ form, name, label, hint, keys = 'text', rows = 1 }: Props<N>) => {
  const id = useId();
  const refusal = form.errors.value[name];
  const shared = {
    id,
    value: form.values.value[name],
    'aria-invalid': refusal ? ('true' as const) : undefined,
    'aria-describedby': refusal || hint ? `${id}-says` : undefined,
    onInput: (event: { currentTarget: { value: string } }) => form.set(name, event.currentTarget.value),
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {rows > 1 ? (
        <textarea {...shared} rows={rows} />
      ) : (
        <input {...shared} inputMode={keys} autocomplete="off" autocapitalize="off" spellcheck={false} />
      )}
      {(refusal || hint) && (
        <p id={`${id}-says`} class={refusal ? 'refusal' : 'hint'} role={refusal ? 'alert' : undefined}>
          {refusal ? refusalWords(refusal, label, settings.value.unit) : hint}
        </p>
      )}
    </div>
  );
};
