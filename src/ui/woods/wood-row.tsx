import { settings } from '../../app/session.ts';
import { movementOf, type WoodOnHand } from '../../app/woods.ts';
import type { WoodRecord } from '../../domain/findings/answers/woods-by-pitch.ts';
import { writeLength } from '../../domain/units/write-quantity.ts';
import { hrefTo } from '../shell/route.ts';
import { finestWords } from './own-record.tsx';
import { woodsWords as words } from './words.ts';

/** A wood in the list: what it is known for, in one line. */
export const WoodRow = ({ wood, record }: { wood: WoodOnHand; record?: WoodRecord | undefined }) => {
  const { unit } = settings.value;
  const moves = wood.species && movementOf(wood.species);
  return (
    <li>
      <a href={hrefTo('woods', wood.key)}>
        <b>{wood.name}</b>
        <span class="soft">
          {record
            ? finestWords(record)
            : [
                wood.species?.hardness &&
                  words.hardness(wood.species.hardness.newton, wood.species.hardness.lbf),
                moves !== null && `${words.movesIs.toLowerCase()}: ${writeLength(moves, unit)}`,
              ]
                .filter(Boolean)
                .join(', ')}
        </span>
      </a>
    </li>
  );
};
