import './field.css';
import { useId } from 'preact/hooks';
import { settings } from '../../app/session.ts';
import { refusalWords } from '../text/refusal-words.ts';
import type { Form } from './use-form.ts';

interface Props<N extends string> {
  readonly form: Form<N>;
  readonly name: N;
  readonly label: string;
  readonly hint?: string;
  /** 'decimal' brings up digits; lengths need 'text', for fractions and units. */
  readonly keys?: 'decimal' | 'text' | 'numeric';
}

/** One labelled input; its refusal, in the user's words, stands beside it and what was typed stays. */
export const Field = <N extends string>({ form, name, label, hint, keys = 'text' }: Props<N>) => {
  const id = useId();
  const refusal = form.errors.value[name];
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        value={form.values.value[name]}
        inputMode={keys}
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        aria-invalid={refusal ? 'true' : undefined}
        aria-describedby={refusal || hint ? `${id}-says` : undefined}
        onInput={(event) => form.set(name, event.currentTarget.value)}
      />
      {(refusal || hint) && (
        <p id={`${id}-says`} class={refusal ? 'refusal' : 'hint'} role={refusal ? 'alert' : undefined}>
          {refusal ? refusalWords(refusal, label, settings.value.unit) : hint}
        </p>
      )}
    </div>
  );
};
