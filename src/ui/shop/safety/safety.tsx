import { allRigs } from '../../../app/rigs.ts';
import { useLive } from '../../parts/use-live.ts';
import { hrefTo } from '../../shell/route.ts';
import { shopWords } from '../words.ts';
import { safetyWords as words } from './words.ts';

const Safety = () => {
  const rigs = useLive(allRigs, ['rig']).value ?? [];
  const hands = (['right', 'left'] as const).filter((hand) => rigs.some(({ rig }) => rig.hand === hand));
  return (
    <main class="page shop">
      <a href={hrefTo('shop')}>{shopWords.back}</a>
      <h1>{words.title}</h1>
      <p>{words.first}</p>
      {words.parts.map(({ title, rules }, i) => (
        <section key={title}>
          <h2>{title}</h2>
          <ul>
            {rules.map((rule) => (
              <li key={rule}>{rule}</li>
            ))}
            {i === 0 && hands.map((hand) => <li key={hand}>{words.lidOn[hand]}</li>)}
          </ul>
        </section>
      ))}
    </main>
  );
};

export default Safety;
