import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { clearDraft, keepDraft, readDraft } from '../../app/drafts.ts';
import type { Refusal, Result } from '../../domain/result.ts';

/** Typed text is saved this long after the last key, and at once when the page goes out of sight. */
const SAVE_AFTER_MS = 300;

/** The refusal beside each field that has one. */
type Errors<N extends string> = { readonly [Name in N]?: Refusal };

export interface Form<N extends string> {
  readonly values: Signal<Readonly<Record<N, string>>>;
  readonly errors: Signal<Errors<N>>;
  readonly set: (name: N, text: string) => void;
  /** Reads one field with a reader of the domain; undefined leaves its refusal beside the field. */
  readonly read: <T>(name: N, reader: (field: string, typed: string) => Result<T>) => T | undefined;
  /** Puts a refusal beside a field, for rules that need more than one. */
  readonly refuse: (name: N, refusal: Refusal) => void;
  /** The form was saved: its draft goes, its fields return to what they began with, or to what is given. */
  readonly done: (now?: Readonly<Partial<Record<N, string>>>) => void;
}

/** The texts of a form, kept as a draft under `id` until they are saved, so that a kill loses at most a blink of typing. */
export const useForm = <N extends string>(id: string, initial: Readonly<Record<N, string>>): Form<N> => {
  const values = useSignal(initial);
  const errors = useSignal<Errors<N>>({});
  const shown = useRef(id);
  const dirty = useRef(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);

  const save = () => {
    clearTimeout(timer.current);
    if (!dirty.current) return;
    dirty.current = false;
    keepDraft(id, values.value);
  };

  useEffect(() => {
    let current = true;
    // Another form in the same place begins afresh; on first mount a quick tap may already have been typed in.
    if (shown.current !== id) {
      shown.current = id;
      values.value = initial;
      errors.value = {};
    }
    readDraft(id).then((draft) => {
      if (current && draft && !dirty.current) values.value = { ...initial, ...draft };
    });
    const onHidden = () => {
      if (document.visibilityState === 'hidden') save();
    };
    document.addEventListener('visibilitychange', onHidden);
    return () => {
      current = false;
      document.removeEventListener('visibilitychange', onHidden);
      save();
    };
  }, [id]);

  const refuse = (name: N, refusal: Refusal) => {
    errors.value = { ...errors.value, [name]: refusal };
  };
  const forgive = (name: N) => {
    const { [name]: _, ...others } = errors.value;
    errors.value = others as Errors<N>;
  };
  return {
    values,
    errors,
    set: (name, text) => {
      values.value = { ...values.value, [name]: text };
      forgive(name);
      dirty.current = true;
      clearTimeout(timer.current);
      timer.current = setTimeout(save, SAVE_AFTER_MS);
    },
    read: (name, reader) => {
      const result = reader(name, values.value[name]);
      if (result.ok) {
        forgive(name);
        return result.value;
      }
      refuse(name, result.error);
      return undefined;
    },
    refuse,
    done: (now) => {
      clearTimeout(timer.current);
      dirty.current = false;
      values.value = { ...initial, ...now };
      errors.value = {};
      clearDraft(id);
    },
  };
};
