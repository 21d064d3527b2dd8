import { hrefTo } from '../shell/route.ts';
import { jointLinkWords as words } from './link-words.ts';

/** The ways to the joint and to the job card of a box; without an id, to the joint of the box on the bench. */
export const JointLinks = ({ id }: { id?: string }) => (
  <div class="row">
    <a class="act" href={id === undefined ? hrefTo('bench', 'joint') : hrefTo('boxes', id, 'joint')}>
      {words.joint}
    </a>
    {id !== undefined && (
      <a class="act" href={hrefTo('boxes', id, 'card')}>
        {words.card}
      </a>
    )}
  </div>
);
