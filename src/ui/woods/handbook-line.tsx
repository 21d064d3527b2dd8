import { settings } from '../../app/session.ts';
import { allWoods, movementOf } from '../../app/woods.ts';
import { writeLength } from '../../domain/units/write-quantity.ts';
import { useLive } from '../parts/use-live.ts';
import { hrefTo } from '../shell/route.ts';
import { woodsWords as words } from './words.ts';

/** What the handbook says of a wood, in a sentence, and the way to its page. */
const HandbookLine = ({ wood }: { wood: string }) => {
  const found = useLive(allWoods, ['wood']).value?.find(({ key }) => key === wood);
  if (!found) return null;
  const { species, name } = found;
  const moves = species && movementOf(species);
  return (
    <p class="soft">
      {species?.hardness && `${words.handbookHardness(species.hardness.newton, species.hardness.lbf)} `}
      {moves !== null && `${words.handbookMoves(writeLength(moves, settings.value.unit))} `}
      {!species && `${words.ownNote} `}
      <a href={hrefTo('woods', wood)}>{words.moreOf(name)}</a>
    </p>
  );
};

export default HandbookLine;
