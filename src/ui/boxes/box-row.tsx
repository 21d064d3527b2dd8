import '../parts/rows.css';
import type { BoxOnHand } from '../../app/boxes.ts';
import { firstFit, standing, woodsOf } from '../../domain/box/story.ts';
import { StatusTooth } from '../set-up/status-tooth.tsx';
import { hrefTo } from '../shell/route.ts';
import { dayWords } from '../words/day.ts';
import { fitTooth, fitWord, standingWord, boxesWords as words } from './words.ts';

/** One box in the list: what it is, what it is of, and how its first fit went, by shape and word. */
export const BoxRow = ({ id, box, nameOf }: BoxOnHand & { nameOf: (wood: string) => string }) => {
  const fit = firstFit(box);
  const state = standing(box);
  return (
    <li class="box-row">
      <a href={hrefTo('boxes', id)}>
        <StatusTooth status={fit ? fitTooth[fit] : 'to-come'} />
        <span>
          <b>{words.name(box.number, box.name)}</b>
          <br />
          {woodsOf(box).map(nameOf).join(' / ')}, {box.plan.pitch.text}
          <br />
          <span class="soft">
            {fit ? fitWord[fit] : words.notTried}
            {state !== 'kept' && ` · ${standingWord[state]}`} · {dayWords(box.startedOn)}
          </span>
        </span>
      </a>
    </li>
  );
};
