import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

interface Props {
  readonly summary: string;
  /** Opens it, as when a field inside was refused; it is never shut by itself. */
  readonly open: boolean;
  readonly children: ComponentChildren;
}

/** Questions that have a sensible answer already, folded under their heading. */
export const Fold = ({ summary, open, children }: Props) => {
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (open && details.current) details.current.open = true;
  }, [open]);
  return (
    <details ref={details} class="fold">
      <summary>{summary}</summary>
      <div>{children}</div>
    </details>
  );
};
