import { findings } from '../../app/findings.ts';
import { settings } from '../../app/session.ts';
import { movementOf, type WoodOnHand } from '../../app/woods.ts';
import { writeLength } from '../../domain/units/write-quantity.ts';
import { hrefTo } from '../shell/route.ts';
import { ByItsHardness } from './by-its-hardness.tsx';
import { finestWords, OwnRecord } from './own-record.tsx';
import { woodsWords as words } from './words.ts';

/** One wood: its figures with where they come from, and one's own record by pitch. */
export const WoodPage = ({ wood }: { wood: WoodOnHand | null }) => (
  <main class="page woods">
    <a href={hrefTo('woods')}>{words.back}</a>
    <h1>{wood?.name ?? words.noSuch}</h1>
    {wood && (
      <>
        <section>
          <h2>{words.record}</h2>
          <Record wood={wood} />
        </section>
        {wood.species ? <Figures wood={wood} /> : <p>{words.ownNote}</p>}
        <p class="soft">{words.cautions}</p>
      </>
    )}
  </main>
);

const Record = ({ wood }: { wood: WoodOnHand }) => {
  const { is, found } = findings.value;
  if (!found)
    return is === 'failed' || is === 'stopped' ? (
      <p>{words.recordNot}</p>
    ) : (
      <p aria-busy="true">{words.recordWait}</p>
    );
  const record = found.woods.woods.find((each) => each.wood === wood.key);
  return (
    <>
      <p>{record ? finestWords(record) : words.recordNone}</p>
      {record && <OwnRecord record={record} />}
      {(!record || record.littleTried) && <ByItsHardness wood={wood} found={found.byHardness} />}
    </>
  );
};

const Figures = ({ wood: { species } }: { wood: WoodOnHand }) => {
  if (!species) return null;
  const { hardness, density, strain } = species;
  const moves = movementOf(species);
  const percent = (share: number) => (100 * share).toFixed(2);
  return (
    <section>
      <h2>{words.rest}</h2>
      <dl>
        <dt>{words.hardnessIs}</dt>
        <dd>
          {hardness ? words.hardness(hardness.newton, hardness.lbf) : words.hardnessNone}
          {hardness && !hardness.inHandbook && <span class="soft"> {words.notHandbook}</span>}
        </dd>
        {density !== null && (
          <>
            <dt>{words.densityIs}</dt>
            <dd>{words.density(density)}</dd>
          </>
        )}
        <dt>{words.strainIs}</dt>
        <dd>
          {words.strain(percent(strain.radial), percent(strain.tangential))}
          {species.from === 'shrinkage' && <span class="soft"> {words.fromShrinkage}</span>}
          {!species.read && <span class="soft"> {words.recalled}</span>}
        </dd>
        {moves !== null && (
          <>
            <dt>{words.movesIs}</dt>
            <dd>{words.moves(writeLength(moves, settings.value.unit))}</dd>
          </>
        )}
      </dl>
      <p class="soft">{words.movesHow}</p>
    </section>
  );
};
