import type { JointTable } from '../../../domain/findings/joint-row.ts';
import { findingsWords as words } from '../../text/findings-words.ts';

/** How many boxes gave no row, and why: nothing is dropped unseen. */
export const LeftOut = ({ table: { leftOut } }: { table: JointTable }) => {
  const reasons = Object.entries(leftOut).filter(([, count]) => count > 0);
  if (reasons.length === 0) return null;
  return (
    <section>
      <h2>{words.leftOut}</h2>
      <ul>
        {reasons.map(([why, count]) => (
          <li key={why}>
            {count}: {words.leftOutWhy[why as keyof typeof words.leftOutWhy] ?? why}
          </li>
        ))}
      </ul>
    </section>
  );
};
