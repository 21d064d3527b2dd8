import type { ComponentChildren } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

interface Props {
  readonly summary: string;
  /** What holds while nobody unfolds it. */
  readonly now?: string;
  /** Opens it, as when a field inside was refused; it is never shut by itself. */
  readonly open: boolean;
  readonly children: ComponentChildren;
}

/** Questions that have a sensible answer already, folded under their heading. */
export const Fold = ({ summary, now, open, children }: Props) => {
  const details = useRef<HTMLDetailsElement>(null);
  // Before the frame in which the refused field takes the focus.
  useLayoutEffect(() => {
    if (open && details.current) details.current.open = true;
  }, [open]);
  return (
    <details ref={details} class="fold">
      <summary>
        {summary}
        {now && <span class="soft">: {now}</span>}
      </summary>
      <div>{children}</div>
    </details>
  );
};
